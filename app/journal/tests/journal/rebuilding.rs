//! What was lost of a data folder comes back; what is there is left alone.
use crate::invented;
use domain::Fact;
use journal::{FileOutcome, Journal, rebuild};
use std::fs;
use std::path::Path;

fn begun(folder: &Path, files: &[(&str, &str)]) {
    let mut journal = Journal::open(&folder.join("journal.sqlite")).expect("opens");
    let last = journal.append(0, &invented::events()).expect("appends");
    let taken = files.iter().map(|(name, text)| Fact::FileTaken {
        name: (*name).to_owned(),
        text: (*text).to_owned(),
    });
    let events: Vec<_> = taken.map(|fact| invented::at(20, fact)).collect();
    journal.append(last, &events).expect("appends");
}

#[test]
fn files_come_back_as_last_taken_and_none_is_overwritten() {
    let folder = tempfile::tempdir().expect("a folder");
    begun(
        folder.path(),
        &[
            ("gym.toml", "name = \"first\""),
            ("lifters.toml", "# l\u{e9}a\n"),
            ("gym.toml", "name = \"last\"\r\n"),
            ("programmes.toml", "# as taken"),
        ],
    );
    fs::write(folder.path().join("programmes.toml"), "# as changed since").expect("writes");
    fs::write(folder.path().join("lifters.toml"), "# l\u{e9}a\n").expect("writes");
    let rebuilt = rebuild(folder.path()).expect("rebuilds");
    let files: Vec<_> = rebuilt
        .files
        .iter()
        .map(|(n, o)| (n.as_str(), *o))
        .collect();
    assert_eq!(
        files,
        [
            ("gym.toml", FileOutcome::Written),
            ("lifters.toml", FileOutcome::Same),
            ("programmes.toml", FileOutcome::Differs),
        ]
    );
    let read = |name| fs::read_to_string(folder.path().join(name)).expect("reads");
    assert_eq!(read("gym.toml"), "name = \"last\"\r\n");
    assert_eq!(read("programmes.toml"), "# as changed since");
    assert_eq!(rebuilt.record.upto, 14);
    assert!(rebuilt.record.rebuilt);
    let again = rebuild(folder.path()).expect("rebuilds again");
    assert_eq!(again.files["gym.toml"], FileOutcome::Same);
    assert_eq!(again.record, rebuilt.record);
}

#[test]
fn no_name_leads_out_of_the_folder_or_onto_a_database() {
    let outer = tempfile::tempdir().expect("a folder");
    let folder = outer.path().join("data");
    fs::create_dir(&folder).expect("makes");
    let absolute = outer.path().join("absolute.toml");
    let names = [
        "../outside.toml",
        "sub/inside.toml",
        absolute.to_str().expect("text"),
        "journal.sqlite-wal",
        "record.sqlite",
        "./gym.toml",
        ".hidden.toml",
        ".toml",
        "gym.toml/",
        "gym\n.toml",
        "",
        "..",
    ];
    let files: Vec<_> = names.iter().map(|name| (*name, "x")).collect();
    begun(&folder, &files);
    let rebuilt = rebuild(&folder).expect("rebuilds");
    for name in names {
        assert_eq!(rebuilt.files[name], FileOutcome::BadName, "{name:?}");
    }
    let mut found: Vec<_> = fs::read_dir(&folder)
        .expect("lists")
        .map(|entry| entry.expect("an entry").file_name())
        .filter(|name| !name.to_string_lossy().starts_with("journal."))
        .filter(|name| !name.to_string_lossy().contains(".sqlite"))
        .collect();
    found.sort();
    assert_eq!(found, ["gym.toml"], "the invented one alone");
    assert_eq!(fs::read_dir(outer.path()).expect("lists").count(), 1);
}

#[test]
fn without_a_journal_nothing_is_made() {
    let folder = tempfile::tempdir().expect("a folder");
    let error = rebuild(folder.path()).expect_err("no journal").to_string();
    assert!(error.starts_with("there is no journal at "), "{error}");
    assert_eq!(fs::read_dir(folder.path()).expect("lists").count(), 0);
}
