//! From a problem to a plan: a first plan by rule of thumb, then passes of the search, narrow
//! ones first, until one proves the best or the effort is spent.
//!
//! Refuses: turns that no plates make.
use super::bars::{Bars, Move};
use super::bounds::Bounds;
use super::course::Course;
use super::free::Free;
use super::model::{Model, hole_after};
use super::search::{Aim, Allowance, Best, Search};
use super::sorted::Sorted;
use super::spread::{Cost, Spread};
use super::stacks::Stacks;
use super::{Effort, Plan, PlannedTurn, Problem};
use crate::mass::Mass;
use crate::solve::equipment::refusal;
use crate::solve::{Change, Constraint, Refusal};
use alloc::string::String;
use alloc::vec;
use alloc::vec::Vec;

/// Nodes of the tree of stacks.
const NODES_LIMIT: usize = 8_000;
/// Groups of lanes in the table of bounds.
const LANES_LIMIT: usize = 4_000_000;
/// Widths of the passes, the last one as much as fits in memory.
const WIDTHS: [usize; 4] = [300, 3_000, 30_000, 400_000];

pub(super) fn run(problem: &Problem, effort: Effort<'_>) -> Result<Plan, Refusal> {
    let model = Model::new(problem);
    let Some(stacks) = Stacks::new(&model, NODES_LIMIT) else {
        return Err(super::check::unloadable(problem));
    };
    let mut allowance = Allowance {
        left: effort.states,
        used: 0,
        go_on: effort.go_on,
    };
    let small = model.horizon / model.unit < i64::from(i32::MAX / 8);
    let found = match (model.big_inside, small) {
        (true, true) => go::<_, i32>(
            &model,
            &stacks,
            Sorted {
                model: &model,
                stacks: &stacks,
            },
            &mut allowance,
        ),
        (true, false) => go::<_, i64>(
            &model,
            &stacks,
            Sorted {
                model: &model,
                stacks: &stacks,
            },
            &mut allowance,
        ),
        (false, true) => go::<_, i32>(&model, &stacks, Free::new(&model, &stacks), &mut allowance),
        (false, false) => go::<_, i64>(&model, &stacks, Free::new(&model, &stacks), &mut allowance),
    };
    Ok(spell_out(problem, &model, &found, allowance.used))
}

/// What the passes came to.
struct Found {
    lifters: Vec<u8>,
    stacks: Vec<Vec<u8>>,
    proven: bool,
    least_handling: bool,
    at_least: i64,
}

fn go<B: Bars, C: Cost>(
    model: &Model,
    stacks: &Stacks,
    mut bars: B,
    allowance: &mut Allowance<'_>,
) -> Found {
    let mut best = by_thumb(model, &mut bars);
    let mut course = Course::new(model, best.ends, u8::MAX);
    let mut all = true;
    let mut lead = 4;
    while Bounds::<C>::size(model, stacks, &course) > LANES_LIMIT && lead > 0 {
        all = false;
        course = Course::new(model, best.ends, lead);
        lead -= 1;
    }
    let mut spread = Spread::new(model, stacks);
    let bounds = Bounds::<C>::new(model, &mut spread, stacks, &course);
    let mut search = Search {
        model,
        course: &course,
        bounds: &bounds,
        spread: &mut spread,
        bars: &mut bars,
        allowance,
        best: &mut best,
        nearest: vec![None; 2 * (model.turns.len() + 1) * model.turns.len()],
    };
    let verdict = passes(&mut search);
    Found {
        lifters: best.steps.iter().map(|s| s.0).collect(),
        stacks: bars.lay(&best.steps.iter().map(|s| s.1).collect::<Vec<_>>()),
        proven: verdict.proven && all,
        least_handling: verdict.least_handling && all,
        at_least: if all { verdict.at_least } else { course.least },
    }
}

/// What is known about the best plan.
struct Verdict {
    proven: bool,
    least_handling: bool,
    at_least: i64,
}

fn passes<B: Bars, C: Cost>(search: &mut Search<'_, '_, '_, B, C>) -> Verdict {
    let mut at_least = search.at_least();
    let mut verdict = |ends: i64, least: i64| at_least = at_least.max(least.min(ends));
    for width in [WIDTHS[0] / 10, WIDTHS[0]] {
        let outcome = search.pass(Aim::Both, width);
        verdict(search.best.ends, outcome.at_least);
        if outcome.whole {
            return Verdict {
                proven: true,
                least_handling: true,
                at_least: search.best.ends,
            };
        }
    }
    let mut proven = false;
    for width in &WIDTHS[1..] {
        proven = proven || at_least >= search.best.ends;
        if proven || search.allowance.left == 0 {
            break;
        }
        let outcome = search.pass(Aim::Ends, *width);
        at_least = at_least.max(outcome.at_least.min(search.best.ends));
        proven = outcome.whole;
    }
    if proven {
        at_least = search.best.ends;
    }
    let mut least_handling = false;
    for width in WIDTHS {
        if least_handling || search.allowance.left == 0 {
            break;
        }
        let outcome = search.pass(Aim::Handling, width);
        least_handling = proven && outcome.whole;
    }
    Verdict {
        proven,
        least_handling,
        at_least,
    }
}

