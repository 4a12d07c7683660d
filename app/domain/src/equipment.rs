//! What stands in the gym: racks with their holes, bars, plates.
//!
//! Refuses: any claim that a piece is safe. Figures are the owner's.
use crate::length::Length;
use crate::mass::{Mass, MassUnit};
use crate::solve::balance::Weighed;
use crate::stress::Stress;
use alloc::string::String;
use alloc::vec::Vec;

/// A power rack: holes at even spacing, numbered from 1 at the bottom.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Rack {
    /// What the gym calls it.
    pub name: String,
    /// Floor to the centre of hole 1.
    pub first_hole: Length,
    /// Between the centres of neighbouring holes.
    pub spacing: Length,
    /// How many holes.
    pub holes: u16,
    /// Diameter of the pins.
    pub pin_diameter: Length,
    /// Diameter of the holes; `None` when the pins fit without play.
    pub hole_diameter: Option<Length>,
    /// Thickness of each mat that may be stood on.
    pub mats: Vec<Length>,
    /// A height measured once, which replaces the computed offset.
    pub calibration: Option<Calibration>,
    /// Name of the plate set that hangs by this rack.
    pub plates: String,
    /// Time to move both pins to another hole, milliseconds.
    pub hole_change_ms: u32,
    /// The pins are moved only while the bar, collars included, carries at most this.
    pub hole_change_at_most: Mass,
    /// Once rested, nobody is to wait longer for the bar, milliseconds; `None` for no limit.
    pub longest_wait_ms: Option<u32>,
    /// What its maker stated.
    pub stated: RackStated,
}

/// What the maker of a rack stated. What is not stated is not known, and nothing stands for it.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub struct RackStated {
    /// Rated load of both pins together, bar included.
    pub pin_rated_load: Option<Mass>,
    /// Rated load of the whole rack.
    pub rack_rated_load: Option<Mass>,
    /// Between the two lines on which a bar touches the pins, as measured.
    pub support_span: Option<Length>,
}

/// With the pins in `hole` the bar's centre was measured at `bar_height` above the floor.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Calibration {
    /// Hole number, from 1.
    pub hole: u16,
    /// Floor to the bar's centre.
    pub bar_height: Length,
}

/// Whether a bar may take a set on pins without loss.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum BarCondition {
    /// Straight: kept off the pins.
    Straight,
    /// Retired, slightly bent: the one for pulls from pins.
    Retired,
}

/// A bar.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Bar {
    /// What the gym calls it.
    pub name: String,
    /// Mass of the bar alone.
    pub mass: Mass,
    /// Mass of both collars together.
    pub collars: Mass,
    /// Shaft diameter.
    pub shaft_diameter: Length,
    /// Usable length of one sleeve, collar already taken off.
    pub sleeve: Length,
    /// Straight or retired.
    pub condition: BarCondition,
    /// Name of the rack that it stands by; `None` when it serves every rack.
    pub rack: Option<String>,
    /// What its maker stated.
    pub stated: BarStated,
}

/// What the maker of a bar stated. What is not stated is not known, and nothing stands for it.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub struct BarStated {
    /// Young's modulus of the shaft's steel.
    pub youngs_modulus: Option<Stress>,
    /// Stress at which the shaft's steel yields.
    pub yield_stress: Option<Stress>,
    /// Between the inner faces of the sleeves, where the innermost plates stop.
    pub between_sleeves: Option<Length>,
    /// Rated load, bar included.
    pub rated_load: Option<Mass>,
}

/// What one plate is and looks like.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub struct PlateFace {
    /// Mass of one plate.
    pub mass: Mass,
    /// The unit that its label is in.
    pub unit: MassUnit,
    /// Thickness along the sleeve.
    pub thickness: Length,
    /// Diameter.
    pub diameter: Length,
}

impl PlateFace {
    /// The number on the plate: "20", "2.5".
    #[must_use]
    pub fn label(&self) -> String {
        self.mass.number(self.unit)
    }
}

/// Plates of one kind, in pairs.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Plate {
    /// What one is.
    pub face: PlateFace,
    /// How many pairs there are.
    pub pairs: u16,
    /// Time to put a pair on or take it off, milliseconds.
    pub handling_ms: u32,
}

/// The plates of one rack.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct PlateSet {
    /// What the gym calls it.
    pub name: String,
    /// A plate may only go outside plates at least as heavy.
    pub big_inside: bool,
    /// Kinds, in the order of the file.
    pub plates: Vec<Plate>,
    /// Plates that were weighed, each with its own mark.
    pub weighed: Vec<Weighed>,
}
