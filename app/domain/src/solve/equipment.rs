//! What the planners ask of a bar and its plates: ranges, loads, whether a stack is allowed.
//!
//! Refuses: figures out of range, naming the field.
use super::{Constraint, Equipment, PairKind, Refusal};
use crate::length::{Length, LengthUnit};
use crate::mass::{Mass, MassUnit};
use alloc::format;
use alloc::string::String;

impl PairKind {
    /// The longest handling that is planned with, nanoseconds: ten thousand seconds.
    pub const HANDLING_LIMIT_NS: u64 = 10_000_000_000_000;
}

impl Equipment {
    /// The most kinds of plates that are planned with.
    pub const KINDS_LIMIT: usize = 32;

    /// Whether every figure is in its range.
    ///
    /// # Errors
    /// [`Refusal`] with [`Constraint::Range`] and the first field that is not.
    pub fn check(&self) -> Result<(), Refusal> {
        if !mass_in_range(self.bar_and_collars) {
            return Err(out_of_range("bar", mass_text(self.bar_and_collars)));
        }
        if let Some(sleeve) = self.sleeve.filter(|s| !length_in_range(*s)) {
            return Err(out_of_range("sleeve", length_text(sleeve)));
        }
        if self.plates.len() > Self::KINDS_LIMIT {
            let text = format!(
                "has {} kinds of plates, more than the {} that are planned with",
                self.plates.len(),
                Self::KINDS_LIMIT
            );
            return Err(refusal(Constraint::Range, "plates", text));
        }
        for (at, plate) in self.plates.iter().enumerate() {
            if !mass_in_range(plate.mass) || plate.mass == Mass::ZERO {
                let field = format!("plates[{at}].mass");
                return Err(out_of_range(&field, mass_text(plate.mass)));
            }
            if !length_in_range(plate.thickness) {
                let field = format!("plates[{at}].thickness");
                return Err(out_of_range(&field, length_text(plate.thickness)));
            }
            if !length_in_range(plate.diameter) {
                let field = format!("plates[{at}].diameter");
                return Err(out_of_range(&field, length_text(plate.diameter)));
            }
            if plate.handling_ns > PairKind::HANDLING_LIMIT_NS {
                let field = format!("plates[{at}].handling_s");
                return Err(out_of_range(&field, format!("{} ns", plate.handling_ns)));
            }
        }
        Ok(())
    }

    /// Bar, collars and `stack` on both sides.
    ///
    /// # Panics
    /// When `stack` names a plate that is not there.
    #[must_use]
    pub fn load(&self, stack: &[usize]) -> Mass {
        let side: Mass = stack.iter().map(|&kind| self.plates[kind].mass).sum();
        self.bar_and_collars + side + side
    }

    /// Diameter of the largest plate of `stack`; 0 when there is none.
    ///
    /// # Panics
    /// When `stack` names a plate that is not there.
    #[must_use]
    pub fn largest(&self, stack: &[usize]) -> Length {
        let across = stack.iter().map(|&kind| self.plates[kind].diameter);
        across.max().unwrap_or(Length::ZERO)
    }

    /// The constraint that `stack` breaks, if any: inventory, sleeve or big inside.
    ///
    /// # Panics
    /// When `stack` names a plate that is not there.
    #[must_use]
    pub fn broken_by(&self, stack: &[usize]) -> Option<Constraint> {
        let count = |kind: usize| stack.iter().filter(|&&k| k == kind).count();
        if (0..self.plates.len()).any(|k| count(k) > usize::from(self.plates[k].pairs)) {
            return Some(Constraint::Inventory);
        }
        let long: Length = stack.iter().map(|&k| self.plates[k].thickness).sum();
        if self.sleeve.is_some_and(|sleeve| long > sleeve) {
            return Some(Constraint::Sleeve);
        }
        let rises = |w: &[usize]| self.plates[w[0]].mass < self.plates[w[1]].mass;
        (self.big_inside && stack.windows(2).any(rises)).then_some(Constraint::BigInside)
    }
}

pub(super) fn refusal(constraint: Constraint, field: &str, text: String) -> Refusal {
    Refusal {
        constraint,
        field: String::from(field),
        text,
    }
}

pub(super) fn out_of_range(field: &str, value: String) -> Refusal {
    refusal(
        Constraint::Range,
        field,
        value + " is out of the range that is planned with",
    )
}

pub(super) fn mass_in_range(mass: Mass) -> bool {
    (Mass::ZERO..=Mass::LIMIT).contains(&mass)
}

pub(super) fn length_in_range(length: Length) -> bool {
    (Length::ZERO..=Length::LIMIT).contains(&length)
}

/// A mass for a message: in pounds where that is the rounder number.
pub(super) fn mass_text(mass: Mass) -> String {
    let (kg, lb) = (mass.exact(MassUnit::Kg), mass.exact(MassUnit::Lb));
    if lb.len() < kg.len() { lb } else { kg }
}

/// A length for a message.
pub(super) fn length_text(length: Length) -> String {
    length.exact(LengthUnit::Mm)
}
