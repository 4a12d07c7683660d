//! The record says what stands, however it came to be.
use crate::invented;
use domain::{Event, Fact, Hold, LiftNo, LiftSheet, MassUnit, Moment};
use journal::{Followed, Journal, Record, RecordError, RecordReader, SetRow};
use rusqlite::{Connection, OpenFlags, types::Value};
use std::collections::BTreeMap;
use std::fs;
use std::ops::ControlFlow;
use std::path::{Path, PathBuf};
use tempfile::TempDir;

pub(crate) struct Place {
    _folder: TempDir,
    pub(crate) record: PathBuf,
    pub(crate) journal: Journal,
}

pub(crate) fn place(events: &[Event]) -> Place {
    let folder = tempfile::tempdir().expect("a folder");
    let mut journal = Journal::open(&folder.path().join("journal.sqlite")).expect("opens");
    journal.append(0, events).expect("appends");
    Place {
        record: folder.path().join("record.sqlite"),
        journal,
        _folder: folder,
    }
}

fn follow(place: &Place) -> Followed {
    let mut record = Record::open(&place.record).expect("opens");
    record.follow(&place.journal).expect("follows")
}

pub(crate) fn sets(path: &Path) -> Vec<SetRow> {
    let reader = RecordReader::open(path).expect("opens").expect("is there");
    let mut sets = Vec::new();
    reader
        .each_set(|set| {
            sets.push(set);
            ControlFlow::Continue(())
        })
        .expect("reads");
    sets
}

/// Everything in the file, table by table.
pub(crate) fn all(path: &Path) -> BTreeMap<&'static str, Vec<Vec<Value>>> {
    let file = Connection::open_with_flags(path, OpenFlags::default()).expect("opens");
    let tables = [
        ("mark", "id"),
        ("clock", "id"),
        ("lifts", "no"),
        ("rungs", "lift_no, rung"),
        ("entries", "seq"),
        ("sets", "seq"),
        ("settled", "seq"),
        ("next_times", "lift_no"),
    ];
    let rows = |(table, order): (&'static str, &str)| {
        let mut query = file
            .prepare(&format!("SELECT * FROM {table} ORDER BY {order}"))
            .expect("a table");
        let columns = query.column_count();
        let rows = query
            .query_map([], |row| (0..columns).map(|n| row.get(n)).collect())
            .and_then(Iterator::collect)
            .expect("reads");
        (table, rows)
    };
    tables.into_iter().map(rows).collect()
}

#[test]
fn a_session_lies_there_flat() {
    let place = place(&invented::events()[..5]);
    let followed = follow(&place);
    assert_eq!(
        followed,
        Followed {
            upto: 5,
            applied: 5,
            rebuilt: true
        }
    );
    insta::assert_debug_snapshot!(sets(&place.record));
    insta::assert_debug_snapshot!(all(&place.record)["lifts"]);
    assert_eq!(follow(&place).applied, 0);
    assert!(!follow(&place).rebuilt);
}

#[test]
fn undoing_takes_back_the_last_entry_that_stands_and_at_last_the_lift() {
    let mut place = place(&invented::events()[..9]);
    // Two sets, going on, a skip and a stop; the stop is already taken back.
    let undo = Event {
        at: Moment(0),
        fact: Fact::EntryUndone { no: LiftNo(1) },
    };
    let mut seen = Vec::new();
    for last in 9..=14 {
        follow(&place);
        let all = all(&place.record);
        seen.push((all["lifts"].len(), all["entries"].len(), all["sets"].len()));
        place
            .journal
            .append(last, std::slice::from_ref(&undo))
            .expect("appends");
    }
    // Lifts, entries, sets: skip goes, going on goes, two sets go, the lift goes.
    let expected = [
        (1, 4, 2),
        (1, 3, 2),
        (1, 2, 2),
        (1, 1, 1),
        (1, 0, 0),
        (0, 0, 0),
    ];
    assert_eq!(seen, expected);
}

#[test]
fn a_record_that_does_not_belong_to_the_journal_is_made_again() {
    let long = place(&invented::events());
    follow(&long);
    // Ahead of the journal.
    let short = place(&invented::events()[..4]);
    fs::copy(&long.record, &short.record).expect("copies");
    let followed = follow(&short);
    assert!(followed.rebuilt);
    assert_eq!((followed.upto, sets(&short.record).len()), (4, 1));
    // As long, but another one.
    let mut events = invented::events();
    events[3].at = Moment(5);
    let other = place(&events);
    fs::copy(&long.record, &other.record).expect("copies");
    assert!(follow(&other).rebuilt);
    assert_eq!(sets(&other.record)[0].at, Moment(5));
}

