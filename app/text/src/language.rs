//! The languages, and how a key is said in one.
use crate::catalogue::{Catalogue, GAPS};
use crate::{Message, Phrase};

/// A language of the screen.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum Language {
    /// English, decimal points.
    #[default]
    English,
    /// German, decimal commas.
    German,
    /// Spanish, decimal commas.
    Spanish,
}

impl Language {
    /// All of them.
    pub const ALL: [Self; 3] = [Self::English, Self::German, Self::Spanish];

    /// Its code (ISO 639-1).
    #[must_use]
    pub const fn code(self) -> &'static str {
        match self {
            Self::English => "en",
            Self::German => "de",
            Self::Spanish => "es",
        }
    }

    /// Its name in itself, so that whoever speaks it finds it.
    #[must_use]
    pub const fn name(self) -> &'static str {
        match self {
            Self::English => "English",
            Self::German => "Deutsch",
            Self::Spanish => "Español",
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

    /// As [`Language::say`], for ever.
    #[must_use]
    pub fn pick(self, phrase: Phrase) -> &'static str {
        Catalogue::of(self).plain(phrase.id)
    }

    /// A message with its gaps as `{0}`, `{1}`, for whoever checks what is said.
    #[must_use]
    pub fn template(self, message: Message) -> String {
        Catalogue::of(self).filled(message, &GAPS)
    }

    /// As [`Language::fill`], for whoever keeps a message until it is known who reads it. A gap
    /// that nothing fills is told by its name.
    #[must_use]
    pub fn tell(self, message: Message, gaps: &[&str]) -> String {
        Catalogue::of(self).filled(message, gaps)
    }

    /// How many there are of something: "1 set", "3 sets".
    #[must_use]
    pub fn count(self, phrase: Phrase<1>, n: usize) -> String {
        self.fill(phrase, &[&n.to_string()])
    }

    /// A phrase with its gaps filled, in the order in which its key names them. What fills a gap
    /// is never read as a gap itself; digits alone decide between one and many.
    #[must_use]
    pub fn fill<const N: usize>(self, phrase: Phrase<N>, gaps: &[&str; N]) -> String {
        Catalogue::of(self).filled(phrase.message(), gaps)
    }
}
