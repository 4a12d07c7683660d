//! What a starter of a meet day has to do now: the warm-ups as timed, and one that was called a
//! moment ago and has no time any more only because that moment went by.
//!
//! Refuses: taking a warm-up off the page while its lifter may be at the bar with it.
use crate::meet_log::{MeetLog, Progress};
use domain::Moment;
use domain::meet::{Flight, Taken, TimedWarmUp, Wait};
use domain::meet_day::{Call, MeetDay, MeetFlight, Starter};
use domain::meet_round::{Round, Running, Turn};

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
    /// Seconds until the flight begins by the clock, where it has not.
    pub(crate) begins_in_s: u32,
    /// Whether the flight is the one after that under way.
    pub(crate) ahead: bool,
}

impl OfFlight<'_> {
    /// What to do at `now`, a warm-up that was called a moment ago still among it; `None` when the
    /// figures cannot be reckoned with.
    pub(crate) fn due(&self, log: &MeetLog, now: Moment) -> Option<Call> {
        let progress = log.now();
        let call = self.call(&progress, self.taken(&progress, now), now)?;
        let Some((called, ago_s)) = self.called(log, &call, now) else {
            return Some(call);
        };
        // The others are timed as if it had been taken when it was called.
        let taken = Taken {
            count: called.number + 1,
            since_s: ago_s,
        };
        let mut call = self.call(&progress, taken, now)?;
        let held = TimedWarmUp {
            in_s: 0,
            after_attempts: progress.called,
            ..called
        };
        call.timed.warm_ups.insert(0, held);
        Some(call)
    }

    /// When the starter comes to the bar, and the flight with so many attempts before.
    pub(crate) fn turn(&self, progress: &Progress, now: Moment) -> Option<(Turn, Flight)> {
        let under_way = progress.round(self.day, now)?;
        if !self.ahead {
            let turn = under_way.turn(self.number)?;
            let attempt_s = self.flight.attempt_s;
            let flight = progress.flight_of(attempt_s, turn.before, self.begins_in_s, now);
            return Some((turn, flight));
        }
        let next = Round {
            flight: self.flight,
            cards: &[],
            running: Running::default(),
            ..under_way
        };
        let mut turn = next.turn(self.number)?;
        let left = under_way.left();
        turn.before = turn.before.saturating_add(left);
        let of_now = under_way.flight;
        let attempt_s = of_now.attempt_s;
        let mut flight = progress.flight_of(attempt_s, left, 0, now);
        // It does not begin before its own clock, however quick this one is.
        let early = self.begins_in_s.saturating_sub(flight.opener_in_s());
        flight.before = flight.before.saturating_add(turn.before - left);
        flight.wait = Wait {
            seconds: early,
            after: flight.called.saturating_add(left),
        };
        Some((turn, flight))
    }

    /// The warm-ups that the starter took.
    fn taken(&self, progress: &Progress, now: Moment) -> Taken {
        if self.ahead {
            progress.ahead_by(self.number, now)
        } else {
            progress.taken_by(self.number, now)
        }
    }

    fn call(&self, progress: &Progress, taken: Taken, now: Moment) -> Option<Call> {
        // Warm-ups lead to the opener, as it is declared now.
        let (turn, flight) = self.turn(progress, now)?;
        if turn.round > 0 {
            return None;
        }
        let starter = Starter {
            opener: turn.load,
            ..self.starter.clone()
        };
        self.day.call(&starter, &flight, &taken).ok()
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
            let then = self.call(&stood, self.taken(&stood, from), from)?;
            let first = *then.timed.warm_ups.first()?;
            let waited_s = from.seconds_until(until).checked_sub(first.in_s)?;
            Some((first, waited_s + until.seconds_until(now)))
        });
        due.find(|(first, _)| call.timed.left_out.contains(&first.number))
    }
}
