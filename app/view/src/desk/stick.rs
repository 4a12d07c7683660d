//! The stick and the copies at the desk: what a stick brings and would change, what is kept in the
//! second place.
//!
//! Refuses: a part of a stick; a wish about one that is no longer in.
use super::news::StickNews;
use super::place::{Act, Place, Rows};
use super::rows::{held_named, told};
use super::stick_in::{StickChange, StickIn};
use super::wish::{Errand, Wish};
use crate::language::{Language, p};
use crate::list::{ListRow, ListState};
use crate::scene::Scene;

/// The way to the stick's page, among the plans.
pub(crate) fn row(scene: &Scene<'_>) -> (ListRow, Act) {
    let say = scene.language();
    let row = match &scene.news.stick {
        StickNews::Unset => ListRow::new(say.say(p::STICK), say.say(p::STICK_UNSET)),
        StickNews::Out => ListRow::new(say.say(p::STICK), say.say(p::STICK_OUT)),
        StickNews::In(stick) => {
            let plans = say.fill(p::STICK_PLANS, &[&stick.plans.len().to_string()]);
            let sound = stick.can_take || stick.plans.is_empty();
            let state = if sound {
                ListState::Plain
            } else {
                ListState::Amiss
            };
            ListRow::new(say.say(p::STICK), plans).state(state)
        }
    };
    (row, Act::Go(Place::Stick))
}

/// The stick.
pub(crate) fn stick(scene: &Scene<'_>) -> Rows {
    let say = scene.language();
    let only = |row: ListRow| vec![(row.state(ListState::Told), Act::Nothing)];
    match &scene.news.stick {
        StickNews::Unset => {
            let row = ListRow::new(say.say(p::STICK_UNSET), String::new());
            only(row.detail(say.say(p::STICK_KEY)))
        }
        StickNews::Out => only(ListRow::new(say.say(p::STICK_OUT), String::new())),
        StickNews::In(stick) => lies_in(say, stick),
    }
}

/// What a tap orders.
fn order(errand: Errand) -> Act {
    Act::Want(Wish::Errand(errand))
}

fn lies_in(say: Language, stick: &StickIn) -> Rows {
    let mut rows = Rows::new();
    if stick.can_take {
        let row = ListRow::new(say.say(p::PLANS), say.say(p::STICK_TAKE));
        rows.push((row, order(Errand::TakeStick(stick.id.clone()))));
    }
    let row = ListRow::new(say.say(p::STICK_RECORD), say.say(p::STICK_WRITE));
    rows.push((row, order(Errand::WriteStick(stick.id.clone()))));
    rows.extend(stick.changes.iter().map(|change| changed(say, change)));
    let plans = stick.plans.iter().enumerate();
    rows.extend(plans.map(|(at, (name, read))| match read {
        Ok(count) => {
            let title = say.fill(p::PLAN_ROWS, &[&count.to_string()]);
            let row = ListRow::new(title, name.clone());
            (row.state(ListState::Told), Act::Nothing)
        }
        Err(faults) => {
            let title = say.fill(p::FAULTS, &[&faults.len().to_string()]);
            let row = ListRow::new(title, name.clone()).state(ListState::Amiss);
            (row, Act::Go(Place::StickPlan(at)))
        }
    }));
    rows.extend(stick.passed.iter().map(|why| {
        let row = ListRow::new(say.say(p::STICK_PASSED), String::new()).detail(why.to(say));
        (row.state(ListState::Told), Act::Nothing)
    }));
    rows
}

/// What changes for one lifter.
fn changed(say: Language, change: &StickChange) -> (ListRow, Act) {
    let counts = [
        (change.new, p::STICK_NEW),
        (change.changed, p::STICK_CHANGED),
        (change.same, p::STICK_SAME),
    ];
    let counts = counts.into_iter().filter(|(count, _)| *count > 0);
    let counts: Vec<String> = counts
        .map(|(count, words)| say.fill(words, &[&count.to_string()]))
        .collect();
    let (first, last) = change.days;
    let days = if first == last {
        say.short_day(first)
    } else {
        say.fill(
            p::STICK_DAYS,
            &[&say.short_date(first), &say.short_day(last)],
        )
    };
    let row = ListRow::new(change.lifter.clone(), counts.join(" · ")).detail(days);
    (row.state(ListState::Told), Act::Nothing)
}

/// All faults of one of its plans.
pub(crate) fn faults(scene: &Scene<'_>, at: usize) -> Rows {
    let StickNews::In(stick) = &scene.news.stick else {
        return stick(scene);
    };
    match stick.plans.get(at) {
        Some((_, Err(faults))) => {
            let faults: Vec<String> = faults
                .iter()
                .map(|f| f.to(scene.language()).to_owned())
                .collect();
            told(scene, &faults)
        }
        Some((_, Ok(_))) | None => told(scene, &[]),
    }
}

/// The copies in the second place.
pub(crate) fn copies(scene: &Scene<'_>) -> Rows {
    let say = scene.language();
    let Some(names) = &scene.news.copies else {
        let row = ListRow::new(say.say(p::COPIES_UNSET), String::new());
        let row = row.detail(say.say(p::COPIES_KEY)).state(ListState::Told);
        return vec![(row, Act::Nothing)];
    };
    let now = ListRow::new(say.say(p::COPIES), say.say(p::COPY_NOW));
    let mut rows: Rows = vec![(now, order(Errand::BackUp))];
    rows.extend(names.iter().map(|name| {
        // "pinladder-2026-12-01.sqlite" is the copy of a day.
        let shown = name.strip_prefix("pinladder-").unwrap_or(name);
        let shown = shown.strip_suffix(".sqlite").unwrap_or(shown);
        let row = held_named(say, p::PUT_BACK, shown.to_owned());
        (row, order(Errand::Restore(name.clone())))
    }));
    rows
}
