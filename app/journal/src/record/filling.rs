//! An empty record is filled without the indexes that only readers need.
use rusqlite::Connection;

type Done = rusqlite::Result<()>;

/// Indexes that only readers need: an empty record is filled without them, and then in order.
const FOR_READERS: [(&str, &str); 2] = [
    ("sets_by_session", "sets (date DESC, lifter, lift_no, seq)"),
    ("sets_by_lifter", "sets (lifter, lift, date)"),
];

/// Memory for pages while the record is filled, KiB, and otherwise, which is what SQLite has by
/// itself: with less than the working set, pages go to the disk and come back again and again.
const CACHE_FILLING_KIB: i64 = 32_768;
const CACHE_KIB: i64 = 2_000;

/// Takes away what slows the filling of an empty record.
pub(super) fn begin_filling(tables: &Connection) -> Done {
    tables.pragma_update(None, "cache_size", -CACHE_FILLING_KIB)?;
    for (name, _) in FOR_READERS {
        tables.execute(&format!("DROP INDEX IF EXISTS {name}"), [])?;
    }
    Ok(())
}

/// Gives readers their indexes again.
pub(super) fn end_filling(tables: &Connection) -> Done {
    for (name, on) in FOR_READERS {
        tables.execute(&format!("CREATE INDEX {name} ON {on}"), [])?;
    }
    tables.pragma_update(None, "cache_size", -CACHE_KIB)
}
