//! Puts the journal that stands out of the way of what comes in its place, losing nothing of it.
use super::{BackupError, WAIT, at, sync};
use crate::ahead;
use crate::fault::{JournalError, told};
use rusqlite::{Connection, OpenFlags};
use std::fs;
use std::io;
use std::path::{Path, PathBuf};

/// Gives the journal a second name, `aside`, so that at no instant there is no journal; false when
/// there is none. What is damaged, or lies in a log that is, is kept as it lies on the disk.
pub(super) fn keep(journal: &Path, aside: &Path) -> Result<bool, BackupError> {
    let stood = journal.exists();
    if stood && !matches!(ahead::damage(journal), Ok(None)) {
        fs::hard_link(journal, aside).map_err(at(aside))?;
        with_log(journal, aside)?;
    } else if stood {
        let whole = close(journal)?;
        fs::hard_link(journal, aside).map_err(at(aside))?;
        if !whole {
            with_log(journal, aside)?;
        }
    } else {
        // A log without its journal would be taken for the new one's.
        with_log(journal, aside)?;
    }
    sync(journal.parent().unwrap_or(Path::new(".")))?;
    Ok(stood)
}

/// Moves what SQLite keeps beside `journal` to stand beside `aside`.
fn with_log(journal: &Path, aside: &Path) -> Result<(), BackupError> {
    for end in ["-wal", "-shm"] {
        let beside = |path: &Path| {
            let mut name = path.as_os_str().to_owned();
            name.push(end);
            PathBuf::from(name)
        };
        let (from, to) = (beside(journal), beside(aside));
        match fs::rename(&from, &to) {
            Err(error) if error.kind() != io::ErrorKind::NotFound => return Err(at(&from)(error)),
            _ => {}
        }
    }
    Ok(())
}

/// Makes the journal one file that nobody has open; false when it is damaged, and left as it is.
fn close(journal: &Path) -> Result<bool, BackupError> {
    let flags = OpenFlags::SQLITE_OPEN_READ_WRITE | OpenFlags::SQLITE_OPEN_NO_MUTEX;
    let alone = Connection::open_with_flags(journal, flags).and_then(|file| {
        file.busy_timeout(WAIT)?;
        file.pragma_update_and_check(None, "journal_mode", "DELETE", |row| {
            row.get::<_, String>(0)
        })
    });
    match alone.map_err(|error| told(journal, error)) {
        Ok(mode) if mode == "delete" => Ok(true),
        Ok(_) | Err(JournalError::Busy { .. }) => Err(BackupError::InUse {
            path: journal.to_owned(),
        }),
        Err(JournalError::NotADatabase { .. } | JournalError::Damaged { .. }) => Ok(false),
        Err(other) => Err(other.into()),
    }
}
