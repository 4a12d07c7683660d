//! Racks, bars and plates at the desk: each figure as measured, each to be typed anew.
//!
//! Refuses: figures of steel; those are what makers stated, and stay in the file.
use super::typing::{Kind, New, What, value};
use super::{Act, Edit, Key, Place, Rows, Wish};
use crate::language::{Phrase, p};
use crate::list::{ListRow, ListState};
use crate::scene::Scene;
use domain::{BarCondition, Length, LengthUnit, Mass, MassUnit};

const FILE: &str = "gym.toml";

/// The unit in which a mass is written without a remainder, kilos first.
fn natural(mass: Mass) -> MassUnit {
    let kilos = mass.exact(MassUnit::Kg);
    let pounds = mass.exact(MassUnit::Lb);
    if pounds.len() < kilos.len() {
        MassUnit::Lb
    } else {
        MassUnit::Kg
    }
}

/// A figure of an entry of gym.toml.
struct Figure<'a> {
    scene: &'a Scene<'a>,
    table: &'static str,
    name: &'a str,
}

impl Figure<'_> {
    fn row(&self, title: Phrase, key: &'static str, kind: Kind, shown: String) -> (ListRow, Act) {
        let title = self.scene.language().say(title);
        let asked = format!("{}, {title}", self.name);
        let entry = (self.table, self.name);
        let what = value(asked, kind, FILE, entry, &[Key::Name(key)]);
        (ListRow::new(title, shown), Act::Type(what))
    }

    fn length(&self, title: Phrase, key: &'static str, length: Length) -> (ListRow, Act) {
        let shown = self.scene.language().length(length, LengthUnit::Mm);
        self.row(title, key, Kind::Length, shown)
    }

    fn mass(&self, title: Phrase, key: &'static str, mass: Mass) -> (ListRow, Act) {
        let shown = self.scene.language().mass(mass, natural(mass));
        self.row(title, key, Kind::Mass, shown)
    }
}

/// A list of names, each leading to its own page, and one more.
fn named<'a>(
    scene: &Scene<'_>,
    names: impl Iterator<Item = (&'a str, String)>,
    place: fn(String) -> Place,
    add: Option<(Phrase, New)>,
) -> Rows {
    let say = scene.language();
    let row = |(name, detail): (&str, String)| {
        (ListRow::new(detail, name), Act::Go(place(name.to_owned())))
    };
    let mut rows: Rows = names.map(row).collect();
    if let Some((title, new)) = add {
        let row = ListRow::new(say.say(p::ADD), say.say(title));
        rows.push((row, Act::Type(What::Name(new))));
    }
    rows
}

pub(crate) fn racks(scene: &Scene<'_>) -> Rows {
    let say = scene.language();
    let holes = |rack: &domain::Rack| say.fill(p::HOLES, &[&rack.holes.to_string()]);
    let names = scene
        .gym
        .racks
        .iter()
        .map(|rack| (rack.name.as_str(), holes(rack)));
    named(scene, names, Place::Rack, Some((p::NEW_RACK, New::Rack)))
}

pub(crate) fn rack(scene: &Scene<'_>, name: &str) -> Rows {
    let Some(rack) = scene.gym.racks.iter().find(|rack| rack.name == name) else {
        return Vec::new();
    };
    let table = "rack";
    let of = Figure { scene, table, name };
    let holes = rack.holes.to_string();
    let mut rows = vec![
        of.length(p::FIRST_HOLE, "first_hole", rack.first_hole),
        of.length(p::SPACING, "spacing", rack.spacing),
        of.row(p::HOLE_COUNT, "holes", Kind::Count, holes),
        of.length(p::PIN_DIAMETER, "pin_diameter", rack.pin_diameter),
    ];
    if let Some(diameter) = rack.hole_diameter {
        rows.push(of.length(p::HOLE_DIAMETER, "hole_diameter", diameter));
    }
    let say = scene.language();
    let mats = if rack.mats.is_empty() {
        say.say(p::NO_MAT)
    } else {
        say.mats(&rack.mats)
    };
    let told = ListRow::new(say.say(p::MATS_TITLE), mats).state(ListState::Told);
    rows.push((told, Act::Nothing));
    rows
}

pub(crate) fn bars(scene: &Scene<'_>) -> Rows {
    let say = scene.language();
    let mass = |bar: &domain::Bar| say.mass(bar.mass, natural(bar.mass));
    let names = scene
        .gym
        .bars
        .iter()
        .map(|bar| (bar.name.as_str(), mass(bar)));
    named(scene, names, Place::Bar, Some((p::NEW_BAR, New::Bar)))
}

pub(crate) fn bar(scene: &Scene<'_>, name: &str) -> Rows {
    let Some(bar) = scene.gym.bars.iter().find(|bar| bar.name == name) else {
        return Vec::new();
    };
    let (say, table) = (scene.language(), "bar");
    let of = Figure { scene, table, name };
    let (now, other) = match bar.condition {
        BarCondition::Straight => (p::STRAIGHT, "retired"),
        BarCondition::Retired => (p::RETIRED, "straight"),
    };
    let turn = Wish::Set(Edit {
        file: FILE,
        entry: Some((table, name.to_owned())),
        path: vec![Key::Name("condition")],
        value: format!("\"{other}\""),
    });
    vec![
        of.mass(p::MASS, "mass", bar.mass),
        of.length(p::SHAFT, "shaft_diameter", bar.shaft_diameter),
        of.length(p::SLEEVE, "sleeve", bar.sleeve),
        of.mass(p::COLLARS_TITLE, "collars", bar.collars),
        (
            ListRow::new(say.say(p::CONDITION), say.say(now)).detail(say.say(p::CONDITION_HINT)),
            Act::Want(turn),
        ),
    ]
}

pub(crate) fn sets(scene: &Scene<'_>) -> Rows {
    let say = scene.language();
    let kinds = |set: &domain::PlateSet| say.fill(p::KINDS, &[&set.plates.len().to_string()]);
    let names = scene
        .gym
        .plate_sets
        .iter()
        .map(|set| (set.name.as_str(), kinds(set)));
    named(scene, names, Place::Set, None)
}

/// How many pairs of each plate there are.
pub(crate) fn set(scene: &Scene<'_>, name: &str) -> Rows {
    let say = scene.language();
    let Some(set) = scene.gym.plate_sets.iter().find(|set| set.name == name) else {
        return Vec::new();
    };
    let row = |(at, plate): (usize, &domain::Plate)| {
        let face = format!("{} {}", say.label(&plate.face), plate.face.unit.word());
        let pairs = say.fill(p::PAIRS, &[&plate.pairs.to_string()]);
        let asked = say.fill(p::PAIRS_OF, &[&face]);
        let path = [Key::Name("plates"), Key::At(at), Key::Name("pairs")];
        let what = value(asked, Kind::Count, FILE, ("plate_set", name), &path);
        (ListRow::new(face, pairs), Act::Type(what))
    };
    set.plates.iter().enumerate().map(row).collect()
}
