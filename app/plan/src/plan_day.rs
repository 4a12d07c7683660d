//! The day that facts mean together: a date, or a weekday of a week of the plan.
//!
//! Refuses: weeks that count from nowhere, a date that falls on another weekday.
use crate::facts::Facts;
use crate::fault::Wrong;
use crate::words::words;
use chrono::{NaiveDate, Weekday};

impl Facts {
    /// The day that is meant, with the Monday of week 1 where one was given.
    ///
    /// # Errors
    /// What is missing, or contradicts itself.
    pub(crate) fn day(&self, given: Option<NaiveDate>) -> Result<NaiveDate, Missing> {
        if let Some(date) = self.date {
            return match self.weekday {
                Some(weekday) if chrono::Datelike::weekday(&date) != weekday => {
                    Err(Missing::Agreement(date, weekday))
                }
                Some(_) | None => Ok(date),
            };
        }
        let monday = match (self.monday, given) {
            (Some(own), Some(given)) if own != given => return Err(Missing::OneMonday(own, given)),
            (own, given) => own.or(given),
        };
        let first = match (self.starts, self.week, monday) {
            (Some(monday), ..) => Some(monday),
            (None, Some(week), Some(monday)) => {
                monday.checked_add_days(chrono::Days::new(7 * u64::from(week - 1)))
            }
            (None, None, Some(monday)) if self.weekday.is_some() => Some(monday),
            (None, Some(_), None) | (None, None, _) => None,
        };
        match (first, self.weekday) {
            (Some(monday), Some(weekday)) => {
                let days = u64::from(weekday.num_days_from_monday());
                monday
                    .checked_add_days(chrono::Days::new(days))
                    .ok_or(Missing::Day)
            }
            (Some(_), None) => Err(Missing::Weekday),
            (None, Some(_)) => Err(Missing::Monday),
            (None, None) if self.week.is_some() => Err(Missing::Weekday),
            (None, None) => Err(Missing::Day),
        }
    }
}

/// Why there is no day.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Missing {
    /// Nothing says it.
    Day,
    /// A week without a day of it.
    Weekday,
    /// A day of the week without the Monday that weeks count from.
    Monday,
    /// A date that falls on another day of the week.
    Agreement(NaiveDate, Weekday),
    /// Two first Mondays.
    OneMonday(NaiveDate, NaiveDate),
}

impl Missing {
    /// What is told of it.
    pub(crate) fn wrong(self) -> Wrong {
        match self {
            Self::Day => Wrong::plain(words!("no day"), words!("write the date")),
            Self::Weekday => Wrong::plain(
                words!("a week without a day of it"),
                words!("write the weekday, or the date"),
            ),
            Self::Monday => Wrong::plain(
                words!("a weekday without the Monday that week 1 begins on"),
                words!(
                    "write \"first Monday: 2026-12-07\" above the plan, give --monday 2026-12-07, or write the dates"
                ),
            ),
            Self::Agreement(date, weekday) => Wrong::plain(
                words!("{0}, which is no {1}", date.to_string(), day_name(weekday)),
                words!("write the date or the weekday that is meant"),
            ),
            Self::OneMonday(own, given) => Wrong::plain(
                words!(
                    "two first Mondays, {0} and {1}",
                    own.to_string(),
                    given.to_string()
                ),
                words!("keep one of them"),
            ),
        }
    }
}

fn day_name(weekday: Weekday) -> crate::words::Words {
    match weekday {
        Weekday::Mon => words!("Monday"),
        Weekday::Tue => words!("Tuesday"),
        Weekday::Wed => words!("Wednesday"),
        Weekday::Thu => words!("Thursday"),
        Weekday::Fri => words!("Friday"),
        Weekday::Sat => words!("Saturday"),
        Weekday::Sun => words!("Sunday"),
    }
}
