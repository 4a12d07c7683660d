//! From a problem to a plan: a first plan by rule of thumb, then the passes of the search, until
//! one proves the best or the effort is spent.
//!
//! Refuses: turns that no plates make.
use super::allowance::Allowance;
use super::answer::{Found, spell_out};
use super::bars::Bars;
use super::bounds::Bounds;
use super::course::{Course, Times};
use super::free::Free;
use super::model::Model;
use super::passes::{TABLES, Verdict, Widths, passes};
use super::search::Search;
use super::sorted::Sorted;
use super::spread::{Cost, Spread};
use super::stacks::Stacks;
use super::{Effort, Plan, Problem, check, thumb};
use crate::solve::Refusal;
use alloc::vec;
use alloc::vec::Vec;
use core::cell::OnceCell;

/// How large a problem is looked at: stacks in the tree, and how far lifters may be ahead of each
/// other. What comes later leaves more out, for problems whose bounds take too long otherwise.
const SCOPES: [(usize, u8); 9] = [
    (8_000, u8::MAX),
    (3_000, u8::MAX),
    (1_000, u8::MAX),
    (3_000, 3),
    (3_000, 2),
    (1_000, 2),
    (1_000, 1),
    (300, 1),
    (100, 1),
];
/// Groups of lanes in the table of bounds: 32 or 64 bytes each.
const TABLE_LIMIT: usize = 2_000_000;
/// Work for the table of bounds, in groups of lanes compared: some tenths of a second.
const WORK_LIMIT: usize = 150_000_000;

/// Plans a checked problem.
pub(super) fn run(problem: &Problem, effort: Effort<'_>, widths: &Widths) -> Result<Plan, Refusal> {
    let model = Model::new(problem);
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

/// Plans within the largest scope that can be handled; `None` when some turn has no stack.
fn within_scope<C: Cost>(
    model: &Model,
    allowance: &mut Allowance<'_>,
    widths: &Widths,
) -> Option<Found> {
    let mut tree: Option<(usize, Stacks)> = None;
    for (nodes, lead) in SCOPES {
        let same = tree.take().filter(|(limit, _)| *limit == nodes);
        let (_, stacks) = tree.insert(match same {
            Some(same) => same,
            None => (nodes, Stacks::new(model, nodes)?),
        });
        let found = if model.big_inside {
            go::<_, C>(
                model,
                stacks,
                Sorted { model, stacks },
                (lead, widths),
                allowance,
            )
        } else {
            go::<_, C>(
                model,
                stacks,
                Free::new(model, stacks),
                (lead, widths),
                allowance,
            )
        };
        if found.is_some() {
            return found;
        }
    }
    let (_, stacks) = tree?;
    Some(if model.big_inside {
        by_thumb(
            model,
            Sorted {
                model,
                stacks: &stacks,
            },
        )
    } else {
        by_thumb(model, Free::new(model, &stacks))
    })
}

/// The first plan, for problems that are too large to look for a better one.
fn by_thumb<B: Bars>(model: &Model, mut bars: B) -> Found {
    let best = thumb::plan(model, &mut bars);
    let verdict = Verdict {
        proven: false,
        least_handling: false,
        at_least: Times::new(model)
            .least(model, &vec![0; model.lifters()])
            .min(best.ends),
    };
    found(&best.steps, &bars, &verdict)
}

/// Plans with these bars and this lead, unless that is too much.
fn go<B: Bars, C: Cost>(
    model: &Model,
    stacks: &Stacks,
    mut bars: B,
    (lead, widths): (u8, &Widths),
    allowance: &mut Allowance<'_>,
) -> Option<Found> {
    let mut best = thumb::plan(model, &mut bars);
    let course = Course::new(model, best.ends, lead)?;
    let size = Bounds::<C>::size(model, stacks, &course);
    let work = Bounds::<C>::work(model, stacks, &course);
    if size > TABLE_LIMIT || work > WORK_LIMIT {
        return None;
    }
    let mut spread = Spread::new(model, stacks);
    let bounds = Bounds::<C>::new(model, &mut spread, stacks, &course);
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
    let mut verdict = passes(&mut search, &tables, widths);
    if !course.whole {
        // What was proven holds only as long as nobody leads by more.
        verdict = Verdict {
            proven: course.least >= best.ends,
            least_handling: false,
            at_least: course.least,
        };
    }
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
