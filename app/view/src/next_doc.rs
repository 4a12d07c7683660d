//! What is due the next time as a document: JSON, and text for a terminal.
//!
//! Refuses: rounding where a machine reads; masses are exact strings with a unit.
use crate::language::{Language, c};
use crate::sheet::{DueDoc, due_doc};
use crate::single_doc::{SingleDoc, single_doc};
use chrono::NaiveDate;
use domain::decimal::write_rounded;
use domain::next::here::LiftDue;
use domain::next::outing::{Outing, Went};
use domain::next::{Due, Rule, Step};
use domain::{Gym, Lifter, MassUnit, TrackName};
use schemars::JsonSchema;
use serde::Serialize;

/// All that is due for one lifter.
#[derive(Debug, Clone, Serialize, JsonSchema)]
#[schemars(deny_unknown_fields)]
pub struct NextDoc {
    /// Who.
    pub lifter: String,
    /// The day that it is for, ISO 8601.
    pub date: String,
    /// One a lift and number of reps that was done before.
    pub lifts: Vec<LiftDueDoc>,
}

/// What is due of one lift.
#[derive(Debug, Clone, Serialize, JsonSchema)]
#[schemars(deny_unknown_fields)]
pub struct LiftDueDoc {
    /// The lift.
    pub lift: String,
    /// The track's name, where the plan gave one.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub track: Option<String>,
    /// Work sets the last time.
    pub sets: u8,
    /// Reps of a work set.
    pub reps: u8,
    /// What is due, by the rules or by the coach.
    pub due: DueDoc,
    /// What the rules gave, where the coach ruled otherwise.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub by_rules: Option<DueDoc>,
    /// The figures of the rule in force.
    pub rule: RuleDoc,
    /// Estimates of the single from the last outing, where the equations mean something.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub single: Option<SingleDoc>,
    /// Outings that it follows from, oldest first.
    pub past: Vec<OutingDoc>,
}

/// The figures of a rule.
#[derive(Debug, Clone, Serialize, JsonSchema)]
#[schemars(deny_unknown_fields)]
pub struct RuleDoc {
    /// What a lift that went well adds: "2.5 kg" or "2.5 %".
    pub step: String,
    /// Tries of one load.
    pub tries: u8,
    /// And where the back moved late in a set.
    pub moved_tries: u8,
    /// What a drop takes off: "5 %".
    pub drop: String,
    /// Drops without a new best before a reset.
    pub drops: u8,
    /// What a reset takes off.
    pub reset: String,
    /// Days without the lift that are no break.
    pub away_days: u16,
    /// What is taken off after a break.
    pub away: String,
}

/// One outing.
#[derive(Debug, Clone, Serialize, JsonSchema)]
#[schemars(deny_unknown_fields)]
pub struct OutingDoc {
    /// The day, ISO 8601.
    pub date: String,
    /// Load of the work sets, exact, with unit.
    pub load: String,
    /// Work sets asked.
    pub sets: u8,
    /// Reps asked.
    pub reps: u8,
    /// How it went: "all reps, back held", "4 of 5 reps", "back moved at rep 3".
    pub went: String,
}

/// The document.
#[must_use]
pub fn next_doc(
    say: Language,
    gym: &Gym,
    lifter: &Lifter,
    date: NaiveDate,
    all: &[LiftDue],
) -> NextDoc {
    NextDoc {
        lifter: lifter.name.clone(),
        date: date.format("%Y-%m-%d").to_string(),
        lifts: all
            .iter()
            .map(|due| lift(say, gym, due, lifter.unit))
            .collect(),
    }
}

/// The document as JSON text, indented, with a last line feed.
#[must_use]
pub fn next_json(doc: &NextDoc) -> String {
    let mut text = serde_json::to_string_pretty(doc).unwrap_or_default();
    text.push('\n');
    text
}

