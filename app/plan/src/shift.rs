//! Moves a plan by whole weeks, so that a demo is never out of date. Refuses: to read the clock.
use chrono::{Datelike as _, Days, NaiveDate};
use domain::Prescription;

/// Moves all rows by the same number of whole weeks, weekdays kept, so that the week that holds
/// `to` (Monday to Sunday, ISO 8601) becomes the second week of the plan. Rows that would leave
/// the calendar stay where they are; nothing happens without rows.
#[must_use]
pub fn shift_weeks(mut rows: Vec<Prescription>, to: NaiveDate) -> Vec<Prescription> {
    let Some(first) = rows.iter().map(|row| row.date).min() else {
        return rows;
    };
    let monday = |day: NaiveDate| {
        let back = Days::new(u64::from(day.weekday().num_days_from_monday()));
        day.checked_sub_days(back).unwrap_or(day)
    };
    let Some(second) = monday(first).checked_add_days(Days::new(7)) else {
        return rows;
    };
    let by = monday(to).signed_duration_since(second);
    for row in &mut rows {
        row.date = row.date.checked_add_signed(by).unwrap_or(row.date);
    }
    rows
}
