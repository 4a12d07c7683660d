//! lifters.toml: who lifts here, their landmarks, gear and bests.
//!
//! Refuses: names of racks, bars, patterns and lifts that the gym does not have. Never refuses an
//! order of landmarks: real bodies differ, so an unusual one is only told as odd.
use crate::Source;
use crate::date::date;
use crate::fault::{Fault, Wrong, quote};
use crate::fields;
use crate::known::Known;
use crate::quantity::{length, mass, whole};
use crate::toml_doc::Doc;
use crate::toml_entry::Entry;
use crate::wording::{choice, name};
use crate::words::{term, words};
use domain::body::{Body, Sex};
use domain::lift::Landmark;
use domain::lifter::{GearFrom, TrainingMax};
use domain::{Gym, Length, LengthUnit, Lifter, Mass, MassUnit};
use std::ops::RangeInclusive;
use text::keys::checked as k;

/// Most lifters of a gym.
const LIFTERS_MAX: usize = 500;
/// The pattern of somebody whose entry names none: the one for someone new to a lift.
const LADDER_DEFAULT: &str = "fives";
/// The tuberosity is seldom nearer to the top of the patella than this, or further from it than
/// [`KNEE_MOST`]. Common practice, no source: a start 75 to 100 mm below is usual.
const KNEE_LEAST: Length = Length::mm(40);
const KNEE_MOST: Length = Length::mm(180);

/// The names that lifters' entries may use.
pub(crate) struct Names {
    pub(crate) racks: Known,
    pub(crate) bars: Known,
    pub(crate) patterns: Known,
    pub(crate) lifts: Known,
}

impl Names {
    /// Nothing known of the gym: names are taken as they stand.
    pub(crate) const fn open() -> Self {
        Self {
            racks: Known::open(term!(k::RACK)),
            bars: Known::open(term!(k::BAR)),
            patterns: Known::open(term!(k::WARM_UP_PATTERN)),
            lifts: Known::open(term!(k::LIFT)),
        }
    }

    /// The names of a gym that was read before.
    pub(crate) fn of(gym: &Gym) -> Self {
        Self {
            racks: Known::of(
                term!(k::RACK),
                gym.racks.iter().map(|rack| rack.name.as_str()),
            ),
            bars: Known::of(term!(k::BAR), gym.bars.iter().map(|bar| bar.name.as_str())),
            patterns: Known::of(
                term!(k::WARM_UP_PATTERN),
                gym.patterns.iter().map(|p| p.name.as_str()),
            ),
            lifts: Known::of(
                term!(k::LIFT),
                gym.lifts.iter().map(|lift| lift.name.as_str()),
            ),
        }
    }
}

/// Reads the file; the lifters are whole when no fault is [`crate::Weight::Wrong`].
pub(crate) fn read(source: Source<'_>, names: &Names) -> (Vec<Lifter>, Vec<Fault>) {
    let (mut doc, root) = match Doc::open(source) {
        Ok(opened) => opened,
        Err(faults) => return (Vec::new(), faults),
    };
    let top = Entry::open(&mut doc, root.get_ref(), 0..0, &fields::LIFTERS);
    let mut known = Known::none(term!(k::LIFTER));
    let mut lifters = Vec::new();
    for entry in top.entries(&mut doc, "lifter", LIFTERS_MAX, &fields::LIFTER) {
        let name = entry.text(&mut doc, "name", name);
        known.add(&mut doc, name.as_deref(), &entry.at_value("name"));
        let also = also(&mut doc, &entry, name.as_deref(), &mut known);
        lifters.extend(lifter(&mut doc, &entry, (name, also), names));
    }
    (lifters, doc.close())
}

