//! The record is held against one that is made anew: any value that differs is found, and mended.
use crate::invented;
use domain::Event;
use journal::{
    JOURNAL_FILE, Journal, RECORD_FILE, Record, RecordReader, SetRow, prove_record, remake_record,
};
use rusqlite::{Connection, OpenFlags};
use std::fs;
use std::ops::ControlFlow;
use std::path::Path;

/// Events of the journal, followed by the record one by one.
const EVENTS: u64 = 60;
/// Bits that are flipped, spread over the record's file.
const FLIPS: usize = 120;

fn event(seq: u64) -> Event {
    let facts = invented::facts();
    let at = usize::try_from(seq).expect("few") % facts.len();
    invented::at(i64::try_from(seq).expect("few"), facts[at].clone())
}

/// A folder whose record followed the journal event by event, all of it in the file itself.
fn followed(folder: &Path) {
    let mut journal = Journal::open(&folder.join(JOURNAL_FILE)).expect("opens");
    let mut record = Record::open(&folder.join(RECORD_FILE)).expect("opens");
    for seq in 1..=EVENTS {
        journal.append(seq - 1, &[event(seq)]).expect("appends");
        record.follow(&journal).expect("follows");
    }
}

fn sets(folder: &Path) -> Vec<SetRow> {
    let reader = RecordReader::open(&folder.join(RECORD_FILE)).expect("opens");
    let mut rows = Vec::new();
    let each = reader.expect("is there").each_set(|row| {
        rows.push(row);
        ControlFlow::Continue(())
    });
    each.expect("reads");
    rows
}

#[test]
fn one_that_followed_is_what_is_made_anew_also_where_the_journal_has_gone_on() {
    let folder = tempfile::tempdir().expect("a folder");
    let none = prove_record(folder.path()).expect("nothing to prove");
    assert!(none, "there is none");
    followed(folder.path());
    assert!(prove_record(folder.path()).expect("can be told"));
    let mut journal = Journal::open(&folder.path().join(JOURNAL_FILE)).expect("opens");
    let more = [event(EVENTS + 1), event(EVENTS + 2)];
    journal.append(EVENTS, &more).expect("appends");
    assert!(prove_record(folder.path()).expect("can be told"));
    let names = fs::read_dir(folder.path()).expect("a folder").flatten();
    let left: Vec<_> = names.map(|entry| entry.file_name()).collect();
    let aside = |name: &&std::ffi::OsString| name.to_string_lossy().contains("proof");
    assert_eq!(left.iter().find(aside), None, "nothing is left of it");
}

#[test]
fn a_value_a_row_and_a_missing_row_are_found_and_made_again() {
    let folder = tempfile::tempdir().expect("a folder");
    followed(folder.path());
    let whole = sets(folder.path());
    assert!(!whole.is_empty(), "no sets");
    for change in [
        "UPDATE sets SET load_ng = load_ng + 1 WHERE seq = (SELECT min(seq) FROM sets)",
        "UPDATE sets SET reps = reps + 1 WHERE seq = (SELECT max(seq) FROM sets)",
        "DELETE FROM sets WHERE seq = (SELECT min(seq) FROM sets)",
        "UPDATE planned SET note = note || '!' WHERE id = (SELECT min(id) FROM planned)",
        "INSERT INTO entries SELECT max(seq) + 1, lift_no, 'set' FROM entries",
        "UPDATE clock SET offset_ms = offset_ms + 1",
        "UPDATE mark SET upto = upto - 1",
    ] {
        let flags = OpenFlags::SQLITE_OPEN_READ_WRITE;
        let file = Connection::open_with_flags(folder.path().join(RECORD_FILE), flags);
        let file = file.expect("opens");
        assert_eq!(file.execute(change, []).expect("changes"), 1, "{change}");
        drop(file);
        assert!(
            !prove_record(folder.path()).expect("can be told"),
            "{change}"
        );
        remake_record(folder.path()).expect("is made again");
        assert!(
            prove_record(folder.path()).expect("can be told"),
            "{change}"
        );
        assert_eq!(sets(folder.path()), whole, "{change}");
    }
}

/// An index that says something else than its table: no row that is read in order tells it.
#[test]
fn an_index_that_is_wrong_is_found_although_every_row_is_right() {
    let folder = tempfile::tempdir().expect("a folder");
    followed(folder.path());
    let path = folder.path().join(RECORD_FILE);
    let file = Connection::open_with_flags(&path, OpenFlags::SQLITE_OPEN_READ_WRITE);
    let file = file.expect("opens");
    let number = |sql: &str| file.query_row(sql, [], |row| row.get::<_, u32>(0));
    let root = number("SELECT rootpage FROM sqlite_schema WHERE name = 'sets_by_lift'");
    let page = number("PRAGMA page_size").expect("a size");
    let brought_home = file.query_row("PRAGMA wal_checkpoint(TRUNCATE)", [], |_| Ok(()));
    brought_home.expect("all in the file itself");
    let end = usize::try_from(root.expect("an index") * page).expect("few");
    drop(file);
    // A page of an index is filled from its end: its last byte is the number of the first row.
    let mut bytes = fs::read(&path).expect("reads");
    bytes[end - 1] ^= 1;
    fs::write(&path, &bytes).expect("writes");
    let whole = sets(folder.path());
    assert!(!prove_record(folder.path()).expect("can be told"));
    remake_record(folder.path()).expect("is made again");
    assert!(prove_record(folder.path()).expect("can be told"));
    assert_eq!(sets(folder.path()), whole, "the rows had been right");
}

#[test]
fn a_flipped_bit_anywhere_in_the_file_is_found_or_changes_nothing_that_is_read() {
    let folder = tempfile::tempdir().expect("a folder");
    followed(folder.path());
    let whole = sets(folder.path());
    let path = folder.path().join(RECORD_FILE);
    let bytes = fs::read(&path).expect("reads");
    let mut found = 0;
    for n in 0..FLIPS {
        let mut damaged = bytes.clone();
        damaged[n * bytes.len() / FLIPS] ^= 1 << (n * 5 % 8);
        for beside in ["record.sqlite-wal", "record.sqlite-shm"] {
            drop(fs::remove_file(folder.path().join(beside)));
        }
        fs::write(&path, &damaged).expect("writes");
        match prove_record(folder.path()) {
            Ok(true) => assert_eq!(sets(folder.path()), whole, "flip {n}, and not a word"),
            Ok(false) | Err(_) => found += 1,
        }
    }
    assert!(found > FLIPS / 8, "{found} of {FLIPS} were found");
}
