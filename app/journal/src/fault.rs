//! What can go wrong with the journal, and what to do about it.
//!
//! Refuses: hiding which file it was.
use crate::wire::WireFault;
use rusqlite::ErrorCode;
use std::path::{Path, PathBuf};
use thiserror::Error;

/// Why the journal cannot be opened, read or written.
#[derive(Debug, Error)]
pub enum JournalError {
    /// There is none.
    #[error("there is no journal at {}; choose the data folder that has one", .path.display())]
    Missing {
        /// The file.
        path: PathBuf,
    },
    /// The folder does not exist, or the path names a folder.
    #[error(
        "{} cannot be opened: its folder is missing or closed to this user; create or open it, or \
         choose another data folder", .path.display()
    )]
    NoFolder {
        /// The file.
        path: PathBuf,
    },
    /// The file or its folder cannot be written.
    #[error(
        "{} cannot be written; give this user write permission on the file and its folder, or \
         choose another data folder", .path.display()
    )]
    ReadOnly {
        /// The file.
        path: PathBuf,
    },
    /// No room left.
    #[error("{} cannot grow: the disk is full; free some space and try again", .path.display())]
    Full {
        /// The file.
        path: PathBuf,
    },
    /// Another program held the file for longer than the wait.
    #[error(
        "{} is kept busy by another program for over {waited_ms} ms; close that program and try \
         again", .path.display()
    )]
    Busy {
        /// The file.
        path: PathBuf,
        /// How long was waited, milliseconds.
        waited_ms: u32,
    },
    /// Not an SQLite file at all.
    #[error(
        "{} is not a database; move it away, and put back a copy of the journal", .path.display()
    )]
    NotADatabase {
        /// The file.
        path: PathBuf,
    },
    /// A database that another program made.
    #[error(
        "{} is a database of another program; move it away, or choose another data folder",
        .path.display()
    )]
    NotOurs {
        /// The file.
        path: PathBuf,
    },
    /// Nothing is in it.
    #[error(
        "{} is empty: no journal was begun in it, or all of it was lost; put back a copy if there \
         was one", .path.display()
    )]
    Empty {
        /// The file.
        path: PathBuf,
    },
    /// Written by a later version of this program.
    #[error(
        "{} was written by a newer version of this program (layout {found}, this one knows up to \
         {known}); install the newer version", .path.display()
    )]
    Newer {
        /// The file.
        path: PathBuf,
        /// Layout found.
        found: u32,
        /// Latest layout known.
        known: u32,
    },
    /// The file system does not give what a power cut asks for.
    #[error(
        "{} cannot be kept safe from a power cut: {pragma} is {found}, not {wanted}; put the data \
         folder on a local disk", .path.display()
    )]
    NotDurable {
        /// The file.
        path: PathBuf,
        /// Which setting.
        pragma: &'static str,
        /// What it is.
        found: String,
        /// What it must be.
        wanted: &'static str,
    },
    /// The file was moved or deleted while it was open.
    #[error(
        "{} was moved or deleted while in use; put it back and start the program again",
        .path.display()
    )]
    Gone {
        /// The file.
        path: PathBuf,
    },
    /// A row is wrong.
    #[error(
        "{} cannot be trusted from event {seq} on: {fault}; {}", .path.display(), .fault.advice()
    )]
    Broken {
        /// The file.
        path: PathBuf,
        /// Number of the first bad row.
        seq: u64,
        /// What is wrong with it.
        #[source]
        fault: RowFault,
    },
    /// More was asked for than there is.
    #[error(
        "{} ends at event {last}, before event {asked}; events were lost: put back a later copy",
        .path.display()
    )]
    Short {
        /// The file.
        path: PathBuf,
        /// The event that should be there.
        asked: u64,
        /// The last one that is.
        last: u64,
    },
    /// A witness knows of more events than there are.
    #[error(
        "{} ends at event {last}, but {witness} knows it as far as event {known}; nothing was \
         changed: run \"pinladder journal mend\", or put back a copy", .path.display()
    )]
    Lost {
        /// The file.
        path: PathBuf,
        /// The last event that is there.
        last: u64,
        /// The last one that was.
        known: u64,
        /// Which file says so.
        witness: String,
    },
    /// A witness knows another event under the same number.
    #[error(
        "{} is another journal than {witness} knows: event {seq} is not the one that was there; \
         nothing was changed: run \"pinladder journal mend\", or put back a copy", .path.display()
    )]
    Foreign {
        /// The file.
        path: PathBuf,
        /// The event.
        seq: u64,
        /// Which file says so.
        witness: String,
    },
    /// The write-ahead log is damaged in front of events that were safe.
    #[error(
        "{} is damaged at byte {at}, in front of events that were safe; nothing was changed: run \
         \"pinladder journal mend\", or put back a copy", .path.display()
    )]
    Log {
        /// The log.
        path: PathBuf,
        /// Where.
        at: u64,
    },
    /// The mark cannot be written; the events are safe without it.
    #[error("{} cannot be written ({source}); check the disk", .path.display())]
    Mark {
        /// The mark.
        path: PathBuf,
        /// In the system's words.
        source: std::io::Error,
    },
    /// A trigger that refuses changes is gone: somebody has worked on the file by hand.
    #[error(
        "{} has lost its guard {guard}, so somebody has worked on it by hand; put back a copy",
        .path.display()
    )]
    Unguarded {
        /// The file.
        path: PathBuf,
        /// Which trigger.
        guard: &'static str,
    },
    /// SQLite says that the file is damaged.
    #[error("{} is damaged ({detail}); put back a copy", .path.display())]
    Damaged {
        /// The file.
        path: PathBuf,
        /// In SQLite's words.
        detail: String,
    },
    /// Anything else that SQLite reports.
    #[error("{} cannot be used ({source}); check the disk and try again", .path.display())]
    Sqlite {
        /// The file.
        path: PathBuf,
        /// In SQLite's words.
        source: rusqlite::Error,
    },
}

