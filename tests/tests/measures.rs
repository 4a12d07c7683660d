//! The screens of the demo gym measured as they are drawn: every screen, on five panels, one of them upright, in both
//! languages, in daylight and dim.
//!
//! Targets of 20 mm, 3 mm apart: Colle and Hiszem 2004 (kiosk keys, standing). Digits of 17.45 mm
//! for 20 minutes of arc at 3 m: height = 2 d tan(a/2), the figure of ISO 9241-3. Contrast of 7:1:
//! WCAG 2.2, success criterion 1.4.6, its formula taken to the rendered pixels.
//!
//! Refuses: beauty; and panels smaller than 10.1 in, on which a finger is larger than a button.
#[path = "../measures/mod.rs"]
mod measures;

use chrono::NaiveDate;
use kiosk::folder::{DEMO, DEMO_PLAN};
use kiosk::picture::{SCREENS, Setting, demo, frames_in};
use measures::{
    PANELS, Panel, collisions, half_covered, small_digits, small_targets, spilt_captions,
    unreadable_texts,
};
use plan::Source;
use view::{Chosen, Frame, Language, Light, Screen};

/// Every language in every light.
pub(crate) fn looks() -> Vec<Chosen> {
    let lights = [Light::Dim, Light::Daylight];
    let all = Language::ALL.into_iter();
    all.flat_map(|language| lights.map(|light| Chosen { language, light }))
        .collect()
}

/// What is amiss with a screen in all looks on all panels.
fn amiss(name: &'static str, frames: &[Frame]) -> Vec<String> {
    let face = measures::open();
    let mut found = Vec::new();
    // Simulated devices are for a desk, not for a rack; what stands beside them is measured alone.
    for frame in frames.iter().filter(|frame| frame.beside.is_none()) {
        face.show_frame(frame);
        face.settle();
        for panel in PANELS {
            // As wide to its height as the one before, only larger: one look is enough.
            if panel.width > 1920 && frame.look != view::Look::Dim {
                continue;
            }
            measures::resize(&face, panel);
            let about = |words: String| {
                let look = format!("{:?} {:?}", frame.language, frame.look);
                format!(
                    "{name}, {look}, {} x {}: {words}",
                    panel.width, panel.height
                )
            };
            let on_panel =
                |check: fn(&ui::Face, &Frame, Panel) -> Vec<String>| check(&face, frame, panel);
            let checks = [
                small_targets,
                small_digits,
                collisions,
                spilt_captions,
                unreadable_texts,
            ];
            found.extend(checks.into_iter().flat_map(on_panel).map(about));
        }
    }
    found
}

/// All screens of a gym in these looks on all panels.
fn measure(setting: &Setting, looks: &[Chosen]) {
    let all = SCREENS.map(|shown| {
        let (setting, looks) = (setting.clone(), looks.to_vec());
        let one = move || {
            let frames = frames_in(setting, shown.name, None, None, &looks);
            amiss(shown.name, &frames.expect("the screen is reached"))
        };
        std::thread::spawn(one)
    });
    let found: Vec<String> = all
        .into_iter()
        .flat_map(|one| one.join().expect("the screen is measured"))
        .collect();
    assert!(
        found.is_empty(),
        "{} amiss:\n{}",
        found.len(),
        found.join("\n")
    );
}

#[test]
fn every_screen_keeps_its_measures_on_every_panel_in_every_look() {
    measure(&demo().expect("the demo gym"), &looks());
}

/// The demo gym's lifters under names as long as people have them.
const LONG: [(&str, &str); 7] = [
    ("Tevita", "Bartholomäus Łęcki"),
    ("Hamza", "Maximiliane Hohenstein"),
    ("Olumide", "Oluwaseun Adebayo-Thompson"),
    ("Željka", "Željka Vukosavljević"),
    ("Ilkka", "Ilkka-Pekka Hämäläinen"),
    ("Marisol", "María de la Concepción"),
    ("Parvati", "Parvati Venkataraman"),
];

#[test]
fn the_longest_names_and_loads_keep_the_measures() {
    let long = |text: &str| {
        let mut text = text.to_owned();
        for (name, longer) in LONG {
            text = text.replace(name, longer);
        }
        text
    };
    let (lifters, plan) = (long(DEMO[1].1), long(DEMO_PLAN));
    let source = |name, text| Source { name, text };
    let gym = plan::gym(
        source(DEMO[0].0, DEMO[0].1.as_bytes()),
        source(DEMO[1].0, lifters.as_bytes()),
    );
    let day = NaiveDate::from_ymd_opt(2026, 11, 25).expect("a day");
    let gym = gym.expect("the demo gym with other names");
    // What room a name takes is the same in any light.
    let dim = looks().into_iter().filter(|look| look.light == Light::Dim);
    let looks: Vec<Chosen> = dim.collect();
    measure(&Setting::of(gym, &plan, day).expect("its plan"), &looks);
}

/// Another load for a lifter of the demo gym on its Wednesday.
fn alone(lifter: &str, lift: &str, load: &str) -> Setting {
    let gym = kiosk::gym_files::demo().expect("the demo gym");
    let day = NaiveDate::from_ymd_opt(2026, 11, 25).expect("a day");
    let plan = format!("date,lifter,lift,sets,reps,load\n2026-11-25,{lifter},{lift},1,5,{load}\n");
    Setting::of(gym, &plan, day).expect("its plan")
}

