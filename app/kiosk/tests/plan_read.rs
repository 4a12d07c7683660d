//! `pinladder plan read`: what was understood, as JSON and as words, and nothing taken.
use kiosk::cli::{Streams, main};
use serde_json::{Value, json};
use std::ffi::OsString;
use std::fs;
use std::path::Path;

/// Runs one command line: whether it went well, and what it said.
fn pinladder(words: &[&str]) -> (bool, String) {
    let (mut out, mut err) = (Vec::new(), Vec::new());
    let args = std::iter::once("pinladder").chain(words.iter().copied());
    let args: Vec<OsString> = args.map(OsString::from).collect();
    let mut streams = Streams {
        input: &mut &b""[..],
        out: &mut out,
        err: &mut err,
    };
    let code = main(args, &mut streams);
    let well = format!("{code:?}") == format!("{:?}", std::process::ExitCode::SUCCESS);
    let text = String::from_utf8([out, err].concat()).expect("words are UTF-8");
    (well, text)
}

fn read(folder: &Path, name: &str, text: &str, more: &[&str]) -> (bool, String) {
    let path = folder.join(name);
    fs::write(&path, text).expect("a plan");
    let path = path.display().to_string();
    let words = [&["plan", "read", path.as_str()], more].concat();
    pinladder(&words)
}

/// The contract's own example and each form of a load, as programs read them.
#[test]
fn what_was_understood_as_json() {
    let folder = tempfile::tempdir().expect("a folder");
    let text = "day;lifter;lift;scheme;rest;note\n\
                Monday;Hamza;rack pull (heavy);1x5 @ 200 kg RPE 8, 3x3-5 @ 90 % of top set;\
                4 min;bar close\n\
                Tuesday;Hamza;deadlift;3 x 5+ @ 80 %;;\n\
                Wednesday;Tevita;deadlift;AMRAP @ 80 % TM;;\n\
                Thursday;Tevita;rack pull;1x5 +5;;\n\
                Friday;Hamza;rack pull;1x5 due;;\n\
                Saturday;Hamza;rack pull;3x5 @8;;\n";
    let (well, said) = read(
        folder.path(),
        "week.csv",
        text,
        &["--json", "--monday", "2026-12-07"],
    );
    assert!(well, "{said}");
    let read: Value = serde_json::from_str(&said).expect("JSON");
    assert_eq!(read["odd"], json!([]));
    assert_eq!(read["faults"], json!([]));
    assert_eq!(
        read["rows"][0],
        json!({
            "date": "2026-12-07", "lifter": "Hamza", "lift": "rack pull", "track": "heavy",
            "groups": [
                {"sets": 1, "reps": [5, 5], "load": {"mass": "200 kg"}, "effort": "8", "rest_s": 240, "role": "top"},
                {"sets": 3, "reps": [3, 5], "load": {"share": "90 %", "of": "top set"}, "rest_s": 240, "role": "back-off"},
            ],
            "note": "bar close", "from": "week!D2",
        })
    );
    let groups = |row: usize| read["rows"][row]["groups"].clone();
    assert_eq!(
        groups(1),
        json!([
            {"sets": 2, "reps": [5, 5], "load": {"share": "80 %", "of": "best"}, "role": "work"},
            {"sets": 1, "reps": [5, null], "load": {"share": "80 %", "of": "best"}, "role": "work"},
        ])
    );
    assert_eq!(
        groups(2),
        json!([{"sets": 1, "reps": [1, null], "load": {"share": "80 %", "of": "training max"}, "role": "work"}])
    );
    assert_eq!(
        groups(3),
        json!([{"sets": 1, "reps": [5, 5], "load": {"more": "5 lb"}, "role": "work"}])
    );
    assert_eq!(
        groups(4),
        json!([{"sets": 1, "reps": [5, 5], "load": {"due": true}, "role": "work"}])
    );
    assert_eq!(
        groups(5),
        json!([{"sets": 3, "reps": [5, 5], "effort": "8", "role": "work"}])
    );
}

