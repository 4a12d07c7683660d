//! JSON numbers of seconds and the like as whole counts, exactly, both ways. Refuses: floats.
use domain::decimal::{self, DecimalFault};
use serde_json::value::RawValue;

/// Nanoseconds in a second: seconds are read to nine decimals.
const NS_PER_S: i64 = 1_000_000_000;

/// Reads the text of a JSON number of seconds as nanoseconds, up to `limit`.
pub(super) fn nanoseconds(number: &str, limit: i64) -> Result<i64, DecimalFault> {
    count(number, NS_PER_S, limit)
}

/// Reads the text of a JSON number as a count of small units, `scale` to one, up to `limit`.
pub(super) fn count(number: &str, scale: i64, limit: i64) -> Result<i64, DecimalFault> {
    decimal::read(&plain(number)?, scale, limit)
}

/// A JSON number of at most nine decimals without its exponent.
fn plain(number: &str) -> Result<String, DecimalFault> {
    let Some((digits, exponent)) = number.split_once(['e', 'E']) else {
        return Ok(String::from(number));
    };
    let exponent: i32 = exponent.parse().map_err(|_| DecimalFault::TooLarge)?;
    let (whole, part) = digits.split_once('.').unwrap_or((digits, ""));
    if whole.starts_with('-') {
        return Err(DecimalFault::NotANumber);
    }
    let all = format!("{whole}{part}");
    if all.bytes().all(|digit| digit == b'0') {
        return Ok(String::from("0"));
    }
    let whole_digits = i32::try_from(whole.len()).map_err(|_| DecimalFault::TooLarge)?;
    // Far beyond these a number is too large or too fine whatever its digits.
    let point = whole_digits.saturating_add(exponent);
    if point > 400 {
        return Err(DecimalFault::TooLarge);
    }
    if point < -400 {
        return Err(DecimalFault::TooFine);
    }
    Ok(match usize::try_from(point) {
        Ok(point) if point >= all.len() => format!("{all:0<point$}"),
        Ok(point) => format!("{}.{}", &all[..point], &all[point..]),
        Err(_) => format!(".{}{all}", "0".repeat(usize::try_from(-point).unwrap_or(0))),
    })
}

/// A JSON number: `count` divided by 10 to the `places`.
pub(super) fn decimal(count: i128, places: usize) -> Box<RawValue> {
    let sign = if count < 0 { "-" } else { "" };
    let digits = format!("{:0>width$}", count.unsigned_abs(), width = places + 1);
    let (whole, part) = digits.split_at(digits.len() - places);
    let part = part.trim_end_matches('0');
    let point = if part.is_empty() { "" } else { "." };
    let number = format!("{sign}{whole}{point}{part}");
    RawValue::from_string(number).expect("digits with a point are JSON")
}

#[cfg(test)]
mod tests {
    use super::{decimal, nanoseconds};
    use domain::decimal::DecimalFault;
    use proptest::prelude::*;

    #[test]
    fn json_numbers_of_seconds_are_read_exactly() {
        let read = |number| nanoseconds(number, i64::MAX);
        assert_eq!(read("12.5"), Ok(12_500_000_000));
        assert_eq!(read("0.000000001"), Ok(1));
        assert_eq!(read("1e1"), Ok(10_000_000_000));
        assert_eq!(read("1.25E+1"), Ok(12_500_000_000));
        assert_eq!(read("125e-1"), Ok(12_500_000_000));
        assert_eq!(read("5e-9"), Ok(5));
        assert_eq!(read("0e99999"), Ok(0));
        assert_eq!(read("5e-10"), Err(DecimalFault::TooFine));
        assert_eq!(read("1e-99999999999"), Err(DecimalFault::TooLarge));
        assert_eq!(read("1e300"), Err(DecimalFault::TooLarge));
        assert_eq!(read("-1"), Err(DecimalFault::NotANumber));
        assert_eq!(read("-1e0"), Err(DecimalFault::NotANumber));
    }

    proptest! {
        /// Against Rust's own reading of decimals, where floats are exact: up to 2^53.
        #[test]
        fn exponents_only_move_the_point(count in 0..1_000_000_i64, exponent in -6..4_i32) {
            let ns = count * 10_i64.pow(u32::try_from(exponent + 9).unwrap_or(0));
            let read = nanoseconds(&format!("{count}e{exponent}"), i64::MAX);
            prop_assert_eq!(read, Ok(ns));
        }

        #[test]
        fn written_numbers_are_read_back(ns in 0..i64::MAX) {
            let text = decimal(i128::from(ns), 9);
            prop_assert_eq!(nanoseconds(text.get(), i64::MAX), Ok(ns));
        }
    }
}
