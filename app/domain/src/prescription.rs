//! One row of a coach's plan: what one lifter is to do of one lift on one day, as set groups.
//!
//! Knows nothing of plates; what it means for them is the sheet's work.
use crate::manner::Manner;
use crate::mass::Mass;
use crate::track::{Track, TrackName};
use alloc::string::String;
use alloc::vec::Vec;
use chrono::NaiveDate;

/// What one lifter is to do of one lift on one day.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Prescription {
    /// The day.
    pub date: NaiveDate,
    /// The lifter's name, as in the gym's file.
    pub lifter: String,
    /// The lift's name, as in the gym's file.
    pub lift: String,
    /// The first sets after the warm-ups.
    pub first: SetGroup,
    /// The sets after those, in their order.
    pub then: Vec<SetGroup>,
    /// The track's name; `None` where the reps alone say which sets follow from one another.
    pub track: Option<TrackName>,
    /// Name of the warm-up pattern; `None` for the lifter's own.
    pub ladder: Option<String>,
    /// The bar's name, as in the gym's file; `None` for the one that the lift is done with. One for
    /// all sets: another bar is another climb.
    pub bar: Option<String>,
    /// The coach's words.
    pub note: String,
}

/// So many sets of so many reps by one rule of load.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct SetGroup {
    /// Work sets, 1 to 20.
    pub sets: u8,
    /// Reps of each.
    pub reps: Reps,
    /// The work load.
    pub load: LoadWish,
    /// Rest before each set in seconds; `None` for the lift's own, for drop sets none.
    pub rest_s: Option<u32>,
    /// What they are for.
    pub role: Role,
    /// How hard each should be, RPE in tenths, 10 to 100; `None` where nobody asks.
    pub effort: Option<u8>,
    /// Where and how they are done.
    pub manner: Manner,
}

/// Reps of a set.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Reps {
    /// At least so many, 1 to 50.
    pub least: u8,
    /// At most so many; `None` for as many as go.
    pub most: Option<u8>,
}

/// What sets are for.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum Role {
    /// Work.
    #[default]
    Work,
    /// The heaviest of the day, which others follow.
    Top,
    /// Lighter ones after it.
    BackOff,
    /// Lighter ones right after, without a rest of their own.
    Drop,
}

impl Role {
    /// "work", "top", "back-off" or "drop".
    #[must_use]
    pub const fn word(self) -> &'static str {
        match self {
            Self::Work => "work",
            Self::Top => "top",
            Self::BackOff => "back-off",
            Self::Drop => "drop",
        }
    }
}

/// How a plan names a load.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum LoadWish {
    /// So much, bar and collars included.
    Mass(Mass),
    /// So many hundredths of a percent of the lifter's recorded best of the lift.
    OfBest(u32),
    /// So many hundredths of a percent of the lifter's training max of the lift on the day.
    OfTraining(u32),
    /// So many hundredths of a percent of today's top set, as it was really lifted.
    OfTop(u32),
    /// So much more than the last time.
    More(Mass),
    /// What is due.
    Due,
}

impl Reps {
    /// So many, no more and no less.
    #[must_use]
    pub const fn just(reps: u8) -> Self {
        Self {
            least: reps,
            most: Some(reps),
        }
    }

    /// What a set that goes as planned has: the top of a range, the least of an open one.
    #[must_use]
    pub const fn planned(self) -> u8 {
        match self.most {
            Some(most) => most,
            None => self.least,
        }
    }

    /// Whether a set with so many reps did what was asked.
    #[must_use]
    pub const fn is_done(self, reps: u8) -> bool {
        reps >= self.least
    }

    /// Whether it is as many as go.
    #[must_use]
    pub const fn is_open(self) -> bool {
        self.most.is_none()
    }

    /// Whether it is one number.
    #[must_use]
    pub fn is_just(self) -> bool {
        self.most == Some(self.least)
    }
}

impl SetGroup {
    /// So many sets of so many reps, nothing else.
    #[must_use]
    pub const fn straight(sets: u8, reps: u8, load: LoadWish) -> Self {
        Self {
            sets,
            reps: Reps::just(reps),
            load,
            rest_s: None,
            role: Role::Work,
            effort: None,
            manner: Manner {
                hole: None,
                block: None,
                tempo: None,
                pause_s: None,
                belt: None,
                straps: None,
                grip: None,
            },
        }
    }

