//! The day of a plan's row. Refuses: dates that two readers would read as two days.
use crate::fault::{Wrong, quote};
use chrono::{Datelike as _, NaiveDate};

const RIGHT: &str = "write year, month, day as \"2026-12-01\"";

/// Reads "2026-12-01", "2026/12/01", "2026.12.01" or, with dots, "01.12.2026".
pub(crate) fn date(text: &str) -> Result<NaiveDate, Wrong> {
    let plain = text.trim();
    let mark = plain.chars().find(|c| !c.is_ascii_digit());
    let Some(mark) = mark.filter(|mark| ['-', '.', '/'].contains(mark)) else {
        return Err(no_mark(text, plain));
    };
    let parts: Vec<_> = plain.split(mark).collect();
    let short = |part: &&str| (1..=2).contains(&part.len());
    let digits = |part: &str| part.bytes().all(|b| b.is_ascii_digit());
    if !plain.split(mark).all(digits) {
        return Err(Wrong::value(text, "not a date", RIGHT));
    }
    match parts.as_slice() {
        [year, month, day] if year.len() == 4 && short(month) && short(day) => {
            calendar(text, year, month, day)
        }
        [day, month, year] if year.len() == 4 && short(month) && short(day) => {
            if mark == '.' {
                calendar(text, year, month, day)
            } else {
                Err(either(text, [*day, *month], year))
            }
        }
        [a, b, c] if short(a) && short(b) && short(c) => Err(Wrong::value(
            text,
            "a date with a year of two digits",
            RIGHT,
        )),
        _ => Err(Wrong::value(text, "not a date", RIGHT)),
    }
}

/// A date without any mark between its parts.
fn no_mark(text: &str, plain: &str) -> Wrong {
    if plain.len() == 5 && plain.bytes().all(|b| b.is_ascii_digit()) {
        let right = "format the cells as dates such as \"2026-12-01\" and save again";
        Wrong::value(text, "a spreadsheet's number of a day", right)
    } else {
        Wrong::value(text, "not a date", RIGHT)
    }
}

/// Makes a day of three numbers, if the calendar has it.
fn calendar(text: &str, year: &str, month: &str, day: &str) -> Result<NaiveDate, Wrong> {
    let date = year
        .parse()
        .ok()
        .and_then(|year| NaiveDate::from_ymd_opt(year, month.parse().ok()?, day.parse().ok()?));
    let Some(date) = date else {
        return Err(Wrong::value(
            text,
            "a day that is not in the calendar",
            RIGHT,
        ));
    };
    if (2000..=2099).contains(&date.year()) {
        Ok(date)
    } else {
        let what = "a year before 2000 or after 2099";
        Err(Wrong::value(text, what, RIGHT))
    }
}

/// A date whose first two numbers may be day and month or month and day.
fn either(text: &str, front: [&str; 2], year: &str) -> Wrong {
    let as_day = |month: &str, day: &str| calendar(text, year, month, day).ok();
    let [a, b] = front;
    let mut days: Vec<_> = [as_day(b, a), as_day(a, b)].into_iter().flatten().collect();
    days.dedup();
    let days: Vec<_> = days.iter().map(|day| quote(&day.to_string())).collect();
    let what = match days.as_slice() {
        [] => return Wrong::value(text, "a day that is not in the calendar", RIGHT),
        [_] => "a date that does not begin with its year",
        _ => "a date that can be read in two ways",
    };
    let right = format!("write the year first: {}", days.join(" or "));
    Wrong::value(text, what, right)
}
