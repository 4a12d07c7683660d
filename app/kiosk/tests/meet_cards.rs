//! A flight on the kiosk with its cards: attempts judged, weights declared, lots typed, all of it
//! there after a power cut.
use chrono::NaiveDate;
use kiosk::clock::BenchClock;
use kiosk::{Folder, Kiosk};
use std::fs;
use std::path::Path;
use view::list::ListRow;
use view::meet_day::MeetPage;
use view::{Screen, Tap};

/// Two of ours with the same opener, two others before them and one after.
const MEET: &str = r#"name = "Harbour test day"
date = "2026-12-02"
[[flight]]
lift = "deadlift"
start = "18:40"
[[flight.other]]
name = "A. Visitor"
opener = "110 kg"
lot = 1
[[flight.other]]
name = "B. Visitor"
opener = "125 kg"
lot = 2
[[flight.other]]
name = "C. Visitor"
opener = "210 kg"
lot = 3
[[flight.lifter]]
name = "Marisol"
opener = "120 kg"
lot = 9
[[flight.lifter]]
name = "Hamza"
opener = "200 kg"
lot = 4
"#;

fn clock() -> BenchClock {
    let at = NaiveDate::from_ymd_opt(2026, 12, 2).and_then(|day| day.and_hms_opt(18, 30, 0));
    BenchClock::at(at.expect("an evening"))
}

fn open(data: &Path, clock: &BenchClock) -> Kiosk {
    let folder = Folder::open(Some(data)).expect("a folder");
    Kiosk::open(&folder, Box::new(clock.clone())).expect("opens")
}

fn row(kiosk: &mut Kiosk, title: &str) {
    let all = rows(kiosk);
    let at = all
        .iter()
        .position(|row| row.title == title || row.value == title);
    let at = at.unwrap_or_else(|| panic!("{title}: {all:?}"));
    kiosk.tap(&Tap::Row(at));
}

fn rows(kiosk: &mut Kiosk) -> Vec<ListRow> {
    let screen = kiosk.frame().screen;
    let Screen::List(list) = screen else {
        panic!("a list is shown, not {screen:?}")
    };
    list.rows
}

fn page(kiosk: &mut Kiosk) -> MeetPage {
    let screen = kiosk.frame().screen;
    let Screen::Meet(page) = screen else {
        panic!("the meet is shown, not {screen:?}")
    };
    page
}

fn begin(kiosk: &mut Kiosk) {
    kiosk.tap(&Tap::Panel);
    row(kiosk, "meet day");
    kiosk.tap(&Tap::Main);
}

/// The attempt of a lifter as the page has it.
fn attempt(kiosk: &mut Kiosk, who: &str) -> (usize, String, String) {
    let page = page(kiosk);
    let mut calls = page.calls.iter().enumerate();
    let found = calls.find(|(_, call)| call.lifter == who && !call.set.contains('×'));
    let (at, call) = found.unwrap_or_else(|| panic!("{who}: {page:?}"));
    (
        at,
        format!("{} {}", call.load, call.set),
        call.after.clone(),
    )
}

fn typed(kiosk: &mut Kiosk, digits: &str) {
    for digit in digits.chars() {
        let digit = digit
            .to_digit(10)
            .and_then(|digit| u8::try_from(digit).ok());
        kiosk.tap(&Tap::Number(digit.expect("a digit")));
    }
    kiosk.tap(&Tap::Main);
}

#[test]
fn attempts_are_judged_by_one_tap_and_the_next_declared() {
    let data = tempfile::tempdir().expect("a folder");
    fs::write(data.path().join("meet.toml"), MEET).expect("written");
    let clock = clock();
    let mut kiosk = open(data.path(), &clock);
    begin(&mut kiosk);
    assert!(!page(&mut kiosk).judges);
    // A. Visitor, then Marisol's opener.
    clock.advance_ms(60_000);
    kiosk.tap(&Tap::Main);
    let loaded = page(&mut kiosk);
    assert_eq!(
        (loaded.main.as_str(), loaded.main_detail.as_str()),
        ("good lift", "120 kg, opener, Marisol")
    );
    assert_eq!((loaded.sooner.as_str(), loaded.judges), ("no lift", true));
    assert_eq!(loaded.hint, "deadlift: 1 of 5 attempts over, 60 s each");
    clock.advance_ms(60_000);
    kiosk.tap(&Tap::Main);
    // The second one is 125 kg as attempts usually rise; nobody declared it.
    let (at, told, _) = attempt(&mut kiosk, "Marisol");
    assert_eq!(told, "125 kg, second");
    kiosk.tap(&Tap::Row(at));
    let all = rows(&mut kiosk);
    assert_eq!(
        (all[0].title.as_str(), all[0].value.as_str()),
        ("so far", "120 good")
    );
    let offers: Vec<&str> = all
        .iter()
        .filter(|row| row.title == "second attempt")
        .map(|row| row.value.as_str())
        .collect();
    assert_eq!(offers, ["122.5 kg", "125 kg", "130 kg"]);
    // Her best is 130 kg.
    assert!(
        all[1]
            .detail
            .starts_with("94 % of the best, 130 kg; about "),
        "{all:?}"
    );
    row(&mut kiosk, "130 kg");
    // It stands: the second attempt is not changed.
    let all = rows(&mut kiosk);
    assert!(
        all.iter()
            .filter(|row| row.title == "second attempt")
            .count()
            == 1,
        "{all:?}"
    );
    kiosk.tap(&Tap::Undo);
    assert_eq!(attempt(&mut kiosk, "Marisol").1, "130 kg, second");
    // A power cut.
    drop(kiosk);
    let mut kiosk = open(data.path(), &clock);
    kiosk.tap(&Tap::Panel);
    row(&mut kiosk, "meet day");
    assert_eq!(attempt(&mut kiosk, "Marisol").1, "130 kg, second");
    kiosk.tap(&Tap::Undo);
    assert_eq!(
        attempt(&mut kiosk, "Marisol").1,
        "125 kg, second",
        "taken back"
    );
    kiosk.tap(&Tap::Undo);
    assert_eq!(page(&mut kiosk).main, "good lift");
    kiosk.tap(&Tap::Sooner);
    assert_eq!(
        attempt(&mut kiosk, "Marisol").1,
        "120 kg, second",
        "the same again"
    );
}

