//! The kiosk's days: which one it is, clocks that were set, lifts that were left open.
//!
//! Refuses: to end a day under the hands of those who train; what is recorded here is looked at at
//! the start and at every tick.
use super::Kiosk;
use crate::error::KioskError;
use chrono::NaiveDate;
use domain::training_day::{dates_put_right, left_open, training_day};
use domain::{Command, DayCommand, LiftNo};

impl Kiosk {
    /// Today, at the gym: the day that is trained, until its lifts end.
    #[must_use]
    pub fn date(&self) -> NaiveDate {
        let state = self.owner.state();
        let local = self.clock.day(&state.times);
        let ends_after_s = self.gym.gym.day_ends_after_s();
        training_day(state, ends_after_s, local, self.clock.now())
    }

    /// Notes what the wall clock and the calendar did since it was last looked at; tells whether
    /// anything was recorded.
    pub(super) fn keep_days(&mut self) -> bool {
        let noted = self.note_clock() | self.put_dates_right();
        let closed = self.close_left_open();
        if closed {
            self.decide_next();
            self.replan(None, None);
        }
        noted || closed
    }

    /// Records that the wall clock was set.
    fn note_clock(&mut self) -> bool {
        let Some(offset_ms) = self.clock.seen_set(&self.owner.state().times) else {
            return false;
        };
        self.keep(DayCommand::NoteClock { offset_ms });
        true
    }

    /// Dates that were guessed are put right, once, when the time of day is known.
    fn put_dates_right(&mut self) -> bool {
        let (state, now) = (self.owner.state(), self.clock.now());
        let day_of = |at| self.clock.day_of(&state.times, at);
        let right = dates_put_right(state, self.gym.gym.day_ends_after_s(), now, day_of);
        let any = !right.is_empty();
        for (no, date) in right {
            self.keep(DayCommand::RedateLift { no, date });
        }
        any
    }

    fn close_left_open(&mut self) -> bool {
        let (state, today) = (self.owner.state(), self.date());
        let ends_after_s = self.gym.gym.day_ends_after_s();
        let left = left_open(state, ends_after_s, today, self.clock.now());
        let any = !left.is_empty();
        for no in left {
            self.keep(DayCommand::CloseLeftOpen(no));
        }
        any
    }

    /// Tells that today's date is a guess, until the time of day is known.
    pub(super) fn tell_clock(&mut self) {
        let told = self.say().clock_unset();
        let unknown = self.owner.state().times.unknown_since.is_some();
        if unknown && self.notice.is_empty() {
            self.notice = told;
        } else if !unknown && self.notice == told {
            self.notice = self.notice_of_files();
        }
    }

    /// Opens a lift again that was left open, on the coach's word: it goes on today, on its own
    /// date.
    ///
    /// # Errors
    /// [`KioskError`] when it was not left open, its lifter is under way, or the journal cannot
    /// keep it.
    pub fn reopen(&mut self, no: LiftNo) -> Result<(), KioskError> {
        let on = self.date();
        let command = Command::Day(DayCommand::ReopenLift { no, on });
        self.owner.command(&command, self.clock.now())?;
        self.replan(None, None);
        self.after_change();
        Ok(())
    }

    fn keep(&mut self, command: DayCommand) {
        if let Err(error) = self.owner.command(&Command::Day(command), self.clock.now()) {
            tracing::warn!(%error, ?command, "the clock or a day was not kept");
        }
    }
}
