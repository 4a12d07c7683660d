//! When each turn is done at the soonest, by the place that it leads to: by the least handling
//! between turns and each lifter's own rests.
//!
//! Refuses: nothing.
use super::min_plus::{Cost, LANES, MinPlus};
use super::model::{Model, hole_after};
use super::state_graph::{StateGraph, Times};
use super::steps::turn_before;
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
    spread: &mut MinPlus<'_, C>,
    course: &StateGraph,
    times: &Times,
    ponder: &mut dyn FnMut(usize) -> bool,
) -> Option<Vec<Vec<Clock>>> {
    let never = |(lifter, hole)| Clock {
        lifter,
        hole,
        done: i64::MAX / 2,
    };
    let all = course.places.iter();
    let all = all.map(|place| place.rows.iter().copied().map(never).collect());
    let mut clocks: Vec<Vec<Clock>> = all.collect();
    clocks[0][0].done = model.now;
    let mut nearest = Nearest::new(model);
    for (at, place) in course.places.iter().enumerate() {
        if at % PLACES == 0 && !ponder(1) {
            return None;
        }
        for number in 0..clocks[at].len() {
            let from = clocks[at][number];
            let last = turn_before(model, place, from.lifter);
            for (next, to) in place.next.iter().enumerate() {
                let Some(to) = to.map(|to| to as usize) else {
                    continue;
                };
                let turn = StateGraph::turn(model, place, next);
                let want = &model.turns[turn];
                let then = hole_after(want.hole, from.hole);
                let loaded = from.done + nearest.least(spread, (last, turn), then != from.hole);
                let rested = times.rested(model, next, usize::from(place.done[next]));
                let done = loaded.max(rested) + want.lasts;
                let there = clocks[to].iter_mut();
                for there in there.filter(|c| c.lifter == next && c.hole == then) {
                    there.done = there.done.min(done);
                }
            }
        }
    }
    Some(clocks)
}

/// The least that a changeover takes, worked out when first asked for.
pub(super) struct Nearest<'a> {
    model: &'a Model,
    /// By turn before, the start last, next turn, and whether the hole changes.
    known: Vec<Option<i64>>,
}

impl<'a> Nearest<'a> {
    pub(super) fn new(model: &'a Model) -> Self {
        let turns = model.turns.len();
        Self {
            model,
            known: vec![None; 2 * (turns + 1) * turns],
        }
    }

    /// From any stack of turn `last` to any of `turn`, nanoseconds.
    pub(super) fn least<C: Cost>(
        &mut self,
        spread: &mut MinPlus<'_, C>,
        (last, turn): (usize, usize),
        change: bool,
    ) -> i64 {
        let model = self.model;
        let slot = 2 * (last * model.turns.len() + turn) + usize::from(change);
        *self.known[slot].get_or_insert_with(|| {
            let zero = vec![[C::of(0); LANES]; spread.count(turn)];
            let mut least = Vec::new();
            spread.least((last, turn), change, &zero, &mut least);
            let least = least.iter().map(|lanes| lanes[0]).min();
            let pins = if change { model.hole_change } else { 0 };
            least.unwrap_or(C::FAR).units() * model.unit + pins
        })
    }
}
