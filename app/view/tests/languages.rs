//! No English stands in the screens' own files: their words are in the catalogues.
use std::fs;
use std::path::{Path, PathBuf};

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
        "put these into the catalogues of app/text:\n{}",
        found.join("\n")
    );
}
