//! Moments as text. Refuses: a time zone; the record keeps none.
use chrono::{DateTime, SecondsFormat};
use domain::Moment;

/// RFC 3339 in UTC, to the millisecond; `None` beyond the calendar.
pub(crate) fn written(at: Moment) -> Option<String> {
    let at = DateTime::from_timestamp_millis(at.0)?;
    Some(at.to_rfc3339_opts(SecondsFormat::Millis, true))
}
