//! The rude owner: deletes, cuts, copies back, flips bits in every file of the folder. Each time the
//! journal is refused with what to do, or all that was acknowledged is still there; and what was
//! damaged in the log or the file is mended from what is left.
use crate::invented;
use domain::Event;
use journal::{
    JOURNAL_FILE, Journal, MARK_FILE, Outside, RECORD_FILE, Record, backup, mend, verify,
};
use std::collections::BTreeMap;
use std::fs;
use std::path::{Path, PathBuf};
use tempfile::TempDir;

/// What a folder holds.
type Files = BTreeMap<String, Vec<u8>>;

/// Events in the journal as the owner finds it, the second half of them only in the log.
const EVENTS: u64 = 48;

fn event(seq: u64) -> Event {
    let facts = invented::facts();
    let at = usize::try_from(seq).expect("few") % facts.len();
    invented::at(i64::try_from(seq).expect("few"), facts[at].clone())
}

fn files(folder: &Path) -> Files {
    let entry = |entry: fs::DirEntry| {
        let bytes = fs::read(entry.path()).ok()?;
        Some((entry.file_name().to_string_lossy().into_owned(), bytes))
    };
    let found = fs::read_dir(folder).expect("a folder").flatten();
    found.filter_map(entry).collect()
}

fn lay(files: &Files) -> TempDir {
    let folder = tempfile::tempdir().expect("a folder");
    for (name, bytes) in files {
        fs::write(folder.path().join(name), bytes).expect("writes");
    }
    folder
}

/// A folder as a kill leaves it: journal, log, mark and record. Half the events were brought home.
fn left(events: u64) -> Files {
    let folder = tempfile::tempdir().expect("a folder");
    let mut journal = Journal::open(&folder.path().join(JOURNAL_FILE)).expect("opens");
    let mut record = Record::open(&folder.path().join(RECORD_FILE)).expect("opens");
    for seq in 1..=events {
        journal.append(seq - 1, &[event(seq)]).expect("appends");
        record.follow(&journal).expect("follows");
        if seq == events / 2 {
            assert!(journal.rest().expect("rests"));
        }
    }
    files(folder.path())
}

/// What the owner finds after a damage: refused with these words, or all that was there.
fn found(folder: &Path) -> Result<(), String> {
    let path = folder.join(JOURNAL_FILE);
    let proven = verify(&path).map_err(|error| error.to_string());
    let opened = Journal::open(&path).and_then(|journal| journal.events_after(0));
    let told = |text: String| {
        let advice = [
            "mend",
            "put back a copy",
            "move it away",
            "move the file away",
        ];
        let says = advice.iter().any(|words| text.contains(words));
        assert!(says, "what is to be done? {text}");
        Err(text)
    };
    match opened {
        Err(error) => told(error.to_string()),
        Ok(events) => {
            let whole = events.iter().map(|(seq, e)| (*seq, e.clone()));
            let wanted = (1..=EVENTS).map(|seq| (seq, event(seq)));
            let all = whole.eq(wanted);
            assert!(all, "{} events, and not a word", events.len());
            // What verify alone sees is told as well.
            proven.map(drop).or_else(told)
        }
    }
}

/// Mends what was refused; gives how many events came back.
fn mended(folder: &Path, places: &[PathBuf]) -> u64 {
    let made = mend(folder, places).expect("mends");
    assert!(made.known >= made.last);
    let (last, lost) = (made.last, made.lost());
    assert!(
        last + lost >= EVENTS.min(made.known),
        "{last} and {lost} lost"
    );
    made.prepared
        .put_in_place("2026-12-01", &[])
        .expect("in place");
    let path = folder.join(JOURNAL_FILE);
    assert_eq!(verify(&path).expect("sound").events, last);
    let events = Journal::open(&path).expect("opens").events_after(0);
    for (seq, found) in events.expect("reads") {
        assert_eq!(found, event(seq));
    }
    last
}

fn flipped(files: &Files, name: &str, bit: usize) -> Files {
    let mut files = files.clone();
    files.get_mut(name).expect("is there")[bit / 8] ^= 1 << (bit % 8);
    files
}

/// `count` bits spread over `bytes` bytes, never twice the same bit of a byte in a row.
fn spread(bytes: usize, count: usize) -> impl Iterator<Item = usize> {
    (0..count).map(move |n| (n * bytes / count) * 8 + n * 5 % 8)
}

