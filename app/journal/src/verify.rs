//! Walks the whole journal and proves it: chain, numbers, every event, the file itself.
//!
//! Refuses: repairing anything. The first bad row is told, and a copy must be put back.
use crate::chain::BEFORE_FIRST;
use crate::fault::{JournalError, told};
use crate::outside::Outside;
use crate::rows::{tail_of, walk};
use crate::{ahead, claims, open, witness};
use domain::{Event, Moment};
use rusqlite::Connection;
use std::collections::{BTreeMap, BTreeSet};
use std::fs;
use std::path::{Path, PathBuf};

/// What a sound journal holds.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct Report {
    /// How many events.
    pub events: u64,
    /// When the first was recorded.
    pub first_at: Option<Moment>,
    /// When the last was recorded.
    pub last_at: Option<Moment>,
    /// How many of each kind, by the kind's word in the file.
    pub kinds: BTreeMap<String, u64>,
    /// The last event's SHA-256 in hexadecimal. Kept elsewhere, it tells later whether the
    /// journal still holds what it held now.
    pub seal: String,
}

/// Proves the journal at `path` without writing to it.
///
/// # Errors
/// [`JournalError`] with the first thing that is wrong: [`JournalError::Broken`] names the row.
pub fn verify(path: &Path) -> Result<Report, JournalError> {
    verify_with(path, |_, _| {})
}

/// As [`verify`], and hands each event with its number to `visit` on the way.
///
/// # Errors
/// As [`verify`].
pub fn verify_with(path: &Path, visit: impl FnMut(u64, &Event)) -> Result<Report, JournalError> {
    verify_beside(path, &Outside::default(), visit)
}

/// As [`verify_with`], and holds it to what places outside the folder know.
///
/// # Errors
/// As [`verify`].
pub fn verify_beside(
    path: &Path,
    outside: &Outside,
    mut visit: impl FnMut(u64, &Event),
) -> Result<Report, JournalError> {
    let claims = witness::of_or(path, outside);
    witness::look(path, &claims)?;
    let file = open::open_to_read(path)?;
    // One view of the file for all that follows, whoever appends meanwhile.
    let file = file
        .unchecked_transaction()
        .map_err(|error| told(path, error))?;
    let mut report = Report::default();
    let mut last = BEFORE_FIRST;
    walk(&file, path, (0, BEFORE_FIRST), |row, event| {
        report.events += 1;
        report.first_at.get_or_insert(event.at);
        report.last_at = Some(event.at);
        *report.kinds.entry(row.kind.clone()).or_default() += 1;
        last = row.hash;
        visit(row.seq, &event);
        Ok::<_, JournalError>(())
    })?;
    tail_of(&file).map_err(|fault| fault.within(path))?;
    claims::compare(&file, path, &claims)?;
    let claims = outside.of_this(&file, path);
    claims::compare(&file, path, &claims.map_err(|error| told(path, error))?)?;
    check_guards(&file, path)?;
    check_pages(&file, path)?;
    report.seal = last.iter().map(|byte| format!("{byte:02x}")).collect();
    Ok(report)
}

/// Hands on every event of a journal that cannot be opened where it lies, on a disk that is full or
/// takes nothing: from an image in memory, or where the system keeps passing files.
///
/// # Errors
/// As [`verify`](crate::verify()), but that nothing is said of pages that hold no event.
pub fn read_aside(
    path: &Path,
    outside: &Outside,
    mut visit: impl FnMut(u64, &Event),
) -> Result<(), JournalError> {
    let claims = witness::of_or(path, outside);
    if !witness::look(path, &claims)? {
        return Err(JournalError::Missing {
            path: path.to_owned(),
        });
    }
    let (_room, image) = image_of(path)?;
    let file = open::open_to_read(&image)?;
    walk(&file, path, (0, BEFORE_FIRST), |row, event| {
        visit(row.seq, &event);
        Ok::<_, JournalError>(())
    })?;
    tail_of(&file).map_err(|fault| fault.within(path))?;
    claims::compare(&file, path, &claims)?;
    let claims = outside.of_this(&file, path);
    claims::compare(&file, path, &claims.map_err(|error| told(path, error))?)
}

/// An image of a journal with its log, in memory or where the system keeps passing files, and the
/// room that it lies in.
pub(crate) fn image_of(path: &Path) -> Result<(tempfile::TempDir, PathBuf), JournalError> {
    let unreadable = |_| JournalError::NoFolder {
        path: path.to_owned(),
    };
    let room = tempfile::tempdir_in("/dev/shm").or_else(|_| tempfile::tempdir());
    let room = room.map_err(unreadable)?;
    let image = room.path().join("image");
    fs::copy(path, &image).map_err(unreadable)?;
    if ahead::place(path).exists() {
        fs::copy(ahead::place(path), ahead::place(&image)).map_err(unreadable)?;
    }
    Ok((room, image))
}

/// Whether the file still refuses changes by hand.
fn check_guards(file: &Connection, path: &Path) -> Result<(), JournalError> {
    let told = |error| told(path, error);
    let mut query = file
        .prepare("SELECT name FROM sqlite_schema WHERE type = 'trigger' AND tbl_name = 'events'")
        .map_err(told)?;
    let found: BTreeSet<String> = query
        .query_map([], |row| row.get(0))
        .and_then(Iterator::collect)
        .map_err(told)?;
    let lost = open::GUARDS.iter().find(|name| !found.contains(**name));
    lost.map_or(Ok(()), |guard| {
        Err(JournalError::Unguarded {
            path: path.to_owned(),
            guard,
        })
    })
}

/// SQLite's own look at its pages.
fn check_pages(file: &Connection, path: &Path) -> Result<(), JournalError> {
    let detail: String = file
        .pragma_query_value(None, "integrity_check", |row| row.get(0))
        .map_err(|error| told(path, error))?;
    if detail == "ok" {
        return Ok(());
    }
    Err(JournalError::Damaged {
        path: path.to_owned(),
        detail,
    })
}
