//! Leaves out of a course what no plan as good as the best one known can pass through.
//!
//! For each turn that leads to a place, the least time to get there and the least from there to
//! the end are worked out, by the least handling between turns and by each lifter's own rests.
use super::clocks::{Clock, PLACES, clocks, least_between};
use super::course::{Course, Times};
use super::model::Model;
use super::spread::{Cost, Spread};
use super::steps::{Step, turn_before};
use alloc::vec;
use alloc::vec::Vec;

/// The part of `course` through which a plan can pass that ends no later than `ends`; `None` when
/// `ponder` says to stop, as it does in [`super::allowance`].
pub(super) fn thinned<C: Cost>(
    model: &Model,
    spread: &mut Spread<'_, C>,
    mut course: Course,
    ends: i64,
    ponder: &mut dyn FnMut(usize) -> bool,
) -> Option<Course> {
    let times = Times::new(model);
    let done = clocks(model, spread, &course, &times, ponder)?;
    let left = left(model, spread, (&course, &times), &done, ponder)?;
    for at in 1..course.places.len() {
        for lifter in 0..model.lifters() {
            let Some(before) = course.places[at].before[lifter] else {
                continue;
            };
            let clocks = done[at].iter().zip(&left[at]);
            let mut of_lifter = clocks.filter(|(clock, _)| clock.lifter == lifter);
            if of_lifter.all(|(clock, left)| clock.done.saturating_add(*left) > ends) {
                course.places[at].before[lifter] = None;
                course.places[before as usize].next[lifter] = None;
            }
        }
    }
    course.without_strays();
    Some(course)
}

/// By place and clock: from that turn's end to the end of all, at least.
fn left<C: Cost>(
    model: &Model,
    spread: &mut Spread<'_, C>,
    (course, times): (&Course, &Times),
    done: &[Vec<Clock>],
    ponder: &mut dyn FnMut(usize) -> bool,
) -> Option<Vec<Vec<i64>>> {
    let mut left: Vec<Vec<i64>> = done.iter().map(|all| vec![0; all.len()]).collect();
    let mut nearest = vec![None; 2 * (model.turns.len() + 1) * model.turns.len()];
    for at in (0..course.places.len()).rev() {
        if at % PLACES == 0 && !ponder(1) {
            return None;
        }
        let place = &course.places[at];
        for (number, from) in done[at].iter().enumerate() {
            let last = turn_before(model, place, from.lifter);
            let mut least = i64::MAX / 4;
            for (next, to) in place.next.iter().enumerate() {
                let Some(to) = to.map(|to| to as usize) else {
                    continue;
                };
                let step: Step<C> = Step::new(model, course, at, to, next, from.hole);
                let slot = 2 * (last * model.turns.len() + step.turn) + usize::from(step.change);
                let nearest =
                    *nearest[slot].get_or_insert_with(|| least_between(spread, last, &step));
                let handling = (nearest + step.hole_change.units()) * model.unit;
                let own = next == from.lifter;
                let rest = if own { model.turns[step.turn].rest } else { 0 };
                let there = done[to].iter().zip(&left[to]);
                let there = there.filter(|(c, _)| c.lifter == next && c.hole == step.hole_then);
                let there = there.map(|(_, left)| *left).min();
                let then = there.unwrap_or(i64::MAX / 4);
                least = least.min(handling.max(rest) + model.turns[step.turn].lasts + then);
            }
            if place.next.iter().all(Option::is_none) && at + 1 == course.places.len() {
                least = 0;
            }
            left[at][number] = least.max(times.chain(model, &place.done, from.lifter));
        }
    }
    Some(left)
}
