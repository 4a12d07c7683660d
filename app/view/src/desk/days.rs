//! The plan written on the screen: whose, which day, and the rows of that day.
//!
//! Refuses: days that are over, and days beyond the next two weeks; a file does those.
use super::place::{Act, Form, Place, Rows};
use crate::language::p;
use crate::list::{ListRow, ListState};
use crate::scene::Scene;
use chrono::{Days, NaiveDate};
use domain::day::share_now;
use domain::{Lifter, MassUnit, Prescription};

/// How many days can be written, from today on.
const DAYS: u64 = 14;

fn planned<'s>(scene: &Scene<'s>, lifter: &str, date: NaiveDate) -> &'s [Prescription] {
    let rows = scene.state.plan.get(&(date, lifter.to_owned()));
    rows.map(Vec::as_slice).unwrap_or_default()
}

/// For whom a plan is written.
pub(crate) fn writers(scene: &Scene<'_>) -> Rows {
    let say = scene.language();
    let row = |lifter: &Lifter| {
        let ahead = (0..DAYS).filter_map(|days| scene.date.checked_add_days(Days::new(days)));
        let written = ahead.filter(|date| !planned(scene, &lifter.name, *date).is_empty());
        let days = say.fill(p::DAYS_WRITTEN, &[&written.count().to_string()]);
        let act = Act::Go(Place::Days(lifter.name.clone()));
        (ListRow::new(days, lifter.name.clone()), act)
    };
    scene.gym.lifters.iter().map(row).collect()
}

/// The days to come of one lifter.
pub(crate) fn days(scene: &Scene<'_>, lifter: &str) -> Rows {
    let say = scene.language();
    let programme = scene.gym.coaching.of(lifter);
    let row = |date: NaiveDate| {
        let rows = planned(scene, lifter, date);
        let lifts: Vec<String> = rows.iter().map(|row| say.shipped(&row.lift)).collect();
        let detail = match programme {
            Some(programme) if lifts.is_empty() => say.fill(p::FILLED_BY, &[&programme.name]),
            _ => String::new(),
        };
        let value = match lifts.is_empty() {
            true => say.say(p::NOTHING_WRITTEN),
            false => lifts.join(", "),
        };
        let row = ListRow::new(say.date(date), value).detail(detail);
        (row, Act::Go(Place::Day(lifter.to_owned(), date)))
    };
    let ahead = (0..DAYS).filter_map(|days| scene.date.checked_add_days(Days::new(days)));
    ahead.map(row).collect()
}

/// The rows of one day, and one more.
pub(crate) fn day(scene: &Scene<'_>, lifter: &str, date: NaiveDate) -> Rows {
    let say = scene.language();
    let known = scene.gym.lifters.iter().find(|known| known.name == lifter);
    let unit = known.map_or(MassUnit::Kg, |lifter| lifter.unit);
    let of = (lifter, unit, date);
    let row = |(at, row): (usize, &Prescription)| {
        let form = Form::row(of, Some((at, row)));
        let ladder = row.ladder.as_ref().map(|name| say.shipped(name));
        let detail = ladder.unwrap_or_else(|| row.note.clone());
        let with = (scene.gym, scene.state);
        let work = say.groups_now(row, unit, |group| share_now(with, known?, row, group));
        let shown = ListRow::new(say.shipped(&row.lift), work).detail(detail);
        // Several groups say more than the form's fields; the plan's file is where they change.
        if row.is_straight() {
            (shown, Act::Go(Place::Form(Box::new(form))))
        } else {
            (shown.state(ListState::Told), Act::Nothing)
        }
    };
    let mut rows: Rows = planned(scene, lifter, date)
        .iter()
        .enumerate()
        .map(row)
        .collect();
    let add = ListRow::new(say.say(p::ADD), say.say(p::NEW_ROW));
    rows.push((add, Act::Go(Place::Form(Box::new(Form::row(of, None))))));
    rows
}
