//! From a work set and a warm-up pattern to rungs with plates, as a coach would build them.
//!
//! Refuses: rungs that repeat or fall, and figures that the planner refuses. A work load that
//! cannot be loaded is not refused here: the nearest that can takes its place, and
//! [`BuiltLadder::off`] says by how much; `day` gives no sheet for one that is over [`WORK_OFF`]
//! off.
//!
//! # The coach's rule
//! Common practice, no source; the figures are in one place below.
//! - A warm-up stands at its share of the work load, or on rounder plates nearby: it may be off
//!   by a tenth of the work load, the last one by about a thirtieth up and a twentieth down, each
//!   by 4.5 kg (10 lb), but none past half-way to its neighbour's share. If no plates come so
//!   near, half-way is the limit. Nearer is better, for the last one much more so than for the
//!   others. The last one is no heavier than 93 % of the work load, 91 % if it is more than a
//!   triple, whatever the plates, unless the pattern says so.
//! - Rounder plates are fewer and bigger ones, big ones inside: every pair that is put on or
//!   taken off counts alike, one that weighs less than a tenth of the work load a little more,
//!   and a small plate (under 4.5 kg, and the pair under an eighteenth of the work load) as
//!   more than two.
//! - Warm-ups whose share is not 4.5 kg over the first load become one set with it. The first
//!   load is the empty bar; from the floor it is the lightest load on plates of the best height
//!   there is, if that is no more than three quarters of the work load.
//! - A warm-up that would stand less than 4.5 kg under the next set is left out, and so is one
//!   that the gym's plates cannot make. The last that is left takes the reps of the pattern's
//!   last, unless it is the first load.
//! - No step is longer than 27.5 % of the work load (from the first load 30 %), or than 61.5 kg (a
//!   pair and a half of 45 lb); steps of 10 kg are never too long. Where one would be, warm-ups
//!   stand nearer to their shares, or one more set stands half-way, with the reps of the lighter
//!   one, at most four such: whichever is rounder. Where the plates make no shorter steps, the
//!   least excess.
//! - Somebody who is already warm goes to the first warm-up of the pattern, or to the work load, in
//!   one step of whatever length, and from there in steps of 35 % at most.
//! - All loads and plates are chosen together. Then, for those loads, the stacks that are
//!   quickest to handle, in the order that the gym allows.
//! - From the floor every rung stands on plates that set the bar as high as its load can, up to
//!   the standard disc ([`crate::disc_height`]): that goes before rounder plates and before fewer
//!   moves. Of work loads that cannot be loaded, the nearest within [`WORK_OFF`] at the best
//!   height.
use crate::equipment::{Bar, PlateFace, PlateSet};
use crate::gym::{Pattern, PatternStep};
use crate::length::Length;
use crate::lift::Start;
use crate::mass::Mass;
use crate::sheet::{Rung, RungKind};
use crate::solve::loads::Loads;
use crate::solve::{Equipment, PairKind, Refusal};
use alloc::string::String;
use alloc::vec::Vec;
use footing::Footing;

pub(crate) mod footing;
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
    /// How far a warm-up may be off its share, in thousandths of the work load.
    off_most: i64,
    /// The same, nearer, where the steps would else be too long.
    off_nearer: [i64; 3],
    /// How far the last warm-up may be under and over its share.
    off_last: [i64; 2],
    /// The heaviest that the last warm-up may be, in thousandths of the work load: with few reps,
    /// and with more.
    last_most: [i64; 2],
    /// So many reps are few.
    few_reps: u8,
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
    /// The longest step between rungs whatever the work load.
    longest: Mass,
    /// The longest step between rungs, and from the first load, in thousandths of the work load.
    longest_share: [i64; 2],
    /// The longest step of somebody who is already warm, the same.
    longest_warm: i64,
    /// Steps so short are never too long.
    short: Mass,
    /// How many sets may be added to make steps shorter.
    added_most: u8,
    /// What a set more costs, ms.
    set_ms: u32,
}

impl Habit {
    /// Common practice, no source.
    pub(crate) const USUAL: Self = Self {
        off_most: 100,
        off_nearer: [75, 50, 35],
        off_last: [50, 35],
        last_most: [930, 910],
        few_reps: 3,
        off_ms: [1_200, 4_000],
        pair_ms: 6_000,
        light: (10, 1_000),
        fuss: (18, 8_000),
        least: Mass::from_ng(4_500_000_000_000),
        longest: Mass::from_ng(61_500_000_000_000),
        longest_share: [275, 300],
        longest_warm: 350,
        short: Mass::from_ng(10_000_000_000_000),
        added_most: 4,
        set_ms: 12_000,
    };
}

