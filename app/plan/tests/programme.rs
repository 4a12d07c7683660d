//! programme.toml: what it makes, and every word that is told about a bad one.
use chrono::Weekday;
use domain::next::{Rule, Step};
use domain::prescription::LoadWish;
use domain::programme::{Coaching, Pace, shipped};
use domain::split::SplitRule;
use domain::{Gym, Mass, MassUnit};
use plan::{Fault, Source};

fn demo(name: &str) -> Vec<u8> {
    let path = format!("{}/../../demo-data/{name}", env!("CARGO_MANIFEST_DIR"));
    std::fs::read(path).expect("the demo file is in the repository")
}

fn gym() -> Gym {
    let (gym, lifters) = (demo("gym.toml"), demo("lifters.toml"));
    let source = |name, text| Source { name, text };
    plan::gym(source("gym.toml", &gym), source("lifters.toml", &lifters)).expect("a good gym")
}

fn read(text: &str) -> Result<Coaching, Vec<Fault>> {
    let source = Source {
        name: "programme.toml",
        text: text.as_bytes(),
    };
    plan::coaching(source, &gym())
}

const GOOD: &str = r#"[[programme]]
name = "split pulls"
lifters = ["tevita"]
[[programme]]
name = "squat and press"
lifters = ["Hamza"]
apart_days = 2
[[programme.day]]
name = "one"
[[programme.day.task]]
alternate = [{ lift = "deadlift", sets = 3, reps = 5, first = "100 kg", rest = "3 min" }]
[[programme.day.task]]
alternate = [{ lift = "power clean", sets = 5, reps = 3 }, { lift = "power snatch", sets = 6, reps = 2, note = "bar close" }]
[[programme.day]]
name = "two"
[[programme.day.task]]
alternate = [{ lift = "barbell shrug", sets = 3, reps = 5, ladder = "FIVES" }]
[[rule]]
step = "2.5 kg"
[[rule]]
lift = "Rack Pull"
step = "2 %"
tries = 3
[[rule]]
lifter = "Hamza"
away_days = 14
[[rule]]
lift = "rack pull"
lifter = "Hamza"
tries = 1
[[split]]
from = "405 lb"
[[split]]
lifter = "Hamza"
slow = "40 %"
test = "2027-03-06"
back_days = 28
"#;

#[test]
fn nothing_written_leaves_what_comes_with_the_program() {
    let coaching = read("").expect("an empty file");
    assert_eq!(coaching.programmes, shipped());
    assert_eq!(coaching.rule("Tevita", "rack pull"), Rule::SHIPPED);
    assert_eq!(coaching.of("Tevita"), None);
}

#[test]
fn programmes_are_laid_over_and_added() {
    let coaching = read(GOOD).expect("a good file");
    let split = coaching.of("Tevita").expect("a programme");
    assert_eq!(
        (&split.days, split.pace),
        (&shipped()[0].days, shipped()[0].pace)
    );
    let own = coaching.of("Hamza").expect("a programme");
    assert_eq!(own.pace, Pace::Queue { apart_days: 2 });
    assert_eq!(own.days.len(), 2);
    let clean = &own.days[0].tasks[1].alternate;
    assert_eq!(
        (clean[0].first, clean[1].note.as_str()),
        (LoadWish::OfBest(7_500), "bar close")
    );
    let dead = &own.days[0].tasks[0].alternate[0];
    let first = LoadWish::Mass(Mass::of(MassUnit::Kg, 100_000));
    assert_eq!((dead.first, dead.rest_s), (first, Some(180)));
    assert_eq!(
        own.days[1].tasks[0].alternate[0].ladder.as_deref(),
        Some("fives")
    );
}

#[test]
fn days_of_the_week() {
    let text = GOOD
        .replace("apart_days = 2\n", "")
        .replace("name = \"one\"", "name = \"one\"\nweekday = \"monday\"")
        .replace("name = \"two\"", "name = \"two\"\nweekday = \"Friday\"");
    let coaching = read(&text).expect("a good file");
    let own = coaching.of("Hamza").expect("a programme");
    let on = own.days.iter().map(|day| day.weekday);
    assert!(on.eq([Some(Weekday::Mon), Some(Weekday::Fri)]));
    assert_eq!(own.pace, Pace::Week);
}

/// Figure by figure: for all, for the lift, for the lifter, for both.
#[test]
fn the_nearer_rule_goes_before() {
    let coaching = read(GOOD).expect("a good file");
    let kilos = Step::Mass(Mass::of(MassUnit::Kg, 2_500));
    let rule = |lifter, lift| {
        let rule = coaching.rule(lifter, lift);
        (rule.step, rule.tries, rule.away_days)
    };
    assert_eq!(rule("Tevita", "deadlift"), (kilos, 2, 21));
    assert_eq!(rule("Tevita", "rack pull"), (Step::Share(200), 3, 21));
    assert_eq!(rule("Hamza", "deadlift"), (kilos, 2, 14));
    assert_eq!(rule("Hamza", "rack pull"), (Step::Share(200), 1, 14));
}

