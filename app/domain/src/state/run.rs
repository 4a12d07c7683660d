//! One lift of one lifter as it stands: sheet, entries, and what is due the next time.
//!
//! Refuses: a settled load before the last warm-up, a decision before the end.
use crate::attendance::{Attendance, LONGER_MOST_S};
use crate::hold::Hold;
use crate::lift_no::LiftNo;
use crate::mass::Mass;
use crate::moment::Moment;
use crate::next::time::{Decided, NextTime, Ruled};
use crate::settled::Settled;
use crate::sheet::{LiftSheet, Rung, RungKind};
use crate::turn::Station;
use alloc::vec::Vec;
use chrono::NaiveDate;

/// One lift of one lifter, with all entries that stand.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct LiftRun {
    /// Its number.
    pub no: LiftNo,
    /// What the rack showed for it.
    pub sheet: LiftSheet,
    /// The training day that it belongs to: its sheet's, or the one on which it was opened again.
    pub day: NaiveDate,
    /// When it was begun.
    pub begun_at: Moment,
    /// Whether its date is a guess, because the time of day was not known when it was begun.
    pub date_guessed: bool,
    /// Entries that stand, oldest first.
    pub entries: Vec<Entry>,
    /// What is due the next time, once it is over.
    pub next: Option<NextTime>,
    /// Whether its lifter is there for the next turn.
    pub attendance: Attendance,
    /// How hard sets were said to be: the rung, and RPE in tenths.
    pub efforts: Vec<(u16, u8)>,
    /// The rungs as they were before each settling that stands.
    pub before: Vec<Vec<Rung>>,
    /// The rungs as they were before loads followed the top set, and how many entries stood.
    pub followed: Vec<(usize, Vec<Rung>)>,
    /// How it stood with the lifter's turn before each entry, and before their last word of it.
    pub attended: Vec<(Attendance, Option<Attendance>)>,
    /// How it stood with the turn before its lifter's last word of it, until the next entry.
    pub unsaid: Option<Attendance>,
    /// Whether it is long over, and its sheet has no more than what the next time follows from.
    pub is_lean: bool,
}

/// One entry.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Entry {
    /// When.
    pub at: Moment,
    /// What.
    pub what: Entered,
}

/// What was entered.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Entered {
    /// A set.
    Set {
        /// Reps done.
        reps: u8,
        /// Did the back keep its position.
        hold: Hold,
    },
    /// The rung was left out.
    Skipped,
    /// The lift was ended early.
    Stopped,
    /// Went on after a moved back.
    WentOn,
    /// The work load was settled otherwise than planned.
    Settled,
    /// It was left open, and closed on a later day.
    LeftOpen,
}

impl LiftRun {
    /// A lift just begun.
    pub(crate) fn begin(
        no: LiftNo,
        sheet: LiftSheet,
        begun_at: Moment,
        date_guessed: bool,
    ) -> Self {
        Self {
            no,
            day: sheet.date,
            sheet,
            begun_at,
            date_guessed,
            entries: Vec::new(),
            next: None,
            attendance: Attendance {
                here_since: Some(begun_at),
                ..Attendance::default()
            },
            efforts: Vec::new(),
            before: Vec::new(),
            followed: Vec::new(),
            attended: Vec::new(),
            unsaid: None,
            is_lean: false,
        }
    }

    /// When its last entry was made, or it was begun.
    #[must_use]
    pub fn last_entry_at(&self) -> Moment {
        self.entries.last().map_or(self.begun_at, |entry| entry.at)
    }

    /// Sets that stand, warm-ups too.
    #[must_use]
    pub fn sets(&self) -> u64 {
        let sets = self.entries.iter();
        let sets = sets.filter(|entry| matches!(entry.what, Entered::Set { .. }));
        u64::try_from(sets.count()).unwrap_or(u64::MAX)
    }

    /// Lets go of what only the hands at the rack needed.
    pub(super) fn make_lean(&mut self) {
        self.is_lean = true;
        (self.before, self.attended, self.followed) = (Vec::new(), Vec::new(), Vec::new());
        self.entries.shrink_to_fit();
        let sheet = &mut self.sheet;
        (sheet.cues, sheet.cautions, sheet.warnings) = (Vec::new(), Vec::new(), Vec::new());
        (sheet.pins, sheet.hooks, sheet.overlap) = (None, None, None);
        for rung in &mut sheet.rungs {
            (rung.per_side, rung.take_off, rung.put_on) = (Vec::new(), Vec::new(), Vec::new());
        }
    }