/// How far the load of a work set may be off what is asked, in thousandths of it: the plates make
/// no nearer one, and nobody feels it. Common practice, no source.
pub const WORK_OFF: i64 = 25;

/// The loads next to `asked` that this bar and these plates make: the greatest that is not above
/// it, and the least that is not below.
///
/// # Errors
/// [`Refusal`] when bar or plates are beyond what is planned with.
pub fn neighbours(
    asked: Mass,
    bar: &Bar,
    plates: &PlateSet,
) -> Result<(Option<Mass>, Option<Mass>), Refusal> {
    let equipment = equipment(bar, plates);
    equipment.check()?;
    let heaviest = equipment.plates.iter().map(|p| p.mass).max();
    let heaviest = heaviest.unwrap_or_default();
    let loads = Loads::new(&equipment, asked + heaviest + heaviest)?;
    Ok((loads.at_most(asked), loads.at_least(asked)))
}

/// How far the load of a work set may be off `asked`.
#[must_use]
pub fn work_off(asked: Mass) -> Mass {
    steps::thousandth(asked, WORK_OFF)
}

/// The patterns that come with the program: "fives" for someone new to a lift, "5-3-2-1" for
/// someone used to it, both at 30, 50, 70 and 90 %; for the second lift of a day "short", at 60
/// and 85 %, and "none". Common practice, no source.
#[must_use]
pub fn shipped_patterns() -> Vec<Pattern> {
    let pattern = |name: &str, steps: &[(u32, u8)], already_warm| Pattern {
        name: String::from(name),
        steps: steps
            .iter()
            .map(|&(share, reps)| PatternStep { share, reps })
            .collect(),
        already_warm,
    };
    let whole = |reps: [u8; 4]| {
        [
            (3_000, reps[0]),
            (5_000, reps[1]),
            (7_000, reps[2]),
            (9_000, reps[3]),
        ]
    };
    [
        pattern("fives", &whole([5, 5, 5, 5]), false),
        pattern("5-3-2-1", &whole([5, 3, 2, 1]), false),
        pattern(SHORT, &[(6_000, 3), (8_500, 1)], true),
        pattern(NONE, &[], true),
    ]
    .into()
}

/// The pattern of somebody who is already warm.
pub const SHORT: &str = "short";
/// The pattern without a warm-up.
pub const NONE: &str = "none";

/// As [`build_from`], for a lift from pins or hooks: any plates set the bar at its height.
///
/// # Errors
/// As [`build_from`].
pub fn build(
    work: &WorkSet,
    pattern: &Pattern,
    bar: &Bar,
    plates: &PlateSet,
) -> Result<BuiltLadder, Refusal> {
    build_from(Start::Hooks, work, pattern, bar, plates)
}

/// Builds the ladder to `work` with `pattern`, loaded on `bar` from `plates`, for a lift that
/// starts at `start`.
///
/// # Errors
/// [`Refusal`] when bar or plates are beyond what is planned with.
pub fn build_from(
    start: Start,
    work: &WorkSet,
    pattern: &Pattern,
    bar: &Bar,
    plates: &PlateSet,
) -> Result<BuiltLadder, Refusal> {
    let equipment = equipment(bar, plates);
    equipment.check()?;
    let heaviest = equipment.plates.iter().map(|p| p.mass).max();
    let heaviest = heaviest.unwrap_or_default();
    let most = work.load + heaviest + heaviest;
    let loads = Loads::new(&equipment, most)?;
    let footing = Footing::new(start, &equipment, most)?;
    let load = work_load(work.load, &loads, &footing);
    let first = footing.first(loads.least(), load);
    let steps = steps::Steps::new(pattern, (first, load), &loads, &Habit::USUAL);
    let planned = round::plan(&equipment, &footing, &steps)?;
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

/// The load that can be made for what is asked: itself, else from the floor the nearest of those
/// near by that stand at the best height, else the nearest.
fn work_load(asked: Mass, loads: &Loads, footing: &Footing) -> Mass {
    let nearest = loads.nearest(asked).unwrap_or(loads.least());
    let at_height = (nearest != asked)
        .then(|| footing.nearest(asked, work_off(asked)))
        .flatten();
    at_height.unwrap_or(nearest)
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
