//! What a starter of a meet day has to do now: the warm-ups as timed, and one that was called a
//! moment ago and has no time any more only because that moment went by.
//!
//! Refuses: taking a warm-up off the page while its lifter may be at the bar with it.
use crate::meet_log::{MeetLog, Progress};
use domain::Moment;
use domain::meet::{Taken, TimedWarmUp};
use domain::meet_day::{Call, MeetDay, MeetFlight, Starter};

/// How long a warm-up that was called stays on the page, seconds: a set with the walk to the bar.
/// Common practice, no source.
const GRACE_S: u32 = 60;

/// One of a flight's starters.
#[derive(Debug, Clone, Copy)]
pub(crate) struct OfFlight<'a> {
    pub(crate) day: &'a MeetDay,
    pub(crate) flight: &'a MeetFlight,
    /// Which of the flight's, from 0.
    pub(crate) number: usize,
    pub(crate) starter: &'a Starter,
}

impl OfFlight<'_> {
    /// What to do at `now`, a warm-up that was called a moment ago still among it; `None` when the
    /// figures cannot be reckoned with.
    pub(crate) fn due(&self, log: &MeetLog, now: Moment) -> Option<Call> {
        let progress = log.now();
        let call = self.call(&progress, progress.taken_by(self.number, now), now)?;
        let Some((called, ago_s)) = self.called(log, &call, now) else {
            return Some(call);
        };
        // The others are timed as if it had been taken when it was called.
        let taken = Taken {
            count: called.number + 1,
            since_s: ago_s,
        };
        let mut call = self.call(&progress, taken, now)?;
        let over = progress.called.min(self.starter.before);
        let held = TimedWarmUp {
            in_s: 0,
            after_attempts: over,
            ..called
        };
        call.timed.warm_ups.insert(0, held);
        Some(call)
    }

    fn call(&self, progress: &Progress, taken: Taken, now: Moment) -> Option<Call> {
        let flight = progress.flight_of(self.flight.attempt_s, self.starter, now);
        self.day.call(self.starter, &flight, &taken).ok()
    }

    /// The warm-up that came due within the last moments and is left out by now, and how many
    /// seconds ago it was.
    fn called(&self, log: &MeetLog, call: &Call, now: Moment) -> Option<(TimedWarmUp, u32)> {
        let progress = log.now();
        let tapped = progress.tapped();
        let floor = Moment(now.0 - i64::from(GRACE_S) * 1_000);
        let since = (progress.begun.is_some()).then(|| (progress.clone(), floor.max(tapped), now));
        // What stood before the last tap, if that is not long ago.
        let before = log.before().filter(|_| tapped >= floor);
        let before = before.map(|before| {
            let from = floor.max(before.tapped());
            (before, from, tapped)
        });
        let spans = [since, before].into_iter().flatten();
        let mut due = spans.filter_map(|(stood, from, until)| {
            if stood.flight != progress.flight || stood.begun.is_none() {
                return None;
            }
            let then = self.call(&stood, stood.taken_by(self.number, from), from)?;
            let first = *then.timed.warm_ups.first()?;
            let waited_s = from.seconds_until(until).checked_sub(first.in_s)?;
            Some((first, waited_s + until.seconds_until(now)))
        });
        due.find(|(first, _)| call.timed.left_out.contains(&first.number))
    }
}
