//! The whole database: a copy of the journal, from which all else can be made anew.
//!
//! Refuses: handing out the file itself, which changes while it is read.
use crate::stream::{Sink, Stop};
use std::fs::File;
use std::io::{self, Read as _, Write as _};
use std::path::Path;

/// Copies the journal to a file that nobody else sees, and writes that.
pub(crate) fn write(journal: &Path, sink: &mut Sink) -> Result<(), Stop> {
    let place = tempfile::tempdir().map_err(Stop::Copy)?;
    let copy = place.path().join("journal.sqlite");
    journal::copy_to_read(journal, &copy).map_err(|error| Stop::Copy(io::Error::other(error)))?;
    let mut file = File::open(&copy).map_err(Stop::Copy)?;
    let mut piece = vec![0; 32 * 1_024];
    loop {
        let read = file.read(&mut piece).map_err(Stop::Copy)?;
        let Some(bytes) = piece.get(..read).filter(|bytes| !bytes.is_empty()) else {
            return Ok(());
        };
        sink.write_all(bytes)?;
    }
}
