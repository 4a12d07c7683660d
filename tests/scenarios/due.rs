//! The coach's list at the desk: a load that looks wrong is not shown at the rack before one tap of
//! the coach; who is hurt has nothing due until the coach says that they are fit.
use crate::bench::{Bench, evening};
use crate::desk::{enter, rows, tap_like, tap_row, title, type_in};
use crate::planned::to_cell;
use view::Screen;

/// Writes Željka's rack pull of today anew, with a slip of the finger.
fn slip(bench: &Bench, load: &str) {
    bench.tap("the week");
    to_cell(bench, "Željka, Wednesday 2 December");
    tap_like(bench, "rack pull, ", "");
    tap_like(bench, "load, bar counted in, ", "");
    type_in(bench, load);
    bench.tap("save");
    bench.tap("save");
    bench.tap("all lifters");
}

fn texts(bench: &Bench) -> String {
    format!("{:?}", bench.frame().screen)
}

#[test]
fn a_load_that_looks_wrong_takes_one_deliberate_tap_of_the_coach() {
    let folder = tempfile::tempdir().expect("a folder");
    let bench = Bench::start(folder.path(), &evening());
    enter(&bench, "4711");
    slip(&bench, "290");
    bench.tap("Željka");
    let Screen::SetUp(setup) = bench.frame().screen else {
        panic!("the set-up: {}", bench.screen())
    };
    assert!(setup.warnings[0].contains("looks wrong"), "{setup:?}");
    assert!(
        setup.ladder.is_empty() && setup.work.is_empty(),
        "no load is shown"
    );
    assert!(!bench.labels().contains(&"start".to_owned()));
    // Whoever stands at the rack comes as far as the door.
    bench.tap("the coach's digits");
    assert_eq!(title(&bench), "coach's desk");
    type_in(&bench, "1234");
    assert!(
        matches!(bench.frame().screen, Screen::Typing(_)),
        "the wrong code"
    );
    bench.wait_ms(60_000);
    type_in(&bench, "4711");
    // It stands on the desk's front page.
    let all = rows(&bench);
    let wrong = all.iter().find(|row| row.1.starts_with("Željka"));
    let (state, whose, why) = wrong.expect("the line");
    assert_eq!(
        (state.as_str(), whose.as_str()),
        ("looks wrong", "Željka, rack pull, 5 reps")
    );
    assert!(why.ends_with("tap if it is meant"), "{why}");
    bench.tap(&format!("{state}, {whose}"));
    assert!(!texts(&bench).contains("looks wrong"), "it is off the list");
    bench.tap("all lifters");
    bench.tap("Željka");
    assert!(
        bench.labels().contains(&"start".to_owned()),
        "{:?}",
        bench.labels()
    );
}

#[test]
fn who_is_hurt_is_first_on_the_list_and_has_no_load() {
    let folder = tempfile::tempdir().expect("a folder");
    let bench = Bench::start(folder.path(), &evening());
    enter(&bench, "4711");
    bench.tap("lifters");
    tap_like(&bench, "", ", Hamza");
    tap_row(&bench, "hurt or ill, fit");
    bench.tap("hurt, from today: nothing is due until fit again");
    bench.tap("ill, the last 3 days");
    let all = rows(&bench);
    assert!(all[0].2.ends_with("entered at the desk"), "{all:?}");
    bench.tap("all lifters");
    // Who is hurt and has nothing today is told no day and no lift either.
    let Screen::Choose(choose) = bench.frame().screen else {
        panic!("all lifters: {}", bench.screen())
    };
    let hurt = choose.tiles.iter().find(|tile| tile.lifter == "Olumide");
    let told = hurt.map(|tile| (tile.work.as_str(), tile.word.as_str()));
    assert_eq!(told, Some(("", "hurt")), "{:?}", choose.tiles);
    bench.tap("Hamza");
    let shown = texts(&bench);
    assert!(shown.contains("see a clinician"), "{shown}");
    bench.tap("the coach's digits");
    type_in(&bench, "4711");
    // It stands on the desk's front page.
    bench.tap("hurt, Hamza");
    bench.tap("hurt, fit again");
    bench.tap("all lifters");
    bench.tap("Hamza");
    assert!(
        bench.labels().contains(&"start".to_owned()),
        "{:?}",
        bench.labels()
    );
}
