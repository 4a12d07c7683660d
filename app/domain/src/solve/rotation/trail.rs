//! An order of turns carried out with the stacks that suit it best, quickly: what the local search
//! asks about thousands of orders.
//!
//! Each turn is tried with the few stacks that take the least handling. Plates that may lie in any
//! order are taken for sets, so that the handling told is the least there may be.
use super::Problem;
use super::gaps::Gaps;
use super::model::{Model, hole_after};
use super::stacks::{Stacks, at};
use alloc::vec;
use alloc::vec::Vec;

/// Stacks that are tried for a turn.
const OFFERS: usize = 10;

/// The bar is ready with one of a turn's stacks, and the turn done.
#[derive(Debug, Clone, Copy)]
struct Label {
    clock: i64,
    handling: i64,
    /// Waited longer than anybody is to wait, all turns together.
    over: i64,
    /// By lifter: the next turn starts no sooner.
    ready: [i64; Problem::LIFTERS_LIMIT],
    /// Which of the labels before this comes of.
    from: u8,
}

/// How things stand after so many turns.
#[derive(Debug, Clone)]
struct Stand {
    /// By offer of the last turn.
    labels: Vec<Label>,
    done: [u8; Problem::LIFTERS_LIMIT],
    hole: u8,
    /// The turn done last; one past all turns at the start.
    turn: usize,
    /// What is left to lift, nanoseconds.
    left: i64,
}

/// How an order goes, turn by turn.
#[derive(Debug, Clone)]
pub(super) struct Trail {
    stands: Vec<Stand>,
    /// So many turns are known to be as in the trail that this one was copied from.
    same: usize,
}

impl Trail {
    /// Makes this trail the same as another up to the turn `from`.
    pub(super) fn copy_to(&mut self, other: &Self, from: usize) {
        let same = self.same.min(from);
        self.stands.truncate(same + 1);
        self.stands
            .extend_from_slice(&other.stands[same + 1..=from]);
        self.same = from;
    }

    /// Takes over what another trail has from the turn `from` on, where both were the same.
    pub(super) fn take_from(&mut self, other: &mut Self, from: usize) {
        self.stands.truncate(from + 1);
        self.stands.extend_from_slice(&other.stands[from + 1..]);
        other.same = other.stands.len() - 1;
    }
}

/// What an order is worth: less is better, the waits that are too long first.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub(super) struct Worth {
    /// Waited longer than anybody is to wait, all turns together, nanoseconds.
    pub over: i64,
    pub ends: i64,
    pub handling: i64,
}

/// Handling between the offers of two turns, without and with a hole change.
#[derive(Debug)]
struct Ways {
    plain: Vec<i64>,
    change: Vec<i64>,
}

/// Carries orders out.
#[derive(Debug)]
pub(super) struct Rack<'a> {
    model: &'a Model,
    gaps: Gaps<'a>,
    /// By turn: places among the stacks that serve it.
    offers: Vec<Vec<u32>>,
    /// By turn before, the start last, and next turn.
    ways: Vec<Option<Ways>>,
    stacks: &'a Stacks,
    /// Nobody is to wait longer once rested, nanoseconds.
    longest_wait: i64,
}

impl<'a> Rack<'a> {
    pub(super) fn new(model: &'a Model, stacks: &'a Stacks, longest_wait: i64) -> Self {
        let turns = model.turns.len();
        let mut ways = Vec::new();
        ways.resize_with((turns + 1) * turns, || None);
        Self {
            model,
            gaps: Gaps::new(model, stacks),
            offers: (0..turns).map(|t| offers(model, stacks, t)).collect(),
            ways,
            stacks,
            longest_wait,
        }
    }

    /// Nothing is done yet.
    pub(super) fn start(&self) -> Trail {
        let mut ready = [self.model.now; Problem::LIFTERS_LIMIT];
        ready[..self.model.lifters()].copy_from_slice(&self.model.ready);
        let label = Label {
            clock: self.model.now,
            handling: 0,
            over: 0,
            ready,
            from: 0,
        };
        let start = Stand {
            labels: vec![label],
            done: [0; Problem::LIFTERS_LIMIT],
            hole: self.model.hole,
            turn: self.model.turns.len(),
            left: self.model.turns.iter().map(|turn| turn.lasts).sum(),
        };
        Trail {
            stands: vec![start],
            same: 0,
        }
    }

