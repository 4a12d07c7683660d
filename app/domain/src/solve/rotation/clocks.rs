//! When each turn is done at the soonest, by the place that it leads to: by the least handling
//! between turns and each lifter's own rests.
//!
//! Refuses: nothing.
use super::course::{Course, Times};
use super::model::Model;
use super::spread::{Cost, LANES, Spread};
use super::steps::{Step, rows_of, turn_before};
use alloc::vec;
use alloc::vec::Vec;

/// A turn of a lifter that leaves a hole set.
#[derive(Debug, Clone, Copy)]
pub(super) struct Clock {
    pub lifter: usize,
    pub hole: u8,
    /// It is done no sooner, nanoseconds.
    pub done: i64,
}

/// Places that are as much work as one state.
pub(super) const PLACES: usize = 4;

/// By place: the turns that lead there; `None` when `ponder` says to stop, as it does in
/// [`super::allowance`].
pub(super) fn clocks<C: Cost>(
    model: &Model,
    spread: &mut Spread<'_, C>,
    course: &Course,
    times: &Times,
    ponder: &mut dyn FnMut(usize) -> bool,
) -> Option<Vec<Vec<Clock>>> {
    let never = |(lifter, hole)| Clock {
        lifter,
        hole,
        done: i64::MAX / 2,
    };
    let all = course.places.iter();
    let all = all.map(|place| rows_of(model, place).into_iter().map(never).collect());
    let mut clocks: Vec<Vec<Clock>> = all.collect();
    clocks[0][0].done = model.now;
    let mut nearest = vec![None; 2 * (model.turns.len() + 1) * model.turns.len()];
    for (at, place) in course.places.iter().enumerate() {
        if at % PLACES == 0 && !ponder(1) {
            return None;
        }
        for from in clocks[at].clone() {
            let last = turn_before(model, place, from.lifter);
            for (next, to) in place.next.iter().enumerate() {
                let Some(to) = to.map(|to| to as usize) else {
                    continue;
                };
                let step: Step<C> = Step::new(model, course, at, to, next, from.hole);
                let slot = 2 * (last * model.turns.len() + step.turn) + usize::from(step.change);
                let nearest =
                    *nearest[slot].get_or_insert_with(|| least_between(spread, last, &step));
                let loaded = from.done + (nearest + step.hole_change.units()) * model.unit;
                let rested = times.rested(model, next, usize::from(place.done[next]));
                let done = loaded.max(rested) + step.lasts.units() * model.unit;
                let there = clocks[to].iter_mut();
                for there in there.filter(|c| c.lifter == next && c.hole == step.hole_then) {
                    there.done = there.done.min(done);
                }
            }
        }
    }
    Some(clocks)
}

/// The least handling from any stack of turn `last` to any of the step's turn, in units.
pub(super) fn least_between<C: Cost>(
    spread: &mut Spread<'_, C>,
    last: usize,
    step: &Step<C>,
) -> i64 {
    let zero = vec![[C::of(0); LANES]; spread.before(step.turn).len()];
    let mut least = Vec::new();
    spread.least((last, step.turn), step.change, &zero, &mut least);
    let least = least.iter().map(|lanes| lanes[0]).min();
    least.unwrap_or(C::FAR).units()
}
