//! On every screen that a finger reaches, in every language: what `view` lists as buttons is what is
//! drawn, and no two are called alike.
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
    for shown in SCREENS {
        let setting = demo().expect("the demo gym");
        let frames = frames_in(setting, shown.name, None, None, &chosen).expect(shown.name);
        for frame in frames {
            let name = format!("{}, {:?}", shown.name, frame.language);
            let stage = Headless::open().expect("a window in memory");
            stage.face().show_frame(&frame);
            stage.advance(Duration::from_secs(2));
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
