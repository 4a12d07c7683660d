//! States with equally many turns done, place by place.
//!
//! Refuses: nothing.
use super::Problem;
use super::incumbent::Aim;
use alloc::vec::Vec;
use core::ops::Range;

/// Someone has just finished a turn.
#[derive(Debug, Clone, Copy)]
pub(super) struct State {
    pub clock: i64,
    pub handling: i64,
    /// No plan from here ends before.
    pub ends: i64,
    /// No plan from here has less handling.
    pub least_handling: i64,
    /// By lifter: no turn to come starts before.
    pub ready: [i64; Problem::LIFTERS_LIMIT],
    pub parent: u32,
    pub bar: u32,
    pub lifter: u8,
    pub hole: u8,
}

/// States with equally many turns done, by place.
#[derive(Debug)]
pub(super) struct Layer {
    pub states: Vec<State>,
    first_place: usize,
    at_place: Vec<Range<usize>>,
}

impl Layer {
    pub(super) fn new(places: &Range<usize>) -> Self {
        Self {
            states: Vec::new(),
            first_place: places.start,
            at_place: Vec::with_capacity(places.len()),
        }
    }

    pub(super) fn push(&mut self, states: &[State]) {
        let from = self.states.len();
        self.states.extend_from_slice(states);
        self.at_place.push(from..self.states.len());
    }

    pub(super) fn at(&self, place: usize) -> Range<usize> {
        self.at_place[place - self.first_place].clone()
    }

    /// Keeps the `width` most promising states; returns the least end that was given up.
    pub(super) fn narrow(&mut self, width: usize, aim: Aim) -> Option<i64> {
        if self.states.len() <= width {
            return None;
        }
        let mut order: Vec<usize> = (0..self.states.len()).collect();
        order.select_nth_unstable_by_key(width, |&i| (promise(aim, &self.states[i]), i));
        let dropped = order[width..].iter().map(|&i| self.states[i].ends).min();
        order.truncate(width);
        order.sort_unstable();
        let mut from = 0;
        for range in &mut self.at_place {
            let count = order[from..].partition_point(|&i| i < range.end);
            *range = from..from + count;
            from += count;
        }
        self.states = order.into_iter().map(|i| self.states[i]).collect();
        dropped
    }
}

/// Less is more promising.
pub(super) type Promise = (i64, i64, i64);

pub(super) fn promise(aim: Aim, state: &State) -> Promise {
    match aim {
        Aim::Handling => (state.least_handling, state.ends, state.clock),
        Aim::Both | Aim::Ends => (state.ends, state.least_handling, state.clock),
    }
}

/// Keeps the `width` most promising of `states` in any order; returns the least end given up.
pub(super) fn narrow(states: &mut Vec<State>, width: usize, aim: Aim) -> Option<i64> {
    if states.len() <= width {
        return None;
    }
    let place = |s: &State| (promise(aim, s), s.bar, s.lifter, s.parent);
    states.select_nth_unstable_by_key(width, place);
    let dropped = states[width..].iter().map(|s| s.ends).min();
    states.truncate(width);
    dropped
}
