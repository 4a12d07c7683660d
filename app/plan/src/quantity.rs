//! Masses, lengths, rests, shares and counts as people write them, each within its range.
//!
//! Refuses: bare numbers where a unit decides, and anything that cannot be kept exactly.
use crate::fault::Wrong;
use crate::words::{Term, Words, term, words};
use domain::decimal::{self, DecimalFault};
use domain::mass::QuantityFault;
use domain::{Length, LengthUnit, Mass, MassUnit, Stress};
use std::fmt::Display;
use std::ops::RangeInclusive;
use text::keys::checked as k;

/// A decimal comma made a point: "102,5 kg" is how much of the world writes it. A comma beside a
/// point stays, so that "1,250.5" is refused rather than guessed.
fn with_point(text: &str) -> String {
    if text.matches(',').count() == 1 && !text.contains('.') {
        text.replace(',', ".")
    } else {
        text.to_owned()
    }
}

/// What a quantity fault means for a `thing` such as "a mass".
fn fault_words(text: &str, thing: Term, fault: QuantityFault, bare: Words, example: &str) -> Wrong {
    let such = || words!(k::WRITE_SUCH_AS, thing, example);
    let number = text
        .trim_start()
        .starts_with(|c: char| c.is_ascii_digit() || c == '.');
    match fault {
        QuantityFault::NoUnit => Wrong::value(text, words!(k::WITHOUT_A_UNIT, thing), bare),
        QuantityFault::UnknownUnit if number => {
            Wrong::value(text, words!(k::IN_A_UNIT_NOT_KNOWN, thing), such())
        }
        QuantityFault::UnknownUnit | QuantityFault::Number(DecimalFault::NotANumber) => {
            Wrong::value(text, words!(k::NOT, thing), such())
        }
        QuantityFault::Number(DecimalFault::TooFine) => Wrong::value(
            text,
            words!(k::THAT_CANNOT_BE_KEPT_EXACTLY, thing),
            words!(k::WRITE_FEWER_DECIMALS_OR_A),
        ),
        QuantityFault::Number(DecimalFault::TooLarge) => {
            Wrong::value(text, words!(k::LARGER_THAN_ANYTHING_IN_A, thing), such())
        }
    }
}

/// Says on which side of its range a value lies.
fn outside<T: PartialOrd>(
    text: &str,
    value: &T,
    range: &RangeInclusive<T>,
    show: impl Fn(&T) -> String,
) -> Option<Wrong> {
    let (from, to) = (show(range.start()), show(range.end()));
    let what = if value < range.start() {
        words!(k::LESS_THAN_THE_LEAST, &from)
    } else if value > range.end() {
        words!(k::MORE_THAN_THE_MOST, &to)
    } else {
        return None;
    };
    Some(Wrong::value(
        text,
        &what,
        words!(k::WRITE_FROM_TO, from, to),
    ))
}

/// Reads a mass with its unit.
pub(crate) fn mass(text: &str, range: &RangeInclusive<Mass>) -> Result<(Mass, MassUnit), Wrong> {
    let bare = text.trim();
    let (mass, unit) = Mass::read_with_unit(&with_point(text)).map_err(|fault| {
        let write = words!(k::WRITE_LB_OR_KG, bare, bare);
        fault_words(
            text,
            term!(k::A_MASS),
            fault,
            write,
            "\"20 kg\" or \"45 lb\"",
        )
    })?;
    outside(text, &mass, range, |limit| limit.words(unit)).map_or(Ok((mass, unit)), Err)
}

/// Reads a length with its unit.
pub(crate) fn length(text: &str, range: &RangeInclusive<Length>) -> Result<Length, Wrong> {
    let bare = text.trim();
    let length = Length::read(&with_point(text)).map_err(|fault| {
        let write = words!(k::WRITE_MM_OR_IN, bare, bare);
        fault_words(
            text,
            term!(k::A_LENGTH),
            fault,
            write,
            "\"50 mm\" or \"1 1/4 in\"",
        )
    })?;
    outside(text, &length, range, |limit| limit.words(LengthUnit::Mm)).map_or(Ok(length), Err)
}

/// Reads a load that a maker stated, 10 kg to 10 t.
pub(crate) fn rated(text: &str) -> Result<Mass, Wrong> {
    let range = Mass::of(MassUnit::Kg, 10_000)..=Mass::of(MassUnit::Kg, 10_000_000);
    mass(text, &range).map(|(mass, _)| mass)
}

/// Reads a stress with its unit.
pub(crate) fn stress(
    text: &str,
    range: &RangeInclusive<Stress>,
    example: &str,
) -> Result<Stress, Wrong> {
    let bare = text.trim();
    let stress = Stress::read(&with_point(text)).map_err(|fault| {
        let write = words!(k::WRITE_MPA_GPA_OR_PSI, bare, bare, bare);
        fault_words(text, term!(k::A_STRESS), fault, write, example)
    })?;
    outside(text, &stress, range, |limit| limit.words()).map_or(Ok(stress), Err)
}

