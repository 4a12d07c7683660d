//! The coach rules otherwise for the next time, at the desk, and the reason is shown.
use crate::bench::{Bench, evening};
use crate::desk::{enter, rows, tap_like, tap_row, title, type_in};
use crate::ladder::{lifters, main_label};
use view::Screen;

/// Does all of a lifter's lift as planned.
pub(crate) fn lift(bench: &Bench, lifter: &str) {
    bench.tap(lifter);
    for _ in 0..60 {
        let frame = bench.frame();
        if matches!(frame.screen, Screen::End(_)) {
            return;
        }
        if matches!(frame.screen, Screen::Rest(_)) {
            bench.wait_ms(600_000);
        } else {
            bench.tap(&main_label(&frame));
        }
    }
    panic!("the lift has no end: {}", bench.screen());
}

#[test]
fn the_coach_rules_a_load_and_a_reason_and_both_are_shown() {
    let folder = tempfile::tempdir().expect("a folder");
    let bench = Bench::start(folder.path(), &evening());
    let name = lifters(&bench).remove(0);
    lift(&bench, &name);
    bench.tap("all lifters");
    enter(&bench, "4711");
    bench.tap("lifters");
    tap_like(&bench, "", &format!(", {name}"));
    tap_row(&bench, "next time, what is due");
    let (lift, due, why) = rows(&bench).remove(0);
    assert!(!why.is_empty(), "the rule says why");
    bench.tap(&format!("{lift}, {due}"));
    assert!(
        !bench.labels().contains(&"save".to_owned()),
        "no load, no reason"
    );
    bench.tap("load, bar counted in, not yet");
    type_in(&bench, "101");
    bench.tap("save");
    bench.tap("why, not yet");
    tap_row(&bench, "tired: take less this time");
    bench.tap("save");
    assert_eq!(title(&bench), format!("{name}, next time"));
    let (_, due, why) = rows(&bench).remove(0);
    assert!(due.starts_with("101 "), "{due}");
    assert!(
        why.ends_with("set by the coach: tired: take less this time"),
        "{why}"
    );
    // At its place too: the end of the lift, in either language.
    bench.tap("all lifters");
    bench.tap(&name);
    let Screen::End(end) = bench.frame().screen else {
        panic!("the end: {}", bench.screen())
    };
    let next = end.next.expect("a next time");
    assert!(next.by_coach && next.reason.contains("tired"), "{next:?}");
    bench.tap("all lifters");
    bench.tap("kiosk");
    bench.tap("language, Deutsch");
    bench.tap("alle");
    bench.tap(&name);
    let Screen::End(end) = bench.frame().screen else {
        panic!("the end")
    };
    let reason = end.next.expect("a next time").reason;
    assert!(
        reason.ends_with("vom Coach: müde: diesmal weniger"),
        "{reason}"
    );
}
