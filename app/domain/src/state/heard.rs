//! What was said and seen besides entries: words about a bar, who is there, what was shown.
use super::State;
use crate::attendance::Attendance;
use crate::believed::{BarWord, BelievedBar, Said, Stacks};
use crate::event::Fact;
use crate::lift_no::LiftNo;
use crate::moment::Moment;
use crate::rotation::open_at;
use crate::shown::Shown;
use crate::state::station_of;

/// What somebody did that the screen has not answered yet.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Unshown {
    /// Something was entered for a lift: whoever is up then is shown.
    Entry(LiftNo),
    /// The last entry of a lift was taken back: its lifter is shown.
    Undo(LiftNo),
    /// A load was chosen.
    Load(LiftNo),
    /// A turn was put off, or a lifter left: whoever is up then is shown.
    PutOff(LiftNo),
    /// A turn was claimed: it is up.
    Claim(LiftNo),
    /// Somebody is back: they are shown.
    Return(LiftNo),
    /// What was said of a turn was taken back: its lifter is shown.
    Unsaid(LiftNo),
    /// A lift was begun.
    Begin,
    /// Somebody was passed over, by nobody's tap.
    Pass,
    /// Something was said about a bar.
    Word,
    /// That was taken back.
    WordUndone,
}

impl State {
    /// Somebody said what a bar holds.
    pub(super) fn hear(&mut self, word: &BarWord, at: Moment) {
        let before = self.bars.remove(&word.bar);
        let after = BelievedBar::after(word, at, before);
        self.bars.insert(word.bar.clone(), after);
        for other in &word.contradicts {
            if let Some(other) = self.bars.get_mut(other).filter(|bar| bar.date == word.date) {
                other.doubted = true;
            }
        }
    }

    /// The last word about a bar that was not a set was taken back.
    pub(super) fn unhear(&mut self, bar: &str) {
        if let Some(bar) = self.bars.get_mut(bar) {
            bar.take_back();
        }
    }

    /// The screen showed orders: hands may be at work on them from now on.
    pub(super) fn show(&mut self, shown: &Shown, at: Moment) {
        for order in &shown.orders {
            let known = self.bars.get(&order.bar);
            if known.is_none_or(|known| known.date != order.date) {
                let unknown = BelievedBar::unknown(&order.rack, at, order.date);
                self.bars.insert(order.bar.clone(), unknown);
            }
            if let Some(bar) = self.bars.get_mut(&order.bar) {
                bar.order(&order.to);
            }
        }
        self.shown = Some(shown.clone());
    }

    /// A set was taken back. Its plates stay on, if it was done; by a slip of the finger it was
    /// not, and nobody knows.
    pub(super) fn doubt_set(&mut self, no: LiftNo) {
        let bar = self.lifts.get(&no).map(|run| &run.sheet.bar.name);
        let known = bar.and_then(|bar| self.bars.get_mut(bar));
        if let Some(known) = known.filter(|known| known.said == Said::Set(no)) {
            known.doubted = true;
        }
    }

    /// Keeps in mind what the screen has not answered yet, so that after a power cut it shows what
    /// it would have shown.
    pub(super) fn note_unshown(&mut self, fact: &Fact) {
        if let (Fact::RotationPlanned { station, .. }, Some(_)) = (fact, self.unshown) {
            self.called_since.insert(station.clone());
        }
        self.unshown = Some(match fact {
            Fact::SetDone { no, .. }
            | Fact::RungSkipped { no, .. }
            | Fact::LiftStopped { no }
            | Fact::WentOn { no } => Unshown::Entry(*no),
            Fact::LiftBegun { .. } => Unshown::Begin,
            Fact::TurnPassed { .. } => Unshown::Pass,
            Fact::LoadSettled { no, .. } => Unshown::Load(*no),
            Fact::TurnDeferred { no }
            | Fact::RestLengthened { no, .. }
            | Fact::LifterLeft { no } => Unshown::PutOff(*no),
            Fact::TurnClaimed { no } => Unshown::Claim(*no),
            Fact::LifterReturned { no } => Unshown::Return(*no),
            Fact::TurnUnsaid { no } => Unshown::Unsaid(*no),
            Fact::EntryUndone { no } => Unshown::Undo(*no),
            Fact::BarSaid(word) if matches!(word.said, Said::Set(_)) => return,
            Fact::BarSaid(_) => Unshown::Word,
            Fact::BarWordUndone { .. } => Unshown::WordUndone,
            Fact::ScreenShown(_) => {
                self.unshown = None;
                self.called_since.clear();
                return;
            }
            Fact::FileTaken { .. }
            | Fact::PlanTaken { .. }
            | Fact::DayCleared { .. }
            | Fact::NextDecided { .. }
            | Fact::NextOverridden { .. }
            | Fact::RotationPlanned { .. }
            | Fact::CoachSaid(_)
            | Fact::LoadsFollowed { .. }
            | Fact::EffortSaid { .. }
            | Fact::ClockAnchored { .. }
            | Fact::ClockSet { .. }
            | Fact::LiftLapsed { .. }
            | Fact::LiftReopened { .. }
            | Fact::LiftRedated { .. }
            | Fact::BegunElsewhere { .. }
            | Fact::DoneElsewhere { .. } => return,
        });
    }

