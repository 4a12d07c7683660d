//! `verify` tells each kind of damage, and where.
use crate::invented;
use domain::Moment;
use journal::{Journal, verify};
use rusqlite::{Connection, OpenFlags};
use std::path::{Path, PathBuf};

/// A folder with a sound journal of ten events.
fn sound() -> (tempfile::TempDir, PathBuf) {
    let folder = tempfile::tempdir().expect("a folder");
    let path = folder.path().join("journal.sqlite");
    let mut journal = Journal::open(&path).expect("opens");
    let last = journal.append(0, &invented::events()).expect("appends");
    assert_eq!(last, 10);
    (folder, path)
}

const GUARDS: &str =
    "DROP TRIGGER events_never_change; DROP TRIGGER events_never_go; DROP TRIGGER events_in_order;";

/// What `verify` says after somebody took the guards away and did `change`; the path left out.
fn after(change: &str) -> String {
    let (_folder, path) = sound();
    let raw = Connection::open_with_flags(&path, OpenFlags::default()).expect("opens");
    raw.execute_batch(GUARDS).expect("drops");
    raw.execute_batch(change).expect(change);
    drop(raw);
    told(&path)
}

fn told(path: &Path) -> String {
    let error = verify(path).expect_err("not sound").to_string();
    let error = error.replace(&path.display().to_string(), "J");
    // The advice is the same each time.
    error.split(';').next().expect("one part").to_owned()
}

#[test]
fn a_sound_journal_is_reported_whole() {
    let (_folder, path) = sound();
    let report = verify(&path).expect("sound");
    assert_eq!(report.events, 10);
    assert_eq!(report.first_at, Some(Moment(1_772_442_000_000)));
    assert_eq!(report.last_at, Some(Moment(1_772_442_810_000)));
    assert_eq!(report.kinds["set_done"], 2);
    assert_eq!(report.kinds.values().sum::<u64>(), 10);
    // Computed apart from this program: tests/references/seal.py.
    insta::assert_snapshot!(report.seal, @"8ba770793ed6685dbd2fa456b06b74b14732e48368a41b0f4d3d79d354dd576e");
    assert_eq!(verify(&path).expect("still sound"), report);
}

#[test]
fn an_empty_journal_is_sound_and_a_missing_one_is_not_made() {
    let folder = tempfile::tempdir().expect("a folder");
    let path = folder.path().join("journal.sqlite");
    assert!(verify(&path).is_err());
    assert!(!path.exists());
    drop(Journal::open(&path).expect("opens"));
    assert_eq!(verify(&path).expect("sound").events, 0);
}

#[test]
fn a_flipped_bit_in_any_column_is_told() {
    let altered = "J cannot be trusted from event 4 on: its content or its place was altered: the hash does not match";
    for column in [
        "body = replace(body, '5', '4')",
        "body = replace(body, ',', ' ,')",
        "kind = 'set_Done'",
        "at_ms = at_ms + 1",
        "at_ms = at_ms - 256",
        "version = 2",
        "hash = zeroblob(32)",
        "hash = unhex(replace(substr(hex(hash), 1, 1), substr(hex(hash), 1, 1), \
         iif(substr(hex(hash), 1, 1) = '0', '1', '0')) || substr(hex(hash), 2))",
    ] {
        let change = format!("UPDATE events SET {column} WHERE seq = 4");
        assert_eq!(after(&change), altered, "{change}");
    }
}

#[test]
fn missing_and_swapped_rows_are_told() {
    assert_eq!(
        after("DELETE FROM events WHERE seq = 1"),
        "J cannot be trusted from event 2 on: events 1 to 1 are missing before it"
    );
    assert_eq!(
        after("DELETE FROM events WHERE seq BETWEEN 4 AND 6"),
        "J cannot be trusted from event 7 on: events 4 to 6 are missing before it"
    );
    assert_eq!(
        after("DELETE FROM events WHERE seq = 10"),
        "J ends at event 9, before event 10"
    );
    assert_eq!(
        after("DELETE FROM events"),
        "J ends at event 0, before event 10"
    );
    assert_eq!(
        after(
            "UPDATE events SET seq = 99 WHERE seq = 4; UPDATE events SET seq = 4 WHERE seq = 5; \
             UPDATE events SET seq = 5 WHERE seq = 99"
        ),
        "J cannot be trusted from event 4 on: its content or its place was altered: the hash does not match"
    );
    // The row before goes away and the numbers are closed up.
    assert_eq!(
        after("DELETE FROM events WHERE seq = 4; UPDATE events SET seq = seq - 1 WHERE seq > 4"),
        "J cannot be trusted from event 4 on: its content or its place was altered: the hash does not match"
    );
}

#[test]
fn lost_guards_alone_are_told() {
    assert_eq!(
        after(""),
        "J has lost its guard events_never_change, so somebody has worked on it by hand"
    );
}

/// Every byte of the file in turn: either SQLite, the chain or a guard notices, or what the
/// journal says is unchanged (free space within pages, SQLite's own counters).
#[test]
fn any_byte_of_the_file_may_go_bad() {
    let (folder, path) = sound();
    let report = verify(&path).expect("sound");
    let bytes = std::fs::read(&path).expect("reads");
    let bad = folder.path().join("bad.sqlite");
    let mut told = 0;
    for at in (0..bytes.len()).step_by(7) {
        let mut flipped = bytes.clone();
        flipped[at] ^= 0x10;
        std::fs::write(&bad, &flipped).expect("writes");
        match verify(&bad) {
            Ok(same) => assert_eq!(same, report, "byte {at} went unnoticed"),
            Err(_) => told += 1,
        }
    }
    assert!(told > 200, "only {told} told");
}
