//! What the rotation planner asks of a problem.
//!
//! Refuses: figures out of range, a bar that cannot stand as said, turns that cannot be loaded,
//! holes that can never be set.
use super::{Problem, Turn};
use crate::mass::Mass;
use crate::solve::equipment::{
    length_in_range, length_text, mass_in_range, mass_text, out_of_range, refusal,
};
use crate::solve::ladder::Wish;
use crate::solve::ladder::refuse::loadable_alone;
use crate::solve::{Constraint, Refusal};
use alloc::format;
use alloc::string::String;

/// All sums of times stay below this, nanoseconds.
const SUM_LIMIT: u128 = 1 << 61;

/// Whether the problem can be planned at all, apart from the loads of its turns.
pub(super) fn check(problem: &Problem) -> Result<(), Refusal> {
    problem.equipment.check()?;
    if !mass_in_range(problem.hole_change_at_most) {
        let value = mass_text(problem.hole_change_at_most);
        return Err(out_of_range("hole_change_at_most", value));
    }
    time("hole_change_s", problem.hole_change_ns)?;
    let lifters = problem.lifters.len();
    if lifters == 0 || lifters > Problem::LIFTERS_LIMIT {
        let text = format!(
            "are {lifters}, and 1 to {} are planned",
            Problem::LIFTERS_LIMIT
        );
        return Err(refusal(Constraint::Range, "lifters", text));
    }
    let turns: usize = problem.lifters.iter().map(|l| l.turns.len()).sum();
    if turns == 0 || turns > Problem::TURNS_LIMIT {
        let text = format!(
            "have {turns} turns in all, and 1 to {} are planned",
            Problem::TURNS_LIMIT
        );
        return Err(refusal(Constraint::Range, "lifters", text));
    }
    for (at, lifter) in problem.lifters.iter().enumerate() {
        time(
            &format!("lifters[{at}].ended_s"),
            lifter.ended_ns.unwrap_or(0),
        )?;
        for (turn_at, turn) in lifter.turns.iter().enumerate() {
            check_turn(problem, turn, &format!("lifters[{at}].turns[{turn_at}]"))?;
        }
    }
    check_standing(problem)?;
    check_sum(problem)
}

fn check_turn(problem: &Problem, turn: &Turn, field: &str) -> Result<(), Refusal> {
    let masses = [
        ("target", turn.target),
        ("below", turn.below),
        ("above", turn.above),
    ];
    if let Some((name, mass)) = masses.into_iter().find(|(_, m)| !mass_in_range(*m)) {
        return Err(out_of_range(&format!("{field}.{name}"), mass_text(mass)));
    }
    if !length_in_range(turn.least_diameter) {
        let field = format!("{field}.least_diameter");
        return Err(out_of_range(&field, length_text(turn.least_diameter)));
    }
    time(&format!("{field}.lasts_s"), turn.lasts_ns)?;
    time(&format!("{field}.rest_s"), turn.rest_ns)?;
    let bar = problem.equipment.bar_and_collars;
    if turn.target + turn.above < bar {
        let text = format!(
            "the bar with its collars weighs {}, more than the {} that this turn allows",
            mass_text(bar),
            mass_text(turn.target + turn.above)
        );
        return Err(refusal(Constraint::Bar, &format!("{field}.target"), text));
    }
    let changes = turn.hole.is_some() && turn.hole != problem.standing.hole;
    if changes && bar > problem.hole_change_at_most {
        let text = format!(
            "cannot be set: the bar with its collars weighs {}, more than the {} that it may \
             carry then",
            mass_text(bar),
            mass_text(problem.hole_change_at_most)
        );
        return Err(refusal(Constraint::Bar, &format!("{field}.hole"), text));
    }
    Ok(())
}

fn check_standing(problem: &Problem) -> Result<(), Refusal> {
    let (standing, plates) = (&problem.standing, &problem.equipment.plates);
    time("now_s", standing.now_ns)?;
    if let Some(at) = standing.on_bar.iter().position(|&k| k >= plates.len()) {
        let text = String::from("is not among the plates");
        return Err(refusal(
            Constraint::Inventory,
            &format!("on_bar[{at}]"),
            text,
        ));
    }
    if let Some(broken) = problem.equipment.broken_by(&standing.on_bar) {
        let text = format!("cannot stand on the bar as it is said to: {broken:?}");
        return Err(refusal(broken, "on_bar", text));
    }
    for (at, &lifter) in standing.called.iter().enumerate() {
        let before = standing.called[..at]
            .iter()
            .filter(|&&l| l == lifter)
            .count();
        let turns = problem.lifters.get(lifter).map_or(0, |l| l.turns.len());
        if before >= turns {
            let text = String::from("calls a lifter who has no turn left");
            return Err(refusal(Constraint::Range, &format!("called[{at}]"), text));
        }
    }
    Ok(())
}

/// Why some turn has no stack.
pub(super) fn unloadable(problem: &Problem) -> Refusal {
    for (at, lifter) in problem.lifters.iter().enumerate() {
        for (turn_at, turn) in lifter.turns.iter().enumerate() {
            let wish = Wish {
                target: turn.target,
                below: turn.below,
                above: turn.above,
                per_kg_off_ns: 0,
                least_diameter: turn.least_diameter,
            };
            let field = format!("lifters[{at}].turns[{turn_at}].target");
            if let Err(refusal) = loadable_alone(&problem.equipment, &wish, &field) {
                return refusal;
            }
        }
    }
    let text = String::from("are too many different plates to plan a rotation with");
    refusal(Constraint::Range, "plates", text)
}

fn time(field: &str, ns: u64) -> Result<(), Refusal> {
    if ns > Problem::TIME_LIMIT_NS {
        return Err(out_of_range(field, format!("{ns} ns")));
    }
    Ok(())
}

/// Whether times can be added up with room to spare.
fn check_sum(problem: &Problem) -> Result<(), Refusal> {
    let turns = problem.lifters.iter().flat_map(|l| &l.turns);
    let most = turns.clone().map(|t| t.target + t.above).max();
    let side = (most.unwrap_or(Mass::ZERO) - problem.equipment.bar_and_collars).ng() / 2;
    let stack: u128 = problem.equipment.plates.iter().fold(0, |sum, plate| {
        let on_bar = i64::try_from(problem.standing.on_bar.len()).unwrap_or(i64::MAX);
        let fitting = (side.max(0) / plate.mass.ng()).max(on_bar);
        let count = u128::from(plate.pairs).min(u128::from(fitting.unsigned_abs()));
        sum + count * u128::from(plate.handling_ns)
    });
    let change = 4 * stack + u128::from(problem.hole_change_ns);
    let sum = turns.fold(0, |sum, turn| {
        sum + u128::from(turn.lasts_ns) + u128::from(turn.rest_ns) + change
    });
    if sum > SUM_LIMIT {
        let text = String::from("take more time in all than can be planned with");
        return Err(refusal(Constraint::Range, "lifters", text));
    }
    Ok(())
}
