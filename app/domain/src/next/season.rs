//! What is around the outings of one track: the other pulls of its family, illness, hurt, the
//! programme's spacing, and the loads that the gym makes.
use super::{Limits, Rule};
use crate::lift_no::LiftNo;
use crate::moment::Moment;
use crate::solve::loads::Loads;
use chrono::NaiveDate;

/// One training of a lift of the family, as the other lifts see it.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct FamilyTime {
    /// The day.
    pub date: NaiveDate,
    /// Its number; within a day the later one has the higher.
    pub no: LiftNo,
    /// Which lift and track it was, the same number for the same.
    pub of: u16,
    /// Whether the back moved.
    pub moved: bool,
    /// Whether anything went wrong: a set that fell short, or the back.
    pub wrong: bool,
    /// When its last entry was made, to tell what the coach had seen when ruling.
    pub at: Moment,
}

/// An illness that the coach entered.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub struct Ill {
    /// The first day.
    pub from: NaiveDate,
    /// The last day.
    pub to: NaiveDate,
}

/// What is around one track.
#[derive(Debug, Clone, Copy)]
pub struct Season<'a> {
    /// The rule of the lift.
    pub rule: Rule,
    /// What holds on the day.
    pub limits: Limits,
    /// Days that the programme itself puts between two times of the track.
    pub spacing_days: u16,
    /// All trainings of the family, the track's own among them, oldest first.
    pub family: &'a [FamilyTime],
    /// Illnesses, in any order.
    pub ill: &'a [Ill],
    /// Since when the lifter is hurt.
    pub hurt: Option<NaiveDate>,
    /// What can be loaded.
    pub loads: &'a Loads,
}

impl<'a> Season<'a> {
    /// The trainings of the family before one outing.
    pub(super) fn family_before(&self, date: NaiveDate, no: LiftNo) -> &'a [FamilyTime] {
        let end = self
            .family
            .partition_point(|time| (time.date, time.no) < (date, no));
        &self.family[..end]
    }
}
