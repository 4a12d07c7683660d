//! Every phrase in every language, with the same gaps, and no English beside the tables.
//!
//! Refuses: judging style; somebody who speaks the language reads the tables.
use chrono::NaiveDate;
use domain::lift_shipped::lifts;
use domain::{Mass, MassUnit};
use std::collections::BTreeSet;
use std::fs;
use std::path::{Path, PathBuf};
use view::Language;
use view::language::{every_phrase, every_shipped_word};

/// The gaps of a phrase, in order.
fn gaps(text: &str) -> BTreeSet<&str> {
    text.match_indices('{')
        .map(|(at, _)| text[at..].split_inclusive('}').next().unwrap_or_default())
        .collect()
}

/// Phrases that are the same in both languages.
const ALIKE: [&str; 2] = ["{0} mm ({1} in)", "{0} {1}"];

#[test]
fn every_phrase_is_there_in_both_languages_with_the_same_gaps() {
    let phrases = every_phrase();
    assert!(phrases.len() > 80, "only {} phrases", phrases.len());
    for (key, phrase) in phrases {
        assert!(!phrase.english.trim().is_empty(), "{key}: no English");
        assert!(!phrase.german.trim().is_empty(), "{key}: no German");
        let (english, german) = (gaps(phrase.english), gaps(phrase.german));
        // A gap may be left out only where the words for it are another language's.
        let left_out = key == "NO_LADDER";
        assert!(
            left_out || english == german,
            "{key}: {english:?} {german:?}"
        );
        let wordless = !phrase.english.chars().any(char::is_alphabetic);
        let alike = phrase.english == phrase.german && !ALIKE.contains(&phrase.english);
        assert!(
            !alike || wordless || phrase.english.len() < 8,
            "{key} is not translated"
        );
    }
}

#[test]
fn every_word_that_ships_is_there_in_german() {
    let known: BTreeSet<&str> = every_shipped_word().into_iter().map(|row| row.0).collect();
    for lift in lifts() {
        let words = lift.cues.iter().chain(&lift.cautions).chain([&lift.name]);
        for word in words {
            assert!(known.contains(word.as_str()), "no German for {word:?}");
        }
    }
    for (english, german) in every_shipped_word() {
        assert!(!german.is_empty() && english != german, "{english}");
    }
}

/// Decimal signs as DIN 1333 and the English point; names of days and months from CLDR, from
/// memory.
#[test]
fn numbers_and_dates_go_by_language() {
    let load = Mass::of(MassUnit::Kg, 102_500);
    assert_eq!(Language::English.mass(load, MassUnit::Kg), "102.5 kg");
    assert_eq!(Language::German.mass(load, MassUnit::Kg), "102,5 kg");
    let day = NaiveDate::from_ymd_opt(2026, 3, 4).expect("a day");
    assert_eq!(Language::English.date(day), "Wednesday 4 March");
    assert_eq!(Language::German.date(day), "Mittwoch, 4. März");
    assert_eq!(Language::German.short_date(day), "4. Mär");
    assert_eq!(Language::English.short_day(day), "Wed 4 Mar 2026");
    assert_eq!(Language::German.short_day(day), "Mi, 4. Mär 2026");
    let mut day = NaiveDate::from_ymd_opt(2026, 1, 1).expect("a day");
    for _ in 0..366 {
        assert_eq!(
            Language::English.date(day),
            day.format("%A %-d %B").to_string()
        );
        day = day.succ_opt().expect("the next day");
    }
}

fn screens() -> Vec<PathBuf> {
    let src = Path::new(env!("CARGO_MANIFEST_DIR")).join("src");
    let entries = fs::read_dir(src).expect("the sources are there");
    let files = entries.map(|entry| entry.expect("an entry").path());
    // Documents are in English; a language names itself.
    let documents = [
        // Words for machines, the same in every language.
        "deed.rs",
        "language.rs",
        "measure.rs",
        "measure_svg.rs",
        "meet.rs",
        "next_doc.rs",
        "sheet.rs",
        "sheet_text.rs",
        "split_doc.rs",
        "split_svg.rs",
        "svg.rs",
        "words.rs",
    ];
    files
        .filter(|path| path.extension().is_some_and(|e| e == "rs"))
        .filter(|path| !documents.iter().any(|name| path.ends_with(name)))
        .collect()
}

/// Words in quotes of one line of code, gaps and comments left out.
fn words(line: &str) -> Vec<String> {
    let code = line.split("//").next().unwrap_or_default();
    let quoted = code.split('"').skip(1).step_by(2);
    let without_gaps = |text: &str| {
        let parts = text
            .split('{')
            .map(|part| part.split('}').next_back().unwrap_or_default());
        parts.collect::<String>()
    };
    quoted
        .map(without_gaps)
        .filter(|text| text.chars().filter(|c| c.is_alphabetic()).count() > 1)
        .collect()
}

/// Keys of files and of the build, which no screen shows.
const KEYS: [&str; 15] = [
    "%H:%M",
    "meet-log.txt",
    "%Y-%m-%d",
    "screen.toml",
    "desk.toml",
    "by-hour",
    "daylight",
    "dim",
    "language",
    "light",
    "CARGO_PKG_VERSION",
    "language = \\",
    "\\nlight = \\",
    "forbid",
    "was_plain=true\\n",
];

#[test]
fn no_english_stands_beside_the_tables() {
    let mut found = Vec::new();
    for path in screens() {
        let text = fs::read_to_string(&path).expect("it reads");
        for (at, line) in text.lines().enumerate() {
            if line.trim_start().starts_with("#[") {
                continue;
            }
            for word in words(line)
                .iter()
                .filter(|word| !KEYS.contains(&word.as_str()))
            {
                found.push(format!("{}:{}: {word:?}", path.display(), at + 1));
            }
        }
    }
    assert!(
        found.is_empty(),
        "put these into language/phrases.rs:\n{}",
        found.join("\n")
    );
}
