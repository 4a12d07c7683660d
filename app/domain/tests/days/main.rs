//! The steady clock and the training day, by hand: rests that no clock can lengthen, evenings that
//! go on over midnight, lifts that were left open.
#![allow(
    clippy::wildcard_enum_match_arm,
    reason = "a test looks at what it is about"
)]
mod evening;
mod rude;

use domain::event::Hold;
use domain::steady::{BootId, KNOWN_FROM};
use domain::{DayCommand, Fact, Moment, Refusal};
use evening::{Evening, HOUR, MINUTE, day};

/// The finding: a rest of two minutes showed 58:52 after the clock was set back an hour.
#[test]
fn a_clock_set_back_an_hour_does_not_lengthen_a_rest() {
    let mut evening = Evening::at_eighteen();
    evening.begin("Ines").expect("begins");
    evening.set("Ines").expect("a set");
    evening.wait(52_000);
    evening.set_wall_by(-HOUR);
    assert_eq!(evening.rest_left_s("Ines"), 180 - 52);
    evening.restart();
    assert_eq!(evening.rest_left_s("Ines"), 180 - 52, "the same boot");
    evening.power_cut(8_000, true);
    assert!(
        evening.rest_left_s("Ines") <= 180 - 52,
        "another boot, capped"
    );
    assert!(
        evening.rest_left_s("Ines") >= 180 - 52 - 8,
        "and as long as it was off"
    );
}

/// Journals of before had moments of the wall clock, going back now and then.
#[test]
fn an_old_journal_that_goes_back_shows_no_more_than_the_rest() {
    let mut evening = Evening::at_eighteen();
    evening.begin("Ines").expect("begins");
    evening.set("Ines").expect("a set");
    let last = evening.now();
    let run = evening.state.lifts.values().next().expect("a lift");
    for back in [1, HOUR, 40 * 24 * HOUR, i64::MAX / 2] {
        assert_eq!(
            run.rest_left_s(Moment(last.0 - back)),
            180,
            "{back} ms back"
        );
    }
}

#[test]
fn midnight_ends_nothing_for_whoever_is_under_way() {
    let mut evening = Evening::at(23, 50);
    evening.begin("Ines").expect("begins");
    evening.set("Ines").expect("a set at 23:50");
    evening.wait(11 * MINUTE);
    evening.set("Ines").expect("and one at 00:01");
    assert_eq!(evening.today(), day());
    evening
        .begin("Tomasz")
        .expect("whoever joins belongs to the evening");
    assert_eq!(evening.run("Tomasz").sheet.date, day());
    evening.finish("Ines");
    evening.finish("Tomasz");
    evening.wait(19 * MINUTE);
    assert_eq!(evening.today(), day(), "somebody may still come");
    evening.wait(2 * MINUTE);
    assert_eq!(evening.today(), day().succ_opt().expect("a day"));
    let closed = |run: &domain::LiftRun| run.is_left_open();
    assert!(!evening.state.lifts.values().any(closed), "all were ended");
}

#[test]
fn what_was_left_open_is_closed_the_next_day_and_can_be_opened_again() {
    let mut evening = Evening::at_eighteen();
    evening.begin("Ines").expect("begins");
    evening.set("Ines").expect("a set");
    let no = evening.run("Ines").no;
    evening.wait(4 * HOUR);
    assert!(
        !evening.run("Ines").is_over(),
        "back after four hours, still today"
    );
    evening.wait(3 * HOUR);
    let run = &evening.state.lifts[&no];
    assert!(run.is_left_open() && run.is_over(), "the day is another");
    assert_eq!(run.passed().count(), 1, "what was done stands");
    let undo = domain::Command::Undo(no);
    assert_eq!(evening.obey(undo), Err(Refusal::LeftOpen));

    let on = evening.today();
    evening
        .keep(DayCommand::ReopenLift { no, on })
        .expect("the coach may");
    let again = DayCommand::ReopenLift { no, on };
    assert_eq!(evening.keep(again), Err(Refusal::NotLeftOpen));
    assert_eq!(evening.today(), on, "the others' day stays");
    let run = &evening.state.lifts[&no];
    assert_eq!(
        (run.sheet.date, run.day),
        (day(), on),
        "on its own date, today"
    );
    evening.set("Ines").expect("and goes on");
    evening.finish("Ines");
    assert!(!evening.state.lifts[&no].is_left_open());
}

#[test]
fn a_lifter_with_a_lift_under_way_cannot_have_another_one_opened() {
    let mut evening = Evening::at_eighteen();
    evening.begin("Ines").expect("begins");
    let no = evening.run("Ines").no;
    evening.wait(30 * HOUR);
    evening.begin("Ines").expect("the next day's");
    let on = evening.today();
    let refused = evening
        .keep(DayCommand::ReopenLift { no, on })
        .expect_err("not both");
    assert_eq!(
        refused.to_string(),
        "Ines is under way with the rack pull; end it first"
    );
}

/// The power is off over night, with and without a battery for the clock.
#[test]
fn off_over_night_the_lift_is_closed_once_the_time_is_known() {
    for battery in [true, false] {
        let mut evening = Evening::at_eighteen();
        evening.begin("Ines").expect("begins");
        evening.set("Ines").expect("a set");
        let no = evening.run("Ines").no;
        evening.power_cut(14 * HOUR, battery);
        if !battery {
            assert!(!evening.state.lifts[&no].is_over(), "nobody knows yet");
            assert_eq!(evening.today(), day());
            evening.wait(3 * MINUTE);
            evening.set_wall_right();
        }
        assert!(
            evening.state.lifts[&no].is_left_open(),
            "battery: {battery}"
        );
        assert_eq!(evening.today(), day().succ_opt().expect("a day"));
    }
}

