//! Holds the record against one that is made anew from the journal, so that a flipped bit in a row
//! is found which nobody would otherwise doubt; and makes it again from nothing.
use super::read::RecordReader;
use super::{
    Followed, Record, RecordError, begin_anew, filling, is_damage, mark, project, take_away,
};
use crate::chain::{BEFORE_FIRST, Hash};
use crate::fault::told;
use crate::log::Journal;
use crate::rows::{hash_of, walk};
use crate::{JOURNAL_FILE, RECORD_FILE, open};
use domain::Event;
use rusqlite::Connection;
use rusqlite::types::ValueRef;
use sha2::{Digest as _, Sha256};
use std::path::Path;

/// Every table with rows of the journal, and the order in which its rows are compared.
const TABLES: [(&str, &str); 8] = [
    ("clock", "id"),
    ("lifts", "no"),
    ("rungs", "lift_no, rung"),
    ("entries", "seq"),
    ("settled", "seq, lift_no, rung"),
    ("next_times", "lift_no"),
    ("sets", "seq"),
    ("planned", "id"),
];

/// The second record's name; one that a kill left is written over.
const ASIDE: &str = "record.proof";

/// Whether the record in `folder` holds what the journal there makes of it, up to the event that it
/// goes to; true where there is none. Reads the whole journal and writes a second record aside for
/// a while: for a thread that may wait.
///
/// # Errors
/// [`RecordError`] when it cannot be told: the journal cannot be read, or there is no room.
pub fn prove_record(folder: &Path) -> Result<bool, RecordError> {
    match compare(folder) {
        Err(error) if is_damage(&error) => Ok(false),
        told => told,
    }
}

/// Makes the record in `folder` again, in a new file, whatever there was.
///
/// # Errors
/// [`RecordError`] when the journal cannot be read or the record not be written.
pub fn remake_record(folder: &Path) -> Result<Followed, RecordError> {
    let journal = Journal::open(&folder.join(JOURNAL_FILE))?;
    let path = folder.join(RECORD_FILE);
    let file = begin_anew(&path)?;
    Record { file, path }.rebuild(&journal)
}

fn compare(folder: &Path) -> Result<bool, RecordError> {
    let path = folder.join(RECORD_FILE);
    // One view of the record, whoever adds to it meanwhile.
    let Some(kept) = RecordReader::open(&path)? else {
        return Ok(true);
    };
    let failed = |source| RecordError::File {
        path: path.clone(),
        source,
    };
    let (upto, seal) = mark(&kept.file).map_err(failed)?;
    let pages: String = kept
        .file
        .pragma_query_value(None, "integrity_check", |row| row.get(0))
        .map_err(failed)?;
    let journal = folder.join(JOURNAL_FILE);
    let events = open::open_to_read(&journal)?;
    let known = hash_of(&events, upto).map_err(|error| told(&journal, error))?;
    if pages != "ok" || known != Some(seal) {
        return Ok(false);
    }
    let aside = folder.join(ASIDE);
    let fresh = made_upto(&aside, (&events, &journal), upto)?;
    let same = contents(&kept.file).map_err(failed)? == contents(&fresh).map_err(failed)?;
    drop(fresh);
    take_away(&aside)?;
    Ok(same)
}

/// A record at `path` of the events up to `upto`, which is thrown away soon: the disk is waited for
/// nowhere.
fn made_upto(
    path: &Path,
    (events, journal): (&Connection, &Path),
    upto: u64,
) -> Result<Connection, RecordError> {
    let failed = |source| RecordError::File {
        path: path.to_owned(),
        source,
    };
    let mut fresh = begin_anew(path)?;
    fresh
        .pragma_update(None, "synchronous", "OFF")
        .map_err(failed)?;
    let tables = fresh.transaction().map_err(failed)?;
    filling::begin_filling(&tables).map_err(failed)?;
    walk(events, journal, (0, BEFORE_FIRST), |row, event: Event| {
        if row.seq > upto {
            return Ok(());
        }
        project::apply(&tables, row.seq, &event).map_err(failed)
    })?;
    filling::end_filling(&tables).map_err(failed)?;
    tables.commit().map_err(failed)?;
    Ok(fresh)
}

/// A sum of every value of every row.
fn contents(file: &Connection) -> rusqlite::Result<Hash> {
    let mut sha = Sha256::new();
    for (table, order) in TABLES {
        sha.update(table);
        let mut query = file.prepare(&format!("SELECT * FROM {table} ORDER BY {order}"))?;
        let columns = query.column_count();
        let mut rows = query.query([])?;
        while let Some(row) = rows.next()? {
            for column in 0..columns {
                let (kind, bytes): (u8, &[u8]) = match row.get_ref(column)? {
                    ValueRef::Null => (0, &[]),
                    ValueRef::Integer(number) => {
                        sha.update([1]);
                        sha.update(number.to_be_bytes());
                        continue;
                    }
                    ValueRef::Real(number) => {
                        sha.update([2]);
                        sha.update(number.to_be_bytes());
                        continue;
                    }
                    ValueRef::Text(text) => (3, text),
                    ValueRef::Blob(bytes) => (4, bytes),
                };
                sha.update([kind]);
                sha.update((bytes.len() as u64).to_be_bytes());
                sha.update(bytes);
            }
        }
    }
    Ok(sha.finalize().into())
}

#[cfg(test)]
mod tests {
    use super::{TABLES, begin_anew};

    /// A table that nobody added here would be believed whatever it held.
    #[test]
    fn every_table_but_the_mark_is_compared() {
        let folder = tempfile::tempdir().expect("a folder");
        let file = begin_anew(&folder.path().join("record.sqlite")).expect("begun");
        let of = "SELECT name FROM sqlite_schema WHERE type = 'table' AND name NOT LIKE 'sqlite_%'";
        let mut query = file.prepare(of).expect("asked");
        let names = query.query_map([], |row| row.get(0)).expect("told");
        let mut names: Vec<String> = names.map(|name| name.expect("a name")).collect();
        names.retain(|name| name != "mark");
        assert_eq!(names, TABLES.map(|(name, _)| name));
    }
}
