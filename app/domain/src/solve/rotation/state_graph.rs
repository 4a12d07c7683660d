//! How far each lifter may be at any time: the places that a good plan can pass through.
//!
//! Refuses: places that no plan as good as the best one known can reach and leave in time.
use super::clocks::PLACES;
use super::model::{Model, hole_after};
use super::numbers::Numbers;
use super::steps::rows_of;
use alloc::vec;
use alloc::vec::Vec;
use core::ops::Range;

/// How many turns each lifter has done.
#[derive(Debug)]
pub(super) struct Place {
    /// By lifter.
    pub done: Vec<u8>,
    /// By lifter, the place after that lifter's next turn.
    pub next: Vec<Option<u32>>,
    /// By lifter, the place before that lifter's last turn.
    pub before: Vec<Option<u32>>,
    /// The holes that may be set here.
    pub holes: Vec<u8>,
    /// Who may have lifted last, with which hole then set.
    pub rows: Vec<Row>,
}

/// A lifter, one past the last before the first turn, and a hole.
pub(super) type Row = (usize, u8);

impl Place {
    fn new(done: Vec<u8>) -> Self {
        let lifters = done.len();
        Self {
            done,
            next: vec![None; lifters],
            before: vec![None; lifters],
            holes: Vec::new(),
            rows: Vec::new(),
        }
    }
}

/// All places, by the number of turns done.
#[derive(Debug)]
pub(super) struct StateGraph {
    /// The first is the start, the last the end.
    pub places: Vec<Place>,
    /// By number of turns done, which `places` those are.
    pub layers: Vec<Range<usize>>,
    /// By turn: least time from the start of its lifter's rest, or of the turn itself for the
    /// first one, to the end of that lifter's last turn.
    pub tail: Vec<i64>,
    /// No plan ends before, whichever places it passes through.
    pub least: i64,
}

impl StateGraph {
    /// Hardly ever fewer than one in so many places can be reached in time.
    const REACHED: usize = 3;

    /// Whether the places that can be reached in time may be as few as `limit`.
    pub(super) fn may_fit(model: &Model, limit: usize) -> bool {
        let all = (0..model.lifters()).map(|lifter| model.count(lifter) + 1);
        all.fold(1, usize::saturating_mul) / Self::REACHED <= limit
    }

    /// The places from which `ends` can still be reached, within `reach`. `None` when these are
    /// more than `limit`, or when `ponder` says to stop, as it does in [`super::allowance`].
    pub(super) fn new(
        model: &Model,
        ends: i64,
        (reach, limit): (&Reach, usize),
        ponder: &mut dyn FnMut(usize) -> bool,
    ) -> Option<Self> {
        if matches!(reach, Reach::Whole) && !Self::may_fit(model, limit) {
            return None;
        }
        let times = Times::new(model);
        let mut course = Self {
            places: Vec::from([Place::new(vec![0; model.lifters()])]),
            layers: Vec::new(),
            tail: times.after_rest.clone(),
            least: times.least(model, &vec![0; model.lifters()]),
        };
        course.places[0].holes.push(model.hole);
        let mut layer = 0..1;
        for step in 0..model.turns.len() {
            let mut known = Known::new(model);
            for at in layer.clone() {
                let here = course.places[at].done.clone();
                for lifter in 0..model.lifters() {
                    if model
                        .called
                        .get(step)
                        .is_some_and(|&called| called != lifter)
                    {
                        continue;
                    }
                    if usize::from(here[lifter]) == model.count(lifter) {
                        continue;
                    }
                    let next = known.place(&here, lifter, |then| {
                        let strays = step >= model.called.len() && reach.strays(then, step + 1);
                        if strays || times.least(model, then) > ends {
                            return None;
                        }
                        course.places.push(Place::new(then.to_vec()));
                        Some(course.places.len() - 1)
                    });
                    if let Some(next) = next {
                        course.link(model, at, lifter, next);
                    }
                }
            }
            if course.places.len() > limit || !ponder(layer.len() / PLACES) {
                return None;
            }
            course.layers.push(layer.clone());
            layer = layer.end..course.places.len();
        }
        course.layers.push(layer);
        for place in &mut course.places {
            place.rows = rows_of(model, place);
        }
        Some(course)
    }

