//! The floor: whose turn it is at each rack, who is next and who then, at one glance.
//!
//! Refuses: planning. The turns come in the order in which they are to be taken.
use crate::draw::{BarDrawing, Change};
use crate::frame::Pace;

/// What it shows.
#[derive(Debug, Clone, PartialEq)]
pub struct Floor {
    /// One rack, or two side by side; more are not shown.
    pub racks: Vec<FloorRack>,
    /// A sentence when nobody lifts, or empty.
    pub empty: String,
}

/// The turns at one rack.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct FloorRack {
    /// The rack.
    pub name: String,
    /// Whose turn it is; `None` while nobody is up.
    pub up: Option<FloorTurn>,
    /// Who is next.
    pub next: Option<FloorTurn>,
    /// Who then, in order; the first five are shown, beside another rack the first two.
    pub then: Vec<FloorTurn>,
}

/// One lifter's one set in the rotation.
#[derive(Debug, Clone, PartialEq)]
pub struct FloorTurn {
    /// Name.
    pub lifter: String,
    /// "rack pull, warm-up 3 of 4", "rack pull, work set".
    pub lift: String,
    /// "160".
    pub load: String,
    /// "kg".
    pub unit: String,
    /// "5 reps".
    pub reps: String,
    /// "9"; empty from the floor.
    pub hole: String,
    /// "up", "next", "rest 2:10", "ready".
    pub word: String,
    /// For the look.
    pub pace: Pace,
    /// The bar to scale; looked at only for the turn that is up.
    pub bar: BarDrawing,
    /// What the hands have to do before this turn, each side; looked at for up and next.
    pub change: Change,
}
