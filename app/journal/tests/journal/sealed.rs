//! Rows that are carried from one journal to another keep their seals.
use crate::{invented, seasons};
use journal::{Journal, JournalError, Sealed, SealedReader, verify};

fn source(folder: &tempfile::TempDir) -> std::path::PathBuf {
    let path = folder.path().join("journal.sqlite");
    let mut journal = Journal::open(&path).expect("opens");
    journal.append(0, &seasons::season(3, 20)).expect("appends");
    path
}

/// All rows of a journal, in portions.
fn rows(path: &std::path::Path) -> Vec<Sealed> {
    let reader = SealedReader::open(path).expect("opens");
    let mut all: Vec<Sealed> = Vec::new();
    loop {
        let from = all.last().map_or(0, |row| row.seq);
        let more = reader.after(from, 7, 9_000).expect("reads");
        if more.is_empty() {
            return all;
        }
        all.extend(more);
    }
}

#[test]
fn a_journal_carried_in_portions_is_the_same_journal() {
    let (from, to) = (
        tempfile::tempdir().expect("a folder"),
        tempfile::tempdir().expect("one"),
    );
    let path = source(&from);
    let all = rows(&path);
    let copy = to.path().join("journal.sqlite");
    let mut mirror = Journal::open(&copy).expect("opens");
    for portion in all.chunks(13) {
        let events = mirror.append_sealed(portion).expect("follows");
        assert_eq!(events.len(), portion.len());
    }
    assert_eq!(mirror.last().expect("reads"), all.len() as u64);
    drop(mirror);
    let (there, here) = (verify(&path).expect("sound"), verify(&copy).expect("sound"));
    assert_eq!(there, here, "seal and all");
}

#[test]
fn what_does_not_follow_is_refused_and_nothing_of_its_portion_stands() {
    let (from, to) = (
        tempfile::tempdir().expect("a folder"),
        tempfile::tempdir().expect("one"),
    );
    let all = rows(&source(&from));
    let copy = to.path().join("journal.sqlite");
    let mut mirror = Journal::open(&copy).expect("opens");
    mirror.append_sealed(&all[..5]).expect("follows");
    let mut bent = all[5..9].to_vec();
    bent[2].body.push(' ');
    let doubled = &all[3..8];
    let gap = &all[7..9];
    for (bad, at) in [(&bent[..], 8), (doubled, 4), (gap, 8)] {
        let told = mirror.append_sealed(bad).expect_err("it does not follow");
        assert!(
            matches!(told, JournalError::Broken { seq, .. } if seq == at),
            "{told}"
        );
        assert_eq!(mirror.last().expect("reads"), 5);
    }
    mirror.append_sealed(&all[5..]).expect("the right ones do");
}

#[test]
fn a_reader_keeps_nobody_from_writing_and_tells_a_number_that_is_not_there() {
    let from = tempfile::tempdir().expect("a folder");
    let path = source(&from);
    let reader = SealedReader::open(&path).expect("opens");
    let (last, seal) = reader.last().expect("reads");
    assert_eq!(reader.seal_of(last).expect("reads"), Some(seal));
    assert_eq!(reader.seal_of(last + 1).expect("reads"), None);
    assert_eq!(reader.seal_of(0).expect("reads"), Some([0; 32]));
    let mut journal = Journal::open(&path).expect("opens beside it");
    let more = invented::at(i64::from(u32::MAX), invented::cleared());
    journal.append(last, &[more]).expect("appends");
    assert_eq!(reader.after(last, 9, 9).expect("reads").len(), 1);
    let told = reader.after(last + 9, 9, 9).expect_err("not there");
    assert!(matches!(told, JournalError::Short { .. }), "{told}");
}
