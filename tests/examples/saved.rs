//! What planning together saves on the demo gym: four lifters at one bar, against lifting in
//! fixed rounds with each lifter's own stacks. Prints; judges nothing.
//!
//! `cargo run --release -p acceptance --example saved`
#![allow(clippy::print_stdout, reason = "this prints figures")]
use chrono::NaiveDate;
use domain::day::day;
use domain::decide::{Command, decide};
use domain::rotation::{Asked, ask, stations};
use domain::sheet::LiftSheet;
use domain::solve::change;
use domain::solve::rotation::{Effort, plan};
use domain::{Event, Fact, Moment, PlateFace, State};
use kiosk::folder::{DEMO, DEMO_PLAN};
use plan::Source;

/// States that the planner may look at.
const STATES_MAX: u64 = 50_000_000;

fn main() {
    let source = |at: usize| Source {
        name: DEMO[at].0,
        text: DEMO[at].1.as_bytes(),
    };
    let gym = plan::gym(source(0), source(1)).expect("the demo gym");
    let text = Source {
        name: "four-weeks.csv",
        text: DEMO_PLAN.as_bytes(),
    };
    let rows = plan::coach_plan(text, &gym).expect("the demo plan");
    let date = NaiveDate::from_ymd_opt(2026, 11, 25).expect("a day");
    let taken = Fact::PlanTaken {
        name: "four-weeks.csv".into(),
        rows,
    };
    let mut state = State::replay(&[Event {
        at: Moment(0),
        fact: taken,
    }]);
    for entry in day(&gym, &state.clone(), date) {
        let Ok(sheet) = entry.outcome else { continue };
        let begin = Command::BeginLift(Box::new(sheet));
        for event in decide(&state, begin, Moment(0)).expect("they begin") {
            state.apply(&event);
        }
    }
    for station in stations(&state, date) {
        let Some(asked) = ask(&gym, &state, &station, date, Moment(0), None) else {
            continue;
        };
        if asked.lifts.len() < 2 {
            continue;
        }
        let sheets: Vec<&LiftSheet> = asked
            .lifts
            .iter()
            .map(|(no, _)| &state.lifts[no].sheet)
            .collect();
        let mut never = || true;
        let effort = Effort {
            states: STATES_MAX,
            go_on: &mut never,
        };
        let planned = plan(&asked.problem, effort).expect("it can be planned");
        let (ends, handling) = rounds(&asked, &sheets);
        println!(
            "{}, {}: {} lifters",
            station.rack,
            station.bar,
            sheets.len()
        );
        let row = |name: &str, ends: u64, handling: u64| {
            println!(
                "  {name:<14} ends after {:>5} s, handling {:>5} s",
                s(ends),
                s(handling)
            );
        };
        row("fixed rounds", ends, handling);
        row("planned", planned.ends_ns, planned.handling_ns);
        let less = |a: u64, b: u64| 100 - b * 100 / a.max(1);
        println!(
            "  saved          {} % of the time, {} % of the handling; proven: {}",
            less(ends, planned.ends_ns),
            less(handling, planned.handling_ns),
            planned.proven
        );
    }
}

/// Everybody's first rung, then everybody's second, each with the lifter's own stacks.
fn rounds(asked: &Asked, sheets: &[&LiftSheet]) -> (u64, u64) {
    let problem = &asked.problem;
    let cost = |face: &PlateFace| {
        let kind = problem
            .equipment
            .plates
            .iter()
            .find(|kind| kind.mass == face.mass);
        kind.map_or(0, |kind| kind.handling_ns)
    };
    let (mut now, mut handling) = (0_u64, 0_u64);
    let mut on: Vec<PlateFace> = Vec::new();
    let mut hole = None;
    let mut rested = vec![0_u64; sheets.len()];
    let most = sheets
        .iter()
        .map(|sheet| sheet.rungs.len())
        .max()
        .unwrap_or(0);
    for round in 0..most {
        for (at, sheet) in sheets.iter().enumerate() {
            let Some(rung) = sheet.rungs.get(round) else {
                continue;
            };
            let turn = problem.lifters[at].turns[round];
            let hands = change(&on, &rung.per_side);
            let moved: u64 = hands.take_off.iter().chain(&hands.put_on).map(cost).sum();
            handling += moved;
            now += moved;
            if turn.hole.is_some() && turn.hole != hole {
                // The bar is empty at the first setting, and all share one hole after it.
                now += problem.hole_change_ns;
                hole = turn.hole;
            }
            let rest = if round == 0 { 0 } else { turn.rest_ns };
            now = now.max(rested[at] + rest) + turn.lasts_ns;
            rested[at] = now;
            on.clone_from(&rung.per_side);
        }
    }
    (now, handling)
}

fn s(ns: u64) -> u64 {
    ns / 1_000_000_000
}
