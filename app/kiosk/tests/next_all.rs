//! `pinladder next` without a name, and what a coach says of a lifter on the command line.
mod command_line;

use command_line::pinladder;
use std::path::Path;

/// A folder of the demo gym in which Željka's plan of today has a slip of the pen.
fn slipped() -> (tempfile::TempDir, String) {
    let data = tempfile::tempdir().expect("a folder");
    let today = chrono::Local::now().date_naive();
    let plan = format!(
        "date,lifter,lift,sets,reps,load,ladder,rest,note\n{today},Željka,rack pull,1,5,290 kg,,,\n"
    );
    let path = data.path().join("today.csv");
    std::fs::write(&path, plan).expect("written");
    let taken = pinladder(data.path(), &["take", &path.display().to_string()]);
    assert!(taken.0, "{}", taken.2);
    (data, today.to_string())
}

fn all(data: &Path) -> serde_json::Value {
    let (well, json, err) = pinladder(data, &["next", "--json"]);
    assert!(well, "{err}");
    serde_json::from_str(&json).expect("JSON")
}

#[test]
fn a_load_that_looks_wrong_is_on_the_list_until_it_is_said_to_be_meant() {
    let (data, today) = slipped();
    let doc = all(data.path());
    let line = &doc["due"][0];
    assert_eq!(line["lifter"], "Željka");
    assert_eq!(
        (&line["state"], &line["ask_coach"]),
        (&"looks wrong".into(), &true.into())
    );
    assert_eq!(
        (&line["planned"], &line["planned_on"]),
        (&"290 kg".into(), &today.clone().into())
    );
    let (_, text, _) = pinladder(data.path(), &["next"]);
    assert!(text.contains("looks wrong"), "{text}");
    assert!(
        text.contains("Željka, rack pull, 5 reps: plan of"),
        "{text}"
    );
    let (_, german, _) = pinladder(data.path(), &["next", "--language", "de"]);
    assert!(german.contains("sieht falsch aus"), "{german}");
    let (_, sheet, _) = pinladder(data.path(), &["sheet", "--lifter", "Željka"]);
    assert!(sheet.contains("290 kg looks wrong"), "{sheet}");
    let meant = [
        "next",
        "--lifter",
        "Željka",
        "--lift",
        "rack pull",
        "--date",
        &today,
    ];
    // Without a note nothing is said.
    let (well, ..) = pinladder(data.path(), &[&meant[..], &["--meant"]].concat());
    assert!(!well);
    let said = [&meant[..], &["--meant", "--note", "tested elsewhere"]].concat();
    let (well, _, err) = pinladder(data.path(), &said);
    assert!(well, "{err}");
    let (_, sheet, _) = pinladder(data.path(), &["sheet", "--lifter", "Željka"]);
    assert!(
        !sheet.contains("looks wrong") && sheet.contains("290 kg"),
        "{sheet}"
    );
    assert_eq!(all(data.path())["due"], serde_json::json!([]));
    // Twice: there is nothing left that looks wrong.
    let (well, _, err) = pinladder(data.path(), &said);
    assert!(!well && err.contains("looks wrong on"), "{err}");
}

#[test]
fn hurt_fit_and_ill_are_said_and_shown() {
    let (data, today) = slipped();
    let of = |words: &[&str]| {
        let all = [
            &["next", "--lifter", "Željka", "--note", "left hip"][..],
            words,
        ]
        .concat();
        pinladder(data.path(), &all)
    };
    let (well, _, err) = of(&["--fit"]);
    assert!(!well && err.contains("not entered as hurt"), "{err}");
    let (well, _, err) = of(&["--hurt", &today]);
    assert!(well, "{err}");
    let doc = all(data.path());
    assert_eq!(doc["due"].as_array().map(Vec::len), Some(1));
    assert_eq!(doc["due"][0]["state"], "hurt");
    assert!(
        doc["due"][0]["why"]
            .as_str()
            .is_some_and(|why| why.ends_with("left hip"))
    );
    let (_, sheet, _) = pinladder(data.path(), &["sheet", "--lifter", "Željka"]);
    assert!(sheet.contains("see a clinician"), "{sheet}");
    assert!(of(&["--fit"]).0);
    let (well, _, err) = of(&["--ill", "2026-03-06..2026-03-01"]);
    assert!(!well && err.contains("2026-03-01"), "{err}");
    let (well, _, err) = of(&["--ill", "yesterday"]);
    assert!(!well && err.contains("write it as in"), "{err}");
    assert!(of(&["--ill", "2026-03-01..2026-03-06"]).0);
    let (well, ..) = pinladder(data.path(), &["journal", "verify"]);
    assert!(well);
}
