//! From a problem to a plan: a first plan by rule of thumb, then the passes of the search, until
//! one proves the best or the effort is spent.
//!
//! Refuses: turns that no plates make.
use super::allowance::Allowance;
use super::answer::{Found, spell_out};
use super::any_order::AnyOrder;
use super::bars::Bars;
use super::big_inside::BigInside;
use super::bounds::Bounds;
use super::crowd::{BUNDLES, Crowd};
use super::incumbent::Incumbent;
use super::min_plus::{Cost, MinPlus};
use super::model::Model;
use super::passes::{TABLES, Verdict, Widths, passes};
use super::search::Search;
use super::stacks::Stacks;
use super::state_graph::{Reach, StateGraph, Times};
use super::{Effort, Plan, Problem, check, greedy};
use crate::solve::Refusal;
use alloc::vec;
use alloc::vec::Vec;
use core::cell::OnceCell;

/// How many stacks the tree may have when a problem is looked at whole. Fewer leave more out, for
/// problems whose bounds take too long otherwise.
const TREES: [usize; 3] = [8_000, 3_000, 1_000];
/// And when it is not: every stack is looked at again and again.
pub(super) const CROWD_TREE: usize = 3_000;
/// Places that a course may have to be looked at whole at once.
const PLACES_LIMIT: usize = 20_000;
/// Groups of lanes in the table of bounds: 32 or 64 bytes each.
pub(super) const TABLE_LIMIT: usize = 2_000_000;
/// Work for the table of bounds, in groups of lanes compared: some tenths of a second.
pub(super) const WORK_LIMIT: usize = 150_000_000;

/// Plans a checked problem. An end before `soon_enough` is worth no more than that one.
pub(super) fn run(
    problem: &Problem,
    soon_enough: u64,
    effort: Effort<'_>,
    widths: &Widths,
) -> Result<Plan, Refusal> {
    let model = Model::new(problem, soon_enough);
    let mut allowance = Allowance::new(effort);
    // Small numbers are quicker; sums in the table stay below four times the horizon.
    let small = model.horizon / model.unit < i64::from(i32::MAX / 16);
    let found = if small {
        within_scope::<i32>(&model, &mut allowance, widths)
    } else {
        within_scope::<i64>(&model, &mut allowance, widths)
    };
    let found = found.ok_or_else(|| check::unloadable(problem))?;
    Ok(spell_out(problem, &model, &found, allowance.used))
}

/// A good order by small changes alone, for a problem that is one of many.
pub(super) fn sketch(problem: &Problem, effort: Effort<'_>) -> Result<Plan, Refusal> {
    let model = &Model::new(problem, 0);
    let mut allowance = Allowance::new(effort);
    let stacks = Stacks::new(model, CROWD_TREE).ok_or_else(|| check::unloadable(problem))?;
    let (stacks, allowance) = (&stacks, &mut allowance);
    let found = if model.big_inside {
        Crowd {
            model,
            stacks,
            bars: BigInside { model, stacks },
            allowance,
            bundles: BUNDLES,
        }
        .sketch()
    } else {
        Crowd {
            model,
            stacks,
            bars: AnyOrder::new(model, stacks),
            allowance,
            bundles: BUNDLES,
        }
        .sketch()
    };
    Ok(spell_out(problem, model, &found, allowance.used))
}

/// Plans whole what can be looked at whole, and other problems as a crowd; `None` when some turn
/// has no stack.
fn within_scope<C: Cost>(
    model: &Model,
    allowance: &mut Allowance<'_>,
    widths: &Widths,
) -> Option<Found> {
    let trees = TREES
        .iter()
        .filter(|_| StateGraph::may_fit(model, PLACES_LIMIT));
    for &nodes in trees {
        let stacks = &Stacks::new(model, nodes)?;
        let found = if model.big_inside {
            go::<_, C>(
                model,
                stacks,
                BigInside { model, stacks },
                widths,
                allowance,
            )
        } else {
            go::<_, C>(
                model,
                stacks,
                AnyOrder::new(model, stacks),
                widths,
                allowance,
            )
        };
        if found.is_some() {
            return found;
        }
    }
    as_a_crowd::<C>(model, BUNDLES, allowance)
}

