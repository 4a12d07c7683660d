//! All outings of a lifter's lift that are kept, whole or not.
use super::outing::Outing;
use crate::state::State;
use alloc::vec::Vec;
use chrono::NaiveDate;

/// The outings of a lifter's lift before `date`, oldest first, with all reps: as many as
/// [`crate::past`] keeps.
#[must_use]
pub fn outings(state: &State, lifter: &str, lift: &str, before: NaiveDate) -> Vec<Outing> {
    let past = state.past.lifters.get(lifter);
    let past = past.into_iter().flat_map(|past| past.outings_of(lift));
    let past = past.filter(|past| past.outing.date < before);
    let runs = state.runs_of(lifter).filter(|run| run.sheet.lift == lift);
    let late = runs.filter(|run| run.sheet.date < before);
    let past = past.map(|past| past.outing);
    let mut found: Vec<Outing> = past.chain(late.filter_map(Outing::of)).collect();
    found.sort_by_key(|outing| (outing.date, outing.no));
    found
}
