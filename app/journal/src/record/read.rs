//! Reads the record, for those who show it: one view of the file, row by row.
//!
//! Refuses: writing, and holding all rows at once.
use super::RecordError;
use super::layout::{APPLICATION, LAYOUT};
use crate::fault::BUSY_MS;
use domain::{Mass, MassUnit, Moment, decimal};
use rusqlite::{Connection, OpenFlags, Row, ToSql};
use std::ops::ControlFlow;
use std::path::{Path, PathBuf};
use std::time::Duration;

/// One set that stands.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct SetRow {
    /// Number of its event in the journal.
    pub seq: u64,
    /// Number of its lift.
    pub lift_no: u32,
    /// Who.
    pub lifter: String,
    /// What.
    pub lift: String,
    /// The day, ISO 8601.
    pub date: String,
    /// Where.
    pub rack: String,
    /// Which rung, from 1.
    pub rung: u32,
    /// "warm-up" or "work".
    pub kind: String,
    /// Bar, collars and plates.
    pub load: Mass,
    /// The lifter's unit.
    pub unit: MassUnit,
    /// Reps to do.
    pub planned_reps: u8,
    /// Reps done, 0 for a miss.
    pub reps: u8,
    /// The rep at which the back moved, from 1; `None` when it was kept.
    pub back_moved_at: Option<u8>,
    /// When it was entered.
    pub at: Moment,
}

impl SetRow {
    /// Whether it was a work set, and no warm-up.
    #[must_use]
    pub fn is_work(&self) -> bool {
        self.kind == "work"
    }

    /// The load in kilograms, exact: "201.84860465".
    #[must_use]
    pub fn load_kg(&self) -> String {
        decimal::write_exact(self.load.ng(), MassUnit::Kg.scale())
            .expect("a nanogram is twelve decimals of a kilogram")
    }
}

/// Which sets are asked for; nothing said is all of them. Days are ISO 8601.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct SetsOf {
    /// From this day on.
    pub since: Option<String>,
    /// Up to and with this day.
    pub upto: Option<String>,
    /// Whose.
    pub lifter: Option<String>,
    /// Of which lift.
    pub lift: Option<String>,
}

/// The record opened for reading. It shows what stood when it was opened.
#[derive(Debug)]
pub struct RecordReader {
    pub(super) file: Connection,
    path: PathBuf,
}

impl RecordReader {
    /// Opens the record at `path`; `None` when there is none yet.
    ///
    /// # Errors
    /// [`RecordError`] when the file cannot be read, or is not of this program and version.
    pub fn open(path: &Path) -> Result<Option<Self>, RecordError> {
        let failed = |source| RecordError::File {
            path: path.to_owned(),
            source,
        };
        let flags = OpenFlags::SQLITE_OPEN_READ_ONLY | OpenFlags::SQLITE_OPEN_NO_MUTEX;
        let file = match Connection::open_with_flags(path, flags) {
            Err(_) if matches!(path.try_exists(), Ok(false)) => return Ok(None),
            opened => opened.map_err(failed)?,
        };
        file.busy_timeout(Duration::from_millis(u64::from(BUSY_MS)))
            .map_err(failed)?;
        file.execute_batch("BEGIN").map_err(failed)?;
        let number = |pragma| -> Result<i64, RecordError> {
            file.pragma_query_value(None, pragma, |row| row.get(0))
                .map_err(failed)
        };
        let tables: u64 = file
            .query_row("SELECT count(*) FROM sqlite_schema", [], |row| row.get(0))
            .map_err(failed)?;
        match (number("application_id")?, number("user_version")?) {
            (APPLICATION, LAYOUT) => {}
            (APPLICATION, _) => {
                return Err(RecordError::OtherLayout {
                    path: path.to_owned(),
                });
            }
            // Made, and not yet begun.
            (0, 0) if tables == 0 => return Ok(None),
            _ => {
                return Err(RecordError::NotOurs {
                    path: path.to_owned(),
                });
            }
        }
        let path = path.to_owned();
        Ok(Some(Self { file, path }))
    }

    /// The event of the journal up to which the record goes.
    ///
    /// # Errors
    /// [`RecordError`] when the file cannot be read.
    pub fn upto(&self) -> Result<u64, RecordError> {
        self.file
            .query_row("SELECT upto FROM mark", [], |row| row.get(0))
            .map_err(|source| self.failed(source))
    }

    /// By which another content is known: the last event that is in it, and its hash.
    ///
    /// # Errors
    /// [`RecordError`] when the file cannot be read.
    pub fn version(&self) -> Result<String, RecordError> {
        self.file
            .query_row("SELECT upto || '-' || hex(hash) FROM mark", [], |row| {
                row.get(0)
            })
            .map_err(|source| self.failed(source))
    }

