//! The work load settled on the day in one tap, what follows from it at the end, and the undo.
use crate::bench::{Bench, evening};
use crate::ladder::{lifters, main_label};
use crate::rotation::{FOUR, begun};
use view::Screen;
use view::settle::Settle;

/// Up to the choice of loads after the last warm-up.
fn warmed_up(bench: &Bench) -> Settle {
    let name = lifters(bench).remove(0);
    up_to_the_choice(bench, &name)
}

fn label(choice: &view::settle::Choice) -> String {
    format!("{} {}", choice.load, choice.unit)
}

#[test]
fn one_tap_picks_another_load_and_undo_brings_the_plan_back() {
    let folder = tempfile::tempdir().expect("a folder");
    let bench = Bench::start(folder.path(), &evening());
    let settle = warmed_up(&bench);
    let planned: Vec<_> = settle.loads.iter().filter(|c| !c.plan.is_empty()).collect();
    assert_eq!(planned.len(), 1, "the plan is one of them: {settle:?}");
    assert_eq!(settle.main, format!("go with {}", label(planned[0])));
    let other = settle.loads.last().expect("some");
    bench.tap(&label(other));
    let Screen::Rest(rest) = bench.frame().screen else {
        panic!("the rest goes on")
    };
    assert_eq!((&rest.load, rest.settle.as_str()), (&other.load, ""));
    bench.tap("undo");
    assert_eq!(bench.screen(), "settle");
    bench.tap(&settle.main);
    let Screen::Rest(rest) = bench.frame().screen else {
        panic!("the rest goes on")
    };
    assert_eq!(rest.load, planned[0].load);
    // It can still be asked for, here and at the bar.
    bench.tap(&rest.settle);
    assert_eq!(bench.screen(), "settle");
    bench.tap("back");
    bench.tap("go now");
    bench.tap("other load");
    bench.tap(&label(other));
    let Screen::Bar(bar) = bench.frame().screen else {
        panic!("at the bar")
    };
    assert_eq!((&bar.load, bar.settle.as_str()), (&other.load, ""));
    let faces = |bar: &view::draw::BarDrawing| bar.right.iter().map(|p| p.label.clone()).collect();
    let (built, offered): (Vec<String>, Vec<String>) = (faces(&bar.bar), faces(&other.bar));
    assert_eq!(built, offered, "the bar that was offered");
}

#[test]
fn the_end_says_what_is_due_next_and_why() {
    let folder = tempfile::tempdir().expect("a folder");
    let bench = Bench::start(folder.path(), &evening());
    let settle = warmed_up(&bench);
    let other = settle.loads.last().expect("some");
    bench.tap(&label(other));
    for _ in 0..4 {
        bench.tap(&main_label(&bench.frame()));
        if bench.screen() == "end" {
            break;
        }
    }
    let Screen::End(end) = bench.frame().screen else {
        panic!("the end")
    };
    let next = end.next.expect("something is due");
    assert!(
        next.reason.starts_with("up ") && next.reason.ends_with("all reps with the back held"),
        "{next:?}"
    );
    assert_eq!(next.verdict, "raise");
    bench.tap("why");
    let Screen::Why(why) = bench.frame().screen else {
        panic!("what stands behind it")
    };
    assert_eq!(why.headline, next.work);
    let [past, due] = why.trail.points.as_slice() else {
        panic!("one outing, and what is due: {why:?}")
    };
    assert_eq!((&past.load, due.date.as_str()), (&other.load, "next"));
    assert!(due.height > past.height, "{why:?}");
    bench.tap("back");
    assert_eq!(bench.screen(), "end");
    bench.tap("undo");
    assert_ne!(bench.screen(), "end");
}

