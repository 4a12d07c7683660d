//! The week at the desk: lifters by days, what is planned and what was done; a tap writes.
//!
//! Refuses: changing days that are over, and days beyond the next weeks; a file does those.
use super::place::{Act, Form, Place, Rows};
use crate::language::{Language, p};
use crate::list::{Layout, ListRow, ListState, WeekHead};
use crate::scene::Scene;
use chrono::{Datelike as _, Days, NaiveDate};
use domain::programme::fill::{Filled, fill};
use domain::{Lifter, MassUnit, Prescription};

/// Lifters on one page: each cell is a finger wide and high.
pub(crate) const LIFTERS: usize = 3;
/// Weeks after this one that can be turned to.
const WEEKS_AHEAD: u64 = 4;
/// Weeks before this one that can be looked at.
const WEEKS_BACK: u64 = 8;
const WEEK: u64 = 7;

/// The Monday on or before a day (ISO 8601).
pub(crate) fn monday(date: NaiveDate) -> NaiveDate {
    let back = Days::new(date.weekday().num_days_from_monday().into());
    date.checked_sub_days(back).unwrap_or(date)
}

/// The week of `date`, on the page on which `lifter` stands.
pub(crate) fn at(scene: &Scene<'_>, lifter: &str, date: NaiveDate) -> Place {
    let mut lifters = scene.gym.lifters.iter();
    let place = lifters.position(|known| known.name == lifter);
    Place::Week(monday(date), place.unwrap_or(0) / LIFTERS)
}

fn page<'s>(scene: &Scene<'s>, page: usize) -> &'s [Lifter] {
    let mut pages = scene.gym.lifters.chunks(LIFTERS);
    pages.nth(page).unwrap_or_default()
}

fn days(from: NaiveDate) -> impl Iterator<Item = NaiveDate> + Clone {
    (0..WEEK).filter_map(move |day| from.checked_add_days(Days::new(day)))
}

/// The heads of the page.
pub(crate) fn layout(scene: &Scene<'_>, from: NaiveDate, at: usize) -> Layout {
    let say = scene.language();
    Layout::Week(WeekHead {
        names: page(scene, at).iter().map(|one| one.name.clone()).collect(),
        days: days(from).map(|date| say.week_day(date)).collect(),
        today: days(from).position(|date| date == scene.date),
    })
}

/// A row a day of each lifter on the page, then the ways to other weeks and lifters.
pub(crate) fn rows(scene: &Scene<'_>, from: NaiveDate, at: usize) -> Rows {
    let say = scene.language();
    let cells = page(scene, at)
        .iter()
        .flat_map(|lifter| days(from).map(|date| cell(scene, lifter, date)));
    let mut rows: Rows = cells.collect();
    let this = monday(scene.date);
    let turn = |word, monday: Option<NaiveDate>, within: bool| {
        let monday = monday.filter(|_| within)?;
        let row = ListRow::new(say.say(word), String::new());
        Some((row, Act::Go(Place::Week(monday, at))))
    };
    let before = from.checked_sub_days(Days::new(WEEK));
    let after = from.checked_add_days(Days::new(WEEK));
    let apart = from.signed_duration_since(this).num_weeks();
    let back = apart > -i64::try_from(WEEKS_BACK).unwrap_or(0);
    let ahead = apart < i64::try_from(WEEKS_AHEAD).unwrap_or(0);
    rows.extend(turn(p::WEEK_BEFORE, before, back));
    rows.extend(turn(p::WEEK_AFTER, after, ahead));
    let pages = scene.gym.lifters.len().div_ceil(LIFTERS);
    if pages > 1 {
        let row = ListRow::new(say.say(p::MORE_LIFTERS), String::new());
        rows.push((row, Act::Go(Place::Week(from, (at + 1) % pages))));
    }
    rows
}

/// Whether a day can still be written.
fn open(scene: &Scene<'_>, date: NaiveDate) -> bool {
    let last = monday(scene.date).checked_add_days(Days::new(WEEK * (WEEKS_AHEAD + 1)));
    date >= scene.date && last.is_none_or(|last| date < last)
}