#[test]
fn every_flipped_bit_in_the_log_is_told_or_harmless_and_mended_to_the_last_event() {
    let left = left(EVENTS);
    let name = format!("{JOURNAL_FILE}-wal");
    let (mut told, mut mends, mut whole) = (0, 0, 0);
    for bit in spread(left[&name].len(), 140).chain(0..32) {
        let folder = lay(&flipped(&left, &name, bit));
        if found(folder.path()).is_err() {
            told += 1;
            if told % 6 == 0 {
                mends += 1;
                whole += usize::from(mended(folder.path(), &[]) == EVENTS);
            }
        }
    }
    assert!(told > 150, "only {told} were told");
    // A flip leaves the event itself one bit apart, unless it hits the number of the last page.
    assert!(whole + 2 >= mends, "{whole} of {mends} came back whole");
}

#[test]
fn without_a_mark_the_log_testifies_alone() {
    let mut left = left(EVENTS);
    left.remove(MARK_FILE);
    left.retain(|name, _| !name.starts_with(RECORD_FILE));
    let name = format!("{JOURNAL_FILE}-wal");
    let mut told = 0;
    // Up to the frames of the last two entries, behind which nothing more can stand.
    for bit in spread(left[&name].len() * 8 / 10, 60) {
        let folder = lay(&flipped(&left, &name, bit));
        told += usize::from(found(folder.path()).is_err());
    }
    assert!(told > 50, "only {told} were told");
}

#[test]
fn every_flipped_bit_elsewhere_is_told_or_harmless() {
    let left = left(EVENTS);
    let mut tried = 0;
    for name in left
        .keys()
        .filter(|name| !name.ends_with("journal.sqlite-wal"))
    {
        let count = if name == JOURNAL_FILE { 160 } else { 40 };
        for bit in spread(left[name].len(), count) {
            let folder = lay(&flipped(&left, name, bit));
            let refused = found(folder.path()).is_err();
            assert!(
                !refused || name == JOURNAL_FILE,
                "{name} accuses, bit {bit}"
            );
            tried += 1;
        }
    }
    assert!(tried >= 300, "{tried}");
}

#[test]
fn whatever_is_cut_emptied_filled_or_deleted_is_told_or_harmless() {
    let left = left(EVENTS);
    let names: Vec<&String> = left.keys().collect();
    let mut told = BTreeMap::<&str, usize>::new();
    for name in &names {
        let bytes = &left[*name];
        let mut damages: Vec<Option<Vec<u8>>> = vec![None, Some(Vec::new())];
        for eighth in 1..8 {
            damages.push(Some(bytes[..bytes.len() * eighth / 8].to_vec()));
        }
        damages.push(Some(vec![0; bytes.len()]));
        damages.push(Some(b"noise\n".repeat(bytes.len() / 6)));
        for damage in damages {
            let mut damaged = left.clone();
            match damage {
                Some(bytes) => drop(damaged.insert((*name).clone(), bytes)),
                None => drop(damaged.remove(*name)),
            }
            let folder = lay(&damaged);
            *told.entry(name).or_default() += usize::from(found(folder.path()).is_err());
        }
    }
    for vital in [JOURNAL_FILE, "journal.sqlite-wal"] {
        assert!(told[vital] >= 10, "{vital}: {told:?}");
    }
    for other in [MARK_FILE, RECORD_FILE, "journal.sqlite-shm"] {
        assert_eq!(told[other], 0, "{told:?}");
    }
}

#[test]
fn an_older_or_a_foreign_journal_is_refused_and_nothing_is_written() {
    let now = left(EVENTS);
    let older = left(EVENTS / 3);
    let foreign = {
        let folder = tempfile::tempdir().expect("a folder");
        let mut journal = Journal::open(&folder.path().join(JOURNAL_FILE)).expect("opens");
        for seq in 1..=2 * EVENTS {
            journal.append(seq - 1, &[event(seq + 1)]).expect("appends");
        }
        drop(journal);
        files(folder.path())
    };
    for (other, words) in [(older, "as far as event 48"), (foreign, "another journal")] {
        for witness in [MARK_FILE, RECORD_FILE] {
            let mut mixed: Files = now.clone();
            mixed.retain(|name, _| name.starts_with(witness));
            let own = other
                .iter()
                .filter(|(name, _)| name.starts_with(JOURNAL_FILE));
            mixed.extend(own.map(|(name, bytes)| (name.clone(), bytes.clone())));
            let folder = lay(&mixed);
            let told = found(folder.path()).expect_err("refused");
            assert!(told.contains(words) && told.contains(witness), "{told}");
            for (name, bytes) in files(folder.path()) {
                let same = mixed.get(&name).is_none_or(|before| *before == bytes);
                assert!(same || name.ends_with("-shm"), "{name} was written");
            }
        }
    }
}

