//! The day of a plan's row. Refuses: dates that two readers would read as two days.
use crate::fault::{Wrong, quote};
use crate::words::{Words, words};
use chrono::{Datelike as _, NaiveDate};

const RIGHT: Words = words!("write year, month, day as \"2026-12-01\"");

/// Months by their first letters, English and German; "ma" is told apart by its third letter.
const MONTHS: [&[&str]; 12] = [
    &["jan"],
    &["feb"],
    &["mar", "m\u{e4}r", "maer"],
    &["apr"],
    &["may", "mai"],
    &["jun"],
    &["jul"],
    &["aug"],
    &["sep"],
    &["oct", "okt"],
    &["nov"],
    &["dec", "dez"],
];

/// Reads "2026-12-01", "2026/12/01", "2026.12.01", "1 Dec 2026", with dots "01.12.2026", and
/// with strokes what can be one day only: "31/12/2026", "12/31/2026", "5/5/2026".
pub(crate) fn date(text: &str) -> Result<NaiveDate, Wrong> {
    let plain = text.trim();
    if plain.chars().any(char::is_alphabetic) {
        return in_words(text, plain);
    }
    let mark = plain.chars().find(|c| !c.is_ascii_digit());
    let Some(mark) = mark.filter(|mark| ['-', '.', '/'].contains(mark)) else {
        return Err(no_mark(text, plain));
    };
    let parts: Vec<_> = plain.split(mark).collect();
    let short = |part: &&str| (1..=2).contains(&part.len());
    let digits = |part: &str| part.bytes().all(|b| b.is_ascii_digit());
    if !plain.split(mark).all(digits) {
        return Err(Wrong::value(text, words!("not a date"), RIGHT));
    }
    match parts.as_slice() {
        [year, month, day] if year.len() == 4 && short(month) && short(day) => {
            calendar(text, year, month, day)
        }
        [day, month, year] if year.len() == 4 && short(month) && short(day) => {
            if mark == '.' {
                calendar(text, year, month, day)
            } else {
                either(text, [*day, *month], year)
            }
        }
        [a, b, c] if short(a) && short(b) && short(c) => Err(Wrong::value(
            text,
            words!("a date with a year of two digits"),
            RIGHT,
        )),
        _ => Err(Wrong::value(text, words!("not a date"), RIGHT)),
    }
}

/// A date without any mark between its parts.
fn no_mark(text: &str, plain: &str) -> Wrong {
    if plain.len() == 5 && plain.bytes().all(|b| b.is_ascii_digit()) {
        let right = words!("format the cells as dates such as \"2026-12-01\" and save again");
        Wrong::value(text, words!("a spreadsheet's number of a day"), right)
    } else {
        Wrong::value(text, words!("not a date"), RIGHT)
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
            words!("a day that is not in the calendar"),
            RIGHT,
        ));
    };
    if (2000..=2099).contains(&date.year()) {
        Ok(date)
    } else {
        let what = words!("a year before 2000 or after 2099");
        Err(Wrong::value(text, what, RIGHT))
    }
}

/// "1 Dec 2026", "1. Dezember 2026", "Dec 1, 2026", "1-Dec-2026".
fn in_words(text: &str, plain: &str) -> Result<NaiveDate, Wrong> {
    let not = || Wrong::value(text, words!("not a date"), RIGHT);
    let apart = |c: char| c.is_whitespace() || matches!(c, '.' | ',' | '-' | '/');
    let parts: Vec<_> = plain.split(apart).filter(|part| !part.is_empty()).collect();
    let [a, b, year] = parts.as_slice() else {
        return Err(not());
    };
    let (day, word) = if a.starts_with(|c: char| c.is_ascii_digit()) {
        (a, b)
    } else {
        (b, a)
    };
    let word = word.to_lowercase();
    let begins = |names: &&[&str]| names.iter().any(|name| word.starts_with(name));
    let month = MONTHS.iter().position(begins);
    let digits = |part: &str| part.bytes().all(|b| b.is_ascii_digit());
    match month {
        Some(at) if year.len() == 4 && digits(year) && digits(day) && day.len() <= 2 => {
            calendar(text, year, &(at + 1).to_string(), day)
        }
        _ => Err(not()),
    }
}

/// A date whose first two numbers may be day and month or month and day: taken where both
/// readings give the same day, or only one of them is in the calendar.
fn either(text: &str, front: [&str; 2], year: &str) -> Result<NaiveDate, Wrong> {
    let as_day = |month: &str, day: &str| calendar(text, year, month, day).ok();
    let [a, b] = front;
    let mut days: Vec<_> = [as_day(b, a), as_day(a, b)].into_iter().flatten().collect();
    days.dedup();
    match days.as_slice() {
        [] => calendar(text, year, b, a),
        [one] => Ok(*one),
        [one, other, ..] => {
            let right = words!(
                "write the year first: {0} or {1}",
                quote(&one.to_string()),
                quote(&other.to_string())
            );
            Err(Wrong::value(
                text,
                words!("a date that can be read in two ways"),
                right,
            ))
        }
    }
}
