//! meet.toml: what a good one means, and every word about bad ones.
use domain::meet::Habit;
use domain::meet_day::{MeetDay, platform_bar, platform_plates};
use domain::{Gym, Mass, MassUnit};
use plan::Source;
use std::fmt::Write as _;

fn demo(name: &str) -> String {
    let path = format!("{}/../../demo-data/{name}", env!("CARGO_MANIFEST_DIR"));
    std::fs::read_to_string(path).expect("the demo file is in the repository")
}

fn source<'s>(name: &'s str, text: &'s str) -> Source<'s> {
    Source {
        name,
        text: text.as_bytes(),
    }
}

fn gym() -> Gym {
    let (gym, lifters) = (demo("gym.toml"), demo("lifters.toml"));
    plan::gym(source("gym.toml", &gym), source("lifters.toml", &lifters)).expect("the demo gym")
}

const MEET: &str = r#"name = "Test day"
date = "2026-12-12"
[[flight]]
lift = "deadlift"
order = ["Anna", "Tevita", "Ben", "Hamza"]
[[flight.lifter]]
name = "Hamza"
opener = "200 kg"
[[flight.lifter]]
name = "tevita"
opener = "430 lb"
before = 1
ladder = "fives"
"#;

fn read(text: &str) -> Result<MeetDay, String> {
    plan::meet(source("meet.toml", text), &gym()).map_err(|faults| {
        let lines = faults.iter().map(|fault| format!("  {fault}\n"));
        lines.collect()
    })
}

#[test]
fn the_order_gives_the_attempts_before_and_the_rest_is_as_usual() {
    let day = read(MEET).expect("no fault");
    assert_eq!((day.bar.clone(), day.habit), (platform_bar(), Habit::USUAL));
    assert_eq!(day.plates, platform_plates());
    let flight = &day.flights[0];
    assert_eq!((flight.lift.as_str(), flight.attempt_s), ("deadlift", 60));
    let of = |n: usize| {
        let starter = &flight.starters[n];
        (
            starter.lifter.as_str(),
            starter.before,
            starter.pattern.name.as_str(),
        )
    };
    assert_eq!(of(0), ("Hamza", 3, "5-3-2-1"));
    assert_eq!(of(1), ("Tevita", 1, "fives"));
    assert_eq!(flight.starters[1].unit, MassUnit::Lb);
}

fn places(day: &MeetDay) -> Vec<(&str, u16)> {
    let starters = day.flights[0].starters.iter();
    starters.map(|s| (s.lifter.as_str(), s.before)).collect()
}

/// Others by weight and lot: 190 kg is before 195.04 kg (430 lb), 200 kg with lot 3 before ours with
/// lot 7, with lot 8 after; who is not told of stays where the order has them.
#[test]
fn others_whose_openers_are_told_stand_by_weight_and_lot() {
    let others = [("A", "190 kg", 9), ("B", "200 kg", 3), ("C", "200 kg", 8)];
    let others = others.map(|(name, opener, lot)| {
        format!("[[flight.other]]\nname = \"{name}\"\nopener = \"{opener}\"\nlot = {lot}\n")
    });
    let lot = MEET.replace("\"200 kg\"", "\"200 kg\"\nlot = 7") + &others.concat();
    let told = lot.replace(
        "order = [\"Anna\", \"Tevita\", \"Ben\", \"Hamza\"]\n",
        "others = 0\n",
    );
    let told = told.replace("before = 1\n", "");
    let day = read(&told).expect("no fault");
    assert_eq!(places(&day), [("Hamza", 3), ("Tevita", 1)]);
    let flight = &day.flights[0];
    assert!(flight.others.iter().all(|other| other.told) && !flight.counted);
    let listed = read(&lot).expect("no fault");
    assert_eq!(
        listed.flights[0].others.len(),
        5,
        "Anna and Ben are there too"
    );
}

/// Nine others of whom nothing is known: 9 x 1 / 3 and 9 x 2 / 3 of them before ours.
#[test]
fn a_number_of_others_spreads_ours_among_them() {
    let count = MEET.replace(
        "order = [\"Anna\", \"Tevita\", \"Ben\", \"Hamza\"]\n",
        "others = 9\nstart = \"10:30\"\n",
    );
    let day = read(&count.replace("before = 1\n", "")).expect("no fault");
    assert_eq!(places(&day), [("Hamza", 7), ("Tevita", 3)]);
    assert!(day.flights[0].counted);
    assert_eq!(
        day.flights[0].start,
        chrono::NaiveTime::from_hms_opt(10, 30, 0)
    );
    // By number the places are as told, and the flight is as long as it was said to be.
    let numbered = count.replace("\"200 kg\"", "\"200 kg\"\nbefore = 4");
    let day = read(&numbered).expect("no fault");
    assert_eq!(places(&day), [("Hamza", 4), ("Tevita", 1)]);
    assert_eq!(day.flights[0].others.len(), 9);
}