/// Plans a problem as one that is too large to look at whole; `None` when some turn has no stack.
fn as_a_crowd<C: Cost>(
    model: &Model,
    bundles: usize,
    allowance: &mut Allowance<'_>,
) -> Option<Found> {
    let stacks = &Stacks::new(model, CROWD_TREE)?;
    Some(if model.big_inside {
        let bars = BigInside { model, stacks };
        in_a_crowd::<_, C>(model, stacks, bars, bundles, allowance)
    } else {
        let bars = AnyOrder::new(model, stacks);
        in_a_crowd::<_, C>(model, stacks, bars, bundles, allowance)
    })
}

/// As [`run`], for a problem of any size as if it were too large to look at whole.
pub(super) fn run_as_a_crowd(
    problem: &Problem,
    bundles: usize,
    effort: Effort<'_>,
) -> Result<Plan, Refusal> {
    let model = Model::new(problem, 0);
    let mut allowance = Allowance::new(effort);
    let found = as_a_crowd::<i64>(&model, bundles, &mut allowance);
    let found = found.ok_or_else(|| check::unloadable(problem))?;
    Ok(spell_out(problem, &model, &found, allowance.used))
}

/// A plan for a problem that is too large to look at whole.
fn in_a_crowd<B: Bars, C: Cost>(
    model: &Model,
    stacks: &Stacks,
    bars: B,
    bundles: usize,
    allowance: &mut Allowance<'_>,
) -> Found {
    let mut crowd = Crowd {
        model,
        stacks,
        bars,
        allowance,
        bundles,
    };
    let (best, verdict) = crowd.plan::<C>();
    found(&best.steps, &crowd.bars, &verdict)
}

/// The first plan, where there is no time to look for a better one.
pub(super) fn by_thumb<B: Bars>(model: &Model, best: &Incumbent, bars: &B) -> Found {
    let least = Times::new(model).least(model, &vec![0; model.lifters()]);
    let verdict = Verdict {
        proven: least >= best.ends,
        least_handling: false,
        at_least: least.min(best.ends),
    };
    found(&best.steps, bars, &verdict)
}

/// Plans with these bars, unless that is too much.
fn go<B: Bars, C: Cost>(
    model: &Model,
    stacks: &Stacks,
    mut bars: B,
    widths: &Widths,
    allowance: &mut Allowance<'_>,
) -> Option<Found> {
    let mut best = greedy::plan(model, &mut bars);
    let within = (&Reach::Whole, PLACES_LIMIT);
    let course = StateGraph::new(model, best.ends, within, &mut |_| true)?;
    let mut spread = MinPlus::new(model, stacks);
    let size = Bounds::<C>::size(model, &spread, &course);
    let work = Bounds::<C>::work(model, &spread, &course);
    if size > TABLE_LIMIT || work > WORK_LIMIT {
        return None;
    }
    let bounds = Bounds::<C>::new(model, &mut spread, &course, size, &mut |work| {
        allowance.ponder(work)
    });
    let Some(bounds) = bounds else {
        return Some(by_thumb(model, &best, &bars));
    };
    let tables = [const { OnceCell::new() }; TABLES];
    let mut search = Search {
        model,
        course: &course,
        bounds: &bounds,
        spread: &mut spread,
        bars: &mut bars,
        allowance,
        best: &mut best,
        nearest: vec![None; 2 * (model.turns.len() + 1) * model.turns.len()],
        shapes: None,
    };
    let verdict = passes(&mut search, &tables, widths);
    Some(found(&best.steps, &bars, &verdict))
}

fn found<B: Bars>(steps: &[(u8, u32)], bars: &B, verdict: &Verdict) -> Found {
    let order: Vec<u32> = steps.iter().map(|step| step.1).collect();
    Found {
        lifters: steps.iter().map(|step| step.0).collect(),
        stacks: bars.lay(&order),
        proven: verdict.proven,
        least_handling: verdict.least_handling,
        at_least: verdict.at_least,
    }
}
