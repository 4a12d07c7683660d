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

use kiosk::picture::{SCREENS, demo, frames_in};
use measures::{PANELS, Panel, collisions, faint_texts, small_digits, small_targets};
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
    for frame in frames {
        face.show_frame(frame);
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
            let checks = [small_targets, small_digits, collisions, faint_texts];
            found.extend(checks.into_iter().flat_map(on_panel).map(about));
        }
    }
    found
}

#[test]
fn every_screen_keeps_its_measures_on_every_panel_in_every_look() {
    let all = SCREENS.map(|shown| {
        let one = move || {
            let frames = frames_in(
                demo().expect("the demo gym"),
                shown.name,
                None,
                None,
                &looks(),
            );
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
