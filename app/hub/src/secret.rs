//! Files that only this user may read: the password to the hub.
use crate::HubError;
use std::fs;
use std::io::Write as _;
use std::os::unix::fs::{MetadataExt as _, OpenOptionsExt as _};
use std::path::Path;

/// The password in a file; `None` where there is none.
///
/// # Errors
/// [`HubError::File`] when it cannot be read, is open to others, or empty.
pub(crate) fn password(path: &Path) -> Result<Option<String>, HubError> {
    let wrong = |detail: String| HubError::File {
        path: path.to_owned(),
        detail,
    };
    let found = match fs::metadata(path) {
        Ok(found) => found,
        Err(why) if why.kind() == std::io::ErrorKind::NotFound => return Ok(None),
        Err(why) => return Err(wrong(why.to_string())),
    };
    let mode = found.mode() & 0o777;
    if mode & 0o077 != 0 {
        return Err(wrong(format!(
            "others on this machine can read it, mode {mode:04o}; make it private with chmod 600"
        )));
    }
    let text = fs::read_to_string(path).map_err(|why| wrong(why.to_string()))?;
    let text = text.trim();
    if text.is_empty() || text.len() > 200 || text.chars().any(char::is_control) {
        let form = "it holds no password of 1 to 200 letters on one line; write it anew";
        return Err(wrong(form.to_owned()));
    }
    Ok(Some(text.to_owned()))
}

/// The password of a kiosk: the one in the file, else a new one that is written there.
///
/// # Errors
/// As [`password`], or when it cannot be written.
pub(crate) fn password_or_new(path: &Path) -> Result<String, HubError> {
    if let Some(kept) = password(path)? {
        return Ok(kept);
    }
    let wrong = |detail: String| HubError::File {
        path: path.to_owned(),
        detail,
    };
    let mut bytes = [0_u8; 20];
    getrandom::fill(&mut bytes).map_err(|why| wrong(why.to_string()))?;
    let new: String = bytes.iter().map(|byte| format!("{byte:02x}")).collect();
    let file = fs::File::options()
        .write(true)
        .create_new(true)
        .mode(0o600)
        .open(path);
    let written = file.and_then(|mut file| {
        writeln!(file, "{new}")?;
        file.sync_all()
    });
    written.map_err(|why| wrong(format!("{why}; choose another place with --secrets")))?;
    Ok(new)
}
