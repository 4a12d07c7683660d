//! The bar and the plates that a lift is done with, and the hole that a row says.
use super::NoSheet;
use crate::equipment::{Bar, BarCondition, PlateSet, Rack};
use crate::gym::Gym;
use crate::lift::Lift;
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

/// The bar for a lift: the retired one where the lift wants it and there is one, else the
/// lifter's own, else the first straight one by that rack, else any.
fn bar_for<'g>(gym: &'g Gym, rack: &'g Rack, lifter: &Lifter, lift: &Lift) -> Option<&'g Bar> {
    let wanted = if lift.retired_bar {
        BarCondition::Retired
    } else {
        BarCondition::Straight
    };
    let own = gym
        .bars
        .iter()
        .find(|b| Some(&b.name) == lifter.bar.as_ref());
    let fitting = gym.bars_at(&rack.name).find(|b| b.condition == wanted);
    let any = gym.bars_at(&rack.name).next();
    if lift.retired_bar {
        fitting.or(own).or(any)
    } else {
        own.or(fitting).or(any)
    }
}

/// The bar and the plates that a lifter's lift is done with; `None` when the gym misses one.
#[must_use]
pub fn loaded_with<'g>(
    gym: &'g Gym,
    lifter: &Lifter,
    lift: &Lift,
) -> Option<(&'g Bar, &'g PlateSet)> {
    let rack = gym.racks.iter().find(|r| r.name == lifter.rack)?;
    let plates = gym.plate_sets.iter().find(|p| p.name == rack.plates)?;
    Some((bar_for(gym, rack, lifter, lift)?, plates))
}
