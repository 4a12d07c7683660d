//! A programme: days of lifts in a queue, or on days of the week, and where a lifter stands in it.
//!
//! Where somebody stands follows from what was done alone, so that a missed week skips nothing and
//! an old record gives the same answer for ever. Refuses: clocks, and days of which nothing was
//! done.
use crate::manner::Manner;
use crate::prescription::LoadWish;
use alloc::string::String;
use alloc::vec;
use alloc::vec::Vec;
use chrono::{Datelike as _, Days, NaiveDate, Weekday};

pub mod blocks;
pub mod fill;
mod rules;
mod shipped;

use blocks::Block;
pub use rules::{RuleLine, SplitLine};
pub use shipped::programmes as shipped;

/// What a coach has written of programmes and of next time.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct Coaching {
    /// Programmes, in the order of the file.
    pub programmes: Vec<Programme>,
    /// Rules of next time, in the order of the file.
    pub rules: Vec<RuleLine>,
    /// When to split the deadlift, in the order of the file.
    pub splits: Vec<SplitLine>,
}

/// One programme.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Programme {
    /// What the gym calls it.
    pub name: String,
    /// Names of the lifters who follow it.
    pub lifters: Vec<String>,
    /// When its days are due.
    pub pace: Pace,
    /// Its days, at least one, but none with blocks.
    pub days: Vec<Day>,
    /// Its blocks, by date; none with days of its own.
    pub blocks: Vec<Block>,
    /// Where the coach put lifters in its queue.
    pub begins: Vec<Begin>,
}

/// Where the coach put a lifter in a queue. Who was put twice stands where the later one says.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Begin {
    /// Who.
    pub lifter: String,
    /// The day of the queue that comes next, from 0.
    pub day: usize,
    /// From this date on; what was done before it no longer says which day is next.
    pub since: NaiveDate,
}

/// When the days of a programme are due.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Pace {
    /// One after the other, whenever the lifter comes, but at least so many days apart.
    Queue {
        /// From one day of the programme to the next, at least 1.
        apart_days: u8,
    },
    /// Each on its own day of the week.
    Week,
    /// In blocks of weeks, each with its own days.
    Blocks,
}

/// One day of a programme.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Day {
    /// What the coach calls it.
    pub name: String,
    /// Its day of the week, with [`Pace::Week`].
    pub weekday: Option<Weekday>,
    /// What is done on it, in order, at least one.
    pub tasks: Vec<Task>,
}

/// One thing done on a day: a lift, or several that take turns from one time to the next.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Task {
    /// In their order, at least one.
    pub alternate: Vec<Work>,
}

/// A lift with its sets and reps.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Work {
    /// The lift's name.
    pub lift: String,
    /// Work sets.
    pub sets: u8,
    /// Reps of one.
    pub reps: u8,
    /// The work load of the first time; after that the rules of next time give it.
    pub first: LoadWish,
    /// Name of the warm-up pattern; `None` for the lifter's own.
    pub ladder: Option<String>,
    /// Rest before a work set in seconds; `None` for the lift's own.
    pub rest_s: Option<u32>,
    /// The bar's name; `None` for the one that the lift is done with.
    pub bar: Option<String>,
    /// Where and how the sets are done.
    pub manner: Manner,
    /// The coach's words.
    pub note: String,
}

impl Coaching {
    /// The programme that a lifter follows.
    #[must_use]
    pub fn of(&self, lifter: &str) -> Option<&Programme> {
        let follows = |p: &&Programme| p.lifters.iter().any(|name| name == lifter);
        self.programmes.iter().find(follows)
    }
}

/// What was done on one day: the names of its lifts.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Done<'a> {
    /// The day.
    pub date: NaiveDate,
    /// Each lift once or more, in the order done.
    pub lifts: Vec<&'a str>,
}

/// Where a lifter stands in a programme.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Standing {
    /// The last day on which something of the programme was done.
    pub last: Option<NaiveDate>,
    /// The day of the queue that is next, from 0.
    pub next_day: usize,
    /// For each task of each day, which of its lifts is next, from 0.
    turns: Vec<Vec<usize>>,
}

/// What a programme has for a day.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Due<'p> {
    /// This.
    Day {
        /// Which day of the programme.
        day: &'p Day,
        /// What is done, in order.
        works: Vec<&'p Work>,
    },
    /// Nothing before this date.
    Rest(NaiveDate),
}

