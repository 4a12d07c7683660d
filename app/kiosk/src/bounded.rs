//! Files that somebody hands in, read no further than anything of ours is long.
//!
//! Refuses: memory that grows with the file; a device, a pipe and a file of a gigabyte end alike.
use crate::error::KioskError;
use std::fs::File;
use std::io::Read as _;
use std::path::Path;

/// The most that any file of ours may have, which is a plan's limit.
pub(crate) const BYTES_MAX: u64 = 4 << 20;

/// Reads a file up to one byte more than the most, so that its reader tells that it is too long.
///
/// # Errors
/// [`KioskError::File`] when it cannot be read.
pub(crate) fn read(path: &Path) -> Result<Vec<u8>, KioskError> {
    let mut bytes = Vec::new();
    File::open(path)
        .and_then(|file| file.take(BYTES_MAX + 1).read_to_end(&mut bytes))
        .map_err(KioskError::file(path))?;
    Ok(bytes)
}
