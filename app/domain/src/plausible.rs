//! Loads that look wrong beside the record: a slip of the pen, the other unit, another lifter's.
//!
//! Decides nothing: the coach says whether such a load is meant.
use crate::event::Hold;
use crate::lifter::Lifter;
use crate::mass::Mass;
use crate::state::{Entered, State};

/// Over so much of what the record supports a load looks wrong, in percent. Common practice, no
/// source.
pub const ODD_PERCENT: i64 = 110;

/// What the record supports for so many reps, where a load is over [`ODD_PERCENT`] of it; `None`
/// where it is not, or where nothing is recorded.
#[must_use]
pub fn odd(state: &State, lifter: &Lifter, lift: &str, reps: u8, load: Mass) -> Option<Mass> {
    let supports = supports(state, lifter, lift, reps)?;
    let limit = i128::from(supports.ng()) * i128::from(ODD_PERCENT);
    (i128::from(load.ng()) * 100 > limit).then_some(supports)
}

/// The heaviest that the record supports for so many reps: the best of the lifter's file as it
/// stands, and each set with the back held by Epley's equation (1985), w (1 + r/30), from its reps
/// to those asked.
#[must_use]
pub fn supports(state: &State, lifter: &Lifter, lift: &str, reps: u8) -> Option<Mass> {
    let written = lifter.bests.iter().find(|(name, _)| name == lift);
    let runs = state
        .lifts
        .values()
        .filter(|run| run.sheet.lifter == lifter.name && run.sheet.lift == lift);
    let sets = runs.flat_map(|run| run.passed().zip(&run.sheet.rungs));
    let of_set = sets.filter_map(|(entry, rung)| match entry.what {
        Entered::Set {
            reps: done @ 1..,
            hold: Hold::Kept,
        } => Some(by_reps(rung.load, done, reps)),
        Entered::Set { .. }
        | Entered::Skipped
        | Entered::Stopped
        | Entered::WentOn
        | Entered::Settled
        | Entered::LeftOpen => None,
    });
    of_set.chain(written.map(|(_, best)| *best)).max()
}

fn by_reps(load: Mass, done: u8, asked: u8) -> Mass {
    let ng = i128::from(load.ng()) * (30 + i128::from(done)) / (30 + i128::from(asked));
    Mass::from_ng(i64::try_from(ng).unwrap_or(i64::MAX))
}
