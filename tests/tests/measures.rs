//! The screens of the demo gym measured as they are drawn: every screen, on three panels, in both
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
    PANELS, Panel, collisions, small_digits, small_targets, spilt_captions, unreadable_texts,
};
use plan::Source;
use view::{Chosen, Frame, Language, Light};

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
