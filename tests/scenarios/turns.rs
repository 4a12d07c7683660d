//! Two lifters in turn, switched in one tap; the bar is told from what the other left on it.
use crate::bench::{Bench, evening};
use crate::ladder::{lifters, main_label};
use view::Screen;
use view::floor::FloorRack;

#[test]
fn two_lifters_in_turn() {
    let folder = tempfile::tempdir().expect("a folder");
    let bench = Bench::start(folder.path(), &evening());
    let names = lifters(&bench);
    let (first, second) = (names[0].clone(), names[1].clone());

    bench.tap(&first);
    bench.tap("start");
    bench.tap(&main_label(&bench.frame()));
    assert_eq!(bench.screen(), "rest");

    bench.tap("all lifters");
    bench.tap(&second);
    bench.tap("start");
    let chips = bench.frame().chips;
    // Those who share the bar come first; the shown one is there too.
    let mut names: Vec<&str> = chips.iter().map(|chip| chip.lifter.as_str()).collect();
    names.sort_unstable();
    let mut both = [first.as_str(), second.as_str()];
    both.sort_unstable();
    assert_eq!(names, both);
    let shown = chips.iter().find(|chip| chip.shown);
    assert_eq!(shown.map(|chip| &chip.lifter), Some(&second));
    bench.tap(&main_label(&bench.frame()));

    bench.tap(&format!("switch to {first}"));
    assert_eq!(bench.frame().lifter, first);
    let Screen::Rest(rest) = bench.frame().screen else {
        panic!("the first one rests")
    };
    bench.wait_ms(30_000);
    let Screen::Rest(later) = bench.frame().screen else {
        panic!("and still rests")
    };
    assert_ne!(
        rest.left, later.left,
        "the rest runs on while the other one lifts"
    );
    bench.tap(&format!("switch to {second}"));
    assert_eq!(bench.frame().lifter, second);
}

/// Two who share a bar have begun; whoever is up is shown.
fn two_begun(bench: &Bench) -> [String; 2] {
    let Screen::Choose(choose) = bench.frame().screen else {
        panic!("not all lifters")
    };
    // Before anybody has begun, a tile's word is its rack.
    let tiles = choose.tiles.iter().filter(|tile| !tile.work.is_empty());
    let tiles: Vec<_> = tiles.collect();
    let pair = tiles.iter().find_map(|one| {
        let alike = |other: &&&view::choose::Tile| {
            one.lifter != other.lifter && one.word == other.word && one.lift == other.lift
        };
        Some([one.lifter.clone(), tiles.iter().find(alike)?.lifter.clone()])
    });
    let two = pair.expect("two at one rack");
    for name in &two {
        if bench.screen() != "choose" {
            bench.tap("all lifters");
        }
        bench.tap(name);
        bench.tap("start");
    }
    bench.to_whoever_is_up();
    two
}

#[test]
fn undo_is_of_the_last_set_whoever_is_shown() {
    let folder = tempfile::tempdir().expect("a folder");
    let bench = Bench::start(folder.path(), &evening());
    two_begun(&bench);
    for _ in 0..4 {
        if bench.screen() != "bar" {
            // Rests are over, and whoever is up comes to the bar.
            bench.wait_ms(300_000);
            bench.to_whoever_is_up();
        }
        let did = bench.frame().lifter;
        let sets = bench.sets();
        bench.tap(&main_label(&bench.frame()));
        assert_eq!(bench.sets(), sets + 1);
        let frame = bench.frame();
        let named = frame.undo_detail.split_once(": ").map(|(who, _)| who);
        let meant = named.unwrap_or(&frame.lifter);
        assert_eq!(meant, did, "{}", frame.undo_detail);
    }
}

#[test]
fn undo_after_going_early_goes_back_to_the_rest() {
    let folder = tempfile::tempdir().expect("a folder");
    let bench = Bench::start(folder.path(), &evening());
    let two = two_begun(&bench);
    let did = bench.frame().lifter;
    bench.tap(&main_label(&bench.frame()));
    let other = two.iter().find(|name| **name != did).expect("the other");
    if bench.frame().lifter != *other {
        bench.tap(&format!("switch to {other}"));
    }
    bench.tap(&main_label(&bench.frame()));
    let sets = bench.sets();
    if bench.frame().lifter != *other {
        bench.tap(&format!("switch to {other}"));
    }
    assert_eq!(bench.screen(), "rest");
    bench.tap("my turn now");
    assert_eq!(bench.screen(), "bar");
    bench.tap("undo");
    assert_eq!((bench.screen(), bench.sets()), ("rest", sets));
}

