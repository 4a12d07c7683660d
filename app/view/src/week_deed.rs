//! What a coach changes of one lifter's week on the page, and by what the week that was looked at
//! is known again.
//!
//! Refuses: doing it; whoever keeps the plan checks it, whole or not at all.
use crate::desk::wish::DayRow;
use chrono::{Days, NaiveDate};
use domain::Prescription;
use domain::prescription::LoadWish;
use std::hash::{DefaultHasher, Hash as _, Hasher as _};

/// A change, and what its coach had before their eyes.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct WeekDeed {
    /// Whose plan.
    pub lifter: String,
    /// The first day of those that were looked at.
    pub first: NaiveDate,
    /// By which the lifter's plan of [`DAYS`] days from there is known to be as it was shown.
    pub mark: String,
    /// What.
    pub what: WeekChange,
    /// Whether it goes where something stands already: beside a plan, before a programme.
    pub beside: bool,
}

/// What is changed.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum WeekChange {
    /// A row, or all of a day, comes on another day.
    Move {
        /// From which day.
        from: NaiveDate,
        /// Which row of it, from 0; `None` for all.
        at: Option<usize>,
        /// To which day.
        to: NaiveDate,
    },
    /// A row is written, or taken off.
    Row {
        /// The day.
        date: NaiveDate,
        /// Which row of it, from 0; `None` for one more.
        at: Option<usize>,
        /// What it is to be; `None` to take it off.
        row: Option<DayRow>,
    },
}

/// Why nothing comes of it.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Unmoved {
    /// The lifter's plan is not as it was shown.
    Stale,
    /// It has been begun at the rack.
    Begun,
    /// That day is over.
    Over,
    /// Something stands there already.
    Taken,
    /// The same lift would stand twice on one day.
    Twice,
    /// The row has several set groups.
    Grouped,
}

/// Days that a mark is about: the week that was looked at, and the next.
pub const DAYS: u64 = 14;
/// How long ago a day may be whose plan is put on another, days.
pub const BACK: i64 = 28;

/// What is seen of a row of the plan.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct PlanLine<'r> {
    /// The day.
    pub date: NaiveDate,
    /// What.
    pub lift: &'r str,
    /// Work sets of all groups.
    pub sets: u32,
    /// Reps of one of the main ones.
    pub reps: u32,
    /// Their load.
    pub load: LoadWish,
    /// The coach's words.
    pub note: &'r str,
}

impl<'r> From<&'r Prescription> for PlanLine<'r> {
    fn from(row: &'r Prescription) -> Self {
        let main = row.main();
        Self {
            date: row.date,
            lift: &row.lift,
            sets: row.groups().map(|group| u32::from(group.sets)).sum(),
            reps: main.reps.planned().into(),
            load: main.load,
            note: &row.note,
        }
    }
}

/// By which rows of one lifter are known to be as they were shown: by day, and in the order in
/// which they stand there.
#[must_use]
pub fn mark<'r>(lines: impl Iterator<Item = PlanLine<'r>>) -> String {
    let mut hasher = DefaultHasher::new();
    for line in lines {
        format!("{line:?}").hash(&mut hasher);
    }
    format!("{:016x}", hasher.finish())
}

/// The last day that a mark is about which begins with `first`.
#[must_use]
pub fn last_of(first: NaiveDate) -> NaiveDate {
    first
        .checked_add_days(Days::new(DAYS - 1))
        .unwrap_or(NaiveDate::MAX)
}
