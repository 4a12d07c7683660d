//! Programmes as a coach writes them, each over a simulated year: read, taken, lifted and ruled
//! through the real code, by lifters who never miss and by some who do, with a prompt coach and a
//! rude one.
#![allow(
    clippy::wildcard_enum_match_arm,
    reason = "a test looks at what it is about"
)]
#[path = "../../../domain/tests/dice/mod.rs"]
#[allow(dead_code, reason = "each test uses a part of the dice")]
mod dice;
mod drawing;
mod judge;
mod life;
mod lifter;
mod model;
mod programme;
mod table;

use domain::next::Why;
use judge::judge;
use life::{Coach, Year};
use lifter::Kind;
use plan::Source;
use programme::{NAMES, Programme};

/// What happened in years, so that no test passes because nothing did.
#[derive(Debug, Default)]
struct Seen {
    done: usize,
    wrong: usize,
    moved: usize,
    lowered: usize,
    away: usize,
    ruled: usize,
    differs: usize,
}

fn seen(years: &[Year]) -> Seen {
    let mut seen = Seen::default();
    for done in years.iter().flat_map(|year| &year.done) {
        let why = done.due.as_ref().map(|due| due.decision.why);
        seen.done += 1;
        seen.wrong += usize::from(done.outing.went.wrong());
        seen.moved += usize::from(done.outing.went.moved());
        seen.lowered += usize::from(matches!(why, Some(Why::OutOfTries | Why::TooMuch)));
        seen.away += usize::from(matches!(why, Some(Why::Away | Why::Ill)));
        seen.ruled += usize::from(done.is_ruled());
        seen.differs += usize::from(done.planned.is_some());
    }
    seen
}

fn years(name: &'static str, seeds: std::ops::Range<u64>) -> Vec<Year> {
    let programme = Programme::of(name);
    let mut years = Vec::new();
    for seed in seeds {
        for coach in [Coach::Prompt, Coach::Rude] {
            let year = Year::of(&programme, Kind::Human, coach, seed);
            judge(&year, &format!("{name}, {coach:?} coach, lifter {seed}"));
            years.push(year);
        }
    }
    years
}

macro_rules! humans {
    ($($test:ident: $name:literal, $least:literal;)*) => {$(
        #[test]
        fn $test() {
            let seen = seen(&years($name, 0..3));
            assert!(seen.done >= 6 * $least, "{seen:?}");
            for times in [seen.wrong, seen.moved, seen.lowered, seen.away] {
                assert!(times > 0, "{seen:?}");
            }
        }
    )*};
}

humans! {
    humans_add_the_same_each_time: "linear", 80;
    humans_go_heavy_light_and_medium: "heavy-light-medium", 80;
    humans_ride_waves: "waves", 55;
    humans_train_in_blocks: "blocks", 55;
    humans_go_by_effort: "effort", 55;
    humans_take_five_in_turn: "five-in-turn", 28;
    humans_train_in_blocks_of_weeks: "three-and-one", 55;
    humans_peak_three_times: "peak", 70;
}

/// Back-offs follow the top set as it was lifted: 90 % and 92 %, within the 2.5 % that a load may
/// be off.
#[test]
fn back_offs_follow_all_year() {
    let mut checked = 0;
    for year in years("effort", 0..2) {
        for done in &year.done {
            let share = if done.lift == "deadlift" { 90 } else { 92 };
            let wanted = domain::Mass::from_ng(done.works[0].ng() / 100 * share);
            for back_off in &done.works[1..] {
                let off = back_off.apart(wanted).ng();
                assert!(off <= wanted.ng() / 40, "{} {:?}", done.date, done.works);
                checked += 1;
            }
        }
    }
    assert!(checked > 500, "{checked}");
}

/// Every row of every plan is understood, nothing is odd, and the year is whole.
#[test]
fn the_files_are_read_whole() {
    for name in NAMES {
        let programme = Programme::of(name);
        let gym = programme.gym();
        let rows = programme.rows(&gym).len();
        let wanted = match name {
            "linear" | "five-in-turn" | "three-and-one" | "peak" => 0,
            "heavy-light-medium" => 3 * 52,
            _ => 2 * 52,
        };
        assert_eq!(rows, wanted, "{name}");
        assert!(wanted > 0 || programme.text("programme.toml").is_some());
    }
}

/// A row that the coach wrote twice, a week without a Monday, a training max forgotten: told by row,
/// and nothing is taken.
#[test]
fn a_rude_coach_s_file_is_told_and_not_taken() {
    let programme = Programme::of("waves");
    let gym = programme.gym();
    let text = programme.text("plans/year.csv").expect("a plan");
    let text = String::from_utf8(text).expect("text");
    let told = |text: &str| {
        let name = "plans/year.csv";
        let source = Source {
            name,
            text: text.as_bytes(),
        };
        let faults = plan::coach_plan(source, &gym).expect_err("told");
        faults
            .iter()
            .map(|fault| format!("{fault}\n"))
            .collect::<String>()
    };
    let row = text.lines().nth(4).expect("a row");
    let twice = text.replacen(row, &format!("{row}\n{row}"), 1);
    assert_eq!(
        told(&twice),
        "plans/year.csv, row 6: read deadlift for Ines on 2026-01-12 again, after row 5; keep one of the two rows\n"
    );
    let no_monday = text.replacen("first monday: 2026-01-05\n", "", 1);
    let asked = told(&no_monday);
    assert!(
        asked.starts_with(
            "plans/year.csv, row 2, column weekday: read a weekday without the Monday"
        ),
        "{asked}"
    );
    let other = text.replacen("rack pull", "halting deadlift", 1);
    assert_eq!(
        told(&other),
        "plans/year.csv, row 4, column E: read \"65 % of training max\", of a training max in the halting deadlift that Ines does not have on 2026-01-08; write a mass, or the training max in lifters.toml\n"
    );
}