    /// Whether it is a lift of `lifter` on the training day `date`.
    #[must_use]
    pub fn is_of(&self, lifter: &str, date: NaiveDate) -> bool {
        self.sheet.lifter == lifter && self.day == date
    }

    /// The rung of now, from 0; `None` when the lift is over.
    #[must_use]
    pub fn next_rung(&self) -> Option<usize> {
        let passed = self.passed().count();
        (passed < self.sheet.rungs.len() && !self.is_stopped()).then_some(passed)
    }

    /// What became of each rung so far, in order: a set or a skip.
    pub fn passed(&self) -> impl Iterator<Item = &Entry> {
        self.entries
            .iter()
            .filter(|e| matches!(e.what, Entered::Set { .. } | Entered::Skipped))
    }

    /// Whether it was ended before its last rung, by somebody or because it was left open.
    #[must_use]
    pub fn is_stopped(&self) -> bool {
        matches!(
            self.entries.last(),
            Some(Entry {
                what: Entered::Stopped | Entered::LeftOpen,
                ..
            })
        )
    }

    /// Whether it was left open and closed on a later day.
    #[must_use]
    pub fn is_left_open(&self) -> bool {
        let last = self.entries.last();
        last.is_some_and(|last| last.what == Entered::LeftOpen)
    }

    /// Whether no rung is left.
    #[must_use]
    pub fn is_over(&self) -> bool {
        self.next_rung().is_none()
    }

    /// Whether the back moved in the last set and nobody has yet said how to go on.
    #[must_use]
    pub fn awaits_decision(&self) -> bool {
        let moved = matches!(
            self.entries.last(),
            Some(Entry {
                what: Entered::Set {
                    hold: Hold::MovedAt(_),
                    ..
                },
                ..
            })
        );
        moved && !self.is_over()
    }

    /// The last set that stands.
    #[must_use]
    pub fn last_set(&self) -> Option<&Entry> {
        self.entries
            .iter()
            .rev()
            .find(|e| matches!(e.what, Entered::Set { .. }))
    }

    /// When the rest before the rung of now is over, a longer one that was asked for included;
    /// `None` before the first set and at the end.
    #[must_use]
    pub fn rested_at(&self) -> Option<Moment> {
        let rung = self.sheet.rungs.get(self.next_rung()?)?;
        let rested = self.last_set().map(|e| e.at.plus_seconds(rung.rest_s));
        rested.max(self.attendance.not_before)
    }

    /// Whether the rest was over when they came or claimed their turn.
    #[must_use]
    pub fn was_rested(&self) -> bool {
        self.rested_at() <= self.attendance.here_since
    }

    /// When they are ready for the rung of now: rested, or at once where they said that their turn
    /// is now.
    #[must_use]
    pub fn ready_at(&self) -> Option<Moment> {
        match self.attendance.claimed {
            true => self.attendance.here_since,
            false => self.rested_at(),
        }
    }

    /// Whole seconds of rest left at `now`, 0 when it is over or there is none; never more than the
    /// rest itself or the longest that can be asked for, whatever moments older journals or other machines wrote.
    #[must_use]
    pub fn rest_left_s(&self, now: Moment) -> u32 {
        let rung = self.next_rung().and_then(|at| self.sheet.rungs.get(at));
        let (Some(rung), Some(rested)) = (rung, self.rested_at()) else {
            return 0;
        };
        let longer = self.attendance.not_before.map_or(0, |_| LONGER_MOST_S);
        now.seconds_until(rested)
            .min(rung.rest_s.max(longer.into()))
    }

    /// The rung of now, if it is the first work set and no load was settled for it: the moment to
    /// settle one.
    #[must_use]
    pub fn may_settle(&self) -> Option<usize> {
        let at = self.next_rung()?;
        let (before, left) = self.sheet.rungs.split_at(at);
        let is_work = |rung: &Rung| rung.kind == RungKind::Work;
        let now = !before.iter().any(is_work) && left.iter().all(is_work);
        (now && !self.is_settled() && !self.awaits_decision()).then_some(at)
    }

    /// Whether the work load is another than planned, by a choice on the day.
    #[must_use]
    pub fn is_settled(&self) -> bool {
        let settled = |entry: &Entry| entry.what == Entered::Settled;
        self.entries.iter().any(settled)
    }

    /// What an entry changes beside itself: nothing that was decided for the next time stands.
    pub(crate) fn enter(&mut self, at: Moment, what: Entered) {
        self.next = None;
        self.attended.push((self.attendance, self.unsaid.take()));
        self.attendance = Attendance {
            here_since: self.attendance.here_since,
            ..Attendance::default()
        };
        self.entries.push(Entry { at, what });
    }