/// What the lifter stands on, or under the plates, and what is worn, as long as words for it get.
fn longest(say: Language, spot: &view::spot::Spot) -> view::spot::Spot {
    let [place, raise] = match say {
        Language::English => ["hooks in hole 14", "nothing under the plates"],
        Language::German => ["Haken in Loch 14", "nichts unter den Scheiben"],
        Language::Spanish => ["ganchos en el agujero 14", "nada bajo los discos"],
    };
    view::spot::Spot {
        place: place.into(),
        hole: String::new(),
        mats: String::new(),
        raise: raise.into(),
        ..spot.clone()
    }
}

/// The same face with every line that can be there, each as long as it gets.
fn filled(frame: &Frame) -> Vec<Frame> {
    let with = |screen: Screen| Frame {
        screen,
        ..frame.clone()
    };
    let [asked, plan, mark, against, last, after] = match frame.language {
        Language::English => [
            "due 197.5 kg, plan 207.5 kg",
            "due",
            "more than is due",
            "2.5 kg more than last time",
            "last time 202.5 kg × 5, the back moved at rep 4 in set 2, on 28 September",
            "after Maximiliane Hohenstein",
        ],
        Language::German => [
            "fällig 197,5 kg, Plan 207,5 kg",
            "fällig",
            "mehr als fällig",
            "2,5 kg weniger als zuletzt",
            "zuletzt 202,5 kg × 5, der Rücken gab bei Wdh. 4 nach in Satz 2, am 28. September",
            "nach Maximiliane Hohenstein",
        ],
        Language::Spanish => [
            "toca 197,5 kg, plan 207,5 kg",
            "toca",
            "más de lo que toca",
            "2,5 kg menos que la última vez",
            "última vez 202,5 kg × 5, la espalda cedió en la rep. 4 en la serie 2, el 28 de septiembre",
            "tras Maximiliane Hohenstein",
        ],
    };
    if let Screen::Settle(settle) = &frame.screen {
        let mut full = settle.clone();
        (full.asked, full.last) = (asked.into(), last.into());
        for choice in &mut full.loads {
            (choice.plan, choice.mark) = (plan.into(), mark.into());
            choice.against = against.into();
        }
        return vec![with(Screen::Settle(full))];
    }
    if let Screen::Rest(rest) = &frame.screen {
        let mut waits = rest.clone();
        (waits.left, waits.word) = ("2nd".into(), after.into());
        (waits.order, waits.loaded, waits.holds) = (None, String::new(), String::new());
        waits.share = 0.0;
        let mut high = rest.clone();
        high.spot = longest(frame.language, &rest.spot);
        let mut both = waits.clone();
        both.spot = high.spot.clone();
        return [waits, high, both]
            .map(|rest| with(Screen::Rest(rest)))
            .into();
    }
    if let Screen::Bar(bar) = &frame.screen {
        let mut high = bar.clone();
        high.spot = longest(frame.language, &bar.spot);
        return vec![with(Screen::Bar(high))];
    }
    Vec::new()
}

#[test]
fn other_loads_and_all_lines_at_once_keep_the_measures() {
    let dim = |language| Chosen {
        language,
        light: Light::Dim,
    };
    let looks = Language::ALL.map(dim);
    let of = [
        ("Hamza", "rack pull", "205 kg"),
        ("Hamza", "rack pull", "217.5 kg"),
        ("Tevita", "rack pull", "557.5 lb"),
        ("Parvati", "deadlift", "42.5 kg"),
    ];
    let names = ["bar-first", "bar", "rest", "settle", "stop"];
    let each = of.iter().flat_map(|one| names.map(|name| (*one, name)));
    let all = each.map(|((lifter, lift, load), name)| {
        std::thread::spawn(move || {
            let setting = alone(lifter, lift, load);
            let frames = frames_in(setting, name, Some(lifter), None, &looks);
            let frames = frames.expect("the screen is reached");
            let full = frames.iter().flat_map(filled);
            let all: Vec<Frame> = full.chain(frames.clone()).collect();
            amiss(name, &all)
        })
    });
    let all: Vec<_> = all.collect();
    let found: Vec<String> = all
        .into_iter()
        .flat_map(|one| one.join().expect("the screen is measured"))
        .collect();
    assert!(
        found.is_empty(),
        "{} amiss:\n{}",
        found.len(),
        found.join("\n")
    );
}

#[test]
fn the_word_that_a_tap_is_being_saved_covers_nothing_by_half() {
    let found = ["bar", "rest", "settle", "stop", "setup"].map(|name| {
        std::thread::spawn(move || {
            let setting = demo().expect("the demo gym");
            let frames = frames_in(setting, name, None, None, &looks()).expect("it is reached");
            let face = measures::open();
            let mut found = Vec::new();
            for frame in &frames {
                for panel in PANELS {
                    measures::resize(&face, panel);
                    face.show_frame(frame);
                    face.settle();
                    found.extend(half_covered(&face).into_iter().map(|words| {
                        format!(
                            "{name}, {:?}, {} wide: {words}",
                            frame.language, panel.width
                        )
                    }));
                }
            }
            found
        })
    });
    let found = found.map(|one| one.join().expect("the screen is measured"));
    assert_eq!(found.concat(), Vec::<String>::new());
}
