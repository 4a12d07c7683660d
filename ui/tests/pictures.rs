//! Pictures without a display: the same bytes each time, any size, and never a panic.
mod bench;

use bench::{scene, scenes};
use ui::picture;

#[test]
fn a_picture_is_the_same_each_time() {
    for name in ["bar", "setup-long", "choose-many"] {
        let frame = scene(name);
        let one = picture(&frame, 1280, 800).expect("it draws");
        let two = picture(&frame, 1280, 800).expect("it draws again");
        assert!(one == two, "{name} differs from itself");
        assert_eq!(one.pixels.len(), 1280 * 800 * 4);
        assert!(one.pixels.chunks(4).all(|pixel| pixel[3] == 255));
    }
}

#[test]
fn pictures_of_other_frames_differ() {
    let bytes = |name| picture(&scene(name), 640, 400).expect("it draws").pixels;
    assert!(bytes("bar") != bytes("bar-off"));
    assert!(bytes("rest") != bytes("rest-over"));
    assert!(bytes("entry-moved") != bytes("stop"));
}

#[test]
fn every_scene_draws_and_any_size() {
    for (name, frame) in scenes::all() {
        let drawn = picture(&frame, 320, 200);
        assert!(drawn.is_ok(), "{name}: {drawn:?}");
    }
    for (width, height) in [(1024, 600), (1920, 1080), (600, 1024), (1, 1), (1, 2000)] {
        let drawn = picture(&scene("bar"), width, height);
        assert!(drawn.is_ok(), "{width} x {height}: {drawn:?}");
    }
}

#[test]
fn a_size_that_is_none_is_refused() {
    for (width, height) in [(0, 800), (1280, 0), (8193, 10), (10, u32::MAX)] {
        let refused = picture(&scene("bar"), width, height);
        let words = refused.expect_err("no such picture");
        assert!(words.contains("8192"), "{words}");
    }
}

/// A frame shown after others looks as if it were the first: nothing of them stays behind.
#[test]
fn nothing_stays_behind_of_what_was_shown_before() {
    let (face, _) = bench::open();
    let all = scenes::all();
    let snapshot = || {
        face.window()
            .take_snapshot()
            .expect("it draws")
            .as_bytes()
            .to_vec()
    };
    let mut first = Vec::new();
    for (_, frame) in &all {
        bench::show(&face, frame);
        first.push(snapshot());
    }
    for ((name, frame), before) in all.iter().zip(&first).rev() {
        bench::show(&face, frame);
        assert!(
            snapshot() == *before,
            "{name} shows what was there before it"
        );
    }
}
