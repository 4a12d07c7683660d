//! The record: a second file with what stands of the journal, flat, for reading by others.
//!
//! It may be deleted at any time and is made again. Refuses: being a source of anything.
pub(crate) mod claim;
mod clock;
mod elsewhere;
mod filling;
mod layout;
mod load_of;
mod project;
mod proof;
mod read;
mod sums;

pub use proof::{prove_record, remake_record};
pub use read::{RecordReader, SetRow, SetsOf};
pub use sums::{LifterSum, PlannedRow, WeekRow};

use crate::chain::{BEFORE_FIRST, Hash};
use crate::fault::{BUSY_MS, JournalError};
use crate::log::Journal;
use crate::mark::Claim;
use crate::record::layout::{APPLICATION, LAYOUT};
use rusqlite::{Connection, ErrorCode, OpenFlags, TransactionBehavior};
use std::fs;
use std::io;
use std::path::{Path, PathBuf};
use std::time::Duration;
use thiserror::Error;

/// Statements kept ready: more than an event of any kind needs.
const STATEMENTS: usize = 64;

/// Why the record cannot be used. The journal is not touched by any of it.
#[derive(Debug, Error)]
pub enum RecordError {
    /// The journal that it is made from.
    #[error(transparent)]
    Journal(#[from] JournalError),
    /// Another program's database bears its name.
    #[error("{} is a database of another program; move it away", .path.display())]
    NotOurs {
        /// The file.
        path: PathBuf,
    },
    /// Another version of this program made it.
    #[error(
        "{} was made by another version of this program; start the kiosk, and it is made again",
        .path.display()
    )]
    OtherLayout {
        /// The file.
        path: PathBuf,
    },
    /// The file itself.
    #[error("{} cannot be used ({source}); {}", .path.display(), advice(.source))]
    File {
        /// The file.
        path: PathBuf,
        /// In SQLite's words.
        source: rusqlite::Error,
    },
    /// A damaged file cannot be taken away, or a file of the gym cannot be written.
    #[error("{} cannot be written ({source}); check the folder's permissions", .path.display())]
    Folder {
        /// The file.
        path: PathBuf,
        /// In the system's words.
        source: io::Error,
    },
}

impl RecordError {
    /// What to do about the file itself; `None` where the message says it.
    #[must_use]
    pub fn advice(&self) -> Option<&'static str> {
        match self {
            Self::File { source, .. } => Some(advice(source)),
            Self::Journal(_)
            | Self::NotOurs { .. }
            | Self::OtherLayout { .. }
            | Self::Folder { .. } => None,
        }
    }
}

fn advice(source: &rusqlite::Error) -> &'static str {
    match source.sqlite_error_code() {
        Some(ErrorCode::DiskFull) => "free some space and try again",
        Some(ErrorCode::CannotOpen | ErrorCode::ReadOnly | ErrorCode::PermissionDenied) => {
            "give this user write permission on the file and its folder"
        }
        Some(ErrorCode::DatabaseBusy | ErrorCode::DatabaseLocked) => {
            "close the program that keeps it busy and try again"
        }
        _ => "delete it, and it is made again from the journal",
    }
}

/// What following the journal came to.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Followed {
    /// The event up to which the record now goes.
    pub upto: u64,
    /// How many events were applied.
    pub applied: u64,
    /// Whether it was made from nothing: at the first time, or because it did not belong to this
    /// journal.
    pub rebuilt: bool,
}

/// The open record.
#[derive(Debug)]
pub struct Record {
    file: Connection,
    path: PathBuf,
}

impl Record {
    /// Opens the record at `path`. A missing one is begun; a damaged one, or one of another
    /// layout, is deleted and begun anew. [`Record::follow`] fills it.
    ///
    /// # Errors
    /// [`RecordError`] when the file cannot be written, or is another program's.
    pub fn open(path: &Path) -> Result<Self, RecordError> {
        let file = match open(path) {
            Ok(Some(file)) => file,
            Ok(None) => begin_anew(path)?,
            Err(error) if is_damage(&error) => begin_anew(path)?,
            Err(error) => return Err(error),
        };
        Ok(Self {
            file,
            path: path.to_owned(),
        })
    }

    /// Applies what the journal has beyond the mark, in one transaction. A record that turns out
    /// to be damaged, ahead of the journal or of another journal is made again.
    ///
    /// # Errors
    /// [`RecordError`] when the journal cannot be read or the record not be written; the record
    /// then stands as before.
    pub fn follow(&mut self, journal: &Journal) -> Result<Followed, RecordError> {
        match self.advance_if_behind(journal) {
            Err(error) if is_damage(&error) => {
                self.file = begin_anew(&self.path)?;
                self.advance(journal, true)
            }
            result => result,
        }
    }

    /// Empties the record and applies the whole journal, in one transaction: readers see the old
    /// one or the new one.
    ///
    /// # Errors
    /// As [`Record::follow`].
    pub fn rebuild(&mut self, journal: &Journal) -> Result<Followed, RecordError> {
        match self.advance(journal, true) {
            Err(error) if is_damage(&error) => {
                self.file = begin_anew(&self.path)?;
                self.advance(journal, true)
            }
            result => result,
        }
    }

    /// Asks first, so that a record that is up to date is not written to.
    fn advance_if_behind(&mut self, journal: &Journal) -> Result<Followed, RecordError> {
        let (upto, hash) = mark(&self.file).map_err(|source| RecordError::File {
            path: self.path.clone(),
            source,
        })?;
        if upto > 0 && journal.last()? == upto && journal.hash_at(upto)? == Some(hash) {
            return Ok(Followed {
                upto,
                applied: 0,
                rebuilt: false,
            });
        }
        self.advance(journal, false)
    }

