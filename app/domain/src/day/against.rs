//! What a row of the plan asks against what is due: the lower of the two stands on the sheet until
//! the coach has ruled, and nothing stands there for who is hurt or begins anew.
use super::{NoSheet, asked, sheet};
use crate::gym::Gym;
use crate::lifter::Lifter;
use crate::mass::Mass;
use crate::next::{Due, Why};
use crate::plausible;
use crate::prescription::{LoadWish, Prescription};
use crate::sheet::LiftSheet;
use crate::state::State;

/// The sheet of a row, and the load that the plan asks where it is another than what is due.
pub(super) fn against(
    gym: &Gym,
    state: &State,
    lifter: &Lifter,
    row: &Prescription,
    next: Option<&Due>,
) -> (Result<LiftSheet, NoSheet>, Option<Mass>) {
    let health = state.health.get(&lifter.name);
    let hurt = health.and_then(|health| health.hurt.as_ref());
    if hurt.is_some_and(|hurt| hurt.since <= row.date) {
        return (Err(NoSheet::Hurt), None);
    }
    let due = next.and_then(|next| next.decision.due());
    // What is due is what such a row asks for.
    let filled = due.filter(|_| row.main().load == LoadWish::Due);
    let filled = filled.map(|due| row.filled(due));
    let row = filled.as_ref().unwrap_or(row);
    let planned = sheet(gym, state, lifter, row);
    let Some(work) = planned.as_ref().ok().and_then(work_load) else {
        return (planned, None);
    };
    let Some(next) = next else {
        return (plausible(state, lifter, row, planned, work), None);
    };
    let decision = &next.decision;
    let Some(due) = decision.due() else {
        let days = decision.away_days;
        return (Err(NoSheet::Anew { days }), None);
    };
    if due == work {
        return (planned, None);
    }
    let ruled = decision.why == Why::Coach;
    if !ruled && work < due {
        return (planned, Some(work));
    }
    let row = row.with_load(due, |group| asked((gym, state), lifter, row, group).ok());
    let lower = sheet(gym, state, lifter, &row);
    (lower, (!ruled).then_some(work))
}

fn work_load(sheet: &LiftSheet) -> Option<Mass> {
    let main = sheet.main_rungs();
    sheet.rungs.get(main.start).map(|rung| rung.load)
}

/// A load that the record does not support is not shown before the coach has said that it is meant.
fn plausible(
    state: &State,
    lifter: &Lifter,
    row: &Prescription,
    planned: Result<LiftSheet, NoSheet>,
    work: Mass,
) -> Result<LiftSheet, NoSheet> {
    let health = state.health.get(&lifter.name);
    if health.is_some_and(|health| health.is_meant(&row.lift, row.date, work)) {
        return planned;
    }
    match plausible::odd(state, lifter, &row.lift, row.main().reps.least, work) {
        Some(supports) => Err(NoSheet::LooksWrong {
            load: work,
            supports,
            unit: lifter.unit,
        }),
        None => planned,
    }
}
