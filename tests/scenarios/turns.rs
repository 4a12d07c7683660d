//! Two lifters in turn, switched in one tap; the bar is told from what the other left on it.
use crate::bench::{Bench, evening};
use crate::ladder::{lifters, main_label};
use view::Screen;

#[test]
fn two_lifters_in_turn() {
    let folder = tempfile::tempdir().expect("a folder");
    let bench = Bench::start(folder.path(), &evening());
    let names = lifters(&bench);
    let (first, second) = (names[0].clone(), names[1].clone());

    bench.tap(&first);
    bench.tap("start");
    bench.tap(&main_label(&bench.frame()));
    assert_eq!(bench.screen(), "rest");

    bench.tap("all lifters");
    bench.tap(&second);
    bench.tap("start");
    let chips = bench.frame().chips;
    // Those who share the bar come first; the shown one is there too.
    let mut names: Vec<&str> = chips.iter().map(|chip| chip.lifter.as_str()).collect();
    names.sort_unstable();
    let mut both = [first.as_str(), second.as_str()];
    both.sort_unstable();
    assert_eq!(names, both);
    let shown = chips.iter().find(|chip| chip.shown);
    assert_eq!(shown.map(|chip| &chip.lifter), Some(&second));
    bench.tap(&main_label(&bench.frame()));

    bench.tap(&format!("switch to {first}"));
    assert_eq!(bench.frame().lifter, first);
    let Screen::Rest(rest) = bench.frame().screen else {
        panic!("the first one rests")
    };
    bench.wait_ms(30_000);
    let Screen::Rest(later) = bench.frame().screen else {
        panic!("and still rests")
    };
    assert_ne!(
        rest.left, later.left,
        "the rest runs on while the other one lifts"
    );
    bench.tap(&format!("switch to {second}"));
    assert_eq!(bench.frame().lifter, second);
}
