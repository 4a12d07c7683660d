//! Leaves out of a course what no plan as good as the best one known can pass through.
//!
//! For each turn that leads to a place, the least time to get there and the least from there to
//! the end are worked out, by the least handling between turns and by each lifter's own rests.
use super::bounds::Bounds;
use super::clocks::{Clock, Nearest, PLACES, clocks};
use super::min_plus::{Cost, MinPlus};
use super::model::{Model, hole_after};
use super::state_graph::{StateGraph, Times};
use super::steps::turn_before;
use alloc::vec;
use alloc::vec::Vec;

/// The part of `state_graph` through which a plan can pass that ends no later than `ends`; `None` when
/// `ponder` says to stop, as it does in [`super::allowance`].
pub(super) fn thinned<C: Cost>(
    model: &Model,
    spread: &mut MinPlus<'_, C>,
    mut course: StateGraph,
    ends: i64,
    ponder: &mut dyn FnMut(usize) -> bool,
) -> Option<StateGraph> {
    let times = Times::new(model);
    let done = clocks(model, spread, &course, &times, ponder)?;
    let left = left(model, spread, (&course, &times), &done, ponder)?;
    course.keep(|at, row| done[at][row].done.saturating_add(left[at][row]) <= ends);
    Some(course)
}

/// The same by a table of bounds worked out for it.
pub(super) fn thinned_by<C: Cost>(
    model: &Model,
    spread: &mut MinPlus<'_, C>,
    bounds: &Bounds<C>,
    mut course: StateGraph,
    ends: i64,
    ponder: &mut dyn FnMut(usize) -> bool,
) -> Option<StateGraph> {
    let done = clocks(model, spread, &course, &Times::new(model), ponder)?;
    course.keep(|at, row| {
        let clock = done[at][row];
        let place = u32::try_from(at).expect("a place");
        let after = bounds.after(place, clock.lifter, clock.hole);
        after.is_some_and(|after| clock.done.saturating_add(after.soonest()) <= ends)
    });
    Some(course)
}

/// By place and clock: from that turn's end to the end of all, at least.
fn left<C: Cost>(
    model: &Model,
    spread: &mut MinPlus<'_, C>,
    (course, times): (&StateGraph, &Times),
    done: &[Vec<Clock>],
    ponder: &mut dyn FnMut(usize) -> bool,
) -> Option<Vec<Vec<i64>>> {
    let mut left: Vec<Vec<i64>> = done.iter().map(|all| vec![0; all.len()]).collect();
    let mut nearest = Nearest::new(model);
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
                let turn = StateGraph::turn(model, place, next);
                let want = &model.turns[turn];
                let then = hole_after(want.hole, from.hole);
                let loaded = nearest.least(spread, (last, turn), then != from.hole);
                let rest = if next == from.lifter { want.rest } else { 0 };
                let there = done[to].iter().zip(&left[to]);
                let there = there.filter(|(c, _)| c.lifter == next && c.hole == then);
                let there = there.map(|(_, left)| *left).min();
                let on = there.unwrap_or(i64::MAX / 4);
                least = least.min(loaded.max(rest) + want.lasts + on);
            }
            if place.next.iter().all(Option::is_none) && at + 1 == course.places.len() {
                least = 0;
            }
            left[at][number] = least.max(times.chain(model, &place.done, from.lifter));
        }
    }
    Some(left)
}
