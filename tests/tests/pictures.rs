//! Every screen of the demo gym as a picture: the same bytes on every machine, and up to date.
//!
//! Refuses: judging beauty; somebody looks at each change under `tests/pictures/`.
//! `cargo xtask renew` draws them anew.
use kiosk::picture::{SCREENS, frame_of, png_of};
use std::path::PathBuf;

/// The panel that the screen was made for.
const PANEL: (u32, u32) = (1280, 800);

fn kept(name: &str) -> PathBuf {
    acceptance::top()
        .join("tests/pictures")
        .join(format!("{name}.png"))
}

#[test]
fn every_picture_is_up_to_date() {
    let mut stale = Vec::new();
    for shown in SCREENS {
        let frame = frame_of(shown.name, None, None, None).expect("the screen is reached");
        let drawn = png_of(&frame, PANEL).expect("the screen is drawn");
        let path = kept(shown.name);
        if acceptance::renewing() {
            std::fs::write(&path, &drawn).expect("the picture is written");
        }
        if std::fs::read(&path).ok().as_ref() != Some(&drawn) {
            stale.push(shown.name);
        }
    }
    assert!(
        stale.is_empty(),
        "stale: {stale:?}; run cargo xtask renew and look at them"
    );
}

#[test]
fn no_picture_is_left_over() {
    let folder = acceptance::top().join("tests/pictures");
    for entry in std::fs::read_dir(folder).expect("the folder is there") {
        let path = entry.expect("an entry").path();
        let stem = path
            .file_stem()
            .unwrap_or_default()
            .to_string_lossy()
            .into_owned();
        let png = path.extension().is_some_and(|e| e == "png");
        assert!(
            !png || SCREENS.iter().any(|shown| shown.name == stem),
            "{stem}.png is no screen's picture; delete it"
        );
    }
}

#[test]
fn a_picture_twice_is_the_same_bytes() {
    let frame = frame_of("bar", None, None, None).expect("the screen is reached");
    let once = png_of(&frame, PANEL).expect("drawn");
    assert_eq!(once, png_of(&frame, PANEL).expect("drawn again"));
    assert_ne!(once, png_of(&frame, (1024, 600)).expect("another size"));
}
