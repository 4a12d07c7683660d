//! The planners: exact optima, ties broken the same way every time.
//!
//! Refuses: floats that decide a load, answers that are only probably the best, problems beyond the
//! limits stated here (with the field that is out of bounds).
//!
//! All planners speak of plates by their place in [`Equipment::plates`], and of one side only:
//! both sleeves are loaded alike. A stack is a list of such places, inside to outside.
use crate::length::Length;
use crate::mass::Mass;
use alloc::string::String;
use alloc::vec::Vec;
use core::fmt;

pub mod balance;
pub mod bar;
mod equipment;
pub mod hole;
pub mod ladder;
pub mod loads;
pub mod rotation;

/// A bar with its collars, and the plates that may go on it.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Equipment {
    /// Bar and both collars.
    pub bar_and_collars: Mass,
    /// Usable length of one sleeve; `None` when it does not matter.
    pub sleeve: Option<Length>,
    /// A plate may only go outside plates at least as heavy.
    pub big_inside: bool,
    /// Kinds of plates; their order has no bearing on a plan.
    pub plates: Vec<PairKind>,
}

/// Plates of one kind, in pairs.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub struct PairKind {
    /// Mass of one plate.
    pub mass: Mass,
    /// How many pairs there are.
    pub pairs: u16,
    /// Thickness of one plate along the sleeve; 0 when it does not matter.
    pub thickness: Length,
    /// Diameter of one plate; 0 when it does not matter.
    pub diameter: Length,
    /// Time to put a pair on or take it off, nanoseconds.
    pub handling_ns: u64,
}

/// The constraint that a refused problem runs into.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Constraint {
    /// A figure is out of its range.
    Range,
    /// The bar with its collars is too heavy already.
    Bar,
    /// There are too few plates.
    Inventory,
    /// The sleeve is too short.
    Sleeve,
    /// A light plate would lie inside a heavy one.
    BigInside,
    /// There are plates enough, but no set of them comes within the tolerance.
    Tolerance,
    /// No hole, or no hole with any mats, serves.
    Hole,
}

/// Why a problem has no answer.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Refusal {
    /// What bites.
    pub constraint: Constraint,
    /// Which part of the problem: `rungs[2].target`.
    pub field: String,
    /// What is wrong, with the value and the limit.
    pub text: String,
}

impl fmt::Display for Refusal {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{}: {}", self.field, self.text)
    }
}

impl core::error::Error for Refusal {}

/// What to do at the outer end of one sleeve to get from one stack to the next.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Change<T> {
    /// In the order of the hands: outermost first.
    pub take_off: Vec<T>,
    /// In the order of the hands: innermost first.
    pub put_on: Vec<T>,
}

/// The fewest moves from stack `from` to stack `to`: all that both have in common from the
/// inside stays.
#[must_use]
pub fn change<T: PartialEq + Clone>(from: &[T], to: &[T]) -> Change<T> {
    let common = from.iter().zip(to).take_while(|(a, b)| a == b).count();
    Change {
        take_off: from[common..].iter().rev().cloned().collect(),
        put_on: to[common..].to_vec(),
    }
}
