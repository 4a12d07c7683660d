//! Next time at the desk: what is due for a lifter, lift by lift, and the coach's word against it.
//!
//! Refuses: a ruling where nothing was recorded; there the plan is the place for a load.
use super::place::{Act, Form, Place, Rows};
use super::rows::chosen;
use crate::language::p;
use crate::list::{ListRow, ListState};
use crate::scene::Scene;
use domain::next::Why;
use domain::next::here::{LiftDue, all_due};

/// What is due for a lifter after all that was done so far.
pub(crate) fn next_times(scene: &Scene<'_>, name: &str) -> Rows {
    let say = scene.language();
    let lifter = scene.gym.lifters.iter().find(|lifter| lifter.name == name);
    let (Some(lifter), Some(tomorrow)) = (lifter, scene.date.succ_opt()) else {
        return Vec::new();
    };
    let row = |one: LiftDue| {
        let decision = &one.due.decision;
        let title = format!(
            "{} × {}",
            say.tracked(&one.lift, one.track.name),
            decision.reps
        );
        let load = decision.due().map(|load| say.mass(load, lifter.unit));
        let load = load.unwrap_or_default();
        let row = ListRow::new(title.clone(), load).detail(say.due(&one.due, lifter.unit));
        let last = one.past.last().filter(|_| one.recorded.is_some());
        let Some(last) = last else {
            return (row.state(ListState::Told), Act::Nothing);
        };
        let state = chosen(decision.why == Why::Coach);
        let title = format!("{name}, {title}");
        let form = Form::ruling(
            last.no,
            title,
            lifter.unit,
            Place::NextTimes(name.to_owned()),
        );
        (row.state(state), Act::Go(Place::Form(Box::new(form))))
    };
    let due = all_due(scene.gym, scene.state, lifter, tomorrow);
    let mut rows: Rows = due.into_iter().map(row).collect();
    if rows.is_empty() {
        let none = ListRow::new(say.say(p::NOTHING_DUE), String::new());
        rows.push((none.state(ListState::Told), Act::Nothing));
    }
    rows
}
