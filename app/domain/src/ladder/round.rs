//! Chooses loads and plates together: rounder plates against nearer shares and shorter steps.
//!
//! Refuses: steps between rungs that are too small to be worth a set, or too long where the plates
//! make shorter ones.
use super::footing::Footing;
use super::steps::{Steps, thousandth};
use crate::mass::{Mass, MassUnit};
use crate::solve::ladder::{self, Plan, Problem, Wish};
use crate::solve::{Equipment, Refusal};
use alloc::vec::Vec;

/// Reps, load and stack of every warm-up and of one work set.
pub(super) type Planned = Vec<(u8, Mass, Vec<usize>)>;

/// A choice of loads.
struct Rise<'a> {
    steps: Steps<'a>,
    /// The work load last.
    loads: Vec<Mass>,
    /// By how much steps are too long, all together.
    too_long: Mass,
    /// What roundness, shares and added sets come to.
    cost_zs: i128,
}

/// Plans the warm-ups and one work set.
pub(super) fn plan(
    equipment: &Equipment,
    footing: &Footing,
    steps: &Steps<'_>,
) -> Result<Planned, Refusal> {
    let mut best = rise(equipment, footing, steps.clone())?;
    for off in steps.habit.off_nearer {
        // Nothing is nearer to what a coach would write than few sets on the roundest plates.
        if best.too_long == Mass::ZERO && best.steps.steps.len() <= steps.steps.len() {
            break;
        }
        let nearer = rise(equipment, footing, steps.within(off))?;
        if (nearer.too_long, nearer.cost_zs) < (best.too_long, best.cost_zs) {
            best = nearer;
        }
    }
    let exact = best.loads.iter().map(|&load| exactly(load, footing));
    let stacks = solve(equipment.clone(), exact.collect())?;
    let reps = best.steps.steps.iter().map(|step| step.reps).chain([0]);
    let rungs = stacks.rungs.into_iter().zip(reps);
    Ok(rungs
        .map(|(rung, reps)| (reps, rung.load, rung.per_side))
        .collect())
}

/// Loads for these warm-ups, some left out and some added so that steps are of a good length.
fn rise<'a>(
    equipment: &Equipment,
    footing: &Footing,
    mut steps: Steps<'a>,
) -> Result<Rise<'a>, Refusal> {
    let habit = steps.habit;
    let mut may_add = habit.added_most;
    let mut added = 0;
    loop {
        let (loads, cost_zs) = round_loads(equipment, footing, &steps)?;
        let step = |pair: &[Mass]| pair[1] - pair[0];
        if let Some(at) = loads.windows(2).position(|pair| step(pair) < habit.least) {
            steps.leave_out(at);
            // What was too near once would be so again.
            may_add = 0;
            continue;
        }
        let from_first: Vec<Mass> = [steps.first].into_iter().chain(loads).collect();
        let excess = |at: usize| step(&from_first[at..at + 2]) - longest(&steps, at, &from_first);
        let long: Vec<usize> = (0..from_first.len() - 1)
            .filter(|&at| excess(at) > Mass::ZERO)
            .collect();
        match long.iter().copied().max_by_key(|&at| excess(at)) {
            Some(at) if may_add > 0 && !steps.steps.is_empty() => {
                let more = steps.go_half_way(at, from_first[at], from_first[at + 1]);
                may_add = if more { may_add - 1 } else { 0 };
                added += i128::from(more);
            }
            _ => {
                let sets = added * i128::from(habit.set_ms) * ZS_PER_MS;
                return Ok(Rise {
                    too_long: long.into_iter().map(excess).sum(),
                    loads: from_first[1..].to_vec(),
                    cost_zs: cost_zs + sets,
                    steps,
                });
            }
        }
    }
}

/// The longest step that may follow the load at `at`.
fn longest(steps: &Steps<'_>, at: usize, from_first: &[Mass]) -> Mass {
    let habit = steps.habit;
    if at == 0 && steps.already_warm {
        return steps.work;
    }
    let from_the_first = from_first[at] == steps.first;
    let share = if steps.already_warm {
        habit.longest_warm
    } else {
        habit.longest_share[usize::from(from_the_first)]
    };
    thousandth(steps.work, share)
        .max(habit.short)
        .min(habit.longest)
}

const ZS_PER_MS: i128 = 1_000_000_000_000_000_000;

/// The rounder loads, the work load last, and what they come to.
fn round_loads(
    equipment: &Equipment,
    footing: &Footing,
    steps: &Steps<'_>,
) -> Result<(Vec<Mass>, i128), Refusal> {
    let (work, habit) = (steps.work, steps.habit);
    let mut fussy = equipment.clone();
    fussy.big_inside = true;
    for kind in &mut fussy.plates {
        let under = |share: i64| (kind.mass + kind.mass).times(share) < work;
        let light = if under(habit.light.0) {
            habit.light.1
        } else {
            0
        };
        let small = kind.mass < habit.least && under(habit.fuss.0);
        let fuss = if small { habit.fuss.1 } else { 0 };
        kind.handling_ns = u64::from(habit.pair_ms + light + fuss) * 1_000_000;
    }
    let count = steps.steps.len();
    let warm_ups = steps.steps.iter().enumerate().map(|(at, step)| {
        let target = step.target.clamp(step.low, step.high);
        Wish {
            target,
            below: target - step.low,
            above: step.high - target,
            per_kg_off_ns: per_kg(habit.off_ms[usize::from(at + 1 == count)], work),
            least_diameter: footing.size(step.low, step.high),
        }
    });
    let rungs = warm_ups.chain([exactly(work, footing)]).collect();
    let plan = solve(fussy, rungs)?;
    let loads = plan.rungs.iter().map(|rung| rung.load).collect();
    Ok((loads, plan.cost_zs))
}

/// One load, on plates that set it as high as any can.
fn exactly(load: Mass, footing: &Footing) -> Wish {
    Wish {
        target: load,
        below: Mass::ZERO,
        above: Mass::ZERO,
        per_kg_off_ns: 0,
        least_diameter: footing.size(load, load),
    }
}

/// So many milliseconds for each hundredth of `load`, or each kilogram if that is more, as
/// nanoseconds a kilogram.
fn per_kg(ms: i64, load: Mass) -> u64 {
    let kg = i128::from(MassUnit::Kg.scale());
    let ns = i128::from(ms) * 1_000_000 * 100 * kg;
    let per_kg = ns / i128::from(load.ng()).max(100 * kg);
    u64::try_from(per_kg).expect("less than the milliseconds in nanoseconds")
}

fn solve(equipment: Equipment, rungs: Vec<Wish>) -> Result<Plan, Refusal> {
    ladder::plan(&Problem {
        equipment,
        on_bar: Vec::new(),
        // A bar is cleared after the last set, so every plate on it counts twice.
        strip_after: true,
        rungs,
    })
}
