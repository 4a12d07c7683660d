//! A first plan by rule of thumb: whoever can start first goes first, but long rows of turns have
//! precedence, and the bar is loaded with what is nearest.
//!
//! Refuses: nothing.
use super::bars::Bars;
use super::incumbent::Incumbent;
use super::model::{Model, hole_after};
use alloc::vec;
use alloc::vec::Vec;

/// Someone's turn, as it could come next.
struct Offer {
    lifter: usize,
    turn: usize,
    starts: i64,
    handling: i64,
    bar: u32,
    /// Less is better.
    rank: (i64, i64),
}

/// How things stand while turns are given out.
struct Greedy<'a> {
    model: &'a Model,
    done: Vec<usize>,
    ready: Vec<i64>,
    clock: i64,
    hole: u8,
    bar: u32,
}

/// Plans by rule of thumb.
pub(super) fn plan<B: Bars>(model: &Model, bars: &mut B) -> Incumbent {
    let mut thumb = Greedy::new(model, bars.start());
    let mut steps = Vec::new();
    let mut handling = 0;
    for step in 0..model.turns.len() {
        let called = model.called.get(step).copied();
        let lifters = (0..model.lifters()).filter(|&l| called.is_none_or(|called| called == l));
        let offers = lifters.filter_map(|lifter| thumb.offer(bars, lifter, None));
        let next = offers.min_by_key(|offer| offer.rank);
        let next = next.expect("someone has a turn left, each turn has a stack");
        thumb.take(&next);
        handling += next.handling;
        steps.push((u8::try_from(next.lifter).expect("few lifters"), next.bar));
    }
    Incumbent {
        ends: model.counted(thumb.clock),
        handling,
        steps,
    }
}

/// Carries an order out with given stacks, as places among those that serve each turn; `None`
/// where one cannot be had.
pub(super) fn follow<B: Bars>(
    model: &Model,
    bars: &mut B,
    order: &[u8],
    stacks: &[u32],
) -> Option<Incumbent> {
    let mut thumb = Greedy::new(model, bars.start());
    let mut best = Incumbent {
        ends: model.now,
        handling: 0,
        steps: Vec::new(),
    };
    for (&lifter, &stack) in order.iter().zip(stacks) {
        let next = thumb.offer(bars, usize::from(lifter), Some(stack))?;
        thumb.take(&next);
        best.handling += next.handling;
        best.steps.push((lifter, next.bar));
    }
    best.ends = model.counted(thumb.clock);
    Some(best)
}

impl Greedy<'_> {
    fn new(model: &Model, bar: u32) -> Greedy<'_> {
        Greedy {
            model,
            done: vec![0; model.lifters()],
            ready: model.ready.clone(),
            clock: model.now,
            hole: model.hole,
            bar,
        }
    }

    /// The lifter's turn with a given stack, or any.
    fn offer<B: Bars>(&self, bars: &mut B, lifter: usize, stack: Option<u32>) -> Option<Offer> {
        let model = self.model;
        if self.done[lifter] == model.count(lifter) {
            return None;
        }
        let turn = model.first[lifter] + self.done[lifter];
        let change = hole_after(model.turns[turn].hole, self.hole) != self.hole;
        let mut moves = Vec::new();
        let wanted = |place: u32| stack.is_none_or(|stack| stack == place);
        let worth = |place: usize, _| u32::try_from(place).is_ok_and(wanted);
        bars.moves(self.bar, turn, change, worth, &mut moves);
        let real = moves.into_iter().filter(|way| !way.stub);
        let way = real.min_by_key(|way| (way.handling, way.stack))?;
        let loaded = self.clock + way.handling + if change { model.hole_change } else { 0 };
        let starts = loaded.max(self.ready[lifter]);
        let row = &model.turns[turn..model.first[lifter + 1]];
        let left: i64 = row.iter().map(|t| t.lasts + t.rest).sum();
        // An eighth has served well; any share would do.
        let rank = (starts - left / 8, way.handling);
        Some(Offer {
            lifter,
            turn,
            starts,
            handling: way.handling,
            bar: bars.arrive(self.bar, &way),
            rank,
        })
    }

    fn take(&mut self, offer: &Offer) {
        let want = &self.model.turns[offer.turn];
        self.hole = hole_after(want.hole, self.hole);
        self.bar = offer.bar;
        self.clock = offer.starts + want.lasts;
        self.done[offer.lifter] += 1;
        if self.done[offer.lifter] < self.model.count(offer.lifter) {
            self.ready[offer.lifter] = self.clock + self.model.turns[offer.turn + 1].rest;
        }
    }
}
