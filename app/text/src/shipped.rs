//! The words of what ships in a language: lifts, cues, cautions, kinds of equipment.
//!
//! They are found by their English, as `domain` and the files have it; words that people wrote
//! into their files are theirs, and stay as they are.
use crate::catalogue::Catalogue;
use crate::{Language, keys};

/// Every word of what ships (lifts, cues, cautions, kinds of things): in English, then in
/// `language`.
#[must_use]
pub fn every_shipped_word(language: Language) -> Vec<(&'static str, &'static str)> {
    let said = |language, id| Catalogue::of(language).plain(id);
    let rows = keys::shipped::ALL.iter();
    rows.map(|row| (said(Language::English, row.id), said(language, row.id)))
        .collect()
}

impl Language {
    /// What the program itself ships, by its English words; what people wrote stays as written.
    #[must_use]
    pub fn shipped(self, words: &str) -> String {
        let (english, own) = (Catalogue::of(Self::English), Catalogue::of(self));
        let mut rows = keys::shipped::ALL.iter();
        let row = rows.find(|row| self != Self::English && english.plain(row.id) == words);
        row.map_or(words, |row| own.plain(row.id)).to_owned()
    }
}
