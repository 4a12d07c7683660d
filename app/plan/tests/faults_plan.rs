//! Bad plans, each with every word that is told about it, and the good spellings of good ones.
use domain::prescription::LoadWish;
use domain::{Gym, Mass, MassUnit, Prescription};
use plan::{Fault, Source};
use std::fmt::Write as _;

fn gym() -> Gym {
    let demo = |name: &str| {
        let path = format!("{}/../../demo-data/{name}", env!("CARGO_MANIFEST_DIR"));
        std::fs::read(path).expect("the demo file is in the repository")
    };
    let (gym, lifters) = (demo("gym.toml"), demo("lifters.toml"));
    let source = |name, text| Source { name, text };
    plan::gym(source("gym.toml", &gym), source("lifters.toml", &lifters)).expect("a good gym")
}

fn take(text: &[u8]) -> Result<Vec<Prescription>, Vec<Fault>> {
    let source = Source {
        name: "week.csv",
        text,
    };
    plan::coach_plan(source, &gym())
}

fn told(text: &[u8]) -> String {
    let faults = match take(text) {
        Ok(rows) => {
            return rows
                .iter()
                .map(|row| format!("  taken: {row:?}\n"))
                .collect();
        }
        Err(faults) => faults,
    };
    let lines: Vec<_> = faults.iter().map(|fault| format!("  {fault}\n")).collect();
    lines.concat()
}

const HEADER: &str = "date,lifter,lift,sets,reps,load,ladder,rest,note";
const ROW: &str = "2026-12-01,Tevita,rack pull,1,5,445 lb,5-3-2-1,3 min,go";

/// One cell of a good row changed, and what is told about it.
#[test]
fn bad_cells() {
    let cells = [
        ("2026-12-01", "01/12/2026"),
        ("2026-12-01", "01-12-2026"),
        ("2026-12-01", "31.11.2026"),
        ("2026-12-01", "1.12.26"),
        ("2026-12-01", "46357"),
        ("2026-12-01", "1 December"),
        ("2026-12-01", "1926-12-01"),
        ("2026-12-01", ""),
        ("Tevita", "Tevitta"),
        ("Tevita", "Zoe"),
        ("rack pull", "rak pull"),
        ("rack pull", "bench press"),
        (",1,", ",0,"),
        (",1,", ",3x5,"),
        (",1,", ",21,"),
        (",5,", ",51,"),
        (",5,", ",5.5,"),
        ("445 lb", "445"),
        ("445 lb", "445 pounds"),
        ("445 lb", "heavy"),
        ("445 lb", "-20 kg"),
        ("445 lb", "10 kg"),
        ("445 lb", "30 lb"),
        ("445 lb", "4450 lb"),
        ("445 lb", "445,5 lb"),
        ("445 lb", "\"1,250.5 kg\""),
        ("445 lb", "0.00000000000001 kg"),
        ("445 lb", "0.8"),
        ("445 lb", "80,5%"),
        ("445 lb", "800 %"),
        ("445 lb", "2 %"),
        ("rack pull,1,5,445 lb", "power snatch,6,2,80 %"),
        ("5-3-2-1", "5 3 2 1 1 1 1"),
        ("3 min", "3"),
        ("3 min", "3:75"),
        ("3 min", "2 hours"),
        ("3 min", "45 min"),
        (",go", ",\"go"),
        (",go", ",\"go\" now"),
        (",go", ",go,home"),
    ];
    let mut out = String::new();
    for (from, to) in cells {
        assert!(ROW.contains(from), "{from:?} is in the good row");
        let bad = format!("{HEADER}\n{}\n", ROW.replacen(from, to, 1));
        write!(out, "{from:?} -> {to:?}\n{}\n", told(bad.as_bytes())).expect("text grows");
    }
    insta::assert_snapshot!(out);
}

#[test]
fn bad_plans() {
    let twice = format!("{HEADER}\n{ROW}\n\n{}\n", ROW.replace("Tevita", "TEVITA"));
    let long = format!("{HEADER}\n{ROW}{}\n", "o".repeat(200));
    let wide = format!("{HEADER}\n{ROW}{}\n", ",".repeat(80));
    let many = format!(
        "date,lifter,lift,sets,reps,load\n{}",
        ",,,,,x\n".repeat(20_001)
    );
    let plans: &[(&str, &[u8])] = &[
        ("nothing", b""),
        ("empty rows", b"\n\n,,,\n"),
        ("a header alone", HEADER.as_bytes()),
        ("no header", ROW.as_bytes()),
        ("unknown columns", b"date,lifter,lift,sets,reps,lode,tempo\n2026-12-01,Tevita,rack pull,1,5,445 lb,slow"),
        ("a column twice", b"date,lifter,lift,sets,reps,load,Weight\n2026-12-01,Tevita,rack pull,1,5,445 lb,445 lb"),
        ("missing columns", b"date,lifter,lift\n2026-12-01,Tevita,rack pull"),
        ("the same twice", twice.as_bytes()),
        ("a long note", long.as_bytes()),
        ("a wide row", wide.as_bytes()),
        ("every cell", b"date,lifter,lift,sets,reps,load,ladder,rest\n1/2/2026,A,B,C,D,E,F,G\n"),
        ("decimal comma unquoted", b"date,lifter,lift,sets,reps,load\n2026-12-01,Hamza,rack pull,1,5,102,5 kg"),
        ("spelt otherwise", b"Day;Name;Exercise;Set;Rep;Weight\n2026-12-01;Tevita;rack pull;1;5;445"),
        ("xlsx", b"PK\x03\x04\x14\x00"),
        ("xls", b"\xd0\xcf\x11\xe0\xa1\xb1"),
        ("utf-16", b"\xff\xfed\x00a\x00"),
        ("utf-16 without a mark", b"d\x00a\x00t\x00e\x00"),
        ("windows-1252", b"date,lifter\n2026-12-01,\x8eeljka"),
    ];
    let mut out = String::new();
    for (name, bad) in plans {
        write!(out, "{name}\n{}\n", told(bad)).expect("text grows");
    }
    insta::assert_snapshot!(out);
    let told = take(many.as_bytes()).expect_err("too many rows");
    assert_eq!((told.len(), plan::count(&told)), (52, 120_001));
    assert_eq!(
        told[50].to_string(),
        "week.csv, row 20002: read more rows than the most, 20000; split the plan"
    );
    let big = vec![b'x'; (4 << 20) + 1];
    let told = take(&big).expect_err("too large");
    assert_eq!(
        told[0].read.to_string(),
        "more bytes than the most, 4194304"
    );
}

