//! Rude fingers and feet on a whole kiosk: twice, too soon, while the face changes, on a slow disk.
use crate::bench::{Bench, evening};
use crate::ladder::{lifters, main_label};
use hardware::Press;
use std::path::Path;
use view::Screen;

/// All gaps at which people tap twice, milliseconds.
fn gaps() -> impl Iterator<Item = u64> {
    [
        40, 90, 140, 200, 245, 260, 300, 350, 420, 600, 800, 1_000, 1_200,
    ]
    .into_iter()
}

/// The first lifter at the bar, the main button full.
pub(crate) fn at_the_bar(folder: &Path) -> Bench {
    let bench = Bench::start(folder, &evening());
    let name = lifters(&bench).remove(0);
    bench.tap(&name);
    bench.tap("start");
    assert_eq!(bench.screen(), "bar");
    bench.wait_ms(2_000);
    bench
}

#[test]
fn two_taps_on_done_log_one_set_at_any_gap() {
    for gap in gaps() {
        let folder = tempfile::tempdir().expect("a folder");
        let bench = at_the_bar(folder.path());
        bench.tap_again(&main_label(&bench.frame()), 2, gap);
        bench.wait_ms(2_000);
        assert_eq!(bench.sets(), 1, "{gap} ms apart");
        assert_eq!(bench.screen(), "rest", "{gap} ms apart");
    }
}

#[test]
fn two_taps_on_done_at_a_shared_bar_log_nothing_for_the_next() {
    for gap in [60, 260, 350, 700, 1_150] {
        let folder = tempfile::tempdir().expect("a folder");
        let bench = Bench::start(folder.path(), &evening());
        for name in lifters(&bench).into_iter().take(3) {
            if bench.screen() != "choose" {
                bench.tap("all lifters");
            }
            bench.tap(&name);
            bench.tap("start");
        }
        for _ in 0..4 {
            bench.to_whoever_is_up();
            bench.wait_ms(bench.rest_left_s() * 1_000 + 2_000);
            assert_eq!(bench.screen(), "bar");
            let before = bench.sets();
            bench.tap_again(&main_label(&bench.frame()), 2, gap);
            bench.wait_ms(2_000);
            assert_eq!(bench.sets(), before + 1, "{gap} ms apart");
        }
    }
}

#[test]
fn two_taps_on_go_now_log_no_set() {
    for gap in gaps() {
        let folder = tempfile::tempdir().expect("a folder");
        let bench = at_the_bar(folder.path());
        bench.tap(&main_label(&bench.frame()));
        assert_eq!(bench.screen(), "rest");
        bench.tap_again("go now", 2, gap);
        bench.wait_ms(2_000);
        assert_eq!((bench.sets(), bench.screen()), (1, "bar"), "{gap} ms apart");
    }
}

#[test]
fn two_taps_on_other_reps_enter_nothing_and_two_on_undo_undo_one() {
    for gap in gaps() {
        let folder = tempfile::tempdir().expect("a folder");
        let bench = at_the_bar(folder.path());
        bench.tap(&main_label(&bench.frame()));
        bench.tap("go now");
        bench.tap(&main_label(&bench.frame()));
        assert_eq!(bench.sets(), 2);
        bench.wait_ms(2_000);
        bench.tap_again("undo", 2, gap);
        bench.wait_ms(2_000);
        assert_eq!(bench.sets(), 1, "undo, {gap} ms apart");
        if bench.screen() == "rest" {
            bench.tap("go now");
        }
        bench.wait_ms(2_000);
        bench.tap_again("other reps", 2, gap);
        bench.wait_ms(2_000);
        let seen = (bench.sets(), bench.screen());
        assert_eq!(seen, (1, "entry"), "other reps, {gap} ms apart");
    }
}

