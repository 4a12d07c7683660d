//! The power fails, and comes back: what was acknowledged is there, the rest timer is right.
use crate::bench::{Bench, evening};
use crate::ladder::{lifters, main_label};
use view::Screen;

#[test]
fn kill_and_resume_in_mid_rest() {
    let folder = tempfile::tempdir().expect("a folder");
    let clock = evening();
    let before = {
        let bench = Bench::start(folder.path(), &clock);
        let name = lifters(&bench).remove(0);
        bench.tap(&name);
        bench.tap("start");
        bench.tap(&main_label(&bench.frame()));
        bench.tap("go now");
        bench.tap(&main_label(&bench.frame()));
        bench.frame()
    };
    let Screen::Rest(rest) = &before.screen else {
        panic!("at rest")
    };
    clock.advance_ms(20_000);

    let bench = Bench::start(folder.path(), &clock);
    let after = bench.frame();
    assert_eq!(after.lifter, before.lifter);
    let Screen::Rest(resumed) = &after.screen else {
        panic!("still at rest")
    };
    assert_eq!(seconds(&rest.left) - seconds(&resumed.left), 20);
    assert_eq!(
        (&rest.load, &rest.last, &rest.ladder, &rest.change),
        (
            &resumed.load,
            &resumed.last,
            &resumed.ladder,
            &resumed.change
        ),
    );
    assert_eq!(after.undo_detail, before.undo_detail);
}

#[test]
fn after_a_power_cut_the_same_session_goes_on_to_its_end() {
    let folder = tempfile::tempdir().expect("a folder");
    let clock = evening();
    let name = {
        let bench = Bench::start(folder.path(), &clock);
        lifters(&bench).remove(0)
    };
    for start in 0..12 {
        let bench = Bench::start(folder.path(), &clock);
        if start == 0 {
            bench.tap(&name);
            bench.tap("start");
        }
        if bench.frame().lifter.is_empty() {
            break;
        }
        assert_eq!(bench.frame().lifter, name);
        for _ in 0..3 {
            if bench.screen() == "end" {
                break;
            }
            bench.tap(&main_label(&bench.frame()));
        }
    }
    let bench = Bench::start(folder.path(), &clock);
    bench.tap(&name);
    let Screen::End(end) = bench.frame().screen else {
        panic!("the lift came to its end")
    };
    assert!(end.rows.iter().all(|row| row.hold == "back held"));
}

fn seconds(left: &str) -> u32 {
    let (minutes, seconds) = left.split_once(':').expect("m:ss");
    let number = |text: &str| text.parse::<u32>().expect("a number");
    number(minutes) * 60 + number(seconds)
}

/// Both a page of the kiosk's own and what is looked at beside a ladder are there again; the door
/// of the coach's desk is shut.
#[test]
fn whatever_was_read_before_a_restart_is_read_after_it() {
    let folder = tempfile::tempdir().expect("a folder");
    let clock = evening();
    let name = {
        let bench = Bench::start(folder.path(), &clock);
        lifters(&bench).remove(0)
    };
    let ways: [&[&str]; 5] = [
        &["kiosk"],
        &["kiosk", "about Pinladder, its licences"],
        &["all lifters", &name, "history"],
        &["all lifters", &name, "start", "later, skip..."],
        &["all lifters", "kiosk", "coach's desk, behind a code"],
    ];
    for way in ways {
        let before = {
            let bench = Bench::start(folder.path(), &clock);
            for label in way {
                if bench.labels().iter().any(|there| there == label) {
                    bench.tap(label);
                }
            }
            bench.frame()
        };
        let after = Bench::start(folder.path(), &clock).frame();
        assert_eq!(before.screen, after.screen, "{way:?}");
        assert_eq!(
            (&before.lifter, &before.undo, &before.undo_detail),
            (&after.lifter, &after.undo, &after.undo_detail),
            "{way:?}"
        );
    }
}
