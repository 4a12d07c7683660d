//! The only place that reads a clock. Refuses: being called from the core; time is handed down.
use chrono::{DateTime, NaiveDateTime, Utc};
use domain::Moment;

/// Where time comes from: the machine, or a bench.
pub trait Clock: std::fmt::Debug + Send {
    /// Now.
    fn now(&self) -> Moment;
    /// Now on the gym's wall clock.
    fn local(&self) -> NaiveDateTime;
}

/// The machine's clock and time zone.
#[derive(Debug, Clone, Copy, Default)]
pub struct SystemClock;

impl Clock for SystemClock {
    fn now(&self) -> Moment {
        #[allow(clippy::disallowed_methods, reason = "this is the clock that the others are given")]
        let now: DateTime<Utc> = std::time::SystemTime::now().into();
        Moment(now.timestamp_millis())
    }

    fn local(&self) -> NaiveDateTime {
        chrono::Local::now().naive_local()
    }
}

/// Nanoseconds of a clock that never goes back, for timing a planner.
#[must_use]
pub fn stopwatch() -> impl FnMut() -> u64 {
    #[allow(clippy::disallowed_methods, reason = "this is the clock that the others are given")]
    let start = std::time::Instant::now();
    move || u64::try_from(start.elapsed().as_nanos()).unwrap_or(u64::MAX)
}