    /// Leaves out all rows but those to be kept, told by place and row, and the places that nothing
    /// leads to then, or leads on from.
    pub(super) fn keep(&mut self, kept: impl Fn(usize, usize) -> bool) {
        for at in 1..self.places.len() {
            let mut number = 0;
            self.places[at].rows.retain(|_| {
                number += 1;
                kept(at, number - 1)
            });
            let place = &mut self.places[at];
            let rows = &place.rows;
            place
                .holes
                .retain(|hole| rows.iter().any(|row| row.1 == *hole));
            for lifter in 0..place.before.len() {
                let gone = !self.places[at].rows.iter().any(|row| row.0 == lifter);
                if let (Some(before), true) = (self.places[at].before[lifter], gone) {
                    self.places[at].before[lifter] = None;
                    self.places[before as usize].next[lifter] = None;
                }
            }
        }
        self.without_strays();
    }

    /// Leaves out the places that nothing leads to, or leads on from.
    fn without_strays(&mut self) {
        let last = self.places.len() - 1;
        let mut kept = vec![true; self.places.len()];
        let gone = |links: &[Option<u32>], kept: &[bool]| {
            links.iter().flatten().all(|&link| !kept[link as usize])
        };
        for at in 1..self.places.len() {
            kept[at] = !gone(&self.places[at].before, &kept);
        }
        for at in (0..last).rev() {
            kept[at] &= !gone(&self.places[at].next, &kept);
        }
        (kept[0], kept[last]) = (true, true);
        let mut number = vec![None; kept.len()];
        let left = number.iter_mut().zip(&kept).filter(|(_, kept)| **kept);
        for (place, (number, _)) in (0_u32..).zip(left) {
            *number = Some(place);
        }
        let renumber = |link: &mut Option<u32>| *link = link.and_then(|at| number[at as usize]);
        for place in &mut self.places {
            place.next.iter_mut().for_each(renumber);
            place.before.iter_mut().for_each(renumber);
            let before = &place.before;
            let led_to = |row: &Row| before.get(row.0).is_none_or(Option::is_some);
            place.rows.retain(led_to);
        }
        let before = |at: usize| kept[..at].iter().filter(|kept| **kept).count();
        for layer in &mut self.layers {
            *layer = before(layer.start)..before(layer.end);
        }
        let mut at = 0;
        self.places.retain(|_| {
            at += 1;
            kept[at - 1]
        });
    }

    fn link(&mut self, model: &Model, from: usize, lifter: usize, to: usize) {
        let turn = model.first[lifter] + usize::from(self.places[from].done[lifter]);
        let hole = model.turns[turn].hole;
        for at in 0..self.places[from].holes.len() {
            let then = hole_after(hole, self.places[from].holes[at]);
            let holes = &mut self.places[to].holes;
            if let Err(place) = holes.binary_search(&then) {
                holes.insert(place, then);
            }
        }
        self.places[from].next[lifter] = Some(u32::try_from(to).expect("a place"));
        self.places[to].before[lifter] = Some(u32::try_from(from).expect("a place"));
    }

    /// The turn that a lifter last did to get to a place, or has next there.
    pub(super) fn turn(model: &Model, place: &Place, lifter: usize) -> usize {
        model.first[lifter] + usize::from(place.done[lifter])
    }
}

/// The places of one layer by what is done there; `None` for those that are left out.
struct Known {
    numbers: Numbers,
    places: Vec<Option<usize>>,
    /// By lifter: what one turn more adds to a place's key. No two places have the same key.
    strides: Vec<u64>,
}

impl Known {
    fn new(model: &Model) -> Self {
        let mut strides = vec![1];
        for lifter in 1..model.lifters() {
            let turns = model.count(lifter - 1) as u64;
            strides.push(strides[lifter - 1] * (turns + 1));
        }
        Self {
            numbers: Numbers::new(),
            places: Vec::new(),
            strides,
        }
    }

    /// The place after a turn of `lifter` at `done`; `make` makes it where it is met first.
    fn place(
        &mut self,
        done: &[u8],
        lifter: usize,
        make: impl FnOnce(&[u8]) -> Option<usize>,
    ) -> Option<usize> {
        let key = done.iter().zip(&self.strides);
        let key: u64 = key.map(|(&done, stride)| u64::from(done) * stride).sum();
        let mixed = (key + self.strides[lifter]).wrapping_mul(0x9E37_79B9_7F4A_7C15);
        let (number, known) = self.numbers.find(mixed, |_| true);
        if known {
            return self.places[number as usize];
        }
        let mut then = done.to_vec();
        then[lifter] += 1;
        let place = make(&then);
        self.places.push(place);
        place
    }
}

