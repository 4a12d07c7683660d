//! Meet day: which warm-up when, as JSON and as text.
//!
//! Refuses: to know a federation's rules.
use crate::language::{Language, c, p};
use crate::words::minutes;
use domain::MassUnit;
use domain::meet_day::{Call, Starter};
use schemars::JsonSchema;
use serde::Serialize;

/// What to do until the opener.
#[derive(Debug, Clone, Serialize, JsonSchema)]
#[schemars(deny_unknown_fields)]
pub struct MeetDoc {
    /// The lift.
    pub lift: String,
    /// The opener as it was told, exact, with unit; the platform's plates make it, not the gym's.
    pub opener: String,
    /// Until then, seconds.
    pub opener_in_s: u32,
    /// The pace that is reckoned with, seconds an attempt.
    pub pace_s: u32,
    /// Attempts before the opener, and how many of them are over.
    pub before: u16,
    /// See `before`.
    pub called: u16,
    /// Warm-ups to come, in order.
    pub warm_ups: Vec<WarmUpDoc>,
    /// Warm-ups for which there is no time any more.
    pub left_out: Vec<String>,
    /// What goes with it.
    pub caution: String,
}

/// One warm-up.
#[derive(Debug, Clone, Serialize, JsonSchema)]
#[schemars(deny_unknown_fields)]
pub struct WarmUpDoc {
    /// Load, exact, with unit.
    pub load: String,
    /// Reps.
    pub reps: u8,
    /// Plates of one side, inside to outside, with unit.
    pub per_side: Vec<String>,
    /// When, seconds from now.
    pub in_s: u32,
    /// How many attempts will be over by then.
    pub after_attempts: u16,
}

/// The document, with loads in `unit`.
#[must_use]
pub fn meet_doc(
    say: Language,
    lift: &str,
    unit: MassUnit,
    starter: &Starter,
    call: &Call,
    called: u16,
) -> MeetDoc {
    let timed = &call.timed;
    let rung = |number: u8| call.built.rungs.get(usize::from(number));
    MeetDoc {
        lift: lift.into(),
        opener: starter.opener.exact(starter.unit),
        opener_in_s: timed.opener_in_s,
        pace_s: timed.pace_s,
        before: starter.before,
        called,
        warm_ups: timed
            .warm_ups
            .iter()
            .filter_map(|warm_up| {
                let rung = rung(warm_up.number)?;
                Some(WarmUpDoc {
                    load: rung.load.exact(unit),
                    reps: rung.reps,
                    per_side: rung.per_side.iter().map(|p| p.mass.exact(p.unit)).collect(),
                    in_s: warm_up.in_s,
                    after_attempts: warm_up.after_attempts,
                })
            })
            .collect(),
        left_out: timed
            .left_out
            .iter()
            .filter_map(|number| rung(*number))
            .map(|rung| say.set(rung.load, unit, rung.reps))
            .collect(),
        caution: say.say(c::T_CAUTION),
    }
}

/// The same in plain text.
#[must_use]
pub fn meet_text(say: Language, doc: &MeetDoc) -> String {
    let head = say.fill(
        c::T_HEAD,
        &[
            &say.shipped(&doc.lift),
            &say.number(&doc.opener),
            &minutes(doc.opener_in_s),
            &(doc.before + 1).to_string(),
            &doc.called.to_string(),
            &doc.pace_s.to_string(),
        ],
    );
    let mut text = head + "\n";
    for warm_up in &doc.warm_ups {
        let when = match warm_up.in_s {
            0 => say.say(c::T_NOW),
            s => say.fill(c::T_IN, &[&minutes(s)]),
        };
        let each: Vec<String> = warm_up.per_side.iter().map(|p| say.number(p)).collect();
        let plates = match each.as_slice() {
            [] => say.say(p::EMPTY_BAR),
            each => say.fill(c::T_EACH_SIDE, &[&each.join(say.between())]),
        };
        let after = say.fill(c::T_AFTER, &[&warm_up.after_attempts.to_string()]);
        let set = format!("{} × {}", say.number(&warm_up.load), warm_up.reps);
        let (wide, tall) = (after.chars().count().max(18), 14);
        text.push_str(&format!(
            "  {when:<9} {after:<wide$} {set:<tall$} {plates}\n"
        ));
    }
    let out = say.say(c::T_LEFT_OUT);
    for left_out in &doc.left_out {
        let why = say.fill(c::T_NO_TIME, &[&say.number(left_out)]);
        text.push_str(&format!("  {out}  {why}\n"));
    }
    text.push_str(&format!("  {}\n", doc.caution));
    text
}

/// A whole day of several lifters.
#[derive(Debug, Clone, Serialize, JsonSchema)]
#[schemars(deny_unknown_fields)]
pub struct MeetDayDoc {
    /// What the day is called.
    pub name: String,
    /// The day, ISO 8601.
    pub date: String,
    /// Everybody of ours, flight by flight.
    pub starters: Vec<StarterDoc>,
}

/// One of ours in a flight.
#[derive(Debug, Clone, Serialize, JsonSchema)]
#[schemars(deny_unknown_fields)]
pub struct StarterDoc {
    /// Which flight of the file, from 1.
    pub flight: u8,
    /// Who.
    pub lifter: String,
    /// The lot number, where it is known.
    pub lot: Option<u16>,
    /// Whether the place is reckoned, since of the others the number alone is known.
    pub reckoned: bool,
    /// What to do.
    pub until: MeetDoc,
}

/// The day in plain text.
#[must_use]
pub fn meet_day_text(say: Language, doc: &MeetDayDoc) -> String {
    let mut text = format!("{}, {}\n", doc.name, doc.date);
    for starter in &doc.starters {
        let until = meet_text(say, &starter.until);
        text.push_str(&format!("\n{}: {until}", starter.lifter));
        if starter.reckoned {
            text.push_str(&format!("  {}\n", say.say(c::T_RECKONED)));
        }
    }
    text
}
