//! What a file's checker says, in a language: the template that stands for the one it used.
//!
//! The checkers say their templates in English, as the English catalogue has them; what people
//! and other programs wrote stays as it was read.
use crate::{Language, keys};
use std::collections::BTreeMap;
use std::sync::OnceLock;

/// Every template of a file's checker: in English, then in `language`.
#[must_use]
pub fn every_checked_word(language: Language) -> Vec<(&'static str, &'static str)> {
    templates(language)
        .iter()
        .map(|(english, other)| (english.as_str(), other.as_str()))
        .collect()
}

/// The templates of a language by their English, made when they are first asked for.
fn templates(language: Language) -> &'static BTreeMap<String, String> {
    static MADE: [OnceLock<BTreeMap<String, String>>; Language::ALL.len()] =
        [const { OnceLock::new() }; Language::ALL.len()];
    MADE[language as usize].get_or_init(|| {
        let rows = keys::checked().into_iter();
        rows.map(|row| (Language::English.template(row), language.template(row)))
            .collect()
    })
}

impl Language {
    /// A template of a checker in this language; `None` where it stays as it is.
    #[must_use]
    pub fn checked(self, template: &str) -> Option<&'static str> {
        if self == Self::English {
            return None;
        }
        templates(self).get(template).map(String::as_str)
    }
}
