//! The day that facts mean together: a date, or a weekday of a week of the plan.
//!
//! Refuses: weeks that count from nowhere, a date that falls on another weekday.
use crate::facts::Facts;
use crate::fault::Wrong;
use crate::words::words;
use chrono::{NaiveDate, Weekday};
use text::keys::checked as k;

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
            Self::Day => Wrong::plain(words!(k::NO_DAY), words!(k::WRITE_THE_DATE)),
            Self::Weekday => Wrong::plain(
                words!(k::A_WEEK_WITHOUT_A_DAY),
                words!(k::WRITE_THE_WEEKDAY_OR_THE),
            ),
            Self::Monday => Wrong::plain(
                words!(k::A_WEEKDAY_WITHOUT_THE_MONDAY),
                words!(k::WRITE_FIRST_MONDAY_2026_12),
            ),
            Self::Agreement(date, weekday) => Wrong::plain(
                words!(k::WHICH_IS_NO, date.to_string(), day_name(weekday)),
                words!(k::WRITE_THE_DATE_OR_THE),
            ),
            Self::OneMonday(own, given) => Wrong::plain(
                words!(k::TWO_FIRST_MONDAYS_AND, own.to_string(), given.to_string()),
                words!(k::KEEP_ONE_OF_THEM),
            ),
        }
    }
}

fn day_name(weekday: Weekday) -> crate::words::Words {
    match weekday {
        Weekday::Mon => words!(k::MONDAY),
        Weekday::Tue => words!(k::TUESDAY),
        Weekday::Wed => words!(k::WEDNESDAY),
        Weekday::Thu => words!(k::THURSDAY),
        Weekday::Fri => words!(k::FRIDAY),
        Weekday::Sat => words!(k::SATURDAY),
        Weekday::Sun => words!(k::SUNDAY),
    }
}
