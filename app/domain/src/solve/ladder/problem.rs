//! A ladder to plan.
use crate::length::Length;
use crate::mass::Mass;
use crate::solve::Equipment;
use alloc::vec::Vec;

/// A ladder to plan.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Problem {
    /// Bar and plates.
    pub equipment: Equipment,
    /// What lies on one side before the first rung, inside to outside. It counts against the
    /// pairs.
    pub on_bar: Vec<usize>,
    /// Whether clearing the sleeve after the last rung counts.
    pub strip_after: bool,
    /// The rungs in order, 1 to [`Problem::RUNGS_LIMIT`]; they need not rise.
    pub rungs: Vec<Wish>,
}

/// What one rung asks for.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Wish {
    /// Bar, collars and plates.
    pub target: Mass,
    /// How far below the target the load may lie, not negative.
    pub below: Mass,
    /// How far above the target the load may lie, not negative.
    pub above: Mass,
    /// What each kilogram off the target costs, nanoseconds.
    pub per_kg_off_ns: u64,
    /// At least one plate on the bar is as large across; 0 when any will do.
    pub least_diameter: Length,
}

impl Problem {
    /// The most rungs that are planned with.
    pub const RUNGS_LIMIT: usize = 48;
    /// The most that a kilogram off target may cost: a million seconds.
    pub const PER_KG_OFF_LIMIT_NS: u64 = 1_000_000_000_000_000;
}
