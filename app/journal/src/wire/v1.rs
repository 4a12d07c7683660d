//! Wire version 1. **Never change anything here once it is released: add v2.** Masses are whole
//! nanograms, lengths whole nanometres, dates ISO 8601, choices words.
//!
//! Refuses: fields it does not know, fields left out, floats.
mod fact;
pub(super) mod next;
mod plan;
mod rotation;
mod rung;
pub(super) mod settle;
pub(super) mod sheet;
mod warning;
mod words;

use super::{WireFault, Written};
use domain::Fact;
use serde::de::DeserializeOwned;
use serde::{Deserialize, Deserializer, Serialize};

use fact::{FileTakenV1, LiftV1, RungV1, SetDoneV1};
pub(super) use rung::PlateFaceV1;

use next::{NextDecidedV1, NextOverriddenV1};
use plan::{DayClearedV1, PlanTakenV1};
use rotation::RotationV1;
use settle::LoadSettledV1;
use sheet::LiftBegunV1;

/// The number of this version.
pub const VERSION: u32 = 1;

const FILE_TAKEN: &str = "file_taken";
const PLAN_TAKEN: &str = "plan_taken";
const DAY_CLEARED: &str = "day_cleared";
const LIFT_BEGUN: &str = "lift_begun";
const SET_DONE: &str = "set_done";
const RUNG_SKIPPED: &str = "rung_skipped";
const LIFT_STOPPED: &str = "lift_stopped";
const WENT_ON: &str = "went_on";
const ROTATION_PLANNED: &str = "rotation_planned";
const ENTRY_UNDONE: &str = "entry_undone";
const LOAD_SETTLED: &str = "load_settled";
const NEXT_DECIDED: &str = "next_decided";
const NEXT_OVERRIDDEN: &str = "next_overridden";

/// Writes a fact in this version; those that came later are written by theirs.
#[must_use]
pub(super) fn encode(fact: &Fact) -> Written {
    match fact {
        Fact::FileTaken { name, text } => write(FILE_TAKEN, &FileTakenV1::of(name, text)),
        Fact::PlanTaken { name, rows } => write(PLAN_TAKEN, &PlanTakenV1::of(name, rows)),
        Fact::DayCleared { lifter, date } => write(DAY_CLEARED, &DayClearedV1::of(lifter, *date)),
        Fact::LiftBegun { no, sheet } => write(LIFT_BEGUN, &LiftBegunV1::of(*no, sheet)),
        Fact::SetDone {
            no,
            rung,
            reps,
            hold,
        } => write(SET_DONE, &SetDoneV1::of(*no, *rung, *reps, *hold)),
        Fact::RungSkipped { no, rung } => write(RUNG_SKIPPED, &RungV1::of(*no, *rung)),
        Fact::LiftStopped { no } => write(LIFT_STOPPED, &LiftV1::of(*no)),
        Fact::WentOn { no } => write(WENT_ON, &LiftV1::of(*no)),
        Fact::RotationPlanned { station, turns } => {
            write(ROTATION_PLANNED, &RotationV1::of(station, turns))
        }
        Fact::EntryUndone { no } => write(ENTRY_UNDONE, &LiftV1::of(*no)),
        Fact::LoadSettled { no, settled } => write(LOAD_SETTLED, &LoadSettledV1::of(*no, settled)),
        Fact::NextDecided { no, decided } => write(NEXT_DECIDED, &NextDecidedV1::of(*no, decided)),
        Fact::NextOverridden { no, load, note } => {
            write(NEXT_OVERRIDDEN, &NextOverriddenV1::of(*no, *load, note))
        }
        Fact::BarSaid(_)
        | Fact::BarWordUndone { .. }
        | Fact::TurnDeferred { .. }
        | Fact::TurnPassed { .. }
        | Fact::TurnClaimed { .. }
        | Fact::RestLengthened { .. }
        | Fact::LifterLeft { .. }
        | Fact::LifterReturned { .. }
        | Fact::TurnUnsaid { .. }
        | Fact::ScreenShown(_)
        | Fact::CoachSaid(_)
        | Fact::LoadsFollowed { .. }
        | Fact::EffortSaid { .. }
        | Fact::ClockAnchored { .. }
        | Fact::ClockSet { .. }
        | Fact::LiftLapsed { .. }
        | Fact::LiftReopened { .. }
        | Fact::LiftRedated { .. }
        | Fact::BegunElsewhere { .. }
        | Fact::DoneElsewhere { .. } => unreachable!("version 2 writes these"),
    }
}

