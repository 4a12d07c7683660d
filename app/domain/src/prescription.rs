//! One row of a coach's plan. Refuses: what it means for plates; that is the sheet's work.
use crate::mass::Mass;
use alloc::string::String;
use chrono::NaiveDate;

/// What one lifter is to do of one lift on one day.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Prescription {
    /// The day.
    pub date: NaiveDate,
    /// The lifter's name, as in the gym's file.
    pub lifter: String,
    /// The lift's name, as in the gym's file.
    pub lift: String,
    /// Work sets, 1 to 20.
    pub sets: u8,
    /// Reps of a work set, 1 to 50.
    pub reps: u8,
    /// The work load.
    pub load: LoadWish,
    /// Name of the warm-up pattern; `None` for the lifter's own.
    pub ladder: Option<String>,
    /// Rest before a work set in seconds; `None` for the lift's own.
    pub rest_s: Option<u32>,
    /// The coach's words.
    pub note: String,
}

/// How a plan names a load.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum LoadWish {
    /// So much, bar and collars included.
    Mass(Mass),
    /// So many hundredths of a percent of the lifter's recorded best of the lift.
    OfBest(u32),
}
