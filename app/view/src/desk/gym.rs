//! Plans at the desk, and a gym built from nothing.
//!
//! Refuses: taking a plan with a fault; it is shown with the first of them.
use super::news::PlanNews;
use super::place::{Act, New, Place, Rows};
use super::wish::{Change, Wish};
use super::{people, stick, week};
use crate::language::p;
use crate::list::{ListRow, ListState};
use crate::scene::Scene;
use domain::MassUnit;

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
    let week = Place::Week(week::monday(scene.date), 0);
    let mut rows: Rows = vec![(write, Act::Go(week)), stick::row(scene)];
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
