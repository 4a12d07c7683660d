//! Numbers by language, written from exact integers.
use crate::Language;
use domain::{Length, LengthUnit, Mass, MassUnit};

impl Language {
    /// A number as written with a decimal point, in this language's signs.
    #[must_use]
    pub fn number(self, number: &str) -> String {
        match self {
            Self::English => number.to_owned(),
            Self::German | Self::Spanish => number.replace('.', ","),
        }
    }

    /// "102.5", in `unit`.
    #[must_use]
    pub fn mass_number(self, mass: Mass, unit: MassUnit) -> String {
        self.number(&mass.number(unit))
    }

    /// "102.5 kg".
    #[must_use]
    pub fn mass(self, mass: Mass, unit: MassUnit) -> String {
        self.number(&mass.words(unit))
    }

    /// "96 mm".
    #[must_use]
    pub fn length(self, length: Length, unit: LengthUnit) -> String {
        self.number(&length.words(unit))
    }

    /// Between the items of a list of numbers: no comma where the comma is the decimal sign.
    #[must_use]
    pub const fn between(self) -> &'static str {
        match self {
            Self::English => ", ",
            Self::German | Self::Spanish => " · ",
        }
    }

    /// "1st", "2nd", "3rd", "4th".
    #[must_use]
    pub fn place(self, n: usize) -> String {
        let ending = match (self, n % 10, n % 100) {
            (Self::German, ..) => ".",
            (Self::Spanish, ..) => ".º",
            (Self::English, _, 11..=13) => "th",
            (Self::English, 1, _) => "st",
            (Self::English, 2, _) => "nd",
            (Self::English, 3, _) => "rd",
            (Self::English, ..) => "th",
        };
        format!("{n}{ending}")
    }
}