#[test]
fn a_moved_back_leaves_the_bar_to_others_and_is_told() {
    let folder = tempfile::tempdir().expect("a folder");
    let bench = Bench::start(folder.path(), &evening());
    let two = two_begun(&bench);
    let moved = bench.frame().lifter;
    bench.tap("back moved");
    bench.tap("1");
    assert_eq!(bench.screen(), "stop");
    if bench.screen() != "choose" {
        bench.tap("all lifters");
    }
    bench.tap("floor");
    let Screen::Floor(floor) = bench.frame().screen else {
        panic!("the floor")
    };
    let rack = floor.racks.first().expect("a rack");
    let other = two.iter().find(|name| **name != moved).expect("the other");
    assert_eq!(rack.up.as_ref().map(|up| &up.lifter), Some(other));
    let all = [&rack.up, &rack.next];
    let mut turns = all.into_iter().flatten().chain(&rack.then);
    assert!(turns.all(|turn| turn.lifter != moved), "no load is offered");
    assert_eq!(rack.without_turn, [format!("{moved}: back moved")]);
}

/// The racks of the floor; whoever is shown then.
fn floor(bench: &Bench) -> Vec<FloorRack> {
    if bench.screen() != "choose" {
        bench.tap("all lifters");
    }
    bench.tap("floor");
    let Screen::Floor(floor) = bench.frame().screen else {
        panic!("the floor, not {}", bench.screen())
    };
    floor.racks
}

/// Whoever is next says that it is their turn now.
fn out_of_turn(bench: &Bench, lifter: &str) {
    bench.tap("all lifters");
    bench.tap(lifter);
    for label in ["later, skip...", "my turn now"] {
        if bench.labels().iter().any(|it| it == label) {
            bench.tap(label);
        }
    }
}

#[test]
fn sets_at_one_rack_leave_the_order_at_another_alone() {
    let folder = tempfile::tempdir().expect("a folder");
    let bench = Bench::start(folder.path(), &evening());
    for name in lifters(&bench) {
        if bench.screen() != "choose" {
            bench.tap("all lifters");
        }
        bench.tap(&name);
        if bench.labels().iter().any(|label| label == "start") {
            bench.tap("start");
        }
    }
    let mut held = 0;
    for turn in 0..16 {
        // Two turns at one rack, then two at the other.
        let (here, there) = (turn / 2 % 2, (turn / 2 + 1) % 2);
        if let Some(next) = floor(&bench).get(there).and_then(|rack| rack.next.clone()) {
            out_of_turn(&bench, &next.lifter);
        }
        let before = floor(&bench);
        assert_eq!(before.len(), 2, "two racks");
        let (Some(up), other) = (&before[here].up, &before[there]) else {
            continue;
        };
        // Two bars of one rack share its plates.
        if other.name.contains(", ") {
            continue;
        }
        bench.tap("all lifters");
        bench.tap(&up.lifter);
        if let Screen::Settle(_) = bench.frame().screen {
            bench.tap(&main_label(&bench.frame()));
        }
        if bench.screen() == "rest" {
            bench.tap(&main_label(&bench.frame()));
        }
        if bench.screen() != "bar" {
            continue;
        }
        bench.tap(&main_label(&bench.frame()));
        let after = floor(&bench);
        let told = |rack: &FloorRack| {
            let up = rack.up.clone()?;
            // After a while a look at the bar is asked for: the plates stay.
            let plates = up.order.map(|of| (of.holds, of.take_off, of.put_on));
            Some((up.lifter, up.load, plates))
        };
        // A rack where nobody is under way any more makes room for another.
        let Some(later) = after.iter().find(|rack| rack.name == other.name) else {
            continue;
        };
        assert_eq!(told(other), told(later), "turn {turn}");
        held += usize::from(other.up.is_some());
    }
    assert!(
        held >= 6,
        "only {held} orders were held against the later one"
    );
}

