//! The plate sets of gym.toml. Refuses: two entries for the same plate.
use crate::fault::Wrong;
use crate::fields;
use crate::known::Known;
use crate::quantity::{length, mass, time_ms};
use crate::toml_doc::Doc;
use crate::toml_entry::Entry;
use crate::weighed_file;
use crate::wording::name;
use crate::words::words;
use domain::{Length, Mass, MassUnit, Plate, PlateFace, PlateSet};
use text::keys::checked as k;

/// Most plate sets of a gym.
const SETS_MAX: usize = 50;
/// Most kinds of plate in a set.
const KINDS_MAX: usize = 30;

/// Reads all plate sets; the names of those that could be read go to `sets`.
pub(crate) fn read(doc: &mut Doc<'_>, gym: &Entry<'_>, sets: &mut Known) -> Vec<PlateSet> {
    let mut read = Vec::new();
    for entry in gym.entries(doc, "plate_set", SETS_MAX, &fields::PLATE_SET) {
        let name = entry.text(doc, "name", name);
        sets.add(doc, name.as_deref(), &entry.at_value("name"));
        let big_inside = entry.flag(doc, "big_inside", true);
        let plates = plates(doc, &entry);
        let weighed = weighed_file::read(doc, &entry, &plates);
        read.extend(name.map(|name| PlateSet {
            name,
            big_inside,
            plates,
            weighed,
        }));
    }
    read
}

/// The kinds of plate under "plates".
pub(crate) fn plates(doc: &mut Doc<'_>, set: &Entry<'_>) -> Vec<Plate> {
    let mut plates: Vec<Plate> = Vec::new();
    let entries = set.entries(doc, "plates", KINDS_MAX, &fields::PLATE);
    if entries.is_empty() && set.has("plates") {
        let right = words!(k::WRITE_ONE_LINE_FOR_EACH);
        doc.missing(
            &set.at_value("plates"),
            Wrong::plain(words!(k::NO_PLATE_THAT_CAN_BE), right),
        );
    }
    for entry in entries {
        let Some(plate) = plate(doc, &entry) else {
            continue;
        };
        if plates.iter().any(|other| other.face == plate.face) {
            let read = words!(
                k::THE_PLATE_A_SECOND_TIME,
                plate.face.mass.words(plate.face.unit)
            );
            let right = words!(k::WRITE_IT_ONCE_WITH_ALL);
            doc.wrong(&entry.at_value("mass"), Wrong::plain(read, right));
        }
        plates.push(plate);
    }
    plates
}

fn plate(doc: &mut Doc<'_>, entry: &Entry<'_>) -> Option<Plate> {
    let mm = |from, to| Length::mm(from)..=Length::mm(to);
    let kg = Mass::of(MassUnit::Kg, 100)..=Mass::of(MassUnit::Kg, 100_000);
    let own = entry.text(doc, "mass", |text| mass(text, &kg));
    let pairs = entry.whole(doc, "pairs", &(0..=50));
    let thickness = entry.text(doc, "thickness", |text| length(text, &mm(1, 200)));
    let diameter = entry.text(doc, "diameter", |text| length(text, &mm(50, 600)));
    let handling = entry.text(doc, "handling", |text| time_ms(text, &(0..=120_000)));
    let (mass, unit) = own?;
    Some(Plate {
        face: PlateFace {
            mass,
            unit,
            thickness: thickness?,
            diameter: diameter?,
        },
        pairs: pairs?,
        handling_ms: handling.unwrap_or_else(|| handling_ms(mass)),
    })
}

/// Time to put a pair on or take it off when the file does not say: one hand, two hands, or
/// lifted from the floor. Common practice, no source.
fn handling_ms(plate: Mass) -> u32 {
    if plate < Mass::of(MassUnit::Kg, 10_000) {
        4_000
    } else if plate < Mass::of(MassUnit::Kg, 20_000) {
        6_000
    } else {
        8_000
    }
}
