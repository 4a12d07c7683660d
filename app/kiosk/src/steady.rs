//! The kiosk's own time: steady moments, whatever is done to the wall clock, and the gym's day and
//! time of day beside them.
use crate::clock::Clock;
use crate::owner::Owner;
use chrono::{DateTime, NaiveDate, NaiveDateTime, NaiveTime};
use domain::steady::{Anchor, Times};
use domain::{Command, DayCommand, Moment};
use std::cell::Cell;

/// Between two times that a set wall clock is written down, milliseconds: one that jumps about all
/// the time does not fill the journal.
const NOTE_EVERY_MS: i64 = 10_000;

/// A clock with the moment from which it counts.
#[derive(Debug)]
pub struct Steady {
    clock: Box<dyn Clock>,
    anchor: Cell<Anchor>,
    /// What the wall clock was ahead when it was last written down, and when that was.
    noted: Cell<(Option<Moment>, i64)>,
}

impl Steady {
    /// Takes the clock up where this boot left it, or anchors it in the journal. Where the journal
    /// cannot be written it is anchored for this run of the program alone.
    #[must_use]
    pub fn start(clock: Box<dyn Clock>, owner: &mut Owner) -> Self {
        let steady = Self::alone(clock);
        steady.anchor(owner);
        steady
    }

    /// A clock that no journal knows: it begins with the wall clock's time.
    #[must_use]
    pub fn alone(clock: Box<dyn Clock>) -> Self {
        let look = clock.look();
        let anchor = Anchor {
            boot: look.boot,
            up_ms: look.up_ms,
            moment: look.wall,
        };
        Self {
            clock,
            anchor: Cell::new(anchor),
            noted: Cell::new((None, 0)),
        }
    }

    /// As [`Steady::start`], for a journal that took another's place.
    pub fn anchor(&self, owner: &mut Owner) {
        let look = self.clock.look();
        let mut anchor = owner.state().times.anchor(look);
        if !owner.state().times.has(anchor) {
            let command = Command::Day(DayCommand::AnchorClock(look));
            match owner.command(&command, anchor.moment) {
                // Somebody else may have written in between.
                Ok(()) => anchor = owner.state().times.anchor(look),
                Err(error) => tracing::warn!(%error, "the clock's anchor was not recorded"),
            }
        }
        self.anchor.set(anchor);
        self.noted.set((None, owner.state().times.offset_ms));
    }

    /// Now: a moment that only goes on.
    #[must_use]
    pub fn now(&self) -> Moment {
        self.anchor.get().moment_at(self.clock.look().up_ms)
    }

    /// Milliseconds of the machine's own clock, which does not jump when the time is put right.
    #[must_use]
    pub fn up_ms(&self) -> u64 {
        u64::try_from(self.clock.look().up_ms).unwrap_or(0)
    }

    /// Now on the gym's wall clock.
    #[must_use]
    pub fn local(&self) -> NaiveDateTime {
        self.clock.local()
    }

    /// The day at the gym: by the wall clock, or by what the journal knows where that was never
    /// set.
    #[must_use]
    pub fn day(&self, times: &Times) -> NaiveDate {
        if self.clock.look().is_known() {
            return self.local().date();
        }
        self.day_of(times, self.now())
    }

    /// The day at the gym at a steady moment, as far as is known now.
    #[must_use]
    pub fn day_of(&self, times: &Times, at: Moment) -> NaiveDate {
        let utc = |at: Moment| DateTime::from_timestamp_millis(at.0).unwrap_or_default();
        let zone = self.local() - utc(self.clock.look().wall).naive_utc();
        let told = utc(times.told(at)).naive_utc();
        told.checked_add_signed(zone).unwrap_or(told).date()
    }

    /// The time of day, "18:42"; "--:--" on a wall clock that was never set.
    #[must_use]
    pub fn time_of_day(&self) -> String {
        let time = self.time();
        time.map_or_else(|| "--:--".into(), |time| time.format("%H:%M").to_string())
    }

    /// The time of day; `None` on a wall clock that was never set.
    #[must_use]
    pub fn time(&self) -> Option<NaiveTime> {
        let known = self.clock.look().is_known();
        known.then(|| self.local().time())
    }

    /// How far the wall clock is ahead, if it was set since that was last written down.
    pub fn seen_set(&self, times: &Times) -> Option<i64> {
        let (now, (at, noted_ms)) = (self.now(), self.noted.get());
        if at.is_some_and(|at| now.since(at) < NOTE_EVERY_MS) {
            return None;
        }
        let offset_ms = times.seen_set(self.clock.look(), now, noted_ms)?;
        self.noted.set((Some(now), offset_ms));
        Some(offset_ms)
    }

    /// Catches up with another machine's clock that is ahead: moments are never behind the last
    /// event (as in hybrid logical clocks, Kulkarni et al. 2014, from memory).
    pub fn catch_up(&self, times: &Times) {
        let now = self.now();
        if let Some(last) = times.last().filter(|last| *last > now) {
            let anchor = self.anchor.get();
            self.anchor.set(Anchor {
                moment: anchor.moment.plus_ms(last.since(now)),
                ..anchor
            });
        }
    }
}
