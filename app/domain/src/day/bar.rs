//! The bar and the hole that a row says.
use super::NoSheet;
use crate::equipment::{Bar, Rack};
use crate::gym::Gym;
use crate::lift::Lift;
use crate::lift_bar::bar_for;
use crate::lifter::Lifter;
use crate::prescription::Prescription;
use alloc::string::ToString as _;

/// The bar of a row: the one that it says, where that stands by the rack, else the lift's.
///
/// # Errors
/// [`NoSheet::Missing`] where there is none.
pub(super) fn of_row<'g>(
    gym: &'g Gym,
    rack: &'g Rack,
    lifter: &Lifter,
    lift: &Lift,
    row: &Prescription,
) -> Result<&'g Bar, NoSheet> {
    let bar = match &row.bar {
        Some(name) => gym.bars_at(&rack.name).find(|bar| bar.name == *name),
        None => bar_for(gym, rack, lifter, lift),
    };
    bar.ok_or_else(|| NoSheet::Missing {
        what: "bar",
        name: row.bar.as_ref().unwrap_or(&rack.name).clone(),
    })
}

/// Whether the rack has the holes that a row says.
///
/// # Errors
/// [`NoSheet::Missing`] where it has not.
pub(super) fn holes(rack: &Rack, row: &Prescription) -> Result<(), NoSheet> {
    let said = row.groups().filter_map(|group| group.manner.hole);
    match said.max().filter(|hole| *hole > rack.holes) {
        Some(hole) => Err(NoSheet::Missing {
            what: "hole",
            name: hole.to_string(),
        }),
        None => Ok(()),
    }
}
