//! Estimates of the single by the published equations, side by side, for a screen, as JSON and as
//! text.
//!
//! Refuses: one number without the others; lifts and sets of which the equations say nothing.
use domain::lift::Lift;
use domain::single::{PARTIAL, Singles, is_partial, singles};
use domain::state::{Entered, LiftRun};
use domain::{Hold, Mass, MassUnit};
use schemars::JsonSchema;
use serde::Serialize;

/// What a screen shows of them.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct SingleFace {
    /// "single by six equations: 202.5 to 214 kg".
    pub spread: String,
    /// Each equation with what it gives, in their own order: ("Epley", "210 kg").
    pub each: Vec<(String, String)>,
    /// What goes with the estimates of a partial pull, or empty.
    pub caution: String,
}

/// The estimates as a document.
#[derive(Debug, Clone, Serialize, JsonSchema)]
#[schemars(deny_unknown_fields)]
pub struct SingleDoc {
    /// The set's load, exact, with unit.
    pub load: String,
    /// The set's reps.
    pub reps: u8,
    /// Each equation, rounded to hundredths: estimates, not loads.
    pub each: Vec<EquationDoc>,
    /// The least of them.
    pub least: String,
    /// The most.
    pub most: String,
    /// What goes with the estimates of a partial pull.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub caution: Option<String>,
}

/// One equation.
#[derive(Debug, Clone, Serialize, JsonSchema)]
#[schemars(deny_unknown_fields)]
pub struct EquationDoc {
    /// As the trade calls it.
    pub equation: String,
    /// What it gives.
    pub single: String,
}

/// Whether the equations were made for such a lift at all: not for one fast pull.
const fn fits(lift: Option<&Lift>) -> bool {
    match lift {
        Some(lift) => !lift.fast,
        None => true,
    }
}

/// From the heaviest set of a lift with the back kept; `None` where the equations mean nothing.
#[must_use]
pub fn single_face(lift: Option<&Lift>, run: &LiftRun) -> Option<SingleFace> {
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
        | Entered::Settled => None,
    });
    let (load, reps) = kept.max()?;
    let found = singles(load, reps, Hold::Kept)?;
    Some(face(&found, lift, run.sheet.unit))
}

fn face(found: &Singles, lift: Option<&Lift>, unit: MassUnit) -> SingleFace {
    let half = |mass: Mass| mass.words(unit);
    SingleFace {
        spread: format!(
            "single by six equations: {} to {}",
            found.least().number(unit),
            half(found.most())
        ),
        each: found
            .each
            .iter()
            .map(|(equation, single)| (equation.word().into(), half(*single)))
            .collect(),
        caution: caution(lift).unwrap_or_default(),
    }
}

fn caution(lift: Option<&Lift>) -> Option<String> {
    lift.filter(|lift| is_partial(lift)).map(|_| PARTIAL.into())
}

/// The document of one set; `None` where the equations mean nothing.
#[must_use]
pub fn single_doc(lift: Option<&Lift>, load: Mass, reps: u8, unit: MassUnit) -> Option<SingleDoc> {
    let found = singles(load, reps, Hold::Kept).filter(|_| fits(lift))?;
    let each = found.each.iter().map(|(equation, single)| EquationDoc {
        equation: equation.word().into(),
        single: single.words(unit),
    });
    Some(SingleDoc {
        load: load.exact(unit),
        reps,
        each: each.collect(),
        least: found.least().words(unit),
        most: found.most().words(unit),
        caution: caution(lift),
    })
}

/// The same in plain text.
#[must_use]
pub fn single_text(doc: &SingleDoc) -> String {
    let mut text = format!(
        "single from {} × {}: {} to {}, by the equation\n",
        doc.load, doc.reps, doc.least, doc.most
    );
    for one in &doc.each {
        text.push_str(&format!("  {:<10}{:>12}\n", one.equation, one.single));
    }
    if let Some(caution) = &doc.caution {
        text.push_str(&format!("{caution}\n"));
    }
    text
}
