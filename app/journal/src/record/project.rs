//! What each event makes of the record's tables, in step with the domain's state.
//!
//! Refuses: events about lifts that do not stand; they change nothing.
use super::clock;
use super::elsewhere;
use super::load_of::columns;
use chrono::NaiveDate;
use domain::next::{Decided, Verdict};
use domain::settle::Settled;
use domain::sheet::RungKind;
use domain::{Event, Fact, Hold, LiftNo, LiftSheet, Mass, MassUnit, Prescription};
use rusqlite::{Connection, OptionalExtension as _, params};

type Done = rusqlite::Result<()>;

/// Applies one event.
pub(super) fn apply(tables: &Connection, seq: u64, event: &Event) -> Done {
    match &event.fact {
        Fact::FileTaken { .. }
        | Fact::RotationPlanned { .. }
        | Fact::BarSaid(_)
        | Fact::BarWordUndone { .. }
        | Fact::TurnDeferred { .. }
        | Fact::TurnPassed { .. }
        | Fact::TurnClaimed { .. }
        | Fact::RestLengthened { .. }
        | Fact::LifterLeft { .. }
        | Fact::LifterReturned { .. }
        | Fact::TurnUnsaid { .. }
        | Fact::ScreenShown(_)
        | Fact::CoachSaid(_) => Ok(()),
        // What was decided before falls, unless the coach has ruled.
        Fact::EffortSaid { no, .. } => run(
            tables,
            "DELETE FROM next_times WHERE lift_no = ?1 AND coach_load_ng IS NULL",
            [no.0],
        )
        .map(drop),
        Fact::PlanTaken { rows, .. } => take_plan(tables, rows),
        Fact::DayCleared { lifter, date } => clear_day(tables, *date, lifter),
        Fact::LiftBegun { no, sheet } => begin(tables, *no, sheet, clock::told(tables, event.at)?),
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
                let at_ms = clock::told(tables, event.at)?;
                note_set(tables, seq, *no, *rung, *reps, moved_at, at_ms)?;
            }
            Ok(())
        }
        Fact::RungSkipped { no, .. } => enter(tables, seq, *no, "skip").map(drop),
        Fact::LiftStopped { no } => enter(tables, seq, *no, "stop").map(drop),
        Fact::WentOn { no } => enter(tables, seq, *no, "go on").map(drop),
        Fact::EntryUndone { no } => undo(tables, *no),
        Fact::ClockAnchored { offset_ms, .. } => clock::anchor(tables, event.at, *offset_ms),
        Fact::ClockSet { offset_ms } => clock::set(tables, *offset_ms),
        Fact::LiftLapsed { no } => enter(tables, seq, *no, "left open").map(drop),
        Fact::LiftReopened { no, .. } => reopen(tables, *no),
        Fact::LiftRedated { no, date } => redate(tables, *no, *date),
        Fact::BegunElsewhere {
            no, sheet, begun, ..
        } => begin(tables, *no, sheet, begun.0),
        Fact::DoneElsewhere { no, done } => elsewhere::enter(tables, seq, *no, done),
        Fact::LoadSettled { no, settled } => {
            settle_load(tables, seq, *no, settled.rung, settled.load.ng())
        }
        Fact::LoadsFollowed { no, sets } => {
            let mut sets = sets.iter();
            sets.try_for_each(|settled| follow_load(tables, seq, *no, settled))
        }
        Fact::NextDecided { no, decided } => decide_next(tables, *no, decided),
        Fact::NextOverridden { no, load, note } => run(
            tables,
            "UPDATE next_times SET coach_load_ng = ?2, coach_note = ?3 WHERE lift_no = ?1",
            params![no.0, load.ng(), note],
        )
        .map(drop),
    }
}

/// Takes everything out.
pub(super) fn clear(tables: &Connection) -> Done {
    let tables_of = [
        "lifts",
        "rungs",
        "entries",
        "sets",
        "settled",
        "next_times",
        "planned",
    ];
    for table in tables_of {
        tables.execute(&format!("DELETE FROM {table}"), [])?;
    }
    clock::clear(tables)
}

fn run(tables: &Connection, sql: &str, params: impl rusqlite::Params) -> rusqlite::Result<usize> {
    tables.prepare_cached(sql)?.execute(params)
}

/// For each lifter and day that a plan names, it replaces what stood.
fn take_plan(tables: &Connection, rows: &[Prescription]) -> Done {
    for row in rows {
        clear_day(tables, row.date, &row.lifter)?;
    }
    for row in rows {
        let group = row.main();
        let (of, load, share) = columns(group.load);
        let sets: u32 = row.groups().map(|group| u32::from(group.sets)).sum();
        run(
            tables,
            "INSERT INTO planned (date, lifter, lift, sets, reps, load_of, load_ng, share, note) \
             VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8, ?9)",
            params![
                day(row.date),
                row.lifter,
                row.lift,
                sets,
                group.reps.planned(),
                of,
                load.map(Mass::ng),
                share,
                row.note
            ],
        )?;
    }
    Ok(())
}

