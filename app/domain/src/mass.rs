//! Mass as a whole count of nanograms, so that kilos and pounds are both exact.
//!
//! Refuses: floats, negative readings, more than [`Mass::LIMIT`].
use crate::decimal::{self, DecimalFault};
use alloc::format;
use alloc::string::String;
use core::fmt;
use core::iter::Sum;
use core::ops::{Add, Neg, Sub};

/// A mass in nanograms. 1 kg = 10^12; 1 lb = 453 592 370 000 (international pound of 1959,
/// NIST SP 811), so a tenth of a thousandth of a pound is whole too.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Default)]
pub struct Mass(i64);

/// The unit in which somebody reads and writes a mass.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Default)]
pub enum MassUnit {
    /// Kilogram.
    #[default]
    Kg,
    /// International avoirdupois pound.
    Lb,
}

impl MassUnit {
    /// Nanograms in one of the unit.
    #[must_use]
    pub const fn scale(self) -> i64 {
        match self {
            Self::Kg => 1_000_000_000_000,
            Self::Lb => 453_592_370_000,
        }
    }

    /// "kg" or "lb".
    #[must_use]
    pub const fn word(self) -> &'static str {
        match self {
            Self::Kg => "kg",
            Self::Lb => "lb",
        }
    }
}

impl Mass {
    /// Nothing.
    pub const ZERO: Self = Self(0);
    /// The most that is read from a file or a screen: 100 tonnes. Sums of many such still fit.
    pub const LIMIT: Self = Self(100_000 * MassUnit::Kg.scale());

    /// From nanograms, of either sign.
    #[must_use]
    pub const fn from_ng(ng: i64) -> Self {
        Self(ng)
    }

    /// In nanograms.
    #[must_use]
    pub const fn ng(self) -> i64 {
        self.0
    }

    /// So many thousandths of the unit: `of(MassUnit::Kg, 2_500)` is 2.5 kg.
    #[must_use]
    pub const fn of(unit: MassUnit, thousandths: i64) -> Self {
        Self(unit.scale() / 1_000 * thousandths)
    }

    /// Reads "102.5 kg", "45lb" or "45 lbs".
    ///
    /// # Errors
    /// [`QuantityFault`] without a known unit, or when the number cannot be kept exactly.
    pub fn read(text: &str) -> Result<Self, QuantityFault> {
        Self::read_with_unit(text).map(|(mass, _)| mass)
    }

    /// As [`Mass::read`], with the unit that it was written in.
    ///
    /// # Errors
    /// As [`Mass::read`].
    pub fn read_with_unit(text: &str) -> Result<(Self, MassUnit), QuantityFault> {
        let (number, unit) = split_unit(text);
        let unit = match unit {
            "kg" | "kgs" | "KG" | "Kg" => MassUnit::Kg,
            "lb" | "lbs" | "LB" | "Lb" => MassUnit::Lb,
            "" => return Err(QuantityFault::NoUnit),
            _ => return Err(QuantityFault::UnknownUnit),
        };
        Self::read_in(number, unit).map(|mass| (mass, unit))
    }

    /// Reads a bare number in `unit`.
    ///
    /// # Errors
    /// [`QuantityFault::Number`] when it is no plain decimal that can be kept exactly.
    pub fn read_in(number: &str, unit: MassUnit) -> Result<Self, QuantityFault> {
        decimal::read(number, unit.scale(), Self::LIMIT.0)
            .map(Self)
            .map_err(QuantityFault::Number)
    }

    /// The number alone, rounded to hundredths of `unit`, for reading: "117.5".
    #[must_use]
    pub fn number(self, unit: MassUnit) -> String {
        decimal::write_rounded(self.0, unit.scale(), 2)
    }

    /// Number and unit, rounded for reading: "117.5 kg".
    #[must_use]
    pub fn words(self, unit: MassUnit) -> String {
        format!("{} {}", self.number(unit), unit.word())
    }

    /// Exact text in `unit` where it has one, else exact in kilograms: "45 lb", "20.41165665 kg".
    #[must_use]
    pub fn exact(self, unit: MassUnit) -> String {
        let fits = decimal::write_exact(self.0, unit.scale()).map(|n| (n, unit));
        let (number, unit) = fits.unwrap_or_else(|| {
            let kg = decimal::write_exact(self.0, MassUnit::Kg.scale());
            (kg.unwrap_or_default(), MassUnit::Kg)
        });
        format!("{number} {}", unit.word())
    }

    /// This mass `n` times over; saturates at the ends of 64 bits, far beyond any gym.
    #[must_use]
    pub const fn times(self, n: i64) -> Self {
        Self(self.0.saturating_mul(n))
    }

    /// The distance between two masses.
    #[must_use]
    pub const fn apart(self, other: Self) -> Self {
        Self(self.0.saturating_sub(other.0).saturating_abs())
    }
}

/// Why a mass or a length could not be read.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum QuantityFault {
    /// A bare number.
    NoUnit,
    /// A unit that is not one of ours.
    UnknownUnit,
    /// The number itself.
    Number(DecimalFault),
}

impl fmt::Display for QuantityFault {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::NoUnit => f.write_str("has no unit"),
            Self::UnknownUnit => f.write_str("has an unknown unit"),
            Self::Number(fault) => fault.fmt(f),
        }
    }
}

/// Splits "102.5 kg" into number and unit, both trimmed.
pub(crate) fn split_unit(text: &str) -> (&str, &str) {
    let text = text.trim();
    let at = text
        .find(|c: char| !(c.is_ascii_digit() || matches!(c, '.' | ' ' | '/' | '-' | ',')))
        .unwrap_or(text.len());
    (text[..at].trim(), text[at..].trim())
}

impl Add for Mass {
    type Output = Self;
    fn add(self, other: Self) -> Self {
        Self(self.0.saturating_add(other.0))
    }
}
impl Sub for Mass {
    type Output = Self;
    fn sub(self, other: Self) -> Self {
        Self(self.0.saturating_sub(other.0))
    }
}
impl Neg for Mass {
    type Output = Self;
    fn neg(self) -> Self {
        Self(self.0.saturating_neg())
    }
}
impl Sum for Mass {
    fn sum<I: Iterator<Item = Self>>(masses: I) -> Self {
        masses.fold(Self::ZERO, Add::add)
    }
}
