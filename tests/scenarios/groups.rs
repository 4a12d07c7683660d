//! A top set with back-offs and a last set of as many reps as go, from the plan's cell to the end
//! of the lift, by the taps of a finger.
use crate::bench::{Bench, evening};
use crate::ladder::main_label;
use std::ffi::OsString;
use std::path::Path;
use view::Screen;

/// Takes a plan as a coach writes it, from the command line.
fn take(data: &Path, work: &str) {
    let path = data.join("week.csv");
    let text = format!("date,lifter,lift,scheme\n2026-12-02,Željka,rack pull,\"{work}\"\n");
    std::fs::write(&path, text).expect("written");
    let words = ["pinladder".as_ref(), "--data".as_ref(), data.as_os_str()];
    let mut args: Vec<OsString> = words.map(OsString::from).into();
    args.extend(["take".into(), path.into_os_string()]);
    let (mut out, mut err) = (Vec::new(), Vec::new());
    let mut streams = kiosk::cli::Streams {
        input: &mut std::io::empty(),
        out: &mut out,
        err: &mut err,
    };
    kiosk::cli::main(args, &mut streams);
    assert!(err.is_empty(), "{}", String::from_utf8_lossy(&err));
}

/// Goes on, set after set as planned, until the screen says `until`.
fn lift_until(bench: &Bench, until: &str) {
    for _ in 0..60 {
        let frame = bench.frame();
        if matches!(&frame.screen, Screen::Bar(bar) if bar.rung.starts_with(until)) {
            return;
        }
        if matches!(frame.screen, Screen::Rest(_)) {
            bench.wait_ms(600_000);
        } else {
            bench.tap(&main_label(&frame));
        }
    }
    panic!("no {until}: {}", bench.screen());
}

fn bar(bench: &Bench) -> view::bar::AtTheBar {
    let Screen::Bar(bar) = bench.frame().screen else {
        panic!("at the bar: {}", bench.screen())
    };
    bar
}

#[test]
fn back_offs_follow_the_top_set_that_was_settled_on_the_day() {
    let folder = tempfile::tempdir().expect("a folder");
    take(folder.path(), "1x5 @ 130 kg, 2x5 @ 90 % of top set");
    let bench = Bench::start(folder.path(), &evening());
    bench.tap("Željka");
    lift_until(&bench, "top set");
    assert_eq!(
        (bar(&bench).load.as_str(), bar(&bench).reps.as_str()),
        ("130", "5 reps")
    );
    bench.tap("other load");
    let Screen::Settle(settle) = bench.frame().screen else {
        panic!("the choices: {}", bench.screen())
    };
    let heavier = settle.loads.last().expect("choices").load.clone();
    bench.tap(&format!("{heavier} kg"));
    lift_until(&bench, "top set");
    assert_eq!(bar(&bench).load, heavier);
    bench.tap(&main_label(&bench.frame()));
    lift_until(&bench, "back-off 1 of 2");
    let follows: f64 = bar(&bench).load.parse().expect("a number");
    let top: f64 = heavier.parse().expect("a number");
    assert!(
        top > 130.0 && (follows - 0.9 * top).abs() <= 1.25,
        "{follows} after {top}"
    );
    // Taken back, the top set stands to be done again.
    bench.tap("undo");
    assert!(
        bar(&bench).rung.starts_with("top set"),
        "{}",
        bench.screen()
    );
    lift_until(&bench, "back-off 2 of 2");
    bench.tap(&main_label(&bench.frame()));
    let Screen::End(end) = bench.frame().screen else {
        panic!("the end: {}", bench.screen())
    };
    let next = end.next.expect("a next time");
    assert!(!end.short && !next.reason.is_empty(), "{next:?}");
}

#[test]
fn as_many_as_go_is_entered_with_one_tap_more_and_never_by_a_guess() {
    let folder = tempfile::tempdir().expect("a folder");
    take(folder.path(), "3x5+ @ 120 kg");
    let bench = Bench::start(folder.path(), &evening());
    bench.tap("Željka");
    lift_until(&bench, "work set 3 of 3");
    assert_eq!(bar(&bench).reps, "5+ reps");
    let before = bench.frame();
    bench.tap(&main_label(&before));
    assert!(
        matches!(bench.frame().screen, Screen::Entry(_)),
        "a pad, and nothing entered"
    );
    bench.tap("8");
    let Screen::End(end) = bench.frame().screen else {
        panic!("the end: {}", bench.screen())
    };
    assert_eq!(end.rows.last().expect("rows").reps, "8 reps");
    assert!(!end.short);
}

#[test]
fn how_hard_it_was_is_asked_where_the_plan_asks() {
    let folder = tempfile::tempdir().expect("a folder");
    take(folder.path(), "1x5 @ 120 kg RPE 8");
    let bench = Bench::start(folder.path(), &evening());
    bench.tap("Željka");
    lift_until(&bench, "work set");
    assert!(bar(&bench).ladder.len() > 1);
    bench.tap(&main_label(&bench.frame()));
    let Screen::Entry(entry) = bench.frame().screen else {
        panic!("the question: {}", bench.screen())
    };
    assert!(entry.question.contains("RPE 8"), "{entry:?}");
    bench.tap("9");
    let Screen::End(end) = bench.frame().screen else {
        panic!("the end: {}", bench.screen())
    };
    let reason = end.next.expect("a next time").reason;
    assert!(reason.contains("harder than asked"), "{reason}");
}

#[test]
fn without_a_warm_up_and_already_warm_work_in_every_gym() {
    for (said, first) in [("no warm-up", "130"), ("already warm", "70")] {
        let folder = tempfile::tempdir().expect("a folder");
        take(folder.path(), &format!("2x5 @ 130 kg, {said}"));
        let bench = Bench::start(folder.path(), &evening());
        bench.tap("Željka");
        bench.tap(&main_label(&bench.frame()));
        let begun = bar(&bench);
        assert_eq!(begun.load, first, "{said}: {begun:?}");
    }
}

/// Nobody carries a loaded bar from hole to hole, and nobody is told twice.
#[test]
fn before_the_pins_are_moved_the_bar_is_stripped_and_the_whole_stack_is_told() {
    let folder = tempfile::tempdir().expect("a folder");
    take(folder.path(), "1x5 @ 130 kg hole 6, 2x5 @ 110 kg hole 9");
    let bench = Bench::start(folder.path(), &evening());
    bench.tap("Željka");
    lift_until(&bench, "work set 1 of 3");
    assert!(!bar(&bench).change.heed, "{:?}", bar(&bench).change);
    bench.tap(&main_label(&bench.frame()));
    let Screen::Rest(rest) = bench.frame().screen else {
        panic!("a rest: {}", bench.screen())
    };
    let told = rest.change;
    assert_eq!(told.heading, "strip to 60 kg, then pins to hole 9");
    assert!(told.heed && told.take_off.is_empty(), "{told:?}");
    assert!(told.put_on.starts_with("must hold left "), "{told:?}");
    lift_until(&bench, "work set 2 of 3");
    assert!(bar(&bench).change.heed);
    bench.tap(&main_label(&bench.frame()));
    lift_until(&bench, "work set 3 of 3");
    assert!(!bar(&bench).change.heed, "{:?}", bar(&bench).change);
}
