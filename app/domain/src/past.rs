//! What is kept of lifts that are long over, bounded for each lifter: enough for the next loads,
//! for a programme's queue and for the sessions that a screen shows. Beside it all that was done
//! stays in the journal, and flat in the record.
use crate::hold::Hold;
use crate::lift_no::LiftNo;
use crate::mass::{Mass, MassUnit};
use crate::moment::Moment;
use crate::next::outing::Outing;
use crate::state::run::{Entered, LiftRun};
use crate::track::Track;
use alloc::collections::{BTreeMap, BTreeSet};
use alloc::string::String;
use alloc::vec::Vec;
use chrono::NaiveDate;

/// The latest outings of a lifter that are kept, beside those that stand whole: a quarter of a year
/// for who does four lifts a week. The rules of next time look back over tries, drops and breaks,
/// none of which is so long, and what is due follows from what was recorded after the last one.
pub const LATEST: usize = 48;
/// Of each lift in each track at least so many are kept, however long ago.
pub const OF_TRACK: usize = 10;
/// Lifts of which the day is kept, for a programme's queue: over ten years.
pub const DAYS: usize = 4_096;

/// What is kept, by lifter.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct Past {
    /// By name.
    pub lifters: BTreeMap<String, LifterPast>,
    /// Sets of lifts that do not stand whole any more, or only as the last of their track.
    pub sets: u64,
    /// Lifts that do not stand whole any more.
    pub count: u64,
}

/// One lifter's.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct LifterPast {
    /// Lifts that stand whole, by number.
    pub whole: BTreeSet<LiftNo>,
    /// What all earlier ones of each lift came to, by the lift's name.
    pub tops: BTreeMap<String, Top>,
    /// The latest outings, by day and number.
    pub outings: Vec<PastOuting>,
    /// On which day which lift was done with something to follow from it, by day.
    pub days: Vec<PastDay>,
    /// Names of lifts; outings and days have the place.
    pub names: Vec<String>,
}

/// A day on which a lift was done: four bytes, since ten years of 200 lifters are 200,000 of them.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct PastDay {
    /// Days since 1970-01-01; a day before counts as that one, one after 2149-06-06 as that one.
    pub day: u16,
    /// The lift, by its place in the names.
    pub lift: u16,
}

impl PastDay {
    fn new(date: NaiveDate, lift: u16) -> Self {
        let day = date.to_epoch_days().clamp(0, i32::from(u16::MAX));
        Self {
            day: u16::try_from(day).unwrap_or(u16::MAX),
            lift,
        }
    }

    /// As a date.
    #[must_use]
    pub fn date(self) -> NaiveDate {
        NaiveDate::from_epoch_days(i32::from(self.day)).unwrap_or_default()
    }
}

/// What all earlier times of one lift came to.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub struct Top {
    /// The first time of which there is an outing.
    pub first: Option<LiftNo>,
    /// The heaviest load of a set with the back kept.
    pub best: Option<Mass>,
    /// The greatest of load times thirty and reps, in nanograms, of such sets: whatever reps are
    /// asked, by Epley's equation it is the same set that supports most.
    pub most: Option<i128>,
}

/// One outing, with what the screen shows of it.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct PastOuting {
    /// Which lift, by its place in the lifter's names.
    pub lift: u16,
    /// What became of it.
    pub outing: Outing,
    /// When its last entry was made.
    pub at: Moment,
    /// Whether it was left open.
    pub left_open: bool,
    /// The lifter's unit then.
    pub unit: MassUnit,
}

impl Top {
    /// With the sets of one more time.
    pub fn take(&mut self, run: &LiftRun) {
        if Outing::of(run).is_some() {
            self.first = Some(self.first.map_or(run.no, |first| first.min(run.no)));
        }
        for (load, reps) in kept_sets(run) {
            self.best = self.best.max(Some(load));
            let product = i128::from(load.ng()) * (30 + i128::from(reps));
            self.most = self.most.max(Some(product));
        }
    }

