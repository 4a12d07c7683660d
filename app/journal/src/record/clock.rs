//! Times of day for the record: moments of events, told by the wall clock as it was set then.
use domain::Moment;
use rusqlite::{Connection, params};

type Done = rusqlite::Result<()>;

/// Beyond this nothing is put right: a moment there is no time of day, and a sum could overflow.
const CALENDAR_MS: i64 = 1 << 60;

/// What the wall clock said at a moment, as far as is known, milliseconds.
pub(super) fn told(tables: &Connection, at: Moment) -> rusqlite::Result<i64> {
    let offset_ms: i64 = tables
        .prepare_cached("SELECT offset_ms FROM clock")?
        .query_row([], |row| row.get(0))?;
    Ok(at.plus_ms(offset_ms).0)
}

/// A machine began; `None` for the offset when its wall clock was never set.
pub(super) fn anchor(tables: &Connection, at: Moment, offset_ms: Option<i64>) -> Done {
    match offset_ms {
        Some(offset_ms) => tables
            .prepare_cached("UPDATE clock SET offset_ms = ?1, guessed_ms = NULL")?
            .execute([offset_ms]),
        None => tables
            .prepare_cached("UPDATE clock SET guessed_ms = coalesce(guessed_ms, ?1)")?
            .execute([told(tables, at)?]),
    }
    .map(drop)
}

/// The wall clock was set. Times that were guessed before are put right.
pub(super) fn set(tables: &Connection, offset_ms: i64) -> Done {
    let (before_ms, guessed_ms): (i64, Option<i64>) = tables
        .prepare_cached("SELECT offset_ms, guessed_ms FROM clock")?
        .query_row([], |row| Ok((row.get(0)?, row.get(1)?)))?;
    let more_ms = offset_ms.saturating_sub(before_ms);
    if let Some(from_ms) = guessed_ms.filter(|_| more_ms.saturating_abs() < CALENDAR_MS) {
        for (table, column) in [("sets", "at_ms"), ("lifts", "begun_at_ms")] {
            let sql = format!(
                "UPDATE {table} SET {column} = {column} + ?1 WHERE {column} BETWEEN ?2 AND ?3"
            );
            let from_ms = from_ms.max(-CALENDAR_MS);
            tables.execute(&sql, params![more_ms, from_ms, CALENDAR_MS])?;
        }
    }
    tables
        .prepare_cached("UPDATE clock SET offset_ms = ?1, guessed_ms = NULL")?
        .execute([offset_ms])
        .map(drop)
}

/// As before the first event.
pub(super) fn clear(tables: &Connection) -> Done {
    tables
        .execute("UPDATE clock SET offset_ms = 0, guessed_ms = NULL", [])
        .map(drop)
}
