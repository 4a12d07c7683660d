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
    /// On which day which lift was done with something to follow from it, by day and number; the
    /// lift by its place in `names`.
    pub days: Vec<(NaiveDate, LiftNo, u16)>,
    /// Names of lifts.
    pub names: Vec<String>,
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
    /// Which lift.
    pub lift: String,
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
        let past = PastOuting {
            lift: name.clone(),
            outing,
            at: run.last_entry_at(),
            left_open: run.is_left_open(),
            unit: run.sheet.unit,
        };
        self.outings.insert(at, past);
        let at = self.days.partition_point(|(day, no, _)| (*day, *no) < key);
        let named = self.number(name);
        self.days.insert(at, (key.0, key.1, named));
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

    /// The days on which which lift was done, by day and number.
    pub fn done(&self) -> impl Iterator<Item = (NaiveDate, LiftNo, &str)> {
        let name = |at: u16| self.names.get(usize::from(at)).map(String::as_str);
        let days = self.days.iter();
        days.filter_map(move |(day, no, at)| Some((*day, *no, name(*at)?)))
    }

    /// Lets go of outings that nothing looks back to.
    pub(crate) fn forget(&mut self) {
        let Some(surplus) = self.outings.len().checked_sub(LATEST) else {
            return;
        };
        let mut later: BTreeMap<(&str, Track), usize> = BTreeMap::new();
        let mut stays = Vec::new();
        for (at, past) in self.outings.iter().enumerate().rev() {
            let count = later.entry((&past.lift, past.outing.track())).or_default();
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