/// One lifter's one day: what was done, else what is planned, else what a programme would fill.
fn cell(scene: &Scene<'_>, lifter: &Lifter, date: NaiveDate) -> (ListRow, Act) {
    let say = scene.language();
    let title = format!("{}, {}", lifter.name, say.date(date));
    let rows = planned(scene, &lifter.name, date);
    let done = done(scene, lifter, date);
    let (value, detail, state) = if !done.is_empty() {
        let detail = rows.first().map(|row| work(say, row, lifter.unit));
        (
            lifts(say, &done),
            detail.unwrap_or_default(),
            ListState::Chosen,
        )
    } else if let Some(first) = rows.first() {
        let names: Vec<&str> = rows.iter().map(|row| row.lift.as_str()).collect();
        let state = match date < scene.date {
            true => ListState::Quiet,
            false => ListState::Plain,
        };
        (lifts(say, &names), work(say, first, lifter.unit), state)
    } else {
        let filled = filled(scene, lifter, date);
        (filled, String::new(), ListState::Quiet)
    };
    let row = ListRow::new(title, value).detail(detail);
    if !open(scene, date) {
        let state = match state {
            ListState::Chosen => ListState::Chosen,
            ListState::Plain
            | ListState::Amiss
            | ListState::Told
            | ListState::Held
            | ListState::Quiet => ListState::Told,
        };
        return (row.state(state), Act::Nothing);
    }
    let place = match rows.is_empty() {
        false => Place::Day(lifter.name.clone(), date),
        true => {
            let of = (lifter.name.as_str(), lifter.unit, date);
            Place::Choice(Box::new(Form::row(of, None)), 0)
        }
    };
    (row.state(state), Act::Go(place))
}

/// The rows that the plan has for a lifter's day.
pub(super) fn planned<'s>(scene: &Scene<'s>, lifter: &str, date: NaiveDate) -> &'s [Prescription] {
    let rows = scene.state.plan.get(&(date, lifter.to_owned()));
    rows.map(Vec::as_slice).unwrap_or_default()
}

/// Lifts of that day of which something was done, as long as it is known.
fn done<'s>(scene: &Scene<'s>, lifter: &Lifter, date: NaiveDate) -> Vec<&'s str> {
    if date > scene.date {
        return Vec::new();
    }
    let past = scene.state.past.lifters.get(&lifter.name);
    let past = past.into_iter().flat_map(|past| past.done());
    let past = past.filter(|(day, _)| *day == date).map(|(_, lift)| lift);
    let runs = scene.state.runs_of(&lifter.name);
    let runs = runs.filter(|run| run.day == date && run.is_over());
    let runs = runs.map(|run| run.sheet.lift.as_str());
    let mut all: Vec<&str> = past.chain(runs).collect();
    all.dedup();
    all
}

/// What a programme would put there; empty where it does not.
fn filled(scene: &Scene<'_>, lifter: &Lifter, date: NaiveDate) -> String {
    if date < scene.date {
        return String::new();
    }
    match fill(scene.gym, scene.state, lifter, date) {
        Some(Filled::Lifts { rows, .. }) => {
            let names: Vec<&str> = rows.iter().map(|(row, _)| row.lift.as_str()).collect();
            lifts(scene.language(), &names)
        }
        Some(Filled::Rest { .. }) | None => String::new(),
    }
}

fn lifts(say: Language, names: &[&str]) -> String {
    let names: Vec<String> = names.iter().map(|name| say.shipped(name)).collect();
    names.join(", ")
}

/// "105 kg, 3 × 5".
fn work(say: Language, row: &Prescription, unit: MassUnit) -> String {
    if !row.is_straight() {
        return say.groups(row, unit);
    }
    let (sets, reps) = (row.first.sets, row.first.reps.planned());
    let load = say.wish(row.first.load, unit);
    match sets {
        1 => format!("{load} × {reps}"),
        sets => format!("{load}, {sets} × {reps}"),
    }
}
