//! Rows of a plan held against the record before they are taken. Decides nothing.
use crate::day::planned_load;
use crate::gym::Gym;
use crate::mass::Mass;
use crate::plausible::{Odd, odd, odd_reps};
use crate::prescription::Prescription;
use crate::state::State;

/// What looks wrong of a row as the plan has it, with the load that it is about; loads that follow
/// from what is due or from the day are looked at on the day.
#[must_use]
pub fn odd_row(gym: &Gym, state: &State, row: &Prescription) -> Option<(Option<Mass>, Odd)> {
    let lifter = gym.lifters.iter().find(|l| l.name == row.lifter)?;
    let loads = row.groups().filter_map(|group| {
        let load = planned_load((gym, state), lifter, row, group)?;
        let odd = odd(
            (gym, state),
            lifter,
            &row.lift,
            (group.reps.least, load),
            row.date,
        )?;
        Some((Some(load), odd))
    });
    let reps = odd_reps(row).map(|odd| (None, odd));
    loads.chain(reps).next()
}
