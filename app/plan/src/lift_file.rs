//! The lifts of gym.toml, laid over those that come with the program, key by key.
//!
//! Refuses: to take a caution of the program away, a start from pins without a landmark,
//! partners that do not exist.
use crate::fault::Wrong;
use crate::fields;
use crate::known::Known;
use crate::lifter_file::also;
use crate::nearest::fold;
use crate::quantity::{length, mass, rest_s};
use crate::toml_doc::Doc;
use crate::toml_entry::Entry;
use crate::wording::{choice, name, words};
use crate::words::words;
use domain::lift::{Grip, Landmark, Start};
use domain::lift_shipped;
use domain::{Length, Lift, Mass, MassUnit};
use text::keys::checked as k;

/// Most lifts of a gym.
const LIFTS_MAX: usize = 100;
/// Most cues, and most cautions, of a lift.
const LINES_MAX: usize = 8;

/// The words for landmarks in the files.
pub(crate) const LANDMARKS: [(&str, Landmark); 4] = [
    ("tibial tuberosity", Landmark::TibialTuberosity),
    ("patella top", Landmark::PatellaTop),
    ("mid-thigh", Landmark::MidThigh),
    ("lockout", Landmark::Lockout),
];

/// The lifts of the program, changed and added to by the file.
pub(crate) fn read(doc: &mut Doc<'_>, gym: &Entry<'_>, known: &mut Known) -> Vec<Lift> {
    let mut lifts = lift_shipped::lifts();
    let entries = gym.entries(doc, "lift", LIFTS_MAX, &fields::LIFT);
    let mut partners = Vec::new();
    for entry in &entries {
        let name = entry.text(doc, "name", name);
        known.add(doc, name.as_deref(), &entry.at_value("name"));
        let also = also(doc, entry, name.as_deref(), known);
        let at = name.as_ref().and_then(|name| {
            let same = |lift: &Lift| fold(&lift.name) == fold(name);
            lifts.iter().position(same)
        });
        let read = lift(doc, entry, at.and_then(|at| lifts.get(at)), (name, also));
        if let (Some(partner), Some(lift)) = (entry.text(doc, "partner", words_of_name), &read) {
            partners.push((lift.name.clone(), partner, entry.at_value("partner")));
        }
        match (at.and_then(|at| lifts.get_mut(at)), read) {
            (Some(old), Some(new)) => *old = new,
            (None, Some(new)) => lifts.push(new),
            (_, None) => {}
        }
    }
    known.also(lifts.iter().map(|lift| lift.name.as_str()));
    for (name, partner, at) in partners {
        match known.find(&partner) {
            Ok(partner) if fold(&partner) == fold(&name) => {
                let right = words!(k::WRITE_THE_OTHER_LIFT_OF);
                doc.wrong(
                    &at,
                    Wrong::value(&partner, words!(k::THE_LIFT_ITSELF_AS_ITS), right),
                );
            }
            Ok(partner) => pair(&mut lifts, &name, partner),
            Err(wrong) => doc.wrong(&at, wrong),
        }
    }
    lifts
}

fn words_of_name(text: &str) -> Result<String, Wrong> {
    name(text)
}

fn pair(lifts: &mut [Lift], name: &str, partner: String) {
    if let Some(lift) = lifts.iter_mut().find(|lift| lift.name == name) {
        lift.partner = Some(partner);
    }
}