    /// Gives the rungs from the rung of now on another load; nothing unless they are work sets.
    pub(super) fn settle(&mut self, at: Moment, settled: &Settled) -> bool {
        let from = usize::from(settled.rung);
        let left = self.sheet.rungs.get(from..).unwrap_or_default();
        let works = left.iter().all(|rung| rung.kind == RungKind::Work);
        if self.next_rung() != Some(from) || !works {
            return false;
        }
        self.before.push(self.sheet.rungs.clone());
        let end = self.settles_to(from);
        settled.lay_over(&mut self.sheet.rungs, end);
        self.enter(at, Entered::Settled);
        true
    }

    /// Up to which rung a load that is settled for `from` counts: those of its own load, not what
    /// follows the top set.
    fn settles_to(&self, from: usize) -> usize {
        let rungs = &self.sheet.rungs;
        let load = rungs.get(from).map(|rung| rung.load);
        let follows = |at: usize| {
            let group = self.sheet.group_of(at);
            group.is_some_and(|group| group.of_top.is_some())
        };
        (from..rungs.len())
            .find(|at| rungs.get(*at).map(|rung| rung.load) != load || follows(*at))
            .unwrap_or(rungs.len())
    }

    /// Gives groups to come the loads that follow from the top set as it was lifted.
    pub(super) fn follow_top(&mut self, sets: &[Settled]) {
        self.followed
            .push((self.entries.len(), self.sheet.rungs.clone()));
        for settled in sets {
            let group = self.sheet.group_of(usize::from(settled.rung));
            if let Some(end) = group.map(|group| group.rungs().end) {
                settled.lay_over(&mut self.sheet.rungs, end);
            }
        }
    }

    /// How hard the last set was, as its lifter says.
    pub(crate) fn say_effort(&mut self, rung: u16, effort: u8) {
        self.efforts.retain(|(at, _)| *at != rung);
        self.efforts.push((rung, effort));
        if self.next.as_ref().is_some_and(|next| next.ruled.is_none()) {
            self.next = None;
        }
    }

    /// The rung of the last set, where the plan asks how hard it was and nobody has said.
    #[must_use]
    pub fn effort_asked(&self) -> Option<usize> {
        let done = self.passed().count().checked_sub(1)?;
        let asked = self.sheet.group_of(done)?.effort.is_some();
        let last = self.entries.last()?.what;
        let said = self.efforts.iter().any(|(at, _)| usize::from(*at) == done);
        (asked && !said && matches!(last, Entered::Set { reps: 1.., .. })).then_some(done)
    }

    /// Takes the last entry back, with what it brought about, and says what it was.
    pub(super) fn undo(&mut self) -> Option<Entered> {
        let last = self.entries.pop().map(|entry| entry.what);
        if let Some((attended, unsaid)) = self.attended.pop() {
            (self.attendance, self.unsaid) = (attended, unsaid);
        }
        self.next = None;
        while self
            .followed
            .last()
            .is_some_and(|(entries, _)| *entries > self.entries.len())
        {
            if let Some((_, rungs)) = self.followed.pop() {
                self.sheet.rungs = rungs;
            }
        }
        let passed = self.passed().count();
        self.efforts.retain(|(at, _)| usize::from(*at) < passed);
        if last == Some(Entered::Settled)
            && let Some(rungs) = self.before.pop()
        {
            self.sheet.rungs = rungs;
        }
        last
    }

    /// Opens a lift that was left open again, on the training day `on`.
    pub(super) fn reopen(&mut self, at: Moment, on: NaiveDate) {
        if self.is_left_open() {
            self.entries.pop();
            self.next = None;
            self.day = on;
            self.attendance.come(at);
        }
    }

    pub(super) fn redate(&mut self, date: NaiveDate) {
        (self.sheet.date, self.day, self.date_guessed) = (date, date, false);
    }

    pub(super) fn decide_next(&mut self, decided: &Decided) {
        if self.is_over() {
            self.next = Some(NextTime {
                decided: decided.clone(),
                ruled: None,
            });
        }
    }

    pub(super) fn override_next(&mut self, at: Moment, load: Mass, note: &str) {
        if let Some(next) = &mut self.next {
            next.ruled = Some(Ruled {
                load,
                note: note.into(),
                at,
            });
        }
    }
}

/// Where a lift is done.
#[must_use]
pub fn station_of(run: &LiftRun) -> Station {
    Station {
        rack: run.sheet.rack.clone(),
        bar: run.sheet.bar.name.clone(),
    }
}
