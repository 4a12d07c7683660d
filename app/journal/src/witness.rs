//! Hears the witnesses of how far the journal had come, before anything is written to it.
//!
//! The mark, the record, the write-ahead log, and places outside the folder, which must speak where
//! nothing else can. A claim that a deliberate act overruled is no claim any more.
use crate::claims::{Told, compare, lost};
use crate::fault::{JournalError, told};
use crate::mark::{self, Claim, MARK_FILE, Said, rulings};
use crate::outside::Outside;
use crate::record::claim;
use crate::rows::tail_of;
use crate::{JOURNAL_FILE, RECORD_FILE, ahead, open};
use rusqlite::{Connection, OpenFlags};
use std::io;
use std::path::Path;
use std::thread;
use std::time::Duration;

/// How often a damaged log is looked at again, since somebody may be writing it just then.
const LOOKS: u32 = 2;
const BETWEEN: Duration = Duration::from_millis(15);

/// Asks whether the journal at `path` is all that it had been, without writing to it.
///
/// # Errors
/// [`JournalError::Lost`], [`JournalError::Foreign`], [`JournalError::Log`] when it is not;
/// whatever keeps it from being read.
pub(crate) fn check(path: &Path, outside: &Outside) -> Result<(), JournalError> {
    let claims = of_or(path, outside);
    if !look(path, &claims)? {
        return Ok(());
    }
    roll_back(path)?;
    let file = match (open::open_to_read(path), claims.last()) {
        // Killed in the middle of its very beginning.
        (Err(JournalError::Empty { .. }), None) => return Ok(()),
        (Err(JournalError::Empty { .. }), Some((claim, witness))) => {
            return Err(lost(path, 0, claim.upto, witness));
        }
        (file, _) => file?,
    };
    compare(&file, path, &claims)?;
    let claims = outside.of_this(&file, path);
    compare(&file, path, &claims.map_err(|error| told(path, error))?)
}

/// What the journal's own witnesses say, or, where none can speak, all that is known outside.
pub(crate) fn of_or(path: &Path, outside: &Outside) -> Vec<Told> {
    let own = of(path);
    match own.is_empty() && named_as_journal(path) {
        true => outside.standing(path),
        false => own,
    }
}

/// A kill while the file was being turned to write ahead leaves its first page half turned, and the
/// old one beside it; no event is ever written so. Whoever only reads cannot put that right.
fn roll_back(path: &Path) -> Result<(), JournalError> {
    let mut beside = path.as_os_str().to_owned();
    beside.push("-journal");
    if !Path::new(&beside).metadata().is_ok_and(|old| old.len() > 0) {
        return Ok(());
    }
    let flags = OpenFlags::SQLITE_OPEN_READ_WRITE | OpenFlags::SQLITE_OPEN_NO_MUTEX;
    let read = "SELECT count(*) FROM sqlite_schema";
    Connection::open_with_flags(path, flags)
        .and_then(|file| file.query_row(read, [], |_| Ok(())))
        .map_err(|error| told(path, error))
}

/// Whether there is a journal that can be read; none, or an empty one, is refused where there had
/// been more, and so is one whose log was damaged.
pub(crate) fn look(path: &Path, claims: &[Told]) -> Result<bool, JournalError> {
    if is_begun(path)? {
        check_log(path)?;
        return Ok(true);
    }
    let left = || ahead::place(path).metadata().is_ok_and(|log| log.len() > 0);
    let unread = || mark::said(path) == Said::Unreadable;
    match claims.last() {
        Some((claim, witness)) => Err(lost(path, 0, claim.upto, witness)),
        None if unread() => Err(lost(path, 0, 1, MARK_FILE)),
        None if left() => Err(lost(path, 0, 1, "journal.sqlite-wal")),
        None => Ok(false),
    }
}

/// Whether there is a file with something in it.
fn is_begun(path: &Path) -> Result<bool, JournalError> {
    match path.metadata() {
        Ok(found) if found.is_file() => Ok(found.len() > 0),
        Err(error) if error.kind() == io::ErrorKind::NotFound => Ok(false),
        Ok(_) | Err(_) => Err(JournalError::NoFolder {
            path: path.to_owned(),
        }),
    }
}

/// Whether the write-ahead log was damaged in front of something that was safe.
fn check_log(path: &Path) -> Result<(), JournalError> {
    for _ in 1..LOOKS {
        if matches!(ahead::damage(path), Ok(None)) {
            return Ok(());
        }
        thread::sleep(BETWEEN);
    }
    match ahead::damage(path) {
        Ok(None) => Ok(()),
        Ok(Some(at)) => Err(JournalError::Log {
            path: ahead::place(path),
            at,
        }),
        Err(_) => Err(JournalError::NoFolder {
            path: ahead::place(path),
        }),
    }
}

/// What the witnesses of the journal at `path` say, those overruled left out. Sorted, the furthest
/// claim is the last. A copy under another name stands for itself.
pub(crate) fn of(path: &Path) -> Vec<Told> {
    if !named_as_journal(path) {
        return Vec::new();
    }
    let marked = mark::said(path);
    let mut found = Vec::new();
    if let Said::Claim(claim) = marked {
        found.push((claim, MARK_FILE.to_owned()));
    }
    // A record of an earlier release has no sum of its own: it speaks where there is no mark.
    if let Some((claim, summed)) = claim::claim(&path.with_file_name(RECORD_FILE))
        && (summed || !matches!(marked, Said::Claim(_)))
    {
        found.push((claim, RECORD_FILE.to_owned()));
    }
    let ruled = rulings::read(path);
    found.retain(|(claim, _)| claim.upto > 0 && !ruled.contains(claim));
    found.sort();
    found
}

fn named_as_journal(path: &Path) -> bool {
    path.file_name().is_some_and(|name| name == JOURNAL_FILE)
}

/// The last event of the copy at `path`.
pub(crate) fn claim_of(path: &Path) -> Option<Claim> {
    let file = open::open_to_read(path).ok()?;
    let (upto, seal) = tail_of(&file).ok()?;
    Some(Claim { upto, seal })
}
