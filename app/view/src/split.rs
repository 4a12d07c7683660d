//! When to split the deadlift: advice in one sentence with its evidence drawn.
//!
//! Refuses: to change anybody's programme; the coach decides.
use crate::language::{Language, c};
use crate::trail::{Scale, Trail, point};
use domain::MassUnit;
use domain::split::{Advice, BackDay, Split, SplitRule};

/// What a screen shows of it.
#[derive(Debug, Clone, PartialEq)]
pub struct SplitFace {
    /// The advice in one sentence.
    pub sentence: String,
    /// The outings that it follows from, the line of least squares through them, and the load from
    /// which a split is thought of.
    pub trail: Trail,
    /// The way back before a test: "12 February: deadlift 155 kg × 5".
    pub back: Vec<String>,
}

/// Whether there is something to do about it, so that the day sheet and the end of a lift say it.
#[must_use]
pub const fn is_told(split: &Split) -> bool {
    matches!(
        split.advice,
        Advice::Split | Advice::Back | Advice::TestNear
    )
}

/// The advice in one sentence, with its figures, in the lifter's unit.
#[must_use]
pub fn sentence(say: Language, split: &Split, unit: MassUnit) -> String {
    let rule = &split.rule;
    let lift = say.shipped(&rule.lift);
    let partials = partials(say, rule);
    let heaviest = split.evidence.as_ref().and_then(|e| e.heaviest);
    let heaviest = heaviest.map(|load| say.mass(load, unit));
    let test = rule.test.map(|date| say.day_of_year(date));
    let test = test.unwrap_or_default();
    let (reps, sets) = (rule.reps.to_string(), sets_of(say, rule.reps));
    match (split.advice, heaviest) {
        (Advice::TooFew, _) => say.fill(c::S_TOO_FEW, &[&reps, &lift]),
        (Advice::Light, None) => say.fill(c::S_NONE_WELL, &[&lift, &reps]),
        (Advice::Light, Some(at)) => {
            let from = say.mass(rule.from, unit);
            say.fill(c::S_LIGHT, &[&lift, &sets, &at, &from])
        }
        (Advice::Rising, at) => say.fill(c::S_RISING, &[&lift, &sets, &at.unwrap_or_default()]),
        (Advice::TestNear, _) => say.fill(c::S_TEST_NEAR, &[&slow(say, split, unit), &test, &lift]),
        (Advice::Split, _) => say.fill(c::S_SPLIT, &[&slow(say, split, unit), &partials]),
        (Advice::Stay, _) => match split.back.first() {
            None => say.fill(c::S_STAY, &[&partials]),
            Some(back) => {
                let from = say.day_of_year(back.date);
                say.fill(c::S_STAY_UNTIL, &[&partials, &lift, &from, &test])
            }
        },
        (Advice::Back, _) => say.fill(c::S_BACK, &[&test, &lift]),
    }
}

/// "halting deadlift and the rack pull".
fn partials(say: Language, rule: &SplitRule) -> String {
    let each = rule.partials.iter().map(|partial| say.shipped(partial));
    let joined = each.reduce(|all, one| say.fill(c::JOINED, &[&all, &one]));
    joined.unwrap_or_default()
}

/// "fives", "sets of 3".
fn sets_of(say: Language, reps: u8) -> String {
    match reps {
        5 => say.say(c::FIVES),
        reps => say.fill(c::SETS_OF_REPS, &[&reps.to_string()]),
    }
}

/// "deadlift fives at 190 kg rise by 0.83 kg a time where 4.75 kg are due, 4 of 8 short or with a
/// moved back".
fn slow(say: Language, split: &Split, unit: MassUnit) -> String {
    let Some(evidence) = &split.evidence else {
        return String::new();
    };
    let rise = match evidence.rise.ng() {
        ..0 => say.fill(c::S_FALL, &[&say.mass(-evidence.rise, unit)]),
        _ => say.fill(c::S_RISE, &[&say.mass(evidence.rise, unit)]),
    };
    let troubles = u16::from(evidence.short) + u16::from(evidence.moved);
    say.fill(
        c::S_SLOW,
        &[
            &say.shipped(&split.rule.lift),
            &sets_of(say, split.rule.reps),
            &say.mass(evidence.heaviest.unwrap_or_default(), unit),
            &rise,
            &say.mass(evidence.due, unit),
            &troubles.to_string(),
            &evidence.outings.len().to_string(),
        ],
    )
}

/// For a screen.
#[must_use]
pub fn split_face(say: Language, split: &Split, unit: MassUnit) -> SplitFace {
    SplitFace {
        sentence: sentence(say, split, unit),
        trail: trail(say, split, unit),
        back: split
            .back
            .iter()
            .map(|back| back_words(say, &split.rule, back, unit))
            .collect(),
    }
}

fn trail(say: Language, split: &Split, unit: MassUnit) -> Trail {
    let Some(evidence) = &split.evidence else {
        return Trail::default();
    };
    let (outings, line, from) = (&evidence.outings, evidence.line, split.rule.from);
    let loads = outings.iter().map(|o| o.load);
    let scale = Scale::of(loads.chain([line.0, line.1, from]));
    let words = say.fill(c::HEAVY_FROM, &[&say.mass(from, unit)]);
    Trail {
        points: outings.iter().map(|o| point(say, o, unit, scale)).collect(),
        // A line through one point says nothing.
        line: (outings.len() > 1).then(|| (scale.height(line.0), scale.height(line.1))),
        threshold: Some((scale.height(from), words)),
    }
}

/// "12 February: deadlift 155 kg × 5", without a best "12 February: deadlift 80 % of the best × 5".
pub(crate) fn back_words(
    say: Language,
    rule: &SplitRule,
    back: &BackDay,
    unit: MassUnit,
) -> String {
    let date = say.day_of_year(back.date);
    let lift = say.shipped(&rule.lift);
    match back.load {
        Some(load) => say.fill(
            c::S_BACK_DAY,
            &[&date, &lift, &say.set(load, unit, back.reps)],
        ),
        None => say.fill(
            c::S_BACK_SHARE,
            &[
                &date,
                &lift,
                &(back.share / 100).to_string(),
                &back.reps.to_string(),
            ],
        ),
    }
}
