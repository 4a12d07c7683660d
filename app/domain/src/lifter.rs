//! A lifter: unit, rack, landmarks, gear, bests. Refuses: guessing a landmark; see `body`.
use crate::body::Body;
use crate::length::Length;
use crate::lift::Landmark;
use crate::mass::{Mass, MassUnit};
use alloc::string::String;
use alloc::vec::Vec;
use chrono::NaiveDate;

/// Somebody who lifts here.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Lifter {
    /// As shown on the tile; also the key in plans.
    pub name: String,
    /// Other names that plans may use.
    pub also: Vec<String>,
    /// Kilo or pound on the screen.
    pub unit: MassUnit,
    /// Name of the rack they train at.
    pub rack: String,
    /// Name of the bar from the floor, when not the gym's first straight one.
    pub bar: Option<String>,
    /// Name of the warm-up pattern used when a plan names none.
    pub ladder: String,
    /// Heights above the floor in the shoes they lift in, as measured.
    pub landmarks: Vec<(Landmark, Length)>,
    /// Hook hole by lift, from 1, for lifts that start from hooks.
    pub hooks: Vec<(String, u16)>,
    /// What landmarks may be estimated from where they were not measured.
    pub body: Body,
    /// When the belt goes on.
    pub belt: GearFrom,
    /// When the straps go on.
    pub straps: GearFrom,
    /// Recorded best by lift, for percentages.
    pub bests: Vec<(String, Mass)>,
    /// Frozen figures for percentages, in the order of the file.
    pub training_maxes: Vec<TrainingMax>,
}

/// A frozen figure of one lift that shares are of: it moves when the coach says so, not when a new
/// best falls.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct TrainingMax {
    /// The lift's name.
    pub lift: String,
    /// The figure.
    pub load: Mass,
    /// From this day on; `None` for ever.
    pub since: Option<NaiveDate>,
}

impl Lifter {
    /// The hole of the hooks for a lift, if it was written.
    #[must_use]
    pub fn hook_hole(&self, lift: &str) -> Option<u16> {
        let of = |(name, _): &&(String, u16)| name == lift;
        self.hooks.iter().find(of).map(|(_, hole)| *hole)
    }

    /// The training max of a lift on a day: the one with the latest date that has come, of two
    /// alike the later in the file.
    #[must_use]
    pub fn training_max(&self, lift: &str, on: NaiveDate) -> Option<Mass> {
        let all = self.training_maxes.iter();
        let here = all.filter(|max| max.lift == lift && max.since.is_none_or(|day| day <= on));
        here.max_by_key(|max| max.since).map(|max| max.load)
    }

    /// The height of a landmark, if it was measured.
    #[must_use]
    pub fn landmark(&self, landmark: Landmark) -> Option<Length> {
        self.landmarks
            .iter()
            .find(|(l, _)| *l == landmark)
            .map(|(_, height)| *height)
    }
}

/// From when on a piece of gear is worn.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum GearFrom {
    /// Not worn.
    Never,
    /// From the nth rung on, counted from 1.
    Rung(u8),
    /// From this load on.
    Load(Mass),
}

impl GearFrom {
    /// Whether it is worn on rung number `rung` (from 1) at `load`.
    #[must_use]
    pub fn worn(self, rung: usize, load: Mass) -> bool {
        match self {
            Self::Never => false,
            Self::Rung(from) => rung >= usize::from(from),
            Self::Load(from) => load >= from,
        }
    }
}
