//! One file in which events may be found, as a database that can be asked, whatever befell it.
use crate::ahead;
use crate::backup::{BackupError, RESTORE};
use crate::chain::{self, BEFORE_FIRST, Row};
use crate::mark::Claim;
use crate::rows::{hash_of, read};
use rusqlite::{Connection, OpenFlags};
use std::fs::{self, File};
use std::io::{self, Read as _};
use std::os::unix::fs::FileExt as _;
use std::path::Path;
use tempfile::TempDir;

/// Bytes of a page in a file whose head cannot be read.
const PAGE: usize = 4_096;

/// An image of a file, with its log laid over it.
#[derive(Debug)]
pub(super) struct Source {
    pub(super) name: String,
    file: Connection,
    /// How far its chain holds from the first event on.
    pub(super) proven: Claim,
    _image: Option<TempDir>,
}

impl Source {
    /// What can be read of the file at `path`: the file alone, and with each log laid over it that
    /// left frames there, as images in `room`. What cannot be read at all makes none.
    pub(super) fn all_of(path: &Path, room: &Path) -> Result<Vec<Self>, BackupError> {
        let failed = |source| BackupError::Place {
            path: path.to_owned(),
            source,
        };
        let mut start = Vec::new();
        if let Ok(file) = File::open(path) {
            file.take(100).read_to_end(&mut start).map_err(failed)?;
        }
        let page = page_size(&start);
        let salts = ahead::salts(path, page).map_err(failed)?;
        // SQLite file format, 1.3: 1 at 18 for a file without a log.
        if salts.is_empty() && start.get(18) == Some(&1) {
            return Ok(Self::open(path, path, None).into_iter().collect());
        }
        let mut found = Vec::new();
        let alone = (!start.is_empty()).then_some(None);
        for salts in salts.into_iter().map(Some).chain(alone) {
            let image = image(path, room, page, salts).map_err(failed)?;
            let file = image.path().join("image");
            found.extend(Self::open(path, &file, Some(image)));
        }
        Ok(found)
    }

    fn open(path: &Path, file: &Path, image: Option<TempDir>) -> Option<Self> {
        let flags = OpenFlags::SQLITE_OPEN_READ_ONLY | OpenFlags::SQLITE_OPEN_NO_MUTEX;
        let file = Connection::open_with_flags(file, flags).ok()?;
        file.pragma_update(None, "cell_size_check", true).ok()?;
        file.query_row("SELECT count(*) FROM sqlite_schema", [], |_| Ok(()))
            .ok()?;
        let mut source = Self {
            name: path.file_name()?.to_string_lossy().into_owned(),
            file,
            proven: Claim {
                upto: 0,
                seal: BEFORE_FIRST,
            },
            _image: image,
        };
        let mut last = source.proven;
        // Whatever ends it, what was proven before stays so.
        let _ = source.each_row(|row| {
            chain::check(last.upto, &last.seal, row).map_err(|_| ())?;
            last = Claim {
                upto: row.seq,
                seal: row.hash,
            };
            Ok(())
        });
        source.proven = last;
        Some(source)
    }

    /// Whether what it holds does not contradict the claim.
    pub(super) fn may_be(&self, claim: &Claim) -> bool {
        self.proven.upto < claim.upto || self.hash_at(claim.upto) == Some(claim.seal)
    }

    pub(super) fn hash_at(&self, seq: u64) -> Option<chain::Hash> {
        hash_of(&self.file, seq).ok()?
    }

    /// The row `seq` as it lies there.
    pub(super) fn row(&self, seq: u64) -> Option<Row> {
        let ask = "SELECT seq, at_ms, version, kind, body, hash FROM events WHERE seq = ?1";
        let mut query = self.file.prepare_cached(ask).ok()?;
        let mut rows = query.query([seq]).ok()?;
        read(rows.next().ok()??).ok()
    }

    /// Hands on every row that is proven.
    pub(super) fn each_proven(
        &self,
        mut visit: impl FnMut(&Row) -> Result<(), BackupError>,
    ) -> Result<(), BackupError> {
        let mut failed = None;
        let _ = self.each_row(|row| {
            if row.seq > self.proven.upto {
                return Err(());
            }
            visit(row).map_err(|error| failed = Some(error))
        });
        failed.map_or(Ok(()), Err)
    }

    fn each_row(&self, mut visit: impl FnMut(&Row) -> Result<(), ()>) -> Result<(), ()> {
        let ask = "SELECT seq, at_ms, version, kind, body, hash FROM events ORDER BY seq";
        let mut query = self.file.prepare_cached(ask).map_err(|_| ())?;
        let mut rows = query.query([]).map_err(|_| ())?;
        while let Some(row) = rows.next().map_err(|_| ())? {
            visit(&read(row).map_err(|_| ())?)?;
        }
        Ok(())
    }
}

/// SQLite file format, 1.3: two bytes at 16, 1 for 65536.
fn page_size(start: &[u8]) -> usize {
    let size = match start.get(16..18) {
        Some([0, 1]) => 65_536,
        Some(two) => usize::from(two[0]) << 8 | usize::from(two[1]),
        None => PAGE,
    };
    let fits = size.is_power_of_two() && (512..=65_536).contains(&size);
    if fits { size } else { PAGE }
}

/// The file with the frames that bear `salts` laid over it, marked as a database without a log.
fn image(
    path: &Path,
    room: &Path,
    page: usize,
    salts: Option<ahead::Salts>,
) -> io::Result<TempDir> {
    let folder = tempfile::Builder::new().prefix(RESTORE).tempdir_in(room)?;
    let place = folder.path().join("image");
    match fs::copy(path, &place) {
        Err(error) if error.kind() == io::ErrorKind::NotFound => drop(File::create(&place)?),
        other => drop(other?),
    }
    let file = File::options().read(true).write(true).open(&place)?;
    if let Some(salts) = salts {
        ahead::pages(path, page, salts, |number, bytes| {
            let at = u64::from(number.saturating_sub(1)) * page as u64;
            // A number that a flipped bit made huge is no page of this file.
            let most = file.metadata()?.len() + (page as u64) * 1_024;
            if number == 0 || at > most {
                return Ok(());
            }
            file.write_all_at(bytes, at)
        })?;
    }
    // SQLite file format, 1.3: the file's size in pages, and that it has no log.
    let pages = file.metadata()?.len() / page as u64;
    let pages = u32::try_from(pages).unwrap_or(u32::MAX);
    file.write_all_at(&pages.to_be_bytes(), 28)?;
    file.write_all_at(&[1, 1], 18)?;
    Ok(folder)
}
