//! Lifters, racks, bars, plates and mats are taken away and added at the desk; what is still needed
//! stays, and says what needs it.
use crate::bench::{Bench, evening};
use crate::desk::{enter, rows, tap_like, tap_row, title, to_the_gym, type_in};
use domain::{Gym, Length, Mass, MassUnit};
use view::Screen;
use view::list::ListState;

const ENTRY: &str = "take away, ";

fn names(gym: &Gym) -> Vec<&str> {
    gym.lifters.iter().map(|l| l.name.as_str()).collect()
}

/// Why the thing on the screen cannot be taken away.
fn why_not(bench: &Bench) -> String {
    let Screen::List(list) = bench.frame().screen else {
        panic!("no list")
    };
    let row = list.rows.into_iter().find(|row| row.title == "take away");
    let row = row.expect("the row to take it away");
    assert_eq!(row.state, ListState::Told, "{row:?}");
    row.detail
}

#[test]
fn a_lifter_goes_with_programme_and_rules_and_the_record_stays() {
    let folder = tempfile::tempdir().expect("a folder");
    {
        let bench = Bench::start(folder.path(), &evening());
        enter(&bench, "4711");
        bench.tap("lifters");
        tap_like(&bench, "yard rack, Parvati", "");
        for _ in 0..3 {
            if bench.labels().iter().any(|label| label.starts_with(ENTRY)) {
                break;
            }
            bench.tap("more");
        }
        bench.tap("take away, Parvati");
        assert!(
            names(&bench.gym()).contains(&"Parvati"),
            "a tap is not enough"
        );
        bench.hold("take away, Parvati");
        let gym = bench.gym();
        assert!(
            !names(&gym).contains(&"Parvati"),
            "{:?}",
            bench.frame().notice
        );
        assert_eq!(title(&bench), "lifters");
        let programmes = &gym.coaching.programmes;
        assert!(
            programmes
                .iter()
                .all(|p| !p.lifters.contains(&"Parvati".to_owned()))
        );
        let rules = &gym.coaching.rules;
        assert!(
            rules
                .iter()
                .all(|rule| rule.lifter.as_deref() != Some("Parvati"))
        );
        assert!(
            rules
                .iter()
                .any(|rule| rule.lifter.as_deref() == Some("Saoirse"))
        );
    }
    let bench = Bench::start(folder.path(), &evening());
    assert!(!names(&bench.gym()).contains(&"Parvati"), "over a restart");
}

#[test]
fn what_is_still_needed_stays_and_says_so() {
    let folder = tempfile::tempdir().expect("a folder");
    let bench = Bench::start(folder.path(), &evening());
    enter(&bench, "4711");
    to_the_gym(&bench);
    tap_like(&bench, "racks, ", "");
    tap_like(&bench, "", "yard rack");
    assert_eq!(
        why_not(&bench),
        "Hamza lifts there; give them another rack first"
    );
    bench.tap("back");
    bench.tap("back");
    tap_like(&bench, "bars, ", "");
    tap_like(&bench, "", "light bar");
    assert_eq!(
        why_not(&bench),
        "Željka lifts with it; give them another bar first"
    );
    bench.tap("back");
    bench.tap("back");
    tap_like(&bench, "plates, ", "");
    tap_like(&bench, "", "kilo plates");
    tap_like(&bench, "25 kg, ", "");
    assert!(why_not(&bench).starts_with("plates of it were weighed"));
    bench.tap("back");
    tap_like(&bench, "5 kg, ", "");
    bench.hold("take away, this kind");
    assert_eq!(title(&bench), "kilo plates");
    let gym = bench.gym();
    let set = gym
        .plate_sets
        .iter()
        .find(|set| set.name == "kilo plates")
        .expect("the set");
    let five = Mass::of(MassUnit::Kg, 5_000);
    assert!(set.plates.iter().all(|plate| plate.face.mass != five));
}

#[test]
fn a_rack_goes_and_its_bars_serve_every_rack() {
    let folder = tempfile::tempdir().expect("a folder");
    let bench = Bench::start(folder.path(), &evening());
    enter(&bench, "4711");
    // Everybody goes to the other rack first.
    for _ in 0..3 {
        bench.tap("lifters");
        tap_like(&bench, "river rack, ", "");
        bench.tap("rack, river rack");
        bench.tap("back");
        bench.tap("back");
    }
    to_the_gym(&bench);
    tap_like(&bench, "racks, ", "");
    tap_like(&bench, "", "river rack");
    bench.hold("take away, river rack");
    let gym = bench.gym();
    assert_eq!(gym.racks.len(), 1, "{:?}", bench.frame().notice);
    let bar = gym
        .bars
        .iter()
        .find(|bar| bar.name == "old river bar")
        .expect("it stays");
    assert_eq!(bar.rack, None);
    assert_eq!(why_not_only(&bench), "the only rack; add another first");
    let kiosk = std::fs::read_to_string(folder.path().join("kiosk.toml")).expect("settings");
    assert!(!kiosk.contains("river rack"), "{kiosk}");
}

fn why_not_only(bench: &Bench) -> String {
    tap_like(bench, "", "yard rack");
    why_not(bench)
}

#[test]
fn a_mat_and_a_kind_of_plate_come_and_go() {
    let folder = tempfile::tempdir().expect("a folder");
    let bench = Bench::start(folder.path(), &evening());
    enter(&bench, "4711");
    to_the_gym(&bench);
    tap_like(&bench, "racks, ", "");
    tap_like(&bench, "", "yard rack");
    bench.tap("mats, 2 mats, 20 + 10 mm");
    bench.tap("add, new mat");
    type_in(&bench, "15");
    bench.tap("save");
    let mats = |bench: &Bench| bench.gym().racks[1].mats.clone();
    assert_eq!(mats(&bench), [20, 10, 15].map(Length::mm));
    bench.hold("take away, 10 mm");
    assert_eq!(mats(&bench), [20, 15].map(Length::mm));
    for _ in 0..3 {
        bench.tap("back");
    }
    tap_like(&bench, "plates, ", "");
    tap_like(&bench, "", "kilo plates");
    tap_row(&bench, "add, new kind");
    for (row, typed) in [
        ("mass, not yet", "0.25"),
        ("thickness, not yet", "6"),
        ("diameter, not yet", "110"),
    ] {
        bench.tap(row);
        type_in(&bench, typed);
        bench.tap("save");
    }
    bench.tap("save");
    let gym = bench.gym();
    let set = gym
        .plate_sets
        .iter()
        .find(|set| set.name == "kilo plates")
        .expect("the set");
    let new = set.plates.last().expect("kinds");
    assert_eq!(new.face.mass, Mass::of(MassUnit::Kg, 250));
    assert_eq!(
        (new.face.thickness, new.face.diameter),
        (Length::mm(6), Length::mm(110))
    );
    let text = std::fs::read_to_string(folder.path().join("gym.toml")).expect("the file");
    assert!(text.contains("# Weighed once"), "its comments stay");
    // The same kind twice is refused, and what was typed stays.
    tap_row(&bench, "add, new kind");
    for (row, typed) in [
        ("mass, not yet", "20"),
        ("thickness, not yet", "48"),
        ("diameter, not yet", "450"),
    ] {
        bench.tap(row);
        type_in(&bench, typed);
        bench.tap("save");
    }
    bench.tap("save");
    assert!(
        bench.frame().notice.contains("a second time"),
        "{:?}",
        bench.frame().notice
    );
    assert!(rows(&bench).iter().any(|row| row.1 == "20 kg"));
    assert_eq!(bench.gym(), gym);
}