    /// What the best of its sets supports for so many reps.
    #[must_use]
    pub fn supports(&self, reps: u8) -> Option<Mass> {
        let ng = self.most? / (30 + i128::from(reps));
        Some(Mass::from_ng(i64::try_from(ng).unwrap_or(i64::MAX)))
    }
}

/// Load and reps of each set with the back held and at least one rep.
pub(crate) fn kept_sets(run: &LiftRun) -> impl Iterator<Item = (Mass, u8)> {
    let sets = run.passed().zip(&run.sheet.rungs);
    sets.filter_map(|(entry, rung)| match entry.what {
        Entered::Set {
            reps: reps @ 1..,
            hold: Hold::Kept,
        } => Some((rung.load, reps)),
        Entered::Set { .. }
        | Entered::Skipped
        | Entered::Stopped
        | Entered::WentOn
        | Entered::Settled
        | Entered::LeftOpen => None,
    })
}

impl LifterPast {
    /// Whether nothing is kept.
    pub(crate) fn is_empty(&self) -> bool {
        self.whole.is_empty() && self.tops.is_empty()
    }

    /// A lift stands whole no longer.
    pub(crate) fn take(&mut self, run: &LiftRun) {
        self.whole.remove(&run.no);
        let name = &run.sheet.lift;
        self.tops.entry(name.clone()).or_default().take(run);
        let Some(outing) = Outing::of(run) else {
            return;
        };
        let key = (outing.date, outing.no);
        let at = self.outings.partition_point(|past| past.key() < key);
        let lift = self.number(&run.sheet.lift);
        let past = PastOuting {
            lift,
            outing,
            at: run.last_entry_at(),
            left_open: run.is_left_open(),
            unit: run.sheet.unit,
        };
        self.outings.insert(at, past);
        let done = PastDay::new(key.0, lift);
        let at = self.days.partition_point(|known| known.day <= done.day);
        self.days.insert(at, done);
        let surplus = self.days.len().saturating_sub(DAYS);
        self.days.drain(..surplus);
    }

    /// The place of a lift's name, which is kept from now on.
    fn number(&mut self, name: &str) -> u16 {
        let at = self.names.iter().position(|known| known == name);
        let at = at.unwrap_or_else(|| {
            self.names.push(name.into());
            self.names.len() - 1
        });
        u16::try_from(at).unwrap_or(u16::MAX)
    }

    /// The days on which which lift was done, by day.
    pub fn done(&self) -> impl Iterator<Item = (NaiveDate, &str)> {
        let days = self.days.iter();
        days.map(|done| (done.date(), self.named(done.lift)))
    }

    /// The name of the lift at a place in the names; empty where there is none, as nowhere.
    #[must_use]
    pub fn named(&self, lift: u16) -> &str {
        self.names.get(usize::from(lift)).map_or("", String::as_str)
    }

    /// The outings of a lift that are kept, by day and number.
    pub fn outings_of(&self, lift: &str) -> impl Iterator<Item = &PastOuting> {
        let place = self.names.iter().position(|name| name == lift);
        let place = place.and_then(|at| u16::try_from(at).ok());
        let all = self.outings.iter();
        all.filter(move |past| Some(past.lift) == place)
    }

    /// Lets go of outings that nothing looks back to.
    pub(crate) fn forget(&mut self) {
        let Some(surplus) = self.outings.len().checked_sub(LATEST) else {
            return;
        };
        let mut later: BTreeMap<(u16, Track), usize> = BTreeMap::new();
        let mut stays = Vec::new();
        for (at, past) in self.outings.iter().enumerate().rev() {
            let count = later.entry((past.lift, past.outing.track())).or_default();
            *count += 1;
            stays.push(at >= surplus || *count <= OF_TRACK);
        }
        if !stays.contains(&false) {
            return;
        }
        self.outings.retain(|_| stays.pop().unwrap_or(true));
    }
}

impl PastOuting {
    const fn key(&self) -> (NaiveDate, LiftNo) {
        (self.outing.date, self.outing.no)
    }
}
