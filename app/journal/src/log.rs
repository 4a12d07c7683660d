//! The journal: appends events durably and reads them back in order.
//!
//! Refuses: an append by somebody who has not read what came before, and any change to a row.
use crate::chain::{self, BEFORE_FIRST, Hash, Row};
use crate::fault::{AppendError, JournalError, RowFault, told};
use crate::{open, wire};
use domain::{Event, Moment};
use rusqlite::{Connection, OptionalExtension as _, params};
use std::path::{Path, PathBuf};

/// The open journal. Several processes may have the same one open.
#[derive(Debug)]
pub struct Journal {
    pub(crate) file: Connection,
    path: PathBuf,
    /// The file, and the write-ahead file beside it, as they were when opened.
    in_place: [(PathBuf, Identity); 2],
    version_seen: i64,
}

impl Journal {
    /// Opens the journal at `path`, and creates it if it is missing; its folder must exist.
    ///
    /// # Errors
    /// [`JournalError`]: no folder, read-only, not a journal, newer than this program, or on a
    /// file system that cannot keep it safe.
    pub fn open(path: &Path) -> Result<Self, JournalError> {
        let file = open::open(path)?;
        let mut ahead = path.as_os_str().to_owned();
        ahead.push("-wal");
        let mut journal = Self {
            file,
            path: path.to_owned(),
            in_place: [as_it_is(path)?, as_it_is(Path::new(&ahead))?],
            version_seen: 0,
        };
        journal.changed()?;
        Ok(journal)
    }

    /// Where it lies.
    #[must_use]
    pub fn path(&self) -> &Path {
        &self.path
    }

    /// Number of the last event, 0 when there is none.
    ///
    /// # Errors
    /// [`JournalError`] when it cannot be read.
    pub fn last(&self) -> Result<u64, JournalError> {
        Ok(self.tail()?.0)
    }

    /// Appends `events` after event `expected_last` in one transaction, and returns the number
    /// of the last event then. When this returns, they outlast a power cut. When it fails, none of
    /// them stands, or, where the disk failed while committing, all of them may: read what is new
    /// before deciding again.
    ///
    /// # Errors
    /// [`AppendError::Moved`] when the last event is another one than expected;
    /// [`AppendError::Journal`] when it cannot be written.
    pub fn append(&mut self, expected_last: u64, events: &[Event]) -> Result<u64, AppendError> {
        self.check_in_place()?;
        let path = self.path.clone();
        let told = |error| AppendError::Journal(told(&path, error));
        let transaction = self.file.transaction().map_err(told)?;
        let (mut last, mut before) = tail_of(&transaction).map_err(|fault| fault.within(&path))?;
        if last != expected_last {
            return Err(AppendError::Moved { last });
        }
        {
            let mut insert = transaction
                .prepare_cached(
                    "INSERT INTO events (seq, at_ms, version, kind, body, hash) \
                     VALUES (?1, ?2, ?3, ?4, ?5, ?6)",
                )
                .map_err(told)?;
            for event in events {
                last += 1;
                let written = wire::encode(&event.fact);
                let (version, kind, body) = (written.version, written.kind, written.body);
                before = chain::seal(&before, last, event.at.0, version, kind, &body);
                insert
                    .execute(params![last, event.at.0, version, kind, body, before])
                    .map_err(told)?;
            }
        }
        transaction.commit().map_err(told)?;
        self.check_in_place()?;
        Ok(last)
    }

    /// All events after number `seq`, oldest first, the chain checked on the way.
    ///
    /// # Errors
    /// [`JournalError::Broken`] at the first bad row; [`JournalError::Short`] when there is no
    /// event `seq`.
    pub fn events_after(&self, seq: u64) -> Result<Vec<(u64, Event)>, JournalError> {
        let mut events = Vec::new();
        self.each_after(seq, |seq, event| {
            events.push((seq, event));
            Ok(())
        })?;
        Ok(events)
    }

    /// Hands each event after number `seq` to `visit`, oldest first, the chain checked on the
    /// way, without holding them all. An error of `visit` ends it and is returned.
    ///
    /// # Errors
    /// As [`Journal::events_after`], and whatever `visit` returns.
    pub fn each_after<E: From<JournalError>>(
        &self,
        seq: u64,
        mut visit: impl FnMut(u64, Event) -> Result<(), E>,
    ) -> Result<(), E> {
        let Some(before) = self.hash_at(seq)? else {
            return Err(E::from(JournalError::Short {
                path: self.path.clone(),
                asked: seq,
                last: self.last()?,
            }));
        };
        walk(&self.file, &self.path, (seq, before), |row, event| {
            visit(row.seq, event)
        })
    }

    /// Whether another connection has appended since the last call, or since opening. Cheap
    /// enough to ask several times a second. Own appends do not count.
    ///
    /// # Errors
    /// [`JournalError`] when the file cannot be read.
    pub fn changed(&mut self) -> Result<bool, JournalError> {
        let version = self
            .file
            .pragma_query_value(None, "data_version", |row| row.get(0))
            .map_err(|error| told(&self.path, error))?;
        let changed = version != self.version_seen;
        self.version_seen = version;
        Ok(changed)
    }

