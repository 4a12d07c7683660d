//! The coach's list as words and as a document: what is due for everybody, who waits for the coach
//! first.
use crate::language::{Language, Phrase, p};
use crate::sheet::{DueDoc, due_doc};
use chrono::NaiveDate;
use domain::next::coach_list::coach_list;
use domain::plausible::Odd;
use domain::{Gym, State};
use schemars::JsonSchema;
use serde::Serialize;

pub use domain::next::coach_list::{CoachLine, Concern};

/// All that is due for all.
#[derive(Debug, Clone, Serialize, JsonSchema)]
#[schemars(deny_unknown_fields)]
pub struct AllDueDoc {
    /// The day that it is for, ISO 8601.
    pub date: String,
    /// One a lifter, lift and number of reps, the most urgent first.
    pub due: Vec<OneDueDoc>,
}

/// One line.
#[derive(Debug, Clone, Serialize, JsonSchema)]
#[schemars(deny_unknown_fields)]
pub struct OneDueDoc {
    /// Who.
    pub lifter: String,
    /// The lift; absent for somebody hurt.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub lift: Option<String>,
    /// The track's name, where the plan gave one.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub track: Option<String>,
    /// Reps of a work set.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub reps: Option<u8>,
    /// "hurt", "looks wrong", "over-reaching", "stuck", "begin anew", "waits for you", "plan and
    /// due differ", "away" or "due".
    pub state: &'static str,
    /// Whether it waits for the coach's ruling.
    pub ask_coach: bool,
    /// Why, in one sentence.
    pub why: String,
    /// What is due by the rules or the coach.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub due: Option<DueDoc>,
    /// The plan's load that looks wrong or differs, exact, with unit.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub planned: Option<String>,
    /// The day of that load, ISO 8601.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub planned_on: Option<String>,
}

/// How many lines wait for the coach.
#[must_use]
pub fn waiting(gym: &Gym, state: &State, today: NaiveDate) -> usize {
    let tomorrow = today.succ_opt().unwrap_or(today);
    let lines = coach_list(gym, state, today, tomorrow);
    lines.iter().filter(|line| line.concern.waits()).count()
}

/// The word for why a line stands there.
#[must_use]
pub fn state_of(concern: &Concern) -> Phrase {
    match concern {
        Concern::Hurt { .. } => p::list::HURT,
        Concern::LooksWrong { .. } => p::list::WRONG,
        Concern::OverReaching => p::list::OVER,
        Concern::Stuck => p::list::STUCK,
        Concern::Anew => p::list::ANEW,
        Concern::Waits => p::list::WAITS,
        Concern::Differs { .. } => p::list::DIFFERS,
        Concern::Away => p::list::AWAY,
        Concern::Due => p::list::DUE,
    }
}

/// "Tevita, rack pull, 5 reps".
#[must_use]
pub fn whose(say: Language, line: &CoachLine) -> String {
    match &line.of {
        Some((lift, track)) => {
            let (lift, reps) = (say.tracked(lift, track.name), say.reps(track.reps));
            format!("{}, {lift}, {reps}", line.lifter)
        }
        None => line.lifter.clone(),
    }
}

/// The sentence of a line.
#[must_use]
pub fn because(say: Language, line: &CoachLine) -> String {
    let mass = |mass| say.mass(mass, line.unit);
    let due = line.due.as_ref();
    match &line.concern {
        Concern::Hurt { since, note } => {
            say.fill(p::list::HURT_SINCE, &[&say.date(*since), &say.note(note)])
        }
        Concern::LooksWrong { date, load, odd } => {
            let (day, load) = (say.date(*date), mass(*load));
            match odd {
                Odd::Over(supports) | Odd::OtherUnit(supports) => {
                    say.fill(p::list::WRONG_ON, &[&day, &load, &mass(*supports)])
                }
                Odd::Untried => say.fill(p::list::UNTRIED_ON, &[&day, &load]),
                Odd::Reps(reps) => {
                    say.fill(p::list::MANY_REPS_ON, &[&day, &reps.to_string(), &load])
                }
            }
        }
        Concern::Differs { date, planned } => {
            let due = due.map(|due| say.due(due, line.unit)).unwrap_or_default();
            let words = [say.date(*date), mass(*planned)];
            say.fill(p::list::DIFFERS_ON, &[&words[0], &words[1], &due])
        }
        Concern::OverReaching
        | Concern::Stuck
        | Concern::Anew
        | Concern::Waits
        | Concern::Away
        | Concern::Due => due.map(|due| say.due(due, line.unit)).unwrap_or_default(),
    }
}

/// The document for `date`, with the plan from `today` on.
#[must_use]
pub fn all_due_doc(
    say: Language,
    gym: &Gym,
    state: &State,
    (today, date): (NaiveDate, NaiveDate),
) -> AllDueDoc {
    let iso = |date: &NaiveDate| date.format("%Y-%m-%d").to_string();
    let one = |line: &CoachLine| {
        let planned = match &line.concern {
            Concern::LooksWrong { date, load, .. } => Some((date, load)),
            Concern::Differs { date, planned } => Some((date, planned)),
            Concern::Hurt { .. }
            | Concern::OverReaching
            | Concern::Stuck
            | Concern::Anew
            | Concern::Waits
            | Concern::Away
            | Concern::Due => None,
        };
        OneDueDoc {
            lifter: line.lifter.clone(),
            lift: line.of.as_ref().map(|(lift, _)| lift.clone()),
            track: line
                .of
                .as_ref()
                .and_then(|(_, track)| Some(track.name?.as_str().to_owned())),
            reps: line.of.as_ref().map(|(_, track)| track.reps),
            state: Language::English.pick(state_of(&line.concern)),
            ask_coach: line.concern.waits(),
            why: because(say, line),
            due: line.due.as_ref().map(|due| due_doc(say, due, line.unit)),
            planned: planned.map(|(_, load)| load.exact(line.unit)),
            planned_on: planned.map(|(day, _)| iso(day)),
        }
    };
    let lines = coach_list(gym, state, today, date);
    AllDueDoc {
        date: iso(&date),
        due: lines.iter().map(one).collect(),
    }
}

/// The document as JSON text, indented, with a last line feed.
#[must_use]
pub fn all_due_json(doc: &AllDueDoc) -> String {
    let mut text = serde_json::to_string_pretty(doc).unwrap_or_default();
    text.push('\n');
    text
}

/// The same list in plain text, a line each.
#[must_use]
pub fn all_due_text(
    say: Language,
    gym: &Gym,
    state: &State,
    (today, date): (NaiveDate, NaiveDate),
) -> String {
    let mut text = say.fill(p::list::FOR_ALL, &[&date.to_string()]) + "\n";
    let lines = coach_list(gym, state, today, date);
    if lines.is_empty() {
        text.push_str(&format!("  {}\n", say.say(p::list::NOBODY)));
    }
    for line in &lines {
        let state = say.say(state_of(&line.concern));
        let (whose, why) = (whose(say, line), because(say, line));
        text.push_str(&format!("  {state:<20}{whose}: {why}\n"));
    }
    text
}
