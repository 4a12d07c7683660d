//! Why a rung cannot be loaded. Refuses: blaming one constraint for what another does.
use super::grid::Grid;
use super::prepare::Ready;
use super::price::Price;
use super::problem::{Problem, Wish};
use crate::length::Length;
use crate::solve::equipment::{length_text, mass_text, refusal};
use crate::solve::loads::Loads;
use crate::solve::{Constraint, Equipment, Refusal};
use alloc::format;
use alloc::string::String;

/// Whether every rung can be loaded by itself. Then the whole ladder can: between rungs the
/// sleeve may be cleared. Where the grid rounds masses, also notes each rung's least price.
///
/// # Errors
/// [`Refusal`] for the first rung that cannot, with what bites.
pub(super) fn loadable<P: Price>(
    problem: &Problem,
    ready: &mut Ready<P>,
    grid: &Grid,
) -> Result<(), Refusal> {
    let in_list = |at: usize| {
        let window = &ready.windows[at];
        grid.slack == 0 && grid.makes((window.low, window.high), window.size)
    };
    let mut doubtful = (0..problem.rungs.len())
        .filter(|&at| !in_list(at))
        .peekable();
    if doubtful.peek().is_none() {
        return Ok(());
    }
    let loads = loads(&problem.equipment, &problem.rungs)?;
    let equipment = &problem.equipment;
    if let Some(at) = doubtful.find(|&at| !reaches(equipment, &loads, &problem.rungs[at])) {
        let field = format!("rungs[{at}].target");
        return Err(why(&problem.equipment, &problem.rungs[at], &field, &loads));
    }
    for (window, wish) in ready.windows.iter_mut().zip(&problem.rungs) {
        let near = [loads.at_most(wish.target), loads.at_least(wish.target)];
        let sides = near.into_iter().flatten().map(|load| loads.side(load));
        let prices = sides.filter(|side| (window.low..=window.high).contains(side));
        window.least = prices
            .map(|side| window.price(side))
            .min()
            .unwrap_or_default();
    }
    Ok(())
}

/// As [`loadable`], for one load by itself, whose target is the `field`.
pub(in crate::solve) fn loadable_alone(
    equipment: &Equipment,
    wish: &Wish,
    field: &str,
) -> Result<(), Refusal> {
    let loads = loads(equipment, core::slice::from_ref(wish))?;
    if reaches(equipment, &loads, wish) {
        return Ok(());
    }
    Err(why(equipment, wish, field, &loads))
}

/// All loads that any of `rungs` allows, and the next above.
fn loads(equipment: &Equipment, rungs: &[Wish]) -> Result<Loads, Refusal> {
    let most = rungs.iter().map(|w| w.target + w.above).max();
    let heaviest = equipment.plates.iter().map(|p| p.mass).max();
    let next = heaviest.unwrap_or_default();
    Loads::new(equipment, most.unwrap_or_default() + next + next)
}

fn reaches(equipment: &Equipment, loads: &Loads, wish: &Wish) -> bool {
    if wish.least_diameter > Length::ZERO {
        return reaches_with_size(equipment, wish);
    }
    let found = loads.at_least(wish.target - wish.below);
    found.is_some_and(|load| load <= wish.target + wish.above)
}

/// The same where one plate has a size of its own: with one pair of such a kind on beforehand.
fn reaches_with_size(equipment: &Equipment, wish: &Wish) -> bool {
    let any_size = Wish {
        least_diameter: Length::ZERO,
        ..*wish
    };
    (0..equipment.plates.len()).any(|kind| {
        let plate = equipment.plates[kind];
        let sleeve = equipment.sleeve.map(|sleeve| sleeve - plate.thickness);
        let short = sleeve.is_some_and(|sleeve| sleeve < Length::ZERO);
        if plate.diameter < wish.least_diameter || plate.pairs == 0 || short {
            return false;
        }
        let mut rest = equipment.clone();
        rest.bar_and_collars = rest.bar_and_collars + plate.mass + plate.mass;
        rest.sleeve = sleeve;
        rest.plates[kind].pairs -= 1;
        loads(&rest, core::slice::from_ref(&any_size))
            .is_ok_and(|loads| reaches(&rest, &loads, &any_size))
    })
}

/// Why no plates make a load, whose target is the `field`.
fn why(equipment: &Equipment, wish: &Wish, field: &str, loads: &Loads) -> Refusal {
    let (low, high) = (wish.target - wish.below, wish.target + wish.above);
    let wanted = if low == high {
        format!("of {}", mass_text(low))
    } else {
        format!("from {} to {}", mass_text(low), mass_text(high))
    };
    let nearest = match (loads.at_most(low), loads.at_least(high)) {
        (Some(below), Some(above)) => format!(
            "the nearest loads are {} and {}",
            mass_text(below),
            mass_text(above)
        ),
        (Some(only), None) => format!("the most that can be loaded is {}", mass_text(only)),
        (None, _) => format!(
            "the least load is {}",
            mass_text(loads.nearest(low).unwrap_or_default())
        ),
    };
    let (constraint, cause) = cause(equipment, wish);
    let text = format!("a load {wanted} cannot be made: {cause}; {nearest}");
    refusal(constraint, field, text)
}

/// The first constraint without which the rung could be loaded.
fn cause(equipment: &Equipment, wish: &Wish) -> (Constraint, String) {
    let reached = |equipment: &Equipment| {
        let loads = loads(equipment, core::slice::from_ref(wish));
        loads.is_ok_and(|loads| reaches(equipment, &loads, wish))
    };
    let any_size = Wish {
        least_diameter: Length::ZERO,
        ..*wish
    };
    let of_any_size = loads(equipment, core::slice::from_ref(&any_size));
    if of_any_size.is_ok_and(|loads| reaches(equipment, &loads, &any_size)) {
        let cause = format!(
            "none of the plates that make it is {} across",
            length_text(wish.least_diameter)
        );
        return (Constraint::Inventory, cause);
    }
    let sleeve = equipment.sleeve.map(length_text).unwrap_or_default();
    let mut longer = equipment.clone();
    longer.sleeve = None;
    if equipment.sleeve.is_some() && reached(&longer) {
        let cause = format!("the plates for it do not fit on the sleeve of {sleeve}");
        return (Constraint::Sleeve, cause);
    }
    let all = equipment
        .plates
        .iter()
        .map(|p| p.mass.times(2 * i64::from(p.pairs)));
    let all = all.fold(equipment.bar_and_collars, |sum, pairs| sum + pairs);
    if all < wish.target - wish.below {
        let cause = format!("the bar with all plates weighs {}", mass_text(all));
        return (Constraint::Inventory, cause);
    }
    let mut more = longer;
    for plate in &mut more.plates {
        plate.pairs = u16::MAX;
    }
    if reached(&more) {
        let cause = String::from("there are too few pairs of the plates that make it");
        return (Constraint::Inventory, cause);
    }
    let cause = String::from("no plates of these masses come within the tolerance");
    (Constraint::Tolerance, cause)
}
