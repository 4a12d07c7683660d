//! Midnight, clocks that are set, plugs that are pulled, lifts that are left open: the evening goes
//! on, the rests are as long as they are, and the next day begins clean.
use crate::bench::{Bench, evening};
use crate::desk::{enter, rows, tap_like, title};
use crate::ladder::{lifters, main_label};
use chrono::{Days, NaiveDate, NaiveDateTime, TimeDelta};
use kiosk::clock::{BenchClock, Clock as _};
use std::path::Path;
use view::{Frame, Screen};

const MINUTE: u64 = 60_000;
const HOUR: u64 = 60 * MINUTE;

fn wednesday() -> NaiveDate {
    NaiveDate::from_ymd_opt(2026, 12, 2).expect("a day")
}

fn at(hour: u32, minute: u32) -> NaiveDateTime {
    wednesday().and_hms_opt(hour, minute, 0).expect("a time")
}

/// The first lifter with work begins.
fn begun(bench: &Bench) -> String {
    let name = lifters(bench).remove(0);
    bench.tap(&name);
    bench.tap("start");
    name
}

/// Waits out the rest, if any, and enters the set of now as planned.
fn one_set(bench: &Bench) {
    for _ in 0..4 {
        match bench.screen() {
            "rest" => bench.wait_ms(10 * MINUTE),
            "settle" => bench.tap(&main_label(&bench.frame())),
            _ => break,
        }
    }
    assert_eq!(bench.screen(), "bar");
    bench.wait_ms(2_000);
    bench.tap(&main_label(&bench.frame()));
}

/// Seconds of rest on the screen; 0 when it is over.
fn rest_s(frame: &Frame) -> u32 {
    let Screen::Rest(rest) = &frame.screen else {
        return 0;
    };
    let Some((minutes, seconds)) = rest.left.split_once(':') else {
        return 0;
    };
    let number = |text: &str| text.parse::<u32>().expect("a number");
    number(minutes) * 60 + number(seconds)
}

/// In mid-rest, with the seconds that are left.
fn resting(data: &Path, clock: &BenchClock) -> (Bench, String, u32) {
    let bench = Bench::start(data, clock);
    let name = begun(&bench);
    bench.wait_ms(2_000);
    bench.tap(&main_label(&bench.frame()));
    let left = rest_s(&bench.frame());
    assert!(left > 60, "a rest to speak of: {left} s");
    (bench, name, left)
}

/// The finding: after an hour back a rest of two minutes showed 58:52.
#[test]
fn a_clock_that_is_set_in_mid_rest_changes_nothing() {
    let jumps = [
        TimeDelta::minutes(-7),
        TimeDelta::hours(-1),
        TimeDelta::hours(1),
        TimeDelta::days(-1),
        TimeDelta::days(1),
        TimeDelta::days(-45),
        TimeDelta::days(365),
        TimeDelta::days(-20_000),
    ];
    for jump in jumps {
        let folder = tempfile::tempdir().expect("a folder");
        let clock = evening();
        let (bench, name, left) = resting(folder.path(), &clock);
        clock.set_wall(clock.local() + jump);
        bench.wait_ms(10_000);
        assert_eq!(bench.frame().lifter, name, "{jump}");
        assert_eq!(rest_s(&bench.frame()), left - 10, "{jump}");
        drop(bench);

        clock.set_wall(clock.local() - jump * 2);
        let bench = Bench::start(folder.path(), &clock);
        assert_eq!(bench.frame().lifter, name, "{jump}, restarted");
        assert_eq!(rest_s(&bench.frame()), left - 10, "{jump}, restarted");
        one_set(&bench);
        drop(bench);

        // Another boot, and the clock is right again.
        clock.reboot_after_ms(30_000);
        clock.set_wall(at(18, 40));
        let bench = Bench::start(folder.path(), &clock);
        assert_eq!(bench.frame().lifter, name, "{jump}, another boot");
        assert!(rest_s(&bench.frame()) <= 600, "{jump}, another boot");
    }
}

