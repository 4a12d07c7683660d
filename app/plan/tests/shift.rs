//! A plan moved by days.
use chrono::{Days, NaiveDate};
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
fn what_stood_on_one_day_stands_on_the_other() {
    let rows = vec![row(day("2026-11-24")), row(day("2026-12-02"))];
    // A Friday, over the turn of a year.
    let rows = plan::shift_days(rows, (day("2026-11-24"), day("2027-01-01")));
    assert_eq!(
        [rows[0].date, rows[1].date],
        [day("2027-01-01"), day("2027-01-09")]
    );
    let edge = vec![row(NaiveDate::MAX)];
    let edge = plan::shift_days(edge, (day("2026-11-24"), day("2027-01-01")));
    assert_eq!(edge[0].date, NaiveDate::MAX, "it would leave the calendar");
}

proptest! {
    #[test]
    fn the_same_for_all_and_back(
        days in prop::collection::vec(0..200_u64, 0..20),
        to in 0..20_000_u64,
    ) {
        let from = day("2026-11-23");
        let to = day("2000-01-01") + Days::new(to);
        let before: Vec<_> = days.iter().map(|days| row(from + Days::new(*days))).collect();
        let after = plan::shift_days(before.clone(), (from, to));
        for (a, b) in before.iter().zip(&after) {
            prop_assert_eq!(b.date - to, a.date - from);
        }
        prop_assert_eq!(plan::shift_days(after, (to, from)), before);
    }
}
