//! The day that is trained: it ends when its lifts end, not at midnight.
//!
//! The wall clock says which day begins; once somebody is under way nothing that is done to it
//! ends the day.
use crate::lift_no::LiftNo;
use crate::moment::Moment;
use crate::state::{LiftRun, State};
use alloc::collections::BTreeMap;
use alloc::vec::Vec;
use chrono::NaiveDate;

/// How long the day stays after its last lift ended, milliseconds: whoever comes next still belongs
/// to the evening. Common practice, no source.
pub const STAYS_AFTER_END_MS: i64 = 20 * 60_000;

/// The day that is trained at `now`. A lift under way keeps its day until `ends_after_s` after its
/// last entry, one that ended for [`STAYS_AFTER_END_MS`]; with none it is `local`, the day by the
/// gym's wall clock.
#[must_use]
pub fn training_day(state: &State, ends_after_s: u32, local: NaiveDate, now: Moment) -> NaiveDate {
    let touched = state.touched.iter();
    let runs = touched.filter_map(|(no, at)| Some((*at, state.lifts.get(no)?)));
    let last = runs.filter(|(_, run)| keeps_its_day(state, ends_after_s, run, now));
    last.max_by_key(|(at, run)| (*at, run.no))
        .map_or(local, |(_, run)| run.day)
}

/// Lifts that were left open on a day before `today`, by number.
#[must_use]
pub fn left_open(state: &State, ends_after_s: u32, today: NaiveDate, now: Moment) -> Vec<LiftNo> {
    let earlier = state.open().filter(|run| run.day < today);
    earlier
        .filter(|run| !keeps_its_day(state, ends_after_s, run, now))
        .map(|run| run.no)
        .collect()
}

/// Lifts that were begun before the time of day was known, with the dates that are right, once it
/// is. `day_of` says on which day of the gym's wall clock a moment fell. Lifts of one guessed day
/// stay together, on the day on which the first of them was begun; beside a lift of which the day is
/// no guess, and which still keeps it, the guess was right.
pub fn dates_put_right(
    state: &State,
    ends_after_s: u32,
    now: Moment,
    day_of: impl Fn(Moment) -> NaiveDate,
) -> Vec<(LiftNo, NaiveDate)> {
    if state.times.unknown_since.is_some() {
        return Vec::new();
    }
    let mut right: BTreeMap<NaiveDate, NaiveDate> = BTreeMap::new();
    let guessed = || state.lifts.values().filter(|run| run.date_guessed);
    for run in guessed() {
        let is_sure = |other: &&LiftRun| other.day == run.day && !other.date_guessed;
        let mut sure = state.lifts.values().filter(is_sure);
        let was_right = sure.any(|other| keeps_its_day(state, ends_after_s, other, now));
        let day = if was_right {
            run.day
        } else {
            day_of(run.begun_at)
        };
        right.entry(run.day).or_insert(day);
    }
    guessed()
        .filter_map(|run| Some((run.no, *right.get(&run.day)?)))
        .collect()
}

fn keeps_its_day(state: &State, ends_after_s: u32, run: &LiftRun, now: Moment) -> bool {
    let Some(touched) = state.touched.get(&run.no) else {
        return false;
    };
    let ago_ms = state.times.ago_ms(*touched, now);
    if !run.is_over() {
        return ago_ms < i64::from(ends_after_s).saturating_mul(1_000);
    }
    !run.is_left_open() && ago_ms < STAYS_AFTER_END_MS
}
