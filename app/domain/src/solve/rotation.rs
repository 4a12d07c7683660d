//! The rotation planner: order, times and plates of several lifters' turns at one rack, planned
//! together, so that the last turn ends as early as can be and, of such plans, the least time
//! goes into handling plates.
//!
//! Refuses: turns that no plates make (saying what bites), a hole that can never be set, figures
//! out of range. Never calls a plan proven that some other plan beats.
//!
//! # The rules
//! A lifter's turns keep their order; lifters interleave freely. The changeover to a turn starts
//! when the turn before it ends. It takes the handling of the pairs moved at the outer ends,
//! twice that with one loader, and the hole change if the turn's hole is not the one last set.
//! For a hole change the bar is first taken down to at most [`Problem::hole_change_at_most`].
//! The turn starts when the changeover is done and the lifter is rested. Any load within the
//! tolerance will do.
//!
//! # How it works
//! A state says how many turns each lifter has done, what lies on the bar, which hole is set, and
//! when each lifter is rested. States are built turn by turn, keeping those that no other state
//! with the same turns done makes needless. Lower bounds rule most of them out: the `bounds` solve
//! the same problem with all rests forgotten except those of two lifters at a time, which plates
//! and order together make small enough to solve in full. Where that is not enough, the `profiles`
//! keep all rests in mind, but tell only so many ways to go on apart. Narrow passes find a good
//! plan first; a pass in which nothing had to be dropped for want of room proves it. See `search`
//! and `passes`.
//!
//! Five lifters and more are a `crowd`: a good order is found by small changes, then all orders
//! near it are searched in the same way, again and again. What that plan cannot rule out by simple
//! bounds is then looked at whole, if it is little enough.
//!
//! Several bars are planned by [`share`].
//!
//! # Ties
//! Of plans of a crowd that end alike with as little handling, one that suffers less when a set
//! takes half as long again is taken, where it is found. The same problem gets the same plan every time, as long as the planner may go on until it
//! ends by itself, or is limited by [`Effort::states`] alone.
use super::{Change, Equipment, Refusal};
use crate::length::Length;
use crate::mass::Mass;
use alloc::vec::Vec;
use core::fmt;

mod allowance;
mod answer;
mod any_order;
mod bars;
mod beam;
mod big_inside;
mod bounds;
mod bundles;
mod carry;
mod check;
mod clocks;
mod covering;
mod crowd;
mod dominance;
mod fair;
mod gaps;
mod greedy;
mod improve;
mod incumbent;
mod lanes;
mod layer;
mod lookahead;
mod min_plus;
mod model;
mod numbers;
mod one_tree;
mod passes;
mod pauses;
mod plates;
mod profiles;
mod pruning;
mod robustness;
mod run;
mod search;
mod sharing;
mod stacks;
mod state_graph;
mod stations;
mod steps;
mod strip;
mod trail;
mod ways;
mod whole;

pub use carry::{after, carry_out};
pub use stations::{Group, GroupPlan, Station, share};

/// A rotation to plan, from the bar as it stands.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Problem {
    /// Bar and plates.
    pub equipment: Equipment,
    /// How many hands there are.
    pub loaders: Loaders,
    /// What moving the pins takes, nanoseconds.
    pub hole_change_ns: u64,
    /// The pins move only while the bar, collars included, carries at most this.
    pub hole_change_at_most: Mass,
    /// Who lifts: 1 to [`Problem::LIFTERS_LIMIT`].
    pub lifters: Vec<Lifter>,
    /// Where things stand.
    pub standing: Standing,
}

/// How the sleeves are loaded.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Loaders {
    /// One side after the other: a pair takes twice its handling.
    One,
    /// Both sides at once.
    Two,
}

/// The turns that a lifter has still to do, in order.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct Lifter {
    /// May be empty.
    pub turns: Vec<Turn>,
    /// When the lifter's last turn ended, on the clock of [`Standing::now_ns`]; `None` when the
    /// first is still to come, which then needs no rest.
    pub ended_ns: Option<u64>,
}

/// One lifter's one set.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Turn {
    /// Bar, collars and plates.
    pub target: Mass,
    /// How far below the target the load may lie, not negative.
    pub below: Mass,
    /// How far above the target the load may lie, not negative.
    pub above: Mass,
    /// At least one plate on the bar is as large across; 0 when any will do.
    pub least_diameter: Length,
    /// The hole of the pins; `None` when the turn does not use them.
    pub hole: Option<u16>,
    /// How long the turn lasts, nanoseconds.
    pub lasts_ns: u64,
    /// Least time from the end of the lifter's previous turn to the start of this one.
    pub rest_ns: u64,
}

