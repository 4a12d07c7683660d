//! A mistake undone: at once, after the end, and the start itself.
use crate::bench::{Bench, evening};
use crate::ladder::{lifters, main_label};
use view::Screen;

#[test]
fn a_wrong_entry_is_taken_back() {
    let folder = tempfile::tempdir().expect("a folder");
    let bench = Bench::start(folder.path(), &evening());
    let name = lifters(&bench).remove(0);
    bench.tap(&name);
    bench.tap("start");
    let before = bench.frame().screen;
    bench.tap("back moved");
    bench.tap("1");
    assert_eq!(bench.screen(), "stop");
    bench.tap("undo");
    let (Screen::Bar(was), Screen::Bar(is)) = (before, bench.frame().screen) else {
        panic!("back at the bar");
    };
    assert_eq!((was.load, was.rung), (is.load, is.rung));

    bench.tap("other reps");
    bench.tap("back");
    assert_eq!(bench.screen(), "bar", "leaving a pad enters nothing");

    bench.tap("undo");
    assert_eq!(
        bench.screen(),
        "set-up",
        "with no entry left, the start is taken back"
    );
}

#[test]
fn the_last_set_is_taken_back_after_the_end() {
    let folder = tempfile::tempdir().expect("a folder");
    let bench = Bench::start(folder.path(), &evening());
    let name = lifters(&bench).remove(0);
    bench.tap(&name);
    bench.tap("start");
    for _ in 0..12 {
        if bench.screen() == "end" {
            break;
        }
        bench.tap(&main_label(&bench.frame()));
    }
    assert_eq!(bench.screen(), "end");
    bench.tap("undo");
    assert_ne!(bench.screen(), "end");
    assert_eq!(bench.frame().lifter, name);
}
