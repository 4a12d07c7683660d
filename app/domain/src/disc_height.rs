//! From the floor: plates smaller than the standard disc leave the bar too low, by so much.
//!
//! Refuses: to choose what goes under the plates; blocks or mats of that height do.
use crate::equipment::{PlateFace, PlateSet};
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

/// A bar that starts less than this too low starts right: nothing that is put under plates is
/// thinner, and worn discs differ by as much. Common practice, no source.
pub const RAISE_LEAST: Length = Length::mm(5);

/// By how much the bar must be raised, with this stack on each side, to start where the standard
/// disc would have it; 0 where it does already, and on pins and hooks.
#[must_use]
pub fn raise_of(start: Start, per_side: &[PlateFace]) -> Length {
    let largest = per_side.iter().map(|plate| plate.diameter).max();
    match start {
        Start::Floor => raise_by_size(largest.unwrap_or_default()),
        Start::Pins { .. } | Start::Hooks => Length::ZERO,
    }
}

/// The same for a rung of a lift that starts on the floor.
#[must_use]
pub fn raise(rung: &Rung) -> Length {
    raise_of(Start::Floor, &rung.per_side)
}

/// The same by the diameter of the largest plate; 0 for an empty bar.
pub(crate) fn raise_by_size(largest: Length) -> Length {
    let lower = STANDARD_DISC - largest.max(SLEEVE);
    let raise = Length::from_nm(lower.nm() / 2);
    if raise < RAISE_LEAST {
        Length::ZERO
    } else {
        raise
    }
}

/// The diameter that the largest plate of another stack must have so that the bar starts no lower
/// than with this one; 0 where any will do.
#[must_use]
pub fn least_diameter(start: Start, per_side: &[PlateFace], plates: &PlateSet) -> Length {
    let largest = per_side.iter().map(|plate| plate.diameter).max();
    let (Start::Floor, Some(largest)) = (start, largest) else {
        return Length::ZERO;
    };
    let raise = raise_by_size(largest);
    let sizes = plates.plates.iter().map(|plate| plate.face.diameter);
    let no_lower = sizes.filter(|size| raise_by_size(*size) <= raise);
    no_lower.fold(largest, Length::min).max(Length::ZERO)
}

/// Adds how high to raise the bar, once for each height, with the loads that need it.
pub fn warn(lift: &Lift, rungs: &[Rung], warnings: &mut Vec<Warning>) {
    if lift.start == Start::Floor {
        warnings.extend(low_plates(rungs));
    }
}

/// The same for the rungs of a lift that starts on the floor.
pub(crate) fn low_plates(rungs: &[Rung]) -> impl Iterator<Item = Warning> {
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
    told.map(|(raise, from, to)| Warning::LowPlates { from, to, raise })
}
