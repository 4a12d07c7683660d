//! Gyms and days of the evenings: one rack and two, marked plates and plain ones, two racks that
//! share their plates, from the floor and from the pins.
use super::Dice;
use chrono::NaiveDateTime;
use kiosk::clock::BenchClock;
use kiosk::rehearse::moment;
use kiosk::{Folder, Kiosk};
use std::path::Path;

/// Who may come: one with pounds at the first rack, five with kilos at the yard's.
const PEOPLE: [&str; 6] = ["Hamza", "Željka", "Ilkka", "Marisol", "Tevita", "Parvati"];
/// Who pulls from the floor with a bar of their own.
const OTHER_BAR: &str = "Parvati";
/// Wednesdays of the demo plan: halting deadlifts on the second, rack pulls on the others.
const DAYS: [&str; 4] = [
    "2026-12-02T18:00",
    "2026-12-09T18:00",
    "2026-12-02T18:00",
    "2026-11-25T17:40",
];

/// One evening, laid out in a folder.
#[derive(Debug, Clone)]
pub(crate) struct Evening {
    /// When it begins.
    pub(crate) at: NaiveDateTime,
    /// Who comes, two to six.
    pub(crate) lifters: Vec<String>,
}

impl Evening {
    /// The demo gym, or a variant of it.
    pub(crate) fn lay(dice: &mut Dice, folder: &Path) -> Self {
        let count = 2 + usize::try_from(dice.roll(5)).unwrap_or(0);
        let from = usize::try_from(dice.roll(6)).unwrap_or(0);
        let lifters = (0..count).map(|at| PEOPLE[(from + at) % PEOPLE.len()].to_owned());
        let mut lifters: Vec<String> = lifters.collect();
        let at = dice.pick(&DAYS).copied().unwrap_or(DAYS[0]);
        let at = moment(at).expect("a time");
        let (shared, scarce) = (dice.chance(25), dice.chance(25));
        let plain = scarce || dice.chance(25);
        if shared || plain {
            change(folder, at, [shared, plain, scarce]);
        }
        // Another bar for the same plates.
        if scarce && !lifters.iter().any(|name| name == OTHER_BAR) {
            lifters.pop();
            lifters.push(OTHER_BAR.to_owned());
        }
        Self { at, lifters }
    }
}

/// The demo gym with other plates: the first rack takes its plates from the yard's too, nobody has
/// weighed any, or there are hardly enough for two bars.
fn change(folder: &Path, at: NaiveDateTime, [shared, plain, scarce]: [bool; 3]) {
    let data = Folder::open(Some(folder)).expect("a folder");
    // A first start lays the demo gym and its plan.
    drop(Kiosk::open(&data, Box::new(BenchClock::at(at))).expect("it opens"));
    let edit = |name: &str, change: &dyn Fn(String) -> String| {
        let path = folder.join(name);
        let text = std::fs::read_to_string(&path).expect("the demo gym lies there");
        std::fs::write(&path, change(text)).expect("it can be written");
    };
    if shared {
        edit("gym.toml", &|text| {
            text.replace(
                "plate_set = \"pound plates\"",
                "plate_set = \"kilo plates\"",
            )
            .replace("mass = \"45 lb\"\nshaft", "mass = \"20 kg\"\nshaft")
        });
        edit("lifters.toml", &|text| {
            ["Ilkka", "Marisol"].iter().fold(text, |text, name| {
                let old = format!("name = \"{name}\"\nunit = \"kg\"\nrack = \"yard rack\"");
                assert!(text.contains(&old), "{name} lifts at the yard rack");
                text.replace(&old, &old.replace("yard rack", "river rack"))
            })
        });
    }
    if scarce {
        edit("gym.toml", &|text| {
            let kinds = [
                ("25 kg", 4, 3),
                ("20 kg", 2, 1),
                ("10 kg", 2, 1),
                ("5 kg", 2, 1),
            ];
            kinds.iter().fold(text, |text, (mass, many, few)| {
                let pairs = |count| format!("{{ mass = \"{mass}\", pairs = {count},");
                let (old, new) = (pairs(many), pairs(few));
                assert!(text.contains(&old), "{old}");
                text.replace(&old, &new)
            })
        });
    }
    if plain {
        edit("gym.toml", &|text| {
            let (before, weighed) = text.split_once("weighed = [").expect("weighed plates");
            let (_, after) = weighed.split_once("\n]").expect("the end of the list");
            format!("{before}{after}")
        });
    }
}
