//! What a cell of a workbook holds, as text and kind. Refuses: to know what it means.
use crate::cells::CellKind;

/// A cell's text without what is struck through.
#[derive(Debug, Clone)]
pub(super) struct Value {
    pub(super) text: String,
    pub(super) kind: CellKind,
    /// Whether some of it was struck through, and left out.
    pub(super) struck: bool,
}

/// A day from which on a spreadsheet counts.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Epoch {
    /// 1900, with the leap day that it never had.
    Of1900,
    /// 1904.
    Of1904,
}

impl Value {
    /// A formula whose result nobody saved: a program wrote it, and no spreadsheet reckoned it.
    pub(super) const fn formula() -> Self {
        Self::of(String::new(), CellKind::Formula)
    }

    /// Whether nothing of it is there to be read or told.
    pub(super) fn is_nothing(&self) -> bool {
        self.text.trim().is_empty() && !self.struck && self.kind != CellKind::Formula
    }

    /// Text.
    pub(super) fn text(text: String) -> Self {
        Self::of(text, CellKind::Text)
    }

    pub(super) const fn of(text: String, kind: CellKind) -> Self {
        Self {
            text,
            kind,
            struck: false,
        }
    }

    pub(super) fn number(number: f64) -> Self {
        Self::of(decimal(number), CellKind::Number)
    }

    /// A share, 0.8 as "80 %".
    pub(super) fn share(share: f64) -> Self {
        Self::of(format!("{} %", decimal(share * 100.0)), CellKind::Share)
    }

    pub(super) fn truth(value: bool) -> Self {
        Self::text(if value { "TRUE" } else { "FALSE" }.to_owned())
    }

    /// Days since the epoch: a day, or a time of day as "h:mm:ss".
    pub(super) fn moment(days: f64, epoch: Epoch, duration: bool) -> Self {
        if duration || (0.0..HOURS_MAX).contains(&days) {
            return clock((days * 86_400.0).round());
        }
        let days = match epoch {
            Epoch::Of1900 => days,
            Epoch::Of1904 => days + 1_462.0,
        };
        match day(days) {
            Some(text) => Self::of(text, CellKind::Day),
            None => Self::number(days),
        }
    }

    /// "2026-12-01" or "2026-12-01T00:00:00".
    pub(super) fn iso_day(text: &str) -> Self {
        let day = text.strip_suffix("T00:00:00").unwrap_or(text);
        Self::of(day.to_owned(), CellKind::Day)
    }

    /// "PT03H00M00S", ISO 8601.
    pub(super) fn iso_time(text: &str) -> Self {
        let mut seconds = 0.0;
        let mut number = String::new();
        for c in text.trim_start_matches("PT").chars() {
            let scale = match c {
                'H' => 3_600.0,
                'M' => 60.0,
                'S' => 1.0,
                _ => {
                    number.push(c);
                    continue;
                }
            };
            let Ok(count) = number.replace(',', ".").parse::<f64>() else {
                return Self::text(text.to_owned());
            };
            seconds += count * scale;
            number.clear();
        }
        clock(seconds.round())
    }
}

/// Nine decimals are finer than a spreadsheet shows; the binary fraction's tail beyond them is
/// its own.
fn decimal(number: f64) -> String {
    let text = format!("{number:.9}");
    let text = text.trim_end_matches('0').trim_end_matches('.');
    text.strip_prefix("-0")
        .filter(|rest| rest.is_empty())
        .map_or(text, |_| "0")
        .to_owned()
}

/// Days from 1900 on that are taken for hours: "45:00" is 1.875 of them, and no plan is that old.
const HOURS_MAX: f64 = 100.0;

/// Days since 30 December 1899 as a date, with its time where it has one.
fn day(days: f64) -> Option<String> {
    if !(0.0..3_000_000.0).contains(&days) {
        return None;
    }
    #[expect(
        clippy::cast_possible_truncation,
        reason = "seconds of some thousand years"
    )]
    let seconds = (days * 86_400.0).round() as i64;
    let start = chrono::NaiveDate::from_ymd_opt(1899, 12, 30)?.and_hms_opt(0, 0, 0)?;
    let moment = start.checked_add_signed(chrono::TimeDelta::try_seconds(seconds)?)?;
    let shown = if seconds % 86_400 == 0 {
        moment.date().to_string()
    } else {
        moment.to_string()
    };
    Some(shown)
}

/// Seconds as "h:mm:ss"; what is no time of some hours stays a number.
fn clock(seconds: f64) -> Value {
    if !(0.0..1e7).contains(&seconds) {
        return Value::number(seconds / 86_400.0);
    }
    #[expect(
        clippy::cast_possible_truncation,
        clippy::cast_sign_loss,
        reason = "whole seconds from 0 to ten million"
    )]
    let whole = seconds as u32;
    let text = format!("{}:{:02}:{:02}", whole / 3_600, whole / 60 % 60, whole % 60);
    Value::of(text, CellKind::Time)
}
