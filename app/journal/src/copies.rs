//! Where copies of the journal lie and what they are called, and why one cannot be used.
use crate::fault::JournalError;
use std::fs;
use std::io;
use std::path::{Path, PathBuf};
use thiserror::Error;

/// How the names of copies begin and end; between them stands when they were made.
pub(crate) const FRONT: &str = "pinladder-";
pub(crate) const BACK: &str = ".sqlite";

/// Why there is no copy, or nothing was put back.
#[derive(Debug, Error)]
pub enum BackupError {
    /// The journal, or the copy, as the message says.
    #[error(transparent)]
    Journal(#[from] JournalError),
    /// The file system.
    #[error("{} cannot be used ({source}); check that the place is there, open to this user and not full", .path.display())]
    Place {
        /// The file or folder.
        path: PathBuf,
        /// In the system's words.
        source: io::Error,
    },
    /// The copy is to stand in the data folder itself.
    #[error("{} is the data folder itself; choose a place on another disk", .path.display())]
    SamePlace {
        /// The folder.
        path: PathBuf,
    },
    /// What is left of a journal tells two courses of events.
    #[error("{} cannot be mended: {one} and {other} tell different events; choose one of them and put it back", .path.display())]
    Torn {
        /// The journal.
        path: PathBuf,
        /// One file.
        one: String,
        /// Another one.
        other: String,
    },
    /// A kiosk has the journal open.
    #[error("{} is in use; close the kiosk first, or restore on its desk", .path.display())]
    InUse {
        /// The journal.
        path: PathBuf,
    },
}

/// The copies in `place`, oldest first: stamps sort as their times do.
///
/// # Errors
/// [`BackupError::Place`] when it cannot be read.
pub fn copies(place: &Path) -> Result<Vec<PathBuf>, BackupError> {
    let mut found = Vec::new();
    for entry in fs::read_dir(place).map_err(at(place))? {
        let entry = entry.map_err(at(place))?;
        let name = entry.file_name();
        let name = name.to_string_lossy();
        let stamp = name
            .strip_prefix(FRONT)
            .and_then(|rest| rest.strip_suffix(BACK));
        let is_stamp = |text: &str| {
            text.starts_with(|c: char| c.is_ascii_digit())
                && text
                    .bytes()
                    .all(|b| b.is_ascii_digit() || b == b'-' || b == b'T')
        };
        if stamp.is_some_and(is_stamp) && entry.file_type().map_err(at(place))?.is_file() {
            found.push(entry.path());
        }
    }
    found.sort();
    Ok(found)
}

/// Says that a path could not be used.
pub(crate) fn at(path: &Path) -> impl FnOnce(io::Error) -> BackupError {
    let path = path.to_owned();
    move |source| BackupError::Place { path, source }
}