/// Reads a whole number.
pub(crate) fn whole<T>(text: &str, range: &RangeInclusive<T>) -> Result<T, Wrong>
where
    T: TryFrom<i64> + Display + PartialOrd,
{
    let (from, to) = (range.start(), range.end());
    let right = || {
        words!(
            k::WRITE_A_WHOLE_NUMBER_FROM,
            from.to_string(),
            to.to_string()
        )
    };
    let digits = text.trim();
    if digits.is_empty() || !digits.bytes().all(|b| b.is_ascii_digit()) {
        return Err(Wrong::value(text, words!(k::NOT_A_WHOLE_NUMBER), right()));
    }
    let number = digits.parse::<i64>().ok().and_then(|n| T::try_from(n).ok());
    let Some(number) = number else {
        return Err(Wrong::value(
            text,
            words!(k::MORE_THAN_THE_MOST, to.to_string()),
            right(),
        ));
    };
    outside(text, &number, range, ToString::to_string).map_or(Ok(number), Err)
}

/// The rests and times that are read: "90", "90 s", "3 min", "2.5 min", "3:00".
const TIME_EXAMPLE: Words = words!(k::WRITE_SECONDS_AS_180_OR);

/// Reads a time in thousandths of a second.
pub(crate) fn time_ms(text: &str, range: &RangeInclusive<u32>) -> Result<u32, Wrong> {
    let not = || Wrong::value(text, words!(k::NOT_A_TIME), TIME_EXAMPLE);
    let plain = with_point(text.trim()).to_lowercase();
    let limit = i64::from(u32::MAX);
    let ms = if let Some((minutes, seconds)) = plain.split_once(':') {
        if seconds.len() != 2 || seconds.bytes().next().is_none_or(|b| b > b'5') {
            return Err(not());
        }
        let minutes = decimal::read(minutes, 60_000, limit).map_err(|_| not())?;
        let whole_minutes = minutes % 60_000 == 0 && !plain.contains('.');
        let seconds = decimal::read(seconds, 1_000, limit).map_err(|_| not())?;
        if !whole_minutes {
            return Err(not());
        }
        minutes + seconds
    } else {
        let at = plain.find(char::is_alphabetic).unwrap_or(plain.len());
        let (number, unit) = plain.split_at(at);
        let scale = match unit.trim() {
            "" | "s" | "sec" | "secs" | "second" | "seconds" => 1_000,
            "min" | "mins" | "minute" | "minutes" => 60_000,
            _ => return Err(not()),
        };
        decimal::read(number.trim(), scale, limit).map_err(|_| not())?
    };
    let ms = u32::try_from(ms).unwrap_or(u32::MAX);
    outside(text, &ms, range, time_words).map_or(Ok(ms), Err)
}

/// A limit in the unit that people say it in.
fn time_words(ms: &u32) -> String {
    let (scale, unit) = match ms {
        120_000.. if ms.is_multiple_of(60_000) => (60_000, "min"),
        _ => (1_000, "s"),
    };
    format!(
        "{} {}",
        decimal::write_rounded(i64::from(*ms), scale, 3),
        unit
    )
}

/// A rest between sets, from 15 s to half an hour, in seconds. Fifteen seconds keeps "3", meant
/// as minutes, from being taken as seconds.
pub(crate) fn rest_s(text: &str) -> Result<u32, Wrong> {
    let bare = text.trim();
    if (1..=2).contains(&bare.len()) && bare.parse::<u8>().is_ok_and(|number| number < 15) {
        let right = words!(k::WRITE_MIN_OR_SECONDS_FROM, bare);
        return Err(Wrong::value(text, words!(k::A_REST_OF_S, bare), right));
    }
    let ms = time_ms(text, &(15_000..=1_800_000))?;
    if ms.is_multiple_of(1_000) {
        Ok(ms / 1_000)
    } else {
        Err(Wrong::value(
            text,
            words!(k::NOT_WHOLE_SECONDS),
            TIME_EXAMPLE,
        ))
    }
}

/// How long a lift keeps its day after its last entry, half an hour to twelve, in seconds.
pub(crate) fn day_ends_after_s(text: &str) -> Result<u32, Wrong> {
    time_ms(text, &(1_800_000..=43_200_000)).map(|ms| ms.div_ceil(1_000))
}

/// How long somebody who was called may take to come, one minute to thirty, in seconds.
pub(crate) fn called_for_s(text: &str) -> Result<u32, Wrong> {
    time_ms(text, &(60_000..=1_800_000)).map(|ms| ms.div_ceil(1_000))
}

/// Reads "80 %" in hundredths of a percent.
pub(crate) fn percent(text: &str, range: &RangeInclusive<u32>) -> Result<u32, Wrong> {
    let not = |what: Words| Wrong::value(text, what, words!(k::WRITE_A_PERCENTAGE_SUCH_AS));
    let plain = with_point(text.trim());
    let Some(number) = plain.strip_suffix('%') else {
        return Err(not(words!(k::A_SHARE_WITHOUT)));
    };
    let read = decimal::read(number.trim(), 100, 1_000_000);
    let share = read.map_err(|fault| match fault {
        DecimalFault::TooFine => not(words!(k::A_PERCENTAGE_WITH_MORE_THAN)),
        DecimalFault::NotANumber => not(words!(k::NOT_A_PERCENTAGE)),
        DecimalFault::TooLarge => not(words!(k::A_PERCENTAGE_FAR_TOO_LARGE)),
    })?;
    let share = u32::try_from(share).unwrap_or(u32::MAX);
    outside(text, &share, range, |share| {
        format!("{} %", decimal::write_rounded(i64::from(*share), 100, 2))
    })
    .map_or(Ok(share), Err)
}
