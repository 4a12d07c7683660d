//! What was said before anybody knew who would read it: in every language at once.
//!
//! Refuses: choosing one.
use super::Language;

/// The same in every language.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct Said([String; Language::ALL.len()]);

impl Said {
    /// What `words` makes of each language.
    pub fn of(words: impl Fn(Language) -> String) -> Self {
        Self(Language::ALL.map(words))
    }

    /// As one language says it.
    #[must_use]
    pub fn to(&self, say: Language) -> &str {
        &self.0[say as usize]
    }
}
