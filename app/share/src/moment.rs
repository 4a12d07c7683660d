//! Moments as text. Refuses: a time zone; the record keeps none.
use chrono::{DateTime, SecondsFormat};

/// Milliseconds since 1970-01-01T00:00:00Z as RFC 3339 in UTC, to the millisecond; `None` beyond
/// the calendar.
pub(crate) fn written(at_ms: i64) -> Option<String> {
    let at = DateTime::from_timestamp_millis(at_ms)?;
    Some(at.to_rfc3339_opts(SecondsFormat::Millis, true))
}
