//! Nobody touches the screen: back to where all are shown, dark, moved; and what wakes it.
use crate::bench::{Bench, evening};
use crate::ladder::{lifters, main_label};
use hardware::Press;
use std::path::Path;
use view::Pace;
use view::Screen;
use view::floor::FloorTurn;

/// Minutes go by, one tick a second.
fn minutes(bench: &Bench, count: u64) {
    for _ in 0..count * 60 {
        bench.wait_ms(1_000);
    }
}

/// So many lifters have begun; the last of them is shown.
fn begun(bench: &Bench, count: usize) -> Vec<String> {
    let names: Vec<String> = lifters(bench).into_iter().take(count).collect();
    for name in &names {
        if bench.screen() != "choose" {
            bench.tap("all lifters");
        }
        bench.tap(name);
        bench.tap("start");
    }
    names
}

#[test]
fn a_screen_that_nobody_touches_goes_to_the_floor_and_then_dark() {
    let folder = tempfile::tempdir().expect("a folder");
    let bench = Bench::start(folder.path(), &evening());
    begun(&bench, 2);
    bench.to_whoever_is_up();
    let sets = bench.sets();
    minutes(&bench, 4);
    assert_eq!(bench.screen(), "bar");
    minutes(&bench, 2);
    assert_eq!(bench.screen(), "floor");
    assert!(!bench.frame().asleep);
    assert_eq!(bench.sets(), sets, "nothing was entered or lost");
    minutes(&bench, 10);
    assert!(bench.frame().asleep);
}

#[test]
fn where_nobody_is_under_way_all_lifters_are_shown() {
    let folder = tempfile::tempdir().expect("a folder");
    let bench = Bench::start(folder.path(), &evening());
    bench.tap(&lifters(&bench).remove(0));
    assert_eq!(bench.screen(), "set-up");
    minutes(&bench, 6);
    assert_eq!(bench.screen(), "choose");
}

/// A kiosk with a file of its own.
fn with(folder: &Path, file: &str) -> Bench {
    drop(Bench::start(folder, &evening()));
    std::fs::write(folder.join("kiosk.toml"), file).expect("a file");
    Bench::start(folder, &evening())
}

#[test]
fn the_rest_of_the_only_lifter_stays_until_they_are_called() {
    let folder = tempfile::tempdir().expect("a folder");
    let bench = with(folder.path(), "floor_after = \"30 s\"\n");
    begun(&bench, 1);
    bench.tap(&main_label(&bench.frame()));
    let left = bench.rest_left_s();
    assert!(left > 60, "{left}");
    for _ in 0..left - 2 {
        bench.wait_ms(1_000);
    }
    assert_eq!(bench.screen(), "rest");
    for _ in 0..20 {
        bench.wait_ms(1_000);
    }
    assert_eq!(bench.screen(), "bar", "called, and still there");
    minutes(&bench, 1);
    assert_eq!(bench.screen(), "floor", "called, and nobody came");
}

#[test]
fn the_desk_does_not_stay_open() {
    let folder = tempfile::tempdir().expect("a folder");
    let bench = Bench::start(folder.path(), &evening());
    bench.tap("kiosk");
    assert_eq!(bench.screen(), "list");
    minutes(&bench, 6);
    assert_eq!(bench.screen(), "choose");
}

#[test]
fn the_first_touch_only_wakes() {
    let folder = tempfile::tempdir().expect("a folder");
    let bench = Bench::start(folder.path(), &evening());
    let name = lifters(&bench).remove(0);
    minutes(&bench, 16);
    assert!(bench.frame().asleep);
    assert_eq!(bench.takes(&name), Some(false), "no button is enabled");
    bench.touch(&name);
    bench.wait_ms(10);
    assert_eq!((bench.frame().asleep, bench.screen()), (false, "choose"));
    bench.touch(&name);
    assert_eq!(bench.screen(), "choose", "the other half of a double tap");
    bench.tap(&name);
    assert_eq!(bench.screen(), "set-up");
}