#[test]
fn midnight_passes_between_two_sets() {
    let folder = tempfile::tempdir().expect("a folder");
    let clock = BenchClock::at(at(23, 55));
    let bench = Bench::start(folder.path(), &clock);
    let name = begun(&bench);
    one_set(&bench);
    one_set(&bench);
    assert_ne!(clock.local().date(), wednesday(), "it is past midnight");
    assert_eq!(bench.frame().lifter, name);
    drop(bench);
    let bench = Bench::start(folder.path(), &clock);
    assert_eq!(bench.frame().lifter, name, "restarted after midnight");
    for _ in 0..12 {
        if bench.screen() == "end" {
            break;
        }
        one_set(&bench);
    }
    assert_eq!(bench.screen(), "end");
    bench.tap("all lifters");
    assert!(
        date_shown(&bench).contains("2 December"),
        "{}",
        date_shown(&bench)
    );
    bench.wait_ms(21 * MINUTE);
    assert!(
        date_shown(&bench).contains("3 December"),
        "{}",
        date_shown(&bench)
    );
}

fn date_shown(bench: &Bench) -> String {
    let Screen::Choose(choose) = bench.frame().screen else {
        panic!("not all lifters: {}", bench.screen())
    };
    choose.date
}

/// The finding: an unfinished lift of yesterday made the next lifter "1st after (nobody)".
#[test]
fn who_left_yesterday_stands_before_nobody_today() {
    let folder = tempfile::tempdir().expect("a folder");
    let clock = evening();
    let bench = Bench::start(folder.path(), &clock);
    let left = begun(&bench);
    one_set(&bench);
    // A week on the plan has the same lifters again.
    for restart in [false, true] {
        if restart {
            drop(bench);
            clock.advance_ms(i64::try_from(7 * 24 * HOUR).expect("a week"));
            let bench = Bench::start(folder.path(), &clock);
            next_day_is_clean(&bench, &left);
            return;
        }
        bench.wait_ms(2 * HOUR);
        bench.tap("all lifters");
        assert!(date_shown(&bench).contains("2 December"));
    }
}

fn next_day_is_clean(bench: &Bench, left: &str) {
    assert_eq!(bench.screen(), "choose", "nobody is under way");
    assert!(
        date_shown(bench).contains("9 December"),
        "{}",
        date_shown(bench)
    );
    let next = lifters(bench).into_iter().find(|name| name != left);
    bench.tap(&next.expect("somebody else"));
    bench.tap("start");
    assert_eq!(bench.screen(), "bar", "first at the bar");
    let text = format!("{:?}", bench.frame());
    assert!(!text.contains(&format!("after {left}")), "{text}");
}

/// Back after four hours on the same evening: the lift is where it was.
#[test]
fn who_comes_back_after_four_hours_goes_on() {
    let folder = tempfile::tempdir().expect("a folder");
    let clock = evening();
    let bench = Bench::start(folder.path(), &clock);
    let name = begun(&bench);
    one_set(&bench);
    bench.wait_ms(4 * HOUR);
    bench.tap("all lifters");
    bench.tap(&name);
    one_set(&bench);
    assert_eq!(bench.frame().lifter, name);
}

/// No battery for the clock: 1970 at the start, set right three minutes later.
#[test]
fn a_machine_that_begins_in_1970_puts_its_day_right_once() {
    let folder = tempfile::tempdir().expect("a folder");
    let clock = evening();
    let bench = Bench::start(folder.path(), &clock);
    let first = begun(&bench);
    for _ in 0..12 {
        if bench.screen() == "end" {
            break;
        }
        one_set(&bench);
    }
    drop(bench);
    // The next evening.
    clock.reboot_after_ms(24 * 3_600_000);
    clock.set_wall(NaiveDateTime::default());
    let bench = Bench::start(folder.path(), &clock);
    assert_eq!(bench.screen(), "end", "the same face as before");
    bench.tap("all lifters");
    assert!(
        date_shown(&bench).contains("2 December"),
        "the last day that is known"
    );
    assert_eq!(bench.frame().clock, "--:--");
    assert!(bench.frame().notice.contains("clock is not set"));
    let second = lifters(&bench).into_iter().find(|name| *name != first);
    let second = second.expect("somebody else");
    bench.tap(&second);
    bench.tap("start");
    bench.wait_ms(3 * MINUTE);
    clock.set_wall(
        wednesday()
            .succ_opt()
            .expect("a day")
            .and_hms_opt(18, 10, 0)
            .expect("a time"),
    );
    bench.wait_ms(1_000);
    assert_eq!(bench.frame().clock, "18:10");
    assert!(!bench.frame().notice.contains("clock is not set"));
    assert_eq!(bench.frame().lifter, second, "on the same face");
    one_set(&bench);
    let dates = bench.lift_dates(&second);
    assert_eq!(dates, [wednesday() + Days::new(1)], "put right");
}

