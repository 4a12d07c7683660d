//! The journal: appends events durably and reads them back in order.
//!
//! Refuses: an append by somebody who has not read what came before, and any change to a row.
use crate::chain::{self, Hash, Row};
use crate::fault::{AppendError, BUSY_MS, JournalError, told};
use crate::mark::{Claim, Mark};
use crate::outside::Outside;
use crate::rows::{hash_of, tail_of, walk};
use crate::{ahead, open, wire, witness};
use domain::Event;
use rusqlite::{Connection, params};
use std::path::{Path, PathBuf};
use std::time::Duration;

/// The open journal. Several processes may have the same one open.
#[derive(Debug)]
pub struct Journal {
    pub(crate) file: Connection,
    path: PathBuf,
    /// The file, and the write-ahead file beside it, as they were when opened.
    in_place: [(PathBuf, Identity); 2],
    version_seen: i64,
    /// What cannot be written, on a full disk, is written later: the events are safe without it.
    mark: Option<Mark>,
    /// Whether something was appended since the journal last rested.
    stirred: bool,
}

/// Bytes of the write-ahead log from which it is brought home after an append: about 250 pages.
const LOG_MAX: u64 = 1 << 20;

impl Journal {
    /// Opens the journal at `path`, and creates it if there never was one; its folder must exist.
    ///
    /// # Errors
    /// [`JournalError`]: it is less than the mark, the record or its own log know, or another one;
    /// no folder, read-only, not a journal, newer than this program, or on a file system that
    /// cannot keep it safe.
    pub fn open(path: &Path) -> Result<Self, JournalError> {
        Self::open_beside(path, &Outside::default())
    }

    /// As [`Journal::open`], and holds it to what places outside the folder know.
    ///
    /// # Errors
    /// As [`Journal::open`].
    pub fn open_beside(path: &Path, outside: &Outside) -> Result<Self, JournalError> {
        witness::check(path, outside)?;
        let file = open::open(path)?;
        let mut journal = Self {
            file,
            path: path.to_owned(),
            in_place: [as_it_is(path)?, as_it_is(&ahead::place(path))?],
            version_seen: 0,
            mark: None,
            stirred: true,
        };
        journal.changed()?;
        let (upto, seal) = journal.tail()?;
        // A kill between a write and its sync leaves events that are there and not safe: nobody may
        // build on them, nor the mark know them, before the disk has them.
        if journal.checkpoint(&["PASSIVE"]).is_ok() {
            journal.mark = Mark::open(path, Claim { upto, seal }).ok();
        }
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
        self.append_rows(|last, before| {
            if last != expected_last {
                return Err(AppendError::Moved { last });
            }
            let (mut seq, mut before) = (last, before);
            let sealed = events.iter().map(|event| {
                seq += 1;
                let written = wire::encode(&event.fact);
                let (version, kind, body) = (written.version, written.kind, written.body);
                let hash = chain::seal(&before, seq, event.at.0, version, kind, &body);
                before = hash;
                Row {
                    seq,
                    at_ms: event.at.0,
                    version,
                    kind: kind.to_owned(),
                    body,
                    hash,
                }
            });
            let rows: Vec<Row> = sealed.collect();
            Ok((rows, seq))
        })
    }

    /// Appends the rows that `make` gives for the number and hash of the last one, in one
    /// transaction; what else it gives is handed back once they are safe.
    pub(crate) fn append_rows<T, E: From<JournalError>>(
        &mut self,
        make: impl FnOnce(u64, Hash) -> Result<(Vec<Row>, T), E>,
    ) -> Result<T, E> {
        self.check_in_place()?;
        let path = self.path.clone();
        let told = |error| E::from(told(&path, error));
        let transaction = self.file.transaction().map_err(told)?;
        let tail = tail_of(&transaction).map_err(|fault| E::from(fault.within(&path)))?;
        let (rows, more) = make(tail.0, tail.1)?;
        {
            let mut insert = transaction
                .prepare_cached(
                    "INSERT INTO events (seq, at_ms, version, kind, body, hash) \
                     VALUES (?1, ?2, ?3, ?4, ?5, ?6)",
                )
                .map_err(told)?;
            for row in &rows {
                let (seq, at_ms, version) = (row.seq, row.at_ms, row.version);
                insert
                    .execute(params![seq, at_ms, version, row.kind, row.body, row.hash])
                    .map_err(told)?;
            }
        }
        transaction.commit().map_err(told)?;
        self.check_in_place()?;
        let (upto, seal) = rows.last().map_or(tail, |row| (row.seq, row.hash));
        self.note(Claim { upto, seal });
        Ok(more)
    }

    /// To be called when nobody waits: brings the write-ahead log home and has the disk keep the
    /// mark, once after the last append. Tells whether there was anything to do.
    ///
    /// # Errors
    /// [`JournalError`] when the disk takes neither now; the events are safe, and the next call
    /// tries again.
    pub fn rest(&mut self) -> Result<bool, JournalError> {
        if !self.stirred {
            return Ok(false);
        }
        let (upto, seal) = self.tail()?;
        let claim = Claim { upto, seal };
        let path = self.path.clone();
        let failed = |source: std::io::Error| JournalError::Mark {
            path: crate::mark::place(&path),
            source,
        };
        self.bring_home()?;
        match &mut self.mark {
            Some(mark) => {
                mark.note(claim)
                    .and_then(|()| mark.sync())
                    .map_err(failed)?;
            }
            None => self.mark = Some(Mark::open(&path, claim).map_err(failed)?),
        }
        self.stirred = false;
        Ok(true)
    }

    /// What follows an append that is safe already, and so cannot fail.
    fn note(&mut self, claim: Claim) {
        self.stirred = true;
        if let Some(mark) = &mut self.mark
            && mark.note(claim).is_err()
        {
            self.mark = None;
        }
        let long = ahead::place(&self.path)
            .metadata()
            .is_ok_and(|log| log.len() > LOG_MAX);
        if long {
            if let Some(mark) = &mut self.mark {
                drop(mark.sync());
            }
            // Another try follows with the next append, and when nobody waits.
            drop(self.bring_home());
        }
    }

    /// Has the disk keep the write-ahead log, brings it home and empties it, the last unless
    /// somebody reads in it just now.
    fn bring_home(&self) -> Result<(), JournalError> {
        self.checkpoint(&["PASSIVE", "TRUNCATE"])
    }

    /// Checkpoints of these kinds, waiting for nobody.
    fn checkpoint(&self, kinds: &[&str]) -> Result<(), JournalError> {
        let told = |error| told(&self.path, error);
        let waits = |ms| self.file.busy_timeout(Duration::from_millis(ms));
        waits(0).map_err(told)?;
        let each = kinds.iter().try_for_each(|kind| {
            let ask = format!("PRAGMA wal_checkpoint({kind})");
            self.file.query_row(&ask, [], |_| Ok(())).map_err(told)
        });
        waits(BUSY_MS.into()).map_err(told)?;
        match each {
            Ok(()) | Err(JournalError::Busy { .. }) => Ok(()),
            Err(error) => Err(error),
        }
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
        hash_of(&self.file, seq).map_err(|error| told(&self.path, error))
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

impl Drop for Journal {
    /// SQLite brings the log home when the last one closes; the disk has the mark before.
    fn drop(&mut self) {
        if let Some(mark) = &mut self.mark {
            drop(mark.sync());
        }
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
