//! A coach's questions from the command line: split, single, meet; lifts from hooks on the sheet.
mod command_line;

use command_line::pinladder;
use kiosk::Folder;
use kiosk::rehearse::{Line, Rehearsal, moment};
use std::path::Path;

fn said(data: &Path, words: &[&str]) -> String {
    let (well, out, err) = pinladder(data, words);
    assert!(well, "{words:?}: {err}");
    out
}

fn refused(data: &Path, words: &[&str]) -> String {
    let (well, _, err) = pinladder(data, words);
    assert!(!well, "{words:?}");
    err
}

fn json(text: &str) -> serde_json::Value {
    serde_json::from_str(text).expect("JSON")
}

/// 100 kg x 5 as worked from the printed equations (computed): Epley 116.67, Brzycki 112.5,
/// Lombardi 117.46, Mayhew 119.01, O'Conner 112.5, Wathan 116.58.
#[test]
fn the_single_by_the_equations_side_by_side() {
    let data = tempfile::tempdir().expect("a folder");
    let text = said(data.path(), &["single", "100 kg", "5"]);
    assert!(
        text.starts_with("single from 100 kg × 5: 112.5 kg to 119.01 kg"),
        "{text}"
    );
    for part in ["Epley", "116.67 kg", "Lombardi", "117.46 kg"] {
        assert!(text.contains(part), "{part} is not in:\n{text}");
    }
    assert!(!text.contains("partial"), "{text}");
    let partial = said(
        data.path(),
        &["single", "100 kg", "5", "--lift", "Rack Pull"],
    );
    let caution = "on a partial pull these rank a lifter against themselves";
    assert!(partial.contains(caution), "{partial}");
    let doc = json(&said(data.path(), &["single", "100 kg", "5", "--json"]));
    assert_eq!(doc["each"].as_array().map(Vec::len), Some(6));
    // Where they mean nothing.
    for words in [
        &["single", "100 kg", "1"][..],
        &["single", "100 kg", "11"],
        &["single", "70 kg", "3", "--lift", "power clean"],
    ] {
        let told = refused(data.path(), words);
        assert!(told.contains("ask for 2 to 10 reps"), "{told}");
    }
    assert!(refused(data.path(), &["single", "100", "5"]).contains("has no unit"));
}

#[test]
fn the_opener_stays_as_it_was_told() {
    let folder = tempfile::tempdir().expect("a folder");
    // 200 kg are 440.92 lb: no lifter's pounds change what the platform loads.
    let text = said(
        folder.path(),
        &[
            "meet", "--lifter", "Tevita", "--opener", "200 kg", "--before", "24",
        ],
    );
    assert!(
        text.starts_with("deadlift, opener 200 kg in 24:00"),
        "{text}"
    );
}

#[test]
fn warm_ups_are_timed_back_from_the_opener() {
    let data = tempfile::tempdir().expect("a folder");
    let ask = |more: &[&str]| {
        let of = [
            "meet", "--lifter", "Hamza", "--opener", "200 kg", "--before", "24",
        ];
        said(data.path(), &[&of[..], more].concat())
    };
    let text = ask(&[]);
    for part in [
        "deadlift, opener 200 kg in 24:00: attempt 25 of the flight, 0 over, 60 s an attempt",
        "in 19:00  after attempt 19   180 kg × 1",
        "a guide: watch the platform",
    ] {
        assert!(text.contains(part), "{part} is not in:\n{text}");
    }
    // Twelve attempts in eight minutes, two warm-ups taken.
    let later = json(&ask(&[
        "--called",
        "12",
        "--elapsed",
        "480",
        "--taken",
        "2",
        "--since",
        "60",
        "--json",
    ]));
    // (3 x 60 + 480) / 15 is 44 s.
    assert_eq!(
        (&later["pace_s"], &later["opener_in_s"]),
        (&44.into(), &528.into())
    );
    let starts = later["warm_ups"].as_array().expect("some");
    assert_eq!(starts.len(), 2);
    assert_eq!(starts[1]["load"], "180 kg");
    assert!(later["left_out"].as_array().is_some_and(Vec::is_empty));
    let late = ask(&["--called", "22"]);
    assert!(late.contains("left out"), "{late}");
    let wrong = [
        "meet", "--lifter", "Hamza", "--opener", "200 kg", "--before", "4",
    ];
    let wrong = refused(data.path(), &[&wrong[..], &["--called", "5"]].concat());
    assert!(
        wrong.contains("called: 5 attempts is out of range; write 0 to 4"),
        "{wrong}"
    );
}

