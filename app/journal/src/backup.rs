//! Copies of the journal in a second place, and the way back.
//!
//! Refuses: a copy that was not proven from its first event to its last, half a file under the
//! copy's name, and putting anything in the place of a journal that somebody has open.
mod aside;
mod keep;

pub use crate::copies::{BackupError, copies};

use crate::copies::{BACK, FRONT, at};
use crate::fault::told;
use crate::mark::rulings;
use crate::outside::Outside;
use crate::rows::hash_of;
use crate::verify::{Report, verify_with};
use crate::{JOURNAL_FILE, make_private, open, witness};
use domain::Event;
use rusqlite::backup::{Backup, StepResult};
use rusqlite::{Connection, OpenFlags};
use std::collections::BTreeSet;
use std::fs::{self, File};
use std::io;
use std::path::{Path, PathBuf};
use std::time::Duration;
use tempfile::TempDir;

/// Waits for a busy file, each so long.
const TRIES: u32 = 100;
const WAIT: Duration = Duration::from_millis(50);

/// A copy that was made and proven.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Copied {
    /// Where it stands.
    pub path: PathBuf,
    /// What was proven of it.
    pub report: Report,
    /// Older copies that were deleted to keep the number.
    pub removed: Vec<PathBuf>,
    /// Copies that know more than this one, or another course of events; they are kept.
    pub beyond: Vec<PathBuf>,
}

/// What was put back.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Restored {
    /// What was proven of it.
    pub report: Report,
    /// Where the journal that stood before is kept; `None` when there was none.
    pub aside: Option<PathBuf>,
}

/// Copies the journal at `from` to a new file at `to`, one moment of it, without keeping anybody
/// from appending. The copy is one file, synced.
///
/// # Errors
/// [`BackupError`] when either cannot be used; a part of a copy may then be left at `to`.
pub fn copy(from: &Path, to: &Path) -> Result<(), BackupError> {
    copy_pages(from, to, true)?;
    sync(to)
}

/// As [`copy`], for a file that is read once and thrown away: nobody waits for the disk, so that
/// an append, which does, has the disk to itself.
///
/// # Errors
/// As [`copy`].
pub fn copy_to_read(from: &Path, to: &Path) -> Result<(), BackupError> {
    copy_pages(from, to, false)
}

fn copy_pages(from: &Path, to: &Path, kept: bool) -> Result<(), BackupError> {
    let source = open::open_to_read(from)?;
    let failed = |error| BackupError::from(told(to, error));
    let flags = OpenFlags::SQLITE_OPEN_READ_WRITE
        | OpenFlags::SQLITE_OPEN_CREATE
        | OpenFlags::SQLITE_OPEN_NO_MUTEX;
    let mut target = Connection::open_with_flags(to, flags).map_err(failed)?;
    if !kept {
        target
            .pragma_update(None, "synchronous", "OFF")
            .map_err(failed)?;
    }
    {
        let backup = Backup::new(&source, &mut target).map_err(failed)?;
        let mut tried = 0;
        // All pages in one step: one view of the source, which no append breaks.
        while !matches!(backup.step(-1).map_err(failed)?, StepResult::Done) {
            tried += 1;
            if tried > TRIES {
                return Err(BackupError::InUse {
                    path: from.to_owned(),
                });
            }
            std::thread::sleep(WAIT);
        }
    }
    // One file, without what SQLite keeps beside it.
    target
        .pragma_update_and_check(None, "journal_mode", "DELETE", |_| Ok(()))
        .map_err(failed)?;
    target.close().map_err(|(_, error)| failed(error))
}

/// Copies the journal of `folder` into `place` as `pinladder-STAMP.sqlite`, proves the copy, and
/// deletes the oldest of such copies beyond `keep`, but none that knows more than this one or
/// another course of events. A copy of that name is replaced where this one holds all of it, else
/// the name gets a number. Halves that an earlier try left are cleared.
///
/// # Errors
/// [`BackupError`]; older copies are then all still there.
pub fn backup(
    folder: &Path,
    place: &Path,
    stamp: &str,
    keep: usize,
) -> Result<Copied, BackupError> {
    make_private(place).map_err(at(place))?;
    if same(folder, place) {
        return Err(BackupError::SamePlace {
            path: place.to_owned(),
        });
    }
    let _alone = keep::Alone::in_place(place)?;
    let part = tempfile::Builder::new()
        .prefix(keep::PART)
        .tempdir_in(place)
        .map_err(at(place))?;
    let begun = part.path().join(JOURNAL_FILE);
    copy(&folder.join(JOURNAL_FILE), &begun)?;
    let report = verify_with(&begun, |_, _| {})?;
    let path = place.join(format!("{FRONT}{stamp}{BACK}"));
    let path = keep::free(path, &begun);
    fs::rename(&begun, &path).map_err(at(&path))?;
    sync(place)?;
    let (removed, beyond) = keep::prune(place, &path, keep)?;
    Ok(Copied {
        path,
        report,
        removed,
        beyond,
    })
}

