//! The languages of the screen: phrases with gaps, numbers, dates, and the words of what ships.
//!
//! Refuses: documents and files, which stay in English; words that people wrote, which stay as
//! written.
mod checked;
pub(crate) mod coach;
mod desk;
mod groups;
mod next;
pub(crate) mod phrases;
mod refused;
mod said;
mod say;
mod shipped;
mod warn;

use domain::gaps::fill;
use domain::{Length, LengthUnit, Mass, MassUnit};

pub(crate) use coach as c;
pub(crate) use phrases as p;
pub(crate) use phrases::NOTES;
pub use said::Said;
pub(crate) use say::whole_mm;

/// A language of the screen.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum Language {
    /// English, decimal points.
    #[default]
    English,
    /// German, decimal commas.
    German,
}

/// The same thing said in every language; `{0}`, `{1}` are gaps.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Phrase {
    /// In English.
    pub english: &'static str,
    /// In German.
    pub german: &'static str,
}

/// Writes a table of phrases, `KEY: "English", "German";`, and `ALL`, the table with its keys.
#[macro_export]
macro_rules! phrases {
    ($($key:ident: $english:literal, $german:literal;)*) => {
        $(pub(crate) const $key: $crate::language::Phrase =
            $crate::language::Phrase { english: $english, german: $german };)*
        /// The table with its keys.
        pub(crate) const ALL: &[(&str, $crate::language::Phrase)] =
            &[$((stringify!($key), $key)),*];
    };
}

/// Every phrase of the screens with its key, for whoever checks that none is missing.
#[must_use]
pub fn every_phrase() -> Vec<(&'static str, Phrase)> {
    [
        phrases::ALL,
        phrases::days::ALL,
        phrases::desk::ALL,
        phrases::turn::ALL,
        phrases::groups::ALL,
        phrases::list::ALL,
        phrases::loads::ALL,
        coach::ALL,
    ]
    .concat()
}

/// Every word of what ships (lifts, cues, cautions, patterns) that the screen can say in another
/// language: English, then German.
#[must_use]
pub fn every_shipped_word() -> Vec<(&'static str, &'static str)> {
    shipped::WORDS.to_vec()
}

/// Every template of a file's checker that can be said in another language: English, then German.
#[must_use]
pub fn every_checked_word() -> Vec<(&'static str, &'static str)> {
    checked::all().copied().collect()
}

impl Language {
    /// All of them.
    pub const ALL: [Self; 2] = [Self::English, Self::German];

    /// Its code (ISO 639-1).
    #[must_use]
    pub const fn code(self) -> &'static str {
        match self {
            Self::English => "en",
            Self::German => "de",
        }
    }

    /// Its name in itself, so that whoever speaks it finds it.
    #[must_use]
    pub const fn name(self) -> &'static str {
        match self {
            Self::English => "English",
            Self::German => "Deutsch",
        }
    }

    /// The language of a code.
    #[must_use]
    pub fn of_code(code: &str) -> Option<Self> {
        Self::ALL
            .into_iter()
            .find(|language| language.code() == code)
    }

    /// A phrase without gaps.
    #[must_use]
    pub fn say(self, phrase: Phrase) -> String {
        self.pick(phrase).to_owned()
    }

    /// A phrase with its gaps filled, `{0}` by the first.
    #[must_use]
    pub fn fill(self, phrase: Phrase, gaps: &[&str]) -> String {
        fill(self.pick(phrase), gaps)
    }

    /// As [`Language::say`], for ever.
    #[must_use]
    pub const fn pick(self, phrase: Phrase) -> &'static str {
        match self {
            Self::English => phrase.english,
            Self::German => phrase.german,
        }
    }

    /// What the program itself ships, by its English words; what people wrote stays as written.
    #[must_use]
    pub fn shipped(self, words: &str) -> String {
        let row = shipped::WORDS.iter().find(|(english, _)| *english == words);
        match (self, row) {
            (Self::German, Some((_, german))) => (*german).to_owned(),
            (Self::English | Self::German, _) => words.to_owned(),
        }
    }

    /// A number as written with a decimal point, in this language's signs.
    #[must_use]
    pub fn number(self, number: &str) -> String {
        match self {
            Self::English => number.to_owned(),
            Self::German => number.replace('.', ","),
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
    pub(crate) const fn between(self) -> &'static str {
        match self {
            Self::English => ", ",
            Self::German => " · ",
        }
    }
}
