//! The coach's code: set by the owner, kept as an argon2id hash (RFC 9106) in the data folder.
//!
//! Refuses: codes that are soon guessed, keeping the code itself, telling how near a guess was.
use crate::plain::{self, Plain};
use argon2::password_hash::{PasswordHash, SaltString};
use argon2::{Argon2, PasswordHasher as _, PasswordVerifier as _};
use std::fs;
use std::io::{self, Write as _};
use std::os::unix::fs::PermissionsExt as _;
use std::path::{Path, PathBuf};
use thiserror::Error;

/// The file with the hash, in the data folder; it never goes into the journal.
pub const CODE_FILE: &str = "coach-code";
/// Fewest characters of a code.
pub const SHORTEST: usize = 6;
/// Most characters of a code.
pub const LONGEST: usize = 64;
/// Most bytes that are read of the file.
const FILE_MAX: u64 = 1_024;

/// Why a code was not set or not read.
#[derive(Debug, Error)]
pub enum CodeError {
    /// Too short or too long.
    #[error("a code of {0} characters; choose from {SHORTEST} to {LONGEST}")]
    Length(usize),
    /// One of those that are guessed first.
    #[error("a code that is soon guessed: {0}; choose another, three plain words for example")]
    Plain(Plain),
    /// The system has no random numbers, or the hash cannot be reckoned.
    #[error("the code cannot be kept safely ({0}); try again")]
    Hash(String),
    /// The file.
    #[error("{} cannot be used ({source}); check the data folder's permissions", .path.display())]
    File {
        /// The file.
        path: PathBuf,
        /// In the system's words.
        source: io::Error,
    },
}

/// Sets the coach's code of a data folder. Whoever is signed in with the former one no longer is.
///
/// # Errors
/// [`CodeError`]; the former code then stands.
pub fn set_code(folder: &Path, code: &str) -> Result<(), CodeError> {
    let code = code.trim();
    let length = code.chars().count();
    if !(SHORTEST..=LONGEST).contains(&length) {
        return Err(CodeError::Length(length));
    }
    if let Some(plain) = plain::why_plain(code) {
        return Err(CodeError::Plain(plain));
    }
    keep_hash(folder, CODE_FILE, &hash(code)?)
}

/// Keeps a hash in a file of the data folder, whole or not at all, for this user alone.
///
/// # Errors
/// [`CodeError::File`]; what was kept then stands.
pub fn keep_hash(folder: &Path, file: &str, hash: &str) -> Result<(), CodeError> {
    let path = folder.join(file);
    let failed = |source| CodeError::File {
        path: path.clone(),
        source,
    };
    let mut file = tempfile::Builder::new()
        .permissions(fs::Permissions::from_mode(0o600))
        .tempfile_in(folder)
        .map_err(failed)?;
    file.write_all(hash.as_bytes()).map_err(failed)?;
    file.as_file().sync_all().map_err(failed)?;
    file.persist(&path)
        .map(drop)
        .map_err(|error| failed(error.error))
}

/// Takes the coach's code away: nobody can sign in until another is set.
///
/// # Errors
/// [`CodeError::File`].
pub fn remove_code(folder: &Path) -> Result<(), CodeError> {
    let path = folder.join(CODE_FILE);
    match fs::remove_file(&path) {
        Err(source) if source.kind() != io::ErrorKind::NotFound => {
            Err(CodeError::File { path, source })
        }
        _ => Ok(()),
    }
}

/// The hash that is kept; `None` when no code is set.
///
/// # Errors
/// [`CodeError::File`].
pub fn kept_code(folder: &Path) -> Result<Option<String>, CodeError> {
    kept_hash(folder, CODE_FILE)
}

/// The hash that is kept in a file of the data folder; `None` without one.
///
/// # Errors
/// [`CodeError::File`].
pub fn kept_hash(folder: &Path, file: &str) -> Result<Option<String>, CodeError> {
    use std::io::Read as _;
    let path = folder.join(file);
    let read = fs::File::open(&path).and_then(|file| {
        let mut text = String::new();
        file.take(FILE_MAX).read_to_string(&mut text)?;
        Ok(text)
    });
    match read {
        Ok(text) => Ok(Some(text.trim().to_owned()).filter(|text| !text.is_empty())),
        Err(source) if source.kind() == io::ErrorKind::NotFound => Ok(None),
        Err(source) => Err(CodeError::File { path, source }),
    }
}

/// Whether `code` is the one whose hash is `kept`. Takes tens of milliseconds on purpose.
#[must_use]
pub fn is_code(kept: &str, code: &str) -> bool {
    let Ok(hash) = PasswordHash::new(kept) else {
        return false;
    };
    Argon2::default()
        .verify_password(code.trim().as_bytes(), &hash)
        .is_ok()
}

/// The hash of a code: argon2id with the crate's own figures, which are OWASP's: 19 MiB, two
/// passes, one lane.
///
/// # Errors
/// [`CodeError::Hash`].
pub fn hash(code: &str) -> Result<String, CodeError> {
    let mut salt = [0_u8; 16];
    getrandom::fill(&mut salt).map_err(|error| CodeError::Hash(error.to_string()))?;
    let told = |error: argon2::password_hash::Error| CodeError::Hash(error.to_string());
    let salt = SaltString::encode_b64(&salt).map_err(told)?;
    let hash = Argon2::default()
        .hash_password(code.as_bytes(), &salt)
        .map_err(told)?;
    Ok(hash.to_string())
}