#[test]
fn a_missing_or_damaged_record_is_made_again() {
    let place = place(&invented::events());
    follow(&place);
    let sound = all(&place.record);
    let bytes = fs::read(&place.record).expect("reads");
    let raw = |sql: &str| {
        Connection::open_with_flags(&place.record, OpenFlags::default())
            .and_then(|file| file.execute_batch(sql))
            .expect(sql);
    };
    let damage: [(&str, &dyn Fn()); 7] = [
        ("deleted", &|| {
            fs::remove_file(&place.record).expect("there");
        }),
        ("text", &|| {
            fs::write(&place.record, "no record\n".repeat(900)).expect("writes");
        }),
        ("emptied", &|| fs::write(&place.record, "").expect("writes")),
        ("cut short", &|| {
            fs::write(&place.record, &bytes[..5_000]).expect("writes");
        }),
        ("no mark", &|| raw("DELETE FROM mark")),
        ("no sets", &|| {
            raw("DROP TABLE sets; UPDATE mark SET upto = 2");
        }),
        ("another layout", &|| raw("PRAGMA user_version = 99")),
    ];
    for (how, damage) in damage {
        damage();
        let followed = follow(&place);
        assert!(followed.rebuilt, "{how}");
        assert_eq!(all(&place.record), sound, "{how}");
    }
}

#[test]
fn damage_that_shows_while_open_is_made_good() {
    let mut place = place(&invented::events()[..4]);
    let mut record = Record::open(&place.record).expect("opens");
    record.follow(&place.journal).expect("follows");
    let raw = Connection::open_with_flags(&place.record, OpenFlags::default()).expect("opens");
    raw.execute_batch("DROP TABLE entries").expect("drops");
    place
        .journal
        .append(4, &invented::events()[4..])
        .expect("appends");
    let followed = record.follow(&place.journal).expect("makes it again");
    assert!(followed.rebuilt);
    assert_eq!(followed.upto, 10);
    assert_eq!(sets(&place.record).len(), 2);
}

#[test]
fn another_programs_database_is_left_alone() {
    let place = place(&[]);
    Connection::open_with_flags(&place.record, OpenFlags::default())
        .and_then(|file| file.execute_batch("CREATE TABLE theirs (a)"))
        .expect("makes");
    let before = fs::read(&place.record).expect("reads");
    assert!(matches!(
        Record::open(&place.record),
        Err(RecordError::NotOurs { .. })
    ));
    assert!(matches!(
        RecordReader::open(&place.record),
        Err(RecordError::NotOurs { .. })
    ));
    assert_eq!(fs::read(&place.record).expect("reads"), before);
}

#[test]
fn a_broken_journal_leaves_the_record_as_it_was() {
    let mut place = place(&invented::events()[..4]);
    follow(&place);
    let before = all(&place.record);
    place
        .journal
        .append(4, &invented::events()[4..])
        .expect("appends");
    Connection::open_with_flags(place.journal.path(), OpenFlags::default())
        .and_then(|file| {
            file.execute_batch(
                "DROP TRIGGER events_never_change; UPDATE events SET at_ms = 1 WHERE seq = 9",
            )
        })
        .expect("tampers");
    let mut record = Record::open(&place.record).expect("opens");
    let error = record.follow(&place.journal).expect_err("broken at 9");
    assert!(matches!(error, RecordError::Journal(_)), "{error}");
    assert_eq!(all(&place.record), before);
}

#[test]
fn a_reader_sees_one_moment_and_days_latest_first() {
    let mut place = place(&[]);
    assert!(
        RecordReader::open(&place.record)
            .expect("none yet")
            .is_none()
    );
    let mut last = 0;
    for day in [3, 1, 2] {
        let date = chrono::NaiveDate::from_ymd_opt(2026, 3, day).expect("March");
        let sheet = Box::new(LiftSheet {
            date,
            ..invented::from_pins()
        });
        let no = LiftNo(day);
        let set = Fact::SetDone {
            no,
            rung: 0,
            reps: 5,
            hold: Hold::Kept,
        };
        let facts = [Fact::LiftBegun { no, sheet }, set];
        let events = facts.map(|fact| Event {
            at: Moment(0),
            fact,
        });
        last = place.journal.append(last, &events).expect("appends");
    }
    follow(&place);
    let reader = RecordReader::open(&place.record)
        .expect("opens")
        .expect("is there");
    let days = |before, most| reader.days(before, most).expect("reads");
    assert_eq!(days(None, 9), ["2026-03-03", "2026-03-02", "2026-03-01"]);
    assert_eq!(days(Some("2026-03-03"), 1), ["2026-03-02"]);
    let undo = Fact::EntryUndone { no: LiftNo(3) };
    place
        .journal
        .append(last, &[invented::at(0, undo)])
        .expect("appends");
    follow(&place);
    assert_eq!(days(None, 9).len(), 3, "as it was when opened");
    let mut seen = Vec::new();
    reader
        .each_set_of_days("2026-03-02", "2026-03-03", |set| {
            assert_eq!(set.unit, MassUnit::Kg);
            seen.push(set.date);
            ControlFlow::Continue(())
        })
        .expect("reads");
    assert_eq!(seen, ["2026-03-03", "2026-03-02"]);
    assert_eq!(reader.upto().expect("reads"), 6);
    assert_eq!(sets(&place.record).len(), 2);
}
