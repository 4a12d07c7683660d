//! What follows from an entry by itself: what is due the next time, the order of turns, whose
//! face is shown.
//!
//! Refuses: to fail; what could not be recorded is logged, and made up for at the next tick.
use super::Kiosk;
use crate::replan::{Because, replan};
use domain::day::groups::following;
use domain::next::here::{decided, undecided};
use domain::rotation::{Station, open_at, station_of, stations};
use domain::state::{LiftRun, Unshown};
use domain::{Command, DayCommand, LiftNo, Moment, State};
use std::collections::BTreeSet;

impl Kiosk {
    /// After an entry: the station's order anew, and whoever is up is shown.
    pub(super) fn follow(&mut self, command: &Command) {
        // A clock passes over, and nobody's hand: what undo takes back stays.
        if !matches!(command, Command::Pass(_) | Command::Show(_)) {
            self.stage.answered();
        }
        let no = match command {
            // A lift that is open again has turns to come.
            Command::Day(DayCommand::ReopenLift { .. }) => return self.replan(None, None),
            Command::BeginLift(_) => LiftNo(self.owner.state().last_no),
            Command::EnterSet { no, .. } | Command::SkipRung { no, .. } => *no,
            Command::StopLift(no) | Command::GoOn(no) | Command::Undo(no) => *no,
            Command::SettleLoad { no, .. } | Command::Lengthen { no, .. } => *no,
            Command::SayEffort { no, .. } => *no,
            Command::Defer(no) | Command::Pass(no) | Command::Claim(no) => *no,
            Command::Leave(no) | Command::Return(no) | Command::UnsayTurn(no) => *no,
            Command::TakeFile { .. }
            | Command::TakePlan { .. }
            | Command::ClearDay { .. }
            | Command::SayCoach(_)
            | Command::FollowTop { .. }
            | Command::DecideNext { .. }
            | Command::OverrideNext { .. }
            | Command::SayBar(_)
            | Command::UndoBarWord(_)
            | Command::Show(_)
            | Command::CallRotation { .. }
            | Command::Day(_)
            | Command::TakeElsewhere(_) => return,
        };
        self.follow_top();
        self.decide_next();
        let first = if matches!(command, Command::UnsayTurn(_)) {
            self.owner.state().up_again(no)
        } else {
            matches!(command, Command::Undo(_) | Command::Claim(_)).then_some(no)
        };
        let here = self.owner.state().lifts.get(&no).map(station_of);
        self.replan(first, here.as_ref());
        let time = self.time_of_day();
        let mut stage = self.stage.clone();
        match command {
            Command::Undo(_) => stage.show(&self.scene(&time), no),
            Command::Return(_) | Command::UnsayTurn(_) => {
                stage.show_again(&self.scene(&time), no);
            }
            Command::BeginLift(_)
            | Command::SettleLoad { .. }
            | Command::Pass(_)
            | Command::Claim(_) => {}
            Command::Lengthen { .. } | Command::Defer(_) | Command::Leave(_) => {
                stage.follow(&self.scene(&time), no, false);
            }
            Command::EnterSet { .. }
            | Command::SayEffort { .. }
            | Command::SkipRung { .. }
            | Command::StopLift(_)
            | Command::GoOn(_) => stage.follow(&self.scene(&time), no, true),
            Command::TakeFile { .. }
            | Command::TakePlan { .. }
            | Command::ClearDay { .. }
            | Command::SayCoach(_)
            | Command::FollowTop { .. }
            | Command::DecideNext { .. }
            | Command::OverrideNext { .. }
            | Command::SayBar(_)
            | Command::UndoBarWord(_)
            | Command::Show(_)
            | Command::CallRotation { .. }
            | Command::Day(_)
            | Command::TakeElsewhere(_) => {}
        }
        self.stage = stage;
    }

