//! Training maxes in lifters.toml, shares of them in plans, and tracks by name, as coaches type them.
use domain::prescription::LoadWish;
use domain::{Gym, Mass, MassUnit, Prescription, TrackName};
use plan::Source;

const LIFTERS: &str = r#"[[lifter]]
name = "Hamza"
unit = "kg"
rack = "yard rack"
training_max = [
  { lift = "rack pull", load = "200 kg", since = "2026-12-07" },
  { lift = "Rack Pull", load = "180 kg" },
  { lift = "deadlift", load = "405 lb", since = "2027-01-04" },
]
"#;

fn try_gym(lifters: &str) -> Result<Gym, String> {
    let path = concat!(env!("CARGO_MANIFEST_DIR"), "/../../demo-data/gym.toml");
    let gym = std::fs::read(path).expect("the demo file is in the repository");
    let source = |name, text| Source { name, text };
    plan::gym(
        source("gym.toml", &gym),
        source("lifters.toml", lifters.as_bytes()),
    )
    .map_err(|faults| faults.iter().map(ToString::to_string).collect())
}

fn take(plan: &str) -> Result<Vec<Prescription>, String> {
    let source = Source {
        name: "week.csv",
        text: plan.as_bytes(),
    };
    let gym = try_gym(LIFTERS).expect("a good gym");
    plan::coach_plan(source, &gym)
        .map_err(|faults| faults.iter().map(ToString::to_string).collect())
}

fn day(text: &str) -> chrono::NaiveDate {
    text.parse().expect("a day")
}

/// The latest that has come counts, wherever it stands in the file; before the first dated one the
/// one for ever, and where there is none, none.
#[test]
fn the_latest_that_has_come_counts() {
    let gym = try_gym(LIFTERS).expect("a good gym");
    let hamza = &gym.lifters[0];
    let of = |lift: &str, on: &str| hamza.training_max(lift, day(on));
    let kg = |load: i64| Some(Mass::of(MassUnit::Kg, load * 1_000));
    assert_eq!(of("rack pull", "2026-12-06"), kg(180));
    assert_eq!(of("rack pull", "2026-12-07"), kg(200));
    assert_eq!(of("rack pull", "2030-01-01"), kg(200));
    assert_eq!(of("deadlift", "2027-01-03"), None);
    let pounds = Mass::of(MassUnit::Lb, 405_000);
    assert_eq!(of("deadlift", "2027-01-04"), Some(pounds));
    assert_eq!(of("power clean", "2027-01-04"), None);
}

#[test]
fn a_bad_training_max_is_told_and_the_file_refused() {
    for (written, said) in [
        (r#"{ lift = "juggling", load = "200 kg" }"#, "juggling"),
        (r#"{ lift = "deadlift", load = "2000 kg" }"#, "2000 kg"),
        (r#"{ lift = "deadlift" }"#, "load"),
        (
            r#"{ lift = "deadlift", load = "200 kg", since = "soon" }"#,
            "soon",
        ),
        (
            r#"{ lift = "deadlift", load = "200 kg" }, { lift = "deadlift", load = "210 kg" }"#,
            "a second training max of \"deadlift\" from one day on",
        ),
    ] {
        let head = LIFTERS.split("training_max").next().expect("a front");
        let text = format!("{head}training_max = [{written}]\n");
        let told = try_gym(&text).expect_err(written);
        assert!(told.contains(said), "{written}: {told}");
    }
}

/// Every way to write the share, and every row held against the training max of its own day.
#[test]
fn shares_of_it_are_taken_where_there_is_one() {
    for written in [
        "5x3 @ 80 % TM",
        "5x3 @ 80% of training max",
        "5 x 3 at 80 %TM",
    ] {
        let plan = format!("date,lifter,lift,scheme\n2026-12-07,Hamza,rack pull,{written}\n");
        let rows = take(&plan).unwrap_or_else(|told| panic!("{written}: {told}"));
        assert_eq!(rows[0].first.load, LoadWish::OfTraining(8_000), "{written}");
    }
    let early = "date,lifter,lift,scheme\n2027-01-03,Hamza,deadlift,5x3 @ 80 % TM\n\
                 2027-01-04,Hamza,deadlift,5x3 @ 80 % TM\n";
    let told = take(early).expect_err("none on the third");
    assert!(told.contains("row 2, column D"), "{told}");
    assert!(told.contains("on 2027-01-03"), "{told}");
    assert!(!told.contains("row 3"), "{told}");
    let light = "date,lifter,lift,scheme\n2027-01-04,Hamza,deadlift,5x3 @ 5 % TM\n";
    let told = take(light).expect_err("less than the bar");
    assert!(told.contains("less than the lightest bar"), "{told}");
}

/// However it is spelt a track is one; one too long is told, in letters that take one byte or two.
#[test]
fn tracks_are_one_however_they_are_spelt() {
    let track = |name: &str| {
        let row = format!("2026-12-07,Hamza,rack pull,5x3 @ 140,{name}\n");
        take(&format!("date,lifter,lift,scheme,track\n{row}")).map(|rows| rows[0].track)
    };
    let named = |name: &str| Ok(TrackName::new(name));
    for heavy in ["heavy", "Heavy", " HEAVY ", "schwer", "heavy day"] {
        assert_eq!(track(heavy), named("heavy"), "{heavy}");
    }
    assert_eq!(track(""), Ok(None));
    assert_eq!(track("Speed  Work"), named("speed work"));
    assert_eq!(track(&"n".repeat(24)), named(&"n".repeat(24)));
    assert_eq!(track(&"ü".repeat(12)), named(&"ü".repeat(12)));
    for long in ["n".repeat(25), "ü".repeat(13)] {
        let told = track(&long).expect_err(&long);
        assert!(told.contains("a track's name of over 24 letters"), "{told}");
    }
}