fn one(text: &[u8]) -> Prescription {
    let rows = take(text).unwrap_or_else(|faults| panic!("{}", faults[0]));
    let [row] = rows.as_slice() else {
        panic!("{} rows", rows.len());
    };
    row.clone()
}

/// The same prescription, however a spreadsheet wrote it.
#[test]
fn good_spellings() {
    let good = one(format!("{HEADER}\n{ROW}\n").as_bytes());
    assert_eq!(good.date.to_string(), "2026-12-01");
    assert_eq!(
        good.first.load,
        LoadWish::Mass(Mass::of(MassUnit::Lb, 445_000))
    );
    assert_eq!(
        (good.first.sets, good.first.reps.least, good.first.rest_s),
        (1, 5, Some(180))
    );
    assert_eq!(
        (good.ladder.as_deref(), good.note.as_str()),
        (Some("5-3-2-1"), "go")
    );
    let plans = [
        format!("\u{feff}{HEADER}\r\n{ROW}\r\n"),
        format!("\n\n{HEADER}\n,,,,,,,,\n{ROW}"),
        format!("{HEADER}\r{ROW}\r"),
        format!("{HEADER},,\n{ROW},,\n"),
        format!("{HEADER}\n{ROW}").replace(',', ";"),
        format!("{HEADER}\n{ROW}").replace(',', "\t"),
        format!(
            "\"{}\"\n\"{}\"",
            HEADER.replace(',', "\",\""),
            ROW.replace(',', "\",\"")
        ),
        format!(" Date , LIFTER,Lift,Work Sets,Reps,Work-Load,Warm_up,Rest,Notes\n{ROW}"),
        String::from(
            "note,rest,ladder,load,reps,sets,lift,lifter,date\ngo,180,5-3-2-1,445 lb,5,1,Rack  Pull,tevita,2026-12-01",
        ),
        format!("{HEADER}\n{}", ROW.replace("2026-12-01", "01.12.2026")),
        format!("{HEADER}\n{}", ROW.replace("2026-12-01", "1.12.2026")),
        format!("{HEADER}\n{}", ROW.replace("2026-12-01", "2026/12/1")),
        format!("{HEADER}\n{}", ROW.replace("3 min", "3:00")),
        format!("{HEADER}\n{}", ROW.replace("3 min", "180 s")),
        format!("{HEADER}\n{}", ROW.replace("445 lb", "445lbs")),
        // Spaces that do not break, as French spreadsheets put before a unit.
        format!(
            "{HEADER}\n{}",
            ROW.replace("445 lb", "445\u{a0}lb")
                .replace("3 min", "3\u{202f}min")
        ),
        format!("{HEADER}\n{}", ROW.replace("445 lb", "\"445,0 lb\"")),
    ];
    for plan in plans {
        assert_eq!(one(plan.as_bytes()), good, "{plan:?}");
    }
}

#[test]
fn decimal_commas_and_shares() {
    let comma =
        "date;lifter;lift;sets;reps;load;rest\n2026-12-01;hamza;rack pull;1;5;102,5 kg;2,5 min";
    let read = one(comma.as_bytes());
    assert_eq!(
        read.first.load,
        LoadWish::Mass(Mass::of(MassUnit::Kg, 102_500))
    );
    assert_eq!(
        (read.lifter.as_str(), read.first.rest_s),
        ("Hamza", Some(150))
    );
    let share = "date,lifter,lift,sets,reps,load,note\n2026-12-01,\u{17d}ELJKA,rack pull,1,5,82.5 %,\"two\nlines, \"\"said\"\"\"";
    let read = one(share.as_bytes());
    assert_eq!(read.first.load, LoadWish::OfBest(8_250));
    assert_eq!(
        (read.lifter.as_str(), read.note.as_str()),
        ("\u{17d}eljka", "two lines, \"said\"")
    );
}

/// Rows are numbered as a spreadsheet shows them: a line break within quotes makes no new row.
#[test]
fn rows_as_a_spreadsheet_counts() {
    let plan = "date,lifter,lift,sets,reps,load,note\n2026-12-01,Tevita,rack pull,1,5,445 lb,\"a\nb\nc\"\n\n2026-12-01,Nobody,rack pull,1,5,445 lb,";
    let faults = take(plan.as_bytes()).expect_err("a bad plan");
    assert_eq!(faults.len(), 1);
    assert_eq!(faults[0].row, Some(4));
}
