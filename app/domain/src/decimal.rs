//! Exact decimal text to whole counts of a small unit, and back.
//!
//! Refuses: rounding on the way in, signs, exponents, thousands marks, more digits than fit.
use alloc::format;
use alloc::string::String;
use core::fmt;

/// Why a decimal could not be read.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum DecimalFault {
    /// No digits, or something other than digits and one decimal point.
    NotANumber,
    /// More decimals than the unit can hold exactly.
    TooFine,
    /// Larger than the limit given.
    TooLarge,
}

impl fmt::Display for DecimalFault {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            Self::NotANumber => "is not a plain decimal number such as 102.5",
            Self::TooFine => "has more decimals than can be kept exactly",
            Self::TooLarge => "is larger than anything in a gym",
        })
    }
}

/// More decimals than any whole count of a unit's small units needs; so many still fit 128 bits.
const DECIMALS_LIMIT: usize = 19;

/// Reads `text` (digits with at most one point) as a count of the small unit, where one of the
/// large unit is `scale` small ones.
///
/// # Errors
/// [`DecimalFault`] when it is no plain decimal, is not a whole count, or exceeds `limit`.
pub fn read(text: &str, scale: i64, limit: i64) -> Result<i64, DecimalFault> {
    let (whole, part) = text.split_once('.').unwrap_or((text, ""));
    let digits = |s: &str| s.bytes().all(|b| b.is_ascii_digit());
    if (whole.is_empty() && part.is_empty()) || !digits(whole) || !digits(part) {
        return Err(DecimalFault::NotANumber);
    }
    let mut total: i128 = 0;
    for digit in whole.bytes() {
        total = total * 10 + i128::from(digit - b'0') * i128::from(scale);
        if total > i128::from(limit) {
            return Err(DecimalFault::TooLarge);
        }
    }
    // A part such as 0.000 005 in is whole only as a whole, not digit by digit.
    let (mut count, mut parts) = (0_i128, 1_i128);
    for (place, digit) in part.trim_end_matches('0').bytes().enumerate() {
        if place == DECIMALS_LIMIT {
            return Err(DecimalFault::TooFine);
        }
        count = count * 10 + i128::from(digit - b'0');
        parts *= 10;
    }
    if count * i128::from(scale) % parts != 0 {
        return Err(DecimalFault::TooFine);
    }
    total += count * i128::from(scale) / parts;
    let total = i64::try_from(total).map_err(|_| DecimalFault::TooLarge)?;
    if total > limit {
        Err(DecimalFault::TooLarge)
    } else {
        Ok(total)
    }
}

/// Writes `count` small units as an exact decimal of the large unit, or `None` when it has none
/// of at most twelve decimals.
#[must_use]
pub fn write_exact(count: i64, scale: i64) -> Option<String> {
    let mut power: i128 = 1;
    for places in 0..=12_usize {
        let scaled = i128::from(count) * power;
        if scaled % i128::from(scale) == 0 {
            return Some(place_point(scaled / i128::from(scale), places));
        }
        power *= 10;
    }
    None
}

/// Writes `count` small units as a decimal of the large unit, rounded half up to at most
/// `places` decimals, without trailing zeros. For reading, never for deciding.
#[must_use]
pub fn write_rounded(count: i64, scale: i64, places: u32) -> String {
    let power = 10_i128.pow(places.min(12));
    let scale = i128::from(scale);
    let doubled = (i128::from(count) * power * 2 + scale).div_euclid(scale * 2);
    let text = place_point(doubled, places.min(12) as usize);
    if text.contains('.') {
        String::from(text.trim_end_matches('0').trim_end_matches('.'))
    } else {
        text
    }
}

fn place_point(value: i128, places: usize) -> String {
    let sign = if value < 0 { "-" } else { "" };
    let digits = format!("{:0>width$}", value.unsigned_abs(), width = places + 1);
    let (whole, part) = digits.split_at(digits.len() - places);
    if part.is_empty() {
        format!("{sign}{whole}")
    } else {
        format!("{sign}{whole}.{part}")
    }
}
