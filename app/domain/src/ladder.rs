//! From a work set and a warm-up pattern to rungs with plates, as a coach would build them.
//!
//! Refuses: rungs that repeat or fall, and figures that the planner refuses. A work load that
//! cannot be loaded is not refused: the nearest that can takes its place, and [`BuiltLadder::off`]
//! says by how much.
//!
//! # The coach's rule
//! Common practice, no source; the figures are in one place below.
//! - A warm-up stands at its share of the work load, or on rounder plates nearby: it may be off
//!   by a tenth of the work load, the last one by about a thirtieth, each by 4.5 kg (10 lb), but
//!   none past half-way to its neighbour's share. If no plates come so near, half-way is the
//!   limit. Nearer is better, for the last one much more so than for the others.
//! - Rounder plates are fewer and bigger ones, big ones inside: every pair that is put on or
//!   taken off counts alike, one that weighs less than a tenth of the work load a little more,
//!   and a small plate (under 4.5 kg, and the pair under an eighteenth of the work load) as
//!   more than two.
//! - Warm-ups whose share is not 4.5 kg over the bar become one set with the empty bar.
//! - A warm-up that would stand less than 4.5 kg under the next set is left out, and so is one
//!   that the gym's plates cannot make. The last that is left takes the reps of the pattern's
//!   last, unless it is the empty bar.
//! - Where the load would jump by more than 90 kg (200 lb), one more set stands half-way, with
//!   the reps of the lighter one; at most three such.
//! - All loads and plates are chosen together. Then, for those loads, the stacks that are
//!   quickest to handle, in the order that the gym allows.
use crate::equipment::{Bar, PlateFace, PlateSet};
use crate::gym::{Pattern, PatternStep};
use crate::length::Length;
use crate::mass::Mass;
use crate::sheet::{Rung, RungKind};
use crate::solve::loads::Loads;
use crate::solve::{Equipment, PairKind, Refusal};
use alloc::string::String;
use alloc::vec::Vec;

mod round;
mod steps;

pub use crate::solve::{Change, change};

/// What the day is for.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct WorkSet {
    /// Bar, collars and plates, as the coach asks for it.
    pub load: Mass,
    /// How many sets, each a rung.
    pub sets: u8,
    /// Reps of each.
    pub reps: u8,
}

/// A ladder that can be loaded.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct BuiltLadder {
    /// Warm-ups, rising, then the work sets. Gear and rest are left for others to fill in.
    pub rungs: Vec<Rung>,
    /// The work rungs' load less what was asked for.
    pub off: Mass,
}

/// The figures of the coach's rule.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) struct Habit {
    /// How far a warm-up, and the last, may be off their shares, in thousandths of the work
    /// load.
    off: [i64; 2],
    /// What it costs a warm-up, and the last, to be off by a hundredth of the work load, or by a
    /// kilogram if that is more, ms.
    off_ms: [i64; 2],
    /// What any pair costs that is put on or taken off, ms.
    pair_ms: u32,
    /// A pair lighter than one so many-th of the work load costs so many ms more.
    light: (i64, u32),
    /// A small plate, the pair lighter than one so many-th of the work load, costs so many ms
    /// more.
    fuss: (i64, u32),
    /// Lighter plates are small, and smaller steps between rungs are not worth a set.
    least: Mass,
    /// The longest step between rungs, and from the bar to the first.
    longest: Mass,
    /// How many sets may be added to make steps shorter.
    added_most: u8,
}

impl Habit {
    /// Common practice, no source.
    pub(crate) const USUAL: Self = Self {
        off: [100, 35],
        off_ms: [1_200, 4_000],
        pair_ms: 6_000,
        light: (10, 1_000),
        fuss: (18, 8_000),
        least: Mass::from_ng(4_500_000_000_000),
        longest: Mass::from_ng(91_000_000_000_000),
        added_most: 3,
    };
}

/// The patterns that come with the program: "fives" for someone new to a lift, "5-3-2-1" for
/// someone used to it, both at 30, 50, 70 and 90 %. Common practice, no source.
#[must_use]
pub fn shipped_patterns() -> Vec<Pattern> {
    let pattern = |name: &str, reps: [u8; 4]| {
        let steps = [3_000, 5_000, 7_000, 9_000].into_iter().zip(reps);
        Pattern {
            name: String::from(name),
            steps: steps
                .map(|(share, reps)| PatternStep { share, reps })
                .collect(),
        }
    };
    [
        pattern("fives", [5, 5, 5, 5]),
        pattern("5-3-2-1", [5, 3, 2, 1]),
    ]
    .into()
}

/// Builds the ladder to `work` with `pattern`, loaded on `bar` from `plates`.
///
/// # Errors
/// [`Refusal`] when bar or plates are beyond what is planned with.
pub fn build(
    work: &WorkSet,
    pattern: &Pattern,
    bar: &Bar,
    plates: &PlateSet,
) -> Result<BuiltLadder, Refusal> {
    let equipment = equipment(bar, plates);
    equipment.check()?;
    let heaviest = equipment.plates.iter().map(|p| p.mass).max();
    let heaviest = heaviest.unwrap_or_default();
    let loads = Loads::new(&equipment, work.load + heaviest + heaviest)?;
    let load = loads
        .nearest(work.load)
        .unwrap_or(equipment.bar_and_collars);
    let steps = steps::Steps::new(pattern, load, &loads, &Habit::USUAL);
    let planned = round::plan(&equipment, steps)?;
    let mut rungs: Vec<Rung> = Vec::new();
    let sets = usize::from(work.sets.max(1));
    let warm_ups = planned.len() - 1;
    for (at, (reps, load, stack)) in planned.into_iter().enumerate() {
        let per_side: Vec<PlateFace> = stack.iter().map(|&k| plates.plates[k].face).collect();
        let (kind, reps, times) = if at < warm_ups {
            (RungKind::WarmUp, reps, 1)
        } else {
            (RungKind::Work, work.reps, sets)
        };
        for _ in 0..times {
            let before = rungs.last().map_or(&[][..], |rung| &rung.per_side);
            let change = change(before, &per_side);
            rungs.push(Rung {
                kind,
                load,
                reps,
                per_side: per_side.clone(),
                take_off: change.take_off,
                put_on: change.put_on,
                belt: false,
                straps: false,
                rest_s: 0,
            });
        }
    }
    Ok(BuiltLadder {
        rungs,
        off: load - work.load,
    })
}

/// The planner's view of a bar and its plates: the same places as in `plates`.
#[must_use]
pub fn equipment(bar: &Bar, plates: &PlateSet) -> Equipment {
    let kinds = plates.plates.iter().map(|plate| PairKind {
        mass: plate.face.mass,
        pairs: plate.pairs,
        thickness: plate.face.thickness,
        diameter: plate.face.diameter.max(Length::ZERO),
        handling_ns: u64::from(plate.handling_ms) * 1_000_000,
    });
    Equipment {
        bar_and_collars: bar.mass + bar.collars,
        sleeve: Some(bar.sleeve),
        big_inside: plates.big_inside,
        plates: kinds.collect(),
    }
}
