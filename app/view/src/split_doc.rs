//! When to split the deadlift as a document: JSON, and text for a terminal.
//!
//! Refuses: rounding where a machine reads; masses are exact strings with a unit.
use crate::language::{Language, c};
use crate::split::{back_words, sentence};
use chrono::NaiveDate;
use domain::MassUnit;
use domain::split::{Advice, Split, SplitRule};
use schemars::JsonSchema;
use serde::Serialize;

/// The advice as a document.
#[derive(Debug, Clone, Serialize, JsonSchema)]
#[schemars(deny_unknown_fields)]
pub struct SplitDoc {
    /// Who.
    pub lifter: String,
    /// "too few", "light", "rising", "test near", "split", "stay", "back" or "none".
    pub advice: String,
    /// The same in one sentence.
    pub sentence: String,
    /// From this load on fives count as heavy, exact, with unit.
    pub from: String,
    /// What the record says; absent without fives.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub evidence: Option<EvidenceDoc>,
    /// The way back before the test; empty without one.
    pub back: Vec<BackDoc>,
}

/// What the record says.
#[derive(Debug, Clone, Serialize, JsonSchema)]
#[schemars(deny_unknown_fields)]
pub struct EvidenceDoc {
    /// The outings looked at, oldest first.
    pub outings: Vec<PointDoc>,
    /// The heaviest that went well, exact, with unit; absent when none did.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub heaviest: Option<String>,
    /// Rise from one outing to the next by least squares, to hundredths, with unit.
    pub rise: String,
    /// What the rules add each time, to hundredths, with unit.
    pub due: String,
    /// Outings that fell short.
    pub short: u8,
    /// Outings in which the back moved.
    pub moved: u8,
}

/// One outing of the evidence.
#[derive(Debug, Clone, Serialize, JsonSchema)]
#[schemars(deny_unknown_fields)]
pub struct PointDoc {
    /// The day, ISO 8601.
    pub date: String,
    /// Load of the work sets, exact, with unit.
    pub load: String,
    /// How it went.
    pub went: String,
}

/// One day of the way back.
#[derive(Debug, Clone, Serialize, JsonSchema)]
#[schemars(deny_unknown_fields)]
pub struct BackDoc {
    /// The day, ISO 8601.
    pub date: String,
    /// Reps of the one work set.
    pub reps: u8,
    /// Load that the gym can make, exact, with unit; absent without a best.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub load: Option<String>,
}

/// "split".
const fn word(advice: Advice) -> &'static str {
    match advice {
        Advice::TooFew => "too few",
        Advice::Light => "light",
        Advice::Rising => "rising",
        Advice::TestNear => "test near",
        Advice::Split => "split",
        Advice::Stay => "stay",
        Advice::Back => "back",
    }
}

/// The document.
#[must_use]
pub fn split_doc(say: Language, lifter: &str, unit: MassUnit, split: &Split) -> SplitDoc {
    let iso = |date: NaiveDate| date.format("%Y-%m-%d").to_string();
    SplitDoc {
        lifter: lifter.into(),
        advice: word(split.advice).into(),
        sentence: sentence(say, split, unit),
        from: split.rule.from.exact(unit),
        evidence: split.evidence.as_ref().map(|evidence| EvidenceDoc {
            outings: evidence
                .outings
                .iter()
                .map(|outing| PointDoc {
                    date: iso(outing.date),
                    load: outing.load.exact(unit),
                    went: say.outing(outing),
                })
                .collect(),
            heaviest: evidence.heaviest.map(|load| load.exact(unit)),
            rise: evidence.rise.words(unit),
            due: evidence.due.words(unit),
            short: evidence.short,
            moved: evidence.moved,
        }),
        back: split
            .back
            .iter()
            .map(|back| BackDoc {
                date: iso(back.date),
                reps: back.reps,
                load: back.load.map(|load| load.exact(unit)),
            })
            .collect(),
    }
}

/// The document for somebody of whom there is nothing to say.
#[must_use]
pub fn no_split_doc(say: Language, lifter: &str, unit: MassUnit, rule: &SplitRule) -> SplitDoc {
    SplitDoc {
        lifter: lifter.into(),
        advice: "none".into(),
        sentence: say.fill(c::S_NO_RECORD, &[&say.shipped(&rule.lift)]),
        from: rule.from.exact(unit),
        evidence: None,
        back: Vec::new(),
    }
}

/// The same in plain text.
#[must_use]
pub fn split_text(say: Language, lifter: &str, unit: MassUnit, split: &Split) -> String {
    let mut text = format!("{lifter}: {}\n", sentence(say, split, unit));
    for outing in split.evidence.iter().flat_map(|e| &e.outings) {
        text.push_str(&format!(
            "  {}  {:>10}  {}\n",
            outing.date.format("%Y-%m-%d"),
            say.mass(outing.load, unit),
            say.outing(outing)
        ));
    }
    for back in &split.back {
        let day = back_words(say, &split.rule, back, unit);
        text.push_str(&format!("  {}  {day}\n", say.say(c::S_BACK_ROW)));
    }
    text
}