fn lift(say: Language, gym: &Gym, one: &LiftDue, unit: MassUnit) -> LiftDueDoc {
    let lift = gym.lifts.iter().find(|lift| lift.name == one.lift);
    let clean = |outing: &&Outing| outing.went == Went::Well;
    let last = one.past.last().filter(clean);
    let decision = &one.due.decision;
    let ruled = one.recorded.as_ref().filter(|next| next.ruled.is_some());
    LiftDueDoc {
        lift: one.lift.clone(),
        track: one.track.name.map(|name| name.as_str().to_owned()),
        sets: decision.sets,
        reps: decision.reps,
        due: due_doc(say, &one.due, unit),
        by_rules: ruled.map(|next| due_doc(say, &Due::by_rule(next.decided.decision), unit)),
        rule: rule(&one.rule, unit),
        single: last.and_then(|o| single_doc(say, lift, o.load, o.reps, unit)),
        past: one.past.iter().map(|o| outing(say, o, unit)).collect(),
    }
}

fn share(hundredths: u32) -> String {
    format!("{} %", write_rounded(i64::from(hundredths), 100, 2))
}

fn rule(rule: &Rule, unit: MassUnit) -> RuleDoc {
    RuleDoc {
        step: match rule.step {
            Step::Mass(mass) => mass.exact(unit),
            Step::Share(hundredths) => share(hundredths),
        },
        tries: rule.tries,
        moved_tries: rule.moved_tries,
        drop: share(rule.drop),
        drops: rule.drops,
        reset: share(rule.reset),
        away_days: rule.away_days,
        away: share(rule.away),
    }
}

fn outing(say: Language, outing: &Outing, unit: MassUnit) -> OutingDoc {
    OutingDoc {
        date: outing.date.format("%Y-%m-%d").to_string(),
        load: outing.load.exact(unit),
        sets: outing.sets,
        reps: outing.reps,
        went: say.outing(outing),
    }
}

/// Outings told in the text.
const PAST_MAX: usize = 6;

/// The same in plain text, a few lines a lift.
#[must_use]
pub fn next_text(say: Language, doc: &NextDoc) -> String {
    let mut text = say.fill(c::D_FOR, &[&doc.lifter, &doc.date]) + "\n";
    if doc.lifts.is_empty() {
        text.push_str(&format!("\n{}\n", say.say(c::D_NOTHING)));
    }
    for lift in &doc.lifts {
        let reps = say.reps(lift.reps);
        let work = match lift.sets {
            1 => reps,
            sets => say.fill(c::D_SETS, &[&sets.to_string(), &reps]),
        };
        let track = lift.track.as_deref().and_then(TrackName::new);
        text.push_str(&format!("\n{}, {work}\n", say.tracked(&lift.lift, track)));
        let mut line = |head: &str, words: &str| text.push_str(&format!("  {head:<8}{words}\n"));
        line(&say.say(c::D_DUE), &lift.due.reason);
        if let Some(rules) = &lift.by_rules {
            line(&say.say(c::D_RULES), &rules.reason);
        }
        line(&say.say(c::D_RULE), &figures(say, &lift.rule));
        if let Some(single) = &lift.single {
            let (least, most) = (say.number(&single.least), say.number(&single.most));
            let words = say.fill(c::SINGLE_LINE, &[&least, &most]);
            line(&say.say(c::D_SINGLE), &words);
            if let Some(caution) = &single.caution {
                line("", caution);
            }
        }
        for past in lift.past.iter().rev().take(PAST_MAX) {
            let load = say.number(&past.load);
            line("", &format!("{}  {load:>10}  {}", past.date, past.went));
        }
    }
    text
}

/// The figures of a rule in one line.
fn figures(say: Language, rule: &RuleDoc) -> String {
    say.fill(
        c::D_FIGURES,
        &[
            &say.number(&rule.step),
            &say.count(c::D_TRIES, rule.tries.into()),
            &rule.moved_tries.to_string(),
            &say.number(&rule.drop),
            &say.count(c::D_DROPS, rule.drops.into()),
            &say.number(&rule.reset),
            &rule.away_days.to_string(),
            &say.number(&rule.away),
        ],
    )
}