fn clear_day(tables: &Connection, date: NaiveDate, lifter: &str) -> Done {
    let delete = "DELETE FROM planned WHERE date = ?1 AND lifter = ?2";
    run(tables, delete, params![day(date), lifter]).map(drop)
}

fn day(date: NaiveDate) -> String {
    date.format("%Y-%m-%d").to_string()
}

fn begin(tables: &Connection, no: LiftNo, sheet: &LiftSheet, at_ms: i64) -> Done {
    // What hangs on a lift stands only as long as the lift does.
    if run(tables, "DELETE FROM lifts WHERE no = ?1", [no.0])? > 0 {
        forget(tables, no)?;
    }
    run(
        tables,
        "INSERT INTO lifts VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8, ?9, ?10, ?11, 0, \
             EXISTS (SELECT 1 FROM planned WHERE date = ?5 AND lifter = ?2), ?12, 0)",
        params![
            no.0,
            sheet.lifter,
            unit(sheet.unit),
            sheet.lift,
            sheet.date.format("%Y-%m-%d").to_string(),
            sheet.rack,
            sheet.bar.name,
            sheet.pin_hole(0),
            sheet.asked.ng(),
            sheet.rungs.len(),
            at_ms,
            sheet.note,
        ],
    )?;
    for (at, rung) in sheet.rungs.iter().enumerate() {
        let kind = match rung.kind {
            RungKind::WarmUp => "warm-up",
            RungKind::Work => "work",
        };
        run(
            tables,
            "INSERT INTO rungs VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7)",
            params![
                no.0,
                at + 1,
                kind,
                rung.load.ng(),
                rung.reps,
                group_number(sheet, at),
                sheet
                    .group_of(at)
                    .is_some_and(|group| group.of_top.is_some()),
            ],
        )?;
    }
    Ok(())
}

/// The number of a rung's set group, from 1.
fn group_number(sheet: &LiftSheet, rung: usize) -> usize {
    let mut groups = sheet.groups.iter();
    groups
        .position(|group| group.rungs().contains(&rung))
        .map_or(0, |at| at + 1)
}

const fn unit(unit: MassUnit) -> &'static str {
    unit.word()
}

/// Notes an entry if the lift stands, and says whether it does.
pub(super) fn enter(
    tables: &Connection,
    seq: u64,
    no: LiftNo,
    what: &str,
) -> rusqlite::Result<bool> {
    let left_open = what == "left open";
    let stopped = left_open || what == "stop";
    let changes: Option<bool> = tables
        .prepare_cached(
            "SELECT stopped <> ?2 OR left_open <> ?3 \
                 OR EXISTS (SELECT 1 FROM next_times WHERE lift_no = no) \
             FROM lifts WHERE no = ?1",
        )?
        .query_row(params![no.0, stopped, left_open], |row| row.get(0))
        .optional()?;
    if changes.is_some() {
        let entry = "INSERT INTO entries VALUES (?1, ?2, ?3)";
        run(tables, entry, params![seq, no.0, what])?;
    }
    if changes == Some(true) {
        let stops = "UPDATE lifts SET stopped = ?2, left_open = ?3 WHERE no = ?1";
        run(tables, stops, params![no.0, stopped, left_open])?;
        forget_next(tables, no)?;
    }
    Ok(changes.is_some())
}

/// Notes a settled load, if the lift has come to that rung and only work sets are left.
fn settle_load(tables: &Connection, seq: u64, no: LiftNo, rung: u16, load_ng: i64) -> Done {
    let fits: bool = tables
        .prepare_cached(
            "SELECT stopped = 0 AND rungs > ?2 \
             AND ?2 = (SELECT count(*) FROM entries \
                 WHERE lift_no = no AND what IN ('set', 'skip')) \
             AND NOT EXISTS (SELECT 1 FROM rungs AS r \
                 WHERE r.lift_no = no AND r.rung > ?2 AND r.kind <> 'work') \
             FROM lifts WHERE no = ?1",
        )?
        .query_row([no.0, u32::from(rung)], |row| row.get(0))
        .optional()?
        .unwrap_or(false);
    if fits && enter(tables, seq, no, "settle")? {
        run(
            tables,
            "INSERT INTO settled SELECT ?1, ?2, rung, ?4 FROM rungs AS r \
             WHERE r.lift_no = ?2 AND r.rung >= ?3 AND r.of_top = 0 AND NOT EXISTS \
                 (SELECT 1 FROM rungs AS s WHERE s.lift_no = ?2 AND s.rung BETWEEN ?3 AND r.rung \
                  AND (s.of_top = 1 OR s.load_ng <> \
                      (SELECT load_ng FROM rungs WHERE lift_no = ?2 AND rung = ?3)))",
            params![seq, no.0, u32::from(rung) + 1, load_ng],
        )?;
    }
    Ok(())
}