    /// After a start: what the last tap would have brought up, where a power cut came before it
    /// was shown.
    pub(super) fn take_up(&mut self) {
        let Some(unshown) = self.owner.state().unshown else {
            return;
        };
        self.decide_next();
        let first = match unshown {
            Unshown::Undo(no) | Unshown::Claim(no) => Some(no),
            Unshown::Unsaid(no) => self.owner.state().up_again(no),
            Unshown::Entry(_)
            | Unshown::Load(_)
            | Unshown::PutOff(_)
            | Unshown::Return(_)
            | Unshown::Begin
            | Unshown::Pass
            | Unshown::Word
            | Unshown::WordUndone => None,
        };
        if !matches!(unshown, Unshown::Word | Unshown::WordUndone) {
            let called = self.owner.state().called_since.clone();
            let here = happened_at(self.owner.state(), unshown);
            self.replan_but(first, here.as_ref(), &called);
        }
        let time = self.time_of_day();
        let mut stage = self.stage.clone();
        stage.take_up(&self.scene(&time), unshown);
        self.stage = stage;
    }

    /// Groups to come follow the top set as it was lifted, or settled; tells whether any did.
    pub(super) fn follow_top(&mut self) -> bool {
        let (state, today) = (self.owner.state(), self.date());
        let open = state
            .lifts
            .values()
            .rev()
            .filter(|run| run.day == today && !run.is_over() && !run.sheet.groups.is_empty());
        let found: Vec<_> = open
            .map(|run| (run.no, following(&self.gym.gym, run)))
            .filter(|(_, sets)| !sets.is_empty())
            .collect();
        let any = !found.is_empty();
        for (no, sets) in found {
            let command = Command::FollowTop { no, sets };
            if let Err(error) = self.owner.command(&command, self.clock.now()) {
                tracing::warn!(%error, "what follows the top set was not recorded");
            }
        }
        any
    }

    /// Keeps what the screen shows, where that is something else than before: so it shows the same
    /// after a restart, and an order that hands may be at work on is known.
    pub(super) fn keep_shown(&mut self) {
        let time = self.time_of_day();
        let shown = self.stage.shown(&self.scene(&time), self.shared.is_some());
        let state = self.owner.state();
        if state.shown.as_ref() == Some(&shown) && state.unshown.is_none() {
            return;
        }
        let show = Command::Show(Box::new(shown));
        if let Err(error) = self.owner.command(&show, self.clock.now()) {
            tracing::warn!(%error, "what is shown was not kept");
        }
    }

    /// Whoever was called and does not come makes way for somebody who is ready.
    pub(super) fn pass_over(&mut self) {
        let now = self.clock.now();
        let passed: Vec<LiftNo> = {
            let all = stations(self.owner.state(), self.date());
            self.see_who_is_up(&all, now);
            let stations = all.into_iter();
            let late = stations.filter_map(|station| self.late_at(&station));
            late.collect()
        };
        for no in passed {
            let pass = Command::Pass(no);
            match self.owner.command(&pass, now) {
                Ok(()) => self.follow(&pass),
                Err(error) => tracing::warn!(%error, "nobody was passed over"),
            }
        }
    }

    /// Nobody can come before the turn is theirs: whoever was up before may have taken long.
    fn see_who_is_up(&mut self, stations: &BTreeSet<Station>, now: Moment) {
        let state = self.owner.state();
        self.seen
            .up_since
            .retain(|station, _| stations.contains(station));
        for station in stations {
            let Some(first) = state.rotation(station).first().map(|turn| turn.no) else {
                self.seen.up_since.remove(station);
                continue;
            };
            // After a start nobody knows since when; other signs tell then.
            let since = match self.seen.up_since.get(station) {
                Some((no, since)) if *no == first => *since,
                Some(_) => now,
                None => Moment::default(),
            };
            let station = station.clone();
            self.seen.up_since.insert(station, (first, since));
        }
    }

