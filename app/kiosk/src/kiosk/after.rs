//! What follows from an entry by itself: what is due the next time, the order of turns, whose
//! face is shown.
//!
//! Refuses: to fail; what could not be recorded is logged, and made up for at the next tick.
use super::Kiosk;
use crate::replan::replan;
use domain::next::here::{decided, undecided};
use domain::rotation::{station_of, stations};
use domain::{Command, DayCommand, LiftNo};

impl Kiosk {
    /// After an entry: the station's order anew, and whoever is up is shown.
    pub(super) fn follow(&mut self, command: &Command) {
        let no = match command {
            // A lift that is open again has turns to come.
            Command::Day(DayCommand::ReopenLift { .. }) => return self.replan(None),
            Command::BeginLift(_) => LiftNo(self.owner.state().last_no),
            Command::EnterSet { no, .. } | Command::SkipRung { no, .. } => *no,
            Command::StopLift(no) | Command::GoOn(no) | Command::Undo(no) => *no,
            Command::SettleLoad { no, .. } | Command::Lengthen { no, .. } => *no,
            Command::Defer(no) | Command::Pass(no) | Command::Claim(no) => *no,
            Command::Leave(no) | Command::Return(no) => *no,
            Command::TakeFile { .. }
            | Command::TakePlan { .. }
            | Command::ClearDay { .. }
            | Command::SayCoach(_)
            | Command::DecideNext { .. }
            | Command::OverrideNext { .. }
            | Command::SayBar(_)
            | Command::UndoBarWord(_)
            | Command::Show(_)
            | Command::CallRotation { .. }
            | Command::Day(_) => return,
        };
        self.decide_next();
        let first = matches!(command, Command::Undo(_)).then_some(no);
        self.replan(first);
        let time = self.time_of_day();
        let mut stage = self.stage.clone();
        match command {
            Command::Undo(_) => stage.show(&self.scene(&time), no),
            Command::BeginLift(_)
            | Command::SettleLoad { .. }
            | Command::Lengthen { .. }
            | Command::Defer(_)
            | Command::Pass(_)
            | Command::Claim(_)
            | Command::Leave(_)
            | Command::Return(_) => {}
            Command::EnterSet { .. }
            | Command::SkipRung { .. }
            | Command::StopLift(_)
            | Command::GoOn(_) => stage.follow(&self.scene(&time), no),
            Command::TakeFile { .. }
            | Command::TakePlan { .. }
            | Command::ClearDay { .. }
            | Command::SayCoach(_)
            | Command::DecideNext { .. }
            | Command::OverrideNext { .. }
            | Command::SayBar(_)
            | Command::UndoBarWord(_)
            | Command::Show(_)
            | Command::CallRotation { .. }
            | Command::Day(_) => {}
        }
        self.stage = stage;
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

    /// Calls the turns at every station anew where they changed.
    pub(super) fn replan(&mut self, first: Option<LiftNo>) {
        let (date, now) = (self.date(), self.clock.now());
        for station in stations(self.owner.state(), date) {
            let state = self.owner.state();
            let here = |no: &LiftNo| {
                state
                    .lifts
                    .get(no)
                    .is_some_and(|r| station_of(r) == station)
            };
            let first = first.filter(here);
            let turns = replan(
                &self.gym.gym,
                state,
                &station,
                date,
                now,
                first,
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
