//! The whole gym: racks, bars, plates, lifters, lifts, warm-up patterns.
//!
//! Refuses: files; `plan` reads those.
use crate::attendance::CALLED_FOR_S;
use crate::equipment::{Bar, PlateSet, Rack};
use crate::lift::Lift;
use crate::lifter::Lifter;
use crate::programme::Coaching;
use alloc::string::String;
use alloc::vec::Vec;

/// For how long a lift keeps its day after its last entry, seconds, where the gym's file does not
/// say. Common practice, no source.
pub const DAY_ENDS_AFTER_S: u32 = 3 * 3_600;

/// Everything that the owner and the coach have written down.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct Gym {
    /// Its name.
    pub name: String,
    /// Racks, in the order of the file.
    pub racks: Vec<Rack>,
    /// Bars, in the order of the file.
    pub bars: Vec<Bar>,
    /// Plate sets, in the order of the file.
    pub plate_sets: Vec<PlateSet>,
    /// Lifters, in the order of the file.
    pub lifters: Vec<Lifter>,
    /// Lifts, in the order of the file.
    pub lifts: Vec<Lift>,
    /// Warm-up patterns, in the order of the file.
    pub patterns: Vec<Pattern>,
    /// Programmes and the rules of next time.
    pub coaching: Coaching,
    /// For how long a lift keeps its day after its last entry, seconds, where the file says.
    pub day_ends_after_s: Option<u32>,
    /// How long somebody who was called may take to come, seconds, where the file says.
    pub called_for_s: Option<u32>,
}

impl Gym {
    /// For how long a lift keeps its day after its last entry, seconds.
    #[must_use]
    pub fn day_ends_after_s(&self) -> u32 {
        self.day_ends_after_s.unwrap_or(DAY_ENDS_AFTER_S)
    }

    /// How long somebody who was called may take to come, seconds.
    #[must_use]
    pub fn called_for_s(&self) -> u32 {
        self.called_for_s.unwrap_or(CALLED_FOR_S)
    }

    /// The bars that serve `rack`: those that stand by it first, then those of no rack, each in
    /// the order of the file.
    pub fn bars_at<'g>(&'g self, rack: &'g str) -> impl Iterator<Item = &'g Bar> {
        let own = self
            .bars
            .iter()
            .filter(move |bar| bar.rack.as_deref() == Some(rack));
        own.chain(self.bars.iter().filter(|bar| bar.rack.is_none()))
    }
}

/// How the warm-ups rise to a work set.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Pattern {
    /// What plans call it: "fives", "5-3-2-1".
    pub name: String,
    /// The warm-ups, lowest first; none for a lift that is begun with its work sets.
    pub steps: Vec<PatternStep>,
    /// Whether it is for somebody who is warm from another lift: then no step up to its first
    /// warm-up, or to the work load, is too long.
    pub already_warm: bool,
}

/// One warm-up of a pattern.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct PatternStep {
    /// Hundredths of a percent of the work load.
    pub share: u32,
    /// Reps.
    pub reps: u8,
}