    /// Hands every set that is asked for to `visit` in the order of the journal, until it breaks off.
    ///
    /// # Errors
    /// [`RecordError`] when the file cannot be read.
    pub fn each_set_of(
        &self,
        of: &SetsOf,
        visit: impl FnMut(SetRow) -> ControlFlow<()>,
    ) -> Result<(), RecordError> {
        let all = [
            ("date >=", &of.since),
            ("date <=", &of.upto),
            ("lifter =", &of.lifter),
            ("lift =", &of.lift),
        ];
        let (mut which, mut params) = (String::new(), Vec::<&dyn ToSql>::new());
        for (says, value) in all {
            if let Some(value) = value {
                let word = if params.is_empty() { "WHERE" } else { "AND" };
                params.push(value);
                which.push_str(&format!("{word} {says} ?{} ", params.len()));
            }
        }
        self.each(&format!("{which}ORDER BY seq"), &params, visit)
    }

    /// Hands every set to `visit` in the order of the journal, until it breaks off.
    ///
    /// # Errors
    /// [`RecordError`] when the file cannot be read.
    pub fn each_set(
        &self,
        visit: impl FnMut(SetRow) -> ControlFlow<()>,
    ) -> Result<(), RecordError> {
        self.each("ORDER BY seq", &[], visit)
    }

    /// Days on which something was done, latest first, at most `most`, only those before the day
    /// `before` if one is given. Days are ISO 8601.
    ///
    /// # Errors
    /// [`RecordError`] when the file cannot be read.
    pub fn days(&self, before: Option<&str>, most: u32) -> Result<Vec<String>, RecordError> {
        self.file
            .prepare(
                "SELECT DISTINCT date FROM sets WHERE ?1 IS NULL OR date < ?1 \
                 ORDER BY date DESC LIMIT ?2",
            )
            .and_then(|mut query| {
                query
                    .query_map((before, most), |row| row.get(0))
                    .and_then(Iterator::collect)
            })
            .map_err(|source| self.failed(source))
    }

    /// Hands each set of the days from `first` to `last` to `visit`: latest day first, then by
    /// lifter, lift and entry, until it breaks off.
    ///
    /// # Errors
    /// [`RecordError`] when the file cannot be read.
    pub fn each_set_of_days(
        &self,
        first: &str,
        last: &str,
        visit: impl FnMut(SetRow) -> ControlFlow<()>,
    ) -> Result<(), RecordError> {
        self.each(
            "WHERE date BETWEEN ?1 AND ?2 ORDER BY date DESC, lifter, lift_no, seq",
            &[&first, &last],
            visit,
        )
    }

    /// Hands each set of `lifter` to `visit`: latest day first, then in the order of entry, until
    /// it breaks off.
    ///
    /// # Errors
    /// [`RecordError`] when the file cannot be read.
    pub fn each_set_of_lifter(
        &self,
        lifter: &str,
        visit: impl FnMut(SetRow) -> ControlFlow<()>,
    ) -> Result<(), RecordError> {
        self.each(
            "WHERE lifter = ?1 ORDER BY date DESC, lift_no, seq",
            &[&lifter],
            visit,
        )
    }

    fn each(
        &self,
        which: &str,
        params: &[&dyn ToSql],
        mut visit: impl FnMut(SetRow) -> ControlFlow<()>,
    ) -> Result<(), RecordError> {
        let mut query = self
            .file
            .prepare(&format!("SELECT {COLUMNS} FROM sets {which}"))
            .map_err(|source| self.failed(source))?;
        let mut rows = query.query(params).map_err(|source| self.failed(source))?;
        while let Some(row) = rows.next().map_err(|source| self.failed(source))? {
            let row = set_row(row).map_err(|source| self.failed(source))?;
            if visit(row).is_break() {
                break;
            }
        }
        Ok(())
    }

    pub(super) fn failed(&self, source: rusqlite::Error) -> RecordError {
        RecordError::File {
            path: self.path.clone(),
            source,
        }
    }
}

/// In the order in which [`set_row`] takes them: a million rows are not searched by name.
const COLUMNS: &str = "seq, lift_no, lifter, lift, date, rack, rung, kind, load_ng, unit, \
                       planned_reps, reps, back_moved_at, at_ms";

fn set_row(row: &Row<'_>) -> rusqlite::Result<SetRow> {
    let pounds = row.get_ref(9)?.as_str()? == MassUnit::Lb.word();
    Ok(SetRow {
        seq: row.get(0)?,
        lift_no: row.get(1)?,
        lifter: row.get(2)?,
        lift: row.get(3)?,
        date: row.get(4)?,
        rack: row.get(5)?,
        rung: row.get(6)?,
        kind: row.get(7)?,
        load: Mass::from_ng(row.get(8)?),
        unit: if pounds { MassUnit::Lb } else { MassUnit::Kg },
        planned_reps: row.get(10)?,
        reps: row.get(11)?,
        back_moved_at: row.get(12)?,
        at: Moment(row.get(13)?),
    })
}
