//! Next time: the work load that follows from how a lift went, by the coach's rules.
//!
//! Two steps. [`decide`] looks at the outings of one track, oldest first, and says what follows
//! from the last one; that is recorded. [`Standing::on`] then says what holds of it on a day: who
//! was away or ill is eased, a back that moved in another pull of the family holds the load, who is
//! hurt has nothing due. Each says what it follows from, so that it can be read and argued with.
//! The figures are common practice, no source, unless one is named; a coach can change each of
//! them.
use self::went::Went;
use crate::lift_no::LiftNo;
use crate::mass::Mass;
use chrono::NaiveDate;

pub mod away;
pub mod coach_list;
pub mod here;
mod made;
pub mod outing;
pub mod outings;
mod reason;
mod replay;
mod round;
mod rule;
pub mod season;
mod spacing;
pub mod time;
mod today;
mod went;

pub use replay::{Standing, decide};
pub(crate) use round::{share_of, step_of};
pub use rule::{Limits, RAISE_MOST, Rule, Step};
pub use season::{FamilyTime, Ill, Season};
pub use time::{Decided, Due, NextTime, Ruled, ruled};

/// Which way the load goes.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Verdict {
    /// Up.
    Raise,
    /// The same again.
    Repeat,
    /// Down a little, to build up anew.
    Drop,
    /// Down further, after getting stuck; for the coach to look at.
    Reset,
    /// Down after a break.
    Ease,
}

/// Why, beside how it went.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Why {
    /// It went well.
    Well,
    /// It went well on the way back from a break, below the best: two steps at once.
    Back,
    /// It went well, and the next load that the plates make is too far up.
    NoStep,
    /// It went well, with less than was due: a lighter day that somebody chose.
    Light,
    /// All sets are within the range of reps, and not all at its top.
    Range,
    /// It went well, and was harder than the plan asked.
    Hard,
    /// It fell short or the back moved late, and the load gets another try.
    TryAgain,
    /// It was cut short with all that was done clean.
    Cut,
    /// All tries are used up.
    OutOfTries,
    /// The back moved, or the reps failed, so early that trying again is no use.
    TooMuch,
    /// Drops without a new best are used up: the load is held until the coach has answered.
    Stuck,
    /// The coach was asked and has not answered yet.
    Waiting,
    /// A break: eased, or held where it was short.
    Away,
    /// Away so long that the lift begins anew with the coach: nothing is due.
    Anew,
    /// An illness: eased, or held where it was short.
    Ill,
    /// The back moved in another pull of the family since.
    Family,
    /// One pull after the other of the family went wrong: the load is held until the coach has
    /// answered.
    OverReaching,
    /// The track was not done for long, while others of its family were.
    LongAgo,
    /// A week's rise is used up.
    Week,
    /// Somebody who is hurt: nothing is due.
    Hurt,
    /// The coach ruled otherwise, whatever the rules gave.
    Coach,
}

impl Why {
    /// Whether the load waits for the coach's word.
    #[must_use]
    pub const fn asks_coach(self) -> bool {
        matches!(
            self,
            Self::Stuck | Self::Waiting | Self::OverReaching | Self::Anew | Self::Hurt
        )
    }
}

/// What is due next time, with what it follows from.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Decision {
    /// Up, same, down.
    pub verdict: Verdict,
    /// Why.
    pub why: Why,
    /// The lift that it follows from.
    pub after: LiftNo,
    /// The day of that lift.
    pub date: NaiveDate,
    /// How that lift went.
    pub went: Went,
    /// Work sets asked then.
    pub sets: u8,
    /// Reps of a set asked then, and again.
    pub reps: u8,
    /// The load that the change is reckoned from.
    pub from: Mass,
    /// Which try of that load it was.
    pub nth: u8,
    /// How many tries it has.
    pub tries: u8,
    /// What the rule wants.
    pub wished: Mass,
    /// What the gym can load of that.
    pub load: Mass,
    /// Days that count as a break: of absence beyond the programme's spacing, of illness more.
    pub away_days: u16,
}

impl Decision {
    /// The load that is due; `None` for somebody hurt, and where a lift begins anew with the coach.
    #[must_use]
    pub const fn due(&self) -> Option<Mass> {
        if matches!(self.why, Why::Anew | Why::Hurt) {
            None
        } else {
            Some(self.load)
        }
    }
}
