//! The phrases of the pages, and the language of a page.
//!
//! Files and documents stay in English; words that people wrote stay as written.
use chrono::NaiveDate;
pub(crate) use text::keys::page::*;
use view::Language;

/// "Monday 2 March 2026"; a day that the calendar does not have stays as it is.
pub(crate) fn long_day(say: Language, date: &str) -> String {
    let year = date.split('-').next().unwrap_or_default();
    let day = date.parse::<NaiveDate>();
    day.map_or_else(
        |_| date.to_owned(),
        |day| format!("{} {year}", say.date(day)),
    )
}

/// "2 Mar 2026"; a day that the calendar does not have stays as it is.
pub(crate) fn day_and_year(say: Language, date: &str) -> String {
    let year = date.split('-').next().unwrap_or_default();
    let day = date.parse::<NaiveDate>();
    day.map_or_else(
        |_| date.to_owned(),
        |day| format!("{} {year}", say.short_date(day)),
    )
}

/// "Mon 2 Mar": of a week whose year stands above it.
pub(crate) fn day_of_week(say: Language, day: NaiveDate) -> String {
    let words = say.short_day(day);
    let year = |c: char| c.is_ascii_digit() || c == ' ';
    words.trim_end_matches(year).to_owned()
}

/// "Mon 2 Mar 2026"; a day that the calendar does not have stays as it is.
pub(crate) fn short_day(say: Language, date: &str) -> String {
    let day = date.parse::<NaiveDate>();
    day.map_or_else(|_| date.to_owned(), |day| say.short_day(day))
}
