//! Rows that many pages of the desk have: chosen or not, held to take away, faults that are told.
use super::place::{Act, Rows};
use super::wish::Wish;
use crate::language::{Language, Phrase, p};
use crate::list::{ListRow, ListState};
use crate::scene::Scene;
use domain::needs::{Thing, need};

/// A row is the one chosen, or not.
pub(super) fn chosen(is: bool) -> ListState {
    if is {
        ListState::Chosen
    } else {
        ListState::Plain
    }
}

/// A row that takes something away: held, not tapped.
pub(super) fn held(say: Language, title: Phrase) -> ListRow {
    held_named(say, p::TAKE_AWAY, say.say(title))
}

/// The same with another title, for something that has a name.
pub(super) fn held_named(say: Language, title: Phrase, name: String) -> ListRow {
    let row = ListRow::new(say.say(title), name);
    row.detail(say.say(p::HOLD_IT)).state(ListState::Held)
}

/// The row that takes a thing out of the gym, or says what still needs it.
pub(super) fn removing(scene: &Scene<'_>, thing: Thing) -> (ListRow, Act) {
    let say = scene.language();
    let title = match &thing {
        Thing::Lifter(name) | Thing::Rack(name) | Thing::Bar(name) => name.clone(),
        Thing::Plate { .. } => say.say(p::THIS_KIND),
    };
    let row = ListRow::new(say.say(p::TAKE_AWAY), title);
    match need(scene.gym, scene.state, scene.date, &thing) {
        Some(need) => {
            let row = row.detail(say.need(&need)).state(ListState::Told);
            (row, Act::Nothing)
        }
        None => {
            let row = row.detail(say.say(p::HOLD_IT)).state(ListState::Held);
            (row, Act::Want(Wish::Remove(thing)))
        }
    }
}

/// Faults, one a row, or that there are none.
pub(super) fn told(scene: &Scene<'_>, faults: &[String]) -> Rows {
    let say = scene.language();
    if faults.is_empty() {
        let row = ListRow::new(say.say(p::ALL_WELL), String::new()).state(ListState::Told);
        return vec![(row, Act::Nothing)];
    }
    let row = |fault: &String| {
        let (place, words) = fault.split_once(": ").unwrap_or(("", fault));
        let row = ListRow::new(place.to_owned(), String::new()).detail(words);
        (row.state(ListState::Told), Act::Nothing)
    };
    faults.iter().map(row).collect()
}
