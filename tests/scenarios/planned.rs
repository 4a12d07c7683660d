//! A plan written on the screen: row by row, through the same door as a plan from a file.
use crate::bench::{Bench, evening};
use crate::desk::{enter, rows, tap_like, tap_row, title, type_in};
use chrono::NaiveDate;
use domain::prescription::LoadWish;
use domain::{Mass, MassUnit};
use view::Screen;

fn today() -> NaiveDate {
    NaiveDate::from_ymd_opt(2026, 12, 2).expect("a day")
}

/// From the desk's front page to Saoirse's day of today.
fn to_the_day(bench: &Bench) {
    tap_like(bench, "plans, ", "");
    bench.tap("on the screen, write a plan");
    tap_like(bench, "days written: ", ", Saoirse");
    tap_like(bench, "Wednesday 2 December, ", "");
    assert_eq!(title(bench), "Saoirse, Wednesday 2 December");
}

/// Chooses a lift and a load on the page of one row.
fn fill(bench: &Bench, lift: &str, load: &str) {
    bench.tap("lift, not yet");
    tap_row(bench, lift);
    bench.tap("load, bar counted in, not yet");
    type_in(bench, load);
    bench.tap("keep");
}

#[test]
fn a_row_is_written_lifted_from_changed_and_taken_off() {
    let folder = tempfile::tempdir().expect("a folder");
    {
        let bench = Bench::start(folder.path(), &evening());
        enter(&bench, "4711");
        to_the_day(&bench);
        let before = bench.planned("Saoirse", today()).len();
        bench.tap("add, a lift");
        assert!(
            !bench.labels().contains(&"keep".to_owned()),
            "not whole yet"
        );
        fill(&bench, "rack pull", "95");
        bench.tap("work sets, 1");
        type_in(&bench, "3");
        bench.tap("keep");
        bench.tap("ladder, the lifter's own");
        tap_row(&bench, "5-3-2-1");
        bench.tap("keep");
        let planned = bench.planned("Saoirse", today());
        assert_eq!(planned.len(), before + 1);
        let row = planned.last().expect("the row");
        assert_eq!(
            (row.lift.as_str(), row.first.sets, row.first.reps.least),
            ("rack pull", 3, 5)
        );
        // Typed in the lifter's unit.
        assert_eq!(
            row.first.load,
            LoadWish::Mass(Mass::of(MassUnit::Lb, 95_000))
        );
        assert_eq!(row.ladder.as_deref(), Some("5-3-2-1"));
        let shown = rows(&bench);
        let last = ("rack pull", "3 sets of 95 lb × 5", "5-3-2-1");
        let last = (last.0.to_owned(), last.1.to_owned(), last.2.to_owned());
        assert!(shown.contains(&last), "{shown:?}");
        bench.tap("all lifters");
        assert!(crate::ladder::lifters(&bench).contains(&"Saoirse".to_owned()));
    }
    let bench = Bench::start(folder.path(), &evening());
    enter(&bench, "4711");
    to_the_day(&bench);
    bench.tap("rack pull, 3 sets of 95 lb × 5");
    bench.tap("load, bar counted in, 95 lb");
    type_in(&bench, "105");
    bench.tap("keep");
    bench.tap("keep");
    let row = bench.planned("Saoirse", today()).pop().expect("the row");
    assert_eq!(
        row.first.load,
        LoadWish::Mass(Mass::of(MassUnit::Lb, 105_000))
    );
    // Each row is taken off; with the last one the day is silent again.
    for left in (0..bench.planned("Saoirse", today()).len()).rev() {
        let (lift, work, _) = rows(&bench).remove(0);
        bench.tap(&format!("{lift}, {work}"));
        bench.tap("take away, off this day");
        assert_eq!(
            bench.planned("Saoirse", today()).len(),
            left + 1,
            "a tap is not enough"
        );
        bench.hold("take away, off this day");
        assert_eq!(bench.planned("Saoirse", today()).len(), left);
        assert_eq!(title(&bench), "Saoirse, Wednesday 2 December");
    }
    drop(bench);
    let again = Bench::start(folder.path(), &evening());
    assert!(
        again.planned("Saoirse", today()).is_empty(),
        "over a restart too"
    );
}

#[test]
fn a_row_that_the_plans_checker_refuses_changes_nothing() {
    let folder = tempfile::tempdir().expect("a folder");
    let bench = Bench::start(folder.path(), &evening());
    enter(&bench, "4711");
    to_the_day(&bench);
    let before = bench.planned("Saoirse", today());
    bench.tap("add, a lift");
    fill(&bench, "rack pull", "20");
    bench.tap("keep");
    let notice = bench.frame().notice;
    assert!(notice.contains("less than the lightest bar"), "{notice}");
    assert_eq!(bench.planned("Saoirse", today()), before);
    // What was put together stays, and can be put right.
    bench.tap("load, bar counted in, 20 lb");
    type_in(&bench, "100");
    bench.tap("keep");
    bench.tap("keep");
    assert_eq!(bench.planned("Saoirse", today()).len(), before.len() + 1);
    bench.tap("add, a lift");
    fill(&bench, "rack pull", "110");
    bench.tap("keep");
    // The same lift again on that day is one more group of it.
    let planned = bench.planned("Saoirse", today());
    assert_eq!(planned.len(), before.len() + 1);
    assert_eq!(planned.last().map(|row| row.then.len()), Some(1));
}

#[test]
fn a_share_of_the_best_is_typed_and_german_speaks() {
    let folder = tempfile::tempdir().expect("a folder");
    let bench = Bench::start(folder.path(), &evening());
    bench.tap("kiosk");
    bench.tap("language, Deutsch");
    bench.tap("Schreibtisch des Coachs, mit Code");
    type_in(&bench, "4711");
    tap_like(&bench, "Leute, ", "");
    tap_like(&bench, "yard rack, Hamza", "");
    tap_row(&bench, "Pläne, Plan schreiben");
    tap_like(&bench, "Freitag, 4. Dezember, ", "");
    bench.tap("dazu, eine Übung");
    bench.tap("Übung, noch nicht");
    tap_row(&bench, "Kreuzheben");
    bench.tap("Last, mit Stange, noch nicht");
    type_in(&bench, "82,5");
    bench.tap("lb");
    bench.tap("%");
    bench.tap("behalten");
    bench.tap("behalten");
    let friday = today() + chrono::Days::new(2);
    let row = bench.planned("Hamza", friday).pop().expect("the row");
    assert_eq!(row.first.load, LoadWish::OfBest(8_250));
    let Screen::List(list) = bench.frame().screen else {
        panic!("the day")
    };
    assert!(
        list.rows
            .iter()
            .any(|row| row.value == "82,5 % = 177,38 kg × 5"),
        "{list:?}"
    );
}