/// Which places are looked at.
#[derive(Debug)]
pub(super) enum Reach {
    /// All.
    Whole,
    /// Those that differ from a known order by few turns.
    Near {
        /// By number of turns done, how many each lifter has done in that order.
        order: Vec<Vec<u8>>,
        /// So many turns apart, all lifters together; a turn done too soon counts as well as the
        /// one that it takes the place of.
        apart: u32,
    },
}

impl Reach {
    /// The places near `order`.
    pub(super) fn near(lifters: usize, order: &[u8], apart: u32) -> Self {
        let mut done = vec![0_u8; lifters];
        let mut all = vec![done.clone()];
        for &lifter in order {
            done[usize::from(lifter)] += 1;
            all.push(done.clone());
        }
        Self::Near { order: all, apart }
    }

    fn strays(&self, done: &[u8], turns: usize) -> bool {
        match self {
            Self::Whole => false,
            Self::Near { order, apart } => {
                let there = order[turns].iter().zip(done);
                let differ: u32 = there.map(|(a, b)| u32::from(a.abs_diff(*b))).sum();
                differ > *apart
            }
        }
    }
}

/// Times that need neither plates nor order.
pub(super) struct Times {
    /// By turn: earliest end.
    ends: Vec<i64>,
    /// By turn: from the end of the lifter's turn before, or the start of this one if it is the
    /// first, to the end of the lifter's last.
    from_rest: Vec<i64>,
    /// By turn: from the start to the end of the lifter's last.
    after_rest: Vec<i64>,
    /// By lifter: what all turns from one on last, and a 0.
    remaining: Vec<Vec<i64>>,
}

impl Times {
    pub(super) fn new(model: &Model) -> Self {
        let mut times = Self {
            ends: vec![0; model.turns.len()],
            from_rest: vec![0; model.turns.len()],
            after_rest: vec![0; model.turns.len()],
            remaining: Vec::new(),
        };
        for lifter in 0..model.lifters() {
            let range = model.first[lifter]..model.first[lifter + 1];
            let mut clock = model.ready[lifter].max(model.now);
            for turn in range.clone() {
                let want = &model.turns[turn];
                let rest = if turn == range.start { 0 } else { want.rest };
                clock += rest + want.lasts;
                times.ends[turn] = clock;
            }
            let (mut chain, mut sum) = (0, 0);
            let mut remaining = vec![0];
            for turn in range.rev() {
                let want = &model.turns[turn];
                chain += want.lasts;
                sum += want.lasts;
                times.after_rest[turn] = chain;
                chain += want.rest;
                times.from_rest[turn] = chain;
                remaining.push(sum);
            }
            remaining.reverse();
            times.remaining.push(remaining);
        }
        times
    }

    /// The lifter's turn after `done` others starts no sooner.
    pub(super) fn rested(&self, model: &Model, lifter: usize, done: usize) -> i64 {
        let turn = model.first[lifter] + done;
        if done == 0 {
            model.ready[lifter]
        } else {
            self.ends[turn - 1] + model.turns[turn].rest
        }
    }

    /// From the end of a turn of `lifter` that led to a place: no lifter is through before.
    pub(super) fn chain(&self, model: &Model, done: &[u8], lifter: usize) -> i64 {
        let left = (0..done.len()).filter(|&l| usize::from(done[l]) < model.count(l));
        let chain = |l: usize| {
            let turn = model.first[l] + usize::from(done[l]);
            let own = l == lifter;
            if own {
                self.from_rest[turn]
            } else {
                self.after_rest[turn]
            }
        };
        left.map(chain).max().unwrap_or(0)
    }

    /// No plan through this place ends before.
    pub(super) fn least(&self, model: &Model, done: &[u8]) -> i64 {
        let mut clock = model.now;
        let mut left = 0;
        for (lifter, &done) in done.iter().enumerate() {
            let done = usize::from(done);
            clock += self.remaining[lifter][0] - self.remaining[lifter][done];
            left += self.remaining[lifter][done];
        }
        for (lifter, &done) in done.iter().enumerate() {
            if done > 0 {
                clock = clock.max(self.ends[model.first[lifter] + usize::from(done) - 1]);
            }
        }
        let mut least = clock + left;
        for (lifter, &done) in done.iter().enumerate() {
            let (done, turn) = (usize::from(done), model.first[lifter] + usize::from(done));
            if done == model.count(lifter) {
                continue;
            }
            let chain = if done == 0 {
                clock.max(model.ready[lifter]) + self.after_rest[turn]
            } else {
                let rested = self.ends[turn - 1] + model.turns[turn].rest;
                clock.max(rested) + self.after_rest[turn]
            };
            least = least.max(chain);
        }
        least
    }
}
