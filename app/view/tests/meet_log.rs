//! The taps of a meet day: what each makes of it, what can be taken back, what is kept.
use chrono::NaiveDate;
use domain::gym::{Pattern, PatternStep};
use domain::meet::Habit;
use domain::meet_card::{Judged, TableRules};
use domain::meet_day::{MeetDay, MeetFlight, Starter, platform_bar, platform_plates};
use domain::{Mass, MassUnit, Moment};
use view::meet_log::{MeetLog, Progress, STEPS_MAX, Step};

fn day() -> MeetDay {
    let starter = |lifter: &str, before| Starter {
        lifter: lifter.into(),
        opener: Mass::of(MassUnit::Kg, 200_000),
        unit: MassUnit::Kg,
        lot: None,
        before,
        pattern: Pattern {
            name: "two".into(),
            steps: [(5_000, 5), (8_000, 1)]
                .map(|(share, reps)| PatternStep { share, reps })
                .into(),
            already_warm: false,
        },
    };
    let flight = |lift: &str, starters| {
        MeetFlight {
            lift: lift.into(),
            attempt_s: 60,
            start: None,
            starters,
            others: Vec::new(),
            counted: false,
        }
        .filled()
    };
    MeetDay {
        name: "Test day".into(),
        date: NaiveDate::from_ymd_opt(2026, 12, 12).expect("a day"),
        bar: platform_bar(),
        plates: platform_plates(),
        habit: Habit::USUAL,
        table: TableRules::USUAL,
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

/// Taps as the page makes them: others by the main button, ours judged.
fn tapped_on(mut log: MeetLog, taps: i64, from: i64) -> MeetLog {
    for n in 0..taps {
        let now = at(from + n * 50);
        let judged = log.now().at_bar(&day(), now);
        let step = judged.map_or(Step::On, |who| Step::Judged(who, Judged::Good));
        log = log.after(&day(), step, now).expect("an attempt");
    }
    log
}

#[test]
fn a_tap_begins_then_counts_attempts_of_three_rounds_then_turns_to_the_next_flight() {
    let begun = stepped(&[(Step::On, 0)]);
    assert_eq!(begun.now().begun, Some(at(0)));
    let log = tapped_on(begun, 2, 50);
    // The bar is loaded for Ines: what became of it is to be said.
    assert_eq!(log.now().at_bar(&day(), at(120)), Some(0));
    assert_eq!(log.after(&day(), Step::On, at(150)), None);
    let log = tapped_on(log, 3, 150);
    assert_eq!((log.now().called, log.now().last), (5, at(250)));
    assert_eq!(log.now().attempts(&day(), at(250)), (0, 5), "round 2");
    assert_eq!(log.now().running.round, 1);
    let log = tapped_on(log, 10, 300);
    assert_eq!(log.now().called, 15);
    let next = log
        .after(&day(), Step::On, at(900))
        .expect("the next flight");
    assert_eq!(
        next.now(),
        Progress {
            flight: 1,
            ..Progress::default()
        }
    );
    // The last flight is over with the last of ours: one other before her in each round.
    let log = next.after(&day(), Step::On, at(950)).expect("it begins");
    let log = tapped_on(log, 6, 1_000);
    assert_eq!(log.after(&day(), Step::On, at(2_000)), None, "it is over");
}

/// 60 s said for three attempts and two of 50 s seen: (180 + 100) / 5 = 56 s; two attempts to go
/// of which 20 s are over, and a minute by hand.
#[test]
fn the_pace_and_the_minutes_move_the_opener() {
    let log = stepped(&[(Step::On, 0), (Step::On, 50), (Step::On, 100)]);
    let day = day();
    let opener = |log: &MeetLog, now| {
        let progress = log.now();
        let turn = progress.round(&day, now).and_then(|round| round.turn(1));
        let before = turn.expect("to come").before;
        progress.flight_of(60, before, 0, now).opener_in_s()
    };
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
    let flight = taken.flight_of(60, 4, 0, at(90));
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
    let log = stepped(&[
        (Step::On, 0),
        (Step::Taken(1, 1), 30),
        (Step::TakenAhead(0, 2), 35),
        (Step::Sooner, 40),
        (Step::Lot(1, 12), 45),
        (Step::On, 50),
        (Step::On, 100),
        (Step::Judged(0, Judged::Good), 150),
        (Step::Declared(0, Mass::of(MassUnit::Kg, 207_500)), 160),
        (Step::Out(1), 170),
    ]);
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
        let read = MeetLog::read(part, &day()).now();
        let _ = (read.at_bar(&day(), at(0)), read.attempts(&day(), at(0)));
    }
    for bad in [
        "0 - x",
        "0 - 0 0 0 r9:1",
        "0 - 0 0 0 c0:0:-:-/0/-/0:-/0/-/0:-/0/-/0",
        "0 - 0 0 0 c9999999:1:-:-/0/-/0:-/0/-/0:-/0/-/0",
        "0 - 0 0 0 c0:1:-:-/0/q/0:-/0/-/0:-/0/-/0",
    ] {
        let read = MeetLog::read(&format!("2026-12-12\n{bad}"), &day());
        assert_eq!(read, MeetLog::default(), "{bad}");
    }
}

/// A line of a version before rounds: its attempts are of the first round.
#[test]
fn a_line_of_an_older_version_is_read() {
    let text = "2026-12-12\n0 - 0 0 0\n0 1000000 2 1100000 60 1@1030000";
    let read = MeetLog::read(text, &day()).now();
    assert_eq!((read.called, read.later_s), (2, 60));
    assert_eq!(read.at_bar(&day(), at(120)), Some(0));
    assert_eq!(read.taken_by(0, at(60)).count, 1);
}

/// Ours was reckoned to come first, and somebody else did; ours leaves, and nobody waits; a lot of
/// 7 twice is no change.
#[test]
fn somebody_else_first_a_lot_again_and_leaving() {
    let log = stepped(&[(Step::On, 0), (Step::On, 50), (Step::On, 100)]);
    let other = log.after(&day(), Step::Other, at(150)).expect("counted");
    assert_eq!(
        (other.now().called, other.now().at_bar(&day(), at(150))),
        (3, Some(0))
    );
    let lot = other.after(&day(), Step::Lot(0, 7), at(160)).expect("new");
    assert_eq!(lot.after(&day(), Step::Lot(0, 7), at(170)), None);
    let left = lot.after(&day(), Step::Out(0), at(180)).expect("leaves");
    assert_eq!(left.now().at_bar(&day(), at(190)), Some(1));
    assert_eq!(left.after(&day(), Step::Out(0), at(200)), None);
    let judged = left.after(&day(), Step::Judged(0, Judged::Good), at(210));
    assert_eq!(judged, None, "who has left is not judged");
    assert_eq!(left.undone(), Some(lot));
}
