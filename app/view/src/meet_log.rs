//! How far a meet or test day is: what was tapped on its page, so that a power cut loses nothing.
//!
//! Refuses: the file that the day was written in, which is the coach's; more steps back than
//! [`STEPS_MAX`].
use domain::Moment;
use domain::meet::{Flight, Taken};
use domain::meet_day::{MeetDay, Starter};

/// The name under which it is kept among the files taken; no folder has such a file.
pub const MEET_LOG: &str = "meet-log.txt";
/// How many taps can be taken back.
pub const STEPS_MAX: usize = 24;

/// How far the day is.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct Progress {
    /// Which flight of the file, from 0.
    pub flight: usize,
    /// When it began; `None` before.
    pub begun: Option<Moment>,
    /// Attempts that are over.
    pub called: u16,
    /// When the last of them was.
    pub last: Moment,
    /// Said by hand: so many seconds later; earlier where it is negative.
    pub later_s: i32,
    /// Warm-ups taken by each starter of the flight: how many, and when the last of them was.
    pub taken: Vec<(u8, Moment)>,
}

/// What was tapped.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Step {
    /// The flight begins; once it has begun, an attempt is over; after the last, the next flight.
    On,
    /// Everything a minute earlier.
    Sooner,
    /// Everything a minute later.
    Later,
    /// The starter of this number is through so many warm-ups, those left out among them.
    Taken(usize, u8),
}

impl Progress {
    /// As it stands for one starter.
    #[must_use]
    pub fn flight_of(&self, attempt_s: u32, starter: &Starter, now: Moment) -> Flight {
        let begun = self.begun.unwrap_or(now);
        let last = self.last.max(begun);
        Flight {
            before: starter.before,
            attempt_s,
            called: self.called.min(starter.before),
            elapsed_s: begun.seconds_until(last),
            since_s: last.seconds_until(now),
            later_s: self.later_s,
        }
    }

    /// The warm-ups that a starter took.
    #[must_use]
    pub fn taken_by(&self, starter: usize, now: Moment) -> Taken {
        let of = self.taken.get(starter);
        of.map_or_else(Taken::default, |(count, at)| Taken {
            count: *count,
            since_s: at.seconds_until(now),
        })
    }

    /// When something was last tapped that has a time.
    #[must_use]
    pub fn tapped(&self) -> Moment {
        let taken = self.taken.iter().map(|(_, at)| *at);
        taken.chain(self.begun).fold(self.last, Ord::max)
    }

    /// How many attempts the flight has until the last of ours has opened.
    #[must_use]
    pub fn attempts(&self, day: &MeetDay) -> u16 {
        let flight = day.flights.get(self.flight);
        let before = flight.and_then(|f| f.starters.iter().map(|s| s.before).max());
        // The opener itself is one too.
        before.map_or(0, |before| before.saturating_add(1))
    }

    fn after(&self, day: &MeetDay, step: Step, now: Moment) -> Option<Self> {
        let mut next = self.clone();
        match step {
            Step::On if self.begun.is_none() => {
                (next.begun, next.last) = (Some(now), now);
                next.later_s = 0;
            }
            Step::On if self.called < self.attempts(day) => {
                (next.called, next.last) = (self.called + 1, now);
            }
            Step::On if self.flight + 1 < day.flights.len() => {
                next = Self {
                    flight: self.flight + 1,
                    ..Self::default()
                };
            }
            Step::On => return None,
            Step::Sooner => next.later_s = self.later_s.checked_sub(60)?,
            Step::Later => next.later_s = self.later_s.checked_add(60)?,
            Step::Taken(starter, count) => {
                if next.taken.len() <= starter {
                    next.taken.resize(starter + 1, (0, Moment(0)));
                }
                next.taken[starter] = (count, now);
            }
        }
        Some(next)
    }

    fn write(&self) -> String {
        let begun = self.begun.map_or(String::from("-"), |at| at.0.to_string());
        let taken = self.taken.iter().map(|(n, at)| format!(" {n}@{}", at.0));
        format!(
            "{} {begun} {} {} {}{}",
            self.flight,
            self.called,
            self.last.0,
            self.later_s,
            taken.collect::<String>()
        )
    }

    fn read(line: &str) -> Option<Self> {
        let mut words = line.split(' ');
        let flight = words.next()?.parse().ok()?;
        let begun = match words.next()? {
            "-" => None,
            at => Some(Moment(at.parse().ok()?)),
        };
        let called = words.next()?.parse().ok()?;
        let last = Moment(words.next()?.parse().ok()?);
        let later_s = words.next()?.parse().ok()?;
        let taken = words.map(|word| {
            let (count, at) = word.split_once('@')?;
            Some((count.parse().ok()?, Moment(at.parse().ok()?)))
        });
        Some(Self {
            flight,
            begun,
            called,
            last,
            later_s,
            taken: taken.collect::<Option<Vec<_>>>()?,
        })
    }
}

/// How far the day is, and how it came there.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct MeetLog {
    /// Oldest first; the last one stands.
    steps: Vec<Progress>,
}

impl MeetLog {
    /// Reads what [`MeetLog::write`] wrote for this day; what is of another day, or cannot be
    /// read, counts as nothing.
    #[must_use]
    pub fn read(text: &str, day: &MeetDay) -> Self {
        let mut lines = text.lines();
        if lines.next() != Some(head(day).as_str()) {
            return Self::default();
        }
        let steps = lines.map(Progress::read).collect::<Option<Vec<_>>>();
        Self {
            steps: steps.unwrap_or_default(),
        }
    }

    /// As kept: a line for the day, then one a step.
    #[must_use]
    pub fn write(&self, day: &MeetDay) -> String {
        let mut text = head(day);
        for step in &self.steps {
            text.push('\n');
            text.push_str(&step.write());
        }
        text
    }

    /// How far it is.
    #[must_use]
    pub fn now(&self) -> Progress {
        self.steps.last().cloned().unwrap_or_default()
    }

    /// How far it was before the last tap; `None` when nothing was tapped.
    #[must_use]
    pub fn before(&self) -> Option<Progress> {
        self.steps.iter().rev().nth(1).cloned()
    }

    /// After a tap; `None` when it changes nothing.
    #[must_use]
    pub fn after(&self, day: &MeetDay, step: Step, now: Moment) -> Option<Self> {
        let next = self.now().after(day, step, now)?;
        let mut steps = self.steps.clone();
        // What stands before the oldest step that can be taken back is where it begins.
        if steps.is_empty() {
            steps.push(Progress::default());
        }
        steps.push(next);
        let over = steps.len().saturating_sub(STEPS_MAX + 1);
        steps.drain(..over);
        Some(Self { steps })
    }

    /// With the last tap taken back; `None` when there is none to take back.
    #[must_use]
    pub fn undone(&self) -> Option<Self> {
        let mut steps = self.steps.clone();
        steps.pop()?;
        (!steps.is_empty()).then_some(Self { steps })
    }
}

/// What tells one day from another.
fn head(day: &MeetDay) -> String {
    day.date.format("%Y-%m-%d").to_string()
}
