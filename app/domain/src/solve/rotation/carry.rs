//! An order that was called, carried out on paper: what it comes to as it is.
//!
//! Refuses: an order with a turn too many or too few, or with plates that cannot be had.
use super::answer::{Found, spell_out};
use super::model::Model;
use super::{Plan, PlannedTurn, Problem, check};
use alloc::vec;
use alloc::vec::Vec;

/// Carries out turns with given plates, as lifters and one side each, inside to outside; the plan
/// is not proven. `None` when these are not all turns of the problem, or break a rule.
#[must_use]
pub fn carry_out(problem: &Problem, turns: &[(usize, Vec<usize>)]) -> Option<Plan> {
    check::check(problem).ok()?;
    let mut done = vec![0; problem.lifters.len()];
    for (lifter, stack) in turns {
        let turn = problem.lifters.get(*lifter)?.turns.get(done[*lifter])?;
        done[*lifter] += 1;
        let known = |kind: &usize| *kind < problem.equipment.plates.len();
        if !stack.iter().all(known) || problem.equipment.broken_by(stack).is_some() {
            return None;
        }
        let load = problem.equipment.load(stack);
        let within = turn.target - turn.below <= load && load <= turn.target + turn.above;
        if !within || problem.equipment.largest(stack) < turn.least_diameter {
            return None;
        }
        let sets = turn.hole.is_some() && turn.hole != problem.standing.hole;
        if sets && problem.equipment.bar_and_collars > problem.hole_change_at_most {
            return None;
        }
    }
    let all = problem.lifters.iter().zip(&done);
    if all
        .into_iter()
        .any(|(lifter, done)| lifter.turns.len() != *done)
    {
        return None;
    }
    let model = Model::new(problem, 0);
    let kind = |place: &usize| model.kinds.iter().position(|kind| kind.place == *place);
    let side = |(_, stack): &(usize, Vec<usize>)| -> Option<Vec<u8>> {
        let kinds = stack.iter().map(|place| u8::try_from(kind(place)?).ok());
        kinds.collect()
    };
    let found = Found {
        lifters: turns
            .iter()
            .map(|(l, _)| u8::try_from(*l).unwrap_or(0))
            .collect(),
        stacks: turns.iter().map(side).collect::<Option<_>>()?,
        proven: false,
        least_handling: false,
        at_least: 0,
    };
    Some(spell_out(problem, &model, &found, 0))
}

/// What is left to plan once the first turns of a plan were done as planned.
#[must_use]
pub fn after(problem: &Problem, first: &[PlannedTurn]) -> Problem {
    let mut left = problem.clone();
    left.standing.called.clear();
    for turn in first {
        let lifter = &mut left.lifters[turn.lifter];
        lifter.turns.remove(0);
        lifter.ended_ns = Some(turn.ends_ns);
        left.standing.now_ns = turn.ends_ns;
        left.standing.on_bar.clone_from(&turn.per_side);
        left.standing.hole = turn.hole.or(left.standing.hole);
    }
    left
}
