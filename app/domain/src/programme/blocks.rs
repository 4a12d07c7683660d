//! Blocks of weeks of days: which week a date is in, and what that week has, lighter ones too.
//!
//! A date alone says the week: what was missed is not made up for. Refuses: dates in two blocks;
//! whoever reads a file tells those.
use super::Programme;
use crate::lift::to_step;
use crate::mass::Mass;
use crate::next::share_of;
use crate::prescription::{LoadWish, Prescription, SetGroup};
use crate::track::{Track, TrackName};
use alloc::string::String;
use alloc::vec::Vec;
use chrono::{Datelike as _, Days, NaiveDate, Weekday};

/// Weeks with the same days, once or several times over.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Block {
    /// What the coach calls it.
    pub name: String,
    /// The Monday of its first week.
    pub starts: NaiveDate,
    /// How many weeks, 1 to 52.
    pub weeks: u8,
    /// How often those weeks come one after the other, 1 to 52.
    pub times: u8,
    /// Which weeks are light.
    pub light: Option<Light>,
    /// Its days, each on its own day of the week, at least one.
    pub days: Vec<BlockDay>,
}

/// Which weeks of a block are light, and how light.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Light {
    /// Hundredths of a percent of what the week would ask.
    pub share: u32,
    /// Every so many weeks of the block, all its times counted through; `None` for the last week of
    /// each time.
    pub every: Option<u16>,
}

/// A day of a block.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct BlockDay {
    /// What the coach calls it.
    pub name: String,
    /// Its day of the week.
    pub weekday: Weekday,
    /// What is done on it, in order, at least one.
    pub lifts: Vec<BlockLift>,
}

/// A lift of a day, week by week.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct BlockLift {
    /// The lift's name.
    pub lift: String,
    /// The track's name; `None` where the reps alone say which sets follow from one another.
    pub track: Option<TrackName>,
    /// The set groups of each week, none where a week does not have it; of one entry all weeks.
    pub weeks: Vec<Vec<SetGroup>>,
    /// The work load of the first time where what is due is asked; after that the rules give it.
    pub first: LoadWish,
    /// The bar's name; `None` for the one that the lift is done with.
    pub bar: Option<String>,
    /// Name of the warm-up pattern; `None` for the lifter's own.
    pub ladder: Option<String>,
    /// The coach's words.
    pub note: String,
}

/// A day of a block as it stands on a date.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) struct Standing<'p> {
    pub(crate) block: &'p Block,
    /// The week of the block from 1, all its times counted through.
    pub(crate) week: u16,
    pub(crate) day: &'p BlockDay,
}

impl Block {
    /// All its weeks, all its times.
    #[must_use]
    pub fn weeks_in_all(&self) -> u16 {
        u16::from(self.weeks) * u16::from(self.times)
    }

    /// The Monday after its last week.
    #[must_use]
    pub fn ends_before(&self) -> NaiveDate {
        let days = Days::new(7 * u64::from(self.weeks_in_all()));
        self.starts.checked_add_days(days).unwrap_or(NaiveDate::MAX)
    }

    /// The week that a date is in, from 1, all times counted through.
    #[must_use]
    pub fn week_of(&self, date: NaiveDate) -> Option<u16> {
        let days = (date - self.starts).num_days();
        let week = u16::try_from(days.div_euclid(7)).ok()?;
        (days >= 0 && week < self.weeks_in_all()).then_some(week + 1)
    }

    /// The share of a light week, in hundredths of a percent of what it would ask; `None` for the
    /// others.
    #[must_use]
    pub fn light(&self, week: u16) -> Option<u32> {
        let light = self.light?;
        let every = light.every.unwrap_or(u16::from(self.weeks));
        (every > 0 && week.is_multiple_of(every)).then_some(light.share)
    }
}

impl BlockLift {
    /// The groups of a week of its block, from 1, all times counted through.
    #[must_use]
    pub fn groups(&self, week: u16) -> &[SetGroup] {
        let count = self.weeks.len().max(1);
        let at = usize::from(week.max(1) - 1) % count;
        self.weeks.get(at).map_or(&[], Vec::as_slice)
    }
}

impl Standing<'_> {
    /// "peak, week 2 of 3, Monday": as the coach counts, each time anew.
    pub(crate) fn words(&self) -> String {
        let weeks = u16::from(self.block.weeks.max(1));
        let week = (self.week - 1) % weeks + 1;
        let (block, day) = (&self.block.name, &self.day.name);
        alloc::format!("{block}, week {week} of {weeks}, {day}")
    }
}