fn lifter(
    doc: &mut Doc<'_>,
    entry: &Entry<'_>,
    (name, also): (Option<String>, Vec<String>),
    names: &Names,
) -> Option<Lifter> {
    let units = [("kg", MassUnit::Kg), ("lb", MassUnit::Lb)];
    let unit = entry.text(doc, "unit", |text| choice(text, &units));
    let rack = entry.text(doc, "rack", |text| names.racks.find(text));
    let bar = entry.text(doc, "bar", |text| names.bars.find(text));
    let ladder = entry.text(doc, "ladder", |text| names.patterns.find(text));
    let landmarks = landmarks(doc, entry);
    let hooks = hooks(doc, entry, &names.lifts);
    let body = body(doc, entry);
    let belt = entry.text(doc, "belt", gear);
    let straps = entry.text(doc, "straps", gear);
    let bests = bests(doc, entry, &names.lifts);
    let training_maxes = training_maxes(doc, entry, &names.lifts);
    Some(Lifter {
        name: name?,
        also,
        unit: unit?,
        rack: rack?,
        bar,
        ladder: ladder.unwrap_or_else(|| LADDER_DEFAULT.to_owned()),
        landmarks,
        hooks,
        body,
        belt: belt.unwrap_or(GearFrom::Never),
        straps: straps.unwrap_or(GearFrom::Never),
        bests,
        training_maxes,
    })
}

/// Most short names of a lifter or a lift.
const ALSO_MAX: usize = 8;

/// The short names of an entry, each known from here on.
pub(crate) fn also(
    doc: &mut Doc<'_>,
    entry: &Entry<'_>,
    whole: Option<&str>,
    known: &mut Known,
) -> Vec<String> {
    let also = entry.texts(doc, "also", ALSO_MAX, name);
    let at = entry.at_value("also");
    if let Some(whole) = whole {
        for short in &also {
            known.call(doc, short, whole, &at);
        }
    }
    also
}

/// What landmarks may be estimated from.
fn body(doc: &mut Doc<'_>, entry: &Entry<'_>) -> Body {
    let tall = Length::mm(1_000)..=Length::mm(2_500);
    let thick = Length::ZERO..=Length::mm(60);
    let sexes = [("female", Sex::Female), ("male", Sex::Male)];
    Body {
        stature: entry.text(doc, "stature", |text| length(text, &tall)),
        stature_said: entry.text(doc, "stature_said", |text| length(text, &tall)),
        sex: entry.text(doc, "sex", |text| choice(text, &sexes)),
        sole: entry.text(doc, "sole", |text| length(text, &thick)),
    }
}

/// Reads "never", "rung 3" or "100 kg".
fn gear(text: &str) -> Result<GearFrom, Wrong> {
    let plain = text.trim().to_lowercase();
    let right = words!(k::WRITE_RUNG_3_100_KG);
    if plain == "never" {
        Ok(GearFrom::Never)
    } else if let Some(rung) = plain.strip_prefix("rung") {
        whole(rung, &(1..=20))
            .map(GearFrom::Rung)
            .map_err(|_| Wrong::value(text, words!(k::NOT_A_RUNG_FROM_1), right))
    } else if plain.starts_with(|c: char| c.is_ascii_digit()) {
        mass(text, &loads()).map(|(mass, _)| GearFrom::Load(mass))
    } else {
        Err(Wrong::value(text, words!(k::NEITHER_A_RUNG_NOR_A), right))
    }
}

/// What can be lifted: 1 to 1000 kg.
pub(crate) fn loads() -> RangeInclusive<Mass> {
    Mass::of(MassUnit::Kg, 1_000)..=Mass::of(MassUnit::Kg, 1_000_000)
}

fn landmarks(doc: &mut Doc<'_>, lifter: &Entry<'_>) -> Vec<(Landmark, Length)> {
    let Some(entry) = lifter.entry(doc, "landmarks", &fields::LANDMARKS) else {
        return Vec::new();
    };
    let range = Length::mm(100)..=Length::mm(2_000);
    let keys = [
        ("tibial_tuberosity", Landmark::TibialTuberosity),
        ("patella_top", Landmark::PatellaTop),
        ("mid_thigh", Landmark::MidThigh),
        ("lockout", Landmark::Lockout),
    ];
    let mut read: Vec<(Landmark, Length)> = Vec::new();
    for (key, landmark) in keys {
        let height = entry.text(doc, key, |text| length(text, &range));
        let Some(height) = height else {
            continue;
        };
        if let Some((lower, below)) = read.last()
            && height <= *below
        {
            let words = words!(
                k::A_AT_NOT_ABOVE_THE,
                landmark.word(),
                height.words(LengthUnit::Mm),
                lower.word(),
                below.words(LengthUnit::Mm)
            );
            doc.odd(
                &entry.at_value(key),
                Wrong::plain(words, words!(k::MEASURE_BOTH_AGAIN_TO_BE)),
            );
        }
        read.push((landmark, height));
    }
    knee(doc, &entry, &read);
    read
}