/// Without a first Monday it is asked for; a day that is none is refused before anything is read.
#[test]
fn a_first_monday_is_asked_for() {
    let folder = tempfile::tempdir().expect("a folder");
    let text = "day,lifter,lift,scheme\nMonday,Hamza,rack pull,5x3 @ 140\n";
    let (well, said) = read(folder.path(), "week.csv", text, &["--json"]);
    assert!(!well, "{said}");
    let told: Value = serde_json::from_str(&said).expect("JSON");
    assert_eq!(told["rows"], json!([]));
    assert_eq!(told["faults"][0]["from"], json!("week!A2"));
    let asked = told["faults"][0]["text"].as_str().expect("a text");
    assert!(asked.contains("--monday 2026-12-07"), "{asked}");
    let (well, said) = read(folder.path(), "week.csv", text, &["--monday", "2026-12-08"]);
    assert!(!well && said.contains("2026-12-08 is no Monday"), "{said}");
}

/// For people: a line a row, and that nothing was taken. What the rack cannot show yet is
/// understood here, and told by `take`, which changes nothing.
#[test]
fn what_was_understood_in_words_and_not_taken() {
    let folder = tempfile::tempdir().expect("a folder");
    let data = folder.path().join("data");
    let text = "date,lifter,lift,scheme\n2026-12-07,Hamza,rack pull,\"1x5 @ RPE 8, 3x5 @ 90 % of top set\"\n";
    let (well, said) = read(folder.path(), "week.csv", text, &[]);
    assert!(well, "{said}");
    assert_eq!(
        said,
        "2026-12-07  Hamza, rack pull: 1 x 5 RPE 8 (top), 3 x 5 @ 90 % of top set (back-off)  \
         [week!D2]\n1 row understood, 0 odd, 0 faults; nothing was taken\n"
    );
    assert!(!data.exists());
    let (plan, data) = (
        folder.path().join("week.csv").display().to_string(),
        data.display().to_string(),
    );
    let frozen = "date,lifter,lift,scheme\n2026-12-07,Hamza,rack pull,5x3 @ 80 % TM\n";
    fs::write(&plan, frozen).expect("a plan");
    let (well, said) = pinladder(&["--data", &data, "take", &plan]);
    assert!(!well, "{said}");
    assert!(
        said.contains(
            "week.csv, row 2, column D: read \"80 % of training max\", of a training max in the rack \
             pull that Hamza does not have on 2026-12-07; write a mass, or the training max in lifters.toml"
        ),
        "{said}"
    );
    let bare = "date,lifter,lift,scheme\n2026-12-07,Hamza,rack pull,5x3\n";
    fs::write(&plan, bare).expect("a plan");
    let (well, said) = pinladder(&["--data", &data, "take", &plan]);
    assert!(!well && said.contains("sets without a load"), "{said}");
    assert!(said.contains("the rack cannot show it yet"), "{said}");
    fs::write(&plan, text).expect("a plan");
    let (well, said) = pinladder(&["--data", &data, "take", &plan]);
    assert!(well, "{said}");
    let simple = "day,lifter,lift,scheme\nMonday,Hamza,rack pull,5x3 @ 140\n";
    fs::write(&plan, simple).expect("a plan");
    let (well, said) = pinladder(&["--data", &data, "take", &plan, "--monday", "2026-12-07"]);
    assert!(well, "{said}");
    assert!(said.contains("1 row, 1 lifter, 1 day"), "{said}");
}

/// Beside a share of what is recorded stands what it comes to now, in the lifter's own unit.
#[test]
fn a_share_stands_beside_what_it_comes_to() {
    let folder = tempfile::tempdir().expect("a folder");
    let text = "date,lifter,lift,scheme\n\
                2026-12-07,Hamza,rack pull,\"1x5 @ 80 % rest 4 min, 3x5 @ 90 % of top set\"\n\
                2026-12-07,Tevita,rack pull,3x5 @ 75 %\n\
                2026-12-08,Hamza,deadlift,3x5 @ 150\n";
    let (well, said) = read(folder.path(), "week.csv", text, &[]);
    assert!(well, "{said}");
    for part in [
        "1 x 5 @ 80 % of best (= 192 kg) rest 240 s (top), 3 x 5 @ 90 % of top set (back-off)",
        "3 x 5 @ 75 % of best (= 450 lb)",
        "3 x 5 @ 150 kg  [",
    ] {
        assert!(said.contains(part), "{part} is not in:\n{said}");
    }
}