/// Before the flight an opener is changed and its place with it; lots of 0 are refused, the same lot
/// is told, and a bar never goes down.
#[test]
fn openers_and_lots_move_the_order_and_nonsense_moves_nothing() {
    let data = tempfile::tempdir().expect("a folder");
    fs::write(data.path().join("meet.toml"), MEET).expect("written");
    let clock = clock();
    let mut kiosk = open(data.path(), &clock);
    kiosk.tap(&Tap::Panel);
    row(&mut kiosk, "declarations");
    row(&mut kiosk, "lot");
    typed(&mut kiosk, "0");
    let Screen::Typing(pad) = kiosk.frame().screen else {
        panic!("still typing");
    };
    assert!(pad.wrong && pad.typed == "0", "{pad:?}");
    kiosk.tap(&Tap::Undo);
    row(&mut kiosk, "lot");
    typed(&mut kiosk, "4");
    let lot = rows(&mut kiosk)
        .into_iter()
        .find(|row| row.title == "lot")
        .expect("a lot");
    assert_eq!(
        (lot.value.as_str(), lot.detail.as_str()),
        ("4", "Hamza has the same: ask the table")
    );
    // 200 kg, as Hamza has: before him by the list, since the lots are alike.
    row(&mut kiosk, "another weight");
    typed(&mut kiosk, "200");
    // One change is all before the flight, and three minutes before it none.
    let Screen::List(list) = kiosk.frame().screen else {
        panic!("her card");
    };
    assert!(
        list.rows.iter().any(|row| row.value == "200 kg"),
        "{list:?}"
    );
    assert_eq!(
        list.hint,
        "changes that the table takes: 1; ask the referee"
    );
    assert_eq!(list.main, "Hamza");
    kiosk.tap(&Tap::Main);
    clock.advance_ms(8 * 60_000);
    let Screen::List(list) = kiosk.frame().screen else {
        panic!("his card");
    };
    assert_eq!(list.title, "Hamza, deadlift");
    assert_eq!(
        list.hint,
        "openers stand from 3:00 before the flight; ask the referee"
    );
    // A and B lift before her now.
    kiosk.tap(&Tap::Undo);
    for _ in 0..3 {
        kiosk.tap(&Tap::Main);
    }
    assert_eq!(page(&mut kiosk).main_detail, "200 kg, opener, Marisol");
    kiosk.tap(&Tap::Main);
    assert_eq!(page(&mut kiosk).main_detail, "200 kg, opener, Hamza");
}

/// One of ours alone: the same weight again after no lift is another face, so that a finger that taps
/// twice judges once; three times no lift is told.
#[test]
fn alone_in_a_flight_each_attempt_is_another_face() {
    let data = tempfile::tempdir().expect("a folder");
    let alone = MEET.split("[[flight.other]]").next().expect("the head");
    let alone =
        format!("{alone}others = 0\n[[flight.lifter]]\nname = \"Hamza\"\nopener = \"200 kg\"\n");
    fs::write(data.path().join("meet.toml"), alone).expect("written");
    let clock = clock();
    let mut kiosk = open(data.path(), &clock);
    begin(&mut kiosk);
    let mut seen = Vec::new();
    for _ in 0..3 {
        seen.push(page(&mut kiosk).main_detail);
        clock.advance_ms(70_000);
        kiosk.tap(&Tap::Sooner);
    }
    let told = [
        "200 kg, opener, Hamza",
        "200 kg, second, Hamza",
        "200 kg, third, Hamza",
    ];
    assert_eq!(seen, told);
    let over = page(&mut kiosk);
    assert_eq!((over.main.as_str(), over.judges), ("", false));
    assert!(
        over.empty.ends_with("Hamza has no good lift"),
        "{}",
        over.empty
    );
}

/// Until the flight begins by the clock, warm-ups are counted back from it.
#[test]
fn the_clock_of_the_flight_counts_back() {
    let data = tempfile::tempdir().expect("a folder");
    fs::write(data.path().join("meet.toml"), MEET).expect("written");
    let clock = clock();
    let mut kiosk = open(data.path(), &clock);
    kiosk.tap(&Tap::Panel);
    row(&mut kiosk, "meet day");
    // Ten minutes to the flight: the first warm-ups are due.
    assert!(page(&mut kiosk).calls[0].due);
    drop(kiosk);
    // Forty minutes: nothing yet, until somebody taps that it begins all the same.
    let early = MEET.replace("18:40", "19:10");
    fs::write(data.path().join("meet.toml"), early).expect("written");
    let mut kiosk = open(data.path(), &clock);
    kiosk.tap(&Tap::Panel);
    row(&mut kiosk, "meet day");
    let waits = page(&mut kiosk);
    assert!(waits.calls.iter().all(|call| !call.due), "{waits:?}");
    kiosk.tap(&Tap::Main);
    assert!(page(&mut kiosk).calls[0].due);
}
