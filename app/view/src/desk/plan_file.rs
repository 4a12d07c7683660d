//! A plan that a coach chose in a browser: as it came, as it was read, and what may be said of it.
//!
//! Refuses: telling its bytes to a log.
use super::stick_in::StickIn;
use crate::language::Said;
use chrono::NaiveDate;
use std::fmt;

/// A file as it came.
#[derive(Clone, PartialEq, Eq)]
pub struct PlanFile {
    /// By which it is known from now on; nobody guesses it.
    pub id: String,
    /// Its name, as the browser sent it.
    pub name: String,
    /// Its bytes.
    pub bytes: Vec<u8>,
}

impl fmt::Debug for PlanFile {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "PlanFile({} bytes)", self.bytes.len())
    }
}

/// A plan that was read, and waits to be taken.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct PlanIn {
    /// Its plan, what is odd or wrong with it, and what it would change, as of a stick.
    pub read: StickIn,
    /// By which what stands for its days is known to be as it was shown.
    pub mark: String,
    /// Its first rows.
    pub rows: Vec<PlanInRow>,
    /// How many rows it has.
    pub rows_count: usize,
}

/// One row, as it was understood.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct PlanInRow {
    /// The day.
    pub date: NaiveDate,
    /// Who.
    pub lifter: String,
    /// What.
    pub lift: String,
    /// "180 kg × 5".
    pub work: Said,
    /// The coach's words.
    pub note: String,
}
