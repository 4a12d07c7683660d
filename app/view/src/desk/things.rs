//! Racks, bars and plates at the desk: each figure as measured, each to be typed anew.
//!
//! Refuses: figures of steel; those are what makers stated, and stay in the file.
use super::place::{Act, Form, Kind, New, Place, Rows, What};
use super::rows::removing;
use super::what::value;
use super::wish::{Change, Edit, Key, Wish, quoted};
use crate::language::{Language, Phrase, p};
use crate::list::{ListRow, ListState};
use crate::scene::Scene;
use domain::needs::Thing;
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
    let mats = say.mats(&rack.mats);
    let place = Place::Mats(name.to_owned());
    rows.push((ListRow::new(say.say(p::MATS_TITLE), mats), Act::Go(place)));
    rows.push(removing(scene, Thing::Rack(name.to_owned())));
    rows
}

/// The mats by a rack, each to be taken away, and one more.
pub(crate) fn mats(scene: &Scene<'_>, rack: &str) -> Rows {
    let say = scene.language();
    let known = scene.gym.racks.iter().find(|known| known.name == rack);
    let mats = known.map(|rack| rack.mats.as_slice()).unwrap_or_default();
    let edit = |path| Edit {
        file: FILE,
        entry: Some(("rack", rack.to_owned())),
        path,
        value: String::new(),
    };
    let row = |(at, mat): (usize, &Length)| {
        let row = ListRow::new(say.say(p::TAKE_AWAY), say.length(*mat, LengthUnit::Mm));
        let drop = Change::Drop(edit(vec![Key::Name("mats"), Key::At(at)]));
        let row = row.detail(say.say(p::HOLD_IT)).state(ListState::Held);
        (row, Act::Want(Wish::Change(vec![drop])))
    };
    let mut rows: Rows = mats.iter().enumerate().map(row).collect();
    let asked = format!("{rack}, {}", say.say(p::NEW_MAT));
    let what = value(
        asked,
        Kind::Length,
        FILE,
        ("rack", rack),
        &[Key::Name("mats")],
    );
    let add = ListRow::new(say.say(p::ADD), say.say(p::NEW_MAT));
    rows.push((add, Act::Type(what.one_more())));
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
    let turn = Wish::set(Edit::of(FILE, (table, name), "condition", quoted(other)));
    vec![
        of.mass(p::MASS, "mass", bar.mass),
        of.length(p::SHAFT, "shaft_diameter", bar.shaft_diameter),
        of.length(p::SLEEVE, "sleeve", bar.sleeve),
        of.mass(p::COLLARS_TITLE, "collars", bar.collars),
        (
            ListRow::new(say.say(p::CONDITION), say.say(now)).detail(say.say(p::CONDITION_HINT)),
            Act::Want(turn),
        ),
        stands_by(scene, bar),
        removing(scene, Thing::Bar(name.to_owned())),
    ]
}

/// By which rack a bar stands; a tap goes on to the next, and at last to none.
fn stands_by(scene: &Scene<'_>, bar: &domain::Bar) -> (ListRow, Act) {
    let say = scene.language();
    let racks = &scene.gym.racks;
    let own = bar.rack.as_deref();
    let at = own.and_then(|own| racks.iter().position(|rack| rack.name == own));
    let next = match (own, at) {
        (None, _) => racks.first(),
        (Some(_), at) => at.and_then(|at| racks.get(at + 1)),
    };
    let value = next.map(|rack| quoted(&rack.name)).unwrap_or_default();
    let edit = Edit::of(FILE, ("bar", &bar.name), "rack", value);
    let change = if next.is_some() {
        Change::Set(edit)
    } else {
        Change::Drop(edit)
    };
    let shown = own.map_or_else(|| say.say(p::EVERY_RACK), str::to_owned);
    (
        ListRow::new(say.say(p::STANDS_BY), shown),
        Act::Want(Wish::Change(vec![change])),
    )
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

/// The kinds of a set, and one more.
pub(crate) fn set(scene: &Scene<'_>, name: &str) -> Rows {
    let say = scene.language();
    let Some(set) = scene.gym.plate_sets.iter().find(|set| set.name == name) else {
        return Vec::new();
    };
    let row = |(at, plate): (usize, &domain::Plate)| {
        let pairs = say.fill(p::PAIRS, &[&plate.pairs.to_string()]);
        let place = Place::Plate(name.to_owned(), at);
        (ListRow::new(face(say, plate), pairs), Act::Go(place))
    };
    let mut rows: Rows = set.plates.iter().enumerate().map(row).collect();
    let unit = set
        .plates
        .first()
        .map_or(MassUnit::Kg, |plate| plate.face.unit);
    let form = Box::new(Form::plate(name, unit));
    let add = ListRow::new(say.say(p::ADD), say.say(p::NEW_KIND));
    rows.push((add, Act::Go(Place::Form(form))));
    rows
}

/// "20 kg": what stands on a plate.
fn face(say: Language, plate: &domain::Plate) -> String {
    format!("{} {}", say.label(&plate.face), plate.face.unit.word())
}

/// One kind of plate: its figures, and away with it.
pub(crate) fn plate(scene: &Scene<'_>, set: &str, at: usize) -> Rows {
    let say = scene.language();
    let sets = &scene.gym.plate_sets;
    let plate = sets
        .iter()
        .find(|known| known.name == set)
        .and_then(|set| set.plates.get(at));
    let Some(plate) = plate else {
        return Vec::new();
    };
    let face = face(say, plate);
    let figure = |title: String, shown, key, kind| {
        let path = [Key::Name("plates"), Key::At(at), Key::Name(key)];
        let asked = format!("{face}, {title}");
        let what = value(asked, kind, FILE, ("plate_set", set), &path);
        (ListRow::new(title, shown), Act::Type(what))
    };
    let mm = |length| say.length(length, LengthUnit::Mm);
    let (thick, wide) = (plate.face.thickness, plate.face.diameter);
    let told = ListRow::new(say.say(p::MASS), face.clone()).state(ListState::Told);
    let pairs = plate.pairs.to_string();
    vec![
        (told, Act::Nothing),
        figure(say.say(p::PAIRS_TITLE), pairs, "pairs", Kind::Count),
        figure(say.say(p::THICKNESS), mm(thick), "thickness", Kind::Length),
        figure(say.say(p::DIAMETER), mm(wide), "diameter", Kind::Length),
        removing(
            scene,
            Thing::Plate {
                set: set.to_owned(),
                at,
            },
        ),
    ]
}
