//! How far a meet or test day is: what was tapped on its page, so that a power cut loses nothing.
//!
//! Refuses: the file that the day was written in, which is the coach's; more steps back than
//! [`STEPS_MAX`].
use crate::meet_kept::{read_card, read_running, write_card, write_running};
use domain::meet::{Flight, Taken, Wait};
use domain::meet_card::{Card, Judged};
use domain::meet_day::MeetDay;
use domain::meet_order::ROUNDS;
use domain::meet_round::{Round, Running};
use domain::{Mass, Moment};

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
    /// The same for the flight after this one, whose warm-ups begin in this one's time.
    pub ahead: Vec<(u8, Moment)>,
    /// The round under way.
    pub running: Running,
    /// The cards of the starters, as far as something is on them.
    pub cards: Vec<Card>,
}

/// What was tapped.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Step {
    /// The flight begins; once it has begun, an attempt of somebody else is over; after the last of
    /// ours, the next flight.
    On,
    /// An attempt of somebody else is over, though one of ours was reckoned to come first.
    Other,
    /// The starter of this number of the next flight is through so many warm-ups.
    TakenAhead(usize, u8),
    /// The attempt of the starter of this number is judged, or passed.
    Judged(usize, Judged),
    /// The starter declares this for the attempt to come.
    Declared(usize, Mass),
    /// The starter's lot number.
    Lot(usize, u16),
    /// The starter leaves the flight.
    Out(usize),
    /// Everything a minute earlier.
    Sooner,
    /// Everything a minute later.
    Later,
    /// The starter of this number is through so many warm-ups, those left out among them.
    Taken(usize, u8),
}

impl Progress {
    /// As it stands for somebody with so many attempts before them, the flight beginning in so
    /// many seconds where it has not begun.
    #[must_use]
    pub fn flight_of(&self, attempt_s: u32, before: u16, begins_in_s: u32, now: Moment) -> Flight {
        let begun = self.begun.unwrap_or(now);
        let last = self.last.max(begun);
        let wait_s = match self.begun {
            Some(_) => 0,
            None => begins_in_s,
        };
        Flight {
            before: self.called.saturating_add(before),
            attempt_s,
            called: self.called,
            elapsed_s: begun.seconds_until(last),
            since_s: last.seconds_until(now),
            later_s: self.later_s,
            wait: Wait {
                seconds: wait_s,
                after: 0,
            },
        }
    }

    /// The flight under way with the cards; `None` when the day has no such flight.
    #[must_use]
    pub fn round<'a>(&'a self, day: &'a MeetDay, now: Moment) -> Option<Round<'a>> {
        Some(Round {
            day,
            flight: day.flights.get(self.flight)?,
            cards: &self.cards,
            running: self.running,
            now,
        })
    }

    /// Whoever of ours the bar is loaded for.
    #[must_use]
    pub fn at_bar(&self, day: &MeetDay, now: Moment) -> Option<usize> {
        self.begun?;
        self.round(day, now)?.at_bar()
    }

    /// The warm-ups that a starter took.
    #[must_use]
    pub fn taken_by(&self, starter: usize, now: Moment) -> Taken {
        Self::since(self.taken.get(starter), now)
    }

    /// The warm-ups that a starter of the next flight took.
    #[must_use]
    pub fn ahead_by(&self, starter: usize, now: Moment) -> Taken {
        Self::since(self.ahead.get(starter), now)
    }

    fn since(of: Option<&(u8, Moment)>, now: Moment) -> Taken {
        of.map_or_else(Taken::default, |(count, at)| Taken {
            count: *count,
            since_s: at.seconds_until(now),
        })
    }

    /// When something was last tapped that has a time.
    #[must_use]
    pub fn tapped(&self) -> Moment {
        let taken = self.taken.iter().chain(&self.ahead).map(|(_, at)| *at);
        taken.chain(self.begun).fold(self.last, Ord::max)
    }

    /// Attempts of the round under way that are over, and all of it.
    #[must_use]
    pub fn attempts(&self, day: &MeetDay, now: Moment) -> (u16, u16) {
        let Some(round) = self.round(day, now) else {
            return (0, 0);
        };
        let at = self.running.round;
        let came = |card: &&Card| {
            let judged = card.attempts.get(at).and_then(|attempt| attempt.judged);
            judged.is_some_and(|judged| judged != Judged::Passed)
        };
        let over = self.running.others_over + self.cards.iter().filter(came).count();
        let all = over + round.to_come().len();
        let count = |n: usize| u16::try_from(n).unwrap_or(u16::MAX);
        (count(over), count(all))
    }

    /// Whether somebody of ours has an attempt to come.
    #[must_use]
    pub fn has_ours(&self, day: &MeetDay) -> bool {
        let flight = day.flights.get(self.flight);
        let ours = flight.map_or(0, |flight| flight.starters.len());
        (0..ours).any(|at| self.card(at).round() < ROUNDS)
    }

