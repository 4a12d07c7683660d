//! Plans for more lifters than can be looked at whole: a good order by small changes, then all
//! orders near it with every stack, again and again from the best found.
//!
//! Near an order are those that differ from it by few turns at any time (a corridor, as Sniedovich
//! and Voß call it, 2006): a turn may go anywhere else, and others where that one has passed. All
//! of these are searched as a small problem is.
use super::allowance::Allowance;
use super::answer::Found;
use super::bars::Bars;
use super::bounds::Bounds;
use super::covering;
use super::greedy;
use super::improve::{Improver, Ordered};
use super::incumbent::{Aim, Incumbent};
use super::min_plus::{Cost, MinPlus};
use super::model::Model;
use super::passes::Verdict;
use super::robustness;
use super::run::{TABLE_LIMIT, WORK_LIMIT, by_thumb};
use super::search::Search;
use super::stacks::Stacks;
use super::state_graph::{Reach, StateGraph, Times};
use alloc::vec;
use alloc::vec::Vec;

/// Tries of the first rounds of small changes; short ones first, so that something good is there
/// early.
const TRIES: [usize; 3] = [500, 2_000, 8_000];
/// But no more than this times the square of how many turns there are: few turns have few orders.
const TRIES_OF_FEW: usize = 20;
/// And of each later round.
const MORE_TRIES: usize = 8_000;
/// Rounds without anything better after which it ends by itself.
const STALE: usize = 30;
/// Plans that are held against the best for how much they suffer.
const ALIKE_TRIES: usize = 200;
/// Each is about as much work as so many states.
const ALIKE_WORK: usize = 10;
/// The bound that covers all turns is about as much work as so many states.
const COVER: usize = 5_000;
/// How far orders may be from the best one.
const APART: [u32; 2] = [2, 4];
/// Places near an order.
const NEAR_PLACES: usize = 20_000;
/// Stacks of a turn that are usually told apart where all is looked at.
pub(super) const BUNDLES: usize = 6;
/// Widths of the passes over one corridor.
const WIDTHS: [usize; 2] = [30, 300];
/// Work for one corridor, in groups of lanes compared.
const CORRIDOR_WORK: usize = WORK_LIMIT / 2;
/// And in the first round.
const FIRST_WORK: usize = WORK_LIMIT / 8;

/// What is looked at, and how.
pub(super) struct Crowd<'a, 's, B> {
    pub model: &'a Model,
    pub stacks: &'a Stacks,
    pub bars: B,
    pub allowance: &'a mut Allowance<'s>,
    /// Stacks of a turn that are told apart where all is looked at.
    pub bundles: usize,
}

impl<B: Bars> Crowd<'_, '_, B> {
    /// The best plan found in time, and what is known about it.
    pub(super) fn plan<C: Cost>(&mut self) -> (Incumbent, Verdict) {
        let model = self.model;
        let mut verdict = Verdict {
            proven: false,
            least_handling: false,
            at_least: Times::new(model).least(model, &vec![0; model.lifters()]),
        };
        if self.allowance.ponder(COVER) {
            verdict.at_least = verdict.at_least.max(covering::at_least(model, self.stacks));
        }
        let best = self.look::<C>(&mut verdict);
        if !verdict.proven {
            verdict.at_least = verdict.at_least.min(best.ends);
            verdict.proven = verdict.at_least >= best.ends;
        }
        (best, verdict)
    }

    /// A good order by small changes alone.
    pub(super) fn sketch(&mut self) -> Found {
        let mut best = greedy::plan(self.model, &mut self.bars);
        let mut improver = Improver::new(self.model, self.stacks, 1);
        if let Some(ordered) = improver.as_it_is(order_of(&best)) {
            let ordered = improver.improve(ordered, (TRIES[0], 1), self.allowance);
            self.take(&mut best, &ordered);
        }
        by_thumb(self.model, &best, &self.bars)
    }

    fn look<C: Cost>(&mut self, verdict: &mut Verdict) -> Incumbent {
        let mut best = greedy::plan(self.model, &mut self.bars);
        let mut improver = Improver::new(self.model, self.stacks, 1);
        let Some(mut ordered) = improver.as_it_is(order_of(&best)) else {
            return best;
        };
        let few = TRIES_OF_FEW * self.model.turns.len().pow(2);
        for tries in TRIES {
            ordered = improver.improve(ordered, (tries.min(few), 1), self.allowance);
        }
        self.take(&mut best, &ordered);
        let small = fits_in_short(self.model, best.ends);
        let all = if small {
            self.look_roughly::<i16>(&mut best, verdict)
        } else {
            self.look_roughly::<C>(&mut best, verdict)
        };
        let mut all = all.filter(|_| best.ends > verdict.at_least);
        let (mut heat, mut rounds, mut stale) = (1, 0, 0);
        while !self.allowance.spent && stale < STALE {
            let before = (best.ends, best.handling);
            // What is farther away, or takes longer, comes after a look at all.
            let (near, work) = if rounds == 0 {
                (&APART[..1], FIRST_WORK)
            } else {
                (&APART[..], CORRIDOR_WORK)
            };
            for apart in near {
                while !self.allowance.spent && self.search_near::<C>(&mut best, *apart, work) {}
            }
            self.settle(&mut best, &mut improver);
            if let Some(course) = all.take() {
                if small {
                    self.look_finely::<i16>(course, &mut best, verdict);
                } else {
                    self.look_finely::<C>(course, &mut best, verdict);
                }
            }
            if verdict.proven {
                break;
            }
            rounds += 1;
            // Further away from it, or from the order that led to it.
            let from = improver.as_it_is(order_of(&best)).unwrap_or(ordered);
            ordered = improver.improve(from, (MORE_TRIES.min(few), heat), self.allowance);
            self.take(&mut best, &ordered);
            heat = heat % 4 + 1;
            stale = if (best.ends, best.handling) < before {
                0
            } else {
                stale + 1
            };
            if !self.allowance.ponder(1) {
                break;
            }
        }
        best
    }

