//! Programmes and rules at the desk: who follows which, from which day of its queue on, and the
//! figures of next time for one lifter.
//!
//! Refuses: writing a programme's days and lifts; those are the file's.
use super::place::{Act, Kind, Place, Rows, What};
use super::rows::chosen;
use super::what::value;
use super::wish::{Change, Edit, Key, Wish, list, quoted};
use crate::language::{Language, Phrase, p};
use crate::list::ListRow;
use crate::scene::Scene;
use domain::next::Step;
use domain::programme::blocks::Block;
use domain::programme::fill::standing;
use domain::programme::{Begin, Pace, Programme};
use domain::{Lifter, MassUnit};

const FILE: &str = "programme.toml";
const TABLE: &str = "programme";

/// The programmes, and who follows each.
pub(crate) fn programmes(scene: &Scene<'_>) -> Rows {
    let say = scene.language();
    let row = |programme: &Programme| {
        let weeks = programme.blocks.iter().map(Block::weeks_in_all);
        let weeks = weeks.fold(0, u16::saturating_add);
        let days = match programme.pace {
            Pace::Blocks => say.fill(p::WEEKS, &[&weeks.to_string()]),
            Pace::Queue { .. } | Pace::Week => {
                say.fill(p::DAYS, &[&programme.days.len().to_string()])
            }
        };
        let row = ListRow::new(days, programme.name.clone()).detail(programme.lifters.join(", "));
        (row, Act::Go(Place::Programme(programme.name.clone())))
    };
    scene.gym.coaching.programmes.iter().map(row).collect()
}

fn find<'s>(scene: &Scene<'s>, name: &str) -> Option<&'s Programme> {
    let mut all = scene.gym.coaching.programmes.iter();
    all.find(|programme| programme.name == name)
}

/// One programme: its pace, and every lifter to be put in or taken out.
pub(crate) fn programme(scene: &Scene<'_>, name: &str) -> Rows {
    let say = scene.language();
    let Some(programme) = find(scene, name) else {
        return Vec::new();
    };
    let mut rows = Rows::new();
    if let Pace::Queue { apart_days } = programme.pace {
        let title = say.say(p::APART_DAYS);
        let asked = format!("{name}, {title}");
        let path = [Key::Name("apart_days")];
        let what = value(asked, Kind::Count, FILE, (TABLE, name), &path);
        let days = say.fill(p::DAYS, &[&apart_days.to_string()]);
        rows.push((ListRow::new(title, days), Act::Type(what)));
    }
    let row = |lifter: &Lifter| {
        let follows = programme.lifters.contains(&lifter.name);
        let to = (!follows).then_some(programme);
        let words = if follows { p::FOLLOWS } else { p::FOLLOWS_NOT };
        let row = ListRow::new(say.say(words), lifter.name.clone()).state(chosen(follows));
        (row, follow(scene, &lifter.name, to))
    };
    rows.extend(scene.gym.lifters.iter().map(row));
    rows
}

/// Puts a lifter into a programme, or into none, and out of the one before.
fn follow(scene: &Scene<'_>, lifter: &str, to: Option<&Programme>) -> Act {
    let set = |programme: &Programme, lifters: String| {
        let entry = (TABLE, programme.name.as_str());
        Change::Set(Edit::of(FILE, entry, "lifters", lifters))
    };
    let mut changes = Vec::new();
    if let Some(old) = scene.gym.coaching.of(lifter) {
        let others = old.lifters.iter().filter(|name| *name != lifter);
        changes.push(set(old, list(others.map(String::as_str))));
    }
    if let Some(new) = to {
        let others = new
            .lifters
            .iter()
            .map(String::as_str)
            .filter(|name| *name != lifter);
        changes.push(set(new, list(others.chain([lifter]))));
    }
    Act::Want(Wish::Change(changes))
}

