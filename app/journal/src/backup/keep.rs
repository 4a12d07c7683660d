//! Which copies are kept: so many, and each that knows more than the newest one.
use super::{BackupError, TRIES, WAIT, at, copies};
use crate::fault::told;
use crate::open;
use crate::rows::hash_of;
use crate::witness::claim_of;
use std::fs::{self, File, TryLockError};
use std::path::{Path, PathBuf};

/// How the folder of a copy that is not yet proven begins.
pub(super) const PART: &str = ".pinladder-part-";

/// One copy at a time is made in a place.
#[derive(Debug)]
pub(super) struct Alone {
    _lock: Option<File>,
}

impl Alone {
    /// Waits until nobody else makes a copy there, and clears the halves that a kill left. Where
    /// the file system knows no locks, nothing is cleared.
    pub(super) fn in_place(place: &Path) -> Result<Self, BackupError> {
        let path = place.to_owned();
        let lock = File::open(&path).map_err(at(&path))?;
        for _ in 0..TRIES {
            match lock.try_lock() {
                Ok(()) => {
                    clear(place, PART);
                    return Ok(Self { _lock: Some(lock) });
                }
                Err(TryLockError::WouldBlock) => std::thread::sleep(WAIT),
                Err(TryLockError::Error(_)) => return Ok(Self { _lock: None }),
            }
        }
        Err(BackupError::InUse { path })
    }
}

/// Clears the folders in `place` whose names begin with `front`; one that cannot be cleared takes
/// room and nothing else.
pub(super) fn clear(place: &Path, front: &str) {
    for entry in fs::read_dir(place).into_iter().flatten().flatten() {
        if entry.file_name().to_string_lossy().starts_with(front) {
            drop(fs::remove_dir_all(entry.path()));
        }
    }
}

/// Whether the journal at `path` holds all that the copy at `old` does; one that cannot be read
/// proves nothing.
fn holds(path: &Path, old: &Path) -> Result<bool, BackupError> {
    let Some(claim) = claim_of(old) else {
        return Ok(true);
    };
    let file = open::open_to_read(path)?;
    let found = hash_of(&file, claim.upto).map_err(|error| told(path, error))?;
    Ok(found == Some(claim.seal))
}

/// `path`, or the same name with the first number that is free, where a copy stands that the one
/// just made does not hold.
#[allow(
    clippy::needless_pass_by_value,
    reason = "a path made for this name alone"
)]
pub(super) fn free(path: PathBuf, made: &Path) -> PathBuf {
    let mut free = path.clone();
    let mut number = 1;
    while free.exists() && !holds(made, &free).unwrap_or(false) {
        number += 1;
        let stem = path.file_stem().unwrap_or_default().to_string_lossy();
        free = path.with_file_name(format!("{stem}-{number}.sqlite"));
    }
    free
}

/// Deletes the oldest copies beyond `keep`, never the one just made and none that it does not
/// hold; those are given too.
pub(super) fn prune(
    place: &Path,
    made: &Path,
    keep: usize,
) -> Result<(Vec<PathBuf>, Vec<PathBuf>), BackupError> {
    let found = copies(place)?;
    let mut held = Vec::new();
    let mut beyond = Vec::new();
    for path in found {
        match path == made || holds(made, &path)? {
            true => held.push(path),
            false => beyond.push(path),
        }
    }
    let too_many = held.len().saturating_sub(keep.max(1));
    let mut removed = Vec::new();
    for old in held.into_iter().filter(|path| path != made).take(too_many) {
        fs::remove_file(&old).map_err(at(&old))?;
        removed.push(old);
    }
    Ok((removed, beyond))
}
