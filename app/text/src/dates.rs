//! Days and dates by language.
use crate::keys::dates::{
    DATE, DAY_OF_YEAR, DAYS, MONTHS, SHORT_DATE, SHORT_DAY, SHORT_DAYS, SHORT_MONTHS, WEEK_DAY,
};
use crate::{Language, Phrase};
use chrono::{Datelike as _, NaiveDate};

impl Language {
    /// "Wednesday 25 November".
    #[must_use]
    pub fn date(self, date: NaiveDate) -> String {
        let day = self.pick(day_of(&DAYS, date));
        self.fill(
            DATE,
            &[
                day,
                &date.day().to_string(),
                self.pick(month_of(&MONTHS, date)),
            ],
        )
    }

    /// "Wed 25 Nov 2026".
    #[must_use]
    pub fn short_day(self, date: NaiveDate) -> String {
        let day = self.pick(day_of(&SHORT_DAYS, date));
        self.fill(
            SHORT_DAY,
            &[day, &self.short_date(date), &date.year().to_string()],
        )
    }

    /// "Wed 25", the head of a column.
    #[must_use]
    pub fn week_day(self, date: NaiveDate) -> String {
        let day = self.pick(day_of(&SHORT_DAYS, date));
        self.fill(WEEK_DAY, &[day, &date.day().to_string()])
    }

    /// "25 November".
    #[must_use]
    pub fn day_of_year(self, date: NaiveDate) -> String {
        let month = self.pick(month_of(&MONTHS, date));
        self.fill(DAY_OF_YEAR, &[&date.day().to_string(), month])
    }

    /// "25 Nov".
    #[must_use]
    pub fn short_date(self, date: NaiveDate) -> String {
        let month = self.pick(month_of(&SHORT_MONTHS, date));
        self.fill(SHORT_DATE, &[&date.day().to_string(), month])
    }
}

fn day_of(days: &[Phrase; 7], date: NaiveDate) -> Phrase {
    days[date.weekday().num_days_from_monday() as usize]
}

fn month_of(months: &[Phrase; 12], date: NaiveDate) -> Phrase {
    months[date.month0() as usize]
}
