//! A plan moved by whole weeks.
use chrono::{Datelike as _, Days, NaiveDate};
use domain::prescription::{LoadWish, SetGroup};
use domain::{Mass, Prescription};
use proptest::prelude::*;

fn row(date: NaiveDate) -> Prescription {
    Prescription {
        bar: None,
        date,
        lifter: String::from("Hamza"),
        lift: String::from("rack pull"),
        first: SetGroup::straight(1, 5, LoadWish::Mass(Mass::ZERO)),
        then: Vec::new(),
        track: None,
        ladder: None,
        note: String::new(),
    }
}

fn day(text: &str) -> NaiveDate {
    text.parse().expect("a day")
}

#[test]
fn the_week_of_the_day_becomes_the_second() {
    // A plan from Tuesday 2026-11-24; the week of Sunday 2027-03-07 begins on Monday 1 March.
    let rows = vec![row(day("2026-11-24")), row(day("2026-12-02"))];
    let rows = plan::shift_weeks(rows, day("2027-03-07"));
    assert_eq!(
        [rows[0].date, rows[1].date],
        [day("2027-02-23"), day("2027-03-03")]
    );
    assert_eq!(plan::shift_weeks(Vec::new(), day("2027-03-07")), []);
}

proptest! {
    #[test]
    fn whole_weeks_and_the_same_for_all(
        days in prop::collection::vec(0..200_u64, 1..20),
        to in 0..20_000_u64,
    ) {
        let from = day("2026-11-23");
        let to = day("2000-01-01") + Days::new(to);
        let before: Vec<_> = days.iter().map(|days| row(from + Days::new(*days))).collect();
        let after = plan::shift_weeks(before.clone(), to);
        let moved = before.iter().zip(&after).map(|(a, b)| (b.date - a.date).num_days());
        let moved: Vec<_> = moved.collect();
        prop_assert!(moved.iter().all(|days| *days == moved[0] && days % 7 == 0));
        let first = after.iter().map(|row| row.date).min().expect("a row");
        let week = |date: NaiveDate| date.iso_week();
        prop_assert_eq!(week(first + Days::new(7)), week(to));
        let again = plan::shift_weeks(after.clone(), to);
        prop_assert_eq!(again, after);
    }
}
