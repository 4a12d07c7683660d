//! Length as a whole count of nanometres, so that millimetres and 64ths of an inch are exact.
//!
//! Refuses: floats, negative readings, more than [`Length::LIMIT`].
use crate::decimal::{self, DecimalFault};
use crate::mass::{QuantityFault, split_unit};
use alloc::format;
use alloc::string::String;
use core::iter::Sum;
use core::ops::{Add, Neg, Sub};

/// A length in nanometres. 1 in = 25 400 000 (international inch of 1959, NIST SP 811);
/// 1/64 in = 396 875.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Default)]
pub struct Length(i64);

/// The unit in which somebody reads and writes a length.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Default)]
pub enum LengthUnit {
    /// Millimetre.
    #[default]
    Mm,
    /// Centimetre.
    Cm,
    /// Metre.
    M,
    /// International inch.
    In,
}

impl LengthUnit {
    /// Nanometres in one of the unit.
    #[must_use]
    pub const fn scale(self) -> i64 {
        match self {
            Self::Mm => 1_000_000,
            Self::Cm => 10_000_000,
            Self::M => 1_000_000_000,
            Self::In => 25_400_000,
        }
    }

    /// "mm", "cm", "m" or "in".
    #[must_use]
    pub const fn word(self) -> &'static str {
        match self {
            Self::Mm => "mm",
            Self::Cm => "cm",
            Self::M => "m",
            Self::In => "in",
        }
    }
}

impl Length {
    /// Nothing.
    pub const ZERO: Self = Self(0);
    /// The most that is read from a file or a screen: 100 m.
    pub const LIMIT: Self = Self(100 * LengthUnit::M.scale());

    /// From nanometres, of either sign.
    #[must_use]
    pub const fn from_nm(nm: i64) -> Self {
        Self(nm)
    }

    /// In nanometres.
    #[must_use]
    pub const fn nm(self) -> i64 {
        self.0
    }

    /// Whole millimetres.
    #[must_use]
    pub const fn mm(mm: i64) -> Self {
        Self(mm * LengthUnit::Mm.scale())
    }

    /// Reads "27 mm", "1.25 in", "11/16 in" or "1 1/4 in".
    ///
    /// # Errors
    /// [`QuantityFault`] without a known unit, or when the number cannot be kept exactly.
    pub fn read(text: &str) -> Result<Self, QuantityFault> {
        let (number, unit) = split_unit(text);
        let unit = match unit {
            "mm" => LengthUnit::Mm,
            "cm" => LengthUnit::Cm,
            "m" => LengthUnit::M,
            "in" | "\"" | "inch" | "inches" => LengthUnit::In,
            "" => return Err(QuantityFault::NoUnit),
            _ => return Err(QuantityFault::UnknownUnit),
        };
        Self::read_in(number, unit)
    }

    /// Reads a bare number, decimal or with a common fraction, in `unit`.
    ///
    /// # Errors
    /// [`QuantityFault::Number`] when it cannot be kept exactly.
    pub fn read_in(number: &str, unit: LengthUnit) -> Result<Self, QuantityFault> {
        let read = |text: &str| {
            decimal::read(text, unit.scale(), Self::LIMIT.0).map_err(QuantityFault::Number)
        };
        let Some((front, below)) = number.split_once('/') else {
            return read(number).map(Self);
        };
        let front = front.trim();
        let (whole, above) = front.split_once([' ', '-']).unwrap_or(("0", front));
        let fault = |fault| QuantityFault::Number(fault);
        let above = decimal::read(above.trim(), 1, 1_000).map_err(fault)?;
        let below = decimal::read(below.trim(), 1, 1_000).map_err(fault)?;
        if below == 0 {
            return Err(fault(DecimalFault::NotANumber));
        }
        if (unit.scale() * above) % below != 0 {
            return Err(fault(DecimalFault::TooFine));
        }
        let length = read(whole.trim())?.saturating_add(unit.scale() * above / below);
        if length > Self::LIMIT.0 {
            return Err(fault(DecimalFault::TooLarge));
        }
        Ok(Self(length))
    }

    /// The number alone, rounded to tenths of `unit`, for reading.
    #[must_use]
    pub fn number(self, unit: LengthUnit) -> String {
        decimal::write_rounded(self.0, unit.scale(), 1)
    }

    /// Number and unit, rounded for reading: "431.5 mm".
    #[must_use]
    pub fn words(self, unit: LengthUnit) -> String {
        format!("{} {}", self.number(unit), unit.word())
    }

    /// Exact text in `unit` where it has one, else exact in millimetres.
    #[must_use]
    pub fn exact(self, unit: LengthUnit) -> String {
        let fits = decimal::write_exact(self.0, unit.scale()).map(|n| (n, unit));
        let (number, unit) = fits.unwrap_or_else(|| {
            let mm = decimal::write_exact(self.0, LengthUnit::Mm.scale());
            (mm.unwrap_or_default(), LengthUnit::Mm)
        });
        format!("{number} {}", unit.word())
    }

    /// This length `n` times over; saturates at the ends of 64 bits.
    #[must_use]
    pub const fn times(self, n: i64) -> Self {
        Self(self.0.saturating_mul(n))
    }

    /// The distance between two lengths.
    #[must_use]
    pub const fn apart(self, other: Self) -> Self {
        Self(self.0.saturating_sub(other.0).saturating_abs())
    }
}

impl Add for Length {
    type Output = Self;
    fn add(self, other: Self) -> Self {
        Self(self.0.saturating_add(other.0))
    }
}
impl Sub for Length {
    type Output = Self;
    fn sub(self, other: Self) -> Self {
        Self(self.0.saturating_sub(other.0))
    }
}
impl Neg for Length {
    type Output = Self;
    fn neg(self) -> Self {
        Self(self.0.saturating_neg())
    }
}
impl Sum for Length {
    fn sum<I: Iterator<Item = Self>>(lengths: I) -> Self {
        lengths.fold(Self::ZERO, Add::add)
    }
}
