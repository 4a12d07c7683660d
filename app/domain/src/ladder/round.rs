//! Chooses loads and plates together: rounder plates against nearer shares.
//!
//! Refuses: steps between rungs that are too small to be worth a set, or too long.
use super::steps::Steps;
use crate::length::Length;
use crate::mass::{Mass, MassUnit};
use crate::solve::ladder::{self, Plan, Problem, Wish};
use crate::solve::{Equipment, Refusal};
use alloc::vec::Vec;

/// Reps, load and stack of every warm-up and of one work set.
pub(super) type Planned = Vec<(u8, Mass, Vec<usize>)>;

/// Plans the warm-ups and one work set.
pub(super) fn plan(equipment: &Equipment, mut steps: Steps<'_>) -> Result<Planned, Refusal> {
    let habit = steps.habit;
    let mut may_add = habit.added_most;
    let loads = loop {
        let loads = round_loads(equipment, &steps)?;
        let step = |pair: &[Mass]| pair[1] - pair[0];
        if let Some(at) = loads.windows(2).position(|pair| step(pair) < habit.least) {
            steps.leave_out(at);
            // What was too near once would be so again.
            may_add = 0;
            continue;
        }
        let from_bar: Vec<Mass> = [equipment.bar_and_collars]
            .into_iter()
            .chain(loads)
            .collect();
        let long = from_bar
            .windows(2)
            .position(|pair| step(pair) > habit.longest);
        match long {
            Some(at) if may_add > 0 && !steps.steps.is_empty() => {
                let added = steps.go_half_way(at, from_bar[at], from_bar[at + 1]);
                may_add = if added { may_add - 1 } else { 0 };
            }
            _ => break from_bar,
        }
    };
    let exact = loads[1..].iter().map(|&load| exactly(load));
    let stacks = solve(equipment.clone(), exact.collect())?;
    let reps = steps.steps.iter().map(|step| step.reps).chain([0]);
    let rungs = stacks.rungs.into_iter().zip(reps);
    Ok(rungs
        .map(|(rung, reps)| (reps, rung.load, rung.per_side))
        .collect())
}

/// The rounder loads, the work load last.
fn round_loads(equipment: &Equipment, steps: &Steps<'_>) -> Result<Vec<Mass>, Refusal> {
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
            least_diameter: Length::ZERO,
        }
    });
    let plan = solve(fussy, warm_ups.chain([exactly(work)]).collect())?;
    Ok(plan.rungs.iter().map(|rung| rung.load).collect())
}

fn exactly(load: Mass) -> Wish {
    Wish {
        target: load,
        below: Mass::ZERO,
        above: Mass::ZERO,
        per_kg_off_ns: 0,
        least_diameter: Length::ZERO,
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
