//! What stands after all events: plan, files, lifts with their entries, plates on each bar.
//!
//! `apply` cannot fail: an event that makes no sense changes nothing. Refuses: clocks, words.
use crate::attendance::Attendance;
use crate::believed::BelievedBar;
use crate::coach_word::{CoachWord, Health};
use crate::elsewhere::Taken;
use crate::equipment::PlateFace;
use crate::event::{Event, Fact};
use crate::lift_no::LiftNo;
use crate::mass::Mass;
use crate::moment::Moment;
use crate::past::{Past, kept_sets};
use crate::prescription::Prescription;
use crate::settled::Settled;
use crate::shown::Shown;
use crate::steady::Times;
use crate::turn::{CalledTurn, Station};
use alloc::collections::{BTreeMap, BTreeSet};
use alloc::string::String;
use alloc::vec::Vec;
use chrono::NaiveDate;

mod heard;
mod retire;
pub(crate) mod run;

pub use heard::Unshown;
pub use retire::{LEFT_OPEN, WHOLE};
pub use run::{Entered, Entry, LiftRun, station_of};

/// After so long nothing keeps its day whatever the gym's file says, milliseconds.
pub(crate) const KEEPS_NO_DAY_MS: i64 = 24 * 3_600_000;

/// What stands.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct State {
    /// The gym's files by name, as last taken.
    pub files: BTreeMap<String, String>,
    /// The coach's plan by day and lifter, in the order of the file.
    pub plan: BTreeMap<(NaiveDate, String), Vec<Prescription>>,
    /// Lifts that stand whole, by number: those of late, and the last of each track.
    pub lifts: BTreeMap<LiftNo, LiftRun>,
    /// Lifts under way, by number.
    pub open: BTreeSet<LiftNo>,
    /// What is kept of all others.
    pub past: Past,
    /// What each bar is believed to hold, by its name.
    pub bars: BTreeMap<String, BelievedBar>,
    /// Turns to come at each station, in the order called.
    pub rotations: BTreeMap<Station, Vec<CalledTurn>>,
    /// The hole last used at each rack, and the day.
    pub holes: BTreeMap<String, (NaiveDate, u16)>,
    /// What the screen showed last.
    pub shown: Option<Shown>,
    /// What came after the screen was shown last.
    pub unshown: Option<Unshown>,
    /// Stations whose turns were called since.
    pub called_since: BTreeSet<Station>,
    /// What the coach entered of hurt and illness, by lifter.
    pub health: BTreeMap<String, Health>,
    /// The highest lift number given so far, so that none is given twice.
    pub last_no: u32,
    /// What is known of the clocks.
    pub times: Times,
    /// When somebody last did something for each lift of the last hours, an undo too.
    pub touched: BTreeMap<LiftNo, Moment>,
    /// Lifts that were done at other kiosks, by the kiosk's name.
    pub elsewhere: BTreeMap<String, Taken>,
}

