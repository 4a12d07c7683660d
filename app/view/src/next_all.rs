//! What is due for everybody on one list: who waits for the coach first, then who is hurt or away,
//! then all others.
use crate::language::{Language, p};
use crate::sheet::{DueDoc, due_doc};
use chrono::NaiveDate;
use domain::next::Why;
use domain::next::here::{LiftDue, all_due};
use domain::{Gym, State};
use schemars::JsonSchema;
use serde::Serialize;

/// All that is due for all.
#[derive(Debug, Clone, Serialize, JsonSchema)]
#[schemars(deny_unknown_fields)]
pub struct AllDueDoc {
    /// The day that it is for, ISO 8601.
    pub date: String,
    /// One a lifter, lift and number of reps, by how much the coach should look at it.
    pub due: Vec<OneDueDoc>,
}

/// One line.
#[derive(Debug, Clone, Serialize, JsonSchema)]
#[schemars(deny_unknown_fields)]
pub struct OneDueDoc {
    /// Who.
    pub lifter: String,
    /// The lift; absent for somebody hurt of whom nothing is recorded.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub lift: Option<String>,
    /// Reps of a work set.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub reps: Option<u8>,
    /// "hurt", "stuck", "over-reaching", "begin anew", "waits", "away" or "due".
    pub state: &'static str,
    /// Whether it waits for the coach's ruling.
    pub ask_coach: bool,
    /// What is due, and why.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub due: Option<DueDoc>,
    /// The coach's words of a hurt.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub hurt: Option<String>,
}

/// The document.
#[must_use]
pub fn all_due_doc(say: Language, gym: &Gym, state: &State, date: NaiveDate) -> AllDueDoc {
    let mut due = Vec::new();
    for lifter in &gym.lifters {
        let health = state.health.get(&lifter.name);
        let hurt = health.and_then(|health| health.hurt.as_ref());
        let hurt = hurt
            .filter(|hurt| hurt.since <= date)
            .map(|h| h.note.clone());
        let all = all_due(gym, state, lifter, date);
        if all.is_empty() && hurt.is_some() {
            due.push(OneDueDoc {
                lifter: lifter.name.clone(),
                lift: None,
                reps: None,
                state: "hurt",
                ask_coach: true,
                due: None,
                hurt: hurt.clone(),
            });
        }
        due.extend(all.iter().map(|one| OneDueDoc {
            lifter: lifter.name.clone(),
            lift: Some(one.lift.clone()),
            reps: Some(one.due.decision.reps),
            state: state_of(one),
            ask_coach: one.due.asks,
            due: Some(due_doc(say, &one.due, lifter.unit)),
            hurt: hurt.clone(),
        }));
    }
    due.sort_by_key(|one| (!one.ask_coach, one.state == "due"));
    AllDueDoc {
        date: date.format("%Y-%m-%d").to_string(),
        due,
    }
}

fn state_of(one: &LiftDue) -> &'static str {
    let why = one.due.decision.why;
    let told = [
        (Why::Hurt, "hurt"),
        (Why::Stuck, "stuck"),
        (Why::OverReaching, "over-reaching"),
        (Why::Anew, "begin anew"),
    ];
    match told.iter().find(|(of, _)| *of == why) {
        Some((_, word)) => word,
        None if one.due.asks => "waits",
        None if matches!(why, Why::Away | Why::Ill) => "away",
        None => "due",
    }
}

/// The document as JSON text, indented, with a last line feed.
#[must_use]
pub fn all_due_json(doc: &AllDueDoc) -> String {
    let mut text = serde_json::to_string_pretty(doc).unwrap_or_default();
    text.push('\n');
    text
}

/// The same in plain text, a line each.
#[must_use]
pub fn all_due_text(say: Language, doc: &AllDueDoc) -> String {
    let mut text = say.fill(p::L_ALL, &[&doc.date]) + "\n";
    for one in &doc.due {
        let state = say.say(match one.state {
            "hurt" => p::L_HURT,
            "stuck" => p::L_STUCK,
            "over-reaching" => p::L_OVER,
            "begin anew" => p::L_ANEW,
            "waits" => p::L_WAITS,
            "away" => p::L_AWAY,
            _ => p::L_DUE,
        });
        let what = match (&one.lift, one.reps) {
            (Some(lift), Some(reps)) => format!(", {}, {}", say.shipped(lift), say.reps(reps)),
            _ => String::new(),
        };
        let note = one.hurt.iter().map(|note| format!(" ({note})"));
        let why = one.due.iter().map(|due| format!(": {}", due.reason));
        let rest: String = why.chain(note).collect();
        text.push_str(&format!("  {state:<15}{}{what}{rest}\n", one.lifter));
    }
    text
}
