//! A lift's course, reckoned by hand.
use super::{Course, course, estimate};
use domain::Moment;
use journal::{Mass, MassUnit, SetRow};

fn kg(kilos: i64) -> Mass {
    Mass::of(MassUnit::Kg, kilos * 1_000)
}

fn set(seq: u64, date: &str, kilos: i64, (reps, planned): (u8, u8), moved: bool) -> SetRow {
    SetRow {
        seq,
        lift_no: 1,
        lifter: "Ada".to_owned(),
        lift: "deadlift".to_owned(),
        date: date.to_owned(),
        rack: "North".to_owned(),
        rung: 1,
        kind: "work".to_owned(),
        load: kg(kilos),
        unit: MassUnit::Kg,
        planned_reps: planned,
        reps,
        back_moved_at: moved.then_some(1),
        at: Moment::default(),
    }
}

/// Two weeks: 100 × 5 twice; 110 with three of five reps, the back moved; 90 × 5.
fn two_weeks() -> Course {
    course(
        "deadlift".to_owned(),
        vec![
            set(4, "2026-03-11", 90, (5, 5), false),
            set(1, "2026-03-02", 100, (5, 5), false),
            set(2, "2026-03-02", 100, (5, 5), false),
            set(3, "2026-03-05", 110, (3, 5), true),
            set(5, "2026-03-11", 200, (0, 5), false),
        ],
    )
}

#[test]
fn days_have_their_heaviest_set_and_what_is_known_of_it() {
    let course = two_weeks();
    let of = |at: usize| {
        let day = &course.days[at];
        (day.heaviest, day.reps, day.is_best, day.missed, day.moved)
    };
    assert_eq!(of(0), (kg(100), 5, true, false, false));
    assert_eq!(of(1), (kg(110), 3, true, true, true));
    assert_eq!(
        of(2),
        (kg(90), 5, false, true, false),
        "a miss is no heaviest set"
    );
    assert_eq!(course.days.len(), 3);
}

#[test]
fn weeks_add_volume_and_hard_sets() {
    let course = two_weeks();
    let kilos = |week: usize| course.weeks[week].volume / i128::from(kg(1).ng());
    assert_eq!((kilos(0), kilos(1)), (1_330, 450));
    let of = |at: usize| {
        let week = &course.weeks[at];
        (week.sets, week.hard, week.reps, week.planned)
    };
    // 121 of 121 is 90 %: 90 × 5 is 105 of 121; the set of no rep was missed.
    assert_eq!(of(0), (3, 3, 13, 15));
    assert_eq!(of(1), (2, 1, 5, 10));
}

#[test]
fn estimates_are_exact_and_bounded() {
    assert_eq!(estimate(kg(90), 10), Some(kg(120)));
    assert_eq!(estimate(kg(90), 1), Some(kg(90)));
    for reps in [0, 11, 255] {
        assert_eq!(estimate(kg(90), reps), None, "{reps}");
    }
    assert_eq!(estimate(Mass::from_ng(i64::MAX), 5), None);
    assert_eq!(estimate(Mass::from_ng(-5), 5), None);
}

#[test]
fn what_was_best_before_the_days_shown_still_counts() {
    let from = "2026-03-03".parse().expect("a day");
    let to = "2026-03-08".parse().expect("a day");
    let course = two_weeks().within(from, to);
    assert_eq!((course.days.len(), course.weeks.len()), (1, 1));
    assert!(course.days[0].is_best);
}