    /// Whether it is straight sets, with whatever rest.
    #[must_use]
    pub fn is_straight(&self) -> bool {
        let plain_load = matches!(self.load, LoadWish::Mass(_) | LoadWish::OfBest(_));
        let plain = self.role == Role::Work && self.effort.is_none() && self.manner.is_own();
        self.reps.is_just() && plain && plain_load
    }
}

impl Prescription {
    /// All groups, in their order.
    pub fn groups(&self) -> impl Iterator<Item = &SetGroup> {
        core::iter::once(&self.first).chain(&self.then)
    }

    /// Whether it is one group of straight sets of no track by name, with the lift's own bar.
    #[must_use]
    pub fn is_straight(&self) -> bool {
        let plain = self.track.is_none() && self.bar.is_none();
        self.then.is_empty() && self.first.is_straight() && plain
    }

    /// The place of the group that the next time follows from: the top set, else the heaviest
    /// sets as far as the plan alone tells, the first of those.
    #[must_use]
    pub fn main_at(&self) -> usize {
        let top = self.groups().position(|group| group.role == Role::Top);
        top.unwrap_or_else(|| {
            let (mut at, mut heaviest) = (0, self.first.load);
            for (nth, group) in self.groups().enumerate() {
                if group.role == Role::Work && group.load.is_over(heaviest) {
                    (at, heaviest) = (nth, group.load);
                }
            }
            at
        })
    }

    /// The group that the next time follows from.
    #[must_use]
    pub fn main(&self) -> &SetGroup {
        let main = self.groups().nth(self.main_at());
        main.unwrap_or(&self.first)
    }

    /// The sets whose load follows from one another.
    #[must_use]
    pub fn track(&self) -> Track {
        Track {
            reps: self.main().reps.least,
            name: self.track,
        }
    }

    /// The same with what is due in the place of every load that asks for it.
    #[must_use]
    pub fn filled(&self, due: Mass) -> Self {
        let mut filled = self.clone();
        let all = core::iter::once(&mut filled.first).chain(&mut filled.then);
        for group in all.filter(|group| group.load == LoadWish::Due) {
            group.load = LoadWish::Mass(due);
        }
        filled.pinned(self.main_at())
    }

    /// The same, with the main sets told to be so where the loads alone would say others.
    pub(crate) fn pinned(mut self, main: usize) -> Self {
        if self.main_at() != main {
            let mut all = core::iter::once(&mut self.first).chain(&mut self.then);
            if let Some(group) = all.nth(main) {
                group.role = Role::Top;
            }
        }
        self
    }

    /// The same with another load for the main sets, and for those of their own load that would
    /// else be heavier; `asked` says what a group asks for.
    #[must_use]
    pub fn with_load(&self, load: Mass, asked: impl Fn(&SetGroup) -> Option<Mass>) -> Self {
        let mut other = self.clone();
        let (main, before) = (self.main_at(), self.main().load);
        let all = core::iter::once(&mut other.first).chain(&mut other.then);
        for (at, group) in all.enumerate() {
            let follows = matches!(group.load, LoadWish::OfTop(_));
            let heavier = !follows && asked(group).is_some_and(|mass| mass > load);
            if at == main || group.load == before || heavier {
                group.load = LoadWish::Mass(load);
            }
        }
        other.pinned(main)
    }
}

impl LoadWish {
    /// The mass, where one is written.
    #[must_use]
    pub fn mass(self) -> Option<Mass> {
        if let Self::Mass(mass) = self {
            Some(mass)
        } else {
            None
        }
    }

    /// Whether it is heavier than another of its kind, whoever lifts.
    const fn is_over(self, other: Self) -> bool {
        match (self, other) {
            (Self::Mass(own), Self::Mass(other)) | (Self::More(own), Self::More(other)) => {
                own.ng() > other.ng()
            }
            (Self::OfBest(own), Self::OfBest(other))
            | (Self::OfTraining(own), Self::OfTraining(other)) => own > other,
            _ => false,
        }
    }
}
