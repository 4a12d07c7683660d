//! From what a rule wishes to what the gym can load.
use super::{Decision, Limits, RAISE_MOST, Rule, Step, Verdict, Why};
use crate::mass::Mass;
use crate::solve::loads::Loads;

/// What a rule adds to a load, at most [`RAISE_MOST`] of it.
pub(crate) fn step_of(rule: &Rule, from: Mass) -> Mass {
    let step = match rule.step {
        Step::Mass(mass) => mass,
        Step::Share(share) => share_of(from, share),
    };
    step.min(share_of(from, RAISE_MOST))
}

/// A raise to the nearest above the old load, all else never above what is wished.
pub(super) fn round(decision: &mut Decision, limits: &Limits, loads: &Loads) {
    if decision.verdict != Verdict::Raise {
        decision.load = again(decision.wished, decision.from, loads);
        return;
    }
    match raised(decision.from, decision.wished, limits, loads) {
        Some(load) => decision.load = load,
        None => {
            decision.verdict = Verdict::Repeat;
            decision.why = Why::NoStep;
            decision.load = again(decision.from, decision.from, loads);
        }
    }
}

/// What stays as it was lifted stays, whatever the lift is rounded to: the coach wrote it, and
/// nobody who did it all is lowered because of it. All else is never above `wished`.
pub(super) fn again(wished: Mass, from: Mass, loads: &Loads) -> Mass {
    let same = loads.at_most_in_any_step(from);
    same.filter(|_| wished == from)
        .unwrap_or_else(|| not_above(wished, loads))
}

/// The load nearest to `wished` that is above `from` and at most [`RAISE_MOST`] over it; where
/// there is none, the smallest step that the plates make, if it is not too coarse.
pub(super) fn raised(from: Mass, wished: Mass, limits: &Limits, loads: &Loads) -> Option<Mass> {
    let most = more(from, RAISE_MOST);
    let nearest = loads.nearest(wished).filter(|load| *load > from);
    let nearest = match nearest {
        Some(over) if over > most => loads.at_most(most).filter(|load| *load > from),
        other => other,
    };
    nearest.or_else(|| above(from, limits, loads))
}

/// The smallest step that the plates make above a load, if it is not too coarse.
pub(super) fn above(from: Mass, limits: &Limits, loads: &Loads) -> Option<Mass> {
    let coarsest = more(from, limits.coarse.max(RAISE_MOST));
    loads
        .at_least(from + Mass::from_ng(1))
        .filter(|load| *load <= coarsest)
}

/// The greatest load not above `wished`, or the empty bar: also where the lift is rounded to steps
/// that the empty bar is none of.
pub(super) fn not_above(wished: Mass, loads: &Loads) -> Mass {
    loads.at_most(wished).unwrap_or_else(|| loads.least())
}

pub(super) fn less(mass: Mass, share: u32) -> Mass {
    mass - share_of(mass, share)
}

pub(super) fn more(mass: Mass, share: u32) -> Mass {
    mass + share_of(mass, share)
}

/// So many hundredths of a percent of a mass, down to the nanogram.
pub(crate) fn share_of(mass: Mass, share: u32) -> Mass {
    let ng = i128::from(mass.ng()) * i128::from(share) / 10_000;
    Mass::from_ng(i64::try_from(ng).unwrap_or(i64::MAX))
}
