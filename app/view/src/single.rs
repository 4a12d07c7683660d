//! Estimates of the single by the published equations, side by side.
//!
//! Refuses: one number without the others; lifts and sets of which the equations say nothing.
use crate::language::{Language, c};
use crate::trail::Scale;
use domain::decimal::write_rounded;
use domain::lift::Lift;
use domain::single::{Singles, is_partial, singles};
use domain::state::{Entered, LiftRun};
use domain::{Hold, Mass, MassUnit};

/// What a screen shows of them.
#[derive(Debug, Clone, PartialEq)]
pub struct SingleFace {
    /// "203 to 214 kg".
    pub spread: String,
    /// What they are reckoned from, and how: "by six published equations, from 180 kg × 5".
    pub how: String,
    /// Each equation, least first.
    pub each: Vec<Estimate>,
    /// What goes with the estimates of a partial pull, or empty.
    pub caution: String,
}

/// What one equation gives.
#[derive(Debug, Clone, PartialEq)]
pub struct Estimate {
    /// "Epley".
    pub equation: String,
    /// "210 kg".
    pub single: String,
    /// Where it stands from the least (0) to the most (1).
    pub place: f32,
}

/// Whether the equations were made for such a lift at all: not for one fast pull.
pub(crate) const fn fits(lift: Option<&Lift>) -> bool {
    match lift {
        Some(lift) => !lift.fast,
        None => true,
    }
}

/// What goes with the estimates of a partial pull, or nothing.
pub(crate) fn caution(say: Language, lift: Option<&Lift>) -> String {
    let partial = lift.filter(|lift| is_partial(lift));
    partial.map(|_| say.say(c::PARTIAL)).unwrap_or_default()
}

/// From the heaviest set of a lift with the back held; `None` where the equations mean nothing.
#[must_use]
pub fn single_face(say: Language, lift: Option<&Lift>, run: &LiftRun) -> Option<SingleFace> {
    if !fits(lift) {
        return None;
    }
    let sets = run.passed().zip(&run.sheet.rungs);
    let kept = sets.filter_map(|(entry, rung)| match entry.what {
        Entered::Set {
            reps,
            hold: Hold::Kept,
        } => Some((rung.load, reps)),
        Entered::Set { .. }
        | Entered::Skipped
        | Entered::Stopped
        | Entered::WentOn
        | Entered::Settled
        | Entered::LeftOpen => None,
    });
    let (load, reps) = kept.max()?;
    let found = singles(load, reps, Hold::Kept)?;
    let unit = run.sheet.unit;
    Some(SingleFace {
        how: say.fill(c::SINGLE_FROM, &[&say.set(load, unit, reps)]),
        caution: caution(say, lift),
        ..face(say, &found, unit)
    })
}

/// An estimate in whole units: more digits would promise more than the equations know.
fn whole(mass: Mass, unit: MassUnit) -> String {
    write_rounded(mass.ng(), unit.scale(), 0)
}

fn face(say: Language, found: &Singles, unit: MassUnit) -> SingleFace {
    let scale = Scale::of(found.each.iter().map(|(_, single)| *single));
    let mut each = found.each;
    each.sort_by_key(|(_, single)| *single);
    let estimate = |(equation, single): &(domain::single::Equation, Mass)| Estimate {
        equation: equation.word().into(),
        single: format!("{} {}", whole(*single, unit), unit.word()),
        place: scale.height(*single),
    };
    let (least, most) = (found.least(), found.most());
    SingleFace {
        spread: say.fill(
            c::FROM_TO,
            &[
                &whole(least, unit),
                &format!("{} {}", whole(most, unit), unit.word()),
            ],
        ),
        how: String::new(),
        each: each.iter().map(estimate).collect(),
        caution: String::new(),
    }
}
