//! Programmes of blocks: read as a coach means them, the days and loads that they fill, and what is
//! told of a bad one.
mod rude;

use chrono::{Days, NaiveDate, Weekday};
use domain::prescription::LoadWish;
use domain::programme::fill::{Filled, fill, filled};
use domain::programme::{Coaching, Pace};
use domain::{Gym, Prescription, State};
use plan::{Fault, Source};
use std::fs;

fn source<'s>(name: &'s str, text: &'s [u8]) -> Source<'s> {
    Source { name, text }
}

fn at(path: &str) -> Vec<u8> {
    let path = format!("{}/../../{path}", env!("CARGO_MANIFEST_DIR"));
    fs::read(path).expect("the file is in the repository")
}

/// The demo gym with the lifter of one of the written programmes.
fn gym_of(name: &str) -> Gym {
    let lifters = at(&format!("tests/programmes/{name}/lifters.toml"));
    let gym = at("demo-data/gym.toml");
    plan::gym(source("gym.toml", &gym), source("lifters.toml", &lifters)).expect("a good gym")
}

fn read(text: &str, gym: &Gym) -> Result<Coaching, Vec<Fault>> {
    plan::coaching(source("programme.toml", text.as_bytes()), gym)
}

fn coached(name: &str) -> Gym {
    let mut gym = gym_of(name);
    let text = at(&format!("tests/programmes/{name}/programme.toml"));
    let text = String::from_utf8(text).expect("text");
    gym.coaching = read(&text, &gym).expect("a good programme");
    gym
}

fn day(text: &str) -> NaiveDate {
    text.parse().expect("a day")
}

fn rows(gym: &Gym, date: NaiveDate) -> Vec<Prescription> {
    match fill(gym, &State::default(), &gym.lifters[0], date) {
        Some(Filled::Lifts { rows, .. }) => rows.into_iter().map(|(row, _)| row).collect(),
        Some(Filled::Rest { .. }) | None => Vec::new(),
    }
}

/// The same year as a table of rows and as one block: each day has the same work.
#[test]
fn a_block_is_what_the_same_plan_is_row_by_row() {
    let gym = coached("three-and-one");
    let text = at("tests/programmes/blocks/plans/year.csv");
    let written = plan::coach_plan(source("plans/year.csv", &text), &gym).expect("a good plan");
    assert_eq!(written.len(), 104);
    let mut filled = Vec::new();
    for days in 0..400 {
        filled.extend(rows(&gym, day("2025-12-20") + Days::new(days)));
    }
    assert_eq!(filled, written);
}

/// Loads of light weeks by hand: 70 % of 75 % of the best of 160 kg.
#[test]
fn light_weeks_come_at_the_end_and_every_nth() {
    let gym = coached("peak");
    let monday = |week: u64| day("2026-01-05") + Days::new(7 * (week - 1));
    let load = |week: u64| rows(&gym, monday(week))[0].first.load;
    // Volume: four weeks twice, the last of each light.
    for week in 1..=8 {
        let wanted = if week % 4 == 0 { 5_250 } else { 7_500 };
        assert_eq!(load(week), LoadWish::OfBest(wanted), "week {week}");
    }
    // Strength: six weeks, every third light; what follows the top set follows it.
    for week in 9..=14 {
        let wanted = if (week - 8) % 3 == 0 { 5_250 } else { 7_500 };
        assert_eq!(load(week), LoadWish::OfBest(wanted), "week {week}");
        let back_off = rows(&gym, monday(week))[0].then[0];
        assert_eq!(back_off.load, LoadWish::OfTop(9_000));
        assert_eq!(back_off.manner.straps, Some(true));
    }
    // The peak has no deadlift in its last week, and the next round begins right after it.
    assert_eq!(load(15), LoadWish::OfBest(8_500));
    assert_eq!(rows(&gym, monday(17)), Vec::new());
    assert_eq!(load(18), LoadWish::OfBest(7_500));
    let tempo = rows(&gym, monday(9) + Days::new(3))[0].first.manner.tempo;
    assert_eq!(tempo.expect("a tempo").to_string(), "3-0-X-0");
}

#[test]
fn what_comes_next_is_told_before_a_block_between_days_and_after_all() {
    let gym = coached("peak");
    let ask = |date: &str| fill(&gym, &State::default(), &gym.lifters[0], day(date));
    let rest = |from: &str| {
        let (programme, from) = ("peak".to_owned(), day(from));
        Some(Filled::Rest { programme, from })
    };
    assert_eq!(ask("2025-12-24"), rest("2026-01-05"));
    assert_eq!(ask("2026-01-06"), rest("2026-01-08"));
    // The third week of the peak has its Friday alone.
    assert_eq!(ask("2026-04-27"), rest("2026-05-01"));
    let Some(Filled::Lifts { programme, rows }) = ask("2026-02-02") else {
        panic!("a day");
    };
    assert_eq!(programme, "peak, volume, week 1 of 4, floor day");
    assert_eq!(rows[0].0.track.expect("a track").as_str(), "volume");
    // 51 weeks from 5 January 2026.
    assert_eq!(ask("2026-12-28"), None);
    let weeks = (day("2026-01-01"), day("2026-01-31"));
    let all = filled(
        &gym,
        &State::default(),
        &gym.lifters[0],
        weeks,
        day("2026-01-01"),
    );
    assert_eq!(all.len(), 4 + 2 * 4);
}

