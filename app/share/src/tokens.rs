//! Tokens of the gym's own programs: by name, what they may, until when. Kept is their hash, in a
//! file for this user alone.
//!
//! Refuses: keeping a token; tokens without end; a file that others can write.
use crate::code::keep_hash;
use crate::desk::Desk;
use crate::token;
use chrono::{Days, NaiveDate};
use serde::{Deserialize, Serialize};
use std::fs;
use std::io::{self, Read as _};
use std::os::unix::fs::PermissionsExt as _;

/// The file in the data folder; it never goes into the journal.
pub(crate) const TOKENS_FILE: &str = "page-tokens.json";
/// Most tokens at once.
pub(crate) const MOST: usize = 20;
/// Most letters of a name.
pub(crate) const NAME_MAX: usize = 40;
/// How long one may hold, days.
const DAYS_MAX: u64 = 366;
/// Most bytes that are read of the file.
const FILE_MAX: u64 = 64 * 1_024;
const VERSION: u32 = 1;

/// What a token may.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "lowercase")]
pub(crate) enum May {
    /// Read what a coach reads.
    Read,
    /// That, and hand in plans.
    Plans,
}

/// One token, without itself.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub(crate) struct Kept {
    pub(crate) name: String,
    pub(crate) may: May,
    /// The last day on which it opens anything, ISO 8601.
    until: String,
    hash: String,
}

impl Kept {
    /// Whether it opens nothing any more. A day that is none is long over.
    pub(crate) fn is_over(&self, today: NaiveDate) -> bool {
        let until = self.until.parse::<NaiveDate>();
        until.is_ok_and(|until| until < today) || until.is_err()
    }

    /// Its last day, ISO 8601.
    pub(crate) fn until(&self) -> &str {
        &self.until
    }
}

#[derive(Debug, Default, Serialize, Deserialize)]
struct File {
    version: u32,
    tokens: Vec<Kept>,
}

/// Why a token was not made or taken back.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum NotKept {
    Name,
    Day,
    Full,
    Unknown,
    File,
}

impl Desk {
    /// The tokens that are kept, by name.
    pub(crate) fn tokens(&self) -> Result<Vec<Kept>, NotKept> {
        let read = read(&self.folder().join(TOKENS_FILE));
        read.map_err(|error| {
            tracing::error!(%error, file = TOKENS_FILE, "the tokens' file is not used");
            NotKept::File
        })
    }

    /// What a token may on the kiosk's day; `None` where it opens nothing.
    pub(crate) fn token_may(&self, token: &str) -> Option<May> {
        if !token::is_token(token) {
            return None;
        }
        let today = self.laid().today?.date;
        let hash = token::hex(&token::hash(token));
        let kept = self.tokens().ok()?;
        let found = kept.into_iter().find(|kept| kept.hash == hash)?;
        (!found.is_over(today)).then_some(found.may)
    }

    /// Makes a token: itself, this once.
    pub(crate) fn make_token(
        &self,
        name: &str,
        may: May,
        until: NaiveDate,
    ) -> Result<String, NotKept> {
        let today = self.laid().today.ok_or(NotKept::Day)?.date;
        let name = name.trim();
        let letters = name.chars().count();
        if !(1..=NAME_MAX).contains(&letters) || name.chars().any(char::is_control) {
            return Err(NotKept::Name);
        }
        let last = today.checked_add_days(Days::new(DAYS_MAX)).unwrap_or(today);
        if !(today..=last).contains(&until) {
            return Err(NotKept::Day);
        }
        let token = token::fresh().ok_or(NotKept::File)?;
        let kept = Kept {
            name: name.to_owned(),
            may,
            until: until.to_string(),
            hash: token::hex(&token::hash(&token)),
        };
        self.change_tokens(|all| {
            if all.iter().any(|one| one.name == kept.name) {
                return Err(NotKept::Name);
            }
            if all.len() >= MOST {
                return Err(NotKept::Full);
            }
            all.push(kept);
            all.sort_by(|a, b| a.name.cmp(&b.name));
            Ok(())
        })?;
        Ok(token)
    }

    /// Takes a token back: from now on it opens nothing.
    pub(crate) fn take_token_back(&self, name: &str) -> Result<(), NotKept> {
        self.change_tokens(|all| {
            let before = all.len();
            all.retain(|one| one.name != name);
            (all.len() < before).then_some(()).ok_or(NotKept::Unknown)
        })
    }

    fn change_tokens(
        &self,
        change: impl FnOnce(&mut Vec<Kept>) -> Result<(), NotKept>,
    ) -> Result<(), NotKept> {
        let _one_at_a_time = self.token_turn();
        let mut tokens = self.tokens()?;
        change(&mut tokens)?;
        let file = File {
            version: VERSION,
            tokens,
        };
        let text = serde_json::to_string(&file).map_err(|_| NotKept::File)?;
        keep_hash(self.folder(), TOKENS_FILE, &text).map_err(|error| {
            tracing::error!(%error, "the tokens were not kept");
            NotKept::File
        })
    }
}

/// Reads the file; without one there is no token.
fn read(path: &std::path::Path) -> io::Result<Vec<Kept>> {
    let file = match fs::File::open(path) {
        Ok(file) => file,
        Err(error) if error.kind() == io::ErrorKind::NotFound => return Ok(Vec::new()),
        Err(error) => return Err(error),
    };
    if file.metadata()?.permissions().mode() & 0o077 != 0 {
        let told = "others can read or write it; take their rights away (chmod 600)";
        return Err(io::Error::new(io::ErrorKind::PermissionDenied, told));
    }
    let mut text = String::new();
    file.take(FILE_MAX).read_to_string(&mut text)?;
    let file: File = serde_json::from_str(&text)?;
    if file.version != VERSION {
        return Err(io::Error::other("it is of another version"));
    }
    Ok(file.tokens)
}
