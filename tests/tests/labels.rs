//! On every screen that a finger reaches, in every language: what `view` lists as buttons is what is
//! drawn, no two are called alike, and no words of one language stand there in another.
use kiosk::picture::{SCREENS, demo, frames_in};
use std::collections::BTreeSet;
use std::time::Duration;
use ui::Headless;
use view::{Chosen, Deed, Language, buttons};

#[test]
fn every_button_that_is_drawn_is_listed_and_none_twice() {
    let chosen = Language::ALL.map(|language| Chosen {
        language,
        ..Chosen::default()
    });
    let mut deeds = BTreeSet::new();
    let mut left: BTreeSet<String> = BTreeSet::new();
    for shown in SCREENS {
        let setting = demo().expect("the demo gym");
        let mut english = BTreeSet::new();
        let frames = frames_in(setting, shown.name, None, None, &chosen).expect(shown.name);
        for frame in frames {
            let name = format!("{}, {:?}", shown.name, frame.language);
            let stage = Headless::open().expect("a window in memory");
            stage.face().show_frame(&frame);
            stage.advance(Duration::from_secs(2));
            let said: BTreeSet<String> = stage.texts().into_iter().collect();
            if frame.language == Language::English {
                english = said;
            } else {
                left.extend(said.intersection(&english).cloned());
            }
            let listed = buttons(&frame);
            deeds.extend(listed.iter().map(|button| button.does));
            let labels: BTreeSet<&str> = listed.iter().map(|b| b.label.as_str()).collect();
            assert_eq!(labels.len(), listed.len(), "{name}: {listed:?}");
            let drawn = stage.pressables();
            let seen: BTreeSet<&str> = drawn.iter().map(|one| one.label.as_str()).collect();
            assert_eq!(seen.len(), drawn.len(), "{name}: {drawn:?}");
            let paged = ["more", "mehr", "más"]
                .iter()
                .any(|more| seen.contains(more));
            if paged {
                assert!(seen.is_subset(&labels), "{name}: {seen:?} {labels:?}");
            } else {
                assert_eq!(seen, labels, "{name}");
            }
        }
    }
    let written = written();
    left.retain(|text| long_words(text).any(|word| !written.contains(&word)));
    assert!(left.is_empty(), "said in English alone: {left:#?}");
    for deed in [
        Deed::Done,
        Deed::Go,
        Deed::Start,
        Deed::Undo,
        Deed::Lifter,
        Deed::Floor,
    ] {
        assert!(deeds.contains(&deed), "no screen has {deed:?}");
    }
}

/// The words of a text of four letters at least; shorter ones are alike in many languages.
fn long_words(text: &str) -> impl Iterator<Item = String> {
    let words = text.split(|letter: char| !letter.is_alphabetic());
    words
        .filter(|word| word.chars().count() > 3)
        .map(str::to_lowercase)
}

/// What people wrote into the files behind the screens, and names that every language has.
fn written() -> String {
    let names = "deutsch english español brzycki conner epley lombardi mayhew wathan pinladder";
    let files = "january.xlsx plans/testing.csv";
    let mut all = format!("{names} {files} ");
    let mut folders = vec![
        acceptance::top().join("demo-data"),
        acceptance::top().join("app/kiosk/src/picture"),
    ];
    while let Some(folder) = folders.pop() {
        for entry in std::fs::read_dir(folder).expect("a folder of demo data") {
            let path = entry.expect("an entry").path();
            let is_data = path.extension().is_some_and(|e| e == "toml" || e == "csv");
            if path.is_dir() {
                folders.push(path);
            } else if is_data {
                all += &std::fs::read_to_string(path)
                    .expect("it reads")
                    .to_lowercase();
            }
        }
    }
    all
}
