//! The plan written on the screen: the rows of one lifter's one day.
use super::place::{Act, Form, Place, Rows};
use super::week::planned;
use crate::language::p;
use crate::list::{ListRow, ListState};
use crate::scene::Scene;
use chrono::NaiveDate;
use domain::day::share_now;
use domain::{MassUnit, Prescription};

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
    rows.push((
        add,
        Act::Go(Place::Choice(Box::new(Form::row(of, None)), 0)),
    ));
    rows
}