/// What a bar holds is in doubt as soon as nobody can say how long the power was off.
#[test]
fn a_bar_is_looked_at_when_the_power_was_off_for_nobody_knows_how_long() {
    for (off, battery, in_doubt) in [
        (20_000, true, false),
        (20_000, false, true),
        (3 * HOUR, true, true),
    ] {
        let mut evening = Evening::at_eighteen();
        evening.begin("Ines").expect("begins");
        evening.set("Ines").expect("a set");
        let belief = |evening: &Evening| evening.state.belief("old bar", day(), evening.now());
        assert!(!belief(&evening).in_doubt, "the set said what was on");
        evening.power_cut(off, battery);
        assert_eq!(belief(&evening).in_doubt, in_doubt, "{off} {battery}");
    }
}

/// A blink of the power in the evening, on a machine that begins in 1970: everybody goes on.
#[test]
fn a_blink_without_a_battery_ends_no_lift() {
    let mut evening = Evening::at_eighteen();
    evening.begin("Ines").expect("begins");
    evening.set("Ines").expect("a set");
    evening.wait(60_000);
    evening.power_cut(20_000, false);
    assert_eq!(evening.today(), day());
    // The time off is not known: it counts as nothing, never as more rest.
    assert_eq!(evening.rest_left_s("Ines"), 180);
    evening.wait(3 * MINUTE);
    evening.set_wall_right();
    assert_eq!(evening.rest_left_s("Ines"), 0);
    assert_eq!(evening.today(), day());
    assert!(!evening.run("Ines").is_over());
}

#[test]
fn what_is_begun_before_the_time_is_known_gets_its_date_once() {
    let mut evening = Evening::at_eighteen();
    evening.begin("Ines").expect("begins");
    evening.finish("Ines");
    evening.power_cut(24 * HOUR, false);
    evening.begin("Tomasz").expect("on a guessed day");
    assert!(evening.run("Tomasz").date_guessed);
    evening.wait(3 * MINUTE);
    evening.set_wall_right();
    let next = day().succ_opt().expect("a day");
    assert_eq!(evening.today(), next);
    let run = evening.run("Tomasz");
    assert_eq!(
        (run.sheet.date, run.day, run.date_guessed),
        (next, next, false)
    );
    let no = run.no;
    let again = DayCommand::RedateLift { no, date: day() };
    assert_eq!(evening.keep(again), Err(Refusal::DateKnown));
    let redated = |fact: &Fact| matches!(fact, Fact::LiftRedated { .. });
    assert_eq!(evening.log.iter().filter(|e| redated(&e.fact)).count(), 1);
}

/// Times of day are told by the wall clock as it was set at the time.
#[test]
fn times_of_day_follow_the_wall_clock_and_moments_do_not() {
    let mut evening = Evening::at_eighteen();
    evening.begin("Ines").expect("begins");
    let before = evening.now();
    evening.set_wall_by(HOUR);
    assert_eq!(evening.now(), before);
    assert_eq!(evening.state.times.told(before).since(before), HOUR);
    evening.set_wall_by(1_500);
    assert_eq!(evening.state.times.offset_ms, HOUR, "too little to be told");
    evening.set_wall_by(-400 * 24 * HOUR);
    assert_eq!(evening.now(), before);
    assert_eq!(
        evening.state.times.offset_ms, HOUR,
        "a clock of before this program was never set, and tells nothing"
    );
}

/// Two machines on one journal, the second an hour and then a day ahead.
#[test]
fn a_second_machine_that_is_ahead_shows_no_endless_rest() {
    for ahead in [HOUR, 24 * HOUR, -HOUR, -24 * HOUR] {
        let mut evening = Evening::at_eighteen();
        evening.begin("Ines").expect("begins");
        evening.set("Ines").expect("a set");
        evening.wait(10_000);
        evening.change_machine(BootId(77), ahead);
        let rests = |evening: &Evening| {
            let now = evening.now();
            let lefts = evening
                .state
                .lifts
                .values()
                .map(move |run| run.rest_left_s(now));
            lefts.max().unwrap_or(0)
        };
        assert!(rests(&evening) <= 180, "{ahead}");
        evening.begin("Tomasz").expect("begins");
        evening.set("Tomasz").expect("a set");
        evening.change_machine(BootId(1), 0);
        assert!(rests(&evening) <= 180, "{ahead}");
        evening.wait(181_000);
        assert_eq!(rests(&evening), 0, "{ahead}: it goes on");
        assert!(evening.is_in_order(), "{ahead}");
    }
}

#[test]
fn the_first_moment_of_a_new_journal_is_the_wall_clock() {
    let evening = Evening::at_eighteen();
    assert_eq!(evening.now(), evening.wall());
    assert!(evening.now() > KNOWN_FROM);
}

/// A moved back that nobody answered is closed too, and counts as what was done.
#[test]
fn a_question_left_open_is_closed_with_the_lift() {
    let mut evening = Evening::at_eighteen();
    evening.begin("Ines").expect("begins");
    evening.set_held("Ines", Hold::MovedAt(2)).expect("a set");
    assert!(evening.run("Ines").awaits_decision());
    let no = evening.run("Ines").no;
    evening.wait(30 * HOUR);
    let run = &evening.state.lifts[&no];
    assert!(run.is_left_open() && !run.awaits_decision());
}
