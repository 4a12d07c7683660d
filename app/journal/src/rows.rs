//! Reads rows of an open journal: its end, one hash, or all that follows, the chain checked.
use crate::chain::{self, BEFORE_FIRST, Hash, Row};
use crate::fault::{JournalError, RowFault, told};
use crate::wire;
use domain::{Event, Moment};
use rusqlite::{Connection, OptionalExtension as _};
use std::path::Path;

/// The hash of event `seq`: `None` when there is no such event, zeros for 0.
pub(crate) fn hash_of(file: &Connection, seq: u64) -> rusqlite::Result<Option<Hash>> {
    if seq == 0 {
        return Ok(Some(BEFORE_FIRST));
    }
    file.prepare_cached("SELECT hash FROM events WHERE seq = ?1")?
        .query_row([seq], |row| row.get(0))
        .optional()
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
pub(crate) fn read(row: &rusqlite::Row<'_>) -> Result<Row, &'static str> {
    Ok(Row {
        seq: row.get("seq").map_err(|_| "number")?,
        at_ms: row.get("at_ms").map_err(|_| "time")?,
        version: row.get("version").map_err(|_| "version")?,
        kind: row.get("kind").map_err(|_| "kind")?,
        body: row.get("body").map_err(|_| "body")?,
        hash: row.get("hash").map_err(|_| "hash")?,
    })
}
