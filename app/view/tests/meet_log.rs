//! The taps of a meet day: what each makes of it, what can be taken back, what is kept.
use chrono::NaiveDate;
use domain::gym::{Pattern, PatternStep};
use domain::meet::Habit;
use domain::meet_day::{MeetDay, MeetFlight, Starter, platform_bar, platform_plates};
use domain::{Mass, MassUnit, Moment};
use view::meet_log::{MeetLog, Progress, STEPS_MAX, Step};

fn day() -> MeetDay {
    let starter = |lifter: &str, before| Starter {
        lifter: lifter.into(),
        opener: Mass::of(MassUnit::Kg, 200_000),
        unit: MassUnit::Kg,
        before,
        pattern: Pattern {
            name: "two".into(),
            steps: [(5_000, 5), (8_000, 1)]
                .map(|(share, reps)| PatternStep { share, reps })
                .into(),
            already_warm: false,
        },
    };
    let flight = |lift: &str, starters| MeetFlight {
        lift: lift.into(),
        attempt_s: 60,
        starters,
    };
    MeetDay {
        name: "Test day".into(),
        date: NaiveDate::from_ymd_opt(2026, 12, 12).expect("a day"),
        bar: platform_bar(),
        plates: platform_plates(),
        habit: Habit::USUAL,
        flights: vec![
            flight("deadlift", vec![starter("Ines", 2), starter("Petr", 4)]),
            flight("rack pull", vec![starter("Ines", 1)]),
        ],
    }
}

const fn at(seconds: i64) -> Moment {
    Moment(1_000_000 + seconds * 1_000)
}

fn stepped(steps: &[(Step, i64)]) -> MeetLog {
    let day = day();
    steps.iter().fold(MeetLog::default(), |log, (step, s)| {
        log.after(&day, *step, at(*s))
            .expect("it changes something")
    })
}

#[test]
fn a_tap_begins_then_counts_attempts_then_turns_to_the_next_flight() {
    let begun = stepped(&[(Step::On, 0)]);
    assert_eq!(begun.now().begun, Some(at(0)));
    // Petr opens with the fifth attempt, so five are counted.
    let mut log = begun;
    for n in 1..=5 {
        log = log.after(&day(), Step::On, at(n * 50)).expect("an attempt");
    }
    assert_eq!((log.now().called, log.now().last), (5, at(250)));
    let next = log
        .after(&day(), Step::On, at(400))
        .expect("the next flight");
    assert_eq!(
        next.now(),
        Progress {
            flight: 1,
            ..Progress::default()
        }
    );
    let mut log = next;
    for n in 0..3 {
        log = log
            .after(&day(), Step::On, at(500 + n))
            .expect("two attempts");
    }
    assert_eq!(log.after(&day(), Step::On, at(900)), None, "it is over");
}

/// 60 s said for three attempts and two of 50 s seen: (180 + 100) / 5 = 56 s; two attempts to go
/// of which 20 s are over, and a minute by hand.
#[test]
fn the_pace_and_the_minutes_move_the_opener() {
    let log = stepped(&[(Step::On, 0), (Step::On, 50), (Step::On, 100)]);
    let day = day();
    let petr = &day.flights[0].starters[1];
    let opener = |log: &MeetLog, now| log.now().flight_of(60, petr, now).opener_in_s();
    assert_eq!(opener(&log, at(120)), 2 * 56 - 20);
    // An attempt that takes long is not over: no more than one is taken off.
    assert_eq!(opener(&log, at(1_000)), 56);
    let later = log.after(&day, Step::Later, at(120)).expect("later");
    assert_eq!(opener(&later, at(120)), 2 * 56 - 20 + 60);
    let sooner = log.after(&day, Step::Sooner, at(120)).expect("sooner");
    assert_eq!(opener(&sooner, at(120)), 2 * 56 - 20 - 60);
}

#[test]
fn a_warm_up_taken_is_the_starter_s_own() {
    let log = stepped(&[(Step::On, 0), (Step::Taken(1, 1), 30)]);
    let taken = log.now();
    assert_eq!(taken.taken_by(0, at(90)).count, 0);
    let petr = taken.taken_by(1, at(90));
    assert_eq!((petr.count, petr.since_s), (1, 60));
}

/// With the first warm-up left out for want of time, the second one taken is the second.
#[test]
fn a_warm_up_taken_leaves_those_before_it_behind() {
    let log = stepped(&[(Step::On, 0), (Step::Taken(1, 2), 30)]);
    let day = day();
    let (taken, petr) = (log.now(), &day.flights[0].starters[1]);
    let flight = taken.flight_of(60, petr, at(90));
    let call = day.call(petr, &flight, &taken.taken_by(1, at(90)));
    assert_eq!(call.expect("it is reckoned").timed.warm_ups, []);
}

#[test]
fn undo_goes_back_step_by_step_and_no_further_than_is_kept() {
    let log = stepped(&[(Step::On, 0), (Step::Later, 10), (Step::On, 50)]);
    let back = log.undone().expect("a step");
    assert_eq!((back.now().called, back.now().later_s), (0, 60));
    let begun = back
        .undone()
        .and_then(|log| log.undone())
        .expect("two more");
    assert_eq!(begun.now(), Progress::default());
    assert_eq!(begun.undone(), None);
    assert_eq!(MeetLog::default().undone(), None);
    let mut long = MeetLog::default();
    for n in 0..100 {
        long = long.after(&day(), Step::Later, at(n)).expect("later");
    }
    let mut steps = 0;
    while let Some(before) = long.undone() {
        (long, steps) = (before, steps + 1);
    }
    assert_eq!(steps, STEPS_MAX);
}

#[test]
fn what_is_kept_is_read_back_and_nothing_else_panics() {
    let log = stepped(&[(Step::On, 0), (Step::Taken(1, 1), 30), (Step::Sooner, 40)]);
    let text = log.write(&day());
    assert_eq!(MeetLog::read(&text, &day()), log);
    let mut other = day();
    other.date = other.date.succ_opt().expect("a day");
    assert_eq!(
        MeetLog::read(&text, &other),
        MeetLog::default(),
        "another day"
    );
    for cut in 0..text.len() {
        let Some(part) = text.get(..cut) else {
            continue;
        };
        drop(MeetLog::read(part, &day()).now());
    }
    assert_eq!(
        MeetLog::read("2026-12-12\n0 - x", &day()),
        MeetLog::default()
    );
}
