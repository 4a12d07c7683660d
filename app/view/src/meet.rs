//! Meet day: which warm-up when, as JSON and as text.
//!
//! Refuses: to know a federation's rules.
use crate::words;
use domain::ladder::BuiltLadder;
use domain::meet::Timed;
use domain::{Mass, MassUnit};
use schemars::JsonSchema;
use serde::Serialize;

/// What goes with every plan.
const CAUTION: &str = "a guide: watch the platform, and ask the referee what may be changed";

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

/// The document. `built` holds the warm-ups that were timed, and the opener as its work set.
#[must_use]
pub fn meet_doc(
    lift: &str,
    unit: MassUnit,
    opener: (Mass, MassUnit),
    built: &BuiltLadder,
    timed: &Timed,
    (before, called): (u16, u16),
) -> MeetDoc {
    let rung = |number: u8| built.rungs.get(usize::from(number));
    MeetDoc {
        lift: lift.into(),
        opener: opener.0.exact(opener.1),
        opener_in_s: timed.opener_in_s,
        pace_s: timed.pace_s,
        before,
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
            .map(|rung| words::set(rung.load, unit, rung.reps))
            .collect(),
        caution: CAUTION.into(),
    }
}

/// The same in plain text.
#[must_use]
pub fn meet_text(doc: &MeetDoc) -> String {
    let mut text = format!(
        "{}, opener {} in {}: attempt {} of the flight, {} over, {} s an attempt\n",
        doc.lift,
        doc.opener,
        words::minutes(doc.opener_in_s),
        doc.before + 1,
        doc.called,
        doc.pace_s
    );
    for warm_up in &doc.warm_ups {
        let when = match warm_up.in_s {
            0 => "now".into(),
            s => format!("in {}", words::minutes(s)),
        };
        let plates = match warm_up.per_side.as_slice() {
            [] => "empty bar".into(),
            plates => format!("each side {}", plates.join(", ")),
        };
        let set = format!("{} × {}", warm_up.load, warm_up.reps);
        text.push_str(&format!(
            "  {when:<9} after attempt {:<4} {set:<14} {plates}\n",
            warm_up.after_attempts
        ));
    }
    for left_out in &doc.left_out {
        text.push_str(&format!("  left out  {left_out}: no time for it\n"));
    }
    text.push_str(&format!("  {}\n", doc.caution));
    text
}
