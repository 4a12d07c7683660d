//! Next time with the bar and plates of a lifter's rack. Refuses: lifts and racks that the gym
//! does not have.
use super::outing::outings;
use super::{Decision, decide, on};
use crate::day::bar_for;
use crate::gym::Gym;
use crate::ladder::equipment;
use crate::lifter::Lifter;
use crate::solve::loads::Loads;
use crate::state::State;
use alloc::vec::Vec;
use chrono::NaiveDate;

/// What is due on `date` for a lifter's lift with so many reps, from all that was done before;
/// `None` the first time, or when the gym misses something.
#[must_use]
pub fn decision(
    gym: &Gym,
    state: &State,
    lifter: &Lifter,
    lift: &str,
    reps: u8,
    date: NaiveDate,
) -> Option<Decision> {
    let mut past = outings(state, &lifter.name, lift, date);
    past.retain(|outing| outing.reps == reps);
    let heaviest = past.iter().map(|outing| outing.load).max()?;
    let loads = loads(gym, lifter, lift, heaviest)?;
    let rule = gym.coaching.rule(&lifter.name, lift);
    let decision = decide(&rule, &past, &loads)?;
    Some(on(&rule, &decision, date, &loads))
}

/// The loads of the bar and plates that a lifter's lift is done with, up to well over `heaviest`.
fn loads(gym: &Gym, lifter: &Lifter, lift: &str, heaviest: crate::Mass) -> Option<Loads> {
    let lift = gym.lifts.iter().find(|l| l.name == lift)?;
    let rack = gym.racks.iter().find(|r| r.name == lifter.rack)?;
    let plates = gym.plate_sets.iter().find(|p| p.name == rack.plates)?;
    let bar = bar_for(gym, rack, lifter, lift)?;
    let equipment = equipment(bar, plates);
    equipment.check().ok()?;
    let plates: Vec<_> = equipment.plates.iter().map(|plate| plate.mass).collect();
    let plate = plates.into_iter().max().unwrap_or_default();
    let tenth = crate::Mass::from_ng(heaviest.ng() / 10);
    Loads::new(&equipment, heaviest + tenth + plate.times(2)).ok()
}