#[test]
fn a_missing_journal_is_not_begun_anew_where_anything_knows_of_one() {
    let now = left(EVENTS);
    let place = tempfile::tempdir().expect("a folder");
    let whole = lay(&now);
    backup(whole.path(), place.path(), "2026-12-01", 3).expect("copies");
    for witness in [MARK_FILE, RECORD_FILE] {
        for empty in [false, true] {
            let mut rest = now.clone();
            rest.retain(|name, _| name.starts_with(witness));
            if empty {
                rest.insert(JOURNAL_FILE.to_owned(), Vec::new());
            }
            let folder = lay(&rest);
            let told = found(folder.path()).expect_err("refused");
            assert!(told.contains("as far as event 48"), "{told}");
            assert_eq!(folder.path().join(JOURNAL_FILE).exists(), empty);
            assert_eq!(mended(folder.path(), &[place.path().to_owned()]), EVENTS);
        }
    }
    // Nothing but a copy is left.
    let folder = tempfile::tempdir().expect("a folder");
    let path = folder.path().join(JOURNAL_FILE);
    let outside = Outside::of(&[place.path().to_owned()], true);
    let told = Journal::open_beside(&path, &outside).expect_err("refused");
    assert!(
        told.to_string()
            .contains("pinladder-2026-12-01.sqlite knows"),
        "{told}"
    );
    // Nobody knows of one: it is begun.
    Journal::open(&path).expect("begins");
}

#[test]
fn a_damaged_file_is_mended_from_the_last_copy_and_the_tail() {
    let folder = tempfile::tempdir().expect("a folder");
    let place = tempfile::tempdir().expect("a folder");
    let path = folder.path().join(JOURNAL_FILE);
    let mut journal = Journal::open(&path).expect("opens");
    for seq in 1..=EVENTS {
        journal.append(seq - 1, &[event(seq)]).expect("appends");
        if seq == EVENTS / 2 {
            backup(folder.path(), place.path(), "2026-12-01", 3).expect("copies");
        }
    }
    drop(journal);
    let sound = fs::read(&path).expect("reads");
    let mut back = 0;
    // A whole page at a time: more than one bit can put right.
    for page in 1..sound.len() / 4_096 {
        let mut bytes = sound.clone();
        bytes[page * 4_096..(page + 1) * 4_096].fill(0x5a);
        fs::write(&path, &bytes).expect("writes");
        fs::remove_file(folder.path().join("journal-before-2026-12-01.sqlite")).ok();
        if found(folder.path()).is_err() {
            let last = mended(folder.path(), &[place.path().to_owned()]);
            assert!(last >= EVENTS / 2, "the copy at least, page {page}");
            back = back.max(last);
        }
    }
    assert_eq!(back, EVENTS, "a page of the first half costs nothing");
}

#[test]
fn no_copy_that_knows_more_is_rotated_out() {
    let now = lay(&left(EVENTS));
    let place = tempfile::tempdir().expect("a folder");
    let newest = backup(now.path(), place.path(), "2026-12-01", 1).expect("copies");
    let older = lay(&left(EVENTS / 2));
    let path = place.path();
    for night in 2..6 {
        let stamp = format!("2026-12-0{night}");
        let made = backup(older.path(), path, &stamp, 1).expect("copies");
        assert_eq!(made.beyond, std::slice::from_ref(&newest.path));
        assert_eq!(made.removed.len(), usize::from(night > 2));
    }
    // Nor is it written over by a copy of the same night.
    let again = backup(older.path(), path, "2026-12-01", 1).expect("copies");
    assert_eq!(again.path, path.join("pinladder-2026-12-01-2.sqlite"));
    assert_eq!(verify(&newest.path).expect("sound").events, EVENTS);
}

#[test]
fn halves_of_copies_are_cleared() {
    let now = lay(&left(3));
    let place = tempfile::tempdir().expect("a folder");
    let half = place.path().join(".pinladder-part-x");
    fs::create_dir(&half).expect("makes");
    fs::write(half.join(JOURNAL_FILE), "half").expect("writes");
    let restore = now.path().join(".restore-x");
    fs::create_dir(&restore).expect("makes");
    backup(now.path(), place.path(), "2026-12-01", 1).expect("copies");
    assert!(!half.exists(), "cleared by the next copy");
    journal::clear_halves(now.path());
    assert!(!restore.exists());
}