impl State {
    /// Makes the state what it is after `event`. An event about a lift that does not stand
    /// changes nothing.
    pub fn apply(&mut self, event: &Event) {
        let at = event.at;
        match &event.fact {
            Fact::FileTaken { name, text } => {
                self.files.insert(name.clone(), text.clone());
            }
            Fact::PlanTaken { rows, .. } => self.take_plan(rows),
            Fact::DayCleared { lifter, date } => {
                self.plan.remove(&(*date, lifter.clone()));
            }
            Fact::LiftBegun { no, sheet } => {
                if no.0 > self.last_no {
                    self.last_no = no.0;
                    self.retire();
                }
                let guessed = self.times.unknown_since.is_some();
                self.stand(LiftRun::begin(*no, (**sheet).clone(), at, guessed));
            }
            Fact::SetDone {
                no,
                rung,
                reps,
                hold,
            } => {
                self.note_set(*no, usize::from(*rung), at);
                let (reps, hold) = (*reps, *hold);
                self.enter(*no, at, Entered::Set { reps, hold });
            }
            Fact::RungSkipped { no, .. } => self.enter(*no, at, Entered::Skipped),
            Fact::LiftStopped { no } => self.enter(*no, at, Entered::Stopped),
            Fact::WentOn { no } => self.enter(*no, at, Entered::WentOn),
            Fact::LoadSettled { no, settled } => self.settle(*no, at, settled),
            Fact::LoadsFollowed { no, sets } => self.change(*no, |run| run.follow_top(sets)),
            Fact::EffortSaid { no, rung, effort } => {
                self.change(*no, |run| run.say_effort(*rung, *effort));
            }
            Fact::NextDecided { no, decided } => self.change(*no, |run| run.decide_next(decided)),
            Fact::NextOverridden { no, load, note } => {
                self.change(*no, |run| run.override_next(at, *load, note));
            }
            Fact::RotationPlanned { station, turns } => {
                self.rotations.insert(station.clone(), turns.clone());
            }
            Fact::EntryUndone { no } => self.undo(*no),
            Fact::BarSaid(word) => self.hear(word, at),
            Fact::BarWordUndone { bar } => self.unhear(bar),
            Fact::TurnDeferred { no } => self.speak(*no, at, Attendance::defer),
            Fact::TurnPassed { no } => self.attend(*no, |here| here.pass(at)),
            Fact::TurnClaimed { no } => self.speak(*no, at, |here| here.claim(at)),
            Fact::RestLengthened { no, seconds } => {
                self.speak(*no, at, |here| here.lengthen(at, *seconds));
            }
            Fact::LifterLeft { no } => self.speak(*no, at, Attendance::leave),
            Fact::LifterReturned { no } => self.speak(*no, at, |here| here.come(at)),
            Fact::TurnUnsaid { no } => self.unsay(*no, at),
            Fact::ScreenShown(shown) => self.show(shown, at),
            Fact::CoachSaid(word) => self.hear_coach(word),
            Fact::ClockAnchored { .. }
            | Fact::BegunElsewhere { .. }
            | Fact::DoneElsewhere { .. } => self.learn(event),
            Fact::ClockSet { offset_ms } => self.times.set(*offset_ms),
            Fact::LiftLapsed { no } => self.enter(*no, at, Entered::LeftOpen),
            Fact::LiftReopened { no, on } => self.change(*no, |run| run.reopen(at, *on)),
            Fact::LiftRedated { no, date } => self.change(*no, |run| run.redate(*date)),
        }
        self.pass(event);
        self.note_unshown(&event.fact);
        self.note_open(&event.fact);
        self.drop_turns_done();
    }