/// Notes a load that follows from the top set, for its whole group.
fn follow_load(tables: &Connection, seq: u64, no: LiftNo, settled: &Settled) -> Done {
    run(
        tables,
        "INSERT INTO settled SELECT ?1, ?2, rung, ?4 FROM rungs AS r \
         WHERE r.lift_no = ?2 AND r.rung >= ?3 AND r.grp > 0 \
             AND r.grp = (SELECT grp FROM rungs WHERE lift_no = ?2 AND rung = ?3)",
        params![seq, no.0, u32::from(settled.rung) + 1, settled.load.ng()],
    )
    .map(drop)
}

/// Notes what the rules give, if the lift is over.
fn decide_next(tables: &Connection, no: LiftNo, decided: &Decided) -> Done {
    let decision = &decided.decision;
    let verdict = match decision.verdict {
        Verdict::Raise => "raise",
        Verdict::Repeat => "repeat",
        Verdict::Drop => "drop",
        Verdict::Reset => "reset",
        Verdict::Ease => "ease",
    };
    run(
        tables,
        "INSERT OR REPLACE INTO next_times SELECT no, ?2, ?3, ?4, ?5, NULL, NULL FROM lifts \
         WHERE no = ?1 AND (stopped = 1 OR rungs <= (SELECT count(*) FROM entries \
             WHERE lift_no = no AND what IN ('set', 'skip')))",
        params![
            no.0,
            verdict,
            decision.from.ng(),
            decision.load.ng(),
            decided.reason
        ],
    )
    .map(drop)
}

/// What was decided for the next time falls with any entry of its lift.
fn forget_next(tables: &Connection, no: LiftNo) -> Done {
    run(tables, "DELETE FROM next_times WHERE lift_no = ?1", [no.0]).map(drop)
}

/// A rung that the sheet does not have leaves no set: its load is not known.
pub(super) fn note_set(
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
         SELECT ?1, no, lifter, lift, date, rack, rung, kind, \
             CASE kind WHEN 'work' THEN coalesce((SELECT s.load_ng FROM settled AS s \
                 WHERE s.lift_no = no AND s.rung = rungs.rung \
                 ORDER BY s.seq DESC LIMIT 1), load_ng) ELSE load_ng END, \
             unit, reps, ?4, ?5, ?6 \
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
    // What followed from the entry falls with it.
    run(
        tables,
        "DELETE FROM settled WHERE lift_no = ?1 AND seq >= ?2",
        params![no.0, last],
    )?;
    forget_next(tables, no)?;
    settle(tables, no)
}

/// A lift that was left open goes on.
fn reopen(tables: &Connection, no: LiftNo) -> Done {
    let reopened = run(
        tables,
        "DELETE FROM entries WHERE what = 'left open' AND seq = \
         (SELECT max(seq) FROM entries WHERE lift_no = ?1)",
        [no.0],
    )?;
    if reopened == 0 {
        return Ok(());
    }
    forget_next(tables, no)?;
    settle(tables, no)
}

fn redate(tables: &Connection, no: LiftNo, date: NaiveDate) -> Done {
    let date = day(date);
    for sql in [
        "UPDATE lifts SET date = ?2 WHERE no = ?1",
        "UPDATE sets SET date = ?2 WHERE lift_no = ?1",
    ] {
        run(tables, sql, params![no.0, date])?;
    }
    Ok(())
}

/// A lift is stopped when its last standing entry says so, by somebody or because it was left open.
fn settle(tables: &Connection, no: LiftNo) -> Done {
    run(
        tables,
        "WITH last AS (SELECT what FROM entries WHERE lift_no = ?1 ORDER BY seq DESC LIMIT 1), \
             now AS (SELECT coalesce((SELECT what IN ('stop', 'left open') FROM last), 0) AS s, \
                 coalesce((SELECT what = 'left open' FROM last), 0) AS l) \
         UPDATE lifts SET (stopped, left_open) = (SELECT s, l FROM now) \
         WHERE no = ?1 AND (stopped, left_open) IS NOT (SELECT s, l FROM now)",
        [no.0],
    )
    .map(drop)
}

fn forget(tables: &Connection, no: LiftNo) -> Done {
    run(tables, "DELETE FROM lifts WHERE no = ?1", [no.0])?;
    run(tables, "DELETE FROM rungs WHERE lift_no = ?1", [no.0])?;
    run(tables, "DELETE FROM entries WHERE lift_no = ?1", [no.0])?;
    run(tables, "DELETE FROM settled WHERE lift_no = ?1", [no.0])?;
    forget_next(tables, no)?;
    run(tables, "DELETE FROM sets WHERE lift_no = ?1", [no.0]).map(drop)
}