/// A meet.toml has plates of its own, tells everybody, one alone, one flight, and its faults.
#[test]
fn a_meet_s_file_times_everybody_with_its_own_plates() {
    let data = tempfile::tempdir().expect("a folder");
    let file = concat!(env!("CARGO_MANIFEST_DIR"), "/../../demo-data/meet.toml");
    let text = said(data.path(), &["meet", "--file", file]);
    for part in [
        "River test day, 2026-12-02",
        "Marisol: deadlift, opener 120 kg in 5:00: attempt 6 of the flight",
        "Hamza: deadlift, opener 200 kg in 13:00: attempt 14 of the flight",
        // Olumide's gym has pounds; the platform has not.
        "each side 20 kg, 20 kg, 15 kg",
    ] {
        assert!(text.contains(part), "{part} is not in:\n{text}");
    }
    let of = ["meet", "--file", file, "--lifter", "hamza"];
    let german = said(
        data.path(),
        &[&of[..], &["--language", "de", "--called", "5"]].concat(),
    );
    assert!(
        german.contains("Hamza: Kreuzheben, Eröffnung 200 kg in 8:00"),
        "{german}"
    );
    assert!(!german.contains("Marisol"), "{german}");
    let json_of = json(&said(data.path(), &["meet", "--file", file, "--json"]));
    assert_eq!(json_of["starters"][2]["until"]["before"], 13);
    let none = refused(data.path(), &["meet", "--file", file, "--flight", "2"]);
    assert!(none.contains("it has 1 flights"), "{none}");
    let both = refused(data.path(), &["meet", "--file", file, "--before", "3"]);
    assert!(both.contains("cannot be used with"), "{both}");
    let wrong = data.path().join("meet.toml");
    std::fs::write(&wrong, "name = \"Day\"\ndate = \"tomorrow\"\n").expect("written");
    let told = refused(
        data.path(),
        &["meet", "--file", &wrong.display().to_string()],
    );
    assert!(
        told.contains("row 2") && told.contains("without \"flight\""),
        "{told}"
    );
}

/// Where a flight has its start by the clock everything is told by the clock, the first lifter's
/// warm-ups before it too; an opener that the record does not support is told.
#[test]
fn a_flight_with_a_start_is_told_by_the_clock() {
    let data = tempfile::tempdir().expect("a folder");
    let file = concat!(env!("CARGO_MANIFEST_DIR"), "/../../demo-data/meet.toml");
    let text = std::fs::read_to_string(file).expect("the demo meet");
    let attempt = "attempt = \"60 s\"";
    let text = text.replace(attempt, &format!("{attempt}\nstart = \"10:00\""));
    let text = text.replace("opener = \"200 kg\"", "opener = \"300 kg\"");
    let file = data.path().join("day.toml");
    std::fs::write(&file, text).expect("written");
    let file = file.display().to_string();
    let told = said(
        data.path(),
        &["meet", "--file", &file, "--lifter", "Marisol"],
    );
    assert!(
        told.contains("opener 120 kg about 10:05: attempt 6"),
        "{told}"
    );
    let clocks: Vec<&str> = told.lines().filter(|line| line.contains(" × ")).collect();
    assert_eq!(clocks.len(), 4, "{told}");
    assert!(clocks[0].starts_with("  09:48  "), "{told}");
    assert!(clocks[3].starts_with("  10:00  "), "{told}");
    assert!(!told.contains("left out"), "{told}");
    let over = said(data.path(), &["meet", "--file", &file, "--lifter", "Hamza"]);
    assert!(over.contains("over what the record supports"), "{over}");
    let under_way = [
        "meet", "--file", &file, "--lifter", "Marisol", "--called", "2",
    ];
    let under_way = said(data.path(), &under_way);
    assert!(under_way.contains("opener 120 kg in 3:00"), "{under_way}");
    let alone = [
        "meet", "--lifter", "Hamza", "--opener", "300 kg", "--before", "20",
    ];
    let alone = said(data.path(), &alone);
    assert!(alone.contains("over what the record supports"), "{alone}");
}

#[test]
fn answers_come_in_german_where_asked() {
    let data = tempfile::tempdir().expect("a folder");
    let ask = |words: &[&str]| said(data.path(), &[words, &["--language", "de"]].concat());
    let single = ask(&["single", "102.5 kg", "5", "--lift", "rack pull"]);
    assert!(
        single.starts_with("Maximum aus 102,5 kg × 5: 115,31 kg bis"),
        "{single}"
    );
    assert!(
        single.contains("vergleichen sie dich nur mit dir selbst"),
        "{single}"
    );
    assert!(ask(&["split", "--lifter", "Tevita"]).contains("noch nichts verzeichnet: Kreuzheben"));
    assert!(ask(&["measure", "--lifter", "Olumide"]).contains("Schienbeinhöcker: 465 mm"));
    assert!(ask(&["next", "--lifter", "Tevita"]).contains("noch nichts gehoben"));
    let unknown = refused(data.path(), &["single", "100 kg", "5", "--language", "xx"]);
    assert!(unknown.contains("there are en, de, es"), "{unknown}");
}

