//! The hole finder: which hole of the rack, and which mats under the feet, put the bar where the
//! lift starts.
//!
//! Refuses: pins that do not go into the holes, a bar that no hole brings low enough, figures
//! out of range. Never returns a setting that another beats.
//!
//! # Ties
//! Least distance from the target; then fewest mats; then the thinnest stack; then the lowest
//! hole; then the stack with the thickest single mat, and so on down it. That leaves one.
use super::equipment::{length_in_range, length_text, out_of_range, refusal};
use super::{Constraint, Refusal};
use crate::decimal;
use crate::equipment::Calibration;
use crate::length::{Length, LengthUnit};
use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

mod mats;

/// A rack, a bar, and the height that is wanted.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Problem {
    /// Floor to the centre of hole 1.
    pub first_hole: Length,
    /// Between the centres of neighbouring holes.
    pub spacing: Length,
    /// How many holes, 1 to [`Problem::HOLES_LIMIT`].
    pub holes: u16,
    /// Diameter of the pins.
    pub pin_diameter: Length,
    /// Diameter of the holes; `None` when the pins fit without play.
    pub hole_diameter: Option<Length>,
    /// Diameter of the bar's shaft.
    pub bar_diameter: Length,
    /// Mats that may be stacked, in any selection; at most [`Problem::MATS_LIMIT`].
    pub mats: Vec<Length>,
    /// Wanted height of the bar's centre above what the feet stand on.
    pub target: Length,
    /// Which side of the target will do.
    pub rule: Rule,
    /// Top of the patella above what the feet stand on.
    pub patella_top: Option<Length>,
    /// A measured height, which replaces the computed offset from hole to bar.
    pub calibration: Option<Calibration>,
}

/// Which side of the target will do.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Rule {
    /// The bar must not be above the target.
    AtOrBelow,
    /// Whichever is nearest.
    Nearest,
}

/// A height in half nanometres: half of an odd diameter is still exact.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub struct Height(i64);

impl Height {
    /// From half nanometres.
    #[must_use]
    pub const fn from_half_nm(halves: i64) -> Self {
        Self(halves)
    }

    /// In half nanometres.
    #[must_use]
    pub const fn half_nm(self) -> i64 {
        self.0
    }

    /// To the nanometre, a half rounded down. For drawing and reading.
    #[must_use]
    pub const fn length(self) -> Length {
        Length::from_nm(self.0.div_euclid(2))
    }

    /// Exact text in `unit` where it has one, else exact in millimetres.
    #[must_use]
    pub fn exact(self, unit: LengthUnit) -> String {
        let write = |unit: LengthUnit| {
            let number = decimal::write_exact(self.0, 2 * unit.scale())?;
            Some(format!("{number} {}", unit.word()))
        };
        let text = write(unit).or_else(|| write(LengthUnit::Mm));
        text.expect("half a nanometre is seven decimals of a millimetre")
    }
}

impl From<Length> for Height {
    fn from(length: Length) -> Self {
        Self(2 * length.nm())
    }
}

/// Where the pins go and what to stand on.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Setting {
    /// Hole number, from 1.
    pub hole: u16,
    /// Mats to stand on, as places in [`Problem::mats`], thickest first.
    pub mats: Vec<usize>,
    /// Bar's centre above what the feet stand on.
    pub bar_height: Height,
    /// Bar height less target: negative is lower.
    pub off_target: Height,
    /// Top of the patella less bar height, where the former is known.
    pub overlap: Option<Height>,
}

impl Problem {
    /// The most holes that are looked at.
    pub const HOLES_LIMIT: u16 = 1_000;
    /// The most mats that are looked at: 2^24 stacks.
    pub const MATS_LIMIT: usize = 24;

    /// The bar's centre above the floor with the pins in `hole`, from 1. A pin lies at the bottom
    /// of its hole, and the bar on the pins.
    #[must_use]
    pub fn bar_above_floor(&self, hole: u16) -> Height {
        let up = |from: u16| (i64::from(hole) - i64::from(from)) * 2 * self.spacing.nm();
        if let Some(measured) = &self.calibration {
            return Height(2 * measured.bar_height.nm() + up(measured.hole));
        }
        let pin = self.pin_diameter.nm();
        let play = self.hole_diameter.map_or(0, |hole| hole.nm() - pin);
        let on_pin = pin + self.bar_diameter.nm();
        Height(2 * self.first_hole.nm() + up(1) - play + on_pin)
    }