impl JournalError {
    /// Whether it may pass by itself, as a full disk does, and the journal is sound all the same.
    #[must_use]
    pub fn is_for_now(&self) -> bool {
        match self {
            Self::ReadOnly { .. } | Self::Full { .. } | Self::NoFolder { .. } => true,
            Self::Sqlite { source, .. } => {
                source.sqlite_error_code() == Some(ErrorCode::SystemIoFailure)
            }
            Self::Missing { .. }
            | Self::Busy { .. }
            | Self::NotADatabase { .. }
            | Self::NotOurs { .. }
            | Self::Empty { .. }
            | Self::Newer { .. }
            | Self::NotDurable { .. }
            | Self::Gone { .. }
            | Self::Broken { .. }
            | Self::Short { .. }
            | Self::Lost { .. }
            | Self::Foreign { .. }
            | Self::Log { .. }
            | Self::Mark { .. }
            | Self::Unguarded { .. }
            | Self::Damaged { .. } => false,
        }
    }
}

/// What is wrong with one row.
#[derive(Debug, Clone, PartialEq, Eq, Error)]
pub enum RowFault {
    /// Rows between this one and the one before are not there.
    #[error("events {first} to {last} are missing before it")]
    Missing {
        /// First that is missing.
        first: u64,
        /// Last that is missing.
        last: u64,
    },
    /// Its hash does not follow from its content and the row before.
    #[error("its content or its place was altered: the hash does not match")]
    Altered,
    /// A column holds what it never can.
    #[error("its {column} cannot be read")]
    Unreadable {
        /// Which column.
        column: &'static str,
    },
    /// Sealed rightly, but its body is none that this program understands.
    #[error(transparent)]
    Wire(#[from] WireFault),
}

impl RowFault {
    /// What to do about it.
    const fn advice(&self) -> &'static str {
        match self {
            Self::Missing { .. } | Self::Altered | Self::Unreadable { .. } => {
                "move the file away, and put back a copy"
            }
            Self::Wire(WireFault::Version { .. }) => "install the newer version",
            Self::Wire(
                WireFault::Kind { .. } | WireFault::Body { .. } | WireFault::Value { .. },
            ) => "the program that wrote it is at fault: install the version that did",
        }
    }
}

/// Why events were not appended.
#[derive(Debug, Error)]
pub enum AppendError {
    /// Somebody else has appended since; nothing was written.
    #[error("the journal has moved on to event {last}; read what is new and decide again")]
    Moved {
        /// The last event now.
        last: u64,
    },
    /// The journal cannot be written.
    #[error(transparent)]
    Journal(#[from] JournalError),
}

/// How long a writer waits for another one, milliseconds.
pub(crate) const BUSY_MS: u32 = 5_000;

/// Tells SQLite's error as one of ours.
pub(crate) fn told(path: &Path, error: rusqlite::Error) -> JournalError {
    let path = path.to_owned();
    let detail = error.to_string();
    match error.sqlite_error_code() {
        Some(ErrorCode::CannotOpen) => JournalError::NoFolder { path },
        Some(ErrorCode::ReadOnly | ErrorCode::PermissionDenied) => JournalError::ReadOnly { path },
        Some(ErrorCode::DiskFull) => JournalError::Full { path },
        Some(ErrorCode::DatabaseBusy | ErrorCode::DatabaseLocked) => JournalError::Busy {
            path,
            waited_ms: BUSY_MS,
        },
        Some(ErrorCode::NotADatabase) => JournalError::NotADatabase { path },
        Some(ErrorCode::DatabaseCorrupt) => JournalError::Damaged { path, detail },
        _ => JournalError::Sqlite {
            path,
            source: error,
        },
    }
}