#[test]
fn landmarks_are_asked_for_with_how_to_measure_them() {
    let data = tempfile::tempdir().expect("a folder");
    let text = said(data.path(), &["measure", "--lifter", "Olumide"]);
    for part in [
        "in the shoes that they lift in",
        "tibial tuberosity: 465 mm",
        "mm by estimate, give or take",
        "measure it, and write it into lifters.toml under landmarks",
    ] {
        assert!(text.contains(part), "{part} is not in:\n{text}");
    }
    let file = data.path().join("olumide.svg").display().to_string();
    let drawn = said(
        data.path(),
        &["measure", "--lifter", "Olumide", "--svg", &file],
    );
    assert_eq!(drawn, format!("{file} is drawn\n"));
    let svg = std::fs::read_to_string(&file).expect("the drawing is there");
    assert!(svg.contains("465 mm above the floor"), "{svg}");
    let nowhere = [
        "measure",
        "--lifter",
        "Olumide",
        "--svg",
        "/no/such/folder/x.svg",
    ];
    assert!(refused(data.path(), &nowhere).contains("/no/such/folder"));
}

#[test]
fn nobody_is_split_without_a_record() {
    let data = tempfile::tempdir().expect("a folder");
    let text = said(data.path(), &["split", "--lifter", "Tevita"]);
    assert_eq!(text, "Tevita: no deadlift in the record yet\n");
    let doc = json(&said(
        data.path(),
        &["split", "--lifter", "Tevita", "--json"],
    ));
    assert_eq!(
        (&doc["advice"], &doc["from"]),
        (&"none".into(), &"405 lb".into())
    );
}

/// A gym where two squat on the first of March: the hole of one's hooks is written.
fn with_squats() -> tempfile::TempDir {
    let data = tempfile::tempdir().expect("a folder");
    said(data.path(), &["sheet"]);
    let change = |name: &str, edit: &dyn Fn(String) -> String| {
        let path = data.path().join(name);
        let text = std::fs::read_to_string(&path).expect("read");
        std::fs::write(&path, edit(text)).expect("written");
    };
    change("gym.toml", &|text| {
        text + "\n[[lift]]\nname = \"squat\"\nstart = \"hooks\"\nbar = \"straight\"\n"
    });
    change("lifters.toml", &|text| {
        text.replacen(
            "ladder = \"5-3-2-1\"\n",
            "ladder = \"5-3-2-1\"\nhooks = { \"squat\" = \"hole 14\" }\n",
            1,
        )
    });
    let rows = "2027-03-01,Tevita,squat,3,5,300 lb,,,\n2027-03-01,Hamza,squat,3,5,120 kg,,,\n";
    let plan = format!("date,lifter,lift,sets,reps,load,ladder,rest,note\n{rows}");
    let path = data.path().join("squats.csv");
    std::fs::write(&path, plan).expect("written");
    said(data.path(), &["take", &path.display().to_string()]);
    data
}

#[test]
fn a_squat_from_the_hooks_stands_on_the_sheet() {
    let data = with_squats();
    let text = said(data.path(), &["sheet", "--date", "2027-03-01"]);
    for part in [
        "start   from the hooks in hole 14",
        "start   from the hooks, at the height that suits you",
        "hooks at the same hole on both sides",
    ] {
        assert!(text.contains(part), "{part} is not in:\n{text}");
    }
    let sheet = [
        "sheet",
        "--date",
        "2027-03-01",
        "--lifter",
        "Tevita",
        "--json",
    ];
    let doc = json(&said(data.path(), &sheet));
    let sheet = &doc["entries"][0]["sheet"];
    // Nobody is told how to hold a squat's bar as if it were a pull.
    assert!(sheet.get("grip").is_none(), "{sheet}");
    let squat = text.split("Tevita: squat").nth(1).expect("the squat");
    assert!(
        !squat
            .split("\n\n")
            .next()
            .expect("its lines")
            .contains("grip"),
        "{text}"
    );
    assert_eq!(
        (&sheet["start"], &sheet["hook_hole"]),
        (&"hooks".into(), &14.into())
    );
}

#[test]
fn a_squat_is_said_to_start_from_the_hooks_wherever_its_load_is() {
    let data = with_squats();
    let folder = Folder::open(Some(data.path())).expect("a folder");
    let at = moment("2027-03-01T18:00").expect("a time");
    let mut rehearsal = Rehearsal::open(&folder, at).expect("it opens");
    let mut say = |lines: &[Line]| {
        let mut face = rehearsal.face();
        for line in lines {
            face = rehearsal.line(line).expect("it goes on");
            assert_eq!(face.refused, None, "{line:?}");
        }
        face
    };
    let has = |texts: &[String], part: &str| texts.iter().any(|text| text.contains(part));
    let bar = say(&[Line::tap("Tevita"), Line::tap("start")]);
    assert_eq!(bar.screen, "bar");
    let done = bar.button(view::Deed::Done).expect("done").to_owned();
    let rest = say(&[Line::tap(done)]);
    assert_eq!(rest.screen, "rest");
    let floor = say(&[
        Line::tap("all lifters"),
        Line::tap("Hamza"),
        Line::tap("start"),
        Line::tap("all lifters"),
        Line::tap("floor"),
    ]);
    assert_eq!(floor.screen, "floor");
    for face in [bar, rest, floor] {
        let texts = &face.texts;
        assert!(has(texts, "hooks in hole 14"), "{}: {texts:?}", face.screen);
        assert!(!has(texts, "from the floor"), "{}: {texts:?}", face.screen);
    }
}