/// Which programme a lifter follows, and which of its days comes next.
pub(crate) fn follows(scene: &Scene<'_>, lifter: &str) -> Rows {
    let say = scene.language();
    let now = scene.gym.coaching.of(lifter);
    let none = ListRow::new(say.say(p::PROGRAMME), say.say(p::NO_PROGRAMME));
    let act = if now.is_none() {
        Act::Nothing
    } else {
        follow(scene, lifter, None)
    };
    let mut rows: Rows = vec![(none.state(chosen(now.is_none())), act)];
    let row = |programme: &Programme| {
        let is = now.is_some_and(|now| now.name == programme.name);
        let row = ListRow::new(say.say(p::PROGRAMME), programme.name.clone()).state(chosen(is));
        let act = if is {
            Act::Nothing
        } else {
            follow(scene, lifter, Some(programme))
        };
        (row, act)
    };
    rows.extend(scene.gym.coaching.programmes.iter().map(row));
    if let Some(now) = now.filter(|now| matches!(now.pace, Pace::Queue { .. })) {
        rows.extend(places(scene, lifter, now));
    }
    rows
}

/// The days of the queue; a tap makes one the next.
fn places(scene: &Scene<'_>, lifter: &str, programme: &Programme) -> Rows {
    let say = scene.language();
    // Whoever has lifted today goes on from the chosen day tomorrow.
    let tomorrow = scene.date.succ_opt().unwrap_or(scene.date);
    let lifted = scene.state.lifts_of(lifter, scene.date).next().is_some();
    let since = if lifted { tomorrow } else { scene.date };
    let next = standing(programme, scene.state, lifter, since).next_day;
    let row = |(at, day): (usize, &domain::programme::Day)| {
        let begin = Begin {
            lifter: lifter.to_owned(),
            day: at,
            since,
        };
        let edit = Edit::of(
            FILE,
            (TABLE, &programme.name),
            "begins",
            begins(programme, &begin),
        );
        let row = ListRow::new(say.say(p::NEXT_DAY), say.shipped(&day.name));
        (row.state(chosen(at == next)), Act::Want(Wish::set(edit)))
    };
    programme.days.iter().enumerate().map(row).collect()
}

/// The places in a queue as TOML, with a new one for its lifter.
fn begins(programme: &Programme, new: &Begin) -> String {
    let others = programme
        .begins
        .iter()
        .filter(|begin| begin.lifter != new.lifter);
    let row = |begin: &Begin| {
        let day = programme.days.get(begin.day)?;
        let (lifter, day) = (quoted(&begin.lifter), quoted(&day.name));
        Some(format!(
            "{{ lifter = {lifter}, day = {day}, since = \"{}\" }}",
            begin.since
        ))
    };
    let rows: Vec<String> = others.chain([new]).filter_map(row).collect();
    format!("[{}]", rows.join(", "))
}

/// The figures of next time for all lifts of one lifter.
pub(crate) fn rule(scene: &Scene<'_>, lifter: &str) -> Rows {
    let say = scene.language();
    let rule = scene.gym.coaching.rule(lifter, "");
    let known = scene.gym.lifters.iter().find(|known| known.name == lifter);
    let unit = known.map_or(MassUnit::Kg, |lifter| lifter.unit);
    let step = match rule.step {
        Step::Mass(mass) => say.mass(mass, unit),
        Step::Share(share) => percent(say, share),
    };
    let days = |days: u16| say.fill(p::DAYS, &[&days.to_string()]);
    let figures: [(Phrase, &'static str, Kind, String); 8] = [
        (p::R_STEP, "step", Kind::Load, step),
        (p::R_TRIES, "tries", Kind::Count, rule.tries.to_string()),
        (
            p::R_MOVED_TRIES,
            "moved_tries",
            Kind::Count,
            rule.moved_tries.to_string(),
        ),
        (p::R_DROP, "drop", Kind::Percent, percent(say, rule.drop)),
        (p::R_DROPS, "drops", Kind::Count, rule.drops.to_string()),
        (p::R_RESET, "reset", Kind::Percent, percent(say, rule.reset)),
        (
            p::R_AWAY_DAYS,
            "away_days",
            Kind::Count,
            days(rule.away_days),
        ),
        (p::R_AWAY, "away", Kind::Percent, percent(say, rule.away)),
    ];
    let row = |(title, key, kind, shown): (Phrase, &'static str, Kind, String)| {
        let title = say.say(title);
        let asked = format!("{lifter}, {title}");
        let what: What = value(asked, kind, FILE, ("rule", lifter), &[Key::Name(key)]);
        (ListRow::new(title, shown), Act::Type(what.first_in(unit)))
    };
    figures.into_iter().map(row).collect()
}

fn percent(say: Language, share: u32) -> String {
    let percent = domain::decimal::write_rounded(share.into(), 100, 2);
    say.number(&format!("{percent} %"))
}
