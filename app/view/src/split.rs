//! When to split the deadlift: advice in one sentence with its evidence, for a screen, as JSON and
//! as text.
//!
//! Refuses: to change anybody's programme; the coach decides.
use crate::drawings;
use crate::language::Language;
use crate::next::{PastRow, past_row};
use crate::words;
use chrono::NaiveDate;
use domain::split::{Advice, BackDay, Split, SplitRule};
use domain::{Mass, MassUnit};
use schemars::JsonSchema;
use serde::Serialize;

/// What a screen shows of it.
#[derive(Debug, Clone, PartialEq)]
pub struct SplitFace {
    /// The advice in one sentence.
    pub sentence: String,
    /// The outings that it follows from, oldest first.
    pub past: Vec<PastRow>,
    /// The line of least squares: height at the first and at the last outing, on the scale of
    /// `past`.
    pub line: (f32, f32),
    /// Height of the load from which a split is thought of, on the same scale.
    pub threshold: f32,
    /// The way back before a test: "12 February: 155 kg × 5".
    pub back: Vec<String>,
}

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

/// Whether there is something to do about it, so that the day sheet and the end of a lift say it.
#[must_use]
pub const fn is_told(split: &Split) -> bool {
    matches!(
        split.advice,
        Advice::Split | Advice::Back | Advice::TestNear
    )
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

/// The advice in one sentence, with its figures, in the lifter's unit.
#[must_use]
pub fn sentence(split: &Split, unit: MassUnit) -> String {
    let rule = &split.rule;
    let partials = rule.partials.join(" and the ");
    let heaviest = split.evidence.as_ref().and_then(|e| e.heaviest);
    let fives = heaviest.map(|load| load.words(unit)).unwrap_or_default();
    let test = rule.test.map(day).unwrap_or_default();
    match split.advice {
        Advice::TooFew => format!(
            "too few sets of {} of the {} to see a trend",
            rule.reps, rule.lift
        ),
        Advice::Light if fives.is_empty() => {
            format!("no {} of {} went well lately", rule.lift, rule.reps)
        }
        Advice::Light => format!(
            "{} fives at {fives}, under the {} from which a split is thought of",
            rule.lift,
            rule.from.words(unit)
        ),
        Advice::Rising => format!("{} fives at {fives} still rise; go on", rule.lift),
        Advice::TestNear => format!(
            "{}, but the test on {test} is near; stay with the {}",
            slow(split, unit),
            rule.lift
        ),
        Advice::Split => format!(
            "{}; think of the {partials} in its place, the coach decides",
            slow(split, unit)
        ),
        Advice::Stay => match split.back.first() {
            None => format!("on the {partials}; stay there"),
            Some(back) => format!(
                "on the {partials}; back to the {} from {} before the test on {test}",
                rule.lift,
                day(back.date)
            ),
        },
        Advice::Back => format!(
            "the test is on {test}; take up the {} again, the coach decides",
            rule.lift
        ),
    }
}

/// "deadlift fives at 190 kg rise by 0.83 kg a time where 4.75 kg are due, 4 of 8 short or with a
/// moved back".
fn slow(split: &Split, unit: MassUnit) -> String {
    let Some(evidence) = &split.evidence else {
        return String::new();
    };
    let heaviest = evidence.heaviest.unwrap_or_default().words(unit);
    let rise = match evidence.rise.ng() {
        ..0 => format!("fall by {}", (-evidence.rise).words(unit)),
        _ => format!("rise by {}", evidence.rise.words(unit)),
    };
    format!(
        "{} fives at {heaviest} {rise} a time where {} are due, {} of {} short or with a moved back",
        split.rule.lift,
        evidence.due.words(unit),
        u16::from(evidence.short) + u16::from(evidence.moved),
        evidence.outings.len()
    )
}

fn day(date: NaiveDate) -> String {
    date.format("%-d %B").to_string()
}

/// For a screen.
#[must_use]
pub fn split_face(say: Language, split: &Split, unit: MassUnit) -> SplitFace {
    let evidence = split.evidence.as_ref();
    let outings = evidence.map_or(&[][..], |e| &e.outings);
    let line = evidence.map_or((Mass::ZERO, Mass::ZERO), |e| e.line);
    let all = outings
        .iter()
        .map(|o| o.load)
        .chain([line.0, line.1, split.rule.from]);
    let most = all.max().map_or(1, Mass::ng);
    let height = |load: Mass| drawings::share(load.ng(), most);
    SplitFace {
        sentence: sentence(split, unit),
        past: outings
            .iter()
            .map(|o| past_row(say, o, unit, height(o.load)))
            .collect(),
        line: (height(line.0), height(line.1)),
        threshold: height(split.rule.from),
        back: split
            .back
            .iter()
            .map(|back| back_words(&split.rule, back, unit))
            .collect(),
    }
}

/// "12 February: 155 kg × 5", without a best "12 February: 80 % of the best × 5".
fn back_words(rule: &SplitRule, back: &BackDay, unit: MassUnit) -> String {
    let date = day(back.date);
    match back.load {
        Some(load) => format!(
            "{date}: {} {}",
            rule.lift,
            words::set(load, unit, back.reps)
        ),
        None => format!(
            "{date}: {} {} % of the best × {}",
            rule.lift,
            back.share / 100,
            back.reps
        ),
    }
}

/// The document.
#[must_use]
pub fn split_doc(lifter: &str, unit: MassUnit, split: &Split) -> SplitDoc {
    let iso = |date: NaiveDate| date.format("%Y-%m-%d").to_string();
    SplitDoc {
        lifter: lifter.into(),
        advice: word(split.advice).into(),
        sentence: sentence(split, unit),
        from: split.rule.from.exact(unit),
        evidence: split.evidence.as_ref().map(|evidence| EvidenceDoc {
            outings: evidence
                .outings
                .iter()
                .map(|outing| PointDoc {
                    date: iso(outing.date),
                    load: outing.load.exact(unit),
                    went: words::went(outing),
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
pub fn no_split_doc(lifter: &str, unit: MassUnit, rule: &SplitRule) -> SplitDoc {
    SplitDoc {
        lifter: lifter.into(),
        advice: "none".into(),
        sentence: format!("no {} in the record yet", rule.lift),
        from: rule.from.exact(unit),
        evidence: None,
        back: Vec::new(),
    }
}

/// The same in plain text.
#[must_use]
pub fn split_text(lifter: &str, unit: MassUnit, split: &Split) -> String {
    let mut text = format!("{lifter}: {}\n", sentence(split, unit));
    for outing in split.evidence.iter().flat_map(|e| &e.outings) {
        text.push_str(&format!(
            "  {}  {:>10}  {}\n",
            outing.date.format("%Y-%m-%d"),
            outing.load.words(unit),
            words::went(outing)
        ));
    }
    for back in &split.back {
        text.push_str(&format!(
            "  back  {}\n",
            back_words(&split.rule, back, unit)
        ));
    }
    text
}
