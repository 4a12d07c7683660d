//! A crowd's problem looked at whole, where that is little enough: roughly first, for a bound and to
//! leave out where no good plan can pass, then with as many stacks told apart as there is room for.
use super::bars::Bars;
use super::bounds::Bounds;
use super::crowd::Crowd;
use super::incumbent::{Aim, Incumbent};
use super::min_plus::{Cost, MinPlus};
use super::model::Model;
use super::passes::Verdict;
use super::pruning::{thinned, thinned_by};
use super::search::Search;
use super::stacks::Stacks;
use super::state_graph::{Reach, StateGraph};
use alloc::vec;
use alloc::vec::Vec;

/// Places of a course that is looked at whole, before what is out of reach is left out.
const ALL_PLACES: usize = 150_000;
/// Groups of lanes in the table for it.
const ALL_TABLE: usize = 3_000_000;
/// Stacks of a turn that are told apart in the rough table.
const ROUGH: usize = 1;
/// Width of the pass that looks for a better plan by it.
const ROUGH_WIDTH: usize = 30;
/// Passes by the fine one.
const FINE_WIDTHS: [(Aim, usize); 4] = [
    (Aim::Both, 30),
    (Aim::Both, 300),
    (Aim::Ends, 3_000),
    (Aim::Ends, 30_000),
];

/// Ways from stack to stack that are worked out once for several passes.
struct Ways<'a, C> {
    spread: MinPlus<'a, C>,
    /// As in [`Search`].
    nearest: Vec<Option<Vec<i64>>>,
}

impl<'a, C: Cost> Ways<'a, C> {
    fn new(model: &'a Model, stacks: &'a Stacks) -> Self {
        Self {
            spread: MinPlus::new(model, stacks),
            nearest: vec![None; 2 * (model.turns.len() + 1) * model.turns.len()],
        }
    }
}

impl<'a, B: Bars> Crowd<'a, '_, B> {
    /// A bound, perhaps a better plan, and what is left to be looked at finely.
    pub(super) fn look_roughly<C: Cost>(
        &mut self,
        best: &mut Incumbent,
        verdict: &mut Verdict,
    ) -> Option<StateGraph> {
        let model = self.model;
        let mut ponder = |work| self.allowance.ponder(work);
        let within = (&Reach::Whole, ALL_PLACES);
        let course = StateGraph::new(model, best.ends, within, &mut ponder)?;
        let mut rough = MinPlus::bundled(model, self.stacks, ROUGH);
        let course = thinned::<C>(model, &mut rough, course, best.ends, &mut ponder)?;
        let size = Bounds::<C>::size(model, &rough, &course);
        if size > ALL_TABLE {
            return None;
        }
        let bounds = Bounds::<C>::new(model, &mut rough, &course, size, &mut ponder)?;
        let mut ways = Ways::new(model, self.stacks);
        let pass = (Aim::Both, ROUGH_WIDTH);
        self.pass_over((&course, &bounds), &mut ways, pass, best, verdict);
        let mut ponder = |work| self.allowance.ponder(work);
        thinned_by(model, &mut rough, &bounds, course, best.ends, &mut ponder)
    }

    /// Passes over what is left, until one proves the best plan or there is no more time.
    pub(super) fn look_finely<C: Cost>(
        &mut self,
        course: StateGraph,
        best: &mut Incumbent,
        verdict: &mut Verdict,
    ) {
        let model = self.model;
        let mut ponder = |work| self.allowance.ponder(work);
        let mut rough = MinPlus::bundled(model, self.stacks, ROUGH);
        let thinned = thinned::<C>(model, &mut rough, course, best.ends, &mut ponder);
        let Some(course) = thinned else {
            return;
        };
        // As many stacks told apart as there is room for.
        let fine = (ROUGH..=self.bundles).rev().find_map(|most| {
            let fine = MinPlus::bundled(model, self.stacks, most);
            let size = Bounds::<C>::size(model, &fine, &course);
            (size <= ALL_TABLE).then_some((fine, size))
        });
        let Some((mut fine, size)) = fine else {
            return;
        };
        let bounds = Bounds::<C>::new(model, &mut fine, &course, size, &mut ponder);
        let Some(bounds) = bounds else {
            return;
        };
        let mut ways = Ways::new(model, self.stacks);
        for pass in FINE_WIDTHS {
            self.pass_over((&course, &bounds), &mut ways, pass, best, verdict);
            if verdict.proven || self.allowance.spent {
                break;
            }
        }
    }

    /// A pass of some width, after some aim.
    fn pass_over<C: Cost>(
        &mut self,
        (course, bounds): (&StateGraph, &Bounds<C>),
        ways: &mut Ways<'a, C>,
        (aim, width): (Aim, usize),
        best: &mut Incumbent,
        verdict: &mut Verdict,
    ) {
        let mut search = Search {
            model: self.model,
            course,
            bounds,
            spread: &mut ways.spread,
            bars: &mut self.bars,
            allowance: self.allowance,
            best,
            nearest: core::mem::take(&mut ways.nearest),
            shapes: None,
        };
        let least = search.at_least().min(search.best.ends);
        verdict.at_least = verdict.at_least.max(least);
        let outcome = search.pass(aim, width);
        ways.nearest = search.nearest;
        self.bars.forget(&mut best.steps);
        verdict.at_least = verdict.at_least.max(outcome.at_least).min(best.ends);
        verdict.proven = verdict.at_least >= best.ends;
        verdict.least_handling = outcome.whole && aim == Aim::Both;
    }
}
