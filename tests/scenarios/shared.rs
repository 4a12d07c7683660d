//! Two bars that take their plates from one set: a plate hangs on one of them at a time.
use kiosk::Folder;
use kiosk::rehearse::{Answer, Line, Rehearsal, moment};
use std::path::Path;
use view::Deed;

/// The old yard bar on the pins, and the light bar on the floor.
const HEAVY: &str = "Željka";
const LIGHT: &str = "Parvati";

fn open(data: &Path) -> Rehearsal {
    let folder = Folder::open(Some(data)).expect("a folder");
    Rehearsal::open(&folder, moment("2026-12-02T18:00").expect("a time")).expect("it opens")
}

fn tap(rehearsal: &mut Rehearsal, label: &str) -> Answer {
    let face = rehearsal.line(&Line::tap(label)).expect("it goes on");
    assert_eq!(face.refused, None, "{label}: {face:?}");
    face
}

fn press(rehearsal: &mut Rehearsal, deed: Deed) -> Answer {
    let face = rehearsal.face();
    let label = face
        .button(deed)
        .unwrap_or_else(|| panic!("{deed:?} in {face:?}"));
    tap(rehearsal, label)
}

/// Up the whole ladder, to the choice of load.
fn climb(rehearsal: &mut Rehearsal, lifter: &str) -> Answer {
    if rehearsal.face().screen != "choose" {
        tap(rehearsal, "all lifters");
    }
    tap(rehearsal, lifter);
    let mut face = press(rehearsal, Deed::Start);
    while face.screen != "settle" {
        face = match face.screen {
            "rest" => press(rehearsal, Deed::Go),
            "bar" => press(rehearsal, Deed::Done),
            other => panic!("{other}: {face:?}"),
        };
    }
    face
}

/// A load of those that are offered, and to the bar.
fn choose(rehearsal: &mut Rehearsal, load: &str) -> Answer {
    let face = tap(rehearsal, load);
    if face.screen == "rest" {
        press(rehearsal, Deed::Go)
    } else {
        face
    }
}

fn is_told(face: &Answer, part: &str) -> bool {
    face.warnings.iter().any(|told| told.contains(part))
}

#[test]
fn a_plate_that_was_fetched_from_another_bar_is_not_believed_to_hang_there() {
    let folder = tempfile::tempdir().expect("a folder");
    let mut rehearsal = open(folder.path());
    climb(&mut rehearsal, HEAVY);
    let heavy = choose(&mut rehearsal, "go with 137.5");
    assert_eq!(heavy.load.as_deref(), Some("137.5 kg"));
    press(&mut rehearsal, Deed::Loaded);
    climb(&mut rehearsal, LIGHT);
    let light = choose(&mut rehearsal, "37.5 kg");
    assert!(
        is_told(&light, "1.25 kg is on the old yard bar"),
        "{light:?}"
    );
    press(&mut rehearsal, Deed::Done);

    // Back at the first bar, whose plate is gone: the screen says where it is.
    let mut heavy = tap(&mut rehearsal, &format!("switch to {HEAVY}"));
    if heavy.screen == "settle" {
        heavy = choose(&mut rehearsal, "go with 137.5");
    }
    if heavy.screen == "rest" {
        heavy = press(&mut rehearsal, Deed::Go);
    }
    assert!(
        heavy.believed.as_ref().is_some_and(|b| b.in_doubt),
        "{heavy:?}"
    );
    assert!(is_told(&heavy, "1.25 kg is on the light bar"), "{heavy:?}");
    press(&mut rehearsal, Deed::Done);

    // And at the second one nobody is told to leave the bar as it is.
    let mut light = tap(&mut rehearsal, &format!("switch to {LIGHT}"));
    if light.screen == "rest" {
        light = press(&mut rehearsal, Deed::Go);
    }
    let known = light.believed.as_ref().expect("a belief");
    let holds = known.left.iter().any(|plate| plate == "1.25 kg");
    assert!(known.in_doubt || !holds, "{light:?}");
}

#[test]
fn whoever_said_that_their_turn_is_now_keeps_the_bar_when_others_come() {
    let folder = tempfile::tempdir().expect("a folder");
    let mut rehearsal = open(folder.path());
    tap(&mut rehearsal, "Hamza");
    press(&mut rehearsal, Deed::Start);
    press(&mut rehearsal, Deed::Done);
    press(&mut rehearsal, Deed::Go);
    let own = press(&mut rehearsal, Deed::Loaded);
    assert_eq!((own.screen, own.load.as_deref()), ("bar", Some("110 kg")));

    tap(&mut rehearsal, "all lifters");
    tap(&mut rehearsal, HEAVY);
    let other = press(&mut rehearsal, Deed::Start);
    assert_eq!(other.screen, "rest", "the bar is taken: {other:?}");
    let back = tap(&mut rehearsal, "switch to Hamza");
    assert_eq!((back.screen, back.load), (own.screen, own.load));
    assert_eq!((back.left, back.right), (own.left, own.right));
    rehearsal.line(&Line::Restart).expect("it starts");
    assert_eq!(rehearsal.face().screen, "bar");

    // First the word about the bar, then "go now" itself: the other is ready, and comes first.
    press(&mut rehearsal, Deed::Undo);
    let rests = press(&mut rehearsal, Deed::Undo);
    assert_eq!(rests.screen, "rest");
    assert!(rests.rest_s.is_some_and(|s| s > 0), "{rests:?}");
    let other = tap(&mut rehearsal, &format!("switch to {HEAVY}"));
    assert_eq!(other.screen, "bar", "{other:?}");
}

