//! Why a command is refused, in the words of the log and the command line.
use super::{LOAD_MAX, NOTE_MAX, REPS_MAX};
use crate::mass::{Mass, MassUnit};
use crate::next::Ill;
use alloc::string::String;
use core::fmt;

/// Why a command is refused.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Refusal {
    /// The plan has no rows.
    EmptyPlan,
    /// The plan has nothing for that lifter's day.
    NothingPlanned,
    /// The sheet has no rungs.
    EmptyLadder,
    /// The lifter has another lift under way, of this name.
    UnderWay {
        /// Who.
        lifter: String,
        /// What is under way.
        lift: String,
    },
    /// No such lift stands.
    NoSuchLift,
    /// That rung is not the one of now: the screen was late.
    NotTheRungOfNow,
    /// The lift is over.
    Over,
    /// The back moved: somebody must say whether to end or to go on.
    DecideFirst,
    /// Nothing to go on from.
    NothingToDecide,
    /// The order was planned for something that no longer stands.
    StaleRotation,
    /// The load is settled after the last warm-up, before the first work set, and once.
    NotTheTimeToSettle,
    /// What was to be recorded does not follow from the lift as it stands.
    StaleDecision,
    /// Nothing was decided after that lift, so there is nothing to rule otherwise.
    NothingDecided,
    /// A load of nothing, or over [`LOAD_MAX`].
    LoadOutOfRange(Mass),
    /// No note, or one longer than [`NOTE_MAX`]; its length.
    NoteLength(usize),
    /// The lift was not left open, so there is nothing to open again.
    NotLeftOpen,
    /// It was left open and closed; only the coach opens it again.
    LeftOpen,
    /// The date of that lift is no guess.
    DateKnown,
    /// More reps than [`REPS_MAX`], or a rep 0 for the moved back.
    RepsOutOfRange(u8),
    /// A longer rest of no seconds, or of more than may be asked for.
    LongerOutOfRange(u16),
    /// Somebody is said to be fit who is not hurt.
    NotHurt(String),
    /// An illness that ends before it begins.
    IllBackwards(Ill),
    /// Nothing was said about that bar that could be taken back.
    NothingSaid,
    /// It was done at another kiosk; what was entered there is taken back there.
    DoneElsewhere,
    /// What another kiosk tells of a lift stands already, or is of one too old to change.
    KnownElsewhere,
}

impl fmt::Display for Refusal {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::EmptyPlan => f.write_str("the plan has no rows; write at least one"),
            Self::NothingPlanned => f.write_str("the plan has nothing for that day; look again"),
            Self::EmptyLadder => f.write_str("the sheet has no rungs; check the plan's load"),
            Self::UnderWay { lifter, lift } => {
                write!(f, "{lifter} is under way with the {lift}; end it first")
            }
            Self::NoSuchLift => f.write_str("no such lift is under way; choose the lifter again"),
            Self::NotTheRungOfNow => f.write_str("that rung is already entered; look again"),
            Self::Over => f.write_str("the lift is over; undo to enter more"),
            Self::DecideFirst => f.write_str("the back moved; end the lift or go on first"),
            Self::NothingToDecide => f.write_str("the back did not move; enter the set"),
            Self::StaleRotation => f.write_str("the order of turns is out of date; plan it anew"),
            Self::NotTheTimeToSettle => f.write_str(
                "the load is settled once, between the last warm-up and the first work set; undo \
                 to come back there",
            ),
            Self::StaleDecision => f.write_str("the lift goes on; decide when it is over"),
            Self::NothingDecided => {
                f.write_str("nothing was decided after that lift; write the load into the plan")
            }
            Self::LoadOutOfRange(load) => {
                let (load, most) = (load.exact(MassUnit::Kg), LOAD_MAX.exact(MassUnit::Kg));
                write!(
                    f,
                    "{load} is out of range; rule from more than nothing to {most}"
                )
            }
            Self::NoteLength(0) => f.write_str("the note is missing; say why in a few words"),
            Self::NoteLength(long) => {
                write!(f, "the note has {long} characters; use at most {NOTE_MAX}")
            }
            Self::LongerOutOfRange(seconds) => {
                let most = crate::attendance::LONGER_MOST_S;
                write!(f, "{seconds} s is out of range; ask for 1 to {most} s")
            }
            Self::NotHurt(name) => write!(f, "{name} is not entered as hurt; nothing to lift"),
            Self::IllBackwards(ill) => {
                let Ill { from, to } = ill;
                write!(
                    f,
                    "{to} is before {from}, on which it began; write from, then to"
                )
            }
            Self::NothingSaid => f.write_str("nothing was said about that bar; say what it holds"),
            Self::DoneElsewhere => {
                f.write_str("that lift was done at another rack; take it back there")
            }
            Self::KnownElsewhere => f.write_str("what was done elsewhere is known; nothing to do"),
            Self::NotLeftOpen => f.write_str("that lift was not left open; choose one that was"),
            Self::LeftOpen => f.write_str(
                "the lift was left open and closed the next day; the coach can open it again",
            ),
            Self::DateKnown => f.write_str("the date of that lift is known; it stays"),
            Self::RepsOutOfRange(reps) => {
                write!(
                    f,
                    "{reps} is out of range; reps go from 0 to {REPS_MAX}, the moved rep from 1"
                )
            }
        }
    }
}
