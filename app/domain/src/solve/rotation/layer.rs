//! States with equally many turns done, and what makes one of them needless.
//!
//! Refuses: nothing.
use super::Problem;
use super::bars::Bars;
use super::search::Aim;
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

/// Leaves out of `states`, all at one place, those that another one makes needless.
///
/// `ponder` is told how much work it was, and says whether to go on; if not, much is missing.
pub(super) fn drop_needless<B: Bars>(
    aim: Aim,
    bars: &B,
    lifters: usize,
    states: &mut Vec<State>,
    mut ponder: impl FnMut(usize) -> bool,
) {
    let order = |s: &State| (s.hole, s.bar, s.clock, s.handling, s.ready);
    states.sort_unstable_by_key(|s| (order(s), s.lifter, s.parent));
    let beats = |a: &State, b: &State| {
        a.clock <= b.clock
            && (aim == Aim::Ends || a.handling <= b.handling)
            && (0..lifters).all(|l| a.ready[l] <= b.ready[l])
    };
    let same_bar = |a: &State, b: &State| a.hole == b.hole && a.bar == b.bar;
    let alike = |a: &State, b: &State, (): &(), (): &()| beats(a, b);
    keep(states, |_| (), same_bar, alike, &mut ponder);
    states.sort_unstable_by_key(|s| {
        let what = (s.bar, s.ready, s.lifter, s.parent);
        (s.hole, s.clock, s.handling, what)
    });
    let same_hole = |a: &State, b: &State| a.hole == b.hole;
    let face = |s: &State| (s.clock, bars.face(s.bar));
    let beats_soon = |a: &State, b: &State, face: &(i64, B::Face), other: &(i64, B::Face)| {
        let mut most = other.0 - face.0;
        if aim != Aim::Ends {
            most = most.min(b.handling - a.handling);
        }
        let (face, other) = (&face.1, &other.1);
        bars.near(face, other, most) && beats(a, b) && bars.as_good(face, other, most)
    };
    keep(states, face, same_hole, beats_soon, &mut ponder);
    states.sort_unstable_by_key(|s| (order(s), s.lifter, s.parent));
}

/// Comparisons that are as much work as one state.
const COMPARISONS: usize = 64;

/// Keeps those that none kept before of the `same` group `beats`, judged by the faces of their
/// bars, too.
fn keep<F: Copy>(
    states: &mut Vec<State>,
    face: impl Fn(&State) -> F,
    same: impl Fn(&State, &State) -> bool,
    beats: impl Fn(&State, &State, &F, &F) -> bool,
    ponder: &mut impl FnMut(usize) -> bool,
) {
    let (mut kept, mut group) = (0, 0);
    let mut faces: Vec<F> = Vec::with_capacity(states.len());
    for at in 0..states.len() {
        let state = states[at];
        if group < kept && !same(&states[group], &state) {
            group = kept;
        }
        let own = face(&state);
        let mut others = states[group..kept].iter().zip(&faces[group..]);
        let beaten = others.position(|(other, face)| beats(other, &state, face, &own));
        let compared = beaten.unwrap_or(kept - group);
        if beaten.is_some() {
            // Who beats one often beats more: sooner next time.
            states.swap(group + compared, group + compared / 2);
            faces.swap(group + compared, group + compared / 2);
        } else {
            states[kept] = state;
            faces.push(own);
            kept += 1;
        }
        if !ponder(compared / COMPARISONS) {
            break;
        }
    }
    states.truncate(kept);
}
