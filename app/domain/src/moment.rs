//! A moment, given from outside. Refuses: reading a clock.
use chrono::{DateTime, NaiveDate};

/// Milliseconds since 1970-01-01T00:00:00Z, on the steady clock unless it says otherwise.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Default)]
pub struct Moment(pub i64);

impl Moment {
    /// Its day in UTC; `None` so far off that no calendar has one.
    #[must_use]
    pub fn date(self) -> Option<NaiveDate> {
        DateTime::from_timestamp_millis(self.0).map(|at| at.date_naive())
    }

    /// This moment and `ms` milliseconds more, or fewer.
    #[must_use]
    pub const fn plus_ms(self, ms: i64) -> Self {
        Self(self.0.saturating_add(ms))
    }

    /// Milliseconds since `earlier`; negative when that lies ahead.
    #[must_use]
    pub const fn since(self, earlier: Self) -> i64 {
        self.0.saturating_sub(earlier.0)
    }

    /// This moment and `seconds` more.
    #[must_use]
    pub const fn plus_seconds(self, seconds: u32) -> Self {
        Self(self.0.saturating_add(seconds as i64 * 1_000))
    }

    /// Whole seconds from this moment until `later`, rounded up; 0 when it has passed.
    #[must_use]
    pub fn seconds_until(self, later: Self) -> u32 {
        let ms = later.0.saturating_sub(self.0).max(0);
        u32::try_from(ms.saturating_add(999) / 1_000).unwrap_or(u32::MAX)
    }
}
