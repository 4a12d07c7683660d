//! What a row of the plan asks against what is due: the lower of the two stands on the sheet until
//! the coach has ruled, and nothing stands there for who is hurt or begins anew.
use super::{NoSheet, asked, sheet};
use crate::gym::Gym;
use crate::lifter::Lifter;
use crate::mass::Mass;
use crate::next::{Due, Why};
use crate::plausible::{self, Odd};
use crate::prescription::{LoadWish, Prescription};
use crate::sheet::{LiftSheet, RungKind};
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
    let with = (gym, state);
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
        return (plausible(with, lifter, row, (planned, false)), None);
    };
    let decision = &next.decision;
    let Some(due) = decision.due() else {
        let days = decision.away_days;
        return (Err(NoSheet::Anew { days }), None);
    };
    if due == work {
        return (plausible(with, lifter, row, (planned, true)), None);
    }
    let ruled = decision.why == Why::Coach;
    if !ruled && work < due {
        return (plausible(with, lifter, row, (planned, true)), Some(work));
    }
    let row = row.with_load(due, |group| asked((gym, state), lifter, row, group).ok());
    let lower = sheet(gym, state, lifter, &row);
    let lower = plausible(with, lifter, &row, (lower, true));
    (lower, (!ruled).then_some(work))
}

fn work_load(sheet: &LiftSheet) -> Option<Mass> {
    let main = sheet.main_rungs();
    sheet.rungs.get(main.start).map(|rung| rung.load)
}

/// Sets that the record does not support are not shown before the coach has said that they are
/// meant. With `due`, the main sets follow from what was done; the others are looked at all the
/// same.
fn plausible(
    (gym, state): (&Gym, &State),
    lifter: &Lifter,
    row: &Prescription,
    (planned, due): (Result<LiftSheet, NoSheet>, bool),
) -> Result<LiftSheet, NoSheet> {
    let sheet = planned?;
    let health = state.health.get(&lifter.name);
    let is_meant = |load| health.is_some_and(|health| health.is_meant(&row.lift, row.date, load));
    let main = sheet.main_rungs();
    let mut last = None;
    for (at, rung) in sheet.rungs.iter().enumerate() {
        let set = (sheet.reps_of(at).least, rung.load);
        let looked_at = last.replace(set) == Some(set) || due && main.contains(&at);
        if rung.kind == RungKind::WarmUp || looked_at || is_meant(rung.load) {
            continue;
        }
        let odd = plausible::odd((gym, state), lifter, &row.lift, set, row.date);
        if let Some(odd) = odd.filter(|odd| odd.holds()) {
            return Err(looks_wrong(lifter, rung.load, odd));
        }
    }
    let work = work_load(&sheet).filter(|work| !is_meant(*work));
    match (work, plausible::odd_reps(row)) {
        (Some(work), Some(odd)) => Err(looks_wrong(lifter, work, odd)),
        _ => Ok(sheet),
    }
}

const fn looks_wrong(lifter: &Lifter, load: Mass, odd: Odd) -> NoSheet {
    NoSheet::LooksWrong {
        load,
        odd,
        unit: lifter.unit,
    }
}
