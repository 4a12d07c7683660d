//! One lifter through a full ladder, one tap a set.
use crate::bench::{Bench, evening};
use view::{Frame, Screen};

/// The label of the main button of a screen.
pub(crate) fn main_label(frame: &Frame) -> String {
    match &frame.screen {
        Screen::SetUp(s) => s.main.clone(),
        Screen::Bar(s) => format!("{}, {}", s.main, s.main_detail),
        Screen::Rest(s) => s.main.clone(),
        Screen::Settle(s) => s.main.clone(),
        Screen::Stop(s) => s.main.clone(),
        Screen::End(s) => s.main.clone(),
        Screen::Choose(_)
        | Screen::Floor(_)
        | Screen::Entry(_)
        | Screen::History(_)
        | Screen::Why(_)
        | Screen::Meet(_)
        | Screen::List(_)
        | Screen::Turn(_)
        | Screen::Holds(_)
        | Screen::Page(_)
        | Screen::Typing(_) => panic!("no main button here"),
    }
}

/// The names on the tiles that have a lift today.
pub(crate) fn lifters(bench: &Bench) -> Vec<String> {
    let Screen::Choose(choose) = bench.frame().screen else {
        panic!("not all lifters")
    };
    let with_work = choose
        .tiles
        .into_iter()
        .filter(|tile| !tile.work.is_empty());
    with_work.map(|tile| tile.lifter).collect()
}

#[test]
fn one_lifter_through_a_full_ladder() {
    let folder = tempfile::tempdir().expect("a folder");
    let bench = Bench::start(folder.path(), &evening());
    assert_eq!(bench.screen(), "choose");
    let name = lifters(&bench).remove(0);
    bench.tap(&name);
    assert_eq!(bench.screen(), "set-up");
    bench.tap("start");

    let mut loads = Vec::new();
    for _ in 0..12 {
        let frame = bench.frame();
        match &frame.screen {
            Screen::Bar(bar) => {
                loads.push(bar.load.clone());
                assert!(bench.labels().contains(&"undo".to_owned()));
                bench.tap(&main_label(&frame));
            }
            Screen::Rest(rest) => {
                assert_ne!(rest.left, "0:00");
                bench.wait_ms(600_000);
                assert_eq!(
                    bench.screen(),
                    "bar",
                    "the rest is over, so the bar is shown"
                );
            }
            Screen::Settle(settle) => {
                assert!((3..=5).contains(&settle.loads.len()), "{settle:?}");
                bench.wait_ms(600_000);
                assert_eq!(bench.screen(), "bar", "nothing chosen leaves the plan");
            }
            Screen::End(_) => break,
            other @ (Screen::Choose(_)
            | Screen::Floor(_)
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
            | Screen::Stop(_)) => panic!("not expected on the way up: {other:?}"),
        }
    }
    assert_eq!(bench.screen(), "end");
    let numbers: Vec<f64> = loads.iter().map(|l| l.parse().expect("a number")).collect();
    assert!(numbers.len() >= 4, "{loads:?}");
    assert!(
        numbers.windows(2).all(|w| w[0] <= w[1]),
        "the ladder rises: {loads:?}"
    );

    let Screen::End(end) = bench.frame().screen else {
        panic!("the end")
    };
    assert!(!end.short);
    assert!(
        end.rows.iter().all(|row| row.hold == "back held"),
        "{:?}",
        end.rows
    );
    bench.tap(&end.main);
    assert_eq!(bench.screen(), "choose");
}

#[test]
fn other_reps_take_two_taps_and_a_moved_back_too() {
    let folder = tempfile::tempdir().expect("a folder");
    let bench = Bench::start(folder.path(), &evening());
    let name = lifters(&bench).remove(0);
    bench.tap(&name);
    bench.tap("start");
    bench.tap("other reps");
    bench.tap("3");
    assert_eq!(bench.screen(), "rest");
    bench.tap("go now");
    bench.tap("back moved");
    bench.tap("2");
    let Screen::Stop(stop) = bench.frame().screen else {
        panic!("a moved back asks")
    };
    assert_eq!(stop.headline, "back moved at rep 2");
    bench.tap("end the lift");
    let Screen::End(end) = bench.frame().screen else {
        panic!("the end")
    };
    assert!(end.short);
    let said: Vec<(&str, &str)> = end
        .rows
        .iter()
        .take(3)
        .map(|r| (r.reps.as_str(), r.hold.as_str()))
        .collect();
    assert_eq!(said[0].1, "back held");
    assert!(said[0].0.starts_with("3 of "), "{said:?}");
    assert_eq!(said[1].1, "back moved at 2");
    assert_eq!(said[2].0, "not done");
}