impl Programme {
    /// The day of a block that a date is.
    pub(crate) fn block_day(&self, date: NaiveDate) -> Option<Standing<'_>> {
        self.blocks.iter().find_map(|block| {
            let week = block.week_of(date)?;
            let is = |day: &&BlockDay| {
                let has = |lift: &BlockLift| !lift.groups(week).is_empty();
                day.weekday == date.weekday() && day.lifts.iter().any(has)
            };
            let day = block.days.iter().find(is)?;
            Some(Standing { block, week, day })
        })
    }

    /// The first date after `date` on which a block has something.
    pub(crate) fn next_block_day(&self, date: NaiveDate) -> Option<NaiveDate> {
        let last = self.blocks.iter().map(Block::ends_before).max()?;
        let first = self.blocks.iter().map(|block| block.starts).min()?;
        let from = date.succ_opt()?.max(first);
        let mut days = from.iter_days().take_while(|day| *day < last);
        days.find(|day| self.block_day(*day).is_some())
    }

    /// All dates on which blocks have a lift in a track, oldest first.
    pub(crate) fn block_dates(&self, lift: &str, track: Track) -> Vec<NaiveDate> {
        let mut dates = Vec::new();
        for block in &self.blocks {
            let of = |day: &BlockDay, week: u16| {
                let own = day.lifts.iter().filter(|own| own.lift == lift);
                let mut rows = own.filter_map(|own| row(own, week, "", block.starts));
                rows.any(|row| row.track() == track)
            };
            for week in 1..=block.weeks_in_all() {
                for day in block.days.iter().filter(|day| of(day, week)) {
                    let days = 7 * u64::from(week - 1);
                    let days = days + u64::from(day.weekday.num_days_from_monday());
                    dates.extend(block.starts.checked_add_days(Days::new(days)));
                }
            }
        }
        dates.sort_unstable();
        dates
    }
}

/// A week's row of a lift, as a plan would have it; `None` where the week has none.
pub(crate) fn row(
    own: &BlockLift,
    week: u16,
    lifter: &str,
    date: NaiveDate,
) -> Option<Prescription> {
    let [first, then @ ..] = own.groups(week) else {
        return None;
    };
    Some(Prescription {
        date,
        lifter: lifter.into(),
        lift: own.lift.clone(),
        first: *first,
        then: then.to_vec(),
        track: own.track,
        ladder: own.ladder.clone(),
        bar: own.bar.clone(),
        note: own.note.clone(),
    })
}

/// A row with what is due in the place of each load that asks for it, or the first load where
/// nothing is due yet; in a light week with a share of all of it.
pub(crate) fn filled(
    row: &Prescription,
    due: Option<Mass>,
    first: LoadWish,
    (light, step): (Option<u32>, Option<Mass>),
) -> Prescription {
    let eased = |mass: Mass| match light {
        Some(share) => to_step(share_of(mass, share), step),
        None => mass,
    };
    let mut row = row.clone();
    let main = row.main_at();
    let all = core::iter::once(&mut row.first).chain(&mut row.then);
    for group in all {
        group.load = match (group.load, due, light) {
            (LoadWish::Due, Some(due), _) | (LoadWish::More(_), Some(due), Some(_)) => {
                LoadWish::Mass(eased(due))
            }
            (LoadWish::Due, None, _) => share_in(first, light, step),
            (load, ..) => share_in(load, light, step),
        };
        if light.is_some() {
            group.effort = None;
        }
    }
    row.pinned(main)
}

/// A load, or in a light week a share of it; what follows today's top set follows it all the same.
fn share_in(load: LoadWish, light: Option<u32>, step: Option<Mass>) -> LoadWish {
    let Some(light) = light else { return load };
    let of = |share: u32| {
        let share = u64::from(share) * u64::from(light) / 10_000;
        u32::try_from(share).unwrap_or(u32::MAX)
    };
    match load {
        LoadWish::Mass(mass) => LoadWish::Mass(to_step(share_of(mass, light), step)),
        LoadWish::OfBest(share) => LoadWish::OfBest(of(share)),
        LoadWish::OfTraining(share) => LoadWish::OfTraining(of(share)),
        LoadWish::OfTop(_) | LoadWish::More(_) | LoadWish::Due => load,
    }
}
