//! The search: states layer by layer, one turn more in each, with what is needless left out.
//!
//! A state is needless when the bounds say that nothing better than the best plan can come of it,
//! when nothing useful leads on from it (see `lookahead`), or when another state with the same turns
//! done and the same hole set is as good (see `dominance`). A pass may also drop states for want of
//! room, the least promising first; then it proves nothing but tells what it dropped.
//!
//! Refuses: nothing.
use super::Problem;
use super::allowance::Allowance;
use super::bars::{Bars, Move};
use super::beam::{Beam, Outcome};
use super::bounds::{After, Bounds};
use super::dominance::Judge;
use super::incumbent::{Aim, Incumbent};
use super::layer::{Layer, State, narrow};
use super::min_plus::{Cost, LANES, MinPlus};
use super::model::{Model, hole_after};
use super::profiles::{self, Profiles};
use super::state_graph::StateGraph;
use alloc::vec;
use alloc::vec::Vec;
use core::ops::Range;

/// Of so many times the width of a wide pass, the needless are left out first.
const SPARE: usize = 4;
/// Passes narrower than this choose by the bounds which states to keep, so better ones are worth
/// their while.
const THOROUGH: usize = 100_000;

/// What became of a state, to find the way back.
#[derive(Debug, Clone, Copy)]
struct Mark {
    parent: u32,
    bar: u32,
    lifter: u8,
}

/// See the module.
pub(super) struct Search<'a, 's, 'm, B, C> {
    pub model: &'m Model,
    pub course: &'a StateGraph,
    pub bounds: &'a Bounds<C>,
    pub spread: &'a mut MinPlus<'m, C>,
    pub bars: &'a mut B,
    pub allowance: &'a mut Allowance<'s>,
    pub best: &'a mut Incumbent,
    /// By turn before, next turn, and whether the hole changes: least handling, by stack.
    pub nearest: Vec<Option<Vec<i64>>>,
    /// Once it pays.
    pub shapes: Option<&'a Profiles<C>>,
}

/// A step of one lifter to a place.
pub(super) struct Step<'a, C> {
    aim: Aim,
    lifter: usize,
    turn: usize,
    hole: u8,
    hole_change_due: bool,
    hole_change: i64,
    after: After<'a, C>,
    shapes: Option<&'a profiles::Row<C>>,
    /// By lifter, what comes next.
    coming: Vec<Option<Coming>>,
}

/// A lifter's next turn.
#[derive(Debug, Clone, Copy)]
struct Coming {
    turn: usize,
    /// Where the least handling is, by stack.
    nearest: usize,
    hole_change: i64,
}

impl<'a, B: Bars, C: Cost> Search<'a, '_, '_, B, C> {
    /// Looks for something better than the best plan, with at most `width` states a layer.
    pub(super) fn pass(&mut self, aim: Aim, width: usize) -> Outcome {
        let mut sieve = Beam::new(aim);
        let mut layer = Layer::new(&self.course.layers[0]);
        layer.push(&[self.start()]);
        let mut trail: Vec<Vec<Mark>> = Vec::new();
        for places in &self.course.layers[1..] {
            let mut next = Layer::new(places);
            sieve.worst = None;
            for place in places.clone() {
                let mut children = self.children(&mut sieve, &layer, place);
                let spare = if width < THOROUGH { 1 } else { SPARE };
                if let Some(dropped) = narrow(&mut children, width.saturating_mul(spare), aim) {
                    sieve.outcome.give_up(dropped);
                }
                self.weed(aim, place, &mut children, width < THOROUGH);
                if self.allowance.spent {
                    let open = layer.states.iter().map(|s| s.ends).min();
                    sieve.outcome.give_up(open.unwrap_or(i64::MAX));
                    return sieve.outcome;
                }
                next.push(&children);
                if next.states.len() / 2 > width {
                    sieve.narrow(&mut next, width);
                }
            }
            sieve.narrow(&mut next, width);
            trail.push(next.states.iter().map(mark).collect());
            layer = next;
        }
        self.finish(aim, &layer, &trail);
        sieve.outcome
    }

    /// Leaves out of `states`, all at one place, what is needless or leads nowhere.
    fn weed(&mut self, aim: Aim, place: usize, states: &mut Vec<State>, thorough: bool) {
        let lifters = self.model.lifters();
        Judge::new(aim, self.bars, lifters).drop_same(states, |work| self.allowance.ponder(work));
        self.drop_barren(aim, place, states, thorough);
        Judge::new(aim, self.bars, lifters)
            .drop_as_good(states, |work| self.allowance.ponder(work));
    }

    /// All that leads from a layer to a place.
    fn children(&mut self, sieve: &mut Beam, layer: &Layer, place: usize) -> Vec<State> {
        let mut children = Vec::new();
        for lifter in 0..self.model.lifters() {
            if let Some(before) = self.course.places[place].before[lifter] {
                let from = layer.at(before as usize);
                self.lead_on(sieve, layer, from, (place, lifter), &mut children);
            }
        }
        children
    }

