//! programme.toml: the coach's programmes, laid over those that come with the program.
//!
//! Refuses: lifts, patterns and lifters that the gym does not have, a lifter in two programmes,
//! days of the week for some days only.
use crate::Source;
use crate::against::Against;
use crate::coach_names::{FIRST, Held, Names, TASKS_MAX, WEEKDAYS};
use crate::date::date;
use crate::fault::{Fault, Wrong, quote};
use crate::fields;
use crate::known::Known;
use crate::nearest::fold;
use crate::plan_load::load;
use crate::plan_work::NOTE_MAX;
use crate::quantity::rest_s;
use crate::rule_file;
use crate::split_file;
use crate::toml_doc::Doc;
use crate::toml_entry::Entry;
use crate::wording::{choice, name, words};
use crate::words::{term, words};
use crate::{block_file, scheme};
use chrono::Weekday;
use domain::Gym;
use domain::programme::{Begin, Coaching, Day, Pace, Programme, Task, Work, shipped};
use text::keys::checked as k;

/// Most programmes of a gym.
const PROGRAMMES_MAX: usize = 50;
/// Most lifters of one programme.
const LIFTERS_MAX: usize = 500;
/// Most days of a programme.
const DAYS_MAX: usize = 14;
/// Days apart where a new programme says nothing: two pulling days a week. Common practice, no
/// source.
const APART_DAYS: u8 = 3;

/// Reads programme.toml against the gym whose lifters and lifts it names.
///
/// # Errors
/// Every fault of the file, by row.
pub fn coaching(source: Source<'_>, gym: &Gym) -> Result<Coaching, Vec<Fault>> {
    let (coaching, faults) = read(source, Some(gym));
    if faults.iter().any(Fault::stops) {
        Err(faults)
    } else {
        Ok(coaching)
    }
}

/// Reads what can be read; without a gym names are taken as they stand.
pub(crate) fn read(source: Source<'_>, gym: Option<&Gym>) -> (Coaching, Vec<Fault>) {
    let (mut doc, root) = match Doc::open(source) {
        Ok(opened) => opened,
        Err(faults) => return (Coaching::default(), faults),
    };
    let against = Held {
        names: Names::of(gym),
        plan: Against::of(gym),
    };
    let top = Entry::open(&mut doc, root.get_ref(), 0..0, &fields::COACHING);
    let coaching = Coaching {
        programmes: programmes(&mut doc, &top, &against),
        rules: rule_file::read(&mut doc, &top, &against.names),
        splits: split_file::read(&mut doc, &top, &against.names),
    };
    (coaching, doc.close())
}

fn programmes(doc: &mut Doc<'_>, top: &Entry<'_>, against: &Held<'_>) -> Vec<Programme> {
    let mut programmes = shipped();
    let mut known = Known::none(term!(k::PROGRAMME));
    for entry in top.entries(doc, "programme", PROGRAMMES_MAX, &fields::PROGRAMME) {
        let name = entry.text(doc, "name", name);
        known.add(doc, name.as_deref(), &entry.at_value("name"));
        let place = name.as_ref().and_then(|name| {
            let same = |old: &Programme| fold(&old.name) == fold(name);
            programmes.iter().position(same)
        });
        let old = place.map(|at| programmes[at].clone());
        let Some(read) = programme(doc, &entry, old, name, against) else {
            continue;
        };
        in_one_only(doc, &entry, &programmes, &read);
        fit(doc, &entry, &read, against);
        match place {
            Some(at) => programmes[at] = read,
            None => programmes.push(read),
        }
    }
    programmes
}

/// One entry laid over the programme of that name that was there before.
fn programme(
    doc: &mut Doc<'_>,
    entry: &Entry<'_>,
    old: Option<Programme>,
    name: Option<String>,
    against: &Held<'_>,
) -> Option<Programme> {
    let lifters = entry.texts(doc, "lifters", LIFTERS_MAX, |text| {
        against.names.lifters.find(text)
    });
    let apart = entry.whole(doc, "apart_days", &(1..=14));
    let written = entry.entries(doc, "day", DAYS_MAX, &fields::DAY);
    let mut days = Vec::new();
    for day in &written {
        days.extend(self::day(doc, day, against));
    }
    let weekly = weekly(doc, entry, &written, &days);
    let blocks = block_file::read(doc, entry, &lifters, against);
    if days.is_empty() && !entry.has("block") {
        if !entry.has("day") && old.is_none() {
            let right = words!(k::ADD_PROGRAMME_DAY_TABLES);
            let read = words!(k::A_NEW_PROGRAMME_WITHOUT_DAY);
            doc.missing(entry.at(), Wrong::plain(read, right));
        } else if entry.is_empty_list("day") {
            let right = words!(k::ADD_PROGRAMME_DAY_TABLES_OR);
            doc.missing(
                &entry.at_value("day"),
                Wrong::plain(words!(k::NO_DAY), right),
            );
        }
        days = old.as_ref().map(|old| old.days.clone()).unwrap_or_default();
    }
    let before = old.as_ref().map(|old| old.pace);
    let pace = match (weekly, apart, before) {
        _ if entry.has("block") => Pace::Blocks,
        (true, _, _) => Pace::Week,
        (false, Some(apart_days), _) => Pace::Queue { apart_days },
        (false, None, Some(before)) => before,
        (false, None, None) => Pace::Queue {
            apart_days: APART_DAYS,
        },
    };
    let begins = begins(doc, entry, &days, against);
    Some(Programme {
        name: old.map_or(name, |old| Some(old.name))?,
        lifters,
        pace,
        days,
        blocks,
        begins,
    })
}

