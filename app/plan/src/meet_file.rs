//! meet.toml: a meet or a test day, with plates of its own.
//!
//! Refuses: what a flight refuses (`meet_flight`).
use crate::Source;
use crate::coach_names::Names;
use crate::date::date;
use crate::fault::{Fault, Wrong, quote};
use crate::fields;
use crate::meet_flight::flight;
use crate::plates_file;
use crate::quantity::{length, mass, time_ms};
use crate::toml_doc::Doc;
use crate::toml_entry::Entry;
use crate::wording::name;
use crate::words::words;
use chrono::NaiveDate;
use domain::meet::Habit;
use domain::meet_card::TableRules;
use domain::meet_day::{MeetDay, MeetFlight, platform_bar, platform_plates};
use domain::{Bar, Gym, Length, Mass, MassUnit};
use text::keys::checked as k;

/// Most flights of a day.
const FLIGHTS_MAX: usize = 12;

/// Reads meet.toml against the gym whose lifters and lifts it names.
///
/// # Errors
/// Every fault of the file, by row.
pub fn meet(source: Source<'_>, gym: &Gym) -> Result<MeetDay, Vec<Fault>> {
    let (day, faults) = read(source, Some(gym));
    match day {
        Some(day) if !faults.iter().any(Fault::stops) => Ok(day),
        _ => Err(faults),
    }
}

/// Reads what can be read; without a gym names are taken as they stand.
pub(crate) fn read(source: Source<'_>, gym: Option<&Gym>) -> (Option<MeetDay>, Vec<Fault>) {
    let (mut doc, root) = match Doc::open(source) {
        Ok(opened) => opened,
        Err(faults) => return (None, faults),
    };
    let against = Names::of(gym);
    let doc_ref = &mut doc;
    let top = Entry::open(doc_ref, root.get_ref(), 0..0, &fields::MEET);
    let name = top.text(doc_ref, "name", name);
    let day = top.text(doc_ref, "date", date);
    let bar = bar(doc_ref, &top);
    let mut plates = platform_plates();
    if top.has("plates") {
        plates.plates = plates_file::plates(doc_ref, &top);
    }
    let habit = habit(doc_ref, &top);
    let table = table(doc_ref, &top);
    let entries = top.entries(doc_ref, "flight", FLIGHTS_MAX, &fields::FLIGHT);
    if entries.is_empty() && top.has("flight") {
        let right = words!(k::WRITE_ONE_FLIGHT_FOR_EACH);
        let wrong = Wrong::plain(words!(k::NO_FLIGHT_THAT_CAN_BE), right);
        doc_ref.missing(&top.at_value("flight"), wrong);
    }
    let flights = entries
        .iter()
        .filter_map(|entry| flight(doc_ref, entry, gym, &against));
    let flights: Vec<MeetFlight> = flights.collect();
    let made = |name, date: NaiveDate| MeetDay {
        name,
        date,
        bar,
        plates,
        habit,
        table,
        flights,
    };
    let day = name.zip(day).map(|(name, date)| made(name, date));
    if let Some(day) = &day {
        loadable(&mut doc, &entries, day);
    }
    (day, doc.close())
}

fn bar(doc: &mut Doc<'_>, top: &Entry<'_>) -> Bar {
    let kg = |from, to| Mass::of(MassUnit::Kg, from)..=Mass::of(MassUnit::Kg, to);
    let own = top.text(doc, "bar", |text| mass(text, &kg(1_000, 60_000)));
    let collars = top.text(doc, "collars", |text| mass(text, &kg(0, 10_000)));
    let long = Length::mm(50)..=Length::mm(1_000);
    let sleeve = top.text(doc, "sleeve", |text| length(text, &long));
    let usual = platform_bar();
    Bar {
        mass: own.map_or(usual.mass, |(mass, _)| mass),
        collars: collars.map_or(usual.collars, |(mass, _)| mass),
        sleeve: sleeve.unwrap_or(usual.sleeve),
        ..usual
    }
}

/// What the table takes, otherwise than usual.
fn table(doc: &mut Doc<'_>, top: &Entry<'_>) -> TableRules {
    let usual = TableRules::USUAL;
    let mut seconds = |key: &str, otherwise: u32| {
        let read = top.text(doc, key, |text| time_ms(text, &(0..=3_600_000)));
        read.map_or(otherwise, |ms| ms / 1_000)
    };
    let declare_s = seconds("declare", usual.declare_s);
    let opener_until_s = seconds("opener_until", usual.opener_until_s);
    let mut changes = usual.changes;
    let keys = ["opener_changes", "second_changes", "third_changes"];
    for (changes, key) in changes.iter_mut().zip(keys) {
        if let Some(told) = top.whole(doc, key, &(0..=9)) {
            *changes = told;
        }
    }
    TableRules {
        declare_s,
        opener_until_s,
        changes,
    }
}

/// How warm-ups are spaced; what is usual must not be nearer than the least.
fn habit(doc: &mut Doc<'_>, top: &Entry<'_>) -> Habit {
    let usual = Habit::USUAL;
    let mut seconds = |key: &str, otherwise: u32| {
        let read = top.text(doc, key, |text| time_ms(text, &(30_000..=3_600_000)));
        read.map_or(otherwise, |ms| ms / 1_000)
    };
    let habit = Habit {
        last_s: seconds("last", usual.last_s),
        last_least_s: seconds("last_least", usual.last_least_s),
        apart_s: seconds("apart", usual.apart_s),
        apart_least_s: seconds("apart_least", usual.apart_least_s),
    };
    for (key, usual, least) in [
        ("last", habit.last_s, habit.last_least_s),
        ("apart", habit.apart_s, habit.apart_least_s),
    ] {
        if usual < least {
            let read = words!(k::S_FOR_LESS_THAN_THE, usual, key, least, key);
            let right = words!(k::WRITE_AS_LONG_AS_LEAST, key, key);
            doc.wrong(&top.at_value(key), Wrong::plain(read, right));
        }
    }
    habit
}

/// Tells an opener that the warm-up room's plates cannot make: odd, since the platform loads it.
fn loadable(doc: &mut Doc<'_>, flights: &[Entry<'_>], day: &MeetDay) {
    // Places are only known where every flight and lifter could be read.
    if flights.len() != day.flights.len() {
        return;
    }
    for (entry, flight) in flights.iter().zip(&day.flights) {
        let starters = &flight.starters;
        let at = entry.at_value("lifter");
        for starter in starters {
            let told = starter.opener.words(starter.unit);
            let who = quote(&starter.lifter);
            match day.warm_ups(starter) {
                Ok(built) if built.off == Mass::ZERO => {}
                Ok(built) => {
                    let near = (starter.opener + built.off).words(starter.unit);
                    let read = words!(k::FOR_WHICH_THESE_PLATES_DO, told, who);
                    let right = words!(k::ASK_FOR_WHAT_THEY_MAKE, near);
                    doc.odd(&at, Wrong::plain(read, right));
                }
                Err(refusal) => {
                    let read = words!(k::FOR, told, who, refusal.text);
                    doc.wrong(
                        &at,
                        Wrong::plain(read, words!(k::WRITE_ANOTHER_OPENER_OR_OTHER)),
                    );
                }
            }
        }
    }
}
