//! A file that cannot be used says what to do.
use crate::invented;
use journal::{AppendError, Journal, JournalError};
use rusqlite::{Connection, OpenFlags};
use std::fs;
use std::path::Path;

fn refused(path: &Path) -> String {
    let error = Journal::open(path).expect_err("refused").to_string();
    let folder = path.parent().expect("in a folder").display().to_string();
    error.replace(&folder, "DATA")
}

fn raw(path: &Path) -> Connection {
    Connection::open_with_flags(path, OpenFlags::default()).expect("opens")
}

#[test]
fn no_folder() {
    let folder = tempfile::tempdir().expect("a folder");
    insta::assert_snapshot!(refused(&folder.path().join("missing/journal.sqlite")), @"DATA/journal.sqlite cannot be opened: its folder is missing or closed to this user; create or open it, or choose another data folder");
    fs::create_dir(folder.path().join("journal.sqlite")).expect("makes");
    insta::assert_snapshot!(refused(&folder.path().join("journal.sqlite")), @"DATA/journal.sqlite cannot be opened: its folder is missing or closed to this user; create or open it, or choose another data folder");
}

#[test]
fn another_file() {
    let folder = tempfile::tempdir().expect("a folder");
    let path = folder.path().join("journal.sqlite");
    let text = "date,lifter,lift\n".repeat(100);
    fs::write(&path, &text).expect("writes");
    insta::assert_snapshot!(refused(&path), @"DATA/journal.sqlite is not a database; move it away, and put back a copy of the journal");
    assert_eq!(
        fs::read_to_string(&path).expect("reads"),
        text,
        "left alone"
    );
}

#[test]
fn another_programs_database() {
    let folder = tempfile::tempdir().expect("a folder");
    let path = folder.path().join("journal.sqlite");
    raw(&path)
        .execute_batch("CREATE TABLE t (a)")
        .expect("makes");
    let before = fs::read(&path).expect("reads");
    insta::assert_snapshot!(refused(&path), @"DATA/journal.sqlite is a database of another program; move it away, or choose another data folder");
    assert_eq!(fs::read(&path).expect("reads"), before, "left alone");
    assert!(matches!(
        journal::verify(&path),
        Err(JournalError::NotOurs { .. })
    ));
}

#[test]
fn a_newer_programs_journal() {
    let folder = tempfile::tempdir().expect("a folder");
    let path = folder.path().join("journal.sqlite");
    drop(Journal::open(&path).expect("opens"));
    raw(&path)
        .pragma_update(None, "user_version", 7)
        .expect("sets");
    insta::assert_snapshot!(refused(&path), @"DATA/journal.sqlite was written by a newer version of this program (layout 7, this one knows up to 1); install the newer version");
    assert!(matches!(
        journal::verify(&path),
        Err(JournalError::Newer {
            found: 7,
            known: 1,
            ..
        })
    ));
}

#[test]
fn a_newer_programs_event() {
    let folder = tempfile::tempdir().expect("a folder");
    let path = folder.path().join("journal.sqlite");
    let mut journal = Journal::open(&path).expect("opens");
    journal
        .append(0, &invented::events()[..1])
        .expect("appends");
    // Sealed rightly, so that nothing but the version is at fault. Hash made with Python's
    // hashlib, of: hash 1, 2, 0, 9, "x", "{}".
    let hash = "feba7af34846fd895e0855fb6fb5c07364ddab4130df7ca9290fa440501b8592";
    raw(&path)
        .execute(
            "INSERT INTO events VALUES (2, 0, 9, 'x', '{}', unhex(?1))",
            [hash],
        )
        .expect("inserts");
    let error = journal
        .events_after(0)
        .expect_err("not understood")
        .to_string();
    insta::assert_snapshot!(error.replace(&folder.path().display().to_string(), "DATA"), @"DATA/journal.sqlite cannot be trusted from event 2 on: it was written by a newer version of this program (wire version 9, this one reads up to 2); install the newer version");
    assert_eq!(journal.last().expect("reads"), 2);
}

#[test]
fn a_cut_tail_is_not_built_upon() {
    let folder = tempfile::tempdir().expect("a folder");
    let path = folder.path().join("journal.sqlite");
    let mut journal = Journal::open(&path).expect("opens");
    journal.append(0, &invented::events()).expect("appends");
    raw(&path)
        .execute_batch("DROP TRIGGER events_never_go; DELETE FROM events WHERE seq > 7")
        .expect("deletes");
    let refused = journal.append(7, &invented::events()[..1]);
    assert!(matches!(
        refused,
        Err(AppendError::Journal(JournalError::Short {
            asked: 10,
            last: 7,
            ..
        }))
    ));
}

#[test]
fn a_file_deleted_while_open_takes_no_more() {
    let folder = tempfile::tempdir().expect("a folder");
    let path = folder.path().join("journal.sqlite");
    let mut journal = Journal::open(&path).expect("opens");
    journal.append(0, &invented::events()).expect("appends");
    fs::rename(&path, folder.path().join("elsewhere.sqlite")).expect("moves");
    let error = journal.append(10, &invented::events()).expect_err("gone");
    insta::assert_snapshot!(error.to_string().replace(&folder.path().display().to_string(), "DATA"), @"DATA/journal.sqlite was moved or deleted while in use; put it back and start the program again");
    // Another file in its place is not it either; nor is one begun while the mark knows better.
    let lost = Journal::open(&path)
        .expect_err("there was more")
        .to_string();
    insta::assert_snapshot!(lost.replace(&folder.path().display().to_string(), "DATA"), @r#"DATA/journal.sqlite ends at event 0, but journal.mark knows it as far as event 10; nothing was changed: run "pinladder journal mend", or put back a copy"#);
    for witness in [journal::MARK_FILE, "journal.sqlite-wal"] {
        fs::remove_file(folder.path().join(witness)).expect("removes");
    }
    drop(Journal::open(&path).expect("makes a new one"));
    assert!(matches!(
        journal.append(10, &invented::events()),
        Err(AppendError::Journal(JournalError::Gone { .. }))
    ));
}

#[test]
fn a_write_ahead_file_deleted_while_open_takes_no_more() {
    let folder = tempfile::tempdir().expect("a folder");
    let path = folder.path().join("journal.sqlite");
    let mut journal = Journal::open(&path).expect("opens");
    journal.append(0, &invented::events()).expect("appends");
    fs::remove_file(folder.path().join("journal.sqlite-wal")).expect("removes");
    let error = journal.append(10, &invented::events()).expect_err("gone");
    assert!(matches!(
        error,
        AppendError::Journal(JournalError::Gone { path }) if path.ends_with("journal.sqlite-wal")
    ));
}
