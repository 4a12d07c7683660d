//! A start from the kept state: it is kept when nobody waits, the face is the same with it and
//! without, and damage in what such a start does not read is told all the same.
#[path = "evening/mod.rs"]
mod evening;

use evening::lift_until;
use kiosk::clock::BenchClock;
use kiosk::{Folder, Kiosk};
use std::fs;
use std::path::Path;
use view::Tap;

/// Ticks until the journal has rested.
const IDLE_TICKS: usize = 25;

fn open(data: &Path) -> Kiosk {
    let day = chrono::NaiveDate::from_ymd_opt(2026, 12, 2).expect("a day");
    let clock = BenchClock::at(day.and_hms_opt(18, 0, 0).expect("a time"));
    let folder = Folder::open(Some(data)).expect("a folder");
    Kiosk::open(&folder, Box::new(clock)).expect("it opens")
}

#[test]
fn the_kept_state_gives_the_same_face_and_hides_no_damage() {
    let data = tempfile::tempdir().expect("a folder");
    let mut kiosk = open(data.path());
    lift_until(&mut kiosk, 300);
    assert!(!data.path().join("journal.state").exists(), "nobody waits");
    for _ in 0..IDLE_TICKS {
        kiosk.tick();
    }
    assert!(data.path().join("journal.state").exists(), "kept when idle");
    lift_until(&mut kiosk, 320);
    drop(kiosk);

    let mut believed = open(data.path());
    assert!(believed.believed());
    let (frame, state) = (believed.frame(), believed.state().clone());
    drop(believed);
    let kept = fs::read(data.path().join("journal.state")).expect("reads");
    fs::remove_file(data.path().join("journal.state")).expect("removes");
    let mut replayed = open(data.path());
    assert!(!replayed.believed() && *replayed.state() == state);
    assert_eq!(replayed.frame(), frame, "the same face");
    drop(replayed);

    // A letter of an old event is another one: the kept state still fits the end of the chain.
    fs::write(data.path().join("journal.state"), kept).expect("writes");
    let journal = data.path().join("journal.sqlite");
    let mut bytes = fs::read(&journal).expect("reads");
    let old = b"yard rack";
    let at = bytes.windows(old.len()).position(|here| here == old);
    bytes[at.expect("the demo gym's rack")] = b'Y';
    fs::write(&journal, bytes).expect("writes");
    let mut kiosk = open(data.path());
    assert!(kiosk.believed());
    let found = journal::verify(&journal).expect_err("not sound");
    let told = found.to_string();
    kiosk.tell_unsound(found.into());
    let notice = kiosk.frame().notice;
    assert!(
        told.contains("event ") && notice.contains("event "),
        "{told}: {notice}"
    );
    assert_eq!(kiosk.tap(&Tap::All).notice, notice, "until it is mended");
}