#[test]
fn whoever_waits_behind_an_idle_bar_is_not_told_to_have_stayed_away() {
    let folder = tempfile::tempdir().expect("a folder");
    let bench = Bench::start(folder.path(), &evening());
    for name in ["Hamza", "Željka", "Ilkka"] {
        if bench.screen() != "choose" {
            bench.tap("all lifters");
        }
        bench.tap(name);
        bench.tap("start");
    }
    // The third says that it is their turn, and goes.
    for label in ["later, skip...", "my turn now"] {
        bench.tap(label);
    }
    floor(&bench);
    let mut turns = Vec::new();
    let mut since = 0;
    for _ in 0..14 * 60 {
        bench.wait_ms(1_000);
        let Screen::Floor(floor) = bench.frame().screen else {
            panic!("the floor, not {}", bench.screen())
        };
        since += 1;
        let Some(up) = floor.racks.into_iter().find_map(|rack| rack.up) else {
            continue;
        };
        if turns.last() != Some(&up.lifter) {
            let before = turns.last().cloned();
            turns.push(up.lifter);
            if let Some(before) = before {
                assert!(since > 230, "{before} had {since} s to come: {turns:?}");
            }
            since = 0;
        }
    }
    assert_eq!(turns.first().map(String::as_str), Some("Ilkka"));
    assert!(turns.len() > 2, "{turns:?}");
}

/// A slip of the finger on the page of one's turn: undo takes it back from whatever is shown then,
/// and no set of anybody goes with it.
#[test]
fn a_turn_put_off_by_mistake_comes_back_by_undo() {
    for word in ["later", "I need longer", "I am leaving"] {
        let folder = tempfile::tempdir().expect("a folder");
        let bench = Bench::start(folder.path(), &evening());
        two_begun(&bench);
        let before = bench.frame();
        bench.tap("later, skip...");
        bench.tap(word);
        let now = bench.frame();
        assert_ne!(now.lifter, before.lifter, "{word}: the other one is up");
        let detail = format!("{}: {word}", before.lifter);
        assert_eq!((now.undo.as_str(), &now.undo_detail), ("undo", &detail));
        bench.tap("undo");
        let back = bench.frame();
        assert_eq!(back.lifter, before.lifter, "{word}");
        assert_eq!(back.screen, before.screen, "{word}");
        assert_eq!(back.undo_detail, before.undo_detail, "{word}");
    }
}

/// Whoever claims the turn by mistake, or says by mistake that they are back, goes back to where
/// they stood: the order is as it was, and nobody's lift falls.
#[test]
fn a_claim_and_a_return_are_taken_back_by_undo() {
    let folder = tempfile::tempdir().expect("a folder");
    let bench = Bench::start(folder.path(), &evening());
    let two = two_begun(&bench);
    let up = bench.frame().lifter;
    let other = two.iter().find(|name| **name != up).expect("the other");
    let switch = |to: &str| bench.tap(&format!("switch to {to}"));

    switch(other);
    let waits = bench.frame();
    bench.tap("my turn now");
    assert_eq!(bench.screen(), "bar");
    assert_eq!(bench.frame().undo_detail, "my turn now");
    bench.tap("undo");
    assert_eq!(bench.frame().screen, waits.screen, "they wait again");
    switch(&up);
    assert_eq!(bench.screen(), "bar", "{up} is up again");

    bench.tap("later, skip...");
    bench.tap("I am leaving");
    switch(&up);
    let away = bench.frame();
    bench.tap("I am back");
    assert_eq!(bench.frame().undo_detail, "I am back");
    bench.tap("undo");
    if bench.frame().lifter != up {
        switch(&up);
    }
    assert_eq!(bench.frame().screen, away.screen, "they are away again");
}

/// Somebody who is shown already is tapped once more: what undo takes back stays.
#[test]
fn a_tap_on_the_shown_name_changes_nothing() {
    let folder = tempfile::tempdir().expect("a folder");
    let bench = Bench::start(folder.path(), &evening());
    two_begun(&bench);
    bench.tap("later, skip...");
    bench.tap("later");
    let before = bench.frame();
    bench.tap(&format!("switch to {}", before.lifter));
    let now = bench.frame();
    assert_eq!(
        (now.undo_detail, now.screen),
        (before.undo_detail, before.screen)
    );
}