/// A copy that was proven and lies in the data folder, ready to stand in the journal's place. It
/// goes away with this value.
#[derive(Debug)]
pub struct Prepared {
    folder: PathBuf,
    part: TempDir,
    report: Report,
}

/// Copies `file` into the data folder beside the journal and proves the copy; every event is
/// handed to `visit` on the way. Takes as long as the journal is, and disturbs nobody who has the
/// journal open.
///
/// # Errors
/// [`BackupError`] when the copy is not sound.
pub fn prepare(
    file: &Path,
    folder: &Path,
    visit: impl FnMut(u64, &Event),
) -> Result<Prepared, BackupError> {
    let begun = Begun::new(folder)?;
    copy(file, begun.file())?;
    begun.proven_with(visit)
}

/// Halves of copies in the data folder begin so.
pub(crate) const RESTORE: &str = ".restore-";

/// Clears the halves that a kill left in the data folder. Only whoever has the folder alone may.
pub fn clear_halves(folder: &Path) {
    keep::clear(folder, RESTORE);
}

/// A journal that is made beside the one that stands.
#[derive(Debug)]
pub(crate) struct Begun {
    folder: PathBuf,
    part: TempDir,
    file: PathBuf,
}

impl Begun {
    pub(crate) fn new(folder: &Path) -> Result<Self, BackupError> {
        let part = tempfile::Builder::new()
            .prefix(RESTORE)
            .tempdir_in(folder)
            .map_err(at(folder))?;
        Ok(Self {
            folder: folder.to_owned(),
            file: part.path().join(JOURNAL_FILE),
            part,
        })
    }

    /// Where it is to be written.
    pub(crate) fn file(&self) -> &Path {
        &self.file
    }

    /// Proves it from its first event to its last.
    pub(crate) fn proven_with(
        self,
        visit: impl FnMut(u64, &Event),
    ) -> Result<Prepared, BackupError> {
        let report = verify_with(&self.file, visit)?;
        sync(&self.file)?;
        Ok(Prepared {
            folder: self.folder,
            part: self.part,
            report,
        })
    }
}

impl Prepared {
    /// What was proven of it.
    #[must_use]
    pub const fn report(&self) -> &Report {
        &self.report
    }

    /// Puts it in the journal's place, which is a matter of two names. What stood before is kept
    /// beside it, under a name with `stamp`. What mark and record, and marks and copies in `places`,
    /// know of another course of events is overruled from then on.
    ///
    /// # Errors
    /// [`BackupError`] when the journal is in use or the folder cannot be written; nothing has
    /// changed then.
    pub fn put_in_place(self, stamp: &str, places: &[PathBuf]) -> Result<Restored, BackupError> {
        let folder = &self.folder;
        let journal = folder.join(JOURNAL_FILE);
        let begun = self.part.path().join(JOURNAL_FILE);
        let aside = folder.join(format!("journal-before-{stamp}{BACK}"));
        let stood = aside::keep(&journal, &aside)?;
        // First, so that a power cut between the two leaves a journal that is believed.
        self.overrule(&journal, places)?;
        fs::rename(&begun, &journal).map_err(at(&journal))?;
        sync(folder)?;
        Ok(Restored {
            report: self.report,
            aside: stood.then_some(aside),
        })
    }

    /// Rules out every claim that the copy does not bear out.
    fn overrule(&self, journal: &Path, places: &[PathBuf]) -> Result<(), BackupError> {
        let begun = self.part.path().join(JOURNAL_FILE);
        let file = open::open_to_read(&begun)?;
        let mut claims = witness::of(journal);
        claims.extend(Outside::of(places, true).standing(journal));
        let mut ruled = BTreeSet::new();
        for (claim, _) in claims {
            let found = hash_of(&file, claim.upto).map_err(|error| told(&begun, error))?;
            if found != Some(claim.seal) {
                ruled.insert(claim);
            }
        }
        rulings::add(journal, &ruled).map_err(at(journal))
    }
}

/// Proves the copy at `file` and only then puts it in the place of the journal of `folder`; every
/// event is handed to `visit` while it is proven. What stood before is kept beside it, under a
/// name with `stamp`; what `places` and the copy's own place know of another course is overruled.
///
/// # Errors
/// [`BackupError`] when the copy is not sound or the journal is in use; nothing has changed then.
pub fn restore(
    file: &Path,
    folder: &Path,
    (stamp, places): (&str, &[PathBuf]),
    visit: impl FnMut(u64, &Event),
) -> Result<Restored, BackupError> {
    let mut places = places.to_vec();
    places.extend(file.parent().map(Path::to_owned));
    prepare(file, folder, visit)?.put_in_place(stamp, &places)
}

fn sync(path: &Path) -> Result<(), BackupError> {
    let synced = File::open(path).and_then(|file| file.sync_all());
    match synced {
        // A file system that cannot sync a folder says so; its files were synced.
        Err(error) if path.is_dir() && error.kind() == io::ErrorKind::InvalidInput => Ok(()),
        other => other.map_err(at(path)),
    }
}

fn same(a: &Path, b: &Path) -> bool {
    match (a.canonicalize(), b.canonicalize()) {
        (Ok(a), Ok(b)) => a == b,
        _ => false,
    }
}
