//! Lifts that are long over stand whole no longer: what follows from them is kept for each lifter,
//! so that a state of ten years is hardly larger than one of a season.
//!
//! Lets go of no lift that somebody may still enter something for, and of nothing by the clock.
use super::{LiftRun, State};
use crate::event::Fact;
use crate::lift_no::LiftNo;
use crate::next::outing::Outing;
use crate::track::Track;
use alloc::collections::{BTreeMap, BTreeSet};
use alloc::string::String;
use alloc::vec::Vec;
use chrono::NaiveDate;
use core::cmp::Reverse;

/// So many lifts, the last that were begun, stand whole.
pub const WHOLE: u32 = 64;
/// Lifts that were left open and can be opened again: as many as a coach is shown.
pub const LEFT_OPEN: usize = 40;
/// Lifts with a guessed date stand whole until so many more were begun; then the guess stands.
const GUESSED: u32 = 4_096;
/// A look for lifts to let go of comes after so many were begun; one at the plan after more.
const EVERY: u32 = 64;
const PLAN_EVERY: u32 = 256;
/// Days of the plan stay until the lifter has done so many lifts since.
const PLAN_LIFTS: usize = 24;

impl State {
    /// All lifts of `lifter` that stand whole, oldest first.
    pub fn runs_of(&self, lifter: &str) -> impl DoubleEndedIterator<Item = &LiftRun> + use<'_> {
        let own = self.past.lifters.get(lifter).map(|past| &past.whole);
        let own = own.into_iter().flatten();
        own.filter_map(|no| self.lifts.get(no))
    }

    /// Lifts under way, oldest first.
    pub fn open(&self) -> impl DoubleEndedIterator<Item = &LiftRun> {
        self.open.iter().filter_map(|no| self.lifts.get(no))
    }

    /// The lifts of which a lifter has outings, in the order of the first one.
    #[must_use]
    pub fn lifts_with_outings(&self, lifter: &str) -> Vec<String> {
        let mut firsts: BTreeMap<&str, LiftNo> = BTreeMap::new();
        if let Some(kept) = self.past.lifters.get(lifter) {
            for past in &kept.outings {
                let first = past.outing.no;
                let lift = kept.named(past.lift);
                let top = tops_first(self, lifter, lift).unwrap_or(first);
                firsts.insert(lift, top.min(first));
            }
        }
        for run in self.runs_of(lifter) {
            if Outing::of(run).is_some() {
                let first = firsts.entry(&run.sheet.lift).or_insert(run.no);
                *first = run.no.min(*first);
            }
        }
        let mut named: Vec<(LiftNo, &str)> = firsts.into_iter().map(|(l, no)| (no, l)).collect();
        named.sort_unstable();
        named.into_iter().map(|(_, lift)| lift.into()).collect()
    }

    /// Whether a lift of `lifter` was left open and closed on a later day.
    #[must_use]
    pub fn was_left_open(&self, lifter: &str, no: LiftNo) -> bool {
        if let Some(run) = self.lifts.get(&no) {
            return run.is_left_open();
        }
        let past = self.past.lifters.get(lifter);
        let mut outings = past.into_iter().flat_map(|past| &past.outings);
        outings.any(|past| past.outing.no == no && past.left_open)
    }

    /// Lifts that stand, whole or not.
    #[must_use]
    pub fn lifts_count(&self) -> u64 {
        let whole = u64::try_from(self.lifts.len()).unwrap_or(u64::MAX);
        self.past.count.saturating_add(whole)
    }

    /// Sets that stand, warm-ups too.
    #[must_use]
    pub fn sets(&self) -> u64 {
        let whole = self.lifts.values().filter(|run| !run.is_lean);
        let sets = whole.map(LiftRun::sets).sum::<u64>();
        self.past.sets + sets
    }

    /// A lift stands in place of another of its number, if there was one: as it was just begun, or
    /// as somebody kept it.
    pub fn stand(&mut self, run: LiftRun) {
        self.fall(run.no);
        if !run.is_over() {
            self.open.insert(run.no);
        }
        let past = self.past.lifters.entry(run.sheet.lifter.clone());
        past.or_default().whole.insert(run.no);
        self.lifts.insert(run.no, run);
    }

    /// A lift stands no longer.
    pub(super) fn fall(&mut self, no: LiftNo) {
        self.open.remove(&no);
        let Some(run) = self.lifts.remove(&no) else {
            return;
        };
        let lifter = &run.sheet.lifter;
        if let Some(past) = self.past.lifters.get_mut(lifter) {
            past.whole.remove(&no);
            if past.is_empty() {
                self.past.lifters.remove(lifter);
            }
        }
    }

    /// Keeps in mind which lifts are under way.
    pub(super) fn note_open(&mut self, fact: &Fact) {
        let no = if let Fact::LiftLapsed { no } = fact {
            Some(*no)
        } else {
            fact.touches()
        };
        let Some(no) = no else { return };
        if self.lifts.get(&no).is_some_and(|run| !run.is_over()) {
            self.open.insert(no);
        } else {
            self.open.remove(&no);
        }
    }

    /// After a lift was begun: now and then looks for what need not stand whole any more.
    pub(crate) fn retire(&mut self) {
        let Some(edge) = self.last_no.checked_sub(WHOLE) else {
            return;
        };
        if self.last_no.is_multiple_of(EVERY) {
            self.retire_to(LiftNo(edge));
        }
        if self.last_no.is_multiple_of(PLAN_EVERY) {
            self.forget_plan();
        }
    }

    fn retire_to(&mut self, edge: LiftNo) {
        let last = self.last_of_tracks();
        let reopens = self.can_reopen();
        let longest = self.last_no.saturating_sub(GUESSED);
        let goes = |run: &&LiftRun| {
            let guessed = run.date_guessed && run.no.0 > longest;
            let busy = guessed || self.touched.contains_key(&run.no);
            run.is_over() && !busy && !reopens.contains(&run.no)
        };
        let going: Vec<LiftNo> = self
            .lifts
            .range(..=edge)
            .map(|(_, run)| run)
            .filter(goes)
            .map(|run| run.no)
            .collect();
        for no in going {
            if last.contains(&no) {
                if let Some(run) = self.lifts.get_mut(&no).filter(|run| !run.is_lean) {
                    self.past.sets += run.sets();
                    run.make_lean();
                }
            } else if let Some(run) = self.lifts.remove(&no) {
                if !run.is_lean {
                    self.past.sets += run.sets();
                }
                self.past.count += 1;
                if let Some(past) = self.past.lifters.get_mut(&run.sheet.lifter) {
                    past.take(&run);
                    past.forget();
                }
            }
        }
    }

    /// The last outing of each lifter's lift in each track: what is due hangs on it.
    fn last_of_tracks(&self) -> BTreeSet<LiftNo> {
        let mut last: BTreeMap<(&str, &str, Track), (NaiveDate, LiftNo)> = BTreeMap::new();
        for run in self.lifts.values() {
            let Some(outing) = Outing::of(run) else {
                continue;
            };
            let track = (
                run.sheet.lifter.as_str(),
                run.sheet.lift.as_str(),
                outing.track(),
            );
            let here = (outing.date, outing.no);
            let latest = last.entry(track).or_insert(here);
            *latest = here.max(*latest);
        }
        last.into_values().map(|(_, no)| no).collect()
    }

    /// The lifts left open that a coach is shown.
    fn can_reopen(&self) -> BTreeSet<LiftNo> {
        let closed = self.lifts.values().filter(|run| run.is_left_open());
        let mut closed: Vec<_> = closed
            .map(|run| Reverse((run.last_entry_at(), run.no)))
            .collect();
        closed.sort_unstable();
        let shown = closed.into_iter().take(LEFT_OPEN);
        shown.map(|Reverse((_, no))| no).collect()
    }

    /// Lets go of days of the plan that are long past: for who has trained since, and by what was
    /// trained, so that no wrong clock takes a day that is still to come.
    fn forget_plan(&mut self) {
        let mut floors: BTreeMap<String, NaiveDate> = BTreeMap::new();
        for (name, past) in &self.past.lifters {
            let latest = past.days.iter().rev().take(PLAN_LIFTS);
            let mut days: Vec<NaiveDate> = latest.map(|done| done.date()).collect();
            days.extend(self.runs_of(name).map(|run| run.sheet.date));
            days.sort_unstable_by_key(|day| Reverse(*day));
            if let Some(floor) = days.get(PLAN_LIFTS - 1) {
                floors.insert(name.clone(), *floor);
            }
        }
        let stays = |(day, lifter): &(NaiveDate, String)| {
            floors.get(lifter).is_none_or(|floor| day >= floor)
        };
        self.plan.retain(|key, _| stays(key));
    }
}

fn tops_first(state: &State, lifter: &str, lift: &str) -> Option<LiftNo> {
    let past = state.past.lifters.get(lifter)?;
    past.tops.get(lift)?.first
}
