//! Estimates of the single against the equations as printed.
use crate::gym::{kg, lift};
use domain::event::Hold;
use domain::single::{Equation, REPS_MOST, is_partial, singles};
use domain::{Mass, MassUnit};
use proptest::prelude::*;

/// `tests/references/singles.csv` says where its figures come from.
const TABLE: &str = include_str!("../../../../tests/references/singles.csv");

fn rows() -> impl Iterator<Item = (u8, Vec<f64>)> {
    let rows = TABLE
        .lines()
        .filter(|row| row.starts_with(|c: char| c.is_ascii_digit()));
    rows.map(|row| {
        let cells: Vec<f64> = row.split(',').flat_map(str::parse).collect();
        let reps = row.split(',').flat_map(str::parse).next();
        (reps.expect("reps"), cells[1..].to_vec())
    })
}

#[test]
fn equations_give_what_is_printed() {
    let mut read = 0;
    for (reps, printed) in rows() {
        for (equation, printed) in Equation::ALL.into_iter().zip(printed) {
            let factor = equation.factor(reps).unwrap();
            // Four places of a hundred.
            assert!(
                (factor * 100.0 - printed).abs() <= 0.000_051,
                "{equation:?} {reps}: {factor}"
            );
        }
        read += 1;
    }
    assert_eq!(read, 10);
}

/// Worked (computed): 100 kg x 5.
#[test]
fn a_hundred_for_five() {
    let five = singles(kg(100), 5, Hold::Kept).unwrap();
    let hundredths = |mass: Mass| mass.number(MassUnit::Kg);
    let said = five
        .each
        .map(|(equation, single)| (equation.word(), hundredths(single)));
    let printed = ["116.67", "112.5", "117.46", "119.01", "112.5", "116.58"];
    for ((word, said), printed) in said.iter().zip(printed) {
        assert_eq!(said, printed, "{word}");
    }
    assert_eq!(
        (hundredths(five.least()), hundredths(five.most())),
        ("112.5".into(), "119.01".into())
    );
}

/// Only Brzycki and Lombardi give the load back at one rep (computed); Epley and Brzycki meet at
/// ten reps and nowhere below: (1 + r/30)(37 - r) = 36 has the roots 10 and -3.
#[test]
fn what_marks_the_equations_apart() {
    for equation in Equation::ALL {
        let honest = matches!(equation, Equation::Brzycki | Equation::Lombardi);
        let one = equation.factor(1).unwrap();
        assert_eq!((one - 1.0).abs() < 1e-12, honest, "{equation:?}");
    }
    for reps in 1..=REPS_MOST {
        let (e, b) = (
            Equation::Epley.factor(reps).unwrap(),
            Equation::Brzycki.factor(reps).unwrap(),
        );
        assert_eq!((e - b).abs() < 1e-12, reps == 10, "{reps}");
        assert!(e >= b);
    }
    // A printed slip of the pen: with a plus, Brzycki would shrink the single.
    assert!(Equation::Brzycki.factor(5).unwrap() > 1.0);
}

#[test]
fn only_where_they_mean_something() {
    for (reps, hold, some) in [
        (0, Hold::Kept, false),
        (1, Hold::Kept, false),
        (2, Hold::Kept, true),
        (10, Hold::Kept, true),
        (11, Hold::Kept, false),
        (5, Hold::MovedAt(5), false),
    ] {
        assert_eq!(
            singles(kg(180), reps, hold).is_some(),
            some,
            "{reps} {hold:?}"
        );
    }
    assert_eq!(singles(Mass::ZERO, 5, Hold::Kept), None);
}

#[test]
fn partial_pulls_are_told_apart() {
    for (name, partial) in [
        ("deadlift", false),
        ("power clean", false),
        ("rack pull", true),
        ("halting deadlift", true),
        ("barbell shrug", true),
    ] {
        assert_eq!(is_partial(&lift(name)), partial, "{name}");
    }
}

proptest! {
    /// More load or more reps, a heavier single; never lighter than what was lifted.
    #[test]
    fn singles_rise(grams in 1_000..500_000_i64, more in 0..50_000_i64, reps in 2..10_u8) {
        let load = Mass::of(MassUnit::Kg, grams);
        let now = singles(load, reps, Hold::Kept).unwrap();
        let heavier = singles(load + Mass::of(MassUnit::Kg, more), reps, Hold::Kept).unwrap();
        let longer = singles(load, reps + 1, Hold::Kept).unwrap();
        for at in 0..6 {
            prop_assert!(now.each[at].1 > load);
            prop_assert!(heavier.each[at].1 >= now.each[at].1);
            prop_assert!(longer.each[at].1 > now.each[at].1);
        }
        prop_assert!(now.least() <= now.most());
    }

    #[test]
    fn nothing_panics(ng in any::<i64>(), reps in any::<u8>()) {
        let _ = singles(Mass::from_ng(ng), reps, Hold::Kept);
    }
}