/// A plan may call lifts as the screen does.
#[test]
fn the_names_of_lifts_are_read_in_every_language() {
    let gym = domain::Gym {
        lifts: domain::lift_shipped::lifts(),
        ..domain::Gym::default()
    };
    let languages = view::Language::ALL.into_iter();
    let words = languages.flat_map(text::every_shipped_word);
    for (lift, word) in words.filter_map(|(english, word)| {
        let lift = gym.lifts.iter().find(|lift| lift.name == english)?;
        Some((lift, word))
    }) {
        let week = format!("date,lifter,lift,scheme\n2026-12-01,Ada,{word},3x5 @ 100 kg\n");
        let source = plan::Source {
            name: "week.csv",
            text: week.as_bytes(),
        };
        let read = plan::understand(source, Some(&gym), None);
        let lifts: Vec<&str> = read.rows.iter().map(|row| row.lift.as_str()).collect();
        assert_eq!(lifts, [lift.name.as_str()], "{word}: {:?}", read.faults);
    }
}

/// What a coach is told before the plan is taken, by name: a load far over the best, a beginner's at
/// a veteran's load, 20 sets of 50, the other unit; by both commands, and nothing of a plan that
/// fits. The demo gym's bests.
#[test]
fn what_looks_wrong_is_told_by_name_before_it_is_taken() {
    let folder = tempfile::tempdir().expect("a folder");
    let text = "date,lifter,lift,scheme\n\
                2026-12-01,Hamza,deadlift,3x5 @ 240\n\
                2026-12-03,Hamza,deadlift,3x5 @ 245\n\
                2026-12-04,Hamza,barbell shrug,3x5 @ 180 lb\n\
                2026-12-05,Hamza,rack pull,20x50 @ 60\n\
                2026-12-02,Parvati,deadlift,1x5 @ 200\n\
                2026-12-02,Ilkka,deadlift,1x5 @ 180\n";
    let told = [
        "Hamza, 2026-12-01, deadlift: 240 kg, where the record supports 215 kg, and 1 more like it",
        "Hamza, 2026-12-04, barbell shrug: 81.65 kg, light and round in the other unit alone",
        "Hamza, 2026-12-05, rack pull: 1000 reps of work",
        "Parvati, 2026-12-02, deadlift: 200 kg, where nothing is recorded that supports it",
    ];
    let (well, read) = read(folder.path(), "odd.csv", text, &[]);
    assert!(
        well && read.contains("6 rows understood, 4 odd, 0 faults"),
        "{read}"
    );
    let path = folder.path().join("odd.csv").display().to_string();
    let data = folder.path().join("data").display().to_string();
    let (well, checked) = pinladder(&["--data", &data, "check", &path]);
    assert!(well, "{checked}");
    for line in told {
        assert!(read.contains(line), "{line}\n{read}");
        assert!(checked.contains(line), "{line}\n{checked}");
    }
    assert!(!checked.contains("Ilkka"), "{checked}");
}

/// What `take` would refuse is told by the gym whose record it is, and not by the demo gym.
#[test]
fn a_training_max_that_nobody_wrote_is_told_where_the_gym_is_known() {
    let folder = tempfile::tempdir().expect("a folder");
    let text = "date,lifter,lift,scheme\n2026-12-09,Tevita,deadlift,3x5 @ 80 % TM\n";
    let (well, said) = read(folder.path(), "week.csv", text, &[]);
    assert!(well && said.contains("0 odd"), "{said}");
    let data = folder.path().join("gym");
    let data = data.display().to_string();
    let (_, begun) = pinladder(&["--data", &data, "sheet"]);
    assert!(!begun.is_empty());
    let (well, said) = read(folder.path(), "week.csv", text, &["--data", &data]);
    assert!(well, "{said}");
    assert!(
        said.contains("that Tevita does not have on 2026-12-09") && said.contains("1 odd"),
        "{said}"
    );
    let path = folder.path().join("week.csv").display().to_string();
    let (well, refused) = pinladder(&["--data", &data, "take", &path]);
    assert!(
        !well && refused.contains("that Tevita does not have"),
        "{refused}"
    );
}
