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

use domain::prescription::LoadWish;
use domain::{Event, Fact, Hold, LiftNo, Moment, Prescription, Rung, State};
use journal::{Journal, Record};
use rusqlite::{Connection, OpenFlags, params};
use std::fmt::Display;
use std::fs;
use std::io::Write as _;
use std::path::Path;
use std::process::Command;

/// Sets of a lift.
const SETS: u64 = 5;
const LIFTERS: u64 = 200;
/// Appends that are timed.
const TIMED: u64 = 200;

fn main() {
    let mut args = std::env::args().skip(1);
    let dir = args.next().expect("give a folder");
    if dir == "start" {
        let path = args.next().expect("a journal");
        return started(Path::new(&path));
    }
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

/// Microseconds that the processor spends on `work`, whatever else the machine does (proc(5)).
fn worked<T>(work: impl FnOnce() -> T) -> (T, u128) {
    let spent = || {
        let text = fs::read_to_string("/proc/thread-self/schedstat").unwrap_or_default();
        let ns = text.split_whitespace().next();
        ns.and_then(|text| text.parse::<u128>().ok()).unwrap_or(0)
    };
    let before = spent();
    let done = work();
    (done, (spent() - before) / 1_000)
}

/// The lifts that a lifter does in turn, with the reps of each.
const LIFTS: [(&str, u8); 4] = [
    ("rack pull", 5),
    ("halting deadlift", 5),
    ("barbell shrug", 5),
    ("power clean", 3),
];

/// The events of one lift: planned, begun, its sets, what is due after it.
fn lift(no: u64) -> Vec<Event> {
    let begun = invented::facts()
        .into_iter()
        .find(|fact| matches!(fact, Fact::LiftBegun { .. }));
    let Some(Fact::LiftBegun { mut sheet, .. }) = begun else {
        panic!("a lift is among the facts");
    };
    let own = LiftNo(u32::try_from(no).expect("few"));
    let time = no / LIFTERS;
    let (name, reps) = LIFTS[usize::try_from(time).expect("few") % LIFTS.len()];
    sheet.lifter = format!("lifter {}", no % LIFTERS);
    sheet.lift = name.to_owned();
    // Twice a week two lifts each, so that a thousand times are ten years.
    sheet.date = sheet.date + chrono::Days::new(time / 2 * 7 / 2);
    let work = sheet.rungs.pop().expect("a work set");
    while u64::try_from(sheet.rungs.len()).expect("few") < SETS {
        sheet.rungs.push(Rung {
            reps,
            ..work.clone()
        });
    }
    let row = Prescription {
        bar: None,
        date: sheet.date,
        lifter: sheet.lifter.clone(),
        lift: sheet.lift.clone(),
        first: domain::prescription::SetGroup::straight(4, reps, LoadWish::Mass(work.load)),
        then: Vec::new(),
        track: None,
        ladder: None,
        note: String::new(),
    };
    let name = "plan.csv".to_owned();
    let planned = Fact::PlanTaken {
        name,
        rows: vec![row],
    };
    let set = |rung: u64| Fact::SetDone {
        no: own,
        rung: u16::try_from(rung).expect("few"),
        reps: 5,
        hold: Hold::Kept,
    };
    let mut facts = vec![planned, Fact::LiftBegun { no: own, sheet }];
    facts.extend((0..SETS).map(set));
    facts.push(invented_next::raised(own));
    let at = Moment(1_772_442_000_000 + i64::try_from(no * 1_500_000).expect("an hour"));
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
            done += SETS;
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
    let entry = lift(no).swap_remove(2);
    let ours = median((0..TIMED).map(|_| {
        let (now, took) = timed(|| journal.append(last, std::slice::from_ref(&entry)));
        last = now.expect("appends");
        took
    }));
    tell("an append, us", ours);
    tell("a bare insert, us", bare(folder, &entry));
    let size = fs::metadata(&path).expect("a file").len();
    tell("the journal, MB", size / 1_000_000);
    drop(journal);
    // Two starts, each in a process of its own, so that memory is theirs alone.
    start(&path, "start by replay");
    start(&path, "start from the checkpoint");
    let opened = Journal::open(&path).expect("opens");
    let checkpoint = folder.join(journal::CHECKPOINT_FILE);
    let size = fs::metadata(checkpoint).expect("a file").len();
    tell("the checkpoint, kB", size / 1_000);
    let mut record = Record::open(&folder.join(journal::RECORD_FILE)).expect("opens");
    for what in ["the record made", "the record made again"] {
        let make = || worked(|| record.rebuild(&opened).expect("rebuilds"));
        let ((_, work), took) = timed(make);
        tell(&format!("{what}, ms"), took / 1_000);
        tell("of which work, ms", work / 1_000);
    }
}

/// Has a process of its own start, and keep the state.
fn start(path: &Path, what: &str) {
    let own = std::env::current_exe().expect("a program");
    let mut child = Command::new(own);
    let told = child.arg("start").arg(path).output().expect("starts");
    let told = String::from_utf8(told.stdout).expect("text");
    for line in told.lines() {
        let (what_else, figure) = line.trim().rsplit_once(' ').expect("a figure");
        tell(&format!("{what}, {what_else}"), figure);
    }
}

/// What that process does.
fn started(path: &Path) {
    let before = resident();
    let (opened, took) = timed(|| Journal::open(path).expect("opens"));
    tell("opening alone, us", took);
    let ((reached, work), took) = timed(|| worked(|| opened.reached().expect("reads")));
    tell("the state, us", took);
    tell("of which work, us", work);
    tell("memory, kB", resident().saturating_sub(before));
    tell("lifts that stand whole", reached.state.lifts.len());
    let (last, state) = (reached.last, reached.state);
    let date = state.plan.keys().next_back().expect("a day").0;
    let (_, took) = worked(|| today(&state, date));
    tell("what is due for all, us", took);
    let (kept, took) = timed(|| opened.keep_state(&state, last));
    kept.expect("keeps");
    tell("keeping it, us", took);
}

/// What a day asks of the past, for all lifters.
fn today(state: &State, date: chrono::NaiveDate) -> usize {
    let of = |at: u64| {
        let name = format!("lifter {at}");
        let lifts = LIFTS.iter();
        lifts
            .map(|(lift, _)| {
                let past = domain::next::outings::outings(state, &name, lift, date);
                past.len() + usize::from(state.best(&name, lift).is_some())
            })
            .sum::<usize>()
    };
    (0..LIFTERS).map(of).sum()
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