    /// The hash of event `seq`: `None` when there is no such event, zeros for 0.
    pub(crate) fn hash_at(&self, seq: u64) -> Result<Option<Hash>, JournalError> {
        if seq == 0 {
            return Ok(Some(BEFORE_FIRST));
        }
        self.file
            .prepare_cached("SELECT hash FROM events WHERE seq = ?1")
            .and_then(|mut query| query.query_row([seq], |row| row.get(0)).optional())
            .map_err(|error| told(&self.path, error))
    }

    fn tail(&self) -> Result<(u64, Hash), JournalError> {
        tail_of(&self.file).map_err(|fault| fault.within(&self.path))
    }

    /// An unlinked file takes commits without complaint and loses them all.
    fn check_in_place(&self) -> Result<(), JournalError> {
        for (path, identity) in &self.in_place {
            if Identity::of(path) != Some(*identity) {
                return Err(JournalError::Gone { path: path.clone() });
            }
        }
        Ok(())
    }
}

/// Which file a path names: device and inode.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
struct Identity(u64, u64);

impl Identity {
    fn of(path: &Path) -> Option<Self> {
        use std::os::unix::fs::MetadataExt as _;
        let found = std::fs::metadata(path).ok()?;
        Some(Self(found.dev(), found.ino()))
    }
}

fn as_it_is(path: &Path) -> Result<(PathBuf, Identity), JournalError> {
    let path = path.to_owned();
    match Identity::of(&path) {
        Some(identity) => Ok((path, identity)),
        None => Err(JournalError::Gone { path }),
    }
}

/// Why the end of the journal cannot be built upon.
pub(crate) enum TailFault {
    Sqlite(rusqlite::Error),
    /// Numbers up to `given` were given, but the rows end at `last`.
    Cut {
        last: u64,
        given: u64,
    },
}

impl TailFault {
    pub(crate) fn within(self, path: &Path) -> JournalError {
        match self {
            Self::Sqlite(error) => told(path, error),
            Self::Cut { last, given } => JournalError::Short {
                path: path.to_owned(),
                asked: given,
                last,
            },
        }
    }
}

impl From<rusqlite::Error> for TailFault {
    fn from(error: rusqlite::Error) -> Self {
        Self::Sqlite(error)
    }
}

/// Number and hash of the last row, zeros when there is none. One statement, so that an append
/// between two looks is not taken for a loss.
pub(crate) fn tail_of(file: &Connection) -> Result<(u64, Hash), TailFault> {
    let mut query = file.prepare_cached(
        "SELECT coalesce((SELECT seq FROM sqlite_sequence WHERE name = 'events'), 0), \
                coalesce(seq, 0), hash \
         FROM (SELECT 1) LEFT JOIN (SELECT seq, hash FROM events ORDER BY seq DESC LIMIT 1)",
    )?;
    let (given, last, hash): (u64, u64, Option<Hash>) =
        query.query_row([], |row| Ok((row.get(0)?, row.get(1)?, row.get(2)?)))?;
    if given == last {
        Ok((last, hash.unwrap_or(BEFORE_FIRST)))
    } else {
        Err(TailFault::Cut { last, given })
    }
}

/// Reads every row after `start` (number and hash), checks it against the one before, decodes
/// it and hands it on.
pub(crate) fn walk<E: From<JournalError>>(
    file: &Connection,
    path: &Path,
    start: (u64, Hash),
    mut visit: impl FnMut(&Row, Event) -> Result<(), E>,
) -> Result<(), E> {
    let told = |error| E::from(told(path, error));
    let (mut last, mut before) = start;
    let mut query = file
        .prepare(
            "SELECT seq, at_ms, version, kind, body, hash FROM events WHERE seq > ?1 ORDER BY seq",
        )
        .map_err(told)?;
    let mut rows = query.query([last]).map_err(told)?;
    while let Some(row) = rows.next().map_err(told)? {
        let broken = |seq, fault| {
            E::from(JournalError::Broken {
                path: path.to_owned(),
                seq,
                fault,
            })
        };
        let row = read(row).map_err(|column| broken(last + 1, RowFault::Unreadable { column }))?;
        chain::check(last, &before, &row).map_err(|fault| broken(row.seq, fault))?;
        let fact = wire::decode(row.version, &row.kind, &row.body)
            .map_err(|fault| broken(row.seq, RowFault::Wire(fault)))?;
        let at = Moment(row.at_ms);
        (last, before) = (row.seq, row.hash);
        visit(&row, Event { at, fact })?;
    }
    Ok(())
}

/// Takes a row apart, or names the column that cannot be read.
fn read(row: &rusqlite::Row<'_>) -> Result<Row, &'static str> {
    Ok(Row {
        seq: row.get("seq").map_err(|_| "number")?,
        at_ms: row.get("at_ms").map_err(|_| "time")?,
        version: row.get("version").map_err(|_| "version")?,
        kind: row.get("kind").map_err(|_| "kind")?,
        body: row.get("body").map_err(|_| "body")?,
        hash: row.get("hash").map_err(|_| "hash")?,
    })
}