    /// Somebody said something of their turn; whose turn it was, and how it stood with theirs, is
    /// kept for whoever takes it back.
    pub(super) fn speak(&mut self, no: LiftNo, at: Moment, change: impl FnOnce(&mut Attendance)) {
        let station = self.lifts.get(&no).map(station_of);
        let first = station.and_then(|station| self.rotation(&station).first());
        let was_up = first.map(|turn| (turn.no, at));
        let run = self.lifts.get_mut(&no).filter(|run| !run.is_over());
        if let Some(run) = run {
            let before = run.attendance;
            change(&mut run.attendance);
            run.attendance.was_up = if before.is_said() {
                before.was_up
            } else {
                was_up
            };
            run.unsaid = Some(before);
        }
    }

    /// What was said last of a turn is taken back; where nobody knows how it stood before, its
    /// lifter is there.
    pub(super) fn unsay(&mut self, no: LiftNo, at: Moment) {
        let run = self.lifts.get_mut(&no).filter(|run| !run.is_over());
        if let Some(run) = run {
            let was_up = run.attendance.was_up;
            match run.unsaid.take() {
                Some(before) => run.attendance = before,
                None => run.attendance.unsay(at),
            }
            run.attendance.was_up = was_up;
        }
    }

    /// The lift that has its turn again once the lifter of `no` takes back what they said of
    /// theirs: nobody has lifted there or said what the bar holds since.
    #[must_use]
    pub fn up_again(&self, no: LiftNo) -> Option<LiftNo> {
        let run = self.lifts.get(&no)?;
        let (station, (up, said_at)) = (station_of(run), run.attendance.was_up?);
        let said = self.bars.get(&station.bar).map(|bar| bar.at);
        let entered = open_at(self, &station, run.day).filter_map(|run| run.entries.last());
        let last = entered.map(|entry| entry.at).chain(said).max();
        (last <= Some(said_at)).then_some(up)
    }

    /// Something about a lifter's being there; nothing for a lift that does not stand or is over.
    pub(super) fn attend(&mut self, no: LiftNo, change: impl FnOnce(&mut Attendance)) {
        if let Some(run) = self.lifts.get_mut(&no).filter(|run| !run.is_over()) {
            change(&mut run.attendance);
        }
    }

    /// After a set the pins are where they were and whoever had put their turn off is called
    /// again. A journal that does not say what was on the bar is taken to mean the turn's stack.
    pub(super) fn note_set(&mut self, no: LiftNo, rung: usize, at: Moment) {
        let Some(run) = self.lifts.get(&no) else {
            return;
        };
        let (date, station) = (run.day, station_of(run));
        let said = self.bars.get(&station.bar);
        let is_said = said.is_some_and(|bar| bar.at == at && bar.said == Said::Set(no));
        let word = (!is_said).then(|| BarWord {
            rack: station.rack.clone(),
            bar: station.bar.clone(),
            date,
            holds: Stacks::alike(self.stack(run, rung)),
            said: Said::Set(no),
            contradicts: alloc::vec::Vec::new(),
        });
        if let Some(hole) = run.sheet.pin_hole(rung) {
            self.holes.insert(station.rack.clone(), (date, hole));
        }
        if let Some(word) = word {
            self.hear(&word, at);
        }
        let (rack, bar) = (&station.rack, &station.bar);
        for other in self.open.iter().filter(|other| **other != no) {
            if let Some(run) = self.lifts.get_mut(other)
                && run.sheet.rack == *rack
                && run.sheet.bar.name == *bar
            {
                run.attendance.deferred = false;
            }
        }
    }
}
