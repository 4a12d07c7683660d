//! `pinladder journal verify` and `rebuild`. Refuses: rewriting an event.
use super::say;
use crate::error::KioskError;
use crate::folder::Folder;
use std::io::Write;

pub(super) fn verify(folder: &Folder, out: &mut dyn Write) -> Result<bool, KioskError> {
    let report = journal::verify(&folder.journal())?;
    say(out, &format!("{report}\n"));
    Ok(true)
}

pub(super) fn rebuild(folder: &Folder, out: &mut dyn Write) -> Result<bool, KioskError> {
    let report = journal::rebuild(folder.path())?;
    say(out, &format!("{report}\n"));
    Ok(true)
}
