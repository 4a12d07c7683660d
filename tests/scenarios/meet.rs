//! A test day on the kiosk: called back from the opener, moved along by taps, kept over a power cut.
use crate::bench::{Bench, evening};
use view::Screen;
use view::meet_day::MeetPage;

/// The demo's test day, laid into the data folder for the bench's day.
fn folder() -> tempfile::TempDir {
    let folder = tempfile::tempdir().expect("a folder");
    let meet = acceptance::top().join("demo-data/meet.toml");
    std::fs::copy(meet, folder.path().join("meet.toml")).expect("copied");
    folder
}

fn page(bench: &Bench) -> MeetPage {
    let Screen::Meet(page) = bench.frame().screen else {
        panic!("the meet day is shown, not {}", bench.screen());
    };
    page
}

fn opened(bench: &Bench) -> MeetPage {
    bench.tap("kiosk");
    bench.tap("meet day, River test day");
    page(bench)
}

/// The opener of a lifter among what comes, by its label.
fn label(call: &view::meet_day::MeetCall) -> String {
    format!("{}, {} {}", call.lifter, call.load, call.set)
}

#[test]
fn the_day_is_called_back_and_moved_along() {
    let folder = folder();
    let bench = Bench::start(folder.path(), &evening());
    let before = opened(&bench);
    assert_eq!(before.hint, "deadlift: not begun");
    assert_eq!(before.main, "flight begins");
    bench.tap("flight begins");
    // Everybody's first warm-up is now: there are 5, 11 and 13 attempts to go.
    let begun = page(&bench);
    assert_eq!(begun.main_detail, "1 of 14");
    assert!(begun.calls.iter().all(|call| call.due), "{begun:?}");
    let first = begun.calls[0].clone();
    assert_eq!(first.plates, "each side 5");
    bench.tap(&label(&first));
    let taken = page(&bench);
    assert!(!taken.calls.contains(&first), "it is done: {taken:?}");
    // The flight is quicker than was said.
    for _ in 0..5 {
        bench.wait_ms(30_000);
        bench.tap(&format!("attempt over, {}", page(&bench).main_detail));
    }
    let quick = page(&bench);
    assert_eq!(quick.hint, "deadlift: 5 of 14 attempts over, 41 s each");
    // Marisol opens now; the platform loads it.
    let opener = quick.calls.iter().find(|call| call.lifter == "Marisol");
    let opener = opener.expect("her opener");
    assert_eq!((opener.set.as_str(), opener.due), ("kg, opener", true));
    bench.tap("a minute later");
    let later = page(&bench);
    let marisol = later.calls.iter().find(|call| call.lifter == "Marisol");
    assert!(marisol.is_none_or(|call| !call.due), "{later:?}");
    bench.tap("undo");
    assert_eq!(page(&bench).calls, quick.calls);
    bench.tap("all lifters");
    assert_eq!(bench.screen(), "choose");
}

/// What stands on the page for one of the lifters.
fn calls_of(bench: &Bench, who: &str) -> Vec<String> {
    let calls = page(bench).calls;
    calls
        .iter()
        .filter(|call| call.lifter == who)
        .map(label)
        .collect()
}

/// A warm-up that is called with not a second to spare stays for the minute that its lifter needs,
/// though there would be no time for it any more; then it goes, if nobody took it.
#[test]
fn a_warm_up_that_was_called_stays_while_it_is_lifted() {
    let folder = folder();
    let bench = Bench::start(folder.path(), &evening());
    opened(&bench);
    bench.tap("flight begins");
    let of = |who: &str| calls_of(&bench, who);
    // Her first warm-up is called at once; half a minute later there is no time for it.
    let first = of("Marisol")[0].clone();
    let mut waited = 0;
    while of("Marisol").first() == Some(&first) {
        bench.wait_ms(1_000);
        waited += 1;
        assert!(waited < 300, "it stays for ever: {:?}", page(&bench));
    }
    assert!(waited >= 60, "it went after {waited} s");
    // The next one is taken as what it is, not as the one that was left out.
    let second = of("Marisol")[0].clone();
    assert!(second.contains("kg × "), "{second}");
    bench.tap(&second);
    assert!(!of("Marisol").contains(&second), "{:?}", page(&bench));
}

/// The same when the flight turns out quicker while it is lifted.
#[test]
fn a_warm_up_that_was_called_stays_when_the_flight_is_quicker() {
    let folder = folder();
    let bench = Bench::start(folder.path(), &evening());
    opened(&bench);
    bench.tap("flight begins");
    let of = |who: &str| calls_of(&bench, who);
    let called = of("Marisol")[0].clone();
    bench.wait_ms(10_000);
    bench.tap("attempt over, 1 of 14");
    // Three minutes to her opener now: without it there is room for one warm-up alone.
    assert_eq!(of("Marisol").first(), Some(&called));
    bench.wait_ms(61_000);
    assert_ne!(of("Marisol").first(), Some(&called), "nobody took it");
}

#[test]
fn a_power_cut_loses_nothing_of_the_day() {
    let folder = folder();
    let clock = evening();
    let bench = Bench::start(folder.path(), &clock);
    opened(&bench);
    bench.tap("flight begins");
    bench.wait_ms(50_000);
    bench.tap("attempt over, 1 of 14");
    let before = page(&bench);
    drop(bench);
    // The same page, without a tap.
    let bench = Bench::start(folder.path(), &clock);
    let after = page(&bench);
    assert_eq!(
        (after.hint, after.main_detail),
        (before.hint, before.main_detail)
    );
    // Back to the beginning, and then out.
    bench.tap("undo");
    bench.tap("undo");
    assert_eq!(page(&bench).main, "flight begins");
    bench.tap("back");
    assert_eq!(bench.screen(), "list");
}

#[test]
fn a_faulty_day_is_told_and_not_taken() {
    let folder = folder();
    let path = folder.path().join("meet.toml");
    let text = std::fs::read_to_string(&path).expect("read");
    std::fs::write(&path, text.replace("\"Hamza\"", "\"Hamzo\"")).expect("written");
    let bench = Bench::start(folder.path(), &evening());
    let notice = bench.frame().notice;
    assert!(
        notice.starts_with("meet.toml, row") && notice.contains("Hamzo"),
        "{notice}"
    );
    bench.tap("kiosk");
    assert!(
        !bench
            .labels()
            .iter()
            .any(|label| label.starts_with("meet day"))
    );
}