    /// Takes an order that is better with its plates as they lie.
    fn take(&mut self, best: &mut Incumbent, ordered: &Ordered) {
        let (order, stacks) = (&ordered.order, &ordered.stacks);
        let found = greedy::follow(self.model, &mut self.bars, order, stacks);
        let better = |found: &Incumbent| (found.ends, found.handling) < (best.ends, best.handling);
        if let Some(found) = found.filter(better) {
            *best = found;
        }
    }

    /// Takes another plan that ends alike with no more handling, if it suffers less when a set
    /// takes half as long again.
    fn settle(&mut self, best: &mut Incumbent, improver: &mut Improver<'_>) {
        let suffering = |bars: &B, plan: &Incumbent, model: &Model| {
            let order: Vec<u32> = plan.steps.iter().map(|step| step.1).collect();
            robustness::suffering(model, &order_of(plan), &bars.lay(&order))
        };
        let mut least = suffering(&self.bars, best, self.model);
        for _ in 0..ALIKE_TRIES {
            self.allowance.spend(ALIKE_WORK);
            if self.allowance.spent {
                return;
            }
            let limit = (best.ends, best.handling);
            let Some(other) = improver.neighbour(&order_of(best), limit.0) else {
                continue;
            };
            let (order, stacks) = (&other.order, &other.stacks);
            let found = greedy::follow(self.model, &mut self.bars, order, stacks);
            let Some(found) = found.filter(|f| (f.ends, f.handling) <= limit) else {
                continue;
            };
            let suffers = suffering(&self.bars, &found, self.model);
            if (found.ends, found.handling, suffers) < (limit.0, limit.1, least) {
                least = suffers;
                *best = found;
            }
        }
    }

    /// Searches the orders near the best one; says whether a better one was found.
    fn search_near<C: Cost>(&mut self, best: &mut Incumbent, apart: u32, most: usize) -> bool {
        let model = self.model;
        let reach = Reach::near(model.lifters(), &order_of(best), apart);
        let mut ponder = |work| self.allowance.ponder(work);
        let within = (&reach, NEAR_PLACES);
        let Some(course) = StateGraph::new(model, best.ends, within, &mut ponder) else {
            return false;
        };
        let mut spread = MinPlus::new(model, self.stacks);
        let size = Bounds::<C>::size(model, &spread, &course);
        let work = Bounds::<C>::work(model, &spread, &course);
        if size > TABLE_LIMIT || work > most {
            return false;
        }
        let before = (best.ends, best.handling);
        let bounds = Bounds::<C>::new(model, &mut spread, &course, size, &mut ponder);
        let Some(bounds) = bounds else {
            return false;
        };
        let mut search = Search {
            model,
            course: &course,
            bounds: &bounds,
            spread: &mut spread,
            bars: &mut self.bars,
            allowance: self.allowance,
            best,
            nearest: vec![None; 2 * (model.turns.len() + 1) * model.turns.len()],
            shapes: None,
        };
        for width in WIDTHS {
            if search.pass(Aim::Both, width).whole || search.allowance.spent {
                break;
            }
        }
        self.bars.forget(&mut best.steps);
        (best.ends, best.handling) < before
    }
}

/// Whether a table for plans that end by `ends` can do with short numbers: what is further away is
/// out of reach, and no single duration takes a sum beyond them.
fn fits_in_short(model: &Model, ends: i64) -> bool {
    let most = i64::from(i16::MAX) / 8;
    let turns = model.turns.iter().flat_map(|turn| [turn.lasts, turn.rest]);
    let stack = model
        .kinds
        .iter()
        .map(|kind| model.fitting(kind) * kind.handling);
    let single = turns
        .chain([model.hole_change, 2 * stack.sum::<i64>()])
        .max();
    (ends - model.now) / model.unit < i16::FAR.units() - 1
        && single.unwrap_or(0) / model.unit < most
}

fn order_of(best: &Incumbent) -> Vec<u8> {
    best.steps.iter().map(|step| step.0).collect()
}
