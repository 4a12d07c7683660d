//! The bar and the plates that a lift is done with where no row says another.
use crate::equipment::{Bar, BarCondition, PlateSet, Rack};
use crate::gym::Gym;
use crate::lift::Lift;
use crate::lifter::Lifter;

/// The bar for a lift: the retired one where the lift wants it and there is one, else the
/// lifter's own, else the first straight one by that rack, else any.
pub(crate) fn bar_for<'g>(
    gym: &'g Gym,
    rack: &'g Rack,
    lifter: &Lifter,
    lift: &Lift,
) -> Option<&'g Bar> {
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
