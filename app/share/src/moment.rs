//! Moments as text. Refuses: a time zone; the record keeps none.
use chrono::{DateTime, SecondsFormat};
use std::fmt::Write as _;

/// Milliseconds since 1970-01-01T00:00:00Z as RFC 3339 in UTC, to the millisecond; `None` beyond
/// the calendar.
pub(crate) fn written(at_ms: i64) -> Option<String> {
    let at = DateTime::from_timestamp_millis(at_ms)?;
    Some(at.to_rfc3339_opts(SecondsFormat::Millis, true))
}

/// Milliseconds of a day.
const DAY_MS: i64 = 86_400_000;

/// Writes one moment after another; those of one day share its date.
#[derive(Debug, Default)]
pub(crate) struct Clock {
    day: Option<i64>,
    text: String,
    date: usize,
}

impl Clock {
    /// As [`written`], empty beyond the calendar.
    pub(crate) fn written(&mut self, at_ms: i64) -> &str {
        let (day, ms) = (at_ms.div_euclid(DAY_MS), at_ms.rem_euclid(DAY_MS));
        if self.day != Some(day) {
            self.day = Some(day);
            self.text = written(day.saturating_mul(DAY_MS)).unwrap_or_default();
            self.date = self.text.find('T').map_or(0, |at| at + 1);
        }
        if self.date > 0 {
            self.text.truncate(self.date);
            let (minutes, seconds) = (ms / 60_000, ms / 1_000 % 60);
            let (hour, minute) = (minutes / 60, minutes % 60);
            // Text always grows.
            write!(
                self.text,
                "{hour:02}:{minute:02}:{seconds:02}.{:03}Z",
                ms % 1_000
            )
            .unwrap_or_default();
        }
        &self.text
    }
}

#[cfg(test)]
mod tests {
    use super::{Clock, written};

    #[test]
    fn one_after_another_is_each_for_itself() {
        let mut clock = Clock::default();
        for at in [
            0,
            1,
            86_399_999,
            86_400_000,
            -1,
            1_772_442_000_123,
            1_772_442_000_124,
            253_402_300_799_999,
            253_402_300_800_000,
            i64::MAX,
            i64::MIN,
            5,
        ] {
            assert_eq!(clock.written(at), written(at).unwrap_or_default(), "{at}");
        }
    }
}