/// One entry laid over `old`, the lift of that name that was there before.
fn lift(
    doc: &mut Doc<'_>,
    entry: &Entry<'_>,
    old: Option<&Lift>,
    (name, also): (Option<String>, Vec<String>),
) -> Option<Lift> {
    let start = start(doc, entry, old);
    let end = entry.text(doc, "end", |text| choice(text, &LANDMARKS));
    let grips = [
        ("double overhand", Grip::DoubleOverhand),
        ("hook", Grip::Hook),
    ];
    let grip = entry.text(doc, "grip", |text| choice(text, &grips));
    let speeds = [("fast", true), ("slow", false)];
    let fast = entry.text(doc, "speed", |text| choice(text, &speeds));
    let bars = [("retired", true), ("straight", false)];
    let retired = entry.text(doc, "bar", |text| choice(text, &bars));
    let span = Length::ZERO..=Length::mm(500);
    let overlap = entry.text(doc, "overlap_least", |text| length(text, &span));
    let rest_warm = entry.text(doc, "rest_warm", rest_s);
    let rest_work = entry.text(doc, "rest_work", rest_s);
    let family = entry.text(doc, "family", words_of_name);
    let steps = Mass::of(MassUnit::Kg, 500)..=Mass::of(MassUnit::Kg, 20_000);
    let round = entry.texts(doc, "round", 2, |text| mass(text, &steps));
    let cues = entry.texts(doc, "cues", LINES_MAX, |text| words(text, 60));
    let more = entry.texts(doc, "cautions", LINES_MAX, |text| words(text, 80));
    if start == Some(Start::Hooks) {
        no_pull(doc, entry);
    }
    let (start, name) = (start?, name?);
    let from_pins = matches!(start, Start::Pins { .. });
    let was = |value: fn(&Lift) -> u32, otherwise| old.map_or(otherwise, value);
    // From hooks each lift is by itself, where nobody says otherwise.
    let own = match start {
        Start::Hooks => name.clone(),
        Start::Floor | Start::Pins { .. } => String::from(lift_shipped::PULLS),
    };
    let family = family.unwrap_or_else(|| old.map_or(own, |old| old.family.clone()));
    let mut cautions =
        old.map_or_else(|| lift_shipped::cautions(start), |old| old.cautions.clone());
    cautions.extend(more);
    Some(Lift {
        name: old.map_or(name, |old| old.name.clone()),
        also: match old {
            Some(old) if also.is_empty() => old.also.clone(),
            Some(_) | None => also,
        },
        start,
        end: end.unwrap_or_else(|| old.map_or(Landmark::Lockout, |old| old.end)),
        grip: grip.unwrap_or_else(|| old.map_or(Grip::DoubleOverhand, |old| old.grip)),
        fast: fast.unwrap_or_else(|| old.is_some_and(|old| old.fast)),
        retired_bar: retired.unwrap_or_else(|| old.map_or(from_pins, |old| old.retired_bar)),
        family,
        partner: old.and_then(|old| old.partner.clone()),
        round: if entry.has("round") {
            round.into_iter().map(|(step, unit)| (unit, step)).collect()
        } else {
            old.map_or_else(Vec::new, |old| old.round.clone())
        },
        overlap_least: overlap
            .unwrap_or_else(|| old.map_or(lift_shipped::OVERLAP_LEAST, |old| old.overlap_least)),
        rest_warm_s: rest_warm
            .unwrap_or_else(|| was(|old| old.rest_warm_s, lift_shipped::REST_WARM_S)),
        rest_work_s: rest_work
            .unwrap_or_else(|| was(|old| old.rest_work_s, lift_shipped::REST_WORK_S)),
        cues: if entry.has("cues") {
            cues
        } else {
            old.map_or_else(Vec::new, |old| old.cues.clone())
        },
        cautions,
    })
}

/// Keys that only mean something where the bar is pulled from the floor or from pins.
fn no_pull(doc: &mut Doc<'_>, entry: &Entry<'_>) {
    for key in ["grip", "end", "partner", "overlap_least"] {
        if entry.has(key) {
            let read = words!(k::FOR_A_LIFT_FROM_HOOKS, key);
            let wrong = Wrong::plain(read, words!(k::LEAVE_IT_OUT));
            doc.wrong(&entry.at_value(key), wrong);
        }
    }
}

/// What "start" can be.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum From {
    Floor,
    Pins,
    Hooks,
}

/// Where the lift starts, from "start", "landmark" and "below" and what was before.
fn start(doc: &mut Doc<'_>, entry: &Entry<'_>, old: Option<&Lift>) -> Option<Start> {
    let starts = [
        ("floor", From::Floor),
        ("pins", From::Pins),
        ("hooks", From::Hooks),
    ];
    let from = entry.text(doc, "start", |text| choice(text, &starts));
    let landmark = entry.text(doc, "landmark", |text| choice(text, &LANDMARKS));
    let depth = Length::ZERO..=Length::mm(300);
    let below = entry.text(doc, "below", |text| length(text, &depth));
    if entry.has("start") && from.is_none() {
        return None;
    }
    let old = old.map(|old| old.start);
    let was = match old {
        Some(Start::Pins { landmark, below }) => Some((landmark, below)),
        Some(Start::Floor | Start::Hooks) | None => None,
    };
    let was_from = old.map(|old| match old {
        Start::Floor => From::Floor,
        Start::Pins { .. } => From::Pins,
        Start::Hooks => From::Hooks,
    });
    let Some(from) = from.or(was_from) else {
        let right = words!(k::WRITE_START_FLOOR_START_PINS);
        doc.missing(
            entry.at(),
            Wrong::plain(words!(k::A_NEW_LIFT_WITHOUT_START), right),
        );
        return None;
    };
    if from != From::Pins {
        let (words, start) = match from {
            From::Hooks => ("hooks", Start::Hooks),
            From::Floor | From::Pins => ("the floor", Start::Floor),
        };
        for key in ["landmark", "below"] {
            if entry.has(key) {
                let read = words!(k::FOR_A_LIFT_FROM, key, words);
                let right = words!(k::LEAVE_IT_OUT_OR_WRITE);
                doc.wrong(&entry.at_value(key), Wrong::plain(read, right));
            }
        }
        return Some(start);
    }
    let Some(landmark) = landmark.or(was.map(|(landmark, _)| landmark)) else {
        if !entry.has("landmark") {
            let right = words!(k::WRITE_LANDMARK_TIBIAL_TUBEROSITY_OR);
            doc.missing(
                entry.at(),
                Wrong::plain(words!(k::A_LIFT_FROM_PINS_WITHOUT), right),
            );
        }
        return None;
    };
    let below = below
        .or(was.map(|(_, below)| below))
        .unwrap_or(Length::ZERO);
    Some(Start::Pins { landmark, below })
}