    /// No plan ends before, by the bounds alone.
    pub(super) fn at_least(&self) -> i64 {
        let start = self.bounds.after(0, self.model.lifters(), self.model.hole);
        let ends = start.map_or(i64::MAX / 2, |start| start.ends(0));
        let least = self.course.least.max(self.model.now + ends);
        self.model.counted(least)
    }

    fn start(&self) -> State {
        let mut ready = [0; Problem::LIFTERS_LIMIT];
        ready[..self.model.lifters()].copy_from_slice(&self.model.ready);
        State {
            clock: self.model.now,
            handling: 0,
            ends: self.model.counted(self.model.now),
            least_handling: 0,
            ready,
            parent: 0,
            bar: self.bars.start(),
            lifter: u8::try_from(self.model.lifters()).expect("few lifters"),
            hole: self.model.hole,
        }
    }

    /// Adds to `children` what comes of the states `from` of a layer when a lifter goes next.
    fn lead_on(
        &mut self,
        sieve: &mut Beam,
        layer: &Layer,
        from: Range<usize>,
        (place, lifter): (usize, usize),
        children: &mut Vec<State>,
    ) {
        let mut moves = Vec::new();
        let mut at = from.start;
        while at < from.end {
            let first = layer.states[at];
            let same = |s: &State| s.bar == first.bar && s.hole == first.hole;
            let count = layer.states[at..from.end]
                .iter()
                .take_while(|s| same(s))
                .count();
            let group = &layer.states[at..at + count];
            let Some(step) = self.step(sieve.aim, place, lifter, first.hole) else {
                at += count;
                continue;
            };
            self.moves(&step, group, &mut moves);
            for way in &moves {
                let mut arrived = None;
                for (offset, state) in group.iter().enumerate() {
                    let parent = u32::try_from(at + offset).expect("fewer than 2^32 states");
                    let Some(mut child) = self.child(&step, state, parent, way) else {
                        continue;
                    };
                    if way.stub || sieve.falls_through(&child) {
                        sieve.outcome.give_up(child.ends);
                    } else {
                        let bars = &mut self.bars;
                        child.bar = *arrived.get_or_insert_with(|| bars.arrive(first.bar, way));
                        children.push(child);
                    }
                }
            }
            at += count;
            self.allowance.spend(count * moves.len() + 1);
            if self.allowance.spent {
                return;
            }
        }
    }

