//! An empty record is filled without the indexes that only readers need.
use rusqlite::Connection;

type Done = rusqlite::Result<()>;

/// Indexes that only readers need: an empty record is filled without them, and then in order.
const FOR_READERS: [(&str, &str); 2] = [
    ("sets_by_session", "sets (date DESC, lifter, lift_no, seq)"),
    ("sets_by_lifter", "sets (lifter, lift, date)"),
];

/// Takes away what slows the filling of an empty record.
pub(super) fn begin_filling(tables: &Connection) -> Done {
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
    Ok(())
}
