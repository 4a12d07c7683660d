//! The only place that reads a clock. Refuses: being called from the core; time is handed down.
use chrono::{DateTime, NaiveDateTime, TimeDelta, Utc};
use domain::Moment;
use domain::steady::{BootId, Reading};
use rustix::time::{ClockId, clock_gettime};
use std::sync::{Arc, Mutex, MutexGuard, OnceLock, PoisonError};

/// Where time comes from: the machine, or a bench. The kiosk reads it through
/// [`crate::steady::Steady`], so that nothing it remembers hangs on a clock that can be set.
pub trait Clock: std::fmt::Debug + Send {
    /// One look at the machine's clocks.
    fn look(&self) -> Reading;
    /// Now on the gym's wall clock.
    fn local(&self) -> NaiveDateTime;
}

/// The machine's clocks and time zone.
#[derive(Debug, Clone, Copy, Default)]
pub struct SystemClock;

impl Clock for SystemClock {
    fn look(&self) -> Reading {
        // Time asleep counts too.
        let up = clock_gettime(ClockId::Boottime);
        Reading {
            boot: boot(),
            up_ms: up.tv_sec * 1_000 + up.tv_nsec / 1_000_000,
            wall: wall(),
        }
    }

    fn local(&self) -> NaiveDateTime {
        chrono::Local::now().naive_local()
    }
}

fn wall() -> Moment {
    #[allow(
        clippy::disallowed_methods,
        reason = "this is the clock that the others are given"
    )]
    let now: DateTime<Utc> = std::time::SystemTime::now().into();
    Moment(now.timestamp_millis())
}

/// Seconds since 1970-01-01T00:00:00Z by the machine's wall clock, for certificates, which other
/// machines judge by theirs.
#[must_use]
pub fn unix_s() -> i64 {
    wall().0.div_euclid(1_000)
}

/// The system's number of this boot. A system that does not tell it has a new one with every start
/// of the program: then rests are only capped over a restart, never taken up wrongly.
fn boot() -> BootId {
    static BOOT: OnceLock<BootId> = OnceLock::new();
    *BOOT.get_or_init(|| {
        let text = std::fs::read_to_string("/proc/sys/kernel/random/boot_id").unwrap_or_default();
        let number = u128::from_str_radix(&text.trim().replace('-', ""), 16);
        BootId(number.unwrap_or_else(|_| u128::from(wall().0.unsigned_abs())))
    })
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

/// A clock that stands still until it is told to go on. Copies are the same clock. Its zone is UTC
/// until another is set.
#[derive(Debug, Clone)]
pub struct BenchClock(Arc<Mutex<Hands>>);

#[derive(Debug)]
struct Hands {
    boot: u128,
    up_ms: i64,
    /// In UTC, milliseconds.
    wall_ms: i64,
    /// The wall clock as it would be had nobody set it.
    steady_ms: i64,
    zone_minutes: i32,
}

impl BenchClock {
    /// Stands at `at`, UTC, just after a boot.
    #[must_use]
    pub fn at(at: NaiveDateTime) -> Self {
        let ms = at.and_utc().timestamp_millis();
        Self(Arc::new(Mutex::new(Hands {
            // Another evening is another boot; the same one is the same, so that files repeat.
            boot: u128::from(ms.unsigned_abs()),
            up_ms: 0,
            wall_ms: ms,
            steady_ms: ms,
            zone_minutes: 0,
        })))
    }

    fn hands(&self) -> MutexGuard<'_, Hands> {
        self.0.lock().unwrap_or_else(PoisonError::into_inner)
    }

    /// Goes on by so many milliseconds.
    pub fn advance_ms(&self, ms: i64) {
        let mut hands = self.hands();
        hands.up_ms += ms;
        hands.wall_ms += ms;
        hands.steady_ms += ms;
    }

    /// Somebody sets the gym's wall clock; no time passes.
    pub fn set_wall(&self, to: NaiveDateTime) {
        let mut hands = self.hands();
        let zone_ms = i64::from(hands.zone_minutes) * 60_000;
        hands.wall_ms = to.and_utc().timestamp_millis() - zone_ms;
    }

    /// The gym's time is so many minutes ahead of UTC from now on, as on a night in spring.
    pub fn set_zone(&self, minutes: i32) {
        self.hands().zone_minutes = minutes;
    }

    /// The machine was off for so many milliseconds, and is started anew.
    pub fn reboot_after_ms(&self, off_ms: i64) {
        self.advance_ms(off_ms);
        let mut hands = self.hands();
        hands.boot += 1 << 64;
        hands.up_ms = 0;
    }

    /// Now, had nobody set the wall clock: what a kiosk's steady clock says that was begun with it.
    #[must_use]
    pub fn now(&self) -> Moment {
        Moment(self.hands().steady_ms)
    }
}

impl Clock for BenchClock {
    fn look(&self) -> Reading {
        let hands = self.hands();
        Reading {
            boot: BootId(hands.boot),
            up_ms: hands.up_ms,
            wall: Moment(hands.wall_ms),
        }
    }

    fn local(&self) -> NaiveDateTime {
        let hands = self.hands();
        let utc = DateTime::from_timestamp_millis(hands.wall_ms).unwrap_or_default();
        utc.naive_utc() + TimeDelta::minutes(i64::from(hands.zone_minutes))
    }
}