#[test]
fn keys_and_feet_wake_too_and_nothing_else() {
    let folder = tempfile::tempdir().expect("a folder");
    let bench = Bench::start(folder.path(), &evening());
    begun(&bench, 1);
    let sets = |bench: &Bench| bench.sets();
    minutes(&bench, 4);
    assert_eq!(bench.screen(), "bar");
    minutes(&bench, 14);
    assert!(bench.frame().asleep);
    bench.press(Press::Done);
    assert!(!bench.frame().asleep);
    assert_eq!(sets(&bench), 0);
    minutes(&bench, 16);
    assert!(bench.frame().asleep);
    bench.key(slint::platform::Key::Return.into());
    bench.wait_ms(10);
    assert!(!bench.frame().asleep);
    assert_eq!(sets(&bench), 0);
}

#[test]
fn a_dark_screen_moves_by_a_little_every_minute() {
    let folder = tempfile::tempdir().expect("a folder");
    let bench = Bench::start(folder.path(), &evening());
    minutes(&bench, 16);
    let mut seen = Vec::new();
    for _ in 0..9 {
        minutes(&bench, 1);
        let shift = bench.frame().shift;
        assert!(shift.0.abs() <= 4 && shift.1.abs() <= 4, "{shift:?}");
        assert_ne!(seen.last(), Some(&shift));
        seen.push(shift);
    }
    let mut kinds = seen.clone();
    kinds.sort_unstable();
    kinds.dedup();
    assert!(kinds.len() >= 8, "{seen:?}");
    bench.touch("kiosk");
    assert_eq!(bench.frame().shift, (0, 0));
}

#[test]
fn a_gym_may_say_never() {
    let folder = tempfile::tempdir().expect("a folder");
    let file = "floor_after = \"never\"\nsleep_after = \"never\"\n";
    let bench = with(folder.path(), file);
    bench.tap(&lifters(&bench).remove(0));
    minutes(&bench, 20);
    assert_eq!((bench.screen(), bench.frame().asleep), ("set-up", false));
}

#[test]
fn what_the_floor_says_of_whoever_did_not_come_stays_as_it_was() {
    let folder = tempfile::tempdir().expect("a folder");
    let bench = Bench::start(folder.path(), &evening());
    begun(&bench, 3);
    bench.tap("all lifters");
    bench.tap("floor");
    let (mut last, mut told) = (None, 0);
    for _ in 0..9 * 60 {
        bench.wait_ms(1_000);
        let frame = bench.frame();
        let Screen::Floor(floor) = &frame.screen else {
            panic!("the floor stays: {}", bench.screen());
        };
        let racks = || floor.racks.iter();
        let turns = || racks().flat_map(|at| at.up.iter().chain(&at.next).chain(&at.then));
        let still = |turn: &FloorTurn| FloorTurn {
            word: String::new(),
            pace: Pace::Fresh,
            ..turn.clone()
        };
        let work: Vec<_> = turns().map(still).collect();
        let words = turns().map(|turn| format!("{}: {}", turn.lifter, turn.word));
        let mut missing: Vec<_> = words.filter(|w| w.contains("did not come")).collect();
        missing.extend(racks().flat_map(|at| at.without_turn.iter().cloned()));
        told += usize::from(!missing.is_empty());
        // The same work in the same order: the same words of whoever did not come, and a tap
        // means the same.
        if let Some((was, said, number)) = &last
            && *was == (work.clone(), frame.asleep)
            && missing.len() == Vec::len(said)
        {
            assert_eq!(*said, missing, "at {}", frame.clock);
            assert_eq!(*number, frame.number, "at {}", frame.clock);
        }
        last = Some(((work, frame.asleep), missing, frame.number));
    }
    assert!(told > 60, "somebody did not come for {told} s");
}
