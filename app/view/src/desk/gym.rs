//! The desk's front page, plans, programmes, and a gym built from nothing.
//!
//! Refuses: taking a plan with a fault; it is shown with the first of them.
use super::news::PlanNews;
use super::place::{Act, New, Place, Rows, What};
use super::wish::{Change, Wish};
use super::{DESK_FILE, PLAIN_ONCE};
use super::{coach_list, left_open, people, stick};
use crate::language::p;
use crate::list::{ListRow, ListState};
use crate::scene::Scene;
use domain::MassUnit;

/// All there is at the desk.
pub(crate) fn home(scene: &Scene<'_>) -> Rows {
    let say = scene.language();
    let gym = scene.gym;
    let count = |n: usize| n.to_string();
    let go = |title, n: usize, place| {
        let row = ListRow::new(say.say(title), count(n));
        (row, Act::Go(place))
    };
    let amiss = |title, faults: &[String], place| {
        let (value, state) = match faults.len() {
            0 => (say.say(p::ALL_WELL), ListState::Plain),
            n => (say.fill(p::FAULTS, &[&count(n)]), ListState::Amiss),
        };
        (
            ListRow::new(say.say(title), value).state(state),
            Act::Go(place),
        )
    };
    let begin = ListRow::new(say.say(p::BEGIN), say.say(p::NEW_GYM)).detail(say.say(p::BEGIN_HINT));
    let mut rows = vec![
        coach_list::way(scene),
        go(p::PLANS, scene.news.plans.len(), Place::Plans),
        go(p::LIFTERS, gym.lifters.len(), Place::Lifters),
        go(p::RACKS, gym.racks.len(), Place::Racks),
        go(p::BARS, gym.bars.len(), Place::Bars),
        go(p::PLATES, gym.plate_sets.len(), Place::Sets),
        go(
            p::PROGRAMMES,
            gym.coaching.programmes.len(),
            Place::Programmes,
        ),
        sharing(scene),
        amiss(p::CHECKS, &scene.news.faults, Place::Checks),
        amiss(p::HARDWARE, &scene.news.hardware, Place::Hardware),
        copies(scene),
        code(scene),
        (begin, Act::Type(What::Name(New::Gym(None)))),
    ];
    rows.extend(left_open::way(scene));
    rows
}

/// Other digits for the desk; asked for where older ones stand plainly in the journal.
fn code(scene: &Scene<'_>) -> (ListRow, Act) {
    let say = scene.language();
    let row = ListRow::new(say.say(p::CODE), say.say(p::NEW_CODE));
    let plain = scene
        .state
        .files
        .get(DESK_FILE)
        .is_some_and(|text| text == PLAIN_ONCE);
    let row = match plain {
        true => row
            .detail(say.say(p::CODE_WAS_PLAIN))
            .state(ListState::Amiss),
        false => row,
    };
    (row, Act::Type(What::Code))
}

/// How many copies lie in the second place.
fn copies(scene: &Scene<'_>) -> (ListRow, Act) {
    let say = scene.language();
    let value = match &scene.news.copies {
        Some(names) => names.len().to_string(),
        None => say.say(p::COPIES_UNSET),
    };
    (
        ListRow::new(say.say(p::COPIES), value),
        Act::Go(Place::Copies),
    )
}

/// Whether the page on the network is served; a tap opens its page.
fn sharing(scene: &Scene<'_>) -> (ListRow, Act) {
    let say = scene.language();
    let lan = &scene.news.lan;
    let value = say.say(if lan.on { p::ON } else { p::OFF });
    let row = ListRow::new(say.say(p::SHARING), value);
    let amiss = lan.on && !lan.card.trouble.is_empty();
    let state = if amiss {
        ListState::Amiss
    } else {
        ListState::Plain
    };
    (row.state(state), Act::Go(Place::Sharing))
}

