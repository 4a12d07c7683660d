//! The day of a plan's row. Refuses: dates that two readers would read as two days.
use crate::fault::{Wrong, quote};
use crate::weekday::weekday;
use crate::words::{Words, words};
use chrono::{Datelike as _, NaiveDate};
use text::keys::checked as k;

const RIGHT: Words = words!(k::WRITE_YEAR_MONTH_DAY_AS);

/// Months by their first letters, English, German and French; "ma" is told apart by its third
/// letter.
const MONTHS: [&[&str]; 12] = [
    &["jan"],
    &["feb", "f\u{e9}v", "fev"],
    &["mar", "m\u{e4}r", "maer"],
    &["apr", "avr"],
    &["may", "mai"],
    &["jun", "juin"],
    &["jul", "juil"],
    &["aug", "ao\u{fb}", "aou"],
    &["sep"],
    &["oct", "okt"],
    &["nov"],
    &["dec", "dez", "d\u{e9}c"],
];

/// Reads "2026-12-01", "2026/12/01", "2026.12.01", "1 Dec 2026", with dots "01.12.2026", and
/// with strokes what can be one day only: "31/12/2026", "12/31/2026", "5/5/2026".
pub(crate) fn date(text: &str) -> Result<NaiveDate, Wrong> {
    let plain = without_time(text.trim());
    // "Mon 2026-12-07", "Montag, 7. Dezember 2026": the weekday must be the day's own.
    if let Some((front, rest)) = plain.split_once(|c: char| c.is_whitespace() || c == ',')
        && let Some(weekday) = weekday(front)
        && !rest.trim().is_empty()
    {
        let day = date(rest.trim_start_matches([' ', ',', '.']))?;
        if day.weekday() != weekday {
            let what = words!(k::A_WEEKDAY_THAT_IS_NOT);
            return Err(Wrong::value(text, what, RIGHT));
        }
        return Ok(day);
    }
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
        return Err(Wrong::value(text, words!(k::NOT_A_DATE), RIGHT));
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
        [a, b, c] if short(a) && short(b) && short(c) => {
            Err(Wrong::value(text, words!(k::A_DATE_WITH_A_YEAR), RIGHT))
        }
        _ => Err(Wrong::value(text, words!(k::NOT_A_DATE), RIGHT)),
    }
}

/// "2026-12-07 18:00" is that day, at whatever time.
fn without_time(text: &str) -> &str {
    let front = text.rsplit_once([' ', 'T']).filter(|(_, time)| {
        let parts: Vec<&str> = time.split(':').collect();
        let two = |part: &&str| (1..=2).contains(&part.len());
        let digits = time.bytes().all(|b| b.is_ascii_digit() || b == b':');
        digits && (2..=3).contains(&parts.len()) && parts.iter().all(two)
    });
    front.map_or(text, |(day, _)| day.trim_end())
}

/// A date without any mark between its parts.
fn no_mark(text: &str, plain: &str) -> Wrong {
    if plain.len() == 5 && plain.bytes().all(|b| b.is_ascii_digit()) {
        let right = words!(k::FORMAT_THE_CELLS_AS_DATES);
        Wrong::value(text, words!(k::A_SPREADSHEET_S_NUMBER_OF), right)
    } else {
        Wrong::value(text, words!(k::NOT_A_DATE), RIGHT)
    }
}

/// Makes a day of three numbers, if the calendar has it.
fn calendar(text: &str, year: &str, month: &str, day: &str) -> Result<NaiveDate, Wrong> {
    let date = year
        .parse()
        .ok()
        .and_then(|year| NaiveDate::from_ymd_opt(year, month.parse().ok()?, day.parse().ok()?));
    let Some(date) = date else {
        return Err(Wrong::value(text, words!(k::A_DAY_THAT_IS_NOT), RIGHT));
    };
    if (2000..=2099).contains(&date.year()) {
        Ok(date)
    } else {
        let what = words!(k::A_YEAR_BEFORE_2000_OR);
        Err(Wrong::value(text, what, RIGHT))
    }
}

/// Whether a text that is no day looks as if one was meant.
pub(crate) fn looks_like(text: &str) -> bool {
    let numbers = text.split(|c: char| !c.is_ascii_digit());
    let numbers = numbers.filter(|part| !part.is_empty()).count();
    let marks = text.matches(['.', '/', '-']).count();
    let signs = |c: char| c.is_ascii_digit() || matches!(c, '.' | '/' | '-' | ' ');
    let bare = text.trim().chars().all(signs) && !text.contains(". ");
    let of_marks = bare && numbers == 3 && marks == 2 && !text.trim().starts_with('-');
    let words: Vec<_> = text.split(|c: char| !c.is_alphanumeric()).collect();
    let is_month = |word: &&&str| {
        let word = word.to_lowercase();
        word.chars().count() >= 3 && month(&word).is_some()
    };
    of_marks || (1..=2).contains(&numbers) && words.len() <= 4 && words.iter().any(|w| is_month(&w))
}

