//! Lifts that were left open, at the desk: the coach opens one again with a tap.
use super::place::{Act, Place, Rows};
use crate::language::p;
use crate::left_open::{LeftOpen, done, list};
use crate::list::{ListRow, ListState};
use crate::scene::Scene;
use domain::{Command, DayCommand};

/// The way there, where there is something to see.
pub(crate) fn way(scene: &Scene<'_>) -> Option<(ListRow, Act)> {
    let count = list(scene.state).len();
    let title = scene.language().say(p::days::LEFT_OPEN);
    let row = ListRow::new(title, count.to_string());
    (count > 0).then_some((row, Act::Go(Place::LeftOpen)))
}

/// One a lift, the last one closed first.
pub(crate) fn rows(scene: &Scene<'_>) -> Rows {
    let say = scene.language();
    let row = |one: LeftOpen| {
        let row = ListRow::new(
            format!("{}, {}", one.lifter, say.shipped(&one.lift)),
            say.date(one.date),
        );
        let (no, on) = (one.no, scene.date);
        let open = Command::Day(DayCommand::ReopenLift { no, on });
        (row.detail(done(say, &one)), Act::Tell(open))
    };
    let mut rows: Rows = list(scene.state).into_iter().map(row).collect();
    if rows.is_empty() {
        let none = ListRow::new(say.say(p::days::LEFT_OPEN_NONE), String::new());
        rows.push((none.state(ListState::Told), Act::Nothing));
    }
    rows
}
