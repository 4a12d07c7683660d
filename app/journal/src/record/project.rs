//! What each event makes of the record's tables, in step with the domain's state.
//!
//! Refuses: events about lifts that do not stand; they change nothing.
use domain::sheet::RungKind;
use domain::{Event, Fact, Hold, LiftNo, LiftSheet, MassUnit};
use rusqlite::{Connection, OptionalExtension as _, params};

type Done = rusqlite::Result<()>;

/// Applies one event.
pub(super) fn apply(tables: &Connection, seq: u64, event: &Event) -> Done {
    match &event.fact {
        Fact::FileTaken { .. } | Fact::PlanTaken { .. } | Fact::RotationPlanned { .. } => Ok(()),
        Fact::LiftBegun { no, sheet } => begin(tables, *no, sheet, event.at.0),
        Fact::SetDone {
            no,
            rung,
            reps,
            hold,
        } => {
            if enter(tables, seq, *no, "set")? {
                let moved_at = match hold {
                    Hold::Kept => None,
                    Hold::MovedAt(rep) => Some(*rep),
                };
                note_set(tables, seq, *no, *rung, *reps, moved_at, event.at.0)?;
            }
            Ok(())
        }
        Fact::RungSkipped { no, .. } => enter(tables, seq, *no, "skip").map(drop),
        Fact::LiftStopped { no } => enter(tables, seq, *no, "stop").map(drop),
        Fact::WentOn { no } => enter(tables, seq, *no, "go on").map(drop),
        Fact::EntryUndone { no } => undo(tables, *no),
    }
}

/// Takes everything out.
pub(super) fn clear(tables: &Connection) -> Done {
    for table in ["lifts", "rungs", "entries", "sets"] {
        tables.execute(&format!("DELETE FROM {table}"), [])?;
    }
    Ok(())
}

fn run(tables: &Connection, sql: &str, params: impl rusqlite::Params) -> rusqlite::Result<usize> {
    tables.prepare_cached(sql)?.execute(params)
}

fn begin(tables: &Connection, no: LiftNo, sheet: &LiftSheet, at_ms: i64) -> Done {
    forget(tables, no)?;
    run(
        tables,
        "INSERT INTO lifts VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8, ?9, ?10, ?11, 0)",
        params![
            no.0,
            sheet.lifter,
            unit(sheet.unit),
            sheet.lift,
            sheet.date.format("%Y-%m-%d").to_string(),
            sheet.rack,
            sheet.bar.name,
            sheet.pins.as_ref().map(|pins| pins.hole),
            sheet.asked.ng(),
            sheet.rungs.len(),
            at_ms,
        ],
    )?;
    for (n, rung) in (1_u32..).zip(&sheet.rungs) {
        let kind = match rung.kind {
            RungKind::WarmUp => "warm-up",
            RungKind::Work => "work",
        };
        run(
            tables,
            "INSERT INTO rungs VALUES (?1, ?2, ?3, ?4, ?5)",
            params![no.0, n, kind, rung.load.ng(), rung.reps],
        )?;
    }
    Ok(())
}

const fn unit(unit: MassUnit) -> &'static str {
    unit.word()
}

/// Notes an entry if the lift stands, and says whether it does.
fn enter(tables: &Connection, seq: u64, no: LiftNo, what: &str) -> rusqlite::Result<bool> {
    let entered = run(
        tables,
        "INSERT INTO entries SELECT ?1, no, ?3 FROM lifts WHERE no = ?2",
        params![seq, no.0, what],
    )?;
    settle(tables, no)?;
    Ok(entered == 1)
}

/// A rung that the sheet does not have leaves no set: its load is not known.
fn note_set(
    tables: &Connection,
    seq: u64,
    no: LiftNo,
    rung: u16,
    reps: u8,
    moved_at: Option<u8>,
    at_ms: i64,
) -> Done {
    run(
        tables,
        "INSERT INTO sets \
         SELECT ?1, no, lifter, lift, date, rack, rung, kind, load_ng, unit, reps, ?4, ?5, ?6 \
         FROM lifts JOIN rungs ON lift_no = no WHERE no = ?2 AND rung = ?3",
        params![seq, no.0, u32::from(rung) + 1, reps, moved_at, at_ms],
    )
    .map(drop)
}

/// Takes back the last entry of the lift, or, with none left, the lift itself.
fn undo(tables: &Connection, no: LiftNo) -> Done {
    let last: Option<u64> = tables
        .prepare_cached("SELECT max(seq) FROM entries WHERE lift_no = ?1")?
        .query_row([no.0], |row| row.get(0))
        .optional()?
        .flatten();
    let Some(last) = last else {
        return forget(tables, no);
    };
    run(tables, "DELETE FROM entries WHERE seq = ?1", [last])?;
    run(tables, "DELETE FROM sets WHERE seq = ?1", [last])?;
    settle(tables, no)
}

/// A lift is stopped when its last standing entry says so.
fn settle(tables: &Connection, no: LiftNo) -> Done {
    run(
        tables,
        "UPDATE lifts SET stopped = coalesce((SELECT what = 'stop' FROM entries \
         WHERE lift_no = ?1 ORDER BY seq DESC LIMIT 1), 0) WHERE no = ?1",
        [no.0],
    )
    .map(drop)
}

fn forget(tables: &Connection, no: LiftNo) -> Done {
    run(tables, "DELETE FROM lifts WHERE no = ?1", [no.0])?;
    run(tables, "DELETE FROM rungs WHERE lift_no = ?1", [no.0])?;
    run(tables, "DELETE FROM entries WHERE lift_no = ?1", [no.0])?;
    run(tables, "DELETE FROM sets WHERE lift_no = ?1", [no.0]).map(drop)
}