/// Index of a month from 0 by its first letters, in lower case.
fn month(word: &str) -> Option<usize> {
    let begins = |names: &&[&str]| names.iter().any(|name| word.starts_with(name));
    // The longest that fits: "juin" and "juil" begin alike.
    MONTHS.iter().position(begins)
}

/// The first day of a month of a year: "December 2026", "Dez. 2026".
pub(crate) fn month_of_year(text: &str) -> Option<NaiveDate> {
    let apart = |c: char| c.is_whitespace() || matches!(c, '.' | ',' | '-' | '/');
    let parts: Vec<_> = text.split(apart).filter(|part| !part.is_empty()).collect();
    let [name, year] = parts.as_slice() else {
        return None;
    };
    let is_year = year.len() == 4 && year.bytes().all(|b| b.is_ascii_digit());
    let name = name.to_lowercase();
    let long = name.chars().count() >= 3 && name.chars().all(char::is_alphabetic);
    let month = u32::try_from(month(&name).filter(|_| long)?).ok()? + 1;
    let year = year
        .parse()
        .ok()
        .filter(|year| is_year && (2000..=2099).contains(year))?;
    NaiveDate::from_ymd_opt(year, month, 1)
}

/// The day of a month by its number: "2", "2.", "2nd", "Wed 2"; nothing where it is no such day.
///
/// # Errors
/// A day that the month does not have, or that falls on another weekday.
pub(crate) fn day_of_month(text: &str, month: NaiveDate) -> Option<Result<NaiveDate, Wrong>> {
    let apart = |c: char| c.is_whitespace() || matches!(c, ',' | '.');
    let parts: Vec<_> = text.split(apart).filter(|part| !part.is_empty()).collect();
    let (named, number) = match parts.as_slice() {
        [number] => (None, *number),
        [front, number] => (Some(weekday(front)?), *number),
        _ => return None,
    };
    let lower = number.to_lowercase();
    let ends = ["st", "nd", "rd", "th", "er"];
    let digits = ends.iter().find_map(|end| lower.strip_suffix(end));
    let day: u32 = digits.unwrap_or(&lower).parse().ok()?;
    let month_words = month.format("%Y-%m").to_string();
    let Some(date) = month.with_day(day) else {
        let what = words!(k::A_DAY_THAT_THE_MONTH, month_words);
        return Some(Err(Wrong::value(text, what, RIGHT)));
    };
    if named.is_some_and(|named| named != date.weekday()) {
        let what = words!(k::A_WEEKDAY_THAT_IS_NOT);
        return Some(Err(Wrong::value(text, what, RIGHT)));
    }
    Some(Ok(date))
}

/// "1 Dec 2026", "1. Dezember 2026", "Dec 1, 2026", "1-Dec-2026", "December 7th 2026".
fn in_words(text: &str, plain: &str) -> Result<NaiveDate, Wrong> {
    let not = || Wrong::value(text, words!(k::NOT_A_DATE), RIGHT);
    let apart = |c: char| c.is_whitespace() || matches!(c, '.' | ',' | '-' | '/');
    let filler = |part: &&str| part.is_empty() || part.eq_ignore_ascii_case("of");
    let parts: Vec<_> = plain.split(apart).filter(|part| !filler(part)).collect();
    let [a, b, year] = parts.as_slice() else {
        let months = parts
            .iter()
            .any(|part| month(&part.to_lowercase()).is_some());
        return Err(match parts.as_slice() {
            [_, _] if months && looks_like(text) => {
                Wrong::value(text, words!(k::A_DAY_WITHOUT_A_YEAR), RIGHT)
            }
            _ => not(),
        });
    };
    let (day, word) = if a.starts_with(|c: char| c.is_ascii_digit()) {
        (a, b)
    } else {
        (b, a)
    };
    let month = month(&word.to_lowercase());
    let digits = |part: &str| part.bytes().all(|b| b.is_ascii_digit());
    let lower = day.to_lowercase();
    let ends = ["st", "nd", "rd", "th", "er"];
    let day = ends
        .iter()
        .find_map(|end| lower.strip_suffix(end))
        .unwrap_or(&lower);
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
                k::WRITE_THE_YEAR_FIRST_OR,
                quote(&one.to_string()),
                quote(&other.to_string())
            );
            Err(Wrong::value(text, words!(k::A_DATE_THAT_CAN_BE), right))
        }
    }
}