/// Reads a fact of this version.
///
/// # Errors
/// [`WireFault`] when kind or body are none of this version.
pub fn decode(kind: &str, body: &str) -> Result<Fact, WireFault> {
    match kind {
        FILE_TAKEN => Ok(read::<FileTakenV1>(FILE_TAKEN, body)?.into()),
        PLAN_TAKEN => read::<PlanTakenV1>(PLAN_TAKEN, body)?.try_into(),
        DAY_CLEARED => read::<DayClearedV1>(DAY_CLEARED, body)?.try_into(),
        LIFT_BEGUN => read::<LiftBegunV1>(LIFT_BEGUN, body)?.try_into(),
        SET_DONE => Ok(read::<SetDoneV1>(SET_DONE, body)?.into()),
        RUNG_SKIPPED => Ok(read::<RungV1>(RUNG_SKIPPED, body)?.into()),
        LIFT_STOPPED => Ok(read::<LiftV1>(LIFT_STOPPED, body)?.stopped()),
        WENT_ON => Ok(read::<LiftV1>(WENT_ON, body)?.went_on()),
        ROTATION_PLANNED => read::<RotationV1>(ROTATION_PLANNED, body)?.try_into(),
        ENTRY_UNDONE => Ok(read::<LiftV1>(ENTRY_UNDONE, body)?.undone()),
        LOAD_SETTLED => Ok(read::<LoadSettledV1>(LOAD_SETTLED, body)?.into()),
        NEXT_DECIDED => read::<NextDecidedV1>(NEXT_DECIDED, body)?.try_into(),
        NEXT_OVERRIDDEN => Ok(read::<NextOverriddenV1>(NEXT_OVERRIDDEN, body)?.into()),
        _ => Err(WireFault::Kind {
            version: VERSION,
            kind: kind.to_owned(),
        }),
    }
}

fn write(kind: &'static str, body: &impl Serialize) -> Written {
    write_in(VERSION, kind, body)
}

pub(super) fn write_in(version: u32, kind: &'static str, body: &impl Serialize) -> Written {
    Written {
        version,
        kind,
        body: serde_json::to_string(body).expect("structs of numbers and texts always write"),
    }
}

fn read<T: DeserializeOwned>(kind: &'static str, body: &str) -> Result<T, WireFault> {
    read_in(kind, body)
}

pub(super) fn read_in<T: DeserializeOwned>(kind: &'static str, body: &str) -> Result<T, WireFault> {
    serde_json::from_str(body).map_err(|error| WireFault::Body {
        kind,
        detail: error.to_string(),
    })
}

/// Reads an optional value whose field must be there, if only as null.
pub(super) fn present<'de, D, T>(source: D) -> Result<Option<T>, D::Error>
where
    D: Deserializer<'de>,
    T: Deserialize<'de>,
{
    Option::deserialize(source)
}

/// Writes a day as ISO 8601.
pub(super) fn write_date(date: chrono::NaiveDate) -> String {
    date.format("%Y-%m-%d").to_string()
}

/// Reads a day in exactly the form that [`write_date`] gives.
pub(super) fn read_date(text: &str) -> Result<chrono::NaiveDate, WireFault> {
    chrono::NaiveDate::parse_from_str(text, "%Y-%m-%d")
        .ok()
        .filter(|date| write_date(*date) == text)
        .ok_or_else(|| WireFault::Value {
            field: "date",
            found: text.to_owned(),
            wanted: "a day such as 2026-01-31",
        })
}
