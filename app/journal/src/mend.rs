//! Mends a journal from all that is left of it: the file, its log, what was put aside, the copies.
//!
//! Every event is proven by the chain before it counts, so whatever lies on the disk may be tried.
//! Refuses: putting anything in place, and choosing between two courses of events.
mod bits;
mod source;

use crate::backup::{BackupError, Begun, Prepared, copies};
use crate::chain::{self, BEFORE_FIRST, Hash, Row};
use crate::fault::{JournalError, told};
use crate::mark::Claim;
use crate::outside::Outside;
use crate::{JOURNAL_FILE, open, witness};
use rusqlite::params;
use source::Source;
use std::path::{Path, PathBuf};
use std::slice;

/// How many of the newest copies of a place are looked into.
const COPIES_MAX: usize = 3;

/// What can be made of what is left.
#[derive(Debug)]
pub struct Mended {
    /// Made, proven, and ready to stand in the journal's place.
    pub prepared: Prepared,
    /// Whose events it begins with, a file's name, and up to which event.
    pub base: (String, u64),
    /// Its last event.
    pub last: u64,
    /// The last event that mark, record or a copy know of, if that is further.
    pub known: u64,
    /// Events in which one flipped bit was put right, as their seals prove.
    pub bits: Vec<u64>,
}

impl Mended {
    /// How many events that are known to have been cannot be had any more.
    #[must_use]
    pub fn lost(&self) -> u64 {
        self.known.saturating_sub(self.last)
    }
}

/// Makes of the journal of `folder`, of journals put aside there and of the copies in `places` the
/// longest course of events that is proven, beside the journal, which is not touched.
///
/// # Errors
/// [`BackupError`]: [`BackupError::Torn`] when what is left does not agree and no witness says
/// which is right; whatever keeps it from being read or written.
pub fn mend(folder: &Path, places: &[PathBuf]) -> Result<Mended, BackupError> {
    let journal = folder.join(JOURNAL_FILE);
    let (claims, known) = claims(&journal, places);
    let mut sources = sources(folder, places)?;

    sources.retain(|source| claims.iter().all(|claim| source.may_be(claim)));
    // The furthest first; among as far ones the journal itself, which is the first.
    sources.sort_by_key(|source| std::cmp::Reverse(source.proven.upto));
    agree(&journal, &sources)?;
    let part = Begun::new(folder)?;
    let place = part.file().to_owned();
    let mut rows = Rows::new(&place)?;
    let mut base = (JOURNAL_FILE.to_owned(), 0);
    if let Some(first) = sources.first() {
        base = (first.name.clone(), first.proven.upto);
        first.each_proven(|row| rows.push(row))?;
    }
    let mut bits = Vec::new();
    while let Some(row) = next(&sources, rows.last, &mut bits) {
        rows.push(&row)?;
    }
    let last = rows.finish()?;
    Ok(Mended {
        prepared: part.proven_with(|_, _| {})?,
        base,
        last: last.upto,
        known: known.max(last.upto),
        bits,
    })
}

/// What mark and record claim, or without them the furthest of each place; and how far anybody
/// knows it.
fn claims(journal: &Path, places: &[PathBuf]) -> (Vec<Claim>, u64) {
    let only = |told: Vec<(Claim, String)>| -> Vec<Claim> {
        told.into_iter().map(|(claim, _)| claim).collect()
    };
    let mut own = only(witness::of(journal));
    let of = |place: &PathBuf| only(Outside::of(slice::from_ref(place), true).standing(journal));
    let places: Vec<Vec<Claim>> = places.iter().map(of).collect();
    let all = own.iter().chain(places.iter().flatten());
    let known = all.map(|claim| claim.upto).max().unwrap_or(0);
    if own.is_empty() {
        own.extend(places.iter().filter_map(|claims| claims.last()));
    }
    (own, known)
}