    /// The lift whose lifter was called at a station and does not come, while somebody else there
    /// is ready.
    fn late_at(&self, station: &Station) -> Option<LiftNo> {
        let (state, now, date) = (self.owner.state(), self.clock.now(), self.date());
        let first = state.rotation(station).first()?;
        let run = state.lifts.get(&first.no)?;
        let said = state.bars.get(&station.bar).map(|bar| bar.at);
        let called = [
            run.ready_at(),
            run.attendance.here_since,
            run.attendance.passed_at,
            said,
            self.seen.up_since.get(station).map(|(_, since)| *since),
        ];
        let called = called.into_iter().flatten().max()?;
        let own = self.stage.lifter.as_ref() == Some(&run.sheet.lifter);
        // Whoever was seen at their own screen is not gone.
        let since = if own {
            called.max(self.tapped_at)
        } else {
            called
        };
        let pass_after_ms = i64::from(self.gym.gym.called_for_s()) * 1_000;
        let ready = |other: &LiftRun| {
            let rested = other.ready_at().is_none_or(|at| at <= now);
            other.no != run.no && rested && !other.awaits_decision()
        };
        let waits = open_at(state, station, date).any(ready);
        (waits && now.0.saturating_sub(since.0) > pass_after_ms).then_some(run.no)
    }

    /// Records what the rules give after each lift that is over; also one that a power cut kept from
    /// being recorded. Looks again only when something was entered or the day is another.
    pub(super) fn decide_next(&mut self) -> bool {
        let asked = (self.date(), self.owner.seq());
        if self.decided_for == Some(asked) {
            return false;
        }
        let state = self.owner.state();
        let open = undecided(state, asked.0);
        let open = open.into_iter().filter_map(|no| state.lifts.get(&no));
        let decided: Vec<_> = open
            .filter_map(|run| Some((run.no, decided(&self.gym.gym, state, run)?)))
            .collect();
        self.decided_for = Some(asked);
        let any = !decided.is_empty();
        for (no, decided) in decided {
            let decided = Box::new(decided);
            let command = Command::DecideNext { no, decided };
            if let Err(error) = self.owner.command(&command, self.clock.now()) {
                tracing::warn!(%error, "what is due the next time was not recorded");
            }
        }
        any
    }

    /// Calls the turns at every station anew where they changed: at `here`, where something
    /// happened, or at all without it, as they are best; elsewhere where they no longer serve.
    pub(super) fn replan(&mut self, first: Option<LiftNo>, here: Option<&Station>) {
        self.replan_but(first, here, &BTreeSet::new());
    }

    /// The same, but at stations where that is done already.
    fn replan_but(
        &mut self,
        first: Option<LiftNo>,
        here: Option<&Station>,
        done: &BTreeSet<Station>,
    ) {
        let (date, now) = (self.date(), self.clock.now());
        let mut stations = stations(self.owner.state(), date);
        stations.retain(|station| !done.contains(station));
        for station in stations {
            let state = self.owner.state();
            let own = |no: &LiftNo| {
                let run = state.lifts.get(no);
                run.is_some_and(|run| station_of(run) == station)
            };
            let because = match here {
                Some(here) if *here != station => Because::Elsewhere,
                _ => Because::Here(first.filter(own)),
            };
            let turns = replan(
                &self.gym.gym,
                state,
                &station,
                date,
                now,
                because,
                self.patience,
            );
            let Some(turns) = turns else { continue };
            let call = Command::CallRotation { station, turns };
            if let Err(error) = self.owner.command(&call, now) {
                tracing::warn!(%error, "the order of turns was not called");
            }
        }
    }
}

/// The station at which happened what the screen had not answered, where it is one lift's.
fn happened_at(state: &State, unshown: Unshown) -> Option<Station> {
    let runs = || state.lifts.values();
    let run = match unshown {
        Unshown::Entry(no)
        | Unshown::Undo(no)
        | Unshown::Load(no)
        | Unshown::PutOff(no)
        | Unshown::Claim(no)
        | Unshown::Return(no)
        | Unshown::Unsaid(no) => state.lifts.get(&no),
        Unshown::Begin => state.lifts.get(&LiftNo(state.last_no)),
        Unshown::Pass => runs().max_by_key(|run| run.attendance.passed_at),
        Unshown::Word | Unshown::WordUndone => None,
    };
    run.map(station_of)
}
