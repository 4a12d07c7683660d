//! Of equally good plans the one that the planner's head note names, whatever the list's order.
use crate::dice::Dice;
use crate::exhaustive;
use crate::problems::{self, Shape};
use domain::solve::ladder::{self, Problem};
use domain::solve::{Equipment, change};

type Stacks = Vec<Vec<usize>>;

/// Every plan of least cost and fewest moves.
fn best_plans(problem: &Problem) -> Vec<Stacks> {
    let stacks = exhaustive::stacks(problem);
    let mut plans: Vec<((i128, usize), Stacks)> = vec![((0, 0), Vec::new())];
    for rung in 0..problem.rungs.len() {
        let mut longer: Vec<((i128, usize), Stacks)> = Vec::new();
        for stack in &stacks {
            let Some(penalty) = exhaustive::penalty(problem, rung, stack) else {
                continue;
            };
            let reached = plans.iter().map(|((cost, moves), plan)| {
                let from = plan.last().unwrap_or(&problem.on_bar);
                let (more, steps) = price(problem, from, stack);
                let mut plan = plan.clone();
                plan.push(stack.clone());
                ((cost + more + penalty, moves + steps), plan)
            });
            let mut reached: Vec<_> = reached.collect();
            let least = reached.iter().map(|(cost, _)| *cost).min();
            reached.retain(|(cost, _)| Some(*cost) == least);
            longer.append(&mut reached);
        }
        plans = longer;
    }
    if problem.strip_after {
        for ((cost, moves), plan) in &mut plans {
            let (more, steps) = price(problem, plan.last().expect("a rung"), &[]);
            *cost += more;
            *moves += steps;
        }
    }
    let least = plans.iter().map(|(cost, _)| *cost).min();
    plans.retain(|(cost, _)| Some(*cost) == least);
    plans.into_iter().map(|(_, plan)| plan).collect()
}

fn price(problem: &Problem, from: &[usize], to: &[usize]) -> (i128, usize) {
    let change = change(from, to);
    let moved = change.take_off.iter().chain(&change.put_on);
    let handling: u64 = moved
        .map(|&k| problem.equipment.plates[k].handling_ns)
        .sum();
    let steps = change.take_off.len() + change.put_on.len();
    (i128::from(handling) * 1_000_000_000_000, steps)
}

/// Where a kind stands: heavier first, then quicker, then thinner.
fn rank(equipment: &Equipment, kind: usize) -> (i64, u64, i64) {
    let plate = &equipment.plates[kind];
    (-plate.mass.ng(), plate.handling_ns, plate.thickness.nm())
}

/// The plan as the tie-break reads it: a smaller reading wins. A plate before none, the
/// longest stay first, then what lies on it, then what follows it.
fn reading(problem: &Problem, plan: &[Vec<usize>]) -> Vec<((i64, u64, i64), usize)> {
    fn read(
        problem: &Problem,
        plan: &[Vec<usize>],
        depth: usize,
        out: &mut Vec<((i64, u64, i64), usize)>,
    ) {
        let Some(here) = plan.first() else { return };
        let Some(&kind) = here.get(depth) else {
            out.push(((1, 0, 0), 0));
            return read(problem, &plan[1..], depth, out);
        };
        let stays = plan
            .iter()
            .take_while(|s| s.get(depth) == Some(&kind))
            .count();
        out.push((rank(&problem.equipment, kind), plan.len() - stays));
        read(problem, &plan[..stays], depth + 1, out);
        read(problem, &plan[stays..], depth, out);
    }
    // What lies on the bar comes first of all, and is left on for as long as may be.
    let mut out = Vec::new();
    let mut all = vec![problem.on_bar.clone()];
    all.extend_from_slice(plan);
    read(problem, &all, 0, &mut out);
    out
}

#[test]
fn ties_go_to_the_plan_that_the_rule_names() {
    let mut tied = 0;
    for seed in 0..3_000 {
        // Every other one with sizes.
        let problem = match seed % 2 {
            0 => problems::random(seed, Shape::TINY),
            _ => problems::sized(seed, Shape::TINY),
        };
        let Ok(plan) = ladder::plan(&problem) else {
            continue;
        };
        let found: Stacks = plan.rungs.into_iter().map(|step| step.per_side).collect();
        let best = best_plans(&problem);
        let first = best.iter().map(|plan| reading(&problem, plan)).min();
        assert_eq!(
            Some(reading(&problem, &found)),
            first,
            "seed {seed}: {problem:#?}"
        );
        tied += usize::from(best.len() > 1);
    }
    assert!(tied > 150, "only {tied} problems had ties");
}

#[test]
fn the_order_of_the_list_has_no_bearing() {
    for seed in 0..3_000 {
        let problem = problems::random(seed, Shape::SMALL);
        let mut dice = Dice::new(seed);
        let mut order: Vec<usize> = (0..problem.equipment.plates.len()).collect();
        for at in (1..order.len()).rev() {
            let below: Vec<usize> = (0..=at).collect();
            order.swap(at, dice.pick(&below));
        }
        let mut shuffled = problem.clone();
        shuffled.equipment.plates = order.iter().map(|&k| problem.equipment.plates[k]).collect();
        let place = |kind: &usize| order.iter().position(|k| k == kind).unwrap();
        shuffled.on_bar = problem.on_bar.iter().map(place).collect();
        let looks = |problem: &Problem| {
            let plan = ladder::plan(problem).ok()?;
            let plates = &problem.equipment.plates;
            let face =
                |&kind: &usize| rank(&problem.equipment, kind).max((-plates[kind].mass.ng(), 0, 0));
            let stacks = plan
                .rungs
                .into_iter()
                .map(|s| s.per_side.iter().map(face).collect());
            Some(stacks.collect::<Vec<Vec<_>>>())
        };
        assert_eq!(looks(&problem), looks(&shuffled), "seed {seed}");
    }
}
