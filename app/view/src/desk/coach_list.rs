//! The coach's list at the desk: who waits comes first; a tap rules, or says that a load is meant.
use super::place::{Act, Form, Place, Rows};
use crate::language::{Language, p};
use crate::list::{ListRow, ListState};
use crate::next_all;
use crate::scene::Scene;
use domain::Command;
use domain::coach_word::{CoachSays, CoachWord};
use domain::next::coach_list::{CoachLine, Concern, coach_list};

fn lines(scene: &Scene<'_>) -> Vec<CoachLine> {
    let tomorrow = scene.date.succ_opt().unwrap_or(scene.date);
    coach_list(scene.gym, scene.state, scene.date, tomorrow)
}

/// How many lines wait for the coach.
pub(crate) fn waiting(scene: &Scene<'_>) -> usize {
    next_all::waiting(scene.gym, scene.state, scene.date)
}

/// The way to all of them, where `more` find no room.
pub(crate) fn way(scene: &Scene<'_>, more: usize) -> (ListRow, Act) {
    let say = scene.language();
    let value = say.fill(p::list::MORE, &[&more.to_string()]);
    let row = ListRow::new(say.say(p::list::TITLE), value);
    (row, Act::Go(Place::CoachList))
}

/// One row a line.
pub(crate) fn rows(scene: &Scene<'_>) -> Rows {
    let say = scene.language();
    let row = |line: CoachLine| {
        let title = say.say(next_all::state_of(&line.concern));
        let state = if line.concern.waits() {
            ListState::Amiss
        } else {
            ListState::Plain
        };
        let row = ListRow::new(title, next_all::whose(say, &line));
        let why = next_all::because(say, &line);
        match &line.concern {
            Concern::Hurt { .. } => {
                let act = Act::Go(Place::Health(line.lifter.clone()));
                (row.detail(why).state(state), act)
            }
            Concern::LooksWrong { .. } => {
                let why = format!("{why}; {}", say.say(p::list::WRONG_TAP));
                (row.detail(why).state(state), meant(&line))
            }
            Concern::OverReaching
            | Concern::Stuck
            | Concern::Anew
            | Concern::Waits
            | Concern::Differs { .. }
            | Concern::Away
            | Concern::Due => {
                let row = row.detail(why);
                let Some(no) = line.after else {
                    return (row.state(ListState::Told), Act::Nothing);
                };
                let title = next_all::whose(say, &line);
                let form = Form::ruling(no, title, line.unit, Place::CoachList);
                (row.state(state), Act::Go(Place::Form(Box::new(form))))
            }
        }
    };
    let mut rows: Rows = lines(scene).into_iter().map(row).collect();
    if rows.is_empty() {
        let none = ListRow::new(say.say(p::list::NOBODY), String::new());
        rows.push((none.state(ListState::Told), Act::Nothing));
    }
    rows
}

/// Says that a load which looks wrong is meant.
fn meant(line: &CoachLine) -> Act {
    let (Concern::LooksWrong { date, load, .. }, Some((lift, _))) = (&line.concern, &line.of)
    else {
        return Act::Nothing;
    };
    Act::Tell(Command::SayCoach(Box::new(CoachWord {
        lifter: line.lifter.clone(),
        what: CoachSays::LoadMeant {
            lift: lift.clone(),
            date: *date,
            load: *load,
        },
        note: Language::English.say(p::list::NOTE_AT_DESK),
    })))
}
