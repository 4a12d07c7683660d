//! The nightly copy by its clock: once a night, after three, so many kept, caught up with, told
//! once when its place is not there.
use chrono::{NaiveDate, NaiveDateTime, TimeDelta};
use journal::Journal;
use kiosk::nightly::{Nightly, Nights};
use share::Night;
use std::fs;
use std::os::unix::fs::PermissionsExt as _;
use std::path::{Path, PathBuf};
use tempfile::TempDir;

/// A data folder with a journal, a second place, and the nights between them.
struct House {
    data: TempDir,
    place: TempDir,
    nights: Nights,
}

fn nights(data: &Path, place: &Path, keep: usize) -> Nights {
    Nights::new(Nightly {
        folder: data.to_owned(),
        place: place.to_owned(),
        keep,
    })
}

impl House {
    fn new(keep: usize) -> Self {
        let (data, place) = (
            tempfile::tempdir().expect("a folder"),
            tempfile::tempdir().expect("one"),
        );
        drop(Journal::open(&data.path().join("journal.sqlite")).expect("opens"));
        let nights = nights(data.path(), place.path(), keep);
        Self {
            data,
            place,
            nights,
        }
    }

    fn look(&mut self, now: &str) -> Option<Night> {
        self.nights.look(at(now))
    }

    fn copies(&self) -> Vec<String> {
        names(self.place.path())
    }
}

fn at(text: &str) -> NaiveDateTime {
    NaiveDateTime::parse_from_str(text, "%Y-%m-%d %H:%M").expect("a time")
}

fn names(place: &Path) -> Vec<String> {
    let name = |path: PathBuf| {
        path.file_name()
            .expect("a name")
            .to_string_lossy()
            .into_owned()
    };
    let mut names: Vec<String> = journal::copies(place)
        .expect("reads")
        .into_iter()
        .map(name)
        .collect();
    names.sort();
    names
}

fn copy_of(day: &str) -> String {
    format!("pinladder-{day}.sqlite")
}

#[test]
fn a_night_has_one_copy_after_three() {
    let mut house = House::new(3);
    // The last night that was over.
    let night = house.look("2026-11-25 02:59").expect("the night before");
    assert_eq!((night.day.as_str(), night.went), ("2026-11-24", Ok(0)));
    let mut now = at("2026-11-25 03:00");
    let mut made = Vec::new();
    while now < at("2026-11-26 03:00") {
        made.extend(house.nights.look(now));
        now += TimeDelta::minutes(1);
    }
    assert_eq!(made.len(), 1, "once in all the looks of a day");
    assert_eq!(
        house.copies(),
        [copy_of("2026-11-24"), copy_of("2026-11-25")]
    );
    journal::verify(&house.place.path().join(copy_of("2026-11-25"))).expect("proven");
}

#[test]
fn the_number_is_kept_and_what_others_put_there_stays() {
    let mut house = House::new(3);
    fs::write(house.place.path().join("notes.txt"), "ours").expect("writes");
    let first = NaiveDate::from_ymd_opt(2026, 11, 1).expect("a day");
    for day in first.iter_days().take(10) {
        house
            .nights
            .look(day.and_hms_opt(3, 5, 0).expect("a time"))
            .expect("one a night");
        assert!(house.copies().len() <= 3);
    }
    let kept = ["2026-11-08", "2026-11-09", "2026-11-10"].map(copy_of);
    assert_eq!(house.copies(), kept);
    assert!(house.place.path().join("notes.txt").exists());
}

/// Off from the 24th to the 27th at noon: the last night is caught up with as soon as it is on.
/// Nights between have nothing of their own to keep.
#[test]
fn a_night_that_was_slept_through_is_caught_up_with() {
    let mut house = House::new(5);
    house.look("2026-11-24 03:00").expect("a copy");
    let late = house.look("2026-11-27 12:07").expect("caught up");
    assert_eq!(late.day, "2026-11-27");
    // Only ever on between midnight and three.
    let mut short = House::new(5);
    for day in ["2026-11-25", "2026-11-26"] {
        let night = short
            .look(&format!("{day} 00:30"))
            .expect("the night before");
        assert!(night.day.as_str() < day);
        assert_eq!(short.look(&format!("{day} 02:00")), None);
    }
}

