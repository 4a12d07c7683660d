//! The bars of gym.toml. Refuses: to judge whether a bar is safe.
use crate::fault::Wrong;
use crate::fields;
use crate::known::Known;
use crate::quantity::{length, mass};
use crate::toml_doc::Doc;
use crate::toml_entry::Entry;
use crate::wording::{choice, name};
use domain::{Bar, BarCondition, Length, Mass, MassUnit};

/// Most bars of a gym.
const BARS_MAX: usize = 100;

/// Reads all bars; the names of those that could be read go to `bars`.
pub(crate) fn read(
    doc: &mut Doc<'_>,
    gym: &Entry<'_>,
    racks: &Known,
    bars: &mut Known,
) -> Vec<Bar> {
    let mut read = Vec::new();
    for entry in gym.entries(doc, "bar", BARS_MAX, &fields::BAR) {
        let name = entry.text(doc, "name", name);
        bars.add(doc, name.as_deref(), &entry.at_value("name"));
        read.extend(bar(doc, &entry, name, racks));
    }
    let straight = |bar: &Bar| bar.condition == BarCondition::Straight;
    if !read.is_empty() && !read.iter().any(straight) {
        let right = "add a straight bar for lifts from the floor";
        let place = gym.at_value("bar");
        doc.odd(&place, Wrong::plain("no bar that is straight", right));
    }
    read
}

fn bar(doc: &mut Doc<'_>, entry: &Entry<'_>, name: Option<String>, racks: &Known) -> Option<Bar> {
    let kg = |from, to| Mass::of(MassUnit::Kg, from)..=Mass::of(MassUnit::Kg, to);
    let mm = |from, to| Length::mm(from)..=Length::mm(to);
    let own = entry.text(doc, "mass", |text| mass(text, &kg(1_000, 60_000)));
    let collars = entry.text(doc, "collars", |text| mass(text, &kg(0, 10_000)));
    let shaft = entry.text(doc, "shaft_diameter", |text| length(text, &mm(10, 60)));
    let sleeve = entry.text(doc, "sleeve", |text| length(text, &mm(50, 1_000)));
    let conditions = [
        ("straight", BarCondition::Straight),
        ("retired", BarCondition::Retired),
    ];
    let condition = entry.text(doc, "condition", |text| choice(text, &conditions));
    let rack = entry.text(doc, "rack", |text| racks.find(text));
    Some(Bar {
        name: name?,
        mass: own?.0,
        collars: collars.map_or(Mass::ZERO, |(mass, _)| mass),
        shaft_diameter: shaft?,
        sleeve: sleeve?,
        condition: condition?,
        rack,
    })
}
