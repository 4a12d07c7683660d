//! One journal of each released version is read for ever.
//!
//! `PINLADDER_RENEW=1` writes those of the version in hand; without it they are compared.
use crate::recording::sets;
use crate::wire_form::KINDS;
use crate::{groups, invented, invented_elsewhere};
use domain::state::State;
use domain::{Event, LiftNo, Moment};
use journal::{Journal, Record, verify, wire};
use rusqlite::{Connection, OpenFlags};
use serde::{Deserialize, Serialize};
use serde_json::value::RawValue;
use std::env;
use std::fs;
use std::path::{Path, PathBuf};

fn shelf() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("../../tests/journals")
}

/// One line of a .jsonl file. The body stays as it lies in the journal, byte by byte.
#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct Line {
    seq: u64,
    at_ms: i64,
    version: u32,
    kind: String,
    hash: String,
    body: Box<RawValue>,
}

fn lines(path: &Path) -> String {
    let file = Connection::open_with_flags(path, OpenFlags::SQLITE_OPEN_READ_ONLY).expect("opens");
    let mut query = file
        .prepare(
            "SELECT seq, at_ms, version, kind, lower(hex(hash)), body FROM events ORDER BY seq",
        )
        .expect("events");
    let rows = query.query_map([], |row| {
        let line = Line {
            seq: row.get(0)?,
            at_ms: row.get(1)?,
            version: row.get(2)?,
            kind: row.get(3)?,
            hash: row.get(4)?,
            body: RawValue::from_string(row.get(5)?).expect("JSON"),
        };
        Ok(serde_json::to_string(&line).expect("writes") + "\n")
    });
    rows.and_then(Iterator::collect).expect("reads")
}

/// This version's journal is the one on the shelf, or is put there. Then every journal there, as
/// file and as lines, still means what it meant.
#[test]
fn released_journals_are_written_alike_and_read_for_ever() {
    compare_or_renew();
    let mut read = 0;
    for entry in fs::read_dir(shelf()).expect("lists") {
        let path = entry.expect("an entry").path();
        if path
            .extension()
            .is_some_and(|extension| extension == "jsonl")
        {
            replay(&path);
            read += 1;
        }
    }
    assert!(read > 0, "no journal in {}", shelf().display());
}

fn compare_or_renew() {
    let folder = tempfile::tempdir().expect("a folder");
    let path = folder.path().join("journal.sqlite");
    let mut journal = Journal::open(&path).expect("opens");
    let mut events = invented::morning();
    let last = i64::try_from(events.len()).expect("few");
    let grouped = groups::facts(LiftNo(9));
    events.extend((last..).zip(grouped).map(|(n, fact)| invented::at(n, fact)));
    let last = i64::try_from(events.len()).expect("few");
    let elsewhere = invented_elsewhere::facts(LiftNo(12));
    events.extend(
        (last..)
            .zip(elsewhere)
            .map(|(n, fact)| invented::at(n, fact)),
    );
    journal.append(0, &events).expect("appends");
    drop(journal);
    let kinds = verify(&path).expect("sound").kinds;
    for kind in KINDS {
        assert!(kinds.contains_key(kind), "no {kind} in the morning");
    }
    let on_shelf = shelf().join(concat!("v", env!("CARGO_PKG_VERSION"), ".jsonl"));
    if env::var_os("PINLADDER_RENEW").is_some() {
        fs::write(&on_shelf, lines(&path)).expect("writes");
        fs::copy(&path, on_shelf.with_extension("sqlite")).expect("copies");
    }
    let shelved = fs::read_to_string(&on_shelf).expect("made with PINLADDER_RENEW=1");
    assert!(
        shelved == lines(&path),
        "the journal is written otherwise than in {}: a change of the wire form needs a new \
         version of it; before the first release, PINLADDER_RENEW=1 writes it anew",
        on_shelf.display()
    );
}

fn replay(listed: &Path) {
    let folder = tempfile::tempdir().expect("a folder");
    let path = folder.path().join("journal.sqlite");
    fs::copy(listed.with_extension("sqlite"), &path).expect("the file beside the lines");
    let journal = Journal::open(&path).expect("is brought up to date");
    let report = verify(&path).expect("sound");
    let events = journal.events_after(0).expect("reads");
    let text = fs::read_to_string(listed).expect("reads");
    assert_eq!(lines(&path), text, "file and lines hold the same");
    assert_eq!(text.lines().count(), events.len());
    for (line, (seq, event)) in text.lines().zip(&events) {
        let line: Line = serde_json::from_str(line).expect("a line");
        let fact = wire::decode(line.version, &line.kind, line.body.get()).expect("decodes");
        let at = Moment(line.at_ms);
        assert_eq!((line.seq, &Event { at, fact }), (*seq, event));
        // And is understood when written today.
        let again = wire::encode(&event.fact);
        let again = wire::decode(again.version, again.kind, &again.body);
        assert_eq!(again.as_ref(), Ok(&event.fact));
    }
    let state = State::replay(events.iter().map(|(_, event)| event));
    let record_path = folder.path().join("record.sqlite");
    let mut record = Record::open(&record_path).expect("opens");
    record.follow(&journal).expect("follows");
    let name = listed.file_stem().expect("a name").to_string_lossy();
    insta::assert_snapshot!(format!("{name}"), meaning(&report, &state, &record_path));
}

/// What the journal says, in words that do not change when a type gains a field.
fn meaning(report: &journal::Report, state: &State, record: &Path) -> String {
    let mut text = format!("{:?}\nseal {}\n", report.kinds, report.seal);
    for (name, file) in &state.files {
        text += &format!("file {name} {file:?}\n");
    }
    for ((date, lifter), rows) in &state.plan {
        for row in rows {
            text += &format!(
                "plan {date} {lifter}: {} {}x{} {:?}\n",
                row.lift, row.first.sets, row.first.reps.least, row.first.load
            );
        }
    }
    for run in state.lifts.values() {
        text += &format!(
            "lift {} {} {} {} at {}, stopped {}\n",
            run.no.0,
            run.sheet.lifter,
            run.sheet.lift,
            run.sheet.date,
            run.begun_at.0,
            run.is_stopped()
        );
        if let Some(next) = &run.next {
            let rules = next.decided.decision.load.exact(run.sheet.unit);
            let coach = next.ruled.as_ref();
            let coach = coach.map(|ruled| (ruled.load.exact(run.sheet.unit), &ruled.note));
            text += &format!(
                "next after {}: {rules} by the rules, coach {coach:?}\n",
                run.no.0
            );
        }
    }
    for set in sets(record) {
        text += &format!(
            "set {} of {}: rung {} {} {} {}, {} of {} reps, back moved {:?}, at {}\n",
            set.seq,
            set.lift_no,
            set.rung,
            set.kind,
            set.load.exact(set.unit),
            set.rack,
            set.reps,
            set.planned_reps,
            set.back_moved_at,
            set.at.0
        );
    }
    text
}