/// How the rack stands when planning begins. The default is an empty bar, no hole set, time 0.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct Standing {
    /// When the first changeover can start, nanoseconds on any clock.
    pub now_ns: u64,
    /// Plates of one side, inside to outside, as places in [`Equipment::plates`].
    pub on_bar: Vec<usize>,
    /// The hole last set.
    pub hole: Option<u16>,
    /// Whose turns come first, in order: they are called already and keep their places.
    pub called: Vec<usize>,
}

/// How much work may go into a plan.
pub struct Effort<'a> {
    /// How many states may be looked at in all. Limits time and memory the same way everywhere.
    pub states: u64,
    /// Asked now and then; the planner ends with what it has when this says no.
    pub go_on: &'a mut dyn FnMut() -> bool,
}

impl fmt::Debug for Effort<'_> {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "Effort({} states)", self.states)
    }
}

/// A rotation with its times and plates.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Plan {
    /// When the last turn ends.
    pub ends_ns: u64,
    /// Time spent on handling plates, both sides and all turns, hole changes apart.
    pub handling_ns: u64,
    /// How many times a pair is put on or taken off.
    pub pair_moves: u32,
    /// The longest that one lifter waits for a set beyond the rest due, from the end of that rest
    /// (for a first turn from [`Standing::now_ns`]) to the start of the set.
    pub longest_wait_ns: u64,
    /// `ends_ns` cannot be beaten.
    pub proven: bool,
    /// With that end, `handling_ns` cannot be beaten either. Never without `proven`.
    pub least_handling: bool,
    /// No plan ends before this; `ends_ns` when proven.
    pub at_least_ns: u64,
    /// How many states were looked at.
    pub states: u64,
    /// The turns in the order in which they are done.
    pub turns: Vec<PlannedTurn>,
}

/// One turn of a plan.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct PlannedTurn {
    /// Place in [`Problem::lifters`].
    pub lifter: usize,
    /// Place in the lifter's turns.
    pub turn: usize,
    /// When the changeover is done; the lifter may have to rest on.
    pub ready_ns: u64,
    /// When the set starts.
    pub starts_ns: u64,
    /// When the set ends.
    pub ends_ns: u64,
    /// The hole that the turn uses.
    pub hole: Option<u16>,
    /// Whether the pins are moved to it in this changeover, between taking off and putting on.
    pub hole_change: bool,
    /// Bar, collars and plates.
    pub load: Mass,
    /// One side, inside to outside, as places in [`Equipment::plates`].
    pub per_side: Vec<usize>,
    /// What to do at each sleeve to get here.
    pub change: Change<usize>,
}

impl Problem {
    /// The most lifters that are planned with.
    pub const LIFTERS_LIMIT: usize = 10;
    /// The most turns that are planned with, all lifters together.
    pub const TURNS_LIMIT: usize = 128;
    /// The longest single time that is planned with, nanoseconds: a million seconds.
    pub const TIME_LIMIT_NS: u64 = 1_000_000_000_000_000;
}

/// Plans the rotation.
///
/// # Errors
/// [`Refusal`] when a figure is out of range, when what stands on the bar cannot be, when a turn
/// cannot be loaded, or when a hole cannot be set because the bar alone is too heavy for it.
pub fn plan(problem: &Problem, effort: Effort<'_>) -> Result<Plan, Refusal> {
    check::check(problem)?;
    run::run(problem, 0, effort, &passes::USUAL)
}

/// Plans the rotation so that nobody, once rested, waits longer than `longest_wait_ns` for a set:
/// of the plans found that keep to it the one that ends first, and where none is found the one
/// whose longest wait is the least ([`Plan::longest_wait_ns`] tells). Proven only where it keeps to
/// it and no plan at all, whatever the waits, ends sooner.
///
/// # Errors
/// As [`plan`].
pub fn plan_fairly(
    problem: &Problem,
    longest_wait_ns: u64,
    effort: Effort<'_>,
) -> Result<Plan, Refusal> {
    check::check(problem)?;
    fair::plan(problem, longest_wait_ns, effort)
}

/// As [`plan`], in passes so narrow that small problems need all of them, for tests.
///
/// # Errors
/// As [`plan`].
#[doc(hidden)]
pub fn plan_narrowly(problem: &Problem, effort: Effort<'_>) -> Result<Plan, Refusal> {
    check::check(problem)?;
    run::run(problem, 0, effort, &passes::NARROW)
}

/// As [`plan`], as if the problem were too large to look at whole, with so many stacks a turn told
/// apart in the bounds, for tests.
///
/// # Errors
/// As [`plan`].
#[doc(hidden)]
pub fn plan_as_a_crowd(
    problem: &Problem,
    bundles: usize,
    effort: Effort<'_>,
) -> Result<Plan, Refusal> {
    check::check(problem)?;
    run::run_as_a_crowd(problem, bundles, effort)
}
