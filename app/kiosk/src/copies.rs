//! Copies of the journal in a second place: made, and laid out on the coach's desk.
use journal::{BackupError, Copied};
use share::Desk;
use std::io;
use std::path::{Path, PathBuf};

/// Copies that are shown.
const COPIES_SHOWN: usize = 10;

/// Copies the journal of `folder` into `place`, which must be there.
///
/// # Errors
/// [`BackupError`]; older copies are then all still there.
pub fn copy_to(
    folder: &Path,
    place: &Path,
    stamp: &str,
    keep: usize,
) -> Result<Copied, BackupError> {
    if !place.is_dir() {
        return Err(BackupError::Place {
            path: place.to_owned(),
            source: io::ErrorKind::NotFound.into(),
        });
    }
    journal::backup(folder, place, stamp, keep)
}

/// Shows the copies in the second place, where there is one.
pub(crate) fn lay_out_copies(desk: &Desk, place: Option<&Path>) {
    let found = place.map(|place| journal::copies(place).unwrap_or_default());
    let found = found.unwrap_or_default();
    let name = |path: &PathBuf| Some(path.file_name()?.to_string_lossy().into_owned());
    let names: Vec<String> = found.iter().rev().filter_map(name).collect();
    desk.lay_out(|counter| {
        counter.has_place = place.is_some();
        counter.copies_count = names.len();
        counter.copies = names.into_iter().take(COPIES_SHOWN).collect();
    });
}