/// Tells a distance over the knee that is far from what is usual.
fn knee(doc: &mut Doc<'_>, entry: &Entry<'_>, read: &[(Landmark, Length)]) {
    let height = |wanted| {
        read.iter()
            .find(|(l, _)| *l == wanted)
            .map(|(_, height)| *height)
    };
    let both = (
        height(Landmark::TibialTuberosity),
        height(Landmark::PatellaTop),
    );
    let (Some(tuberosity), Some(patella)) = both else {
        return;
    };
    let apart = patella - tuberosity;
    if apart > Length::ZERO && !(KNEE_LEAST..=KNEE_MOST).contains(&apart) {
        let read = words!(
            k::FROM_THE_TIBIAL_TUBEROSITY_TO,
            apart.words(LengthUnit::Mm)
        );
        let right = words!(k::MEASURE_BOTH_AGAIN_TO_BE_SURE);
        doc.odd(&entry.at_value("patella_top"), Wrong::plain(read, right));
    }
}

/// The hooks' holes by lift.
fn hooks(doc: &mut Doc<'_>, lifter: &Entry<'_>, lifts: &Known) -> Vec<(String, u16)> {
    let mut hooks: Vec<(String, u16)> = Vec::new();
    let read = |text: &str| {
        let number = text.trim().trim_start_matches("hole");
        whole(number, &(1..=500)).map_err(|_| {
            let right = words!(k::WRITE_HOLE_14);
            Wrong::value(text, words!(k::NOT_A_HOLE_FROM_1), right)
        })
    };
    for (key, at, hole) in lifter.free(doc, "hooks", read) {
        match lifts.find(key) {
            Err(wrong) => doc.wrong(&at, wrong),
            Ok(lift) if hooks.iter().any(|(other, _)| *other == lift) => {
                let read = words!(k::A_SECOND_HOLE_FOR, quote(&lift));
                doc.wrong(&at, Wrong::plain(read, words!(k::KEEP_ONE_OF_THEM)));
            }
            Ok(lift) => hooks.extend(hole.map(|hole| (lift, hole))),
        }
    }
    hooks
}

fn bests(doc: &mut Doc<'_>, lifter: &Entry<'_>, lifts: &Known) -> Vec<(String, Mass)> {
    let mut bests: Vec<(String, Mass)> = Vec::new();
    for (key, at, best) in lifter.free(doc, "bests", |text| mass(text, &loads())) {
        match lifts.find(key) {
            Err(wrong) => doc.wrong(&at, wrong),
            Ok(lift) if bests.iter().any(|(other, _)| *other == lift) => {
                let read = words!(k::A_SECOND_BEST_FOR, quote(&lift));
                doc.wrong(&at, Wrong::plain(read, words!(k::KEEP_ONE_OF_THEM)));
            }
            Ok(lift) => bests.extend(best.map(|(mass, _)| (lift, mass))),
        }
    }
    bests
}

/// Most training maxes of a lifter: five lifts, moved every fortnight for two years.
const TRAINING_MAXES_MAX: usize = 260;

fn training_maxes(doc: &mut Doc<'_>, lifter: &Entry<'_>, lifts: &Known) -> Vec<TrainingMax> {
    let mut maxes: Vec<TrainingMax> = Vec::new();
    let entries = lifter.entries(
        doc,
        "training_max",
        TRAINING_MAXES_MAX,
        &fields::TRAINING_MAX,
    );
    for entry in entries {
        let lift = entry.text(doc, "lift", |text| lifts.find(text));
        let load = entry.text(doc, "load", |text| mass(text, &loads()));
        let since = entry.text(doc, "since", date);
        let (Some(lift), Some((load, _))) = (lift, load) else {
            continue;
        };
        let same = |other: &TrainingMax| other.lift == lift && other.since == since;
        if maxes.iter().any(same) {
            let read = words!(k::A_SECOND_TRAINING_MAX_OF, quote(&lift));
            let right = words!(k::KEEP_ONE_OF_THEM_OR);
            doc.wrong(entry.at(), Wrong::plain(read, right));
            continue;
        }
        maxes.push(TrainingMax { lift, load, since });
    }
    maxes
}
