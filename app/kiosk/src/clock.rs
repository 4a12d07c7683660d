//! The only place that reads a clock. Refuses: being called from the core; time is handed down.
use chrono::{DateTime, NaiveDateTime, Utc};
use domain::Moment;
use std::sync::Arc;
use std::sync::atomic::{AtomicI64, Ordering};

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
        #[allow(
            clippy::disallowed_methods,
            reason = "this is the clock that the others are given"
        )]
        let now: DateTime<Utc> = std::time::SystemTime::now().into();
        Moment(now.timestamp_millis())
    }

    fn local(&self) -> NaiveDateTime {
        chrono::Local::now().naive_local()
    }
}

/// Nanoseconds of a clock that never goes back, for timing a planner.
pub fn stopwatch() -> impl FnMut() -> u64 {
    #[allow(
        clippy::disallowed_methods,
        reason = "this is the clock that the others are given"
    )]
    let start = std::time::Instant::now();
    move || u64::try_from(start.elapsed().as_nanos()).unwrap_or(u64::MAX)
}

/// Milliseconds of a clock that never goes back, for whoever shares the page.
pub fn milliseconds() -> impl Fn() -> u64 + Send + Sync + 'static {
    #[allow(
        clippy::disallowed_methods,
        reason = "this is the clock that the others are given"
    )]
    let start = std::time::Instant::now();
    move || u64::try_from(start.elapsed().as_millis()).unwrap_or(u64::MAX)
}

/// A clock that stands still until it is told to go on; its wall clock is UTC.
#[derive(Debug, Clone)]
pub struct BenchClock(Arc<AtomicI64>);

impl BenchClock {
    /// Stands at `at`, UTC.
    #[must_use]
    pub fn at(at: NaiveDateTime) -> Self {
        Self(Arc::new(AtomicI64::new(at.and_utc().timestamp_millis())))
    }

    /// The wall clock is set.
    pub fn set_wall(&self, at: NaiveDateTime) {
        self.0
            .store(at.and_utc().timestamp_millis(), Ordering::SeqCst);
    }

    /// Goes on by so many milliseconds.
    pub fn advance_ms(&self, ms: i64) {
        self.0.fetch_add(ms, Ordering::SeqCst);
    }
}

impl Clock for BenchClock {
    fn now(&self) -> Moment {
        Moment(self.0.load(Ordering::SeqCst))
    }

    fn local(&self) -> NaiveDateTime {
        let at = DateTime::from_timestamp_millis(self.now().0);
        at.unwrap_or_default().naive_utc()
    }
}
