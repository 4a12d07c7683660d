//! Today at the rack: one entry a lifter and lift, with its sheet or why there is none.
//!
//! Refuses: guessing. What is not measured, not written or not loadable is said.
use crate::sheet::LiftSheet;
use alloc::string::String;
use core::fmt;

/// One lifter's one lift of a day.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct DayEntry {
    /// Who.
    pub lifter: String,
    /// What; empty when nothing is planned.
    pub lift: String,
    /// The sheet, or why there is none.
    pub outcome: Result<LiftSheet, NoSheet>,
}

/// Why there is no sheet.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum NoSheet {
    /// The plan has nothing for this lifter today.
    NothingToday,
    /// The gym's files miss something that the plan or the lifter names.
    Missing {
        /// "lift", "rack", "bar", "plate set", "warm-up pattern".
        what: &'static str,
        /// Its name.
        name: String,
    },
    /// A percentage of a best that nobody recorded.
    NoBest,
    /// No ladder can be loaded; why.
    NoLadder(String),
}

impl fmt::Display for NoSheet {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::NothingToday => f.write_str("nothing today"),
            Self::Missing { what, name } => {
                write!(
                    f,
                    "no {what} is called \"{name}\"; write it into the gym's files"
                )
            }
            Self::NoBest => f.write_str("no best is recorded; write the load as a mass"),
            Self::NoLadder(why) => write!(f, "{why}; ask the coach for another load"),
        }
    }
}
