//! Refusals and faults in words, in a language. Refuses: hiding a detail; what another program
//! reported stays as it says it.
use crate::{Language, Phrase, keys as p};
use domain::decide::{NOTE_MAX, REPS_MAX};
use domain::solve::Constraint;
use domain::{Mass, MassUnit, Refusal};

impl Language {
    /// Why a command was refused, then what to do.
    #[must_use]
    pub fn refusal(self, refusal: &Refusal) -> String {
        let plain = |phrase: Phrase| self.say(phrase);
        match refusal {
            Refusal::EmptyPlan => plain(p::X_EMPTY_PLAN),
            Refusal::NothingPlanned => plain(p::X_NOTHING_PLANNED),
            Refusal::EmptyLadder => plain(p::X_EMPTY_LADDER),
            Refusal::UnderWay { lifter, lift } => {
                self.fill(p::X_UNDER_WAY, &[lifter, &self.shipped(lift)])
            }
            Refusal::NoSuchLift => plain(p::X_NO_SUCH_LIFT),
            Refusal::NotTheRungOfNow => plain(p::X_NOT_THE_RUNG),
            Refusal::Over => plain(p::X_OVER),
            Refusal::DecideFirst => plain(p::X_DECIDE_FIRST),
            Refusal::NothingToDecide => plain(p::X_NOTHING_TO_DECIDE),
            Refusal::StaleRotation => plain(p::X_STALE_ROTATION),
            Refusal::NotTheTimeToSettle => plain(p::X_NOT_THE_TIME),
            Refusal::StaleDecision => plain(p::X_STALE_DECISION),
            Refusal::NothingDecided => plain(p::X_NOTHING_DECIDED),
            Refusal::LoadOutOfRange(load) => {
                self.fill(p::X_LOAD, &[&self.mass(*load, MassUnit::Kg)])
            }
            Refusal::NoteLength(0) => plain(p::X_NO_NOTE),
            Refusal::NoteLength(long) => {
                self.fill(p::X_NOTE, &[&long.to_string(), &NOTE_MAX.to_string()])
            }
            Refusal::LongerOutOfRange(seconds) => {
                let most = domain::attendance::LONGER_MOST_S;
                self.fill(p::X_LONGER, &[&seconds.to_string(), &most.to_string()])
            }
            Refusal::NotHurt(name) => self.fill(p::X_NOT_HURT, &[name]),
            Refusal::IllBackwards(ill) => {
                let (from, to) = (ill.from.to_string(), ill.to.to_string());
                self.fill(p::X_ILL_BACKWARDS, &[&to, &from])
            }
            Refusal::NothingSaid => plain(p::X_NOTHING_SAID),
            Refusal::NotLeftOpen => plain(p::days::X_NOT_LEFT_OPEN),
            Refusal::LeftOpen => plain(p::days::X_LEFT_OPEN),
            Refusal::DoneElsewhere => plain(p::days::X_DONE_ELSEWHERE),
            Refusal::KnownElsewhere => plain(p::days::X_KNOWN_ELSEWHERE),
            Refusal::DateKnown => plain(p::days::X_DATE_KNOWN),
            Refusal::RepsOutOfRange(reps) => {
                self.fill(p::X_REPS, &[&reps.to_string(), &REPS_MAX.to_string()])
            }
        }
    }

    /// That the wall clock was never set, so that the date is a guess.
    #[must_use]
    pub fn clock_unset(self) -> String {
        self.say(p::days::CLOCK_UNSET)
    }

    /// A fault of a file: where it is, as the language says it, and what the checker found. The
    /// place is a row and a column, by number or by name.
    #[must_use]
    pub fn fault(
        self,
        file: &str,
        (row, column): (Option<usize>, Option<&str>),
        found: &str,
    ) -> String {
        let place = match (row, column) {
            (Some(row), Some(column)) => {
                self.fill(p::FAULT_CELL, &[file, &row.to_string(), column])
            }
            (Some(row), None) => self.fill(p::FAULT_ROW, &[file, &row.to_string()]),
            (None, _) => file.to_owned(),
        };
        format!("{place}: {found}")
    }

    /// What a checker found and would have, both in this language.
    #[must_use]
    pub fn found(self, read: &str, right: &str) -> String {
        self.fill(p::FAULT_FOUND, &[read, right])
    }

    /// One of several sentences, and how many more there are.
    #[must_use]
    pub fn and_more(self, first: &str, more: usize) -> String {
        match more {
            0 => first.to_owned(),
            more => self.fill(p::AND_MORE, &[first, &more.to_string()]),
        }
    }

    /// Something of the machine failed, in its own words.
    #[must_use]
    pub fn went_wrong(self, why: &str) -> String {
        if self == Self::English {
            return why.to_owned();
        }
        self.fill(p::WENT_WRONG, &[why])
    }

    /// That the plates do not make a load, and what they make.
    pub(crate) fn not_made(
        self,
        unit: MassUnit,
        asked: Mass,
        (below, above): (Option<Mass>, Option<Mass>),
    ) -> String {
        let words = |mass: Mass| self.mass(mass, unit);
        let made = match (below, above) {
            (Some(below), Some(above)) => {
                self.fill(p::MADE_BETWEEN, &[&words(below), &words(above)])
            }
            (Some(most), None) => self.fill(p::MADE_AT_MOST, &[&words(most)]),
            (None, Some(least)) => self.fill(p::MADE_AT_LEAST, &[&words(least)]),
            (None, None) => self.say(p::MADE_NOTHING),
        };
        self.fill(p::NOT_MADE, &[&words(asked), &made])
    }

    /// Why no ladder can be loaded, as `domain` says it in English.
    pub(crate) fn no_ladder(self, constraint: Constraint, english: &str) -> String {
        let why = match (self, constraint) {
            (Self::English, _) => english.to_owned(),
            (_, Constraint::Range) => self.say(p::L_RANGE),
            (_, Constraint::Bar) => self.say(p::L_BAR),
            (_, Constraint::Inventory) => self.say(p::L_INVENTORY),
            (_, Constraint::Sleeve) => self.say(p::L_SLEEVE),
            (_, Constraint::BigInside) => self.say(p::L_BIG_INSIDE),
            (_, Constraint::Tolerance | Constraint::Hole) => self.say(p::L_TOLERANCE),
        };
        self.fill(p::NO_LADDER, &[&why])
    }
}