/// Everybody at a shared bar takes another load than planned: the turns are planned anew with it,
/// what to load is told from the bar as it is left, and everybody comes to the end.
#[test]
fn a_shared_bar_follows_every_choice() {
    let (_folder, bench) = begun();
    let mut chosen: Vec<(String, String)> = Vec::new();
    bench.tap(&format!("switch to {}", FOUR[0]));
    for _ in 0..250 {
        let frame = bench.frame();
        match &frame.screen {
            Screen::Settle(settle) => {
                let other = settle.loads.iter().find(|choice| choice.plan.is_empty());
                let other = other.expect("another load");
                chosen.push((frame.lifter.clone(), other.load.clone()));
                bench.tap(&label(other));
            }
            Screen::Bar(bar) if !bar.settle.is_empty() => bench.tap(&bar.settle),
            Screen::Bar(bar) => {
                let of = chosen.iter().find(|(lifter, _)| *lifter == frame.lifter);
                if bar.rung.starts_with("work") {
                    assert_eq!(of.map(|(_, load)| load), Some(&bar.load), "{chosen:?}");
                }
                bench.tap(&main_label(&frame));
            }
            Screen::Rest(rest) if rest.word == "rest" => bench.wait_ms(10_000),
            Screen::Rest(rest) => {
                let first = rest.word.trim_start_matches("after ").to_owned();
                bench.tap(&format!("switch to {first}"));
            }
            Screen::End(_) => bench.tap(&main_label(&frame)),
            Screen::Choose(_) => break,
            other @ (Screen::Floor(_)
            | Screen::SetUp(_)
            | Screen::Entry(_)
            | Screen::History(_)
            | Screen::Why(_)
            | Screen::Meet(_)
            | Screen::List(_)
            | Screen::Turn(_)
            | Screen::Holds(_)
            | Screen::Page(_)
            | Screen::Typing(_)
            | Screen::Stop(_)) => {
                panic!("not expected in a rotation: {other:?}")
            }
        }
    }
    assert_eq!(bench.screen(), "choose");
    assert_eq!(chosen.len(), FOUR.len(), "{chosen:?}");
    for (lifter, load) in &chosen {
        bench.tap(lifter);
        let Screen::End(end) = bench.frame().screen else {
            panic!("{lifter} came to the end")
        };
        let work = end.rows.last().expect("rungs");
        assert_eq!(work.load, format!("{load} kg"), "{lifter}");
        bench.tap("all lifters");
    }
}

/// Up to the choice before the first work set, whatever was chosen before.
fn up_to_the_choice(bench: &Bench, name: &str) -> Settle {
    bench.tap(name);
    bench.tap("start");
    for _ in 0..12 {
        if let Screen::Settle(settle) = bench.frame().screen {
            return settle;
        }
        bench.tap(&main_label(&bench.frame()));
    }
    panic!("no choice on the way up");
}

#[test]
fn after_a_moved_back_what_is_due_is_kept_and_more_is_called_too_early() {
    let folder = tempfile::tempdir().expect("a folder");
    let evening_of = |month, day| {
        let day = chrono::NaiveDate::from_ymd_opt(2026, month, day).expect("a day");
        kiosk::clock::BenchClock::at(day.and_hms_opt(18, 0, 0).expect("a time"))
    };
    let bench = Bench::start(folder.path(), &evening_of(11, 25));
    let settle = up_to_the_choice(&bench, "Hamza");
    let plan = |settle: &Settle| -> Vec<(String, String, String)> {
        let all = settle.loads.iter();
        all.map(|c| (c.load.clone(), c.plan.clone(), c.mark.clone()))
            .collect()
    };
    let of = |load: &str, plan: &str, mark: &str| (load.into(), plan.into(), mark.into());
    assert!(
        plan(&settle).contains(&of("200", "the plan", "")),
        "{settle:?}"
    );
    assert_eq!(settle.asked, "", "nothing is due yet");
    bench.tap("go with 200 kg");
    bench.tap("go now");
    bench.tap("back moved");
    bench.tap("2");
    drop(bench);

    // The plan has 205 kg two weeks later; the set-up says that 200 is too early.
    let bench = Bench::start(folder.path(), &evening_of(12, 9));
    let settle = up_to_the_choice(&bench, "Hamza");
    assert_eq!(
        settle.asked.replace('\u{a0}', " "),
        "due 190 kg, plan 205 kg"
    );
    assert_eq!(settle.main, "go with 190 kg");
    let expected = [
        of("180", "", ""),
        of("185", "", ""),
        of("190", "due", ""),
        of("195", "", "more than is due"),
        of("200", "", "too early"),
    ];
    assert_eq!(plan(&settle), expected);
    let spot = &settle.spot;
    assert_eq!(
        (spot.hole.as_str(), spot.mats.as_str()),
        ("6", "1 mat, 10 mm"),
        "where the bar starts"
    );
    assert_eq!(spot.gear, ["belt", "straps"]);
    // Kept, it is what the bar has.
    bench.tap("go with 190 kg");
    let Screen::Rest(rest) = bench.frame().screen else {
        panic!("the rest goes on")
    };
    assert_eq!(
        (rest.load.as_str(), rest.spot.grip.as_str()),
        ("190", "double overhand")
    );
}

/// Keeping the plan's load is no entry, and undo takes it back before any set.
#[test]
fn a_load_that_was_kept_by_mistake_is_asked_again() {
    let folder = tempfile::tempdir().expect("a folder");
    let bench = Bench::start(folder.path(), &evening());
    let settle = up_to_the_choice(&bench, "Hamza");
    let sets = bench.sets();
    bench.tap(&settle.main);
    assert_eq!(bench.screen(), "rest");
    bench.tap("undo");
    assert_eq!((bench.screen(), bench.sets()), ("settle", sets));
    bench.tap("undo");
    assert_eq!(bench.sets(), sets - 1, "then the last warm-up");
}