/// The plans in the folder; a tap takes one.
pub(crate) fn plans(scene: &Scene<'_>) -> Rows {
    let say = scene.language();
    let row = |plan: &PlanNews| match &plan.read {
        Ok(rows) => {
            let value = say.fill(p::TAKE_PLAN, &[&plan.name]);
            let row = ListRow::new(say.fill(p::PLAN_ROWS, &[&rows.to_string()]), value);
            let row = row.detail(&plan.odd);
            (row, Act::Want(Wish::TakePlan(plan.name.clone())))
        }
        Err((first, all)) => {
            let faults = say.fill(p::FAULTS, &[&all.to_string()]);
            let row = ListRow::new(faults, plan.name.clone()).detail(first);
            (row.state(ListState::Amiss), Act::Nothing)
        }
    };
    let write = ListRow::new(say.say(p::ON_THE_SCREEN), say.say(p::WRITE_PLAN));
    let mut rows: Rows = vec![(write, Act::Go(Place::Writers)), stick::row(scene)];
    rows.extend(scene.news.plans.iter().map(row));
    if scene.news.plans.is_empty() {
        let row = ListRow::new(say.say(p::NO_PLANS), String::new()).state(ListState::Told);
        rows.push((row, Act::Nothing));
    }
    rows
}

/// What somebody wants who typed the name of something new.
pub(crate) fn wish_for(scene: &Scene<'_>, new: &New, name: &str) -> Wish {
    let first_rack = scene.gym.racks.first();
    let add = |file, entry| Wish::Change(vec![Change::Add { file, entry }]);
    match new {
        New::Lifter => {
            let rack = first_rack.map_or("", |rack| rack.name.as_str());
            let unit = scene.gym.lifters.first().map_or(MassUnit::Kg, |l| l.unit);
            add("lifters.toml", people::entry(name, rack, unit))
        }
        New::Rack => {
            let plates = first_rack.map_or("", |rack| rack.plates.as_str());
            let bar = bar_entry(&format!("{name} bar"), "straight", Some(name));
            add("gym.toml", rack_entry(name, plates) + &bar)
        }
        New::Bar => add("gym.toml", bar_entry(name, "straight", None)),
        New::Gym(gym) => Wish::Begin {
            gym: gym_text(gym.as_deref().unwrap_or(name)),
            lifters: people::entry(name, RACK, MassUnit::Kg)
                .trim_start()
                .to_owned(),
        },
    }
}

/// Names in a gym from nothing; whoever owns it can change them in the file.
const RACK: &str = "rack 1";
const PLATES: &str = "kilo plates";

/// A rack with figures that are common, no source; each has to be measured.
fn rack_entry(name: &str, plates: &str) -> String {
    format!(
        "\n[[rack]]\nname = \"{name}\"\nfirst_hole = \"200 mm\"\nspacing = \"50 mm\"\nholes = 30\n\
         pin_diameter = \"25 mm\"\nplate_set = \"{plates}\"\n"
    )
}

/// A bar by the rules of the sport (IWF: 20 kg, 28 mm), its sleeve short of the 415 mm by a
/// collar; each figure has to be measured.
fn bar_entry(name: &str, condition: &str, rack: Option<&str>) -> String {
    let rack = rack
        .map(|rack| format!("rack = \"{rack}\"\n"))
        .unwrap_or_default();
    format!(
        "\n[[bar]]\nname = \"{name}\"\nmass = \"20 kg\"\nshaft_diameter = \"28 mm\"\n\
         sleeve = \"370 mm\"\ncondition = \"{condition}\"\n{rack}"
    )
}

/// A gym from nothing: a rack, two bars, kilo plates of common thickness (no source).
fn gym_text(name: &str) -> String {
    let plates = [
        ("25 kg", "58 mm", "450 mm"),
        ("20 kg", "48 mm", "450 mm"),
        ("15 kg", "38 mm", "450 mm"),
        ("10 kg", "28 mm", "450 mm"),
        ("5 kg", "22 mm", "230 mm"),
        ("2.5 kg", "18 mm", "190 mm"),
        ("1.25 kg", "13 mm", "160 mm"),
    ];
    let plate = |(mass, thickness, diameter): (&str, &str, &str)| {
        format!(
            "    {{ mass = \"{mass}\", pairs = 2, thickness = \"{thickness}\", \
             diameter = \"{diameter}\" }},\n"
        )
    };
    let plates: String = plates.into_iter().map(plate).collect();
    let set = format!("\n[[plate_set]]\nname = \"{PLATES}\"\nplates = [\n{plates}]\n");
    format!("name = \"{name}\"\n")
        + &rack_entry(RACK, PLATES)
        + &bar_entry("bar 1", "straight", None)
        + &bar_entry("old bar", "retired", None)
        + &set
}
