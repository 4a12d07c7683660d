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

/// From the desk's front page to Saoirse's day of today in the week.
fn to_the_day(bench: &Bench) {
    bench.tap("the week");
    to_cell(bench, "Saoirse, Wednesday 2 December");
}

/// Turns to the page on which that lifter's day stands, and taps it.
pub(crate) fn to_cell(bench: &Bench, cell: &str) {
    let is = |label: &String| label.starts_with(cell);
    for _ in 0..4 {
        if let Some(label) = bench.labels().into_iter().find(is) {
            return bench.tap(&label);
        }
        bench.tap("more lifters");
    }
    panic!("no {cell} in {:?}", bench.labels());
}

/// Chooses a lift, and a load on the page of its row.
fn fill(bench: &Bench, lift: &str, load: &str) {
    tap_row(bench, lift);
    bench.tap("load, bar counted in, not yet");
    type_in(bench, load);
    bench.tap("save");
}

#[test]
fn a_row_is_written_lifted_from_changed_and_taken_off() {
    let folder = tempfile::tempdir().expect("a folder");
    {
        let bench = Bench::start(folder.path(), &evening());
        enter(&bench, "4711");
        to_the_day(&bench);
        let before = bench.planned("Saoirse", today()).len();
        assert_eq!(
            (before, title(&bench).as_str()),
            (0, "lift"),
            "an empty day"
        );
        fill(&bench, "rack pull", "95");
        bench.tap("work sets, 1");
        type_in(&bench, "3");
        bench.tap("save");
        bench.tap("ladder, the lifter's own");
        tap_row(&bench, "5-3-2-1");
        bench.tap("save");
        let planned = bench.planned("Saoirse", today());
        assert_eq!(planned.len(), before + 1);
        let row = planned.last().expect("the row");
        let work = (row.first.sets, row.first.reps.least);
        assert_eq!((row.lift.as_str(), work), ("rack pull", (3, 5)));
        // Typed in the lifter's unit.
        assert_eq!(
            row.first.load,
            LoadWish::Mass(Mass::of(MassUnit::Lb, 95_000))
        );
        assert_eq!(row.ladder.as_deref(), Some("5-3-2-1"));
        assert_eq!(bench.frame().notice, "saved");
        assert_eq!(title(&bench), "Saoirse, Wednesday 2 December");
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
    bench.tap("save");
    bench.tap("save");
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
    fill(&bench, "rack pull", "20");
    bench.tap("save");
    let notice = bench.frame().notice;
    assert!(notice.contains("less than the lightest bar"), "{notice}");
    assert_eq!(bench.planned("Saoirse", today()), before);
    // What was put together stays, and can be put right.
    bench.tap("load, bar counted in, 20 lb");
    type_in(&bench, "100");
    bench.tap("save");
    bench.tap("save");
    assert_eq!(bench.planned("Saoirse", today()).len(), before.len() + 1);
    bench.tap("add, a lift");
    fill(&bench, "rack pull", "110");
    bench.tap("save");
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
    bench.tap("Coach-Bereich, mit Code");
    type_in(&bench, "4711");
    type_in(&bench, "4711");
    bench.tap("Leute");
    tap_like(&bench, "yard rack, Hamza", "");
    tap_row(&bench, "Pläne, Plan schreiben");
    tap_like(&bench, "Hamza, Freitag, 4. Dezember", "");
    tap_row(&bench, "Kreuzheben");
    bench.tap("Last, mit Stange, noch nicht");
    type_in(&bench, "82,5");
    bench.tap("lb");
    bench.tap("%");
    bench.tap("speichern");
    bench.tap("speichern");
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

/// The usual row is what was done last time with what is due: a tap on the day, one on the lift,
/// one on "save".
#[test]
fn the_row_as_last_time_takes_three_taps() {
    let folder = tempfile::tempdir().expect("a folder");
    let bench = Bench::start(folder.path(), &evening());
    crate::ruled::lift(&bench, "Hamza");
    bench.tap("all lifters");
    enter(&bench, "4711");
    bench.tap("the week");
    to_cell(&bench, "Hamza, Saturday 5 December");
    tap_row(&bench, "rack pull");
    bench.tap("save");
    let saturday = today() + chrono::Days::new(3);
    let row = bench.planned("Hamza", saturday).pop().expect("the row");
    assert_eq!((row.first.sets, row.first.reps.least), (1, 5));
    assert_eq!(row.first.load, LoadWish::Due);
}
