//! A disk that is full or cannot be written: entries are refused plainly, nothing is half done, what
//! stands is shown, and it goes on by itself when there is room.
use disk::{Disk, Fault};
use kiosk::clock::BenchClock;
use kiosk::{Folder, Kiosk};
use std::fs;
use std::path::Path;
use view::{Screen, Tap};

fn open(data: &Path) -> Kiosk {
    let day = chrono::NaiveDate::from_ymd_opt(2026, 12, 2).expect("a day");
    let clock = BenchClock::at(day.and_hms_opt(18, 0, 0).expect("a time"));
    let folder = Folder::open(Some(data)).expect("a folder");
    Kiosk::open(&folder, Box::new(clock)).expect("it opens")
}

/// Taps of a beginning, at most.
const TAPS_MAX: usize = 20;

/// Chooses the first lifter of the day and sets up, until the lift is begun or something is told.
#[allow(
    clippy::wildcard_enum_match_arm,
    reason = "every other face has one main button"
)]
fn begin(kiosk: &mut Kiosk) -> String {
    let lifts = kiosk.state().lifts.len();
    for _ in 0..TAPS_MAX {
        let frame = kiosk.frame();
        let tap = if let Screen::Choose(choose) = &frame.screen {
            let tile = choose.tiles.first().expect("somebody trains");
            Tap::Lifter(tile.lifter.clone())
        } else if matches!(&frame.screen, Screen::SetUp(set_up) if set_up.main.is_empty()) {
            Tap::All
        } else {
            Tap::Main
        };
        let notice = kiosk.tap(&tap).notice;
        if kiosk.state().lifts.len() > lifts || !notice.is_empty() {
            return notice;
        }
    }
    panic!("nothing was begun, and nothing told");
}

#[test]
fn an_entry_on_a_full_disk_is_refused_and_the_next_one_is_taken() {
    for (fault, words) in [
        (Fault::Full(1_000_000), "full"),
        (Fault::ReadOnly(1_000_000), "cannot be written"),
    ] {
        let disk = Disk::take();
        let data = tempfile::tempdir().expect("a folder");
        let mut kiosk = open(data.path());
        let (seq, stood) = (kiosk.seq(), kiosk.state().clone());
        disk.begin(&[(1, fault)]);
        let told = begin(&mut kiosk);
        assert!(told.contains(words), "{told}");
        assert_eq!((kiosk.seq(), kiosk.state()), (seq, &stood));
        assert!(!kiosk.day().is_empty(), "the day is still shown");
        disk.begin(&[]);
        let told = begin(&mut kiosk);
        assert!(kiosk.seq() > seq, "{told}");
        journal::verify(&data.path().join("journal.sqlite")).expect("sound");
    }
}

#[test]
fn a_start_on_a_disk_that_takes_nothing_shows_what_stands_and_goes_on_later() {
    // The faults of the other test are those of the whole process.
    let disk = Disk::take();
    disk.begin(&[]);
    let data = tempfile::tempdir().expect("a folder");
    let before = {
        let mut kiosk = open(data.path());
        begin(&mut kiosk);
        assert_eq!(kiosk.state().lifts.len(), 1);
        kiosk.state().clone()
    };
    // SQLite cannot make the table of its log, as on a full disk; to whoever is root, permissions
    // would say nothing.
    let table = data.path().join("journal.sqlite-shm");
    drop(fs::remove_file(&table));
    std::os::unix::fs::symlink("nowhere", &table).expect("in its place");
    let mut kiosk = open(data.path());
    assert_eq!(*kiosk.state(), before);
    assert!(!kiosk.day().is_empty());
    let seq = kiosk.seq();
    kiosk.tick();
    assert!(!kiosk.frame().notice.is_empty(), "it is told");
    kiosk.tap(&Tap::Undo);
    kiosk.tap(&Tap::Main);
    assert_eq!((kiosk.seq(), kiosk.state()), (seq, &before));
    fs::remove_file(&table).expect("room again");
    for _ in 0..40 {
        kiosk.tick();
    }
    assert_eq!(kiosk.frame().notice, "");
    let said = kiosk.tap(&Tap::Undo).notice;
    assert!(kiosk.seq() > seq, "it goes on by itself: {said}");
    journal::verify(&data.path().join("journal.sqlite")).expect("sound");
}
