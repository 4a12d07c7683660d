//! Every word of the window is bundled in every language, and none stands there untranslated.
//!
//! Refuses: words that `view` makes; its own tests hold those.
use std::collections::BTreeMap;
use std::fs;
use std::path::{Path, PathBuf};
use view::Language;

/// Words that are no language: names of fonts and files, commands of a path.
const NO_WORDS: [&str; 5] = [
    "Roboto Condensed",
    "Pinladder",
    "M 3 13 L 9 19 L 21 5",
    "M 4 4 L 20 20 M 20 4 L 4 20",
    "M 12 0 L 24 12 L 12 24 L 0 12 Z",
];

fn sources(folder: &Path, found: &mut Vec<PathBuf>) {
    for entry in fs::read_dir(folder).expect("the folder is there") {
        let path = entry.expect("an entry").path();
        if path.is_dir() {
            sources(&path, found);
        } else if path.extension().is_some_and(|e| e == "slint") {
            found.push(path);
        }
    }
}

/// Every text in quotes of the Slint sources: the file, what stands before it, the text.
fn texts() -> Vec<(String, String, String)> {
    let mut files = Vec::new();
    sources(Path::new(env!("CARGO_MANIFEST_DIR")), &mut files);
    assert!(files.len() > 20, "only {} sources", files.len());
    let mut found = Vec::new();
    for file in files {
        let name = file
            .file_name()
            .expect("a name")
            .to_string_lossy()
            .into_owned();
        for line in fs::read_to_string(&file).expect("it reads").lines() {
            let code = line.split("//").next().unwrap_or_default();
            if code.trim_start().starts_with("import") {
                continue;
            }
            let parts: Vec<&str> = code.split('"').collect();
            for pair in parts.chunks_exact(2) {
                found.push((name.clone(), pair[0].to_owned(), pair[1].to_owned()));
            }
        }
    }
    found
}

/// The messages of a bundled language.
fn bundled(language: &str) -> BTreeMap<String, String> {
    let path = format!(
        "{}/lang/{language}/LC_MESSAGES/ui.po",
        env!("CARGO_MANIFEST_DIR")
    );
    let text = fs::read_to_string(path).expect("the language is there");
    let quoted = |line: &str, key: &str| {
        let rest = line.strip_prefix(key)?.trim();
        Some(rest.trim_matches('"').to_owned())
    };
    let mut messages = BTreeMap::new();
    let mut id = String::new();
    for line in text.lines() {
        if let Some(text) = quoted(line, "msgid ") {
            id = text;
        } else if let Some(text) = quoted(line, "msgstr ")
            && !id.is_empty()
        {
            assert!(messages.insert(id.clone(), text).is_none(), "{id:?} twice");
        }
    }
    messages
}

fn gaps(text: &str) -> Vec<char> {
    let mut gaps: Vec<char> = text
        .match_indices('{')
        .filter_map(|(at, _)| text[at + 1..].chars().next())
        .collect();
    gaps.sort_unstable();
    gaps
}

#[test]
fn every_word_is_bundled_in_every_language_and_no_other() {
    let languages = Language::ALL.into_iter().map(Language::code);
    languages.filter(|code| *code != "en").for_each(is_whole);
}

fn is_whole(code: &str) {
    let bundled = bundled(code);
    let mut used = Vec::new();
    for (file, before, text) in texts() {
        if before.ends_with("@tr(") {
            let said = bundled.get(&text);
            let said = said.unwrap_or_else(|| panic!("{file}: nothing in {code} for {text:?}"));
            assert!(!said.is_empty(), "{file}: nothing in {code} for {text:?}");
            assert_eq!(gaps(&text), gaps(said), "{file}: the gaps of {text:?}");
            used.push(text);
        }
    }
    for id in bundled.keys() {
        assert!(
            used.contains(id),
            "nobody says {id:?}; drop it from the language"
        );
    }
}

#[test]
fn no_word_stands_there_untranslated() {
    for (file, before, text) in texts() {
        let letters = text.chars().filter(|c| c.is_alphabetic()).count();
        let word = letters > 1 && !NO_WORDS.contains(&text.as_str());
        assert!(
            !word || before.ends_with("@tr("),
            "{file}: {text:?} is not in @tr"
        );
    }
}