    fn advance(&mut self, journal: &Journal, anew: bool) -> Result<Followed, RecordError> {
        let path = self.path.clone();
        let failed = |source| RecordError::File {
            path: path.clone(),
            source,
        };
        let tables = self.file.transaction().map_err(failed)?;
        let (upto, hash) = mark(&tables).map_err(failed)?;
        let anew = anew || upto == 0 || journal.hash_at(upto)? != Some(hash);
        let mut followed = Followed {
            upto: if anew { 0 } else { upto },
            applied: 0,
            rebuilt: anew,
        };
        if anew {
            project::clear(&tables)
                .and_then(|()| filling::begin_filling(&tables))
                .map_err(failed)?;
        }
        journal.each_after(followed.upto, |seq, event| {
            project::apply(&tables, seq, &event).map_err(failed)?;
            followed.upto = seq;
            followed.applied += 1;
            Ok::<_, RecordError>(())
        })?;
        if anew {
            filling::end_filling(&tables).map_err(failed)?;
        }
        let hash = journal.hash_at(followed.upto)?.unwrap_or(BEFORE_FIRST);
        let now = Claim {
            upto: followed.upto,
            seal: hash,
        };
        claim::write(&tables, now).map_err(failed)?;
        tables.commit().map_err(failed)?;
        Ok(followed)
    }
}

fn mark(tables: &Connection) -> rusqlite::Result<(u64, Hash)> {
    tables
        .prepare_cached("SELECT upto, hash FROM mark")?
        .query_row([], |row| Ok((row.get(0)?, row.get(1)?)))
}

/// Whether a look at the file says that it is broken, rather than out of reach.
fn is_damage(error: &RecordError) -> bool {
    let RecordError::File { source, .. } = error else {
        return false;
    };
    match source.sqlite_error_code() {
        Some(code) => matches!(
            code,
            // Unknown: "no such table", after somebody worked on it by hand.
            ErrorCode::NotADatabase
                | ErrorCode::DatabaseCorrupt
                | ErrorCode::ConstraintViolation
                | ErrorCode::Unknown
        ),
        // A column of the wrong type, a mark without a row.
        None => true,
    }
}

/// Opens the file, and begins it if it is empty; `None` when its layout is another one.
fn open(path: &Path) -> Result<Option<Connection>, RecordError> {
    let failed = |source| RecordError::File {
        path: path.to_owned(),
        source,
    };
    let flags = OpenFlags::SQLITE_OPEN_READ_WRITE
        | OpenFlags::SQLITE_OPEN_CREATE
        | OpenFlags::SQLITE_OPEN_NO_MUTEX;
    let mut file = Connection::open_with_flags(path, flags).map_err(failed)?;
    file.set_transaction_behavior(TransactionBehavior::Immediate);
    file.set_prepared_statement_cache_capacity(STATEMENTS);
    file.busy_timeout(Duration::from_millis(u64::from(BUSY_MS)))
        .map_err(failed)?;
    let number = |file: &Connection, pragma| -> rusqlite::Result<i64> {
        file.pragma_query_value(None, pragma, |row| row.get(0))
    };
    // WAL, so that a long download does not keep the kiosk from writing. What a power cut takes
    // is in the journal.
    let begin = |file: &mut Connection| -> rusqlite::Result<Option<bool>> {
        let tables = file.transaction()?;
        let count: i64 =
            tables.query_row("SELECT count(*) FROM sqlite_schema", [], |row| row.get(0))?;
        match (number(&tables, "application_id")?, count) {
            (APPLICATION, _) => return Ok(Some(number(&tables, "user_version")? == LAYOUT)),
            (0, 0) => {}
            _ => return Ok(None),
        }
        tables.execute_batch(include_str!("record/layout.sql"))?;
        let nothing = Claim {
            upto: 0,
            seal: BEFORE_FIRST,
        };
        claim::write(&tables, nothing)?;
        tables.pragma_update(None, "user_version", LAYOUT)?;
        tables.commit()?;
        Ok(Some(true))
    };
    match begin(&mut file).map_err(failed)? {
        None => {
            return Err(RecordError::NotOurs {
                path: path.to_owned(),
            });
        }
        Some(false) => return Ok(None),
        Some(true) => {}
    }
    file.pragma_update_and_check(None, "journal_mode", "WAL", |_| Ok(()))
        .and_then(|()| file.pragma_update(None, "synchronous", "NORMAL"))
        .map_err(failed)?;
    Ok(Some(file))
}

/// Deletes the file with what SQLite keeps beside it, and begins it.
fn begin_anew(path: &Path) -> Result<Connection, RecordError> {
    take_away(path)?;
    let begun = open(path)?;
    Ok(begun.expect("a file begun by this program has its layout"))
}

/// Deletes the file with what SQLite keeps beside it.
fn take_away(path: &Path) -> Result<(), RecordError> {
    for suffix in ["", "-wal", "-shm"] {
        let mut name = path.as_os_str().to_owned();
        name.push(suffix);
        match fs::remove_file(&name) {
            Err(source) if source.kind() != io::ErrorKind::NotFound => {
                return Err(RecordError::Folder {
                    path: name.into(),
                    source,
                });
            }
            _ => {}
        }
    }
    Ok(())
}
