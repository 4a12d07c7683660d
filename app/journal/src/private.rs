//! Folders that this user alone may look into: a journal tells of people's bodies.
use std::fs::DirBuilder;
use std::io;
use std::os::unix::fs::DirBuilderExt as _;
use std::path::Path;

/// Makes a folder, and those above it that are missing, for this user alone; one that is there
/// stays as its owner made it.
///
/// # Errors
/// The system's own.
pub fn make_private(folder: &Path) -> io::Result<()> {
    DirBuilder::new().recursive(true).mode(0o700).create(folder)
}
