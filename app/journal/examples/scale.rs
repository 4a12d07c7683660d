//! What a journal costs with so many sets of 200 lifters: an append beside a bare insert, the start,
//! the memory, the record's rebuild.
//!
//! ```text
//! cargo run --release -p journal --example scale -- DIR 1000 1000000
//! ```
#[allow(dead_code, reason = "one of many")]
#[path = "../tests/journal/invented.rs"]
mod invented;
#[allow(dead_code, reason = "one of many")]
#[path = "../tests/journal/invented_days.rs"]
mod invented_days;
#[allow(dead_code, reason = "one of many")]
#[path = "../tests/journal/invented_next.rs"]
mod invented_next;

#[allow(dead_code, reason = "one of many")]
#[path = "../tests/journal/invented_turns.rs"]
mod invented_turns;

use domain::{Event, Fact, Hold, LiftNo, Moment, State};
use journal::{Journal, Record};
use rusqlite::{Connection, OpenFlags, params};
use std::fmt::Display;
use std::fs;
use std::io::Write as _;
use std::path::Path;

/// Sets of a lift.
const SETS: u64 = 5;
const LIFTERS: u64 = 200;
/// Appends that are timed.
const TIMED: u64 = 200;

fn main() {
    let mut args = std::env::args().skip(1);
    let dir = args.next().expect("give a folder");
    for sets in args {
        let sets: u64 = sets.parse().expect("a number of sets");
        let folder = Path::new(&dir).join(format!("scale-{sets}"));
        fs::create_dir_all(&folder).expect("a folder");
        measure(&folder, sets);
        fs::remove_dir_all(&folder).expect("removes");
    }
}

fn tell(what: &str, figure: impl Display) {
    let mut out = std::io::stdout();
    writeln!(out, "{what:>34} {figure}").expect("somebody listens");
}

/// Microseconds of `work`.
fn timed<T>(work: impl FnOnce() -> T) -> (T, u128) {
    #[allow(clippy::disallowed_methods, reason = "an example that measures")]
    let start = std::time::Instant::now();
    let done = work();
    (done, start.elapsed().as_micros())
}

/// The events of one lift: begun, and its sets.
fn lift(no: u64) -> Vec<Event> {
    let begun = invented::facts()
        .into_iter()
        .find(|fact| matches!(fact, Fact::LiftBegun { .. }));
    let Some(Fact::LiftBegun { mut sheet, .. }) = begun else {
        panic!("a lift is among the facts");
    };
    let own = LiftNo(u32::try_from(no).expect("few"));
    sheet.lifter = format!("lifter {}", no % LIFTERS);
    sheet.date = sheet.date + chrono::Days::new(no / LIFTERS);
    let rungs = u64::try_from(sheet.rungs.len()).expect("few");
    let set = |rung: u64| Fact::SetDone {
        no: own,
        rung: u16::try_from(rung).expect("few"),
        reps: 5,
        hold: Hold::Kept,
    };
    let mut facts = vec![Fact::LiftBegun { no: own, sheet }];
    facts.extend((0..SETS.min(rungs)).map(set));
    let at = Moment(i64::try_from(no * 600_000).expect("an hour"));
    facts.into_iter().map(|fact| Event { at, fact }).collect()
}

/// Kilobytes in memory (proc(5)).
fn resident() -> u64 {
    let status = fs::read_to_string("/proc/self/status").unwrap_or_default();
    let line = status.lines().find(|line| line.starts_with("VmRSS:"));
    let number = line.and_then(|line| line.split_whitespace().nth(1));
    number.and_then(|text| text.parse().ok()).unwrap_or(0)
}

fn measure(folder: &Path, sets: u64) {
    let path = folder.join(journal::JOURNAL_FILE);
    let mut journal = Journal::open(&path).expect("opens");
    let (mut last, mut no, mut done) = (0, 0, 0);
    while done < sets {
        let mut portion = Vec::new();
        for _ in 0..200 {
            no += 1;
            let events = lift(no);
            done += events.len() as u64 - 1;
            portion.extend(events);
            if done >= sets {
                break;
            }
        }
        last = journal.append(last, &portion).expect("appends");
    }
    journal.rest().expect("rests");
    tell("sets", done);
    tell("events", last);
    let entry = lift(no + 1).swap_remove(1);
    let ours = median((0..TIMED).map(|_| {
        let (now, took) = timed(|| journal.append(last, std::slice::from_ref(&entry)));
        last = now.expect("appends");
        took
    }));
    tell("an append, us", ours);
    tell("a bare insert, us", bare(folder, &entry));
    drop(journal);
    let before = resident();
    let ((opened, state), took) = timed(|| {
        let journal = Journal::open(&path).expect("opens");
        let mut state = State::default();
        let each = journal.each_after(0, |_, event| {
            state.apply(&event);
            Ok::<_, journal::JournalError>(())
        });
        each.expect("reads");
        (journal, state)
    });
    tell("start by replay, ms", took / 1_000);
    tell("of which memory, kB", resident().saturating_sub(before));
    tell("lifts that stand", state.lifts.len());
    drop(state);
    let (_, took) = timed(|| drop(Journal::open(&path).expect("opens")));
    tell("opening alone, us", took);
    let mut record = Record::open(&folder.join(journal::RECORD_FILE)).expect("opens");
    let (_, took) = timed(|| record.rebuild(&opened).expect("rebuilds"));
    tell("the record made, ms", took / 1_000);
    let (_, took) = timed(|| record.rebuild(&opened).expect("rebuilds"));
    tell("the record made again, ms", took / 1_000);
}

/// An insert of the same bytes with the same settings and nothing else.
fn bare(folder: &Path, entry: &Event) -> u128 {
    let flags = OpenFlags::SQLITE_OPEN_READ_WRITE | OpenFlags::SQLITE_OPEN_CREATE;
    let path = folder.join("bare.sqlite");
    let mut file = Connection::open_with_flags(path, flags).expect("opens");
    file.execute_batch(
        "PRAGMA journal_mode = WAL; PRAGMA synchronous = FULL; PRAGMA wal_autocheckpoint = 0; \
         CREATE TABLE events (seq INTEGER PRIMARY KEY AUTOINCREMENT, at_ms INTEGER, \
         version INTEGER, kind TEXT, body TEXT, hash BLOB) STRICT; \
         PRAGMA wal_checkpoint(TRUNCATE);",
    )
    .expect("makes");
    let written = journal::wire::encode(&entry.fact);
    median((0..TIMED).map(|_| {
        timed(|| {
            let insert = file.transaction().expect("begins");
            insert
                .prepare_cached(
                    "INSERT INTO events (at_ms, version, kind, body, hash) \
                     VALUES (?1, ?2, ?3, ?4, ?5)",
                )
                .and_then(|mut ask| {
                    let kind = written.kind;
                    ask.execute(params![1, written.version, kind, written.body, [7_u8; 32]])
                })
                .expect("inserts");
            insert.commit().expect("commits");
        })
        .1
    }))
}

fn median(taken: impl Iterator<Item = u128>) -> u128 {
    let mut taken: Vec<_> = taken.collect();
    taken.sort_unstable();
    taken[taken.len() / 2]
}