#[test]
fn a_clock_that_jumps_makes_no_more_than_one_a_night() {
    let mut house = House::new(3);
    for day in ["2026-11-23", "2026-11-24", "2026-11-25"] {
        house.look(&format!("{day} 03:00")).expect("a copy");
    }
    // Back over three o'clock, by an hour and by a day: these nights have theirs.
    for now in ["2026-11-25 02:10", "2026-11-25 03:10", "2026-11-24 12:00"] {
        assert_eq!(house.look(now), None, "{now}");
    }
    // A clock without battery, for a night; then the time is set.
    house.look("1970-01-01 04:00").expect("its night has none");
    assert_eq!(house.copies().len(), 3, "still no more than are kept");
    assert!(
        house.copies().contains(&copy_of("2026-11-25")),
        "the latest stays"
    );
    assert_eq!(house.look("2026-11-25 04:00"), None);
    // Years ahead, and back: the latest true one is kept beside the false one.
    house.look("2099-01-01 04:00").expect("its night has none");
    let night = house.look("2026-11-26 04:00").expect("the next true night");
    assert_eq!(night.went, Ok(0));
    assert!(house.copies().contains(&copy_of("2026-11-26")));
    assert_eq!(house.copies().len(), 3);
    // A clock at the edge of what there is gives no copy, and no panic.
    assert_eq!(house.nights.look(NaiveDateTime::MIN), None);
}

/// Looks once a minute for two hours from `now` and gives what was told.
fn watched(nights: &mut Nights, now: &str) -> Vec<Night> {
    let looks = (0..120).map(|minute| at(now) + TimeDelta::minutes(minute));
    looks.filter_map(|now| nights.look(now)).collect()
}

#[test]
fn a_place_that_is_not_there_is_told_once_tried_again_and_never_made() {
    let house = House::new(3);
    let place = house.place.path().join("not-plugged-in");
    let mut nights = nights(house.data.path(), &place, 3);
    let told = watched(&mut nights, "2026-11-25 03:00");
    assert_eq!(told.len(), 1, "{told:?}");
    let why = told[0].went.as_ref().expect_err("no place");
    let why = why.to(view::Language::English);
    assert!(
        why.contains("not-plugged-in") && why.contains("check that the place is there"),
        "{why}"
    );
    assert!(!place.exists(), "a folder of this disk is no second place");
    // Plugged in: within a quarter of an hour.
    fs::create_dir(&place).expect("made");
    let mut looks = 0;
    let night = (0..).find_map(|minute| {
        looks += 1;
        nights.look(at("2026-11-25 05:00") + TimeDelta::minutes(minute))
    });
    assert_eq!(night.expect("a copy").went, Ok(0));
    assert!(looks <= 15, "{looks} minutes");
    assert_eq!(names(&place), [copy_of("2026-11-25")]);
}

#[test]
fn a_clock_that_jumps_does_not_hurry_the_next_try() {
    let house = House::new(3);
    let place = house.place.path().join("away");
    let mut nights = nights(house.data.path(), &place, 3);
    nights.look(at("2026-11-25 03:00")).expect("told");
    fs::create_dir(&place).expect("made");
    for hours in 1..15 {
        let now = at("2026-11-25 03:00") + TimeDelta::hours(hours);
        assert_eq!(nights.look(now), None, "look {hours}");
    }
    assert!(nights.look(at("2026-11-25 18:00")).is_some());
}

/// Root may write anywhere, so a file in the place of the folder stands for a disk that takes
/// nothing; for others the folder is closed as well.
#[test]
fn a_place_that_takes_nothing_is_told_and_older_copies_stay() {
    let mut house = House::new(3);
    house.look("2026-11-24 03:00").expect("a copy");
    let closed = house.place.path().join("closed");
    fs::write(&closed, "no folder").expect("writes");
    let mut shut = nights(house.data.path(), &closed, 3);
    let told = watched(&mut shut, "2026-11-25 03:00");
    assert!(told.len() == 1 && told[0].went.is_err(), "{told:?}");
    let locked = house.place.path().join("locked");
    fs::create_dir(&locked).expect("made");
    fs::set_permissions(&locked, fs::Permissions::from_mode(0o500)).expect("set");
    if fs::write(locked.join("try"), "x").is_err() {
        let mut shut = nights(house.data.path(), &locked, 3);
        let told = watched(&mut shut, "2026-11-25 03:00");
        assert!(told.len() == 1 && told[0].went.is_err(), "{told:?}");
    }
    assert_eq!(house.copies(), [copy_of("2026-11-24")]);
    // No journal: told too, and nothing half is left in the place.
    fs::remove_file(house.data.path().join("journal.sqlite")).expect("gone");
    let night = house.look("2026-11-25 03:00").expect("told");
    assert!(night.went.is_err());
    assert_eq!(house.copies(), [copy_of("2026-11-24")]);
    let left = fs::read_dir(house.place.path()).expect("reads").flatten();
    let parts = left.filter(|entry| entry.file_name().to_string_lossy().contains("part"));
    assert_eq!(parts.count(), 0);
}
