//! Estimates of the single as a document: JSON, and text for a terminal.
//!
//! Refuses: one number without the others; lifts and sets of which the equations say nothing.
use crate::language::{Language, c};
use crate::single::{caution, fits};
use domain::lift::Lift;
use domain::single::singles;
use domain::{Hold, Mass, MassUnit};
use schemars::JsonSchema;
use serde::Serialize;

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

/// The document of one set; `None` where the equations mean nothing.
#[must_use]
pub fn single_doc(
    say: Language,
    lift: Option<&Lift>,
    load: Mass,
    reps: u8,
    unit: MassUnit,
) -> Option<SingleDoc> {
    let found = singles(load, reps, Hold::Kept).filter(|_| fits(lift))?;
    let each = found.each.iter().map(|(equation, single)| EquationDoc {
        equation: equation.word().into(),
        single: single.words(unit),
    });
    let caution = caution(say, lift);
    Some(SingleDoc {
        load: load.exact(unit),
        reps,
        each: each.collect(),
        least: found.least().words(unit),
        most: found.most().words(unit),
        caution: (!caution.is_empty()).then_some(caution),
    })
}

/// The same in plain text.
#[must_use]
pub fn single_text(say: Language, doc: &SingleDoc) -> String {
    let number = |text: &str| say.number(text);
    let of = [&doc.load, &doc.reps.to_string(), &doc.least, &doc.most].map(|t| number(t));
    let mut text = say.fill(c::SINGLE_HEAD, &of.each_ref().map(String::as_str)) + "\n";
    for one in &doc.each {
        let single = number(&one.single);
        text.push_str(&format!("  {:<10}{single:>12}\n", one.equation));
    }
    if let Some(caution) = &doc.caution {
        text.push_str(&format!("{caution}\n"));
    }
    text
}