#[test]
fn the_coach_s_plan_goes_before_a_block_for_its_week() {
    let gym = coached("three-and-one");
    let mut state = State::default();
    let row = rows(&gym, day("2026-01-05")).remove(0);
    let of = (day("2026-01-06"), "Ines".to_owned());
    state.plan.insert(of, vec![row]);
    let ask = |date: &str| fill(&gym, &state, &gym.lifters[0], day(date));
    assert_eq!(ask("2026-01-05"), None);
    assert_eq!(ask("2026-01-08"), None);
    assert!(matches!(ask("2026-01-12"), Some(Filled::Lifts { .. })));
}

const HEAD: &str = "[[programme]]\nname = \"year\"\nlifters = [\"Ines\"]\n";
#[test]
fn a_block_is_read_whole() {
    let gym = gym_of("three-and-one");
    let text = HEAD.to_owned()
        + &rude::block(
            "name = \"a\"\nstarts = \"2026-01-05\"\nweeks = 2\ntimes = 2",
            rude::DAY,
        )
        + &rude::block(
            "name = \"b\"\nstarts = \"2026-03-02\"\nweeks = 1",
            rude::DAY,
        );
    let coaching = read(&text, &gym).expect("a good file");
    let programme = coaching.of("Ines").expect("a programme");
    assert_eq!((programme.pace, programme.days.len()), (Pace::Blocks, 0));
    let [a, b] = programme.blocks.as_slice() else {
        panic!("two blocks");
    };
    assert_eq!(
        (a.ends_before(), b.starts),
        (day("2026-02-02"), day("2026-03-02"))
    );
    assert_eq!(
        (a.days[0].name.as_str(), a.days[0].weekday),
        ("Monday", Weekday::Mon)
    );
    assert_eq!(a.week_of(day("2026-01-04")), None);
    assert_eq!(a.week_of(day("2026-01-05")), Some(1));
    assert_eq!(a.week_of(day("2026-02-01")), Some(4));
    assert_eq!(a.week_of(day("2026-02-02")), None);
}

/// A queue's work may say bar and manner too.
#[test]
fn a_queue_says_where_and_how() {
    let gym = gym_of("three-and-one");
    let work = |more: &str| {
        let alternate =
            format!("alternate = [{{ lift = \"rack pull\", sets = 2, reps = 5, {more} }}]");
        format!("{HEAD}[[programme.day]]\nname = \"one\"\n[[programme.day.task]]\n{alternate}\n")
    };
    let coaching = read(
        &work("how = \"hole 9, straps, tempo 3010\", bar = \"old yard\""),
        &gym,
    )
    .expect("a good file");
    let mut coached = gym.clone();
    coached.coaching = coaching;
    let row = rows(&coached, day("2026-01-05")).remove(0);
    assert_eq!(row.bar.as_deref(), Some("old yard bar"));
    assert_eq!(
        (row.first.manner.hole, row.first.manner.straps),
        (Some(9), Some(true))
    );
    for (more, told) in [
        (
            "how = \"hole 39\"",
            "\"hole 39\", where the yard rack of Ines has 38 holes",
        ),
        (
            "how = \"quickly\"",
            "\"quickly\", not understood as where or how sets are done",
        ),
        (
            "how = \"3x5\"",
            "not understood as where or how sets are done",
        ),
        ("bar = \"hex\"", "\"hex\", no bar of that name"),
    ] {
        let faults = read(&work(more), &gym).expect_err(more);
        assert!(
            faults[0].to_string().contains(told),
            "{more}: {}",
            faults[0]
        );
    }
}

/// Light weeks are counted by the time, or through all times.
#[test]
fn light_weeks_are_counted() {
    use domain::programme::blocks::{Block, Light};
    let coaching = coached("peak").coaching;
    let of = |nth: usize| coaching.of("Ines").expect("a programme").blocks[nth].clone();
    let light = |block: &Block| {
        let weeks = 1..=block.weeks_in_all();
        weeks
            .filter(|week| block.light(*week).is_some())
            .collect::<Vec<u16>>()
    };
    assert_eq!(light(&of(0)), [4, 8]);
    assert_eq!(light(&of(1)), [3, 6]);
    assert_eq!(light(&of(2)), [] as [u16; 0]);
    let through = Block {
        light: Some(Light {
            share: 6_000,
            every: Some(3),
        }),
        ..of(0)
    };
    assert_eq!(light(&through), [3, 6]);
}