    /// `None` where the course has left it out.
    pub(super) fn step(
        &mut self,
        aim: Aim,
        place: usize,
        lifter: usize,
        hole: u8,
    ) -> Option<Step<'a, C>> {
        let model = self.model;
        let there = &self.course.places[place];
        let turn = model.first[lifter] + usize::from(there.done[lifter]) - 1;
        let then = hole_after(model.turns[turn].hole, hole);
        let number = u32::try_from(place).expect("a place");
        let after = self.bounds.after(number, lifter, then)?;
        let mut coming = vec![None; model.lifters()];
        for (other, coming) in coming.iter_mut().enumerate() {
            if usize::from(there.done[other]) < model.count(other) {
                let next = StateGraph::turn(model, there, other);
                let changes = hole_after(model.turns[next].hole, then) != then;
                let nearest = self.nearest(turn, next, changes);
                let hole_change = if changes { model.hole_change } else { 0 };
                *coming = Some(Coming {
                    turn: next,
                    nearest,
                    hole_change,
                });
            }
        }
        let shapes = self.shapes.map(|shapes| shapes.row(place, lifter, then));
        Some(Step {
            shapes,
            aim,
            lifter,
            turn,
            hole: then,
            hole_change_due: then != hole,
            hole_change: if then == hole { 0 } else { model.hole_change },
            after,
            coming,
        })
    }

    /// Where `nearest` has the least handling from the stacks of one turn to another turn.
    fn nearest(&mut self, before: usize, turn: usize, change: bool) -> usize {
        let slot = 2 * (before * self.model.turns.len() + turn) + usize::from(change);
        if self.nearest[slot].is_none() {
            let zero = vec![[C::of(0); LANES]; self.spread.before(turn).len()];
            let mut least = Vec::new();
            self.spread.least((before, turn), change, &zero, &mut least);
            let unit = self.model.unit;
            self.nearest[slot] = Some(least.iter().map(|l| l[0].units() * unit).collect());
        }
        slot
    }

    /// The ways from a group of states that share bar and hole.
    fn moves(&mut self, step: &Step<'_, C>, group: &[State], moves: &mut Vec<Move>) {
        let worth = worth(self.model, self.best, step, group);
        moves.clear();
        self.bars
            .moves(group[0].bar, step.turn, step.hole_change_due, worth, moves);
    }

    /// The same at a glance: see [`Bars::glances`].
    pub(super) fn glances(&mut self, step: &Step<'_, C>, group: &[State], moves: &mut Vec<Move>) {
        let worth = worth(self.model, self.best, step, group);
        moves.clear();
        self.bars
            .glances(group[0].bar, step.turn, step.hole_change_due, worth, moves);
    }

    /// What comes of a state by a move, unless it is of no use.
    pub(super) fn child(
        &self,
        step: &Step<'_, C>,
        from: &State,
        parent: u32,
        way: &Move,
    ) -> Option<State> {
        let (stack, lasts) = (way.stack as usize, self.model.turns[step.turn].lasts);
        let loaded = from.clock + way.handling + step.hole_change;
        let clock = loaded.max(from.ready[step.lifter]) + lasts;
        let handling = from.handling + way.handling;
        let mut least_handling = handling + step.after.handling(stack);
        let mut ends = from.ends.max(clock + step.after.ends(stack));
        if self.best.beats(step.aim, ends, least_handling) {
            return None;
        }
        let mut ready = [0; Problem::LIFTERS_LIMIT];
        let mut waits = [C::of(0); Problem::LIFTERS_LIMIT];
        for (lifter, coming) in step.coming.iter().enumerate() {
            let Some(coming) = coming else { continue };
            let nearest = self.nearest[coming.nearest]
                .as_ref()
                .expect("filled by `step`");
            let loaded = clock + nearest[stack] + coming.hole_change;
            let own = lifter == step.lifter;
            let rested = if own {
                clock + self.model.turns[coming.turn].rest
            } else {
                from.ready[lifter]
            };
            ready[lifter] = loaded.max(rested);
            ends = ends.max(ready[lifter] + self.course.tail[coming.turn]);
            if !own {
                let wait = ready[lifter] - clock;
                let least = step.after.ends_with(stack, lifter, wait);
                ends = ends.max(clock.saturating_add(least));
                waits[lifter] = C::of((wait / self.model.unit).min(C::FAR.units()));
            }
        }
        if self.best.beats(step.aim, ends, least_handling) {
            return None;
        }
        // What the shapes leave out ends later than the best plan, and is of no use for any aim.
        if let Some(shapes) = step.shapes {
            let room = (self.best.ends - clock).div_euclid(self.model.unit);
            let (soonest, least) = shapes.least(stack, &waits, room);
            if soonest >= C::FAR {
                return None;
            }
            ends = ends.max(clock + soonest.units() * self.model.unit);
            least_handling = least_handling.max(handling + least.units() * self.model.unit);
        }
        let useless = self.best.beats(step.aim, ends, least_handling);
        (!useless).then_some(State {
            clock,
            handling,
            ends,
            least_handling,
            ready,
            parent,
            bar: from.bar,
            lifter: u8::try_from(step.lifter).expect("few lifters"),
            hole: step.hole,
        })
    }

    /// Takes the best of the last layer.
    fn finish(&mut self, aim: Aim, layer: &Layer, trail: &[Vec<Mark>]) {
        let through = layer.states.iter().enumerate();
        let counted = |s: &State| self.model.counted(s.clock);
        let useful = through.filter(|(_, s)| !self.best.beats(aim, counted(s), s.handling));
        let key = |s: &State| match aim {
            Aim::Handling => (s.handling, counted(s)),
            Aim::Both | Aim::Ends => (counted(s), s.handling),
        };
        let Some((at, state)) = useful.min_by_key(|(at, s)| (key(s), *at)) else {
            return;
        };
        let mut steps = Vec::new();
        let mut at = at;
        for marks in trail.iter().rev() {
            steps.push((marks[at].lifter, marks[at].bar));
            at = marks[at].parent as usize;
        }
        steps.reverse();
        let (ends, handling) = (counted(state), state.handling);
        *self.best = Incumbent {
            ends,
            handling,
            steps,
        };
    }
}

/// Whether a way to a stack may be of use to one of a group of states.
fn worth<'a, C: Cost>(
    model: &'a Model,
    best: &'a Incumbent,
    step: &'a Step<'_, C>,
    group: &[State],
) -> impl FnMut(usize, i64) -> bool + use<'a, C> {
    let least = |of: fn(&State) -> i64| group.iter().map(of).min().unwrap_or(0);
    let (clock, handling) = (least(|s| s.clock), least(|s| s.handling));
    let rested = group.iter().map(|s| s.ready[step.lifter]).min();
    let rested = rested.unwrap_or(0);
    let lasts = model.turns[step.turn].lasts;
    move |stack, more| {
        let starts = (clock + more + step.hole_change).max(rested);
        let ends = model.counted(starts + lasts + step.after.ends(stack));
        !best.beats(step.aim, ends, handling + more + step.after.handling(stack))
    }
}

fn mark(state: &State) -> Mark {
    Mark {
        parent: state.parent,
        bar: state.bar,
        lifter: state.lifter,
    }
}
