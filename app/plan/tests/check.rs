//! The checker: by file name, alone and together.
use plan::Source;
use std::fmt::Write as _;

fn demo(name: &str) -> Vec<u8> {
    let path = format!("{}/../../demo-data/{name}", env!("CARGO_MANIFEST_DIR"));
    std::fs::read(path).expect("the demo file is in the repository")
}

fn told(files: &[(&str, Vec<u8>)]) -> Vec<String> {
    let sources: Vec<_> = files
        .iter()
        .map(|(name, text)| Source { name, text })
        .collect();
    let faults = plan::check_all(&sources, None);
    faults.iter().map(ToString::to_string).collect()
}

#[test]
fn the_demo_together() {
    let files = [
        "plans/four-weeks.csv",
        "kiosk.toml",
        "lifters.toml",
        "gym.toml",
    ];
    assert_eq!(
        told(&files.map(|name| (name, demo(name)))),
        Vec::<String>::new()
    );
}

#[test]
fn what_could_not_be_held_against_anything_is_told() {
    let alone = ["a/four-weeks.csv", "lifters.toml", "kiosk.toml"];
    let names = ["plans/four-weeks.csv", "lifters.toml", "kiosk.toml"];
    let texts = alone
        .into_iter()
        .zip(names)
        .map(|(name, path)| (name, demo(path)));
    assert_eq!(
        told(&texts.collect::<Vec<_>>()),
        [
            "a/four-weeks.csv: odd: read a plan without a whole gym beside it, so names were not checked; check it together with gym.toml and lifters.toml",
            "lifters.toml: odd: read lifters without a whole gym beside it, so names were not checked; check it together with gym.toml and lifters.toml",
            "kiosk.toml: odd: read a kiosk without a whole gym beside it, so names were not checked; check it together with gym.toml and lifters.toml",
        ]
    );
    assert_eq!(
        told(&[("kiosk.toml", b"port = 80".to_vec())]),
        Vec::<String>::new()
    );
}

/// A fault in gym.toml is told once, and does not make the other files' names wrong.
#[test]
fn a_faulty_gym_beside_good_files() {
    let gym = String::from_utf8(demo("gym.toml"))
        .expect("text")
        .replace("\"3 in\"", "\"3\"");
    let files = [
        ("gym.toml", gym.into_bytes()),
        ("lifters.toml", demo("lifters.toml")),
        ("week.csv", demo("plans/four-weeks.csv")),
    ];
    assert_eq!(
        told(&files),
        [
            "gym.toml, row 9, column 11: read \"3\", a length without a unit; write \"3 mm\" or \"3 in\"",
            "week.csv: odd: read a plan without a whole gym beside it, so names were not checked; check it together with gym.toml and lifters.toml",
        ]
    );
}

#[test]
fn the_gym_of_the_context_serves_files_that_come_alone() {
    let (gym, lifters) = (demo("gym.toml"), demo("lifters.toml"));
    let source = |name, text| Source { name, text };
    let gym = plan::gym(source("gym.toml", &gym), source("lifters.toml", &lifters));
    let gym = gym.expect("a good gym");
    let context = Some(&gym);
    let told = |name, text: &str| {
        let source = Source {
            name,
            text: text.as_bytes(),
        };
        let faults = plan::check_all(&[source], context);
        faults.iter().map(ToString::to_string).collect::<Vec<_>>()
    };
    assert_eq!(
        told(
            "lifters.toml",
            "[[lifter]]\nname = \"Ana\"\nunit = \"kg\"\nrack = \"yard rak\""
        ),
        [
            "lifters.toml, row 4, column 8: read \"yard rak\", no rack of that name; write \"yard rack\""
        ]
    );
    assert_eq!(
        told("notes.txt", ""),
        [
            "notes.txt: read a file of a kind that is not checked; give gym.toml, lifters.toml, programme.toml, kiosk.toml, meet.toml or a plan that ends in .csv, .xlsx or .ods"
        ]
    );
}

/// A long plan of unknown names is told in full; past a bound the hints no longer seek the nearest.
#[test]
fn many_unknown_names() {
    let (gym, lifters) = (demo("gym.toml"), demo("lifters.toml"));
    let source = |name, text| Source { name, text };
    let gym = plan::gym(source("gym.toml", &gym), source("lifters.toml", &lifters));
    let gym = gym.expect("a good gym");
    let mut text = String::from("date,lifter,lift,sets,reps,load\n");
    for row in 0..18_000 {
        writeln!(text, "2026-12-01,Tevitta {row},rack pull,1,5,100 kg").expect("text grows");
    }
    let faults = plan::check(source("week.csv", text.as_bytes()), Some(&gym));
    assert_eq!(plan::count(&faults), 18_000);
    let right = |at: usize| faults[at].right.to_string();
    assert_eq!(right(0), "write \"Tevita\"");
    assert_eq!(right(50), "mend these first, then check again");
}
