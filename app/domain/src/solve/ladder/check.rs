//! Whether a ladder problem can be. Refuses: figures out of range, plates on the bar that cannot
//! be there.
use super::problem::Problem;
use crate::solve::equipment::{
    length_in_range, length_text, mass_in_range, mass_text, out_of_range, refusal,
};
use crate::solve::{Constraint, Refusal};
use alloc::format;
use alloc::string::String;

/// Whether every figure is in its range and the bar can carry what lies on it.
///
/// # Errors
/// [`Refusal`] with the first field that is not.
pub(super) fn check(problem: &Problem) -> Result<(), Refusal> {
    problem.equipment.check()?;
    let rungs = problem.rungs.len();
    if rungs == 0 || rungs > Problem::RUNGS_LIMIT {
        let text = format!("are {rungs}, and 1 to {} are planned", Problem::RUNGS_LIMIT);
        return Err(refusal(Constraint::Range, "rungs", text));
    }
    for (at, wish) in problem.rungs.iter().enumerate() {
        let masses = [
            ("target", wish.target),
            ("below", wish.below),
            ("above", wish.above),
        ];
        if let Some((name, mass)) = masses.into_iter().find(|(_, m)| !mass_in_range(*m)) {
            return Err(out_of_range(
                &format!("rungs[{at}].{name}"),
                mass_text(mass),
            ));
        }
        if !length_in_range(wish.least_diameter) {
            let field = format!("rungs[{at}].least_diameter");
            return Err(out_of_range(&field, length_text(wish.least_diameter)));
        }
        if wish.per_kg_off_ns > Problem::PER_KG_OFF_LIMIT_NS {
            let field = format!("rungs[{at}].per_kg_off_s");
            return Err(out_of_range(&field, format!("{} ns", wish.per_kg_off_ns)));
        }
    }
    check_on_bar(problem)
}

fn check_on_bar(problem: &Problem) -> Result<(), Refusal> {
    let plates = &problem.equipment.plates;
    if let Some(at) = problem.on_bar.iter().position(|&k| k >= plates.len()) {
        let field = format!("on_bar[{at}]");
        let text = String::from("is not among the plates");
        return Err(refusal(Constraint::Inventory, &field, text));
    }
    for end in 1..=problem.on_bar.len() {
        let Some(broken) = problem.equipment.broken_by(&problem.on_bar[..end]) else {
            continue;
        };
        let outer = &plates[problem.on_bar[end - 1]];
        let mass = mass_text(outer.mass);
        let text = match broken {
            Constraint::Inventory => {
                format!("is one more {mass} than the {} pairs allow", outer.pairs)
            }
            Constraint::BigInside => format!("puts {mass} outside a lighter plate"),
            Constraint::Range
            | Constraint::Bar
            | Constraint::Sleeve
            | Constraint::Tolerance
            | Constraint::Hole => format!(
                "does not fit on the sleeve of {}",
                problem
                    .equipment
                    .sleeve
                    .map(length_text)
                    .unwrap_or_default()
            ),
        };
        return Err(refusal(broken, &format!("on_bar[{}]", end - 1), text));
    }
    Ok(())
}
