//! From the floor: plates smaller than the standard disc leave the bar too low.
//!
//! Refuses: to choose what goes under the plates; blocks or mats of that height do.
use crate::length::Length;
use crate::lift::{Lift, Start};
use crate::mass::Mass;
use crate::sheet::{Rung, Warning};
use alloc::vec::Vec;

/// Diameter of the standard disc: 450 mm +/- 1 mm (IWF rules, seen quoted; the IPF's largest disc
/// has it too), so that the bar starts 225 mm above the floor.
pub const STANDARD_DISC: Length = Length::mm(450);

/// Diameter of a sleeve, on which an empty bar lies: 50 mm (IWF), 50 to 52 mm (IPF; both seen in
/// reprints).
pub const SLEEVE: Length = Length::mm(50);

/// By how much the bar of a rung must be raised to start where the standard disc would have it.
#[must_use]
pub fn raise(rung: &Rung) -> Length {
    let largest = rung.per_side.iter().map(|plate| plate.diameter).max();
    let lower = STANDARD_DISC - largest.unwrap_or(SLEEVE).max(SLEEVE);
    Length::from_nm(lower.nm().max(0) / 2)
}

/// Adds how high to raise the bar, once for each height, with the loads that need it.
pub fn warn(lift: &Lift, rungs: &[Rung], warnings: &mut Vec<Warning>) {
    if lift.start != Start::Floor {
        return;
    }
    let mut low: Vec<(Length, Mass, Mass)> = Vec::new();
    for rung in rungs {
        let (height, load) = (raise(rung), rung.load);
        match low.iter_mut().find(|(known, ..)| *known == height) {
            _ if height == Length::ZERO => {}
            Some((_, from, to)) => {
                *from = load.min(*from);
                *to = load.max(*to);
            }
            None => low.push((height, load, load)),
        }
    }
    let told = low.into_iter();
    warnings.extend(told.map(|(raise, from, to)| Warning::LowPlates { from, to, raise }));
}
