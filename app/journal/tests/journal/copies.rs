//! Copies in a second place, and the way back from them.
use crate::strategies;
use domain::state::State;
use domain::{Event, Fact, Moment};
use journal::{BackupError, JOURNAL_FILE, Journal, JournalError, backup, copies, restore, verify};
use proptest::collection::vec;
use proptest::prelude::*;
use std::fs;
use std::path::{Path, PathBuf};
use tempfile::TempDir;

fn taken(n: usize) -> Event {
    Event {
        at: Moment(i64::try_from(n).expect("few")),
        fact: Fact::FileTaken {
            name: "gym.toml".to_owned(),
            text: format!("# {n}"),
        },
    }
}

struct Gym {
    folder: TempDir,
    place: TempDir,
}

impl Gym {
    fn with(events: usize) -> (Self, Journal) {
        let gym = Self {
            folder: tempfile::tempdir().expect("a folder"),
            place: tempfile::tempdir().expect("a folder"),
        };
        let mut journal = Journal::open(&gym.journal()).expect("opens");
        let events: Vec<_> = (0..events).map(taken).collect();
        journal.append(0, &events).expect("appends");
        (gym, journal)
    }

    fn journal(&self) -> PathBuf {
        self.folder.path().join(JOURNAL_FILE)
    }

    fn back_up(&self, stamp: &str) -> PathBuf {
        backup(self.folder.path(), self.place.path(), stamp, 3)
            .expect("copies")
            .path
    }

    fn restore(&self, file: &Path) -> Result<journal::Restored, BackupError> {
        restore(file, self.folder.path(), ("2026-12-01", &[]), |_, _| {})
    }
}

#[test]
fn a_copy_is_made_while_the_kiosk_appends_and_is_one_file() {
    let (gym, mut journal) = Gym::with(50);
    let copied = backup(gym.folder.path(), gym.place.path(), "2026-12-01", 3).expect("copies");
    journal.append(50, &[taken(50)]).expect("appends on");
    assert_eq!(copied.report.events, 50);
    assert_eq!(
        copied.path,
        gym.place.path().join("pinladder-2026-12-01.sqlite")
    );
    let names: Vec<_> = fs::read_dir(gym.place.path()).expect("reads").collect();
    assert_eq!(names.len(), 1, "nothing beside it");
    assert_eq!(verify(&copied.path).expect("sound"), copied.report);
}

#[test]
fn so_many_are_kept_and_nothing_else_is_touched() {
    let (gym, _journal) = Gym::with(2);
    let other = gym.place.path().join("pinladder-notes.sqlite");
    fs::write(&other, "mine").expect("writes");
    for day in 1..=5 {
        gym.back_up(&format!("2026-12-0{day}"));
    }
    let kept = copies(gym.place.path()).expect("reads");
    let names: Vec<_> = kept
        .iter()
        .map(|path| path.file_name().expect("a name"))
        .collect();
    assert_eq!(
        names,
        [
            "pinladder-2026-12-03.sqlite",
            "pinladder-2026-12-04.sqlite",
            "pinladder-2026-12-05.sqlite"
        ]
    );
    assert_eq!(fs::read(&other).expect("is there"), b"mine");
    // A copy of the same name is replaced, and a clock that went back deletes not what it made.
    gym.back_up("2026-12-05");
    let old = gym.back_up("2020-01-01");
    assert!(old.exists());
}

#[test]
fn a_damaged_journal_gives_no_copy_and_takes_none_away() {
    let (gym, journal) = Gym::with(200);
    gym.back_up("2026-12-01");
    drop(journal);
    let mut bytes = fs::read(gym.journal()).expect("reads");
    let middle = bytes.len() / 2;
    bytes[middle..middle + 64].fill(0x5a);
    fs::write(gym.journal(), bytes).expect("writes");
    let failed = backup(gym.folder.path(), gym.place.path(), "2026-12-02", 1);
    assert!(failed.is_err(), "{failed:?}");
    assert_eq!(copies(gym.place.path()).expect("reads").len(), 1);
    let same = backup(gym.folder.path(), gym.folder.path(), "2026-12-02", 1);
    assert!(matches!(same, Err(BackupError::SamePlace { .. })));
}

