//! What was said and seen besides entries: words about a bar, who is there, what was shown.
use super::State;
use crate::attendance::Attendance;
use crate::believed::{BarWord, BelievedBar, Said, Stacks};
use crate::event::{Fact, LiftNo};
use crate::moment::Moment;
use crate::rotation::station_of;
use crate::shown::Shown;

impl State {
    /// Somebody said what a bar holds.
    pub(super) fn hear(&mut self, word: &BarWord, at: Moment) {
        let before = self.bars.remove(&word.bar);
        let after = BelievedBar::after(word, at, before);
        self.bars.insert(word.bar.clone(), after);
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

    /// Keeps in mind which entry the screen has not answered yet, so that after a power cut it
    /// shows what it would have shown.
    pub(super) fn note_unshown(&mut self, fact: &Fact) {
        match fact {
            Fact::LiftBegun { no, .. }
            | Fact::SetDone { no, .. }
            | Fact::RungSkipped { no, .. }
            | Fact::LiftStopped { no }
            | Fact::WentOn { no }
            | Fact::LoadSettled { no, .. }
            | Fact::TurnDeferred { no }
            | Fact::TurnClaimed { no }
            | Fact::RestLengthened { no, .. }
            | Fact::LifterLeft { no }
            | Fact::LifterReturned { no } => self.unshown = Some((*no, false)),
            Fact::EntryUndone { no } => self.unshown = Some((*no, true)),
            Fact::ScreenShown(_) => self.unshown = None,
            Fact::FileTaken { .. }
            | Fact::PlanTaken { .. }
            | Fact::DayCleared { .. }
            | Fact::NextDecided { .. }
            | Fact::NextOverridden { .. }
            | Fact::RotationPlanned { .. }
            | Fact::BarSaid(_)
            | Fact::BarWordUndone { .. }
            | Fact::TurnPassed { .. }
            | Fact::CoachSaid(_)
            | Fact::ClockAnchored { .. }
            | Fact::ClockSet { .. }
            | Fact::LiftLapsed { .. }
            | Fact::LiftReopened { .. }
            | Fact::LiftRedated { .. } => {}
        }
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
        });
        if let Some(pins) = &run.sheet.pins {
            self.holes.insert(station.rack.clone(), (date, pins.hole));
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