#[test]
fn three_taps_on_a_slow_disk_are_one_set() {
    let folder = tempfile::tempdir().expect("a folder");
    let bench = at_the_bar(folder.path());
    bench.be_slow(true);
    bench.tap_again(&main_label(&bench.frame()), 3, 400);
    bench.wait_ms(2_000);
    // Nothing else counts meanwhile, wherever it is.
    for label in ["other reps", "back moved", "undo", "all lifters"] {
        assert_eq!(bench.takes(label), Some(false), "{label}");
        bench.touch(label);
    }
    bench.be_slow(false);
    bench.wait_ms(3_000);
    assert_eq!((bench.sets(), bench.screen()), (1, "rest"));
    assert_eq!(bench.takes("all lifters"), Some(true));
}

#[test]
fn a_refused_tap_is_answered_too() {
    let folder = tempfile::tempdir().expect("a folder");
    let bench = at_the_bar(folder.path());
    // The face changes behind the window, as by another process.
    bench.take_silently(&view::Tap::OtherReps);
    bench.touch(&main_label(&bench.drawn()));
    bench.wait_ms(2_000);
    assert_eq!(
        (bench.sets(), bench.screen()),
        (0, "entry"),
        "not what was seen"
    );
    bench.tap("back");
    bench.tap(&main_label(&bench.frame()));
    assert_eq!(bench.sets(), 1, "and it goes on");
}

#[test]
fn a_finger_that_is_down_when_the_rest_ends_enters_nothing() {
    for held_ms in [1_100, 1_500, 4_000] {
        let folder = tempfile::tempdir().expect("a folder");
        let bench = at_the_bar(folder.path());
        bench.tap(&main_label(&bench.frame()));
        while bench.rest_left_s() > 1 {
            bench.wait_ms(500);
        }
        let at = bench.place_of("go now");
        bench.down(at);
        bench.wait_ms(held_ms);
        assert_eq!(bench.screen(), "bar", "the rest is over");
        bench.up(at);
        bench.wait_ms(2_000);
        let seen = (bench.sets(), bench.screen());
        assert_eq!(seen, (1, "bar"), "down for {held_ms} ms");
    }
}

#[test]
fn a_foot_that_comes_down_twice_or_too_soon_enters_one_set() {
    let folder = tempfile::tempdir().expect("a folder");
    let bench = at_the_bar(folder.path());
    bench.press(Press::Done);
    bench.press(Press::Done);
    bench.wait_ms(300);
    bench.press(Press::Main);
    bench.wait_ms(500);
    bench.press(Press::Main);
    assert_eq!(
        (bench.sets(), bench.screen()),
        (1, "rest"),
        "it still fills"
    );
    bench.wait_ms(1_500);
    let seen = bench.frame().number;
    bench.press(Press::Main);
    assert_eq!(bench.screen(), "bar");
    bench.wait_ms(2_000);
    bench.press_on(Press::Done, seen);
    assert_eq!(bench.sets(), 1, "meant for the rest that was seen before");
    bench.press(Press::Done);
    assert_eq!(bench.sets(), 2);
    bench.wait_ms(2_000);
    bench.press(Press::Undo);
    bench.wait_ms(400);
    bench.press(Press::Undo);
    assert_eq!(bench.sets(), 1, "one undo");
}

#[test]
fn the_main_button_says_when_it_takes_a_tap() {
    let folder = tempfile::tempdir().expect("a folder");
    let bench = at_the_bar(folder.path());
    let done = main_label(&bench.frame());
    assert_eq!(bench.takes(&done), Some(true));
    bench.touch(&done);
    let Screen::Rest(rest) = bench.frame().screen else {
        panic!("resting")
    };
    assert_eq!(bench.takes(&rest.main), Some(false));
    bench.wait_ms(1_400);
    assert_eq!(bench.takes(&rest.main), Some(false));
    bench.touch(&rest.main);
    assert_eq!(bench.screen(), "rest");
    // Too soon: it begins to fill anew.
    bench.wait_ms(1_400);
    assert_eq!(bench.takes(&rest.main), Some(false));
    bench.wait_ms(200);
    assert_eq!(bench.takes(&rest.main), Some(true));
}
