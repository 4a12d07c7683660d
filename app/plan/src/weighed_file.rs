//! Plates as weighed, in a plate set of gym.toml.
//!
//! Refuses: two plates of one mark, a label that the set does not have, more of a label than the
//! planner takes. A plate far off its label is only odd: a wrong digit is likelier than that.
use crate::fault::Wrong;
use crate::fields;
use crate::quantity::mass;
use crate::toml_doc::Doc;
use crate::toml_entry::Entry;
use crate::wording::name;
use crate::words::words;
use domain::solve::balance::{Problem, Weighed};
use domain::{Mass, MassUnit, Plate};

/// Most plates weighed in a set.
const PLATES_MAX: usize = 200;
/// Ordinary plates are often 2 to 3 % off their label, now and then 10 % (a public encyclopedia
/// article on weight plates); beyond 15 % somebody should look.
const OFF_ODD_PERCENT: i64 = 15;

/// Reads the plates of one set that were weighed.
pub(crate) fn read(doc: &mut Doc<'_>, set: &Entry<'_>, plates: &[Plate]) -> Vec<Weighed> {
    let mut read: Vec<Weighed> = Vec::new();
    for entry in set.entries(doc, "weighed", PLATES_MAX, &fields::WEIGHED) {
        let Some((plate, unit)) = weighed(doc, &entry) else {
            continue;
        };
        if read.iter().any(|other| other.mark == plate.mark) {
            let told = Wrong::plain(
                words!("the mark \"{0}\" a second time", &plate.mark),
                words!("give every plate its own mark"),
            );
            doc.wrong(&entry.at_value("mark"), told);
        }
        if !plates.iter().any(|kind| kind.face.mass == plate.nominal) {
            let told = Wrong::plain(
                words!(
                    "a label of {0} that the set does not have",
                    plate.nominal.exact(unit)
                ),
                words!("write the mass of one of its plates"),
            );
            doc.wrong(&entry.at_value("nominal"), told);
        }
        let off = plate.mass.apart(plate.nominal);
        if off.ng() / OFF_ODD_PERCENT > plate.nominal.ng() / 100 {
            let told = Wrong::plain(
                words!(
                    "{0} for a plate of {1}",
                    plate.mass.exact(unit),
                    plate.nominal.exact(unit)
                ),
                words!("weigh it again, or keep it off the bar"),
            );
            doc.odd(&entry.at_value("mass"), told);
        }
        let alike = read
            .iter()
            .filter(|other| other.nominal == plate.nominal)
            .count();
        if alike == Problem::KIND_LIMIT {
            let told = Wrong::plain(
                words!(
                    "more than {0} plates of {1}",
                    alike,
                    plate.nominal.exact(unit)
                ),
                words!("write the sixteen that are used"),
            );
            doc.wrong(&entry.at_value("nominal"), told);
        }
        read.push(plate);
    }
    read
}

fn weighed(doc: &mut Doc<'_>, entry: &Entry<'_>) -> Option<(Weighed, MassUnit)> {
    let range = Mass::of(MassUnit::Kg, 100)..=Mass::of(MassUnit::Kg, 120_000);
    let mark = entry.text(doc, "mark", name);
    let nominal = entry.text(doc, "nominal", |text| mass(text, &range));
    let own = entry.text(doc, "mass", |text| mass(text, &range));
    let (nominal, unit) = nominal?;
    Some((
        Weighed {
            mark: mark?,
            nominal,
            mass: own?.0,
        },
        unit,
    ))
}
