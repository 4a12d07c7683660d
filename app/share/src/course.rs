//! The course of a lift: each day's heaviest work set with what is known of it, and its weeks.
//! Estimates compare as exact integers.
//!
//! Refuses: judging; what counts as hard is told beside it.
use chrono::{Datelike as _, Days, NaiveDate};
use journal::{Mass, MassUnit, RecordError, RecordReader, SetRow, SetsOf};
use std::collections::BTreeMap;
use std::ops::ControlFlow;

/// Sets of more reps say little of a single.
const ESTIMATE_REPS_MAX: u8 = 10;

/// One day of a lift.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(crate) struct CourseDay {
    pub(crate) date: NaiveDate,
    /// The heaviest work set with a rep or more, and its reps.
    pub(crate) heaviest: Mass,
    pub(crate) reps: u8,
    /// The best estimate of a single.
    pub(crate) estimate: Option<Mass>,
    /// Whether the heaviest set is heavier than all before.
    pub(crate) is_best: bool,
    /// Whether reps were missed.
    pub(crate) missed: bool,
    /// Whether the back moved.
    pub(crate) moved: bool,
}

/// One week of a lift.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(crate) struct CourseWeek {
    pub(crate) monday: NaiveDate,
    /// Load times reps of its work sets, nanograms.
    pub(crate) volume: i128,
    pub(crate) sets: u32,
    pub(crate) hard: u32,
    pub(crate) reps: u32,
    pub(crate) planned: u32,
}

/// A lift of a lifter, oldest first.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(crate) struct Course {
    pub(crate) lift: String,
    pub(crate) unit: MassUnit,
    pub(crate) days: Vec<CourseDay>,
    pub(crate) weeks: Vec<CourseWeek>,
}

/// A single's estimate: load times (1 + reps / 30), whole nanograms.
fn estimate(load: Mass, reps: u8) -> Option<Mass> {
    let counts = (1..=ESTIMATE_REPS_MAX).contains(&reps) && load > Mass::ZERO;
    let singles = match reps {
        1 => 30,
        reps => 30 + i64::from(reps),
    };
    let ng = load.ng().checked_mul(singles)?;
    counts.then(|| Mass::from_ng(ng / 30))
}

/// Every lift of a lifter, by name.
pub(crate) fn courses(record: &RecordReader, lifter: &str) -> Result<Vec<Course>, RecordError> {
    let mut lifts: BTreeMap<String, Vec<SetRow>> = BTreeMap::new();
    let of = SetsOf {
        lifter: Some(lifter.to_owned()),
        ..SetsOf::default()
    };
    record.each_set_of(&of, |set| {
        if set.is_work() {
            lifts.entry(set.lift.clone()).or_default().push(set);
        }
        ControlFlow::Continue(())
    })?;
    Ok(lifts
        .into_iter()
        .map(|(lift, sets)| course(lift, sets))
        .collect())
}

fn course(lift: String, mut sets: Vec<SetRow>) -> Course {
    // A date may have been put right after others were entered.
    sets.sort_by(|a, b| (&a.date, a.seq).cmp(&(&b.date, b.seq)));
    let unit = sets.last().map(|set| set.unit).unwrap_or_default();
    let (mut days, mut weeks) = (Vec::new(), Vec::<CourseWeek>::new());
    let (mut heaviest, mut best) = (Mass::ZERO, Mass::ZERO);
    for of_day in sets.chunk_by(|a, b| a.date == b.date) {
        let Some(date) = of_day.first().and_then(|set| set.date.parse().ok()) else {
            continue;
        };
        let estimates = of_day.iter().filter_map(|set| estimate(set.load, set.reps));
        let top = estimates.max();
        best = best.max(top.unwrap_or(Mass::ZERO));
        let is_hard = |set: &&SetRow| {
            let near = estimate(set.load, set.reps);
            let near =
                near.is_some_and(|near| i128::from(near.ng()) * 10 >= i128::from(best.ng()) * 9);
            near || set.reps < set.planned_reps
        };
        let monday = monday(date);
        if weeks.last().is_none_or(|week| week.monday != monday) {
            weeks.push(CourseWeek {
                monday,
                volume: 0,
                sets: 0,
                hard: 0,
                reps: 0,
                planned: 0,
            });
        }
        let Some(week) = weeks.last_mut() else {
            continue;
        };
        for set in of_day {
            week.volume += i128::from(set.load.ng()) * i128::from(set.reps);
            week.sets += 1;
            week.hard += u32::from(is_hard(&set));
            week.reps += u32::from(set.reps);
            week.planned += u32::from(set.planned_reps);
        }
        let done = of_day.iter().filter(|set| set.reps > 0);
        let Some(set) = done.max_by_key(|set| (set.load, set.reps)) else {
            continue;
        };
        days.push(CourseDay {
            date,
            heaviest: set.load,
            reps: set.reps,
            estimate: top,
            is_best: set.load > heaviest,
            missed: of_day.iter().any(|set| set.reps < set.planned_reps),
            moved: of_day.iter().any(|set| set.back_moved_at.is_some()),
        });
        heaviest = heaviest.max(set.load);
    }
    Course {
        lift,
        unit,
        days,
        weeks,
    }
}

impl Course {
    /// The same of some days alone, its weeks whole; what was a best before them still counts.
    pub(crate) fn within(mut self, from: NaiveDate, to: NaiveDate) -> Self {
        self.days.retain(|day| (from..=to).contains(&day.date));
        let first = monday(from);
        self.weeks
            .retain(|week| (first..=to).contains(&week.monday));
        self
    }
}

pub(crate) fn monday(day: NaiveDate) -> NaiveDate {
    let since = Days::new(day.weekday().num_days_from_monday().into());
    day.checked_sub_days(since).unwrap_or(day)
}

#[cfg(test)]
#[path = "course_tests.rs"]
mod tests;
