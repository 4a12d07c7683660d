//! Claims of how far a journal had come, held against the journal itself.
use crate::fault::{JournalError, told};
use crate::mark::Claim;
use crate::rows::hash_of;
use rusqlite::Connection;
use std::path::Path;

/// A claim, and who makes it: a file's name.
pub(crate) type Told = (Claim, String);

/// Whether the open journal holds all that is claimed.
pub(crate) fn compare(file: &Connection, path: &Path, claims: &[Told]) -> Result<(), JournalError> {
    let told = |error| told(path, error);
    for (claim, witness) in claims {
        match hash_of(file, claim.upto).map_err(told)? {
            Some(seal) if seal == claim.seal => {}
            Some(_) => {
                return Err(JournalError::Foreign {
                    path: path.to_owned(),
                    seq: claim.upto,
                    witness: witness.clone(),
                });
            }
            None => {
                let end = "SELECT coalesce(max(seq), 0) FROM events";
                let last = file.query_row(end, [], |row| row.get(0)).map_err(told)?;
                // Sorted: whoever knows it furthest tells.
                let (claim, witness) = claims.last().unwrap_or(&(*claim, witness.clone())).clone();
                return Err(lost(path, last, claim.upto, &witness));
            }
        }
    }
    Ok(())
}

pub(crate) fn lost(path: &Path, last: u64, known: u64, witness: &str) -> JournalError {
    JournalError::Lost {
        path: path.to_owned(),
        last,
        known,
        witness: witness.to_owned(),
    }
}
