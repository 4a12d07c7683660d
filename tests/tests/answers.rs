//! The coach's answers in JSON (`next`, `split`, `single`, `meet`) and the JSON Schemas that they
//! obey.
//!
//! Refuses: a schema file that is stale; `cargo xtask renew` writes it anew.
use kiosk::cli::{Streams, main};
use kiosk::clock::BenchClock;
use kiosk::{Folder, Kiosk};
use serde_json::Value;
use std::ffi::OsString;
use std::path::Path;
use view::{Screen, Tap};

/// The demo gym's test day.
const MEET: &str = concat!(env!("CARGO_MANIFEST_DIR"), "/../demo-data/meet.toml");

/// Name of each answer, its schema, and a command line that gives it.
fn answers() -> Vec<(&'static str, String, Vec<&'static str>)> {
    let next = vec!["next", "--lifter", "Tevita", "--json"];
    let split = vec!["split", "--lifter", "Tevita", "--json"];
    let single = vec!["single", "495 lb", "5", "--lift", "rack pull", "--json"];
    let mut meet = vec!["meet", "--lifter", "Hamza", "--opener", "200 kg"];
    meet.extend(["--before", "8", "--json"]);
    vec![
        ("next", view::schema_of::<view::next_doc::NextDoc>(), next),
        (
            "next-all",
            view::schema_of::<view::AllDueDoc>(),
            vec!["next", "--json"],
        ),
        (
            "split",
            view::schema_of::<view::split_doc::SplitDoc>(),
            split,
        ),
        (
            "single",
            view::schema_of::<view::single_doc::SingleDoc>(),
            single,
        ),
        ("meet", view::schema_of::<view::meet::MeetDoc>(), meet),
        (
            "meet-day",
            view::schema_of::<view::meet::MeetDayDoc>(),
            vec!["meet", "--file", MEET, "--json"],
        ),
    ]
}

/// A folder in which Tevita did what the demo plan asks of a rack pull day.
fn lifted() -> tempfile::TempDir {
    let data = tempfile::tempdir().expect("a folder");
    let folder = Folder::open(Some(data.path())).expect("opens");
    let day = chrono::NaiveDate::from_ymd_opt(2026, 11, 25).expect("a day");
    let clock = BenchClock::at(day.and_hms_opt(18, 0, 0).expect("a time"));
    let mut kiosk = Kiosk::open(&folder, Box::new(clock)).expect("opens");
    kiosk.tap(&Tap::Lifter("Tevita".into()));
    for _ in 0..40 {
        if matches!(kiosk.frame().screen, Screen::End(_)) {
            break;
        }
        kiosk.tap(&Tap::Main);
    }
    data
}

fn said(data: &Path, words: &[&str]) -> String {
    let (mut out, mut err) = (Vec::new(), Vec::new());
    let mut args: Vec<OsString> = vec!["pinladder".into(), "--data".into(), data.into()];
    args.extend(words.iter().map(OsString::from));
    let mut streams = Streams {
        input: &mut std::io::empty(),
        out: &mut out,
        err: &mut err,
    };
    main(args, &mut streams);
    assert!(err.is_empty(), "{}", String::from_utf8_lossy(&err));
    String::from_utf8(out).expect("words are UTF-8")
}

#[test]
fn every_schema_is_up_to_date() {
    let mut stale = Vec::new();
    for (name, made, _) in answers() {
        let path = format!("app/view/schema/{name}.schema.json");
        let path = acceptance::top().join(path);
        if acceptance::renewing() {
            std::fs::write(&path, &made).expect("the schema is written");
        }
        if std::fs::read_to_string(&path).ok() != Some(made) {
            stale.push(name);
        }
    }
    assert!(stale.is_empty(), "stale: {stale:?}; run cargo xtask renew");
}

#[test]
fn every_answer_obeys_its_schema_and_another_s_does_not() {
    let data = lifted();
    let all = answers();
    let given: Vec<Value> = all
        .iter()
        .map(|(name, _, words)| {
            let text = said(data.path(), words);
            serde_json::from_str(&text).unwrap_or_else(|_| panic!("{name}: {text}"))
        })
        .collect();
    for (at, (name, schema, _)) in all.iter().enumerate() {
        let schema: Value = serde_json::from_str(schema).expect("the schema is JSON");
        let checker = jsonschema::validator_for(&schema).expect("the schema is a schema");
        for (other, answer) in given.iter().enumerate() {
            let faults = checker.iter_errors(answer).map(|fault| fault.to_string());
            let faults: Vec<String> = faults.collect();
            assert_eq!(faults.is_empty(), at == other, "{name}: {faults:?}");
        }
    }
}