/// Where lifters were put in the queue.
fn begins(doc: &mut Doc<'_>, entry: &Entry<'_>, days: &[Day], against: &Held<'_>) -> Vec<Begin> {
    let known = Known::of(term!(k::DAY), days.iter().map(|day| day.name.as_str()));
    let mut begins = Vec::new();
    for at in entry.entries(doc, "begins", LIFTERS_MAX, &fields::BEGIN) {
        let lifter = at.text(doc, "lifter", |text| against.names.lifters.find(text));
        let day = at.text(doc, "day", |text| known.find(text));
        let since = at.text(doc, "since", date);
        let place = day.and_then(|name| days.iter().position(|day| day.name == name));
        if let (Some(lifter), Some(day), Some(since)) = (lifter, place, since) {
            begins.push(Begin { lifter, day, since });
        }
    }
    begins
}

/// Whether the days stand on days of the week; all must, or none.
fn weekly(doc: &mut Doc<'_>, programme: &Entry<'_>, written: &[Entry<'_>], days: &[Day]) -> bool {
    let on: Vec<Weekday> = days.iter().filter_map(|day| day.weekday).collect();
    if on.is_empty() {
        return false;
    }
    if on.len() < days.len()
        && let Some(without) = written.iter().find(|day| !day.has("weekday"))
    {
        let right = words!(k::WRITE_ONE_FOR_EACH_DAY);
        doc.wrong(
            without.at(),
            Wrong::plain(words!(k::A_DAY_WITHOUT_WEEKDAY_AMONG), right),
        );
    }
    for (at, day) in on.iter().enumerate() {
        if on[..at].contains(day)
            && let Some(entry) = written.get(at)
        {
            let read = words!(k::FOR_A_SECOND_DAY_OF_THE, format!("{day:?}"));
            let right = words!(k::GIVE_EACH_DAY_ITS_OWN);
            doc.wrong(&entry.at_value("weekday"), Wrong::plain(read, right));
        }
    }
    if programme.has("apart_days") {
        let read = words!(k::APART_DAYS_BESIDE_DAYS_OF);
        let right = words!(k::LEAVE_ONE_OF_THEM_OUT);
        doc.wrong(&programme.at_value("apart_days"), Wrong::plain(read, right));
    }
    true
}

/// A lifter follows one programme.
fn in_one_only(doc: &mut Doc<'_>, entry: &Entry<'_>, programmes: &[Programme], read: &Programme) {
    for (at, lifter) in read.lifters.iter().enumerate() {
        let follows = |p: &&Programme| p.name != read.name && p.lifters.contains(lifter);
        let other = programmes.iter().find(follows).map(|p| &p.name);
        let twice = read.lifters[..at].contains(lifter).then_some(&read.name);
        if let Some(other) = other.or(twice) {
            let read = words!(k::WHO_IS_IN_ALREADY, quote(lifter), quote(other));
            let right = words!(k::NAME_EACH_LIFTER_ONCE);
            doc.wrong(&entry.at_value("lifters"), Wrong::plain(read, right));
        }
    }
}

/// Holes, blocks and bars of the works that the racks of its lifters do not have.
fn fit(doc: &mut Doc<'_>, entry: &Entry<'_>, read: &Programme, against: &Held<'_>) {
    let tasks = read.days.iter().flat_map(|day| &day.tasks);
    for work in tasks.flat_map(|task| &task.alternate) {
        for lifter in &read.lifters {
            let who = (lifter.as_str(), work.lift.as_str());
            if let Err(wrong) = against.plan.fits(&[work.manner], work.bar.as_deref(), who) {
                doc.wrong(entry.at(), wrong);
            }
        }
    }
}

fn day(doc: &mut Doc<'_>, entry: &Entry<'_>, against: &Held<'_>) -> Option<Day> {
    let name = entry.text(doc, "name", name);
    let weekday = entry.text(doc, "weekday", |text| choice(text, &WEEKDAYS));
    let mut tasks = Vec::new();
    for task in entry.entries(doc, "task", TASKS_MAX, &fields::TASK) {
        let mut alternate = Vec::new();
        for work in task.entries(doc, "alternate", TASKS_MAX, &fields::WORK) {
            alternate.extend(self::work(doc, &work, against));
        }
        if task.is_empty_list("alternate") {
            let right = words!(k::WRITE_AT_LEAST_ONE_LIFT);
            doc.missing(
                &task.at_value("alternate"),
                Wrong::plain(words!(k::NO_LIFT), right),
            );
        }
        tasks.push(Task { alternate });
    }
    if entry.is_empty_list("task") {
        let right = words!(k::WRITE_AT_LEAST_ONE);
        doc.missing(
            &entry.at_value("task"),
            Wrong::plain(words!(k::NO_TASK), right),
        );
    }
    Some(Day {
        name: name?,
        weekday,
        tasks,
    })
}

fn work(doc: &mut Doc<'_>, entry: &Entry<'_>, against: &Held<'_>) -> Option<Work> {
    let lift = entry.text(doc, "lift", |text| against.names.lifts.find(text));
    let sets = entry.whole(doc, "sets", &(1..=20));
    let reps = entry.whole(doc, "reps", &(1..=50));
    let first = entry.text(doc, "first", load);
    let ladder = entry.text(doc, "ladder", |text| against.names.patterns.find(text));
    let rest_s = entry.text(doc, "rest", rest_s);
    let bar = entry.text(doc, "bar", |text| against.plan.bar(text));
    let manner = entry.text(doc, "how", |text| scheme::manner(text, "gear"));
    let note = entry.text(doc, "note", |text| words(text, NOTE_MAX));
    Some(Work {
        lift: lift?,
        sets: sets?,
        reps: reps?,
        first: first.unwrap_or(FIRST),
        ladder,
        rest_s,
        bar,
        manner: manner.unwrap_or_default(),
        note: note.unwrap_or_default(),
    })
}