/// 25 kg of bar and collars (IPF Technical Rules) and three pairs of 25, one of 10 and one of 2.5
/// are 200 kg: whatever hangs in the gym, the meet's own plates make it.
#[test]
fn the_meet_s_own_plates_are_loaded() {
    let day = read(MEET).expect("no fault");
    let built = day.warm_ups(&day.flights[0].starters[0]).expect("warm-ups");
    let (opener, warm_ups) = built.rungs.split_last().expect("rungs");
    let kg = |load: Mass| load.number(MassUnit::Kg);
    let labels: Vec<String> = opener.per_side.iter().map(|p| p.label()).collect();
    assert_eq!(
        (kg(opener.load).as_str(), labels.join(" ")),
        ("200", "25 25 25 10 2.5".into())
    );
    assert!(warm_ups.len() >= 4 && warm_ups.windows(2).all(|w| w[0].load < w[1].load));
}

#[test]
fn the_demo_s_test_day_is_without_fault() {
    let day = read(&demo("meet.toml")).expect("no fault");
    let before: Vec<u16> = day.flights[0].starters.iter().map(|s| s.before).collect();
    assert_eq!(before, [5, 11, 13]);
    let meet = demo("meet.toml");
    let told = plan::check(source("data/meet.toml", &meet), Some(&gym()));
    assert!(told.is_empty(), "{told:?}");
    let alone = plan::check(source("meet.toml", &meet), None);
    assert!(
        alone[0]
            .to_string()
            .contains("odd: read a meet without a whole gym")
    );
}

#[test]
fn every_fault_is_told_at_once() {
    let changes = [
        ("name = \"Test day\"\n", ""),
        ("\"2026-12-12\"", "\"12.13.2026\""),
        ("date =", "bar = \"75 kg\"\ndate ="),
        ("date =", "last = \"2 min\"\ndate ="),
        ("date =", "apart = \"20 s\"\ndate ="),
        ("date =", "plates = []\ndate ="),
        (
            "date =",
            "plates = [{ mass = \"25 kg\", pairs = 1, thickness = \"27 mm\", diameter = \"450 mm\" }]\ndate =",
        ),
        ("\"deadlift\"", "\"dedlift\""),
        ("order =", "attempt = \"5 s\"\norder ="),
        ("\"Tevita\", ", ""),
        (", \"Hamza\"]", "]"),
        ("before = 1", "before = 2"),
        ("before = 1", "before = 201"),
        ("\"tevita\"", "\"hamza\""),
        ("\"tevita\"", "\"Tavita\""),
        ("\"200 kg\"", "\"200\""),
        ("\"200 kg\"", "\"201.3 kg\""),
        ("\"fives\"", "\"sixes\""),
        ("[[flight]]", "[flight]"),
        ("opener = \"430 lb\"", "attempt = \"430 lb\""),
        ("\"430 lb\"", "\"495 lb\""),
        ("before = 1", "lot = 0\nbefore = 1"),
        (
            "\"200 kg\"",
            "\"200 kg\"\nlot = 7\n[[flight.other]]\nname = \"Anna\"\nopener = \"100 kg\"\nlot = 7",
        ),
        ("\"200 kg\"", "\"217.5 kg\""),
        ("order =", "start = \"half past ten\"\norder ="),
        ("order =", "others = 201\norder ="),
        ("date =", "third_changes = 10\ndate ="),
    ];
    let mut out = String::new();
    for (from, to) in changes {
        assert!(MEET.contains(from), "{from:?}");
        let bad = MEET.replacen(from, to, 1);
        let told = plan::check(source("meet.toml", &bad), Some(&gym()));
        let lines: Vec<String> = told.iter().map(|fault| format!("  {fault}\n")).collect();
        assert!(
            !lines.is_empty() || from == "\"Tevita\", ",
            "{from:?} -> {to:?}"
        );
        writeln!(out, "{from:?} -> {to:?}\n{}", lines.concat()).expect("text grows");
    }
    insta::assert_snapshot!(out);
}
