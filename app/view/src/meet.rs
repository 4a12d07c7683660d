//! Meet day: which warm-up when, as JSON and as text.
//!
//! Refuses: to know a federation's rules.
use crate::language::{Language, c, p};
use crate::words::minutes;
use chrono::{NaiveTime, TimeDelta};
use domain::meet_day::{Call, Starter};
use domain::{Mass, MassUnit};
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
    /// When by the clock, "09:41", where the flight's start is written and it has not begun.
    pub opener_at: Option<String>,
    /// Until then, seconds; where the clock is told, from the time that the first warm-up wants.
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
    /// What is odd of the opener: that the record does not support it.
    pub odd: Option<String>,
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
    /// When by the clock, "09:21", where it is known.
    pub at: Option<String>,
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
    (called, now): (u16, Option<NaiveTime>),
) -> MeetDoc {
    let timed = &call.timed;
    let clock = |in_s: u32| {
        let after = TimeDelta::seconds(i64::from(in_s));
        now.map(|now| (now + after).format("%H:%M").to_string())
    };
    let rung = |number: u8| call.built.rungs.get(usize::from(number));
    MeetDoc {
        lift: lift.into(),
        opener: starter.opener.exact(starter.unit),
        opener_at: clock(timed.opener_in_s),
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
                    at: clock(warm_up.in_s),
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
        odd: None,
        caution: say.say(c::T_CAUTION),
    }
}

impl MeetDoc {
    /// The same with what is odd of the opener: over what is supported, or nothing supports it.
    #[must_use]
    pub fn judged(
        mut self,
        say: Language,
        odd: Option<(Mass, Option<Mass>)>,
        unit: MassUnit,
    ) -> Self {
        self.odd = odd.map(|(opener, supported)| match supported {
            Some(best) => say.fill(c::T_OPENER_OVER, &[&say.mass(best, unit)]),
            None => say.fill(p::NO_UNTRIED, &[&say.mass(opener, unit)]),
        });
        self
    }
}

/// The same in plain text.
#[must_use]
pub fn meet_text(say: Language, doc: &MeetDoc) -> String {
    let (lift, opener) = (say.shipped(&doc.lift), say.number(&doc.opener));
    let (attempt, pace) = ((doc.before + 1).to_string(), doc.pace_s.to_string());
    let head = match &doc.opener_at {
        Some(at) => say.fill(c::T_HEAD_AT, &[&lift, &opener, at, &attempt, &pace]),
        None => {
            let (left, over) = (minutes(doc.opener_in_s), doc.called.to_string());
            say.fill(c::T_HEAD, &[&lift, &opener, &left, &attempt, &over, &pace])
        }
    };
    let mut text = head + "\n";
    for warm_up in &doc.warm_ups {
        let when = match (&warm_up.at, warm_up.in_s) {
            (Some(clock), _) => clock.clone(),
            (None, 0) => say.say(c::T_NOW),
            (None, s) => say.fill(c::T_IN, &[&minutes(s)]),
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
    if let Some(odd) = &doc.odd {
        text.push_str(&format!("  {odd}\n"));
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
