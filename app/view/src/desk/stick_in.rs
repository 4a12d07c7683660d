//! Plans of a stick as they were read, and what taking them would change.
use crate::language::Said;
use chrono::NaiveDate;

/// A stick that was read; it may be gone since.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct StickIn {
    /// Which one: a wish names it, so that another stick is not meant.
    pub id: String,
    /// Its plans: name, and rows or faults.
    pub plans: Vec<(String, Result<usize, Vec<Said>>)>,
    /// What was passed over and why.
    pub passed: Vec<Said>,
    /// What taking all of it would change.
    pub changes: Vec<StickChange>,
    /// Whether all of it could be taken.
    pub can_take: bool,
}

/// What taking a stick's plans would change for one lifter.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct StickChange {
    /// Who.
    pub lifter: String,
    /// The first and last day.
    pub days: (NaiveDate, NaiveDate),
    /// Days that had no plan.
    pub new: usize,
    /// Days whose plan becomes another.
    pub changed: usize,
    /// Days whose plan stays as it is.
    pub same: usize,
}