    /// What machines tell: that one began, and what was done at another.
    #[allow(
        clippy::wildcard_enum_match_arm,
        reason = "whoever calls it has looked at all others"
    )]
    fn learn(&mut self, event: &Event) {
        match &event.fact {
            Fact::ClockAnchored {
                boot,
                up_ms,
                offset_ms,
            } => self.times.anchored((*boot, *up_ms), event.at, *offset_ms),
            Fact::BegunElsewhere {
                no,
                origin,
                sheet,
                begun,
            } => self.begin_elsewhere(*no, origin, sheet, *begun),
            Fact::DoneElsewhere { no, done } => self.enter_elsewhere(*no, done),
            _ => {}
        }
    }

    fn hear_coach(&mut self, word: &CoachWord) {
        let health = self.health.entry(word.lifter.clone()).or_default();
        health.hear(word);
    }

    /// All events at once, from nothing.
    pub fn replay<'a>(events: impl IntoIterator<Item = &'a Event>) -> Self {
        let mut state = Self::default();
        for event in events {
            state.apply(event);
        }
        state
    }

    /// The lift of `lifter` on `date` that is not over, or else the last one of that day.
    #[must_use]
    pub fn lift_of(&self, lifter: &str, date: NaiveDate) -> Option<&LiftRun> {
        let own = self.runs_of(lifter);
        let of_day: Vec<&LiftRun> = own.filter(|run| run.is_of(lifter, date)).collect();
        let open = of_day.iter().find(|run| !run.is_over());
        open.or(of_day.last()).copied()
    }

    /// All lifts of `lifter` on the training day `date`, oldest first.
    pub fn lifts_of<'a>(
        &'a self,
        lifter: &'a str,
        date: NaiveDate,
    ) -> impl DoubleEndedIterator<Item = &'a LiftRun> {
        self.runs_of(lifter)
            .filter(move |run| run.is_of(lifter, date))
    }

    /// The heaviest load of `lift` that `lifter` did for at least one rep with the back held.
    #[must_use]
    pub fn best(&self, lifter: &str, lift: &str) -> Option<Mass> {
        let past = self.past.lifters.get(lifter);
        let top = past.and_then(|past| past.tops.get(lift));
        let runs = self.runs_of(lifter).filter(|run| run.sheet.lift == lift);
        let loads = runs.flat_map(kept_sets).map(|(load, _)| load);
        loads.chain(top.and_then(|top| top.best)).max()
    }

    /// The turns to come at a station, in the order called.
    #[must_use]
    pub fn rotation(&self, station: &Station) -> &[CalledTurn] {
        self.rotations.get(station).map_or(&[], Vec::as_slice)
    }

    /// The plates of one side for a rung: the rotation's, when one is planned, else the sheet's.
    #[must_use]
    pub fn stack<'a>(&'a self, run: &'a LiftRun, rung: usize) -> &'a [PlateFace] {
        let order = self.rotation(&station_of(run));
        let turn = order
            .iter()
            .find(|t| t.no == run.no && usize::from(t.rung) == rung);
        let own = run
            .sheet
            .rungs
            .get(rung)
            .map_or(&[][..], |rung| &rung.per_side);
        turn.map_or(own, |turn| &turn.per_side)
    }

    /// The hole that the pins of `rack` were last used in on `date`.
    #[must_use]
    pub fn hole_set(&self, rack: &str, date: NaiveDate) -> Option<u16> {
        self.holes
            .get(rack)
            .filter(|(day, _)| *day == date)
            .map(|(_, hole)| *hole)
    }

    /// Kinds of the plates on one side of `bar`, as they are believed to be on `date`.
    #[must_use]
    pub fn plates_on(&self, bar: &str, date: NaiveDate) -> Vec<PlateFace> {
        let known = self.bars.get(bar).filter(|known| known.date == date);
        known.map(|known| known.holds.faces()).unwrap_or_default()
    }

    fn change(&mut self, no: LiftNo, change: impl FnOnce(&mut LiftRun)) {
        if let Some(run) = self.lifts.get_mut(&no) {
            change(run);
        }
    }

    /// Time has come to an event, and somebody may have been there.
    fn pass(&mut self, event: &Event) {
        self.times.passed(event.at);
        if let Some(no) = event.fact.touches() {
            let lately = |then: &Moment| event.at.since(*then).saturating_abs() < KEEPS_NO_DAY_MS;
            self.touched.insert(no, event.at);
            self.touched.retain(|_, then| lately(then));
        }
    }

    fn take_plan(&mut self, rows: &[Prescription]) {
        for row in rows {
            self.plan.remove(&(row.date, row.lifter.clone()));
        }
        for row in rows {
            self.plan
                .entry((row.date, row.lifter.clone()))
                .or_default()
                .push(row.clone());
        }
    }

    fn enter(&mut self, no: LiftNo, at: Moment, what: Entered) {
        if let Some(run) = self.lifts.get_mut(&no) {
            run.enter(at, what);
        }
    }

    /// The work load of a lift becomes another, and the turns called for it with it.
    fn settle(&mut self, no: LiftNo, at: Moment, settled: &Settled) {
        if let Some(run) = self.lifts.get_mut(&no)
            && run.settle(at, settled)
        {
            self.restack(no);
        }
    }

    /// Turns that were called for a lift take the stacks of its sheet.
    fn restack(&mut self, no: LiftNo) {
        let Some(run) = self.lifts.get(&no) else {
            return;
        };
        let turns = self.rotations.values_mut().flatten();
        for turn in turns.filter(|turn| turn.no == no) {
            if let Some(rung) = run.sheet.rungs.get(usize::from(turn.rung)) {
                turn.per_side.clone_from(&rung.per_side);
            }
        }
    }

    fn undo(&mut self, no: LiftNo) {
        match self.lifts.get_mut(&no).map(LiftRun::undo) {
            Some(Some(Entered::Settled)) => self.restack(no),
            Some(Some(Entered::Set { .. })) => self.doubt_set(no),
            // None was left: the beginning itself.
            Some(None) => self.fall(no),
            Some(Some(_)) | None => {}
        }
    }

    /// Turns of rungs that are behind, or of lifts that are over, are no longer to come.
    fn drop_turns_done(&mut self) {
        let lifts = &self.lifts;
        let to_come = |turn: &CalledTurn| {
            let run = lifts.get(&turn.no).filter(|run| !run.attendance.away);
            let next = run.and_then(LiftRun::next_rung);
            next.is_some_and(|next| next <= usize::from(turn.rung))
        };
        for turns in self.rotations.values_mut() {
            turns.retain(to_come);
        }
        self.rotations.retain(|_, turns| !turns.is_empty());
    }
}
