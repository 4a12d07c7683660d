//! The day sheet of the demo gym: text, JSON, and the JSON Schema that the JSON obeys.
//!
//! Refuses: a schema file that is stale; `cargo xtask renew` writes it anew.
use chrono::NaiveDate;
use domain::{Event, Fact, Moment, State};
use kiosk::folder::DEMO_PLAN;
use plan::Source;
use std::path::PathBuf;

struct Demo {
    gym: domain::Gym,
    state: State,
}

fn demo() -> Demo {
    let gym = kiosk::gym_files::demo().expect("the demo gym is without fault");
    let text = Source {
        name: "four-weeks.csv",
        text: DEMO_PLAN.as_bytes(),
    };
    let rows = plan::coach_plan(text, &gym).expect("the demo plan is without fault");
    let taken = Fact::PlanTaken {
        name: "four-weeks.csv".into(),
        rows,
    };
    Demo {
        gym,
        state: State::replay(&[Event {
            at: Moment(0),
            fact: taken,
        }]),
    }
}

fn date(day: u32) -> NaiveDate {
    NaiveDate::from_ymd_opt(2026, 11, day).expect("a day")
}

fn text(demo: &Demo, date: NaiveDate) -> String {
    let day = domain::day::day(&demo.gym, &demo.state, date);
    view::sheet_text(&demo.gym.name, date, &day, None, &[])
}

fn json(demo: &Demo, date: NaiveDate, lifter: Option<&str>) -> String {
    let day = domain::day::day(&demo.gym, &demo.state, date);
    view::sheet_json(&view::sheet_doc(&demo.gym.name, date, &day, lifter))
}

#[test]
fn a_rack_pull_day_in_text() {
    insta::assert_snapshot!("rack_pull_day", text(&demo(), date(25)));
}

#[test]
fn four_days_in_text() {
    let demo = demo();
    let days = [23, 24, 26, 27]
        .map(|day| text(&demo, date(day)))
        .join("\n");
    insta::assert_snapshot!("four_days", days);
}

#[test]
fn one_lifter_in_json() {
    insta::assert_snapshot!("one_lifter_json", json(&demo(), date(25), Some("Tevita")));
}

#[test]
fn no_line_is_wider_than_a_terminal() {
    let demo = demo();
    for offset in 0..28 {
        let day = date(23) + chrono::Days::new(offset);
        for line in text(&demo, day).lines() {
            assert!(line.chars().count() <= 100, "{day}: {line}");
        }
    }
}

fn schema_file() -> PathBuf {
    acceptance::top().join("app/view/schema/sheet.schema.json")
}

#[test]
fn the_schema_is_up_to_date() {
    let made = view::sheet_schema();
    if acceptance::renewing() {
        std::fs::write(schema_file(), &made).expect("the schema is written");
    }
    let kept = std::fs::read_to_string(schema_file()).unwrap_or_default();
    assert_eq!(kept, made, "stale; run cargo xtask renew");
}

#[test]
fn every_day_of_the_demo_plan_obeys_the_schema() {
    let schema: serde_json::Value =
        serde_json::from_str(&view::sheet_schema()).expect("the schema is JSON");
    let checker = jsonschema::validator_for(&schema).expect("the schema is a schema");
    let demo = demo();
    for offset in 0..28 {
        let day = date(23) + chrono::Days::new(offset);
        let sheet: serde_json::Value =
            serde_json::from_str(&json(&demo, day, None)).expect("the sheet is JSON");
        let faults: Vec<String> = checker
            .iter_errors(&sheet)
            .map(|fault| fault.to_string())
            .collect();
        assert!(faults.is_empty(), "{day}: {faults:?}");
    }
    let wrong = serde_json::json!({ "gym": "x", "date": 7, "entries": [] });
    assert!(
        !checker.is_valid(&wrong),
        "the schema must refuse something"
    );
}
