//! Loads that look wrong beside the record: a slip of the pen, the other unit, another lifter's.
//!
//! Decides nothing: the coach says whether such a load is meant.
use crate::lifter::Lifter;
use crate::mass::Mass;
use crate::past::kept_sets;
use crate::state::State;

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
    let past = state.past.lifters.get(&lifter.name);
    let top = past.and_then(|past| past.tops.get(lift));
    let runs = state.runs_of(&lifter.name);
    let sets = runs
        .filter(|run| run.sheet.lift == lift)
        .flat_map(kept_sets);
    let late = sets.map(|(load, done)| by_reps(load, done, reps));
    let earlier = top.and_then(|top| top.supports(reps));
    let written = written.map(|(_, best)| *best);
    late.chain(earlier).chain(written).max()
}

fn by_reps(load: Mass, done: u8, asked: u8) -> Mass {
    let ng = i128::from(load.ng()) * (30 + i128::from(done)) / (30 + i128::from(asked));
    Mass::from_ng(i64::try_from(ng).unwrap_or(i64::MAX))
}