    fn check(&self) -> Result<(), Refusal> {
        let lengths = [
            ("first_hole", Some(self.first_hole)),
            ("spacing", Some(self.spacing)),
            ("pin_diameter", Some(self.pin_diameter)),
            ("hole_diameter", self.hole_diameter),
            ("bar_diameter", Some(self.bar_diameter)),
            ("target", Some(self.target)),
            ("patella_top", self.patella_top),
            (
                "calibration.bar_height",
                self.calibration.map(|c| c.bar_height),
            ),
        ];
        for (field, length) in lengths {
            if let Some(length) = length.filter(|length| !length_in_range(*length)) {
                return Err(out_of_range(field, length_text(length)));
            }
        }
        if let Some(at) = self.mats.iter().position(|mat| !length_in_range(*mat)) {
            return Err(out_of_range(
                &format!("mats[{at}]"),
                length_text(self.mats[at]),
            ));
        }
        let range = |field: &str, text: String| Err(refusal(Constraint::Range, field, text));
        if self.holes == 0 || self.holes > Self::HOLES_LIMIT {
            let limit = Self::HOLES_LIMIT;
            return range(
                "holes",
                format!("are {}, and 1 to {limit} will do", self.holes),
            );
        }
        if self.mats.len() > Self::MATS_LIMIT {
            let limit = Self::MATS_LIMIT;
            return range(
                "mats",
                format!("are {}, and at most {limit} will do", self.mats.len()),
            );
        }
        if let Some(hole) = self.hole_diameter.filter(|hole| *hole < self.pin_diameter) {
            let (hole, pin) = (length_text(hole), length_text(self.pin_diameter));
            return range(
                "hole_diameter",
                format!("of {hole} does not take pins of {pin}"),
            );
        }
        if let Some(c) = self
            .calibration
            .filter(|c| c.hole == 0 || c.hole > self.holes)
        {
            let text = format!(
                "is {}, and the rack's holes are 1 to {}",
                c.hole, self.holes
            );
            return range("calibration.hole", text);
        }
        Ok(())
    }
}

/// Finds the hole and the mats.
///
/// # Errors
/// [`Refusal`] when a figure is out of range, or when the bar must not be above the target and
/// hole 1 with all mats still has it above.
pub fn find(problem: &Problem) -> Result<Setting, Refusal> {
    problem.check()?;
    let stacks = mats::Stacks::new(&problem.mats);
    let target = Height::from(problem.target).0;
    let settings = (1..=problem.holes).filter_map(|hole| {
        let floor = problem.bar_above_floor(hole).0;
        let stack = stacks.best(floor - target, problem.rule)?;
        let off = floor - 2 * stack.thickness - target;
        Some((
            off.abs(),
            stack.mats.len(),
            stack.thickness,
            hole,
            stack,
            off,
        ))
    });
    let best =
        settings.min_by_key(|(off, mats, thickness, hole, ..)| (*off, *mats, *thickness, *hole));
    let Some((.., hole, stack, off)) = best else {
        return Err(too_high(problem));
    };
    let bar_height = Height(target + off);
    Ok(Setting {
        hole,
        mats: stack.mats,
        bar_height,
        off_target: Height(off),
        overlap: problem
            .patella_top
            .map(|top| Height(2 * top.nm() - bar_height.0)),
    })
}

fn too_high(problem: &Problem) -> Refusal {
    let all: Length = problem.mats.iter().copied().sum();
    let lowest = Height(problem.bar_above_floor(1).0 - 2 * all.nm());
    let text = format!(
        "hole 1 with all mats has the bar at {}, above the target of {}",
        lowest.exact(LengthUnit::Mm),
        length_text(problem.target)
    );
    refusal(Constraint::Hole, "target", text)
}
