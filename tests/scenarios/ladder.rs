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

/// What goes under the plates, and the load, where a lift from the floor shows a load.
fn under(bench: &Bench) -> Option<(String, String)> {
    let screen = bench.frame().screen;
    if let Screen::Bar(bar) = screen {
        return Some((bar.load, bar.spot.raise));
    }
    if let Screen::Rest(rest) = screen {
        return Some((rest.load, rest.spot.raise));
    }
    let Screen::Settle(settle) = screen else {
        return None;
    };
    Some((String::new(), settle.spot.raise))
}

/// Somebody new pulls the first rungs on small plates, raised; whoever leaves the blocks there
/// would pull the later ones too high.
#[test]
fn from_the_floor_each_rung_says_what_goes_under_the_plates_or_that_nothing_does() {
    let folder = tempfile::tempdir().expect("a folder");
    let bench = Bench::start(folder.path(), &evening());
    bench.tap("Parvati");
    bench.tap("start");
    let mut told = Vec::new();
    while bench.screen() != "end" {
        told.extend(under(&bench));
        bench.tap(&main_label(&bench.frame()));
    }
    let raised = |row: &&(String, String)| row.1 == "raise the bar 110 mm";
    let flat = |row: &&(String, String)| row.1 == "nothing under the plates";
    let (low, right) = (
        told.iter().filter(raised).count(),
        told.iter().filter(flat).count(),
    );
    assert!(low > 1 && right > 4, "{told:?}");
    assert_eq!(low + right, told.len(), "every one says so: {told:?}");
    let last = told.iter().rposition(|row| raised(&row));
    assert_eq!(last, Some(low - 1), "the early rungs alone: {told:?}");
}

#[test]
fn plates_said_by_hand_are_added_up_with_the_bar() {
    let folder = tempfile::tempdir().expect("a folder");
    let bench = Bench::start(folder.path(), &evening());
    bench.tap("Hamza");
    bench.tap("start");
    bench.tap("bar holds...");
    let total = || {
        let Screen::Holds(holds) = bench.frame().screen else {
            panic!("the page of what the bar holds")
        };
        holds.total.replace('\u{a0}', " ")
    };
    // The bar of 20 kg, then 2 x 25 and 2 x 1.25.
    assert_eq!(total(), "20 kg with the bar");
    bench.tap("+ 25");
    assert_eq!(total(), "70 kg with the bar");
    bench.tap("+ 1.25");
    assert_eq!(total(), "72.5 kg with the bar");
    bench.tap("take last off");
    assert_eq!(total(), "70 kg with the bar");
}
