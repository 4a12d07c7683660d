//! Loads and sets that look wrong beside the record: a slip of the pen, the other unit, another
//! lifter's.
//!
//! Decides nothing: the coach says whether such a row is meant.
use crate::gym::Gym;
use crate::lift::Lift;
use crate::lifter::Lifter;
use crate::mass::{Mass, MassUnit};
use crate::past::kept_sets;
use crate::prescription::Prescription;
use crate::state::State;
use chrono::NaiveDate;

/// Over so much of what the record supports a load looks wrong, in percent. Common practice, no
/// source.
pub const ODD_PERCENT: i64 = 110;
/// The heaviest load, 225 lb, that does not look wrong where nothing is recorded of a lifter:
/// whoever comes strong has a best to write down. Common practice, no source.
pub const UNTRIED_MAX: Mass = Mass::of(MassUnit::Lb, 225_000);
/// Most reps of work of one lift on one day that do not look wrong. Common practice, no source.
pub const REPS_MAX: u16 = 100;
/// A best of the lifter's file counts as it stands for up to so many reps.
const BEST_REPS: u8 = 10;
/// Under so much of what the record supports a load in the other unit looks like a slip, percent.
const LIGHT_PERCENT: i64 = 60;

/// Why a row looks wrong.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Odd {
    /// The load is over [`ODD_PERCENT`] of this, which the record supports.
    Over(Mass),
    /// The load is over [`UNTRIED_MAX`], and nothing is recorded of the lifter.
    Untried,
    /// So many reps of work, over [`REPS_MAX`].
    Reps(u16),
    /// A round load of the other unit, light beside this, which the record supports; the same
    /// number in the lifter's own unit would fit. Told, and never held back.
    OtherUnit(Mass),
}

impl Odd {
    /// Whether the load is not shown at the rack before the coach has said that it is meant.
    #[must_use]
    pub const fn holds(self) -> bool {
        !matches!(self, Self::OtherUnit(_))
    }
}

/// What looks wrong of a load for so many reps on a day.
#[must_use]
pub fn odd(
    (gym, state): (&Gym, &State),
    lifter: &Lifter,
    lift: &str,
    (reps, load): (u8, Mass),
    on: NaiveDate,
) -> Option<Odd> {
    let Some(supports) = supports((gym, state), lifter, lift, (reps, on)) else {
        return (load > UNTRIED_MAX && is_new(state, lifter)).then_some(Odd::Untried);
    };
    if is_over(load, supports, ODD_PERCENT) {
        return Some(Odd::Over(supports));
    }
    let light = !is_over(load, supports, LIGHT_PERCENT);
    let meant = light.then(|| in_own_unit(load, lifter.unit)).flatten();
    let meant = meant.filter(|own| !is_over(*own, supports, ODD_PERCENT));
    // A warm-up's worth in either unit is no slip.
    let meant = meant.filter(|own| is_over(*own, supports, LIGHT_PERCENT));
    meant.map(|_| Odd::OtherUnit(supports))
}

/// Whether a row asks for more reps of work than [`REPS_MAX`].
#[must_use]
pub fn odd_reps(row: &Prescription) -> Option<Odd> {
    let of =
        |group: &crate::prescription::SetGroup| u16::from(group.sets) * u16::from(group.reps.least);
    let reps = row.groups().map(of).fold(0, u16::saturating_add);
    (reps > REPS_MAX).then_some(Odd::Reps(reps))
}

/// The heaviest that the record supports for so many reps on a day: the best of the lifter's file
/// and the training max as they stand, and each set with the back held by Epley's equation (1985),
/// w (1 + r/30), from its reps to those asked. Where nothing is recorded of the lift, what its like
/// support: lifts of the family, a fast one of them half of a slow one. `None` without any.
#[must_use]
pub fn supports(
    (gym, state): (&Gym, &State),
    lifter: &Lifter,
    lift: &str,
    (reps, on): (u8, NaiveDate),
) -> Option<Mass> {
    let own = of_lift(state, lifter, lift, (reps, on));
    own.or_else(|| {
        let this = gym.lifts.iter().find(|known| known.name == lift)?;
        let like = |other: &&Lift| other.family == this.family && other.name != this.name;
        let each = gym.lifts.iter().filter(like).filter_map(|other| {
            let load = of_lift(state, lifter, &other.name, (reps, on))?;
            Some(match (this.fast, other.fast) {
                (true, false) => Mass::from_ng(load.ng() / 2),
                (false, true) => load.times(2),
                _ => load,
            })
        });
        each.max()
    })
}

/// Whether nothing is recorded of a lifter, of any lift.
fn is_new(state: &State, lifter: &Lifter) -> bool {
    let past = state.past.lifters.get(&lifter.name);
    let none = lifter.bests.is_empty() && lifter.training_maxes.is_empty();
    none && past.is_none_or(|past| past.tops.is_empty())
        && state
            .runs_of(&lifter.name)
            .flat_map(kept_sets)
            .next()
            .is_none()
}

fn of_lift(
    state: &State,
    lifter: &Lifter,
    lift: &str,
    (reps, on): (u8, NaiveDate),
) -> Option<Mass> {
    let written = lifter.bests.iter().find(|(name, _)| name == lift);
    let written = written.map(|(_, best)| *best);
    let as_it_stands = written.max(lifter.training_max(lift, on));
    let as_it_stands = as_it_stands.map(|best| by_reps(best, BEST_REPS, reps.max(BEST_REPS)));
    let past = state.past.lifters.get(&lifter.name);
    let top = past.and_then(|past| past.tops.get(lift));
    let runs = state.runs_of(&lifter.name);
    let sets = runs
        .filter(|run| run.sheet.lift == lift)
        .flat_map(kept_sets);
    let late = sets.map(|(load, done)| by_reps(load, done, reps));
    let earlier = top.and_then(|top| top.supports(reps));
    late.chain(earlier).chain(as_it_stands).max()
}

fn is_over(load: Mass, supports: Mass, percent: i64) -> bool {
    i128::from(load.ng()) * 100 > i128::from(supports.ng()) * i128::from(percent)
}

/// The same number in the lifter's own unit, where the load is round in the other one alone.
fn in_own_unit(load: Mass, own: MassUnit) -> Option<Mass> {
    let other = match own {
        MassUnit::Kg => MassUnit::Lb,
        MassUnit::Lb => MassUnit::Kg,
    };
    let half = |unit| Mass::of(unit, 500).ng();
    let round = |unit| load.ng() % half(unit) == 0;
    if round(own) || !round(other) {
        return None;
    }
    let number = load.ng() / half(other);
    Some(Mass::from_ng(half(own).checked_mul(number)?))
}

fn by_reps(load: Mass, done: u8, asked: u8) -> Mass {
    let ng = i128::from(load.ng()) * (30 + i128::from(done)) / (30 + i128::from(asked));
    Mass::from_ng(i64::try_from(ng).unwrap_or(i64::MAX))
}
