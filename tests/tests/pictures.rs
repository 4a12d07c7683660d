//! Every screen of the demo gym as a picture, in every language: the same
//! bytes on every machine, and up to date.
//!
//! Refuses: judging beauty; somebody looks at each change under `tests/pictures/`.
//! `cargo xtask renew` draws them anew, with their index.
use kiosk::picture::{SCREENS, demo, frame_of, frames_in, png_of};
use std::fmt::Write as _;
use std::path::PathBuf;
use view::{Chosen, Frame, Language, Light};

/// The panel that the screen was made for.
const PANEL: (u32, u32) = (1280, 800);
/// The other looks are drawn at half of its edges.
const SMALL: (u32, u32) = (640, 400);

/// The looks: the folder of each, its size, what it is.
const LOOKS: [(&str, (u32, u32), Chosen); 5] = [
    ("", PANEL, look(Language::English, Light::Dim)),
    (
        "en-daylight",
        SMALL,
        look(Language::English, Light::Daylight),
    ),
    ("de-dim", SMALL, look(Language::German, Light::Dim)),
    (
        "de-daylight",
        SMALL,
        look(Language::German, Light::Daylight),
    ),
    (SPANISH, SMALL, look(Language::Spanish, Light::Dim)),
];

/// The folder of Spanish.
const SPANISH: &str = "es-dim";
/// The screens that are drawn in Spanish too: those that a lifter and a coach see most, and the
/// fullest.
const IN_SPANISH: [&str; 12] = [
    "bar",
    "choose",
    "desk",
    "desk-next",
    "end",
    "floor",
    "meet",
    "panel",
    "rest",
    "settle",
    "setup",
    "why-next",
];

/// Whether a screen is drawn in a look.
fn is_drawn(place: &str, screen: &str) -> bool {
    place != SPANISH || IN_SPANISH.contains(&screen)
}

const fn look(language: Language, light: Light) -> Chosen {
    Chosen { language, light }
}

fn folder() -> PathBuf {
    acceptance::top().join("tests/pictures")
}

/// Every look's picture of a screen: where it lies, its bytes.
fn drawn(name: &'static str) -> Vec<(PathBuf, Vec<u8>)> {
    let chosen = LOOKS.map(|look| look.2);
    let frames = frames_in(demo().expect("the demo gym"), name, None, None, &chosen);
    let frames = frames.expect("the screen is reached");
    let one = |(frame, (place, size, _)): (&Frame, (&str, (u32, u32), Chosen))| {
        let path = folder().join(place).join(format!("{name}.png"));
        (path, png_of(frame, size).expect("the screen is drawn"))
    };
    let looks = frames.iter().zip(LOOKS);
    let looks = looks.filter(|(_, look)| is_drawn(look.0, name));
    looks.map(one).collect()
}

#[test]
fn every_picture_is_up_to_date() {
    let all = SCREENS.map(|shown| std::thread::spawn(move || drawn(shown.name)));
    let mut stale = Vec::new();
    for (path, bytes) in all
        .into_iter()
        .flat_map(|one| one.join().expect("it is drawn"))
    {
        if acceptance::renewing() {
            std::fs::create_dir_all(path.parent().expect("a folder")).expect("the folder");
            std::fs::write(&path, &bytes).expect("the picture is written");
        }
        if std::fs::read(&path).ok().as_ref() != Some(&bytes) {
            stale.push(path);
        }
    }
    assert!(
        stale.is_empty(),
        "stale: {stale:?}; run cargo xtask renew and look at them"
    );
}

/// The index: a row a screen, a column a look.
fn index() -> String {
    let mut text = String::from(
        "# Every screen in every look\n\nDrawn by `cargo xtask renew` from the demo gym. English \
         and dim at the panel's 1280 x 800, the others at half of its edges.\n\n\
         | Screen | English, dim | English, daylight | German, dim | German, daylight | Spanish, \
         dim |\n|---|---|---|---|---|---|\n",
    );
    for shown in SCREENS {
        let _ = write!(text, "| `{}`: {} |", shown.name, shown.about);
        for (place, ..) in LOOKS {
            if !is_drawn(place, shown.name) {
                text.push_str(" |");
                continue;
            }
            let slash = if place.is_empty() { "" } else { "/" };
            let file = format!("{place}{slash}{}.png", shown.name);
            let _ = write!(text, " [<img src=\"{file}\" width=\"320\">]({file}) |");
        }
        text.push('\n');
    }
    text
}

#[test]
fn the_index_has_every_picture() {
    let path = folder().join("README.md");
    if acceptance::renewing() {
        std::fs::write(&path, index()).expect("the index is written");
    }
    let kept = std::fs::read_to_string(&path).unwrap_or_default();
    assert!(kept == index(), "stale; run cargo xtask renew");
}

#[test]
fn no_picture_is_left_over() {
    for (place, ..) in LOOKS {
        let entries = std::fs::read_dir(folder().join(place)).expect("the folder is there");
        for entry in entries {
            let path = entry.expect("an entry").path();
            let stem = path.file_stem().unwrap_or_default().to_string_lossy();
            let png = path.extension().is_some_and(|e| e == "png");
            assert!(
                !png || SCREENS
                    .iter()
                    .any(|shown| shown.name == stem && is_drawn(place, shown.name)),
                "{stem}.png is no screen's picture; delete it"
            );
        }
    }
}

#[test]
fn a_picture_twice_is_the_same_bytes() {
    let frame = frame_of("bar", None, None).expect("the screen is reached");
    let once = png_of(&frame, PANEL).expect("drawn");
    assert_eq!(once, png_of(&frame, PANEL).expect("drawn again"));
    assert_ne!(once, png_of(&frame, (1024, 600)).expect("another size"));
}