#[test]
fn a_copy_comes_back_and_what_stood_is_kept() {
    let (gym, mut journal) = Gym::with(10);
    let copy = gym.back_up("2026-12-01");
    journal
        .append(10, &[taken(10), taken(11)])
        .expect("appends");
    let before = verify(&gym.journal()).expect("sound");
    // In use: nothing changes.
    let busy = gym.restore(&copy);
    assert!(matches!(busy, Err(BackupError::InUse { .. })), "{busy:?}");
    assert_eq!(verify(&gym.journal()).expect("sound"), before);
    drop(journal);
    let restored = gym.restore(&copy).expect("restores");
    assert_eq!(restored.report.events, 10);
    assert_eq!(verify(&gym.journal()).expect("sound"), restored.report);
    let aside = restored.aside.expect("kept");
    assert_eq!(verify(&aside).expect("sound"), before);
    // The way forward again.
    let mut journal = Journal::open(&gym.journal()).expect("opens");
    assert_eq!(journal.append(10, &[taken(10)]).expect("appends"), 11);
}

#[test]
fn a_copy_that_is_not_sound_replaces_nothing() {
    let (gym, journal) = Gym::with(100);
    drop(journal);
    let before = verify(&gym.journal()).expect("sound");
    let copy = gym.back_up("2026-12-01");
    let good = fs::read(&copy).expect("reads");
    let bad = gym.place.path().join("bad");
    for at in (200..good.len()).step_by(997) {
        let mut bytes = good.clone();
        bytes[at] ^= 0x41;
        fs::write(&bad, &bytes).expect("writes");
        match gym.restore(&bad) {
            // Bytes that nothing stands in may differ.
            Ok(restored) => assert_eq!(restored.report, before),
            Err(_) => assert_eq!(verify(&gym.journal()).expect("sound"), before, "at {at}"),
        }
        for aside in fs::read_dir(gym.folder.path()).expect("reads").flatten() {
            if aside
                .file_name()
                .to_string_lossy()
                .starts_with("journal-before")
            {
                fs::remove_file(aside.path()).expect("removes");
            }
        }
    }
    for bytes in [&b""[..], b"no database", &good[..good.len() / 2]] {
        fs::write(&bad, bytes).expect("writes");
        gym.restore(&bad).expect_err("no copy");
        assert_eq!(verify(&gym.journal()).expect("sound"), before);
    }
    let none = gym.restore(&gym.place.path().join("none"));
    assert!(matches!(
        none,
        Err(BackupError::Journal(JournalError::Missing { .. }))
    ));
}

#[test]
fn a_damaged_journal_is_put_aside_with_what_lay_beside_it() {
    let (gym, journal) = Gym::with(20);
    let copy = gym.back_up("2026-12-01");
    drop(journal);
    fs::write(gym.journal(), "noise\n".repeat(1_000)).expect("writes");
    let mut wal = gym.journal().into_os_string();
    wal.push("-wal");
    fs::write(&wal, "stale").expect("writes");
    let restored = gym.restore(&copy).expect("restores");
    assert_eq!(verify(&gym.journal()).expect("sound"), restored.report);
    assert!(
        fs::read(restored.aside.expect("kept"))
            .expect("reads")
            .starts_with(b"noise")
    );
    let lost = gym.folder.path().join("other");
    fs::create_dir(&lost).expect("makes");
    let first = restore(&copy, &lost, ("x", &[]), |_, _| {}).expect("into an empty folder");
    assert_eq!((first.aside, first.report), (None, restored.report));
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(24))]

    /// Whatever the journal holds, the copy replays to the same state.
    #[test]
    fn a_copy_makes_the_same_state(events in vec(strategies::event(0..3_u32), 0..20)) {
        let (gym, mut journal) = Gym::with(0);
        journal.append(0, &events).expect("appends");
        let copy = gym.back_up("2026-12-01");
        drop(journal);
        let mut state = State::default();
        prop_assume!(!events.is_empty());
        restore(&copy, gym.folder.path(), ("x", &[]), |_, event| state.apply(event)).expect("restores");
        prop_assert_eq!(state, State::replay(&events));
    }
}
