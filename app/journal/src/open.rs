//! Opens the file: settings read back, layout brought up to date.
//!
//! Refuses: a file that is not ours, is newer than the program, or cannot outlast a power cut.
use crate::fault::{BUSY_MS, JournalError, told};
use rusqlite::{Connection, OpenFlags, TransactionBehavior};
use rusqlite_migration::{Error as MigrationError, M, Migrations};
use std::path::Path;
use std::thread;
use std::time::Duration;

/// "PinJ": marks the file as a journal of this program.
const APPLICATION: i64 = 0x5069_6e4a;

/// The layout's history. Never change an entry; add one.
const STEPS: &[M<'static>] = &[M::up(include_str!("layout/1-events.sql"))];

/// The triggers that refuse changes.
pub(crate) const GUARDS: [&str; 3] = ["events_never_change", "events_never_go", "events_in_order"];

/// How often and how long a busy file is waited for beside SQLite's own wait: changing to WAL
/// does not use that one.
const TRIES: u32 = BUSY_MS / TRY_MS;
const TRY_MS: u32 = 20;

/// Opens for reading and writing, and creates what is missing.
pub(crate) fn open(path: &Path) -> Result<Connection, JournalError> {
    let mut tried = 0;
    loop {
        match open_once(path) {
            Err(JournalError::Busy { .. }) if tried < TRIES => {
                tried += 1;
                thread::sleep(Duration::from_millis(u64::from(TRY_MS)));
            }
            result => return result,
        }
    }
}

fn open_once(path: &Path) -> Result<Connection, JournalError> {
    let told = |error| told(path, error);
    let flags = OpenFlags::SQLITE_OPEN_READ_WRITE
        | OpenFlags::SQLITE_OPEN_CREATE
        | OpenFlags::SQLITE_OPEN_NO_MUTEX;
    let mut file = Connection::open_with_flags(path, flags).map_err(told)?;
    file.busy_timeout(Duration::from_millis(u64::from(BUSY_MS)))
        .map_err(told)?;
    let new = is_new(path, &file)?;
    harden(path, &file)?;
    file.set_transaction_behavior(TransactionBehavior::Immediate);
    migrate(path, &mut file)?;
    if new {
        keep_name(path);
    }
    Ok(file)
}

/// Opens for reading alone. The file must exist and be a journal.
pub(crate) fn open_to_read(path: &Path) -> Result<Connection, JournalError> {
    let told = |error| told(path, error);
    if !path.exists() {
        return Err(JournalError::Missing {
            path: path.to_owned(),
        });
    }
    let flags = OpenFlags::SQLITE_OPEN_READ_ONLY | OpenFlags::SQLITE_OPEN_NO_MUTEX;
    let file = Connection::open_with_flags(path, flags).map_err(told)?;
    file.busy_timeout(Duration::from_millis(u64::from(BUSY_MS)))
        .map_err(told)?;
    if is_new(path, &file)? {
        return Err(JournalError::Empty {
            path: path.to_owned(),
        });
    }
    let found = number(&file, "user_version").map_err(told)?;
    check_layout(path, found)?;
    Ok(file)
}

/// Whether the file is still empty.
///
/// # Errors
/// [`JournalError::NotOurs`] when another program has written in it.
fn is_new(path: &Path, file: &Connection) -> Result<bool, JournalError> {
    let told = |error| told(path, error);
    let tables: i64 = file
        .query_row("SELECT count(*) FROM sqlite_schema", [], |row| row.get(0))
        .map_err(told)?;
    let application = number(file, "application_id").map_err(told)?;
    match (application, tables) {
        (APPLICATION, _) => Ok(false),
        (0, 0) => Ok(true),
        _ => Err(JournalError::NotOurs {
            path: path.to_owned(),
        }),
    }
}

/// Sets what a power cut asks for, and reads it back.
pub(crate) fn harden(path: &Path, file: &Connection) -> Result<(), JournalError> {
    let told = |error| told(path, error);
    let refused = |pragma, found, wanted| JournalError::NotDurable {
        path: path.to_owned(),
        pragma,
        found,
        wanted,
    };
    let mode: String = file
        .pragma_update_and_check(None, "journal_mode", "WAL", |row| row.get(0))
        .map_err(told)?;
    if mode != "wal" {
        return Err(refused("journal_mode", mode, "wal"));
    }
    file.pragma_update(None, "synchronous", "FULL")
        .map_err(told)?;
    let synchronous = number(file, "synchronous").map_err(told)?;
    if synchronous != 2 {
        return Err(refused("synchronous", synchronous.to_string(), "2 (full)"));
    }
    // The journal does that itself, when nobody waits or the log grows long.
    file.pragma_update(None, "wal_autocheckpoint", 0)
        .map_err(told)?;
    file.pragma_update(None, "trusted_schema", false)
        .map_err(told)?;
    file.pragma_update(None, "cell_size_check", true)
        .map_err(told)
}

fn migrate(path: &Path, file: &mut Connection) -> Result<(), JournalError> {
    check_layout(
        path,
        number(file, "user_version").map_err(|error| told(path, error))?,
    )?;
    let steps = Migrations::from_slice(STEPS);
    let outcome = match steps.to_latest(file) {
        // Another process did the same step between our look and our transaction.
        Err(_) if number(file, "user_version").is_ok_and(|found| found == latest()) => Ok(()),
        outcome => outcome,
    };
    outcome.map_err(|error| {
        if let MigrationError::RusqliteError { err, .. } = error {
            told(path, err)
        } else {
            JournalError::Damaged {
                path: path.to_owned(),
                detail: error.to_string(),
            }
        }
    })
}

fn latest() -> i64 {
    i64::try_from(STEPS.len()).expect("a handful of layouts")
}

fn check_layout(path: &Path, found: i64) -> Result<(), JournalError> {
    let known = latest();
    if found <= known {
        return Ok(());
    }
    Err(JournalError::Newer {
        path: path.to_owned(),
        found: u32::try_from(found).unwrap_or(u32::MAX),
        known: u32::try_from(known).unwrap_or(u32::MAX),
    })
}

fn number(file: &Connection, pragma: &str) -> rusqlite::Result<i64> {
    file.pragma_query_value(None, pragma, |row| row.get(0))
}

/// Makes the new file's name itself outlast a power cut. A file system that cannot sync a folder
/// says so here; SQLite has synced what it holds to be needed, so that is no reason to stop.
pub(crate) fn keep_name(path: &Path) {
    let folder = path
        .parent()
        .filter(|folder| !folder.as_os_str().is_empty())
        .unwrap_or(Path::new("."));
    if let Ok(folder) = std::fs::File::open(folder) {
        drop(folder.sync_all());
    }
}
