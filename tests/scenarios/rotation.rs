//! Four lifters share one bar: after an entry whoever is up is shown, and what to load for them.
use crate::bench::{Bench, evening};
use crate::ladder::main_label;
use view::Screen;

/// They pull from the pins with the same bar on a Wednesday of the demo plan.
pub(crate) const FOUR: [&str; 4] = ["Hamza", "Željka", "Ilkka", "Marisol"];

pub(crate) fn begun() -> (tempfile::TempDir, Bench) {
    let folder = tempfile::tempdir().expect("a folder");
    let bench = Bench::start(folder.path(), &evening());
    for name in FOUR {
        if !bench.frame().lifter.is_empty() {
            bench.tap("all lifters");
        }
        bench.tap(name);
        bench.tap("start");
    }
    (folder, bench)
}

#[test]
fn everybody_comes_to_the_end_in_the_order_called() {
    let (_folder, bench) = begun();
    let mut order = Vec::new();
    // Whoever begins is shown; the first one called may be another.
    bench.tap(&format!("switch to {}", FOUR[0]));
    for _ in 0..200 {
        let frame = bench.frame();
        match &frame.screen {
            Screen::Bar(_) => {
                order.push(frame.lifter.clone());
                bench.tap(&main_label(&frame));
            }
            Screen::Settle(_) => bench.wait_ms(10_000),
            Screen::Rest(rest) if rest.word == "rest" => bench.wait_ms(10_000),
            Screen::Rest(rest) => {
                let first = rest.word.trim_start_matches("after ").to_owned();
                bench.tap(&format!("switch to {first}"));
            }
            Screen::End(_) => bench.tap(&main_label(&frame)),
            Screen::Choose(_) => break,
            other @ (Screen::Floor(_)
            | Screen::SetUp(_)
            | Screen::Entry(_)
            | Screen::History(_)
            | Screen::Why(_)
            | Screen::Meet(_)
            | Screen::List(_)
            | Screen::Turn(_)
            | Screen::Holds(_)
            | Screen::Page(_)
            | Screen::Typing(_)
            | Screen::Stop(_)) => {
                panic!("not expected in a rotation: {other:?}")
            }
        }
    }
    assert_eq!(bench.screen(), "choose", "{order:?}");
    for name in FOUR {
        assert_eq!(order.iter().filter(|n| *n == name).count(), 5, "{order:?}");
        bench.tap(name);
        assert_eq!(bench.screen(), "end", "{name} came to the end");
        bench.tap("all lifters");
    }
    let changes = order.windows(2).filter(|w| w[0] != w[1]).count();
    assert!(changes >= 10, "they take turns: {order:?}");
}

#[test]
fn after_an_entry_the_next_is_shown_and_undo_takes_that_entry_back() {
    let (_folder, bench) = begun();
    for _ in 0..4 {
        if bench.screen() == "bar" {
            break;
        }
        let Screen::Rest(rest) = bench.frame().screen else {
            panic!("waiting")
        };
        bench.tap(&format!(
            "switch to {}",
            rest.word.trim_start_matches("after ")
        ));
    }
    let up = bench.frame();
    assert_eq!(bench.screen(), "bar");
    bench.tap(&main_label(&up));
    let next = bench.frame();
    assert_ne!(next.lifter, up.lifter, "the next lifter is up");
    assert!(
        next.undo_detail.starts_with(&up.lifter),
        "undo names whose entry: {next:?}"
    );
    bench.tap("undo");
    let back = bench.frame();
    assert_eq!(back.lifter, up.lifter);
    let (Screen::Bar(was), Screen::Bar(is)) = (&up.screen, &back.screen) else {
        panic!("back at the bar: {back:?}");
    };
    // The same rung; the plates for it may be others, and then it truly weighs a little else.
    let place = |rung: &str| rung.split(',').next().unwrap_or_default().to_owned();
    assert_eq!((&was.load, place(&was.rung)), (&is.load, place(&is.rung)));
}

#[test]
fn who_waits_sees_after_whom_and_may_go_out_of_turn() {
    let (_folder, bench) = begun();
    let waiting = FOUR.iter().find(|name| {
        if bench.frame().lifter != **name {
            bench.tap("all lifters");
            bench.tap(name);
        }
        matches!(bench.frame().screen, Screen::Rest(_))
    });
    let name = waiting.expect("three of four wait");
    let Screen::Rest(rest) = bench.frame().screen else {
        panic!("{name} waits")
    };
    assert!(rest.word.starts_with("after "), "{rest:?}");
    assert!(
        rest.order.is_none(),
        "nothing to do before the turn: {rest:?}"
    );
    bench.tap("my turn now");
    assert_eq!(bench.screen(), "bar");
    bench.tap(&main_label(&bench.frame()));
    bench.tap("all lifters");
    bench.tap(name);
    let rungs = bench.frame();
    assert!(
        matches!(rungs.screen, Screen::Rest(_)),
        "one rung done, resting: {rungs:?}"
    );
}

#[test]
fn the_floor_tells_the_order_and_a_name_leads_to_its_bar() {
    let (_folder, bench) = begun();
    bench.tap("all lifters");
    bench.tap("floor");
    let Screen::Floor(floor) = bench.frame().screen else {
        panic!("the floor")
    };
    assert_eq!(floor.racks.len(), 1, "they share one rack");
    let rack = &floor.racks[0];
    let up = rack.up.clone().expect("somebody is up");
    let next = rack.next.clone().expect("somebody is next");
    assert_ne!(up.lifter, next.lifter);
    assert!(FOUR.contains(&up.lifter.as_str()) && !up.change.sentence.is_empty());
    assert!(!rack.then.is_empty());
    bench.tap(&up.lifter);
    assert_eq!((bench.screen(), bench.frame().lifter), ("bar", up.lifter));
}
