//! Stress (yield) and stiffness (Young's modulus) as a whole count of pascals.
//!
//! Refuses: a default. What a maker does not state is not known.
use crate::decimal;
use crate::mass::{QuantityFault, split_unit};
use alloc::format;
use alloc::string::String;

/// A stress or a stiffness in pascals: 1 MPa = 10^6, 1 GPa = 10^9.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Default)]
pub struct Stress(i64);

/// Newtons of a pound-force, in units of 10^-13 N (exact: pound of 1959 times standard gravity,
/// NIST SP 811), over square metres of a square inch, in units of 10^-8 m2. Their quotient is
/// the pascals of one psi in units of 10^-5.
const LBF: i128 = 44_482_216_152_605;
const SQUARE_INCH: i128 = 64_516;

impl Stress {
    /// Nothing.
    pub const ZERO: Self = Self(0);
    /// The most that is read: 10 000 GPa, stiffer than anything.
    pub const LIMIT: Self = Self(10_000_000_000_000);

    /// From pascals.
    #[must_use]
    pub const fn from_pa(pa: i64) -> Self {
        Self(pa)
    }

    /// In pascals.
    #[must_use]
    pub const fn pa(self) -> i64 {
        self.0
    }

    /// Whole megapascals.
    #[must_use]
    pub const fn mpa(mpa: i64) -> Self {
        Self(mpa * 1_000_000)
    }

    /// Whole gigapascals.
    #[must_use]
    pub const fn gpa(gpa: i64) -> Self {
        Self(gpa * 1_000_000_000)
    }

    /// Reads "950 MPa", "205 GPa", "190000 psi" or "190 ksi". Pounds to the square inch have no
    /// finite decimal in pascals; they are rounded to the pascal.
    ///
    /// # Errors
    /// [`QuantityFault`] without a known unit, with more than three decimals of a pascal or psi,
    /// or above [`Stress::LIMIT`].
    pub fn read(text: &str) -> Result<Self, QuantityFault> {
        let (number, unit) = split_unit(text);
        let read = |scale: i64, limit: i64| {
            decimal::read(number, scale, limit).map_err(QuantityFault::Number)
        };
        match unit {
            "Pa" => read(1, Self::LIMIT.0).map(Self),
            "MPa" => read(1_000_000, Self::LIMIT.0).map(Self),
            "GPa" => read(1_000_000_000, Self::LIMIT.0).map(Self),
            // A limit of 1.45e9 psi is that of 10 000 GPa.
            "psi" => read(1_000, 1_450_000_000_000).map(Self::from_milli_psi),
            "ksi" => read(1_000_000, 1_450_000_000_000).map(Self::from_milli_psi),
            "" => Err(QuantityFault::NoUnit),
            _ => Err(QuantityFault::UnknownUnit),
        }
    }

    /// To the nearest pascal.
    fn from_milli_psi(milli_psi: i64) -> Self {
        let (above, below) = (i128::from(milli_psi) * LBF, SQUARE_INCH * 100_000 * 1_000);
        let pa = (2 * above + below).div_euclid(2 * below);
        Self(i64::try_from(pa).unwrap_or(i64::MAX))
    }

    /// For reading, rounded to tenths: "97.9 MPa", "205 GPa".
    #[must_use]
    pub fn words(self) -> String {
        let (scale, unit) = if self.0 < 10_000_000_000 {
            (1_000_000, "MPa")
        } else {
            (1_000_000_000, "GPa")
        };
        format!("{} {unit}", decimal::write_rounded(self.0, scale, 1))
    }
}