    /// Whether attempts of the flight are still to be counted: those of ours, and those that the
    /// next flight waits for.
    #[must_use]
    pub fn goes_on(&self, day: &MeetDay) -> bool {
        let waits = self.has_ours(day) || self.flight + 1 < day.flights.len();
        waits && self.running.round < ROUNDS
    }

    /// The card of a starter.
    #[must_use]
    pub fn card(&self, starter: usize) -> Card {
        self.cards.get(starter).copied().unwrap_or_default()
    }

    fn after(&self, day: &MeetDay, step: Step, now: Moment) -> Option<Self> {
        let mut next = self.clone();
        match step {
            Step::On if self.begun.is_none() => {
                (next.begun, next.last) = (Some(now), now);
                next.later_s = 0;
            }
            Step::On if self.goes_on(day) => {
                if self.at_bar(day, now).is_some() {
                    // What became of it is to be said.
                    return None;
                }
                next.another(now);
            }
            Step::Other if self.begun.is_some() && self.goes_on(day) => next.another(now),
            Step::Other => return None,
            Step::On if self.flight + 1 < day.flights.len() => {
                next = Self {
                    flight: self.flight + 1,
                    taken: self.ahead.clone(),
                    ..Self::default()
                };
            }
            Step::On => return None,
            Step::Sooner => next.later_s = self.later_s.checked_sub(60)?,
            Step::Later => next.later_s = self.later_s.checked_add(60)?,
            Step::Taken(starter, count) => take(&mut next.taken, starter, (count, now)),
            Step::TakenAhead(starter, count) => take(&mut next.ahead, starter, (count, now)),
            Step::Judged(starter, judged) => {
                *next.card_mut(starter) = self.card(starter).judge(judged, now).ok()?;
                if judged != Judged::Passed {
                    (next.called, next.last) = (self.called.saturating_add(1), now);
                }
            }
            Step::Declared(starter, load) => {
                let flight = day.flights.get(self.flight)?;
                let of = flight.starters.get(starter)?;
                let table = self
                    .round(day, now)?
                    .table(starter, self.begun.is_some(), None);
                let card = self.card(starter);
                let after = card.declare((of.opener, of.unit), load, &day.table, table);
                *next.card_mut(starter) = after.ok().filter(|after| *after != card)?;
            }
            Step::Lot(starter, lot) => {
                let known = self.card(starter).lot == Some(lot);
                next.card_mut(starter).lot = (!known).then_some(lot);
                next.card(starter).lot?;
            }
            Step::Out(starter) => {
                if self.card(starter).round() >= ROUNDS {
                    return None;
                }
                next.card_mut(starter).out = true;
            }
        }
        next.running = next.round(day, now)?.onwards();
        Some(next)
    }

    fn another(&mut self, now: Moment) {
        self.running.others_over += 1;
        (self.called, self.last) = (self.called.saturating_add(1), now);
    }

    fn card_mut(&mut self, starter: usize) -> &mut Card {
        if self.cards.len() <= starter {
            self.cards.resize(starter + 1, Card::default());
        }
        &mut self.cards[starter]
    }

    fn write(&self) -> String {
        let begun = self.begun.map_or(String::from("-"), |at| at.0.to_string());
        let taken = self.taken.iter().map(|(n, at)| format!(" {n}@{}", at.0));
        let ahead = self.ahead.iter().map(|(n, at)| format!(" a{n}@{}", at.0));
        let cards = self.cards.iter().enumerate();
        let cards = cards.filter_map(|(at, card)| write_card(at, card));
        format!(
            "{} {begun} {} {} {}{}{} {}{}",
            self.flight,
            self.called,
            self.last.0,
            self.later_s,
            taken.collect::<String>(),
            ahead.collect::<String>(),
            write_running(&self.running),
            cards.collect::<String>(),
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
        let mut read = Self {
            flight,
            begun,
            called,
            last,
            later_s,
            // A line of an older version has no round: everybody through was of the first one.
            running: Running {
                round: 0,
                others_over: called.into(),
            },
            ..Self::default()
        };
        for word in words {
            if let Some((at, card)) = read_card(word) {
                *read.card_mut(at) = card;
            } else if let Some(running) = read_running(word) {
                read.running = running;
            } else {
                let (to, word) = match word.strip_prefix('a') {
                    Some(word) => (&mut read.ahead, word),
                    None => (&mut read.taken, word),
                };
                let (count, at) = word.split_once('@')?;
                to.push((count.parse().ok()?, Moment(at.parse().ok()?)));
            }
        }
        Some(read)
    }
}

fn take(all: &mut Vec<(u8, Moment)>, starter: usize, taken: (u8, Moment)) {
    if all.len() <= starter {
        all.resize(starter + 1, (0, Moment(0)));
    }
    all[starter] = taken;
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
