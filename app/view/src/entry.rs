//! A pad of numbers: other reps, or the rep at which the back moved.
use crate::language::{Language, p};
use crate::stage::PadOpen;
use domain::state::LiftRun;

/// What it shows.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Entry {
    /// Which pad.
    pub pad: Pad,
    /// "How many reps at 130 kg?", "At which rep did the back move?".
    pub question: String,
    /// The numbers offered, in order; at most 12.
    pub numbers: Vec<u8>,
    /// The number planned, drawn quieter or outlined; 0 for none.
    pub planned: u8,
    /// Moved pad only: "stopped there" or "did all 5".
    pub through: String,
    /// Moved pad only: whether all reps were done all the same.
    pub through_on: bool,
}

/// Which pad.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Pad {
    /// Reps done, back held.
    Reps,
    /// Rep at which the back moved.
    Moved,
}

/// The most numbers on a pad.
const NUMBERS_MAX: u8 = 12;

pub(crate) fn pad_of(say: Language, run: &LiftRun, at: usize, pad: &PadOpen) -> Entry {
    let rung = &run.sheet.rungs[at];
    let load = say.mass(rung.load, run.sheet.unit);
    match pad {
        PadOpen::Reps | PadOpen::Turn | PadOpen::Holds(_) => {
            let asked = run.sheet.reps_of(at);
            let most = match asked.is_open() {
                // As many as go: from a little less than asked to as many as the pad has.
                true => asked.least.max(3) + NUMBERS_MAX - 3,
                false => rung.reps.saturating_add(3).max(7),
            };
            let least = most.saturating_sub(NUMBERS_MAX - 1);
            Entry {
                pad: Pad::Reps,
                question: say.fill(p::HOW_MANY_REPS, &[&load]),
                numbers: (least..=most).collect(),
                planned: rung.reps,
                through: String::new(),
                through_on: false,
            }
        }
        PadOpen::Effort => {
            let asked = run.sheet.group_of(at).and_then(|group| group.effort);
            let asked = asked.unwrap_or_default();
            Entry {
                pad: Pad::Reps,
                question: say.fill(p::groups::HOW_HARD, &[&say.effort(asked)]),
                numbers: (5..=10).collect(),
                planned: if asked.is_multiple_of(10) {
                    asked / 10
                } else {
                    0
                },
                through: String::new(),
                through_on: false,
            }
        }
        PadOpen::Moved { through } => Entry {
            pad: Pad::Moved,
            question: say.say(p::WHICH_REP),
            numbers: match run.sheet.reps_of(at).is_open() {
                true => (1..=NUMBERS_MAX).collect(),
                false => (1..=rung.reps.clamp(1, NUMBERS_MAX)).collect(),
            },
            planned: 0,
            through: match rung.reps {
                1 => say.say(p::DID_IT),
                reps => say.fill(p::DID_ALL, &[&reps.to_string()]),
            },
            through_on: *through,
        },
    }
}