#[test]
fn when_to_split_is_laid_over_figure_by_figure() {
    let coaching = read(GOOD).expect("a good file");
    let heavy = Mass::of(MassUnit::Lb, 405_000);
    let all = SplitRule {
        from: heavy,
        ..SplitRule::shipped()
    };
    assert_eq!(coaching.split("Tevita"), all);
    let own = SplitRule {
        slow: 4_000,
        test: chrono::NaiveDate::from_ymd_opt(2027, 3, 6),
        back_days: 28,
        ..all
    };
    assert_eq!(coaching.split("Hamza"), own);
}

#[test]
fn the_demo_is_good() {
    let text = String::from_utf8(demo("programme.toml")).expect("text");
    let coaching = read(&text).expect("a good file");
    for lifter in ["Tevita", "Hamza", "Olumide", "Željka", "Parvati", "Saoirse"] {
        assert!(coaching.of(lifter).is_some(), "{lifter}");
    }
    let context = gym();
    let source = Source {
        name: "programme.toml",
        text: text.as_bytes(),
    };
    assert_eq!(plan::check(source, Some(&context)), []);
    let alone: Vec<_> = plan::check(source, None)
        .iter()
        .map(ToString::to_string)
        .collect();
    assert_eq!(alone.len(), 1);
    assert!(
        alone[0].starts_with("programme.toml: odd: read a programme without"),
        "{alone:?}"
    );
}

#[test]
fn bad_files() {
    let changes = [
        ("\"split pulls\"", "\"\""),
        ("\"split pulls\"", "\"split pull\""),
        ("[\"tevita\"]", "[\"Tevitta\"]"),
        ("[\"tevita\"]", "\"Tevita\""),
        ("[\"Hamza\"]", "[\"Hamza\", \"Tevita\"]"),
        ("[\"Hamza\"]", "[\"Hamza\", \"hamza\"]"),
        ("apart_days = 2", "apart_days = 0"),
        ("apart_days = 2", "apart = 2"),
        ("name = \"one\"", "name = \"one\"\nweekday = \"Monday\""),
        ("name = \"one\"", "name = \"one\"\nweekday = \"Mo\""),
        ("lift = \"deadlift\"", "lift = \"dedlift\""),
        (
            "sets = 3, reps = 5, first",
            "sets = 30, reps = \"5\", first",
        ),
        ("\"100 kg\"", "\"100\""),
        ("\"100 kg\"", "\"200 %\""),
        ("\"FIVES\"", "\"nines\""),
        (
            "[{ lift = \"barbell shrug\", sets = 3, reps = 5, ladder = \"FIVES\" }]",
            "[]",
        ),
        (
            "[[programme.day.task]]\nalternate = [{ lift = \"barbell",
            "[[programme.day.tasks]]\nalternate = [{ lift = \"barbell",
        ),
        ("\"2.5 kg\"", "\"25 kg\""),
        ("\"2.5 kg\"", "\"2.5\""),
        ("\"2 %\"", "\"20 %\""),
        ("\"2 %\"", "\"2 %\"\nreset = \"3 %\""),
        ("\"2 %\"", "\"2 %\"\ndrop = \"60 %\""),
        ("tries = 3", "tries = 0"),
        ("away_days = 14", "away_days = 400\naway = \"half\""),
        (
            "[[rule]]\nlifter = \"Hamza\"",
            "[[rule]]\nlifter = \"Hamsa\"",
        ),
        ("\"405 lb\"", "\"405\"\noutings = 3"),
        ("\"40 %\"", "\"140 %\"\ntroubles = -1"),
        ("2027-03-06", "6.3.27"),
        ("back_days = 28", "back = 28"),
    ];
    let mut out = String::new();
    for (from, to) in changes {
        assert!(GOOD.contains(from), "{from:?} is in the good file");
        let told = match read(&GOOD.replacen(from, to, 1)) {
            Ok(_) => String::from("  taken\n"),
            Err(faults) => faults.iter().map(|fault| format!("  {fault}\n")).collect(),
        };
        out += &format!("{from:?} -> {to:?}\n{told}\n");
    }
    let new = read("[[programme]]\nname = \"new\"").expect_err("no days");
    out += &format!("a new programme without days\n  {}\n", new[0]);
    insta::assert_snapshot!(out);
}
