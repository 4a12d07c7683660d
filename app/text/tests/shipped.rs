//! What ships is said in every language: lifts, their cues and cautions.
use domain::lift_shipped::lifts;
use std::collections::BTreeSet;
use text::{Language, every_shipped_word};

#[test]
fn every_word_that_ships_is_there_in_every_language() {
    for language in Language::ALL {
        let rows = every_shipped_word(language);
        let known: BTreeSet<&str> = rows.iter().map(|row| row.0).collect();
        for lift in lifts() {
            let words = lift.cues.iter().chain(&lift.cautions).chain([&lift.name]);
            for word in words {
                assert!(known.contains(word.as_str()), "{language:?}: no {word:?}");
            }
        }
        for (english, own) in rows {
            // A rack is a rack in Spanish too.
            let alike = language == Language::English || own == "rack";
            assert_eq!(alike, english == own, "{language:?}: {english}");
        }
    }
    assert_eq!(Language::German.shipped("deadlift"), "Kreuzheben");
    assert_eq!(Language::German.shipped("Kanto's squat"), "Kanto's squat");
}
