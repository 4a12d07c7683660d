//! Makes again whatever was lost of a data folder, from its journal.
//!
//! Refuses: overwriting a file of the gym that differs, and writing outside the folder.
use crate::fault::JournalError;
use crate::log::Journal;
use crate::record::{Followed, Record, RecordError};
use crate::{JOURNAL_FILE, RECORD_FILE};
use domain::Fact;
use std::collections::BTreeMap;
use std::fs;
use std::io::{self, Write as _};
use std::os::unix::fs::PermissionsExt as _;
use std::path::{Component, Path};

/// What became of one file of the gym.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum FileOutcome {
    /// It was missing, and was written as last taken.
    Written,
    /// It is there, and is what was last taken.
    Same,
    /// It is there, and differs from what was last taken; it was left alone.
    Differs,
    /// Its name is none that a file of the gym can have; nothing was written.
    BadName,
}

/// What was made again.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Rebuilt {
    /// The record.
    pub record: Followed,
    /// The gym's files, by name.
    pub files: BTreeMap<String, FileOutcome>,
}

/// Makes the record of the data folder again, and the gym's files that are missing from it.
///
/// # Errors
/// [`RecordError`] when the journal is missing or broken, or something cannot be written.
pub fn rebuild(folder: &Path) -> Result<Rebuilt, RecordError> {
    let path = folder.join(JOURNAL_FILE);
    if !path.exists() {
        return Err(JournalError::Missing { path }.into());
    }
    let journal = Journal::open(&path)?;
    let mut taken = BTreeMap::new();
    journal.each_after(0, |_, event| {
        if let Fact::FileTaken { name, text } = event.fact {
            taken.insert(name, text);
        }
        Ok::<_, JournalError>(())
    })?;
    let mut record = Record::open(&folder.join(RECORD_FILE))?;
    let record = record.rebuild(&journal)?;
    let mut files = BTreeMap::new();
    for (name, text) in taken {
        let outcome = give_back(folder, &name, &text)?;
        files.insert(name, outcome);
    }
    Ok(Rebuilt { record, files })
}

fn give_back(folder: &Path, name: &str, text: &str) -> Result<FileOutcome, RecordError> {
    if !is_file_of_gym(name) {
        return Ok(FileOutcome::BadName);
    }
    let path = folder.join(name);
    let failed = |source| RecordError::Folder {
        path: path.clone(),
        source,
    };
    match fs::read(&path) {
        Ok(found) if found == text.as_bytes() => return Ok(FileOutcome::Same),
        Ok(_) => return Ok(FileOutcome::Differs),
        Err(error) if error.kind() == io::ErrorKind::NotFound => {}
        Err(error) => return Err(failed(error)),
    }
    // Whole or not at all, and never over a file that has come up meanwhile.
    let mut file = tempfile::Builder::new()
        .permissions(fs::Permissions::from_mode(0o644))
        .tempfile_in(folder)
        .map_err(failed)?;
    file.write_all(text.as_bytes()).map_err(failed)?;
    file.as_file().sync_all().map_err(failed)?;
    match file.persist_noclobber(&path) {
        Ok(_) => Ok(FileOutcome::Written),
        Err(error) if error.error.kind() == io::ErrorKind::AlreadyExists => {
            Ok(FileOutcome::Differs)
        }
        Err(error) => Err(failed(error.error)),
    }
}

/// A plain name that ends in .toml: nothing that leads out of the folder, and never a database.
fn is_file_of_gym(name: &str) -> bool {
    let path = Path::new(name);
    let mut parts = path.components();
    let plain = matches!(parts.next(), Some(Component::Normal(part)) if part == name);
    plain
        && parts.next().is_none()
        && !name.starts_with('.')
        && path
            .extension()
            .is_some_and(|extension| extension == "toml")
        && !name.chars().any(char::is_control)
}
