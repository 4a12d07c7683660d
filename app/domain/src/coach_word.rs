//! What a coach says of a lifter beside loads: hurt, fit again, ill, and that a load which looks
//! wrong is meant.
//!
//! Says nothing of what somebody has; that is for a clinician.
use crate::mass::Mass;
use crate::next::Ill;
use alloc::string::String;
use alloc::vec::Vec;
use chrono::NaiveDate;

/// What a coach says.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct CoachWord {
    /// Of whom.
    pub lifter: String,
    /// What.
    pub what: CoachSays,
    /// The coach's words, at least one and at most [`crate::decide::NOTE_MAX`] characters.
    pub note: String,
}

/// What can be said.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum CoachSays {
    /// Hurt since a day: nothing is due until the coach says otherwise.
    Hurt {
        /// The first day.
        since: NaiveDate,
    },
    /// Fit again.
    Fit,
    /// Ill from a day to a day.
    Ill(Ill),
    /// A load of a day that looks wrong is meant.
    LoadMeant {
        /// Which lift.
        lift: String,
        /// The day.
        date: NaiveDate,
        /// The load.
        load: Mass,
    },
}

/// One lifter's health and what was said of their loads.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct Health {
    /// A hurt that the coach has not lifted.
    pub hurt: Option<Hurt>,
    /// Illnesses, as entered.
    pub ill: Vec<Ill>,
    /// Loads that look wrong and are meant: lift, day, load.
    pub meant: Vec<(String, NaiveDate, Mass)>,
}

/// A hurt.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Hurt {
    /// The first day.
    pub since: NaiveDate,
    /// The coach's words.
    pub note: String,
}

impl Health {
    /// Whether somebody is hurt.
    #[must_use]
    pub const fn is_hurt(&self) -> bool {
        self.hurt.is_some()
    }

    /// Takes a word in.
    pub fn hear(&mut self, word: &CoachWord) {
        match &word.what {
            CoachSays::Hurt { since } => {
                self.hurt = Some(Hurt {
                    since: *since,
                    note: word.note.clone(),
                });
            }
            CoachSays::Fit => self.hurt = None,
            CoachSays::Ill(ill) => self.ill.push(*ill),
            CoachSays::LoadMeant { lift, date, load } => {
                self.meant.push((lift.clone(), *date, *load));
            }
        }
    }

    /// Whether the coach said that a load of a day is meant.
    #[must_use]
    pub fn is_meant(&self, lift: &str, date: NaiveDate, load: Mass) -> bool {
        let meant = |(of, day, said): &(String, NaiveDate, Mass)| {
            of == lift && *day == date && *said == load
        };
        self.meant.iter().any(meant)
    }
}
