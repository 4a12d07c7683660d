//! Appending and reading back, alone and with others.
use crate::{invented, strategies};
use domain::Event;
use journal::{AppendError, Journal, JournalError};
use proptest::collection::vec;
use proptest::prelude::*;
use std::path::PathBuf;
use tempfile::TempDir;

fn place() -> (TempDir, PathBuf) {
    let folder = tempfile::tempdir().expect("a folder");
    let path = folder.path().join(journal::JOURNAL_FILE);
    (folder, path)
}

fn numbered(events: &[Event]) -> Vec<(u64, Event)> {
    (1..).zip(events.iter().cloned()).collect()
}

#[test]
fn what_was_appended_is_there_after_opening_again() {
    let (_folder, path) = place();
    let events = invented::events();
    let mut journal = Journal::open(&path).expect("opens");
    assert_eq!(journal.last().expect("reads"), 0);
    assert_eq!(journal.append(0, &events[..3]).expect("appends"), 3);
    assert_eq!(journal.append(3, &[]).expect("nothing to do"), 3);
    let last = journal.append(3, &events[3..]).expect("appends");
    drop(journal);
    let journal = Journal::open(&path).expect("opens again");
    assert_eq!(journal.last().expect("reads"), last);
    assert_eq!(journal.events_after(0).expect("reads"), numbered(&events));
    assert_eq!(
        journal.events_after(last - 1).expect("reads"),
        numbered(&events)[events.len() - 1..]
    );
    assert!(journal.events_after(last).expect("reads").is_empty());
    assert!(matches!(
        journal.events_after(last + 1),
        Err(JournalError::Short { asked, last: l, .. }) if asked == last + 1 && l == last
    ));
}

#[test]
fn who_has_not_read_what_is_new_appends_nothing() {
    let (_folder, path) = place();
    let events = invented::events();
    let mut kiosk = Journal::open(&path).expect("opens");
    let mut shell = Journal::open(&path).expect("opens twice");
    assert!(!kiosk.changed().expect("reads"));
    kiosk.append(0, &events[..1]).expect("appends");
    assert!(!kiosk.changed().expect("reads"), "own appends do not count");
    assert!(shell.changed().expect("reads"));
    assert!(!shell.changed().expect("reads"), "told once");
    let refused = shell.append(0, &events[1..3]);
    assert!(matches!(refused, Err(AppendError::Moved { last: 1 })));
    assert_eq!(shell.events_after(0).expect("reads").len(), 1);
    shell.append(1, &events[1..3]).expect("appends");
    assert!(kiosk.changed().expect("reads"));
    assert_eq!(kiosk.events_after(1).expect("reads").len(), 2);
}

/// Many threads, each with its own connection, race for every number.
#[test]
fn numbers_have_no_gaps_however_many_write() {
    let (_folder, path) = place();
    let event = invented::events().remove(3);
    std::thread::scope(|scope| {
        for _ in 0..4 {
            scope.spawn(|| {
                let mut journal = Journal::open(&path).expect("opens beside the others");
                let mut done = 0;
                while done < 10 {
                    let last = journal.last().expect("reads");
                    match journal.append(last, std::slice::from_ref(&event)) {
                        Ok(new) => {
                            assert_eq!(new, last + 1);
                            done += 1;
                        }
                        Err(AppendError::Moved { .. }) => {}
                        Err(error) => panic!("{error}"),
                    }
                }
            });
        }
    });
    let journal = Journal::open(&path).expect("opens");
    assert_eq!(journal.events_after(0).expect("the chain holds").len(), 40);
}

#[test]
fn the_file_itself_refuses_changes() {
    let (_folder, path) = place();
    let mut journal = Journal::open(&path).expect("opens");
    let last = journal.append(0, &invented::events()).expect("appends");
    drop(journal);
    let raw = rusqlite::Connection::open_with_flags(&path, rusqlite::OpenFlags::default())
        .expect("opens");
    for change in [
        "UPDATE events SET at_ms = 0 WHERE seq = 1",
        "DELETE FROM events WHERE seq = 1",
        "DELETE FROM events",
        "INSERT OR REPLACE INTO events SELECT * FROM events WHERE seq = 1",
        "INSERT INTO events SELECT seq + 20, at_ms, version, kind, body, hash FROM events",
        "INSERT INTO events (at_ms, version, kind, body, hash) \
         SELECT at_ms, version, kind, body, hash FROM events",
    ] {
        let refused = raw.execute(change, []).expect_err(change).to_string();
        assert!(refused.contains("append-only"), "{change}: {refused}");
    }
    let journal = Journal::open(&path).expect("opens");
    assert_eq!(journal.last().expect("reads"), last);
}

#[test]
fn settings_that_a_power_cut_asks_for_are_in_the_file() {
    let (_folder, path) = place();
    let journal = Journal::open(&path).expect("opens");
    drop(journal);
    let header = std::fs::read(&path).expect("reads");
    // SQLite file format, 1.3: bytes 18 and 19 are 2 in WAL mode; 68 to 71 the application.
    assert_eq!(header[18..20], [2, 2]);
    assert_eq!(&header[68..72], b"PinJ");
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(24))]
    #[test]
    fn any_events_in_any_portions_come_back(
        portions in vec(vec(strategies::event(any::<u32>()), 0..4), 0..5),
    ) {
        let (_folder, path) = place();
        let mut journal = Journal::open(&path).expect("opens");
        let mut last = 0;
        for portion in &portions {
            last = journal.append(last, portion).expect("appends");
        }
        let all = numbered(&portions.concat());
        prop_assert_eq!(journal.events_after(0).expect("reads"), all);
    }
}
