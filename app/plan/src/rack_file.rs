//! The racks of gym.toml. Refuses: holes that would run into each other, pins that do not fit.
use crate::fault::Wrong;
use crate::fields;
use crate::known::Known;
use crate::quantity::{length, mass, rated, time_ms};
use crate::toml_doc::Doc;
use crate::toml_entry::Entry;
use crate::wording::name;
use crate::words::words;
use domain::equipment::{Calibration, RackStated};
use domain::{Length, LengthUnit, Mass, MassUnit, Rack};
use text::keys::checked as k;

/// Most racks of a gym.
const RACKS_MAX: usize = 50;
/// Most mats by a rack: every set of them is tried, so their number is kept small.
const MATS_MAX: usize = 8;
/// A measured bar height further than this from its hole's centre is odd: pin and bar together
/// are seldom thicker. Common practice, no source.
const CALIBRATION_ODD: Length = Length::mm(80);

/// Reads all racks; the names of those that could be read go to `racks`.
pub(crate) fn read(
    doc: &mut Doc<'_>,
    gym: &Entry<'_>,
    sets: &Known,
    racks: &mut Known,
) -> Vec<Rack> {
    let mut read = Vec::new();
    for entry in gym.entries(doc, "rack", RACKS_MAX, &fields::RACK) {
        let name = entry.text(doc, "name", name);
        racks.add(doc, name.as_deref(), &entry.at_value("name"));
        read.extend(rack(doc, &entry, name, sets));
    }
    read
}

/// Time to move both pins when the file does not say. Common practice, no source.
const HOLE_CHANGE_MS: u32 = 30_000;
/// What two people lift off the pins at most when the file does not say. Common practice, no
/// source.
const HOLE_CHANGE_AT_MOST: Mass = Mass::of(MassUnit::Kg, 60_000);

fn rack(doc: &mut Doc<'_>, entry: &Entry<'_>, name: Option<String>, sets: &Known) -> Option<Rack> {
    let mm = |from, to| Length::mm(from)..=Length::mm(to);
    let first_hole = entry.text(doc, "first_hole", |text| length(text, &mm(10, 2_000)));
    let spacing = entry.text(doc, "spacing", |text| length(text, &mm(10, 300)));
    let holes = entry.whole(doc, "holes", &(1..=200));
    let pin = entry.text(doc, "pin_diameter", |text| length(text, &mm(5, 60)));
    let hole = entry.text(doc, "hole_diameter", |text| length(text, &mm(5, 100)));
    let mats = entry.texts(doc, "mats", MATS_MAX, |text| length(text, &mm(1, 200)));
    let calibration = entry.entry(doc, "calibration", &fields::CALIBRATION);
    let calibration = calibration.map(|at| (calibrate(doc, &at, holes), at));
    let plates = entry.text(doc, "plate_set", |text| sets.find(text));
    let change = entry.text(doc, "hole_change", |text| time_ms(text, &(0..=600_000)));
    let at_most = entry.text(doc, "hole_change_at_most", |text| {
        mass(text, &(Mass::ZERO..=Mass::of(MassUnit::Kg, 500_000)))
    });
    let longest_wait = entry.text(doc, "longest_wait", |text| {
        time_ms(text, &(30_000..=3_600_000))
    });
    let stated = RackStated {
        pin_rated_load: entry.text(doc, "pin_rated_load", rated),
        rack_rated_load: entry.text(doc, "rack_rated_load", rated),
        support_span: entry.text(doc, "support_span", |text| length(text, &mm(100, 2_000))),
    };
    fit(doc, entry, spacing, pin, hole);
    let rack = Rack {
        name: name?,
        first_hole: first_hole?,
        spacing: spacing?,
        holes: holes?,
        pin_diameter: pin?,
        hole_diameter: hole,
        mats,
        calibration: calibration.as_ref().and_then(|(read, _)| *read),
        plates: plates?,
        hole_change_ms: change.unwrap_or(HOLE_CHANGE_MS),
        hole_change_at_most: at_most.map_or(HOLE_CHANGE_AT_MOST, |(mass, _)| mass),
        longest_wait_ms: longest_wait,
        stated,
    };
    if let Some((Some(read), at)) = calibration {
        judge(doc, &at, &rack, read);
    }
    Some(rack)
}

fn calibrate(doc: &mut Doc<'_>, entry: &Entry<'_>, holes: Option<u16>) -> Option<Calibration> {
    let range = Length::mm(10)..=Length::mm(3_000);
    let hole = entry.whole(doc, "hole", &(1..=holes.unwrap_or(200)));
    let bar_height = entry.text(doc, "bar_height", |text| length(text, &range));
    Some(Calibration {
        hole: hole?,
        bar_height: bar_height?,
    })
}

/// A pin must go into its hole, and there must be steel between two holes.
fn fit(
    doc: &mut Doc<'_>,
    entry: &Entry<'_>,
    spacing: Option<Length>,
    pin: Option<Length>,
    hole: Option<Length>,
) {
    let mm = |length: Length| length.words(LengthUnit::Mm);
    if let (Some(pin), Some(hole)) = (pin, hole)
        && hole < pin
    {
        let read = words!(k::A_HOLE_OF_LESS_THAN, mm(hole), mm(pin));
        let right = words!(k::MEASURE_BOTH_AGAIN_A_HOLE);
        doc.wrong(&entry.at_value("hole_diameter"), Wrong::plain(read, right));
    }
    let widest = [("pin_diameter", pin), ("hole_diameter", hole)];
    for (key, width) in widest {
        if let (Some(width), Some(spacing)) = (width, spacing)
            && width >= spacing
        {
            let (width, spacing) = (mm(width), mm(spacing));
            let read = words!(k::ACROSS_NOT_LESS_THAN_THE, width, spacing);
            let right = words!(k::WRITE_THE_SPACING_FROM_CENTRE);
            doc.wrong(&entry.at_value(key), Wrong::plain(read, right));
        }
    }
}

/// A measured height is taken as it is, but one far from its hole is probably another hole's.
fn judge(doc: &mut Doc<'_>, entry: &Entry<'_>, rack: &Rack, read: Calibration) {
    let centre = rack.first_hole + rack.spacing.times(i64::from(read.hole) - 1);
    if centre.apart(read.bar_height) > CALIBRATION_ODD {
        let mm = |length: Length| length.words(LengthUnit::Mm);
        let found = words!(
            k::A_BAR_HEIGHT_OF_WITH,
            mm(read.bar_height),
            read.hole,
            mm(centre)
        );
        let right = words!(k::MEASURE_AGAIN_FLOOR_TO_THE);
        doc.odd(&entry.at_value("bar_height"), Wrong::plain(found, right));
    }
}
