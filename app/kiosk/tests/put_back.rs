//! A copy of the journal put back into a running kiosk: taps are answered while it is proven, and
//! what they entered lies in the journal that is kept beside it.
use kiosk::clock::BenchClock;
use kiosk::kiosk::{Proven, make_record};
use kiosk::{Folder, Kiosk};
use std::path::Path;
use view::{Screen, Tap};

fn open(data: &Path, clock: &BenchClock) -> (Folder, Kiosk) {
    let folder = Folder::open(Some(data)).expect("a folder");
    let kiosk = Kiosk::open(&folder, Box::new(clock.clone())).expect("it opens");
    (folder, kiosk)
}

fn evening() -> BenchClock {
    let day = chrono::NaiveDate::from_ymd_opt(2026, 12, 2).expect("a day");
    BenchClock::at(day.and_hms_opt(18, 0, 0).expect("a time"))
}

/// The first lifter who has a lift begins it.
fn begin(kiosk: &mut Kiosk) {
    let Screen::Choose(choose) = kiosk.tap(&Tap::All).screen else {
        panic!("all lifters")
    };
    let tile = choose.tiles.into_iter().find(|tile| !tile.work.is_empty());
    kiosk.tap(&Tap::Lifter(tile.expect("somebody lifts").lifter));
    kiosk.tap(&Tap::Main);
}

#[test]
fn taps_are_answered_while_a_copy_is_proven() {
    let (data, place) = (
        tempfile::tempdir().expect("one"),
        tempfile::tempdir().expect("two"),
    );
    let clock = evening();
    let (folder, mut kiosk) = open(data.path(), &clock);
    begin(&mut kiosk);
    let stood = kiosk.state().clone();
    let copy = journal::backup(data.path(), place.path(), "2026-12-02T180000", 3).expect("a copy");
    let (file, beside) = (copy.path, folder.clone());
    let proving = std::thread::spawn(move || Proven::of(&file, &beside));
    // The set is entered while the copy is being proven, and is on the screen and on disk.
    let before = kiosk.seq();
    kiosk.tap(&Tap::Main);
    assert!(kiosk.seq() > before && *kiosk.state() != stood);
    let proven = proving.join().expect("it ends").expect("a sound copy");
    let after = kiosk.seq();
    let events = kiosk.put_back(&folder, proven).expect("it is put back");
    assert_eq!(events, copy.report.events);
    assert_eq!(*kiosk.state(), stood, "what the copy holds");
    make_record(&folder);
    kiosk.follow_anew(&folder);
    assert!(kiosk.seq() >= events);
    // The kiosk goes on, and what it keeps from now on is there after a restart.
    kiosk.tap(&Tap::Main);
    let now = kiosk.state().clone();
    drop(kiosk);
    let (_, again) = open(data.path(), &clock);
    assert_eq!(*again.state(), now);
    let kept = std::fs::read_dir(data.path()).expect("lists").flatten();
    let aside = kept
        .map(|entry| entry.path())
        .find(|path| path.to_string_lossy().contains("journal-before-"))
        .expect("the journal before");
    assert_eq!(journal::verify(&aside).expect("sound").events, after);
}

#[test]
fn a_copy_that_is_broken_changes_nothing() {
    let (data, place) = (
        tempfile::tempdir().expect("one"),
        tempfile::tempdir().expect("two"),
    );
    let clock = evening();
    let (folder, mut kiosk) = open(data.path(), &clock);
    begin(&mut kiosk);
    let bad = place.path().join("pinladder-2026-12-02T180000.sqlite");
    std::fs::write(&bad, b"no database at all").expect("written");
    assert!(Proven::of(&bad, &folder).is_err());
    let stood = kiosk.state().clone();
    kiosk.tick();
    assert_eq!(*kiosk.state(), stood);
    let left = std::fs::read_dir(data.path()).expect("lists").flatten();
    let parts = left.filter(|entry| entry.file_name().to_string_lossy().starts_with(".restore"));
    assert_eq!(parts.count(), 0, "nothing is left over");
}