/// The hour that is there twice, and the one that is not.
#[test]
fn summer_time_begins_and_ends_under_a_set() {
    for (zone, after) in [(60, 120), (120, 60)] {
        let folder = tempfile::tempdir().expect("a folder");
        let clock = evening();
        clock.set_zone(zone);
        clock.set_wall(at(23, 50));
        let bench = Bench::start(folder.path(), &clock);
        let name = begun(&bench);
        bench.wait_ms(2_000);
        bench.tap(&main_label(&bench.frame()));
        let left = rest_s(&bench.frame());
        clock.set_zone(after);
        bench.wait_ms(20_000);
        assert_eq!(rest_s(&bench.frame()), left - 20);
        drop(bench);
        let bench = Bench::start(folder.path(), &clock);
        assert_eq!(rest_s(&bench.frame()), left - 20);
        assert_eq!(bench.lift_dates(&name), [wednesday()]);
    }
}

/// Two kiosks on one folder whose clocks are apart, one of them on another machine.
#[test]
fn two_kiosks_whose_clocks_are_apart_show_no_endless_rest() {
    for ahead in [TimeDelta::hours(1), TimeDelta::hours(-1)] {
        let folder = tempfile::tempdir().expect("a folder");
        let clock = evening();
        let (bench, name, left) = resting(folder.path(), &clock);
        let there = BenchClock::at(clock.local() + ahead);
        let second = Bench::start(folder.path(), &there);
        let shown = rest_s(&second.frame());
        assert!(shown <= left, "{ahead}: {shown} of {left} s");
        let other = {
            second.tap("all lifters");
            let other = lifters(&second).into_iter().find(|one| *one != name);
            other.expect("somebody else")
        };
        second.tap(&other);
        second.tap("start");
        for _ in 0..8 {
            bench.wait_ms(30_000);
            second.wait_ms(30_000);
        }
        bench.tap("all lifters");
        bench.tap(&name);
        assert_eq!(
            rest_s(&bench.frame()),
            0,
            "{ahead}: the rest came to its end"
        );
    }
}

/// The coach opens yesterday's lift again at the desk, and it goes on today, on its own date.
#[test]
fn the_coach_opens_again_what_was_left_open() {
    let folder = tempfile::tempdir().expect("a folder");
    let clock = evening();
    let bench = Bench::start(folder.path(), &clock);
    let name = begun(&bench);
    one_set(&bench);
    drop(bench);
    clock.reboot_after_ms(17 * 3_600_000);
    let bench = Bench::start(folder.path(), &clock);
    assert_eq!(bench.screen(), "choose");
    bench.tap(&name);
    let Screen::SetUp(setup) = bench.frame().screen else {
        panic!("{:?}", bench.frame().screen);
    };
    let (done, told) = ("1 of ", "left open; the coach can open it again");
    let is_told = setup.note.contains(done) && setup.note.contains(told);
    assert!(is_told, "the lifter is told: {}", setup.note);
    bench.tap("all lifters");
    enter(&bench, "4711");
    tap_like(&bench, "left open, ", "");
    let (lift, date, done) = rows(&bench).remove(0);
    assert!(lift.starts_with(&name), "{lift}");
    assert!(
        date.contains("2 December") && done.starts_with("1 of "),
        "{date}, {done}"
    );
    bench.tap(&format!("{lift}, {date}"));
    assert_eq!(title(&bench), "left open");
    assert_eq!(rows(&bench).remove(0).0, "nothing was left open");
    bench.tap("all lifters");
    bench.tap(&name);
    one_set(&bench);
    assert_eq!(bench.lift_dates(&name), [wednesday()]);
    drop(bench);
    let bench = Bench::start(folder.path(), &clock);
    assert_eq!(bench.frame().lifter, name, "and is open after a restart");
}