/// All that may hold events, the journal first.
fn sources(folder: &Path, places: &[PathBuf]) -> Result<Vec<Source>, BackupError> {
    let mut files = vec![folder.join(JOURNAL_FILE)];
    let aside = |path: &PathBuf| {
        let name = path.file_name().unwrap_or_default().to_string_lossy();
        name.starts_with("journal-before-") && name.ends_with(".sqlite")
    };
    let mut others = Vec::new();
    for entry in std::fs::read_dir(folder).into_iter().flatten().flatten() {
        others.push(entry.path());
    }
    others.retain(aside);
    others.sort();
    files.extend(others.into_iter().rev());
    for place in places {
        let found = copies(place).unwrap_or_default().into_iter();
        files.extend(found.rev().take(COPIES_MAX));
    }
    let mut found = Vec::new();
    for file in files {
        found.extend(Source::all_of(&file, folder)?);
    }
    Ok(found)
}

/// Whether the sources tell one course of events, as far as each is proven.
fn agree(journal: &Path, sources: &[Source]) -> Result<(), BackupError> {
    let Some(first) = sources.first() else {
        return Ok(());
    };
    for other in sources {
        if other.proven.upto > 0 && first.hash_at(other.proven.upto) != Some(other.proven.seal) {
            return Err(BackupError::Torn {
                path: journal.to_owned(),
                one: first.name.clone(),
                other: other.name.clone(),
            });
        }
    }
    Ok(())
}

/// The row that follows `last`, from whichever source has it, as it lies there or with one bit put
/// right.
fn next(sources: &[Source], last: Claim, bits: &mut Vec<u64>) -> Option<Row> {
    let found: Vec<Row> = sources
        .iter()
        .filter_map(|s| s.row(last.upto + 1))
        .collect();
    let fits = |row: &&Row| chain::check(last.upto, &last.seal, row).is_ok();
    if let Some(row) = found.iter().find(fits) {
        return Some(row.clone());
    }
    let put_right = |row: &Row| bits::put_right(last, row);
    let row = found.iter().find_map(put_right)?;
    bits.push(row.seq);
    Some(row)
}

/// A new journal that is filled row by row.
struct Rows<'a> {
    path: &'a Path,
    file: rusqlite::Connection,
    last: Claim,
}

impl<'a> Rows<'a> {
    fn new(path: &'a Path) -> Result<Self, BackupError> {
        let file = open::open(path)?;
        let begun = file.execute_batch("BEGIN IMMEDIATE");
        begun.map_err(|error| told(path, error))?;
        let seal: Hash = BEFORE_FIRST;
        Ok(Self {
            path,
            file,
            last: Claim { upto: 0, seal },
        })
    }

    fn push(&mut self, row: &Row) -> Result<(), BackupError> {
        let broken = |fault| JournalError::Broken {
            path: self.path.to_owned(),
            seq: row.seq,
            fault,
        };
        chain::check(self.last.upto, &self.last.seal, row).map_err(broken)?;
        self.file
            .prepare_cached(
                "INSERT INTO events (seq, at_ms, version, kind, body, hash) \
                 VALUES (?1, ?2, ?3, ?4, ?5, ?6)",
            )
            .and_then(|mut insert| {
                insert.execute(params![
                    row.seq,
                    row.at_ms,
                    row.version,
                    row.kind,
                    row.body,
                    row.hash
                ])
            })
            .map_err(|error| told(self.path, error))?;
        self.last = Claim {
            upto: row.seq,
            seal: row.hash,
        };
        Ok(())
    }

    fn finish(self) -> Result<Claim, BackupError> {
        let failed = |error| BackupError::from(told(self.path, error));
        self.file.execute_batch("COMMIT").map_err(failed)?;
        self.file
            .pragma_update_and_check(None, "journal_mode", "DELETE", |_| Ok(()))
            .map_err(failed)?;
        self.file.close().map_err(|(_, error)| failed(error))?;
        Ok(self.last)
    }
}