/// A plan by rule of thumb: whoever can start first goes first, longer rows of turns before
/// shorter ones, with the stack that is nearest.
fn by_thumb<B: Bars>(model: &Model, bars: &mut B) -> Best {
    let mut done = vec![0; model.lifters()];
    let mut ready = model.ready.clone();
    let (mut clock, mut handling, mut hole, mut bar) = (model.now, 0, model.hole, bars.start());
    let mut steps = Vec::new();
    let mut moves: Vec<Move> = Vec::new();
    for step in 0..model.turns.len() {
        let mut next: Option<((i64, i64), usize, Move, i64)> = None;
        for lifter in 0..model.lifters() {
            let called = model
                .called
                .get(step)
                .is_none_or(|&called| called == lifter);
            if done[lifter] == model.count(lifter) || !called {
                continue;
            }
            let turn = model.first[lifter] + done[lifter];
            let then = hole_after(model.turns[turn].hole, hole);
            let change = if then == hole { 0 } else { model.hole_change };
            moves.clear();
            bars.moves(bar, turn, then != hole, |_, _| true, &mut moves);
            let Some(way) = moves
                .iter()
                .filter(|m| !m.stub)
                .min_by_key(|m| (m.handling, m.stack))
            else {
                continue;
            };
            let starts = (clock + way.handling + change).max(ready[lifter]);
            let left: i64 = model.turns[turn..model.first[lifter + 1]]
                .iter()
                .map(|t| t.lasts + t.rest)
                .sum();
            let key = (starts - left / 8, way.handling);
            if next.as_ref().is_none_or(|(best, ..)| key < *best) {
                next = Some((key, lifter, *way, starts));
            }
        }
        let (_, lifter, way, starts) = next.expect("each turn has a stack and all can be set");
        let turn = model.first[lifter] + done[lifter];
        hole = hole_after(model.turns[turn].hole, hole);
        bar = way.bar;
        handling += way.handling;
        clock = starts + model.turns[turn].lasts;
        done[lifter] += 1;
        if done[lifter] < model.count(lifter) {
            ready[lifter] = clock + model.turns[turn + 1].rest;
        }
        steps.push((u8::try_from(lifter).expect("few lifters"), bar));
    }
    Best {
        ends: clock,
        handling,
        steps,
    }
}

/// Counts a plan afresh from its stacks.
fn spell_out(problem: &Problem, model: &Model, found: &Found, states: u64) -> Plan {
    let mut plan = Plan {
        ends_ns: 0,
        handling_ns: 0,
        pair_moves: 0,
        proven: found.proven,
        least_handling: found.least_handling,
        at_least_ns: found.at_least.unsigned_abs(),
        states,
        turns: Vec::new(),
    };
    let mut done = vec![0; model.lifters()];
    let mut ready = model.ready.clone();
    let (mut clock, mut hole, mut before) = (model.now, model.hole, model.on_bar.clone());
    for (&lifter, stack) in found.lifters.iter().zip(&found.stacks) {
        let lifter = usize::from(lifter);
        let turn = model.first[lifter] + done[lifter];
        let want = &model.turns[turn];
        let then = hole_after(want.hole, hole);
        let mut kept = before.iter().zip(stack).take_while(|(a, b)| a == b).count();
        while then != hole && !model.light(model.load(&before[..kept])) {
            kept -= 1;
        }
        let handling = model.handling(&before[kept..]) + model.handling(&stack[kept..]);
        let loaded = clock + handling + if then == hole { 0 } else { model.hole_change };
        let starts = loaded.max(ready[lifter]);
        clock = starts + want.lasts;
        let place = |k: &u8| model.kinds[usize::from(*k)].place;
        let change = Change {
            take_off: before[kept..].iter().rev().map(place).collect(),
            put_on: stack[kept..].iter().map(place).collect(),
        };
        plan.handling_ns += handling.unsigned_abs();
        let moved = change.take_off.len() + change.put_on.len();
        plan.pair_moves += u32::try_from(moved).expect("a sleeve holds few plates");
        plan.turns.push(PlannedTurn {
            lifter,
            turn: done[lifter],
            ready_ns: loaded.unsigned_abs(),
            starts_ns: starts.unsigned_abs(),
            ends_ns: clock.unsigned_abs(),
            hole: problem.lifters[lifter].turns[done[lifter]].hole,
            hole_change: then != hole,
            load: Mass::from_ng(model.load(stack)),
            per_side: stack.iter().map(place).collect(),
            change,
        });
        done[lifter] += 1;
        if done[lifter] < model.count(lifter) {
            ready[lifter] = clock + model.turns[turn + 1].rest;
        }
        hole = then;
        before.clone_from(stack);
    }
    plan.ends_ns = clock.unsigned_abs();
    if plan.proven {
        plan.at_least_ns = plan.ends_ns;
    }
    plan
}
