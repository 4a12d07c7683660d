//! The steps that lead through the places of a course, as the table of bounds takes them.
//!
//! Refuses: nothing.
use super::Problem;
use super::min_plus::Cost;
use super::model::{Model, hole_after};
use super::state_graph::{Place, Row, StateGraph};
use alloc::vec;
use alloc::vec::Vec;

/// A turn that may come next at a place.
#[derive(Debug)]
pub(super) struct Step<C> {
    pub at: usize,
    pub to: usize,
    pub next: usize,
    pub turn: usize,
    pub hole: u8,
    pub hole_then: u8,
    pub change: bool,
    pub hole_change: C,
    pub lasts: C,
    pub rest: C,
    /// By lifter: the rest before the turn that comes next for each, if there is one.
    pub rests: [Option<C>; Problem::LIFTERS_LIMIT],
}

impl<C: Cost> Step<C> {
    pub(super) fn new(
        model: &Model,
        course: &StateGraph,
        at: usize,
        to: usize,
        next: usize,
        hole: u8,
    ) -> Self {
        let place = &course.places[at];
        let turn = StateGraph::turn(model, place, next);
        let want = &model.turns[turn];
        let units = |ns: i64| C::of(ns / model.unit);
        let hole_then = hole_after(want.hole, hole);
        let mut rests = [None; Problem::LIFTERS_LIMIT];
        for (lifter, rest) in rests[..model.lifters()].iter_mut().enumerate() {
            if usize::from(place.done[lifter]) < model.count(lifter) {
                *rest = Some(units(
                    model.turns[StateGraph::turn(model, place, lifter)].rest,
                ));
            }
        }
        Self {
            at,
            to,
            next,
            turn,
            hole,
            hole_then,
            change: hole_then != hole,
            hole_change: units(if hole_then == hole {
                0
            } else {
                model.hole_change
            }),
            lasts: units(want.lasts),
            rest: units(want.rest),
            rests,
        }
    }
}

/// The turn that a lifter did last; one past all turns when none was done yet.
pub(super) fn turn_before(model: &Model, place: &Place, lifter: usize) -> usize {
    match place.done.get(lifter) {
        Some(&done) if done > 0 => model.first[lifter] + usize::from(done) - 1,
        _ => model.turns.len(),
    }
}

/// Who may have lifted last at a place, with which hole then set.
pub(super) fn rows_of(model: &Model, place: &Place) -> Vec<Row> {
    if place.done.iter().all(|&done| done == 0) {
        return vec![(model.lifters(), model.hole)];
    }
    let mut rows = Vec::new();
    for lifter in (0..model.lifters()).filter(|&l| place.before[l].is_some()) {
        let own = model.turns[turn_before(model, place, lifter)].hole;
        let holes = place
            .holes
            .iter()
            .filter(|&&hole| hole_after(own, hole) == hole);
        rows.extend(holes.map(|&hole| (lifter, hole)));
    }
    rows
}
