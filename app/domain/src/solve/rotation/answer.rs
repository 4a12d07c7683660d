//! From an order of turns and their stacks to a plan: every figure counted afresh.
//!
//! Refuses: nothing.
use super::model::{Model, Want, hole_after};
use super::{Plan, PlannedTurn, Problem};
use crate::mass::Mass;
use crate::solve::Change;
use alloc::vec;
use alloc::vec::Vec;

/// What the search came to.
pub(super) struct Found {
    /// Whose turns, in order.
    pub lifters: Vec<u8>,
    /// One side for each of the turns, inside to outside.
    pub stacks: Vec<Vec<u8>>,
    pub proven: bool,
    pub least_handling: bool,
    /// Nanoseconds.
    pub at_least: i64,
}

/// How things stand while turns are written down.
struct Scribe<'a> {
    problem: &'a Problem,
    model: &'a Model,
    longest_wait: i64,
    done: Vec<usize>,
    ready: Vec<i64>,
    clock: i64,
    hole: u8,
    stack: Vec<u8>,
}

/// Spells a plan out.
pub(super) fn spell_out(problem: &Problem, model: &Model, found: &Found, states: u64) -> Plan {
    let mut scribe = Scribe {
        problem,
        model,
        longest_wait: 0,
        done: vec![0; model.lifters()],
        ready: model.ready.clone(),
        clock: model.now,
        hole: model.hole,
        stack: model.on_bar.clone(),
    };
    let steps = found.lifters.iter().zip(&found.stacks);
    let steps = steps.map(|(lifter, stack)| scribe.write(usize::from(*lifter), stack));
    let steps: Vec<(PlannedTurn, i64)> = steps.collect();
    let moved = |turn: &PlannedTurn| turn.change.take_off.len() + turn.change.put_on.len();
    let pair_moves: usize = steps.iter().map(|(turn, _)| moved(turn)).sum();
    let ends_ns = scribe.clock.unsigned_abs();
    Plan {
        ends_ns,
        handling_ns: steps
            .iter()
            .map(|(_, handling)| handling.unsigned_abs())
            .sum(),
        pair_moves: u32::try_from(pair_moves).expect("a sleeve holds few plates"),
        longest_wait_ns: scribe.longest_wait.unsigned_abs(),
        proven: found.proven,
        least_handling: found.proven && found.least_handling,
        at_least_ns: if found.proven {
            ends_ns
        } else {
            found.at_least.unsigned_abs()
        },
        states,
        turns: steps.into_iter().map(|(turn, _)| turn).collect(),
    }
}

impl Scribe<'_> {
    /// The next turn, with its handling.
    fn write(&mut self, lifter: usize, stack: &[u8]) -> (PlannedTurn, i64) {
        let model = self.model;
        let (turn, at) = (self.done[lifter], model.first[lifter] + self.done[lifter]);
        let want: &Want = &model.turns[at];
        let hole = hole_after(want.hole, self.hole);
        let hole_change = hole != self.hole;
        let same = self.stack.iter().zip(stack).take_while(|(a, b)| a == b);
        let mut kept = same.count();
        while hole_change && !model.light(model.load(&self.stack[..kept])) {
            kept = kept
                .checked_sub(1)
                .expect("the bar alone is light, or it was refused");
        }
        let handling = model.handling(&self.stack[kept..]) + model.handling(&stack[kept..]);
        let loaded = self.clock + handling + if hole_change { model.hole_change } else { 0 };
        let rested = self.ready[lifter].max(model.now);
        let starts = loaded.max(rested);
        self.longest_wait = self.longest_wait.max(starts - rested);
        let place = |kind: &u8| model.kinds[usize::from(*kind)].place;
        let change = Change {
            take_off: self.stack[kept..].iter().rev().map(place).collect(),
            put_on: stack[kept..].iter().map(place).collect(),
        };
        self.clock = starts + want.lasts;
        self.hole = hole;
        self.stack = stack.to_vec();
        self.done[lifter] += 1;
        if self.done[lifter] < model.count(lifter) {
            self.ready[lifter] = self.clock + model.turns[at + 1].rest;
        }
        let planned = PlannedTurn {
            lifter,
            turn,
            ready_ns: loaded.unsigned_abs(),
            starts_ns: starts.unsigned_abs(),
            ends_ns: self.clock.unsigned_abs(),
            hole: self.problem.lifters[lifter].turns[turn].hole,
            hole_change,
            load: Mass::from_ng(model.load(stack)),
            per_side: stack.iter().map(place).collect(),
            change,
        };
        (planned, handling)
    }
}
