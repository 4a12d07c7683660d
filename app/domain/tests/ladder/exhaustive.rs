//! The ladder as a shortest path: every stack is a place, every single move of a pair a step.
use domain::solve::ladder::Problem;
use std::cmp::Reverse;
use std::collections::{BTreeMap, BinaryHeap};

/// Cost in 10^-21 s, then moves.
type Cost = (i128, u32);

/// All stacks that the equipment allows and that could be of use.
pub(crate) fn stacks(problem: &Problem) -> Vec<Vec<usize>> {
    let equipment = &problem.equipment;
    let most = problem.rungs.iter().map(|w| w.target + w.above).max();
    let most = most.max(Some(equipment.load(&problem.on_bar)));
    let mut all = vec![Vec::new()];
    let mut at = 0;
    while at < all.len() {
        for kind in 0..equipment.plates.len() {
            let mut stack: Vec<usize> = all[at].clone();
            stack.push(kind);
            if equipment.broken_by(&stack).is_none() && Some(equipment.load(&stack)) <= most {
                all.push(stack);
            }
        }
        at += 1;
    }
    all
}

/// What the load of `stack` costs on `rung`, if it is within the tolerance.
pub(crate) fn penalty(problem: &Problem, rung: usize, stack: &[usize]) -> Option<i128> {
    let wish = &problem.rungs[rung];
    let off = (problem.equipment.load(stack) - wish.target).ng();
    let within = -wish.below.ng() <= off && off <= wish.above.ng();
    let largest = stack.iter().map(|&k| problem.equipment.plates[k].diameter);
    let large = wish.least_diameter.nm() == 0 || largest.max() >= Some(wish.least_diameter);
    (within && large).then(|| i128::from(off.abs()) * i128::from(wish.per_kg_off_ns))
}

/// Least cost and fewest moves, or `None` when no plan exists.
pub(crate) fn least(problem: &Problem) -> Option<Cost> {
    let stacks = stacks(problem);
    let place: BTreeMap<&[usize], usize> = stacks
        .iter()
        .enumerate()
        .map(|(at, s)| (&**s, at))
        .collect();
    let inner: Vec<Option<usize>> = stacks
        .iter()
        .map(|s| s.split_last().map(|(_, inner)| place[inner]))
        .collect();
    let mut outer = vec![Vec::new(); stacks.len()];
    for (at, inner) in inner.iter().enumerate() {
        inner.iter().for_each(|&inner| outer[inner].push(at));
    }
    let handling = |at: usize| {
        let kind = *stacks[at].last().expect("a bare sleeve is not handled");
        i128::from(problem.equipment.plates[kind].handling_ns) * 1_000_000_000_000
    };
    let rungs = problem.rungs.len();
    let mut done = vec![vec![false; stacks.len()]; rungs + 1];
    let mut best: Vec<Vec<Option<Cost>>> = vec![vec![None; stacks.len()]; rungs + 1];
    let mut queue = BinaryHeap::from([Reverse(((0, 0), 0, place[&*problem.on_bar]))]);
    while let Some(Reverse((cost, rung, at))) = queue.pop() {
        if std::mem::replace(&mut done[rung][at], true) {
            continue;
        }
        if rung == rungs && (!problem.strip_after || stacks[at].is_empty()) {
            return Some(cost);
        }
        let mut steps = Vec::new();
        if let Some(inner) = inner[at] {
            steps.push((handling(at), 1, rung, inner));
        }
        steps.extend(outer[at].iter().map(|&o| (handling(o), 1, rung, o)));
        if rung < rungs
            && let Some(penalty) = penalty(problem, rung, &stacks[at])
        {
            steps.push((penalty, 0, rung + 1, at));
        }
        for (price, moves, rung, to) in steps {
            let cost = (cost.0 + price, cost.1 + moves);
            if best[rung][to].is_none_or(|known| cost < known) {
                best[rung][to] = Some(cost);
                queue.push(Reverse((cost, rung, to)));
            }
        }
    }
    None
}
