//! What places outside the data folder know of how far the journal had come: copies, and a small
//! mark kept beside them, so that a whole folder put back as it was earlier is told.
//!
//! Marks and copies of another journal, which does not begin with the same event, accuse nobody.
use crate::chain::Hash;
use crate::claims::{Told, compare};
use crate::copies::copies;
use crate::fault::{JournalError, told};
use crate::mark::{self, Claim, Said, hex, rulings};
use crate::open::{self, keep_name};
use crate::rows::{hash_of, tail_of};
use rusqlite::Connection;
use std::fs::{self, File};
use std::io::{self, Write as _};
use std::path::{Path, PathBuf};

/// How the names of marks begin and end; between them stands which journal it is.
const FRONT: &str = "pinladder-";
const BACK: &str = ".mark";

/// How many of the newest copies of a place are asked, where the journal's own witnesses speak too:
/// a start must not take longer for keeping many.
const COPIES_MAX: usize = 3;

/// What the places know, as it was when they were asked.
#[derive(Debug, Clone, Default)]
pub struct Outside {
    claims: Vec<Known>,
}

/// A claim, who makes it, and of which journal: the beginning of its first event's hash.
#[derive(Debug, Clone)]
struct Known {
    told: Told,
    journal: String,
}

impl Outside {
    /// Asks each of `places`; one that is not there, or cannot be read, knows nothing. All copies
    /// are asked where `all` is said, else the newest.
    #[must_use]
    pub fn of(places: &[PathBuf], all: bool) -> Self {
        let mut claims = Vec::new();
        for place in places {
            claims.extend(marks(place));
            let found = copies(place).unwrap_or_default();
            let left_out = match all {
                true => 0,
                false => found.len().saturating_sub(COPIES_MAX),
            };
            claims.extend(found.iter().skip(left_out).filter_map(|copy| of_copy(copy)));
        }
        claims.sort_by(|a, b| a.told.cmp(&b.told));
        Self { claims }
    }

    /// All claims but those that were overruled in the folder of the journal at `path`.
    pub(crate) fn standing(&self, path: &Path) -> Vec<Told> {
        let ruled = rulings::read(path);
        let told = self.claims.iter().map(|known| known.told.clone());
        told.filter(|(claim, _)| claim.upto > 0 && !ruled.contains(claim))
            .collect()
    }

    /// As [`Outside::standing`], of the journal that is open as `file` alone.
    pub(crate) fn of_this(&self, file: &Connection, path: &Path) -> rusqlite::Result<Vec<Told>> {
        let Some(first) = hash_of(file, 1)? else {
            return Ok(Vec::new());
        };
        let (own, mut found) = (short(&first), self.clone());
        found.claims.retain(|known| known.journal == own);
        Ok(found.standing(path))
    }

    /// Asks whether the journal at `path` is all that the places know of it, without writing to it.
    ///
    /// # Errors
    /// [`JournalError::Lost`], [`JournalError::Foreign`] when it is not; whatever keeps it from
    /// being read.
    pub fn check(&self, path: &Path) -> Result<(), JournalError> {
        let file = open::open_to_read(path)?;
        let claims = self
            .of_this(&file, path)
            .map_err(|error| told(path, error))?;
        compare(&file, path, &claims)
    }
}

/// Notes in `place`, where it is there, how far the journal at `path` has come, by the journal's
/// own mark, and has the disk keep it; tells whether there was anything new.
///
/// # Errors
/// As [`Outside::check`], where the place knows more or another course: its mark then stays.
/// [`JournalError::Mark`] when the place cannot be written.
pub fn keep_mark(path: &Path, place: &Path) -> Result<bool, JournalError> {
    let Said::Claim(claim) = mark::said(path) else {
        return Ok(false);
    };
    if !place.is_dir() {
        return Ok(false);
    }
    let file = open::open_to_read(path)?;
    let first = hash_of(&file, 1).map_err(|error| told(path, error))?;
    let Some(first) = first.filter(|_| claim.upto > 0) else {
        return Ok(false);
    };
    let there = place.join(format!("{FRONT}{}{BACK}", short(&first)));
    if read(&there) == Some(claim) {
        return Ok(false);
    }
    Outside::of(&[place.to_owned()], false).check(path)?;
    match write(&there, claim) {
        Ok(()) => Ok(true),
        Err(source) => Err(JournalError::Mark {
            path: there,
            source,
        }),
    }
}

/// Whole or not at all.
fn write(there: &Path, claim: Claim) -> io::Result<()> {
    let new = there.with_extension("mark.new");
    let mut file = File::create(&new)?;
    file.write_all(claim.line().as_bytes())?;
    file.sync_all()?;
    fs::rename(&new, there)?;
    keep_name(there);
    Ok(())
}

fn read(path: &Path) -> Option<Claim> {
    Claim::read(&fs::read_to_string(path).ok()?)
}

fn short(first: &Hash) -> String {
    hex(&first[..8])
}

/// The marks in `place`.
fn marks(place: &Path) -> Vec<Known> {
    let entries = fs::read_dir(place).into_iter().flatten().flatten();
    let known = |entry: fs::DirEntry| {
        let name = entry.file_name().to_str()?.to_owned();
        let journal = name.strip_prefix(FRONT)?.strip_suffix(BACK)?.to_owned();
        let claim = read(&entry.path())?;
        Some(Known {
            told: (claim, entry.path().display().to_string()),
            journal,
        })
    };
    entries.filter_map(known).collect()
}

/// What a copy claims by its last event; one that cannot be read claims nothing.
fn of_copy(copy: &Path) -> Option<Known> {
    let file = open::open_to_read(copy).ok()?;
    let (upto, seal) = tail_of(&file).ok()?;
    let journal = short(&hash_of(&file, 1).ok()??);
    let name = copy.file_name()?.to_string_lossy().into_owned();
    Some(Known {
        told: (Claim { upto, seal }, name),
        journal,
    })
}