    /// Carries `order` out anew from its turn `from` on; `None` as soon as it cannot end before
    /// `limit`, which leaves the trail of no use from there.
    pub(super) fn carry_out(
        &mut self,
        trail: &mut Trail,
        order: &[u8],
        from: usize,
        limit: i64,
    ) -> Option<Worth> {
        trail.stands.truncate(from + 1);
        for &lifter in &order[from..] {
            let stand = self.step(trail.stands.last()?, usize::from(lifter));
            let soonest = stand.labels.iter().map(|label| label.clock).min()?;
            if soonest.saturating_add(stand.left) >= limit {
                return None;
            }
            trail.stands.push(stand);
        }
        let last = trail.stands.last()?;
        let ends = last.labels.iter().map(|label| Worth {
            over: label.over,
            ends: label.clock,
            handling: label.handling,
        });
        ends.min()
    }

    /// For each turn of a trail that was carried out to the end, the place of its stack among
    /// those that serve it.
    pub(super) fn stacks(&self, trail: &Trail) -> Vec<u32> {
        let mut stacks = Vec::new();
        let mut label = None;
        for stand in trail.stands[1..].iter().rev() {
            let labels = (0..stand.labels.len()).map(|at| (&stand.labels[at], at));
            let best = || labels.min_by_key(|(l, at)| (l.over, l.clock, l.handling, *at));
            let here = label.unwrap_or_else(|| best().map_or(0, |(_, at)| at));
            stacks.push(self.offers[stand.turn][here]);
            label = Some(usize::from(stand.labels[here].from));
        }
        stacks.reverse();
        stacks
    }

    fn step(&mut self, stand: &Stand, lifter: usize) -> Stand {
        let model = self.model;
        let turn = model.first[lifter] + usize::from(stand.done[lifter]);
        let want = model.turns[turn];
        let hole = hole_after(want.hole, stand.hole);
        let change = hole != stand.hole;
        let slot = stand.turn * model.turns.len() + turn;
        if self.ways[slot].is_none() {
            self.ways[slot] = Some(self.between(stand.turn, turn));
        }
        let ways = self.ways[slot].as_ref().expect("just set");
        let ways = if change { &ways.change } else { &ways.plain };
        let pins = if change { model.hole_change } else { 0 };
        let count = self.offers[turn].len();
        let mut then = stand.done;
        then[lifter] += 1;
        let goes_on = usize::from(then[lifter]) < model.count(lifter);
        let rest = if goes_on {
            model.turns[turn + 1].rest
        } else {
            0
        };
        let mut labels = Vec::with_capacity(count);
        for offer in 0..count {
            let mut best: Option<(i64, i64, usize)> = None;
            for (from, label) in stand.labels.iter().enumerate() {
                let way = ways[from * count + offer];
                let starts = (label.clock + way + pins).max(label.ready[lifter]);
                let found = (starts, label.handling + way, from);
                if best.is_none_or(|best| found < best) {
                    best = Some(found);
                }
            }
            let (starts, handling, from) = best.expect("there is always a label before");
            let mut label = stand.labels[from];
            let rested = label.ready[lifter].max(model.now);
            label.over += (starts - rested - self.longest_wait).max(0);
            label.clock = starts + want.lasts;
            label.handling = handling;
            label.ready[lifter] = label.clock + rest;
            label.from = u8::try_from(from).expect("few offers");
            labels.push(label);
        }
        Stand {
            labels,
            done: then,
            hole,
            turn,
            left: stand.left - want.lasts,
        }
    }

    fn between(&self, before: usize, turn: usize) -> Ways {
        let start = [self.stacks.start];
        let nodes = |turn: usize| -> Vec<u32> {
            let Some(offers) = self.offers.get(turn) else {
                return start.to_vec();
            };
            let serving = &self.stacks.serving[turn];
            offers.iter().map(|&place| serving[at(place)]).collect()
        };
        let mut ways = Ways {
            plain: Vec::new(),
            change: Vec::new(),
        };
        for &from in &nodes(before) {
            for &to in &nodes(turn) {
                ways.plain.push(self.gaps.plain(from, to));
                ways.change.push(self.gaps.between(from, to, true));
            }
        }
        ways
    }
}

/// The places of the stacks that serve a turn with the least handling.
fn offers(model: &Model, stacks: &Stacks, turn: usize) -> Vec<u32> {
    let serving = &stacks.serving[turn];
    let real = |place: &u32| stacks.serves(serving[at(*place)], &model.turns[turn]);
    let all = 0..u32::try_from(serving.len()).expect("within the limit of nodes");
    let mut offers: Vec<u32> = all.filter(real).collect();
    offers.sort_by_key(|&place| (stacks.handling[at(serving[at(place)])], place));
    offers.truncate(OFFERS);
    offers
}