#[test]
fn what_is_said_by_hand_of_one_bar_puts_another_in_doubt_where_both_cannot_be() {
    let folder = tempfile::tempdir().expect("a folder");
    let mut rehearsal = open(folder.path());
    climb(&mut rehearsal, HEAVY);
    choose(&mut rehearsal, "go with 137.5");
    press(&mut rehearsal, Deed::Loaded);
    let doubted = |rehearsal: &Rehearsal| {
        let bars = &rehearsal.kiosk().state().bars;
        bars.get("old yard bar").map(|bar| bar.doubted)
    };
    assert_eq!(doubted(&rehearsal), Some(false));
    tap(&mut rehearsal, "all lifters");
    tap(&mut rehearsal, LIGHT);
    press(&mut rehearsal, Deed::Start);
    press(&mut rehearsal, Deed::Holds);
    tap(&mut rehearsal, "+ 1.25");
    tap(&mut rehearsal, "the bar holds this");
    assert_eq!(doubted(&rehearsal), Some(true), "there is one pair of them");
}

#[test]
fn other_plates_of_the_same_load_and_height_stay_on() {
    let folder = tempfile::tempdir().expect("a folder");
    let mut rehearsal = open(folder.path());
    tap(&mut rehearsal, "Tevita");
    let asked = press(&mut rehearsal, Deed::Start);
    assert_eq!(asked.left, Some(vec!["45 lb".to_owned()]), "{asked:?}");

    let says = |rehearsal: &mut Rehearsal, plates: &[&str]| {
        press(rehearsal, Deed::Holds);
        for plate in plates {
            tap(rehearsal, &format!("+ {plate}"));
        }
        tap(rehearsal, "the bar holds this")
    };
    // As heavy and as high: nobody need touch it, and the set is of what hangs there.
    let face = says(&mut rehearsal, &["25", "10", "10"]);
    let there = ["25 lb", "10 lb", "10 lb"].map(str::to_owned);
    assert_eq!(face.left.as_deref(), Some(&there[..]), "{face:?}");
    let moved = face.take_off.iter().chain(&face.put_on);
    let mut moved = moved.flat_map(|both| both.left.iter().chain(&both.right));
    assert_eq!(moved.next(), None, "{face:?}");
    assert_eq!(face.load, asked.load);
    // As heavy with smaller plates, or lighter: that is changed.
    for other in [["35", "5", "5"], ["25", "10", "5"]] {
        let face = says(&mut rehearsal, &other);
        assert_eq!(face.left, asked.left, "{face:?}");
    }
}

#[test]
fn a_bar_that_was_loaded_as_nobody_should_stops_no_turn() {
    let folder = tempfile::tempdir().expect("a folder");
    let mut rehearsal = open(folder.path());
    tap(&mut rehearsal, "Hamza");
    press(&mut rehearsal, Deed::Start);
    tap(&mut rehearsal, "all lifters");
    tap(&mut rehearsal, HEAVY);
    press(&mut rehearsal, Deed::Start);
    tap(&mut rehearsal, "switch to Hamza");
    press(&mut rehearsal, Deed::Holds);
    // A heavier plate outside a lighter one.
    for plate in ["+ 25", "+ 5", "+ 20", "+ 25"] {
        tap(&mut rehearsal, plate);
    }
    tap(&mut rehearsal, "the bar holds this");
    tap(&mut rehearsal, &format!("switch to {HEAVY}"));
    let face = press(&mut rehearsal, Deed::Mine);
    assert_eq!(face.screen, "bar", "{face:?}");
}

#[test]
fn three_bars_in_use_are_all_told_on_the_floor() {
    let folder = tempfile::tempdir().expect("a folder");
    let mut rehearsal = open(folder.path());
    let three = ["Hamza", LIGHT, "Tevita"];
    for who in three {
        if rehearsal.face().screen != "choose" {
            tap(&mut rehearsal, "all lifters");
        }
        tap(&mut rehearsal, who);
        press(&mut rehearsal, Deed::Start);
    }
    tap(&mut rehearsal, "all lifters");
    tap(&mut rehearsal, "floor");
    let view::Screen::Floor(floor) = &rehearsal.frame().screen else {
        panic!("not the floor")
    };
    let told = format!("{floor:?}");
    for who in three {
        assert!(told.contains(who), "{who} is not told: {told}");
    }
}

/// Somebody loads as the screen says and goes; others find the plates there and take them, told by
/// nobody. Once their set is entered, nobody can vouch for the first bar.
#[test]
fn a_bar_whose_ordered_plates_were_lifted_elsewhere_is_in_doubt() {
    let folder = tempfile::tempdir().expect("a folder");
    let mut rehearsal = open(folder.path());
    climb(&mut rehearsal, LIGHT);
    let light = choose(&mut rehearsal, "37.5 kg");
    let orders = |face: &Answer| format!("{:?}", face.put_on).contains("1.25 kg");
    assert!(orders(&light), "there is one pair of them: {light:?}");
    climb(&mut rehearsal, HEAVY);
    let heavy = choose(&mut rehearsal, "go with 137.5");
    assert!(orders(&heavy), "{heavy:?}");
    press(&mut rehearsal, Deed::Done);
    let mut light = tap(&mut rehearsal, &format!("switch to {LIGHT}"));
    if light.screen == "rest" {
        light = press(&mut rehearsal, Deed::Go);
    }
    let known = light.believed.as_ref().expect("a belief");
    assert!(known.in_doubt, "{light:?}");
}
