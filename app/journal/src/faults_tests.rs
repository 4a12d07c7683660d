//! Faults that need a hand on the connection.
use crate::fault::told;
use crate::{AppendError, Journal, JournalError, open};
use domain::{Event, Fact, Moment};
use rusqlite::{Connection, ffi};
use std::path::Path;

fn taken(kilobytes: usize) -> Event {
    Event {
        at: Moment(0),
        fact: Fact::FileTaken {
            name: "gym.toml".to_owned(),
            text: "#".repeat(kilobytes * 1_024),
        },
    }
}

/// SQLite answers a page limit with the same code as a disk that says ENOSPC.
#[test]
fn a_full_disk_half_applies_nothing_and_goes_on_when_there_is_room() {
    let folder = tempfile::tempdir().expect("a folder");
    let path = folder.path().join("journal.sqlite");
    let mut journal = Journal::open(&path).expect("opens");
    journal.append(0, &[taken(1)]).expect("appends");
    let limit = |journal: &Journal, pages: i64| {
        let set = journal
            .file
            .pragma_update_and_check(None, "max_page_count", pages, |row| row.get::<_, i64>(0));
        assert_eq!(set, Ok(pages));
    };
    limit(&journal, 20);
    let full = journal.append(1, &[taken(1), taken(100)]);
    assert!(matches!(
        full,
        Err(AppendError::Journal(JournalError::Full { .. }))
    ));
    assert_eq!(journal.last().expect("reads"), 1);
    limit(&journal, 1_000);
    assert_eq!(
        journal.append(1, &[taken(1), taken(100)]).expect("appends"),
        3
    );
    drop(journal);
    assert_eq!(crate::verify(&path).expect("sound").events, 3);
}

#[test]
fn a_file_that_cannot_be_kept_safe_is_refused() {
    let memory = Connection::open_in_memory().expect("opens");
    let refused = open::harden(Path::new("DATA/journal.sqlite"), &memory);
    insta::assert_snapshot!(refused.expect_err("memory forgets"), @"DATA/journal.sqlite cannot be kept safe from a power cut: journal_mode is memory, not wal; put the data folder on a local disk");
}

#[test]
fn what_sqlite_says_is_told_with_what_to_do() {
    let mut all = String::new();
    for code in [
        ffi::SQLITE_CANTOPEN,
        ffi::SQLITE_READONLY,
        ffi::SQLITE_READONLY_DIRECTORY,
        ffi::SQLITE_PERM,
        ffi::SQLITE_FULL,
        ffi::SQLITE_BUSY,
        ffi::SQLITE_BUSY_SNAPSHOT,
        ffi::SQLITE_LOCKED,
        ffi::SQLITE_NOTADB,
        ffi::SQLITE_CORRUPT,
        ffi::SQLITE_IOERR_FSYNC,
    ] {
        let error = rusqlite::Error::SqliteFailure(ffi::Error::new(code), None);
        all += &format!("{code} {}\n", told(Path::new("DATA/journal.sqlite"), error));
    }
    insta::assert_snapshot!(all);
}

/// Only where the user may not write anyway; root may.
#[test]
fn a_folder_without_write_permission() {
    use std::os::unix::fs::PermissionsExt as _;
    let folder = tempfile::tempdir().expect("a folder");
    let closed = std::fs::Permissions::from_mode(0o500);
    std::fs::set_permissions(folder.path(), closed).expect("closes");
    let opened = Journal::open(&folder.path().join("journal.sqlite"));
    let may_write = std::fs::write(folder.path().join("try"), "").is_ok();
    assert_eq!(opened.is_ok(), may_write, "{opened:?}");
}
