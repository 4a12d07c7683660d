//! The bars of gym.toml. Refuses: to judge whether a bar is safe.
use crate::fault::{Wrong, quote};
use crate::fields;
use crate::known::Known;
use crate::quantity::{length, mass, rated, stress};
use crate::toml_doc::Doc;
use crate::toml_entry::Entry;
use crate::wording::{choice, name};
use crate::words::words;
use domain::equipment::BarStated;
use domain::{Bar, BarCondition, Length, Mass, MassUnit, Rack, Stress};
use text::keys::checked as k;

/// Most bars of a gym.
const BARS_MAX: usize = 100;

/// Reads all bars; the names of those that could be read go to `bars`.
pub(crate) fn read(
    doc: &mut Doc<'_>,
    gym: &Entry<'_>,
    racks: &[Rack],
    rack_names: &Known,
    bars: &mut Known,
) -> Vec<Bar> {
    let mut read = Vec::new();
    let entries = gym.entries(doc, "bar", BARS_MAX, &fields::BAR);
    for entry in &entries {
        let name = entry.text(doc, "name", name);
        bars.add(doc, name.as_deref(), &entry.at_value("name"));
        read.extend(bar(doc, entry, name, rack_names));
    }
    // With a bar that could not be read, the lack of one proves nothing.
    if read.len() == entries.len() && !read.is_empty() {
        serve(doc, gym, racks, &read);
    }
    read
}

/// Each rack needs a bar, and a straight one for lifts from the floor.
fn serve(doc: &mut Doc<'_>, gym: &Entry<'_>, racks: &[Rack], bars: &[Bar]) {
    let place = gym.at_value("bar");
    for Rack { name, .. } in racks {
        let serves = |bar: &&Bar| bar.rack.as_ref().is_none_or(|rack| rack == name);
        let mut at = bars.iter().filter(serves).peekable();
        let right = words!(k::ADD_A_STRAIGHT_BAR_FOR, quote(name));
        if at.peek().is_none() {
            let read = words!(k::NO_BAR_THAT_SERVES_THE, quote(name));
            doc.wrong(&place, Wrong::plain(read, right));
        } else if !at.any(|bar| bar.condition == BarCondition::Straight) {
            let read = words!(k::NO_STRAIGHT_BAR_THAT_SERVES, quote(name));
            doc.odd(&place, Wrong::plain(read, right));
        }
    }
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
    let stated = stated(doc, entry);
    Some(Bar {
        name: name?,
        mass: own?.0,
        collars: collars.map_or(Mass::ZERO, |(mass, _)| mass),
        shaft_diameter: shaft?,
        sleeve: sleeve?,
        condition: condition?,
        rack,
        stated,
    })
}

/// What the maker stated; each figure may be left out.
fn stated(doc: &mut Doc<'_>, entry: &Entry<'_>) -> BarStated {
    let between = Length::mm(500)..=Length::mm(2_000);
    let stiff = Stress::gpa(50)..=Stress::gpa(500);
    let yields = Stress::mpa(50)..=Stress::mpa(5_000);
    let such = ["\"205 GPa\"", "\"1000 MPa\""];
    BarStated {
        rated_load: entry.text(doc, "rated_load", rated),
        between_sleeves: entry.text(doc, "between_sleeves", |text| length(text, &between)),
        youngs_modulus: entry.text(doc, "youngs_modulus", |text| stress(text, &stiff, such[0])),
        yield_stress: entry.text(doc, "yield", |text| stress(text, &yields, such[1])),
    }
}
