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
use text::keys::checked as k;

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
                words!(k::THE_MARK_A_SECOND_TIME, &plate.mark),
                words!(k::GIVE_EVERY_PLATE_ITS_OWN),
            );
            doc.wrong(&entry.at_value("mark"), told);
        }
        if !plates.iter().any(|kind| kind.face.mass == plate.nominal) {
            let told = Wrong::plain(
                words!(k::A_LABEL_OF_THAT_THE, plate.nominal.exact(unit)),
                words!(k::WRITE_THE_MASS_OF_ONE),
            );
            doc.wrong(&entry.at_value("nominal"), told);
        }
        let off = plate.mass.apart(plate.nominal);
        if off.ng() / OFF_ODD_PERCENT > plate.nominal.ng() / 100 {
            let told = Wrong::plain(
                words!(
                    k::FOR_A_PLATE_OF,
                    plate.mass.exact(unit),
                    plate.nominal.exact(unit)
                ),
                words!(k::WEIGH_IT_AGAIN_OR_KEEP),
            );
            doc.odd(&entry.at_value("mass"), told);
        }
        let alike = read
            .iter()
            .filter(|other| other.nominal == plate.nominal)
            .count();
        if alike == Problem::KIND_LIMIT {
            let told = Wrong::plain(
                words!(k::MORE_THAN_PLATES_OF, alike, plate.nominal.exact(unit)),
                words!(k::WRITE_THE_SIXTEEN_THAT_ARE),
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
