//! Rows of a journal as they lie in the file, for whoever carries them elsewhere: read with their
//! seals, and appended to a journal that follows another.
//!
//! Refuses: a row whose seal does not fit what came before, and one that cannot be read.
use crate::chain::{self, Row};
use crate::fault::{JournalError, RowFault, told};
use crate::log::Journal;
use crate::rows::{hash_of, read, tail_of};
use crate::verify::image_of;
use crate::{open, wire};
use domain::{Event, Moment};
use rusqlite::Connection;
use std::path::{Path, PathBuf};

/// SHA-256 that seals an event and all before it; zeros before the first.
pub type Seal = [u8; 32];

/// One event as it lies in a journal.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Sealed {
    /// Its number, from 1.
    pub seq: u64,
    /// Its moment, milliseconds.
    pub at_ms: i64,
    /// Version of the wire form.
    pub version: u32,
    /// Kind of fact, as the wire form calls it.
    pub kind: String,
    /// The rest, JSON.
    pub body: String,
    /// What seals it.
    pub seal: Seal,
}

impl From<Row> for Sealed {
    fn from(row: Row) -> Self {
        Self {
            seq: row.seq,
            at_ms: row.at_ms,
            version: row.version,
            kind: row.kind,
            body: row.body,
            seal: row.hash,
        }
    }
}

impl Sealed {
    fn row(&self) -> Row {
        Row {
            seq: self.seq,
            at_ms: self.at_ms,
            version: self.version,
            kind: self.kind.clone(),
            body: self.body.clone(),
            hash: self.seal,
        }
    }

    /// The event, where the row follows one numbered `last` that is sealed with `before`.
    ///
    /// # Errors
    /// [`RowFault`]: it does not follow, or this program cannot read it.
    pub fn event_after(&self, last: u64, before: &Seal) -> Result<Event, RowFault> {
        chain::check(last, before, &self.row())?;
        let fact = wire::decode(self.version, &self.kind, &self.body).map_err(RowFault::Wire)?;
        Ok(Event {
            at: Moment(self.at_ms),
            fact,
        })
    }
}

/// A journal opened to carry its rows elsewhere. It writes nothing and keeps nobody from writing.
#[derive(Debug)]
pub struct SealedReader {
    file: Connection,
    path: PathBuf,
    /// Where an image lies, as long as it is read.
    _room: Option<tempfile::TempDir>,
}

impl SealedReader {
    /// Opens the journal at `path`.
    ///
    /// # Errors
    /// [`JournalError`] when there is none, or it cannot be read.
    pub fn open(path: &Path) -> Result<Self, JournalError> {
        Ok(Self {
            file: open::open_to_read(path)?,
            path: path.to_owned(),
            _room: None,
        })
    }

    /// As [`SealedReader::open`], from an image of it, so that nothing beside it changes.
    ///
    /// # Errors
    /// As [`SealedReader::open`].
    pub fn aside(path: &Path) -> Result<Self, JournalError> {
        if !path.exists() {
            return Err(JournalError::Missing {
                path: path.to_owned(),
            });
        }
        let (room, image) = image_of(path)?;
        Ok(Self {
            file: open::open_to_read(&image)?,
            path: path.to_owned(),
            _room: Some(room),
        })
    }

    /// Number and seal of the last event; 0 and zeros without one.
    ///
    /// # Errors
    /// [`JournalError`] when it cannot be read, or its end is cut.
    pub fn last(&self) -> Result<(u64, Seal), JournalError> {
        tail_of(&self.file).map_err(|fault| fault.within(&self.path))
    }

    /// What seals event `seq`; zeros for 0, `None` where there is no such event.
    ///
    /// # Errors
    /// [`JournalError`] when it cannot be read.
    pub fn seal_of(&self, seq: u64) -> Result<Option<Seal>, JournalError> {
        hash_of(&self.file, seq).map_err(|error| told(&self.path, error))
    }

    /// The events after number `seq`, oldest first: at most `most`, and no more than `bytes` of
    /// bodies together, but at least one. Each is held to the one before.
    ///
    /// # Errors
    /// [`JournalError`] when they cannot be read, or the chain does not hold.
    pub fn after(&self, seq: u64, most: u32, bytes: usize) -> Result<Vec<Sealed>, JournalError> {
        let told = |error| told(&self.path, error);
        let Some(mut before) = self.seal_of(seq)? else {
            let (last, _) = self.last()?;
            return Err(JournalError::Short {
                path: self.path.clone(),
                asked: seq,
                last,
            });
        };
        let mut query = self
            .file
            .prepare_cached(
                "SELECT seq, at_ms, version, kind, body, hash FROM events WHERE seq > ?1 \
                 ORDER BY seq LIMIT ?2",
            )
            .map_err(told)?;
        let mut rows = query.query((seq, most)).map_err(told)?;
        let (mut last, mut left, mut all) = (seq, bytes, Vec::new());
        while let Some(row) = rows.next().map_err(told)? {
            let broken = |seq, fault| JournalError::Broken {
                path: self.path.clone(),
                seq,
                fault,
            };
            let row =
                read(row).map_err(|column| broken(last + 1, RowFault::Unreadable { column }))?;
            chain::check(last, &before, &row).map_err(|fault| broken(row.seq, fault))?;
            (last, before) = (row.seq, row.hash);
            let long = row.body.len();
            if long > left && !all.is_empty() {
                break;
            }
            left = left.saturating_sub(long);
            all.push(Sealed::from(row));
        }
        Ok(all)
    }
}

impl Journal {
    /// Appends events of another journal that this one follows, as they are sealed, in one
    /// transaction: all of them or none.
    ///
    /// # Errors
    /// [`JournalError::Broken`] at the first that does not follow or cannot be read, and nothing is
    /// appended; else as for an append.
    pub fn append_sealed(&mut self, rows: &[Sealed]) -> Result<Vec<Event>, JournalError> {
        let path = self.path().to_owned();
        self.append_rows(|last, before| {
            let (mut last, mut before) = (last, before);
            let mut events = Vec::with_capacity(rows.len());
            for row in rows {
                let event =
                    row.event_after(last, &before)
                        .map_err(|fault| JournalError::Broken {
                            path: path.clone(),
                            seq: row.seq,
                            fault,
                        })?;
                (last, before) = (row.seq, row.seal);
                events.push(event);
            }
            Ok((rows.iter().map(Sealed::row).collect(), events))
        })
    }
}
