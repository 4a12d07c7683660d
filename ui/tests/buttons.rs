//! What `view` lists as the buttons of a face, and what is drawn, are the same: on every screen, in
//! every language, page by page where there are several.
mod bench;

use bench::scenes;
use std::collections::BTreeSet;
use std::time::Duration;
use ui::Headless;
use view::{Frame, Language, Screen, buttons};

/// Pages that are turned at most.
const PAGES_MAX: usize = 10;

/// Labels as they are drawn, page after page; on one page none comes twice.
fn drawn(frame: &Frame) -> BTreeSet<String> {
    let stage = Headless::open().expect("a window in memory");
    stage.face().show_frame(frame);
    stage.advance(Duration::from_secs(2));
    let mut all = BTreeSet::new();
    for _ in 0..PAGES_MAX {
        let page = stage.pressables();
        let labels: BTreeSet<&str> = page.iter().map(|one| one.label.as_str()).collect();
        assert_eq!(labels.len(), page.len(), "a label comes twice: {page:?}");
        assert!(!labels.contains(""), "a button without a word: {page:?}");
        let before = all.len();
        all.extend(labels.into_iter().map(String::from));
        let more = [
            "more",
            "more lifters",
            "mehr",
            "mehr Leute",
            "más",
            "más atletas",
        ];
        let turn = page.iter().find(|one| more.contains(&one.label.as_str()));
        let Some(turn) = turn.filter(|_| before < all.len()) else {
            break;
        };
        stage.press(turn.middle);
        stage.advance(Duration::from_millis(30));
        stage.release(turn.middle);
        stage.advance(Duration::from_secs(2));
    }
    all
}

#[test]
fn what_is_listed_is_drawn_and_what_is_drawn_is_listed() {
    let mut screens = BTreeSet::new();
    for (name, scene) in scenes::all() {
        for language in Language::ALL {
            let frame = Frame {
                language,
                ..scene.clone()
            };
            screens.insert(format!("{:?}", std::mem::discriminant(&frame.screen)));
            let listed: Vec<String> = buttons(&frame).into_iter().map(|b| b.label).collect();
            let once: BTreeSet<String> = listed.iter().cloned().collect();
            assert_eq!(once.len(), listed.len(), "{name}: {listed:?}");
            assert_eq!(drawn(&frame), once, "{name}, {language:?}");
        }
    }
    assert!(screens.len() >= SCREENS, "{} screens", screens.len());
}

/// Kinds of screens that the invented scenes show at least.
const SCREENS: usize = 14;

#[test]
fn every_text_of_a_face_is_told() {
    let stage = Headless::open().expect("a window in memory");
    let frame = bench::scene("bar");
    stage.face().show_frame(&frame);
    let texts = stage.texts();
    let Screen::Bar(bar) = &frame.screen else {
        panic!("it is the bar")
    };
    for text in [&frame.lifter, &frame.clock, &bar.load, &bar.unit, &bar.main] {
        assert!(texts.contains(text), "{text} is not among {texts:?}");
    }
}
