//! What keeps the clock and the days: anchors, clocks that were set, lifts that were left open.
use super::{Refusal, one_at_a_time};
use crate::event::{Event, Fact};
use crate::lift_no::LiftNo;
use crate::moment::Moment;
use crate::state::{LiftRun, State};
use crate::steady::Reading;
use alloc::vec::Vec;
use chrono::NaiveDate;

/// What keeps the clock and the days.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum DayCommand {
    /// Begin with a machine whose clocks read so.
    AnchorClock(Reading),
    /// Note how far the wall clock is ahead.
    NoteClock {
        /// Of the steady clock, milliseconds.
        offset_ms: i64,
    },
    /// Close a lift that was left open on an earlier day.
    CloseLeftOpen(LiftNo),
    /// Open such a lift again, on the coach's word.
    ReopenLift {
        /// Which.
        no: LiftNo,
        /// The training day.
        on: NaiveDate,
    },
    /// Put the date of a lift right that was begun before the time of day was known.
    RedateLift {
        /// Which.
        no: LiftNo,
        /// Its day.
        date: NaiveDate,
    },
}

pub(super) fn decide(
    state: &State,
    command: DayCommand,
    now: Moment,
) -> Result<Vec<Event>, Refusal> {
    let run_of = |no: LiftNo| state.lifts.get(&no).ok_or(Refusal::NoSuchLift);
    let fact = match command {
        DayCommand::AnchorClock(reading) => return Ok(Vec::from([anchor(state, reading)])),
        DayCommand::NoteClock { offset_ms } => Fact::ClockSet { offset_ms },
        DayCommand::CloseLeftOpen(no) => {
            if run_of(no)?.is_over() {
                return Err(Refusal::Over);
            }
            Fact::LiftLapsed { no }
        }
        DayCommand::ReopenLift { no, on } => reopen(state, run_of(no)?, on)?,
        DayCommand::RedateLift { no, date } => {
            if !run_of(no)?.date_guessed {
                return Err(Refusal::DateKnown);
            }
            Fact::LiftRedated { no, date }
        }
    };
    Ok(Vec::from([Event { at: now, fact }]))
}

/// The last entry is taken back, unless nobody entered it.
pub(super) fn undo(state: &State, no: LiftNo) -> Result<Fact, Refusal> {
    let run = state.lifts.get(&no).ok_or(Refusal::NoSuchLift)?;
    if run.is_left_open() {
        return Err(Refusal::LeftOpen);
    }
    if state.is_from_elsewhere(no) {
        return Err(Refusal::DoneElsewhere);
    }
    Ok(Fact::EntryUndone { no })
}

/// At its own moment, not at that of the command: the steady clock begins with it.
fn anchor(state: &State, reading: Reading) -> Event {
    let moment = state.times.anchor(reading).moment_at(reading.up_ms);
    Event {
        at: moment,
        fact: Fact::ClockAnchored {
            boot: reading.boot,
            up_ms: reading.up_ms,
            offset_ms: reading.is_known().then(|| reading.wall.since(moment)),
        },
    }
}

fn reopen(state: &State, run: &LiftRun, on: NaiveDate) -> Result<Fact, Refusal> {
    if !run.is_left_open() {
        return Err(Refusal::NotLeftOpen);
    }
    one_at_a_time(state, &run.sheet.lifter, on)?;
    Ok(Fact::LiftReopened { no: run.no, on })
}
