//! Lifters at the desk: unit, rack, landmarks with a drawing of the body.
//!
//! Refuses: guessing a height; what nobody measured is said to be missing.
use super::health;
use super::place::{Act, Kind, New, Place, Rows, What};
use super::rows::removing;
use super::what::value;
use super::wish::{Change, Edit, Key, Wish, quoted};
use crate::draw::HeightMark;
use crate::drawings::mm;
use crate::language::{Language, p};
use crate::list::{ListRow, ListState};
use crate::scene::Scene;
use domain::lift::Landmark;
use domain::needs::Thing;
use domain::{LengthUnit, Lifter, MassUnit};

const FILE: &str = "lifters.toml";
const TABLE: &str = "lifter";

/// The landmarks with their keys, from the floor up.
const LANDMARKS: [(Landmark, &str); 4] = [
    (Landmark::TibialTuberosity, "tibial_tuberosity"),
    (Landmark::PatellaTop, "patella_top"),
    (Landmark::MidThigh, "mid_thigh"),
    (Landmark::Lockout, "lockout"),
];

/// All lifters, and one more.
pub(crate) fn lifters(scene: &Scene<'_>) -> Rows {
    let say = scene.language();
    let row = |lifter: &Lifter| {
        let measured = lifter.landmarks.len().to_string();
        let of = LANDMARKS.len().to_string();
        let detail = say.fill(p::MEASURED_OF, &[&measured, &of]);
        let state = if lifter.landmarks.len() < LANDMARKS.len() {
            ListState::Amiss
        } else {
            ListState::Plain
        };
        let row = ListRow::new(lifter.rack.clone(), lifter.name.clone());
        (
            row.detail(detail).state(state),
            Act::Go(Place::Lifter(lifter.name.clone())),
        )
    };
    let mut rows: Rows = scene.gym.lifters.iter().map(row).collect();
    let add = ListRow::new(say.say(p::ADD), say.say(p::NEW_LIFTER));
    rows.push((add, Act::Type(What::Name(New::Lifter))));
    rows
}

/// One lifter: landmarks, unit, rack.
pub(crate) fn lifter(scene: &Scene<'_>, name: &str) -> Rows {
    let say = scene.language();
    let Some(lifter) = scene.gym.lifters.iter().find(|l| l.name == name) else {
        return Vec::new();
    };
    let mut rows: Rows = LANDMARKS
        .iter()
        .map(|(landmark, key)| height(say, lifter, *landmark, key))
        .collect();
    let unit = match lifter.unit {
        MassUnit::Kg => MassUnit::Lb,
        MassUnit::Lb => MassUnit::Kg,
    };
    let row = ListRow::new(say.say(p::UNIT), lifter.unit.word());
    rows.push((row, set(name, "unit", unit.word())));
    let racks = &scene.gym.racks;
    let at = racks.iter().position(|rack| rack.name == lifter.rack);
    let next = racks.get(at.map_or(0, |at| (at + 1) % racks.len()));
    let act = next.map_or(Act::Nothing, |rack| set(name, "rack", &rack.name));
    rows.push((ListRow::new(say.say(p::RACK), lifter.rack.clone()), act));
    rows.push(own_bar(scene, lifter));
    let go = |title, value: String, place| (ListRow::new(say.say(title), value), Act::Go(place));
    let who = || name.to_owned();
    let programme = scene
        .gym
        .coaching
        .of(name)
        .map(|programme| programme.name.clone());
    let programme = programme.unwrap_or_else(|| say.say(p::NO_PROGRAMME));
    rows.extend([
        go(
            p::PLANS,
            say.say(p::WRITE_PLAN),
            super::week::at(scene, name, scene.date),
        ),
        go(
            p::NEXT_TIMES,
            say.say(p::NEXT_TIMES_WHAT),
            Place::NextTimes(who()),
        ),
        go(
            p::list::HEALTH,
            health::word(scene, name),
            Place::Health(who()),
        ),
        go(p::PROGRAMME, programme, Place::Follows(who())),
        go(p::RULE, say.say(p::RULE_WHAT), Place::Rule(who())),
        removing(scene, Thing::Lifter(who())),
    ]);
    rows
}

/// The bar that a lifter lifts with from the floor; a tap goes on to the next one by their rack,
/// and at last to none of their own.
fn own_bar(scene: &Scene<'_>, lifter: &Lifter) -> (ListRow, Act) {
    let say = scene.language();
    let bars: Vec<&str> = scene
        .gym
        .bars_at(&lifter.rack)
        .map(|bar| bar.name.as_str())
        .collect();
    let own = lifter.bar.as_deref();
    let at = own.and_then(|own| bars.iter().position(|bar| *bar == own));
    let next = match (own, at) {
        (None, _) => bars.first(),
        (Some(_), at) => at.and_then(|at| bars.get(at + 1)),
    };
    let value = next.map(|bar| quoted(bar)).unwrap_or_default();
    let edit = Edit::of(FILE, (TABLE, &lifter.name), "bar", value);
    let change = if next.is_some() {
        Change::Set(edit)
    } else {
        Change::Drop(edit)
    };
    let shown = own.map_or_else(|| say.say(p::ANY_BAR), str::to_owned);
    let row = ListRow::new(say.say(p::OWN_BAR), shown);
    (row, Act::Want(Wish::Change(vec![change])))
}

/// A text of the lifter's entry, to be written.
fn set(name: &str, key: &'static str, value: &str) -> Act {
    Act::Want(Wish::set(Edit::of(FILE, (TABLE, name), key, quoted(value))))
}

fn height(say: Language, lifter: &Lifter, landmark: Landmark, key: &'static str) -> (ListRow, Act) {
    let measured = lifter.landmark(landmark);
    let words = measured.map(|height| say.length(height, LengthUnit::Mm));
    let state = if measured.is_some() {
        ListState::Plain
    } else {
        ListState::Amiss
    };
    let shown = words.unwrap_or_else(|| say.say(p::NOT_YET_MEASURED));
    let title = say.landmark(landmark);
    let path = [Key::Name("landmarks"), Key::Name(key)];
    let asked = format!("{}, {title}", lifter.name);
    let what = value(asked, Kind::Length, FILE, (TABLE, &lifter.name), &path);
    (ListRow::new(title, shown).state(state), Act::Type(what))
}

/// The measured heights of a lifter, to be drawn on a body.
pub(crate) fn body(scene: &Scene<'_>, name: &str) -> Vec<HeightMark> {
    let say = scene.language();
    let lifter = scene.gym.lifters.iter().find(|l| l.name == name);
    let heights = lifter.map(|l| l.landmarks.as_slice()).unwrap_or_default();
    let mark = |(landmark, height): &(Landmark, domain::Length)| HeightMark {
        word: say.landmark(*landmark),
        height_mm: mm(*height),
    };
    let mut marks: Vec<HeightMark> = heights.iter().map(mark).collect();
    marks.sort_by(|a, b| a.height_mm.total_cmp(&b.height_mm));
    marks
}

/// A new lifter's entry.
pub(crate) fn entry(name: &str, rack: &str, unit: MassUnit) -> String {
    let unit = unit.word();
    format!("\n[[lifter]]\nname = \"{name}\"\nunit = \"{unit}\"\nrack = \"{rack}\"\n")
}