impl Programme {
    /// Where somebody stands who has done `done`, oldest first.
    ///
    /// What was done on one date counts for the day of the programme that has most of it; of
    /// several alike, for the one that was next or comes soonest after. That day is then over; a
    /// task of it that was left out keeps its turn.
    #[must_use]
    pub fn standing<'a>(&self, done: impl IntoIterator<Item = Done<'a>>) -> Standing {
        let turns = self.days.iter().map(|day| vec![0; day.tasks.len()]);
        let mut standing = Standing {
            last: None,
            next_day: 0,
            turns: turns.collect(),
        };
        for done in done {
            self.count(&mut standing, &done);
        }
        standing
    }

    /// Where `lifter` stands on `date`, who has done `done` before it: as [`Programme::standing`],
    /// from the day on that the coach put them.
    #[must_use]
    pub fn standing_of(&self, lifter: &str, date: NaiveDate, done: Vec<Done<'_>>) -> Standing {
        let holds = |begin: &&Begin| {
            begin.lifter == lifter && begin.since <= date && begin.day < self.days.len()
        };
        let Some(begin) = self.begins.iter().rev().find(holds) else {
            return self.standing(done);
        };
        let earlier = |done: &Done<'_>| done.date < begin.since;
        let (before, after): (Vec<_>, Vec<_>) = done.into_iter().partition(earlier);
        let mut standing = self.standing(before);
        standing.next_day = begin.day;
        for done in after {
            self.count(&mut standing, &done);
        }
        standing
    }

    /// Counts what was done on one date.
    fn count(&self, standing: &mut Standing, Done { date, lifts }: &Done<'_>) {
        let count = self.days.len();
        let soonest = (0..count).map(|ahead| (standing.next_day + ahead) % count);
        let had = soonest.map(|day| (self.days[day].had(lifts), day));
        // The first of the greatest.
        let best = had.reduce(|best, next| if next.0 > best.0 { next } else { best });
        let Some((1.., day)) = best else { return };
        standing.last = Some(*date);
        standing.next_day = (day + 1) % count;
        for (task, turn) in self.days[day].tasks.iter().zip(&mut standing.turns[day]) {
            if let Some(at) = task.last_of(lifts) {
                *turn = (at + 1) % task.alternate.len();
            }
        }
    }

    /// What is due on `date`.
    #[must_use]
    pub fn due(&self, standing: &Standing, date: NaiveDate) -> Due<'_> {
        let at = match self.pace {
            Pace::Queue { apart_days } => {
                let soonest = standing.last.map(|last| later(last, u64::from(apart_days)));
                match soonest.filter(|soonest| date < *soonest) {
                    Some(soonest) => return Due::Rest(soonest),
                    None => standing.next_day,
                }
            }
            // Blocks go by the date alone; who fills days asks them.
            Pace::Blocks => return Due::Rest(NaiveDate::MAX),
            Pace::Week => match self.on_weekday(date.weekday()) {
                Some(at) => at,
                None => {
                    let dates = (1..7).map(|days| later(date, days));
                    let next = |d: &NaiveDate| self.on_weekday(d.weekday()).is_some();
                    return Due::Rest(dates.clone().find(next).unwrap_or(later(date, 7)));
                }
            },
        };
        let (Some(day), Some(turns)) = (self.days.get(at), standing.turns.get(at)) else {
            return Due::Rest(NaiveDate::MAX);
        };
        let works = day.tasks.iter().zip(turns);
        Due::Day {
            day,
            works: works
                .filter_map(|(task, turn)| task.alternate.get(*turn))
                .collect(),
        }
    }

    fn on_weekday(&self, weekday: Weekday) -> Option<usize> {
        let is = |day: &Day| day.weekday == Some(weekday);
        self.days.iter().position(is)
    }
}

impl Day {
    /// How many of its tasks were among `lifts`.
    fn had(&self, lifts: &[&str]) -> usize {
        let had = |task: &&Task| task.last_of(lifts).is_some();
        self.tasks.iter().filter(had).count()
    }
}

impl Task {
    /// Which of its lifts was done last.
    fn last_of(&self, lifts: &[&str]) -> Option<usize> {
        let place = |lift: &&str| self.alternate.iter().position(|work| work.lift == **lift);
        lifts.iter().rev().find_map(place)
    }
}

fn later(date: NaiveDate, days: u64) -> NaiveDate {
    date.checked_add_days(Days::new(days))
        .unwrap_or(NaiveDate::MAX)
}
