//! `pinladder plan blank`. Refuses: writing over a file.
use super::say;
use crate::clock::{Clock as _, SystemClock};
use crate::error::KioskError;
use crate::folder::Folder;
use std::fs::File;
use std::io::Write;
use std::path::Path;

/// Writes a blank plan with examples from the data folder's gym, else from the demo gym.
pub(super) fn blank(folder: &Folder, path: &Path, out: &mut dyn Write) -> Result<bool, KioskError> {
    let gym = super::check::gym_of(folder)?.unwrap_or_default();
    let today = SystemClock.local().date();
    let ending = path
        .extension()
        .map(|end| end.to_string_lossy().to_lowercase());
    let bytes = match ending.as_deref() {
        Some("xlsx") => plan::blank_xlsx(&gym, today).map_err(KioskError::Usage)?,
        Some("csv") => plan::blank_csv(&gym, today).into_bytes(),
        _ => {
            let shown = path.display();
            let words = format!("{shown} ends in neither .csv nor .xlsx; choose one of the two");
            return Err(KioskError::Usage(words));
        }
    };
    let mut file = File::create_new(path).map_err(KioskError::file(path))?;
    file.write_all(&bytes).map_err(KioskError::file(path))?;
    say(out, &format!("wrote a blank plan to {}\n", path.display()));
    Ok(true)
}
