//! The rude owner puts a whole folder back as it was earlier, with every witness in it. What lies
//! outside the folder tells it, and nothing is written before; a deliberate act overrules.
use crate::invented;
use domain::Event;
use journal::{JOURNAL_FILE, Journal, Outside, backup, keep_mark, mend, restore, verify_beside};
use std::fs;
use std::path::{Path, PathBuf};
use tempfile::TempDir;

/// A gym's data folder, a second place, and yesterday's folder.
struct Gym {
    data: TempDir,
    place: TempDir,
    yesterday: TempDir,
}

fn folder() -> TempDir {
    tempfile::tempdir().expect("a folder")
}

fn event(seq: u64, gym: i64) -> Event {
    let facts = invented::facts();
    let at = usize::try_from(seq).expect("few") % facts.len();
    let seq = i64::try_from(seq).expect("few");
    invented::at(seq + 1_000 * gym, facts[at].clone())
}

fn append(data: &Path, upto: u64, gym: i64) {
    let mut journal = Journal::open(&data.join(JOURNAL_FILE)).expect("opens");
    let last = journal.last().expect("reads");
    for seq in last + 1..=upto {
        journal
            .append(seq - 1, &[event(seq, gym)])
            .expect("appends");
    }
    journal.rest().expect("rests");
}

fn lay(from: &Path, to: &Path) {
    for entry in fs::read_dir(to).expect("reads").flatten() {
        fs::remove_file(entry.path()).expect("removes");
    }
    for entry in fs::read_dir(from).expect("reads").flatten() {
        fs::copy(entry.path(), to.join(entry.file_name())).expect("copies");
    }
}

impl Gym {
    /// Ten events yesterday, thirty today.
    fn new() -> Self {
        let gym = Self {
            data: folder(),
            place: folder(),
            yesterday: folder(),
        };
        append(gym.data.path(), 10, 0);
        lay(gym.data.path(), gym.yesterday.path());
        append(gym.data.path(), 30, 0);
        gym
    }

    fn journal(&self) -> PathBuf {
        self.data.path().join(JOURNAL_FILE)
    }

    fn places(&self) -> [PathBuf; 1] {
        [self.place.path().to_owned()]
    }

    fn mark(&self) -> bool {
        keep_mark(&self.journal(), self.place.path()).expect("is kept")
    }

    fn copy(&self, night: &str) -> PathBuf {
        backup(self.data.path(), self.place.path(), night, 14)
            .expect("copies")
            .path
    }

    fn put_yesterday_back(&self) {
        lay(self.yesterday.path(), self.data.path());
    }

    /// What a start says, and that it wrote nothing where it refused.
    fn start(&self) -> Result<u64, String> {
        let files = || {
            let entries = fs::read_dir(self.data.path()).expect("reads").flatten();
            let own = |entry: fs::DirEntry| {
                let name = entry.file_name().into_string().expect("text");
                let bytes = fs::read(entry.path()).expect("reads");
                (!name.ends_with("-shm")).then_some((name, bytes))
            };
            let mut found: Vec<_> = entries.filter_map(own).collect();
            found.retain(|(_, bytes)| !bytes.is_empty());
            found.sort();
            found
        };
        let before = files();
        let outside = Outside::of(&self.places(), false);
        match Journal::open_beside(&self.journal(), &outside) {
            Ok(journal) => Ok(journal.last().expect("reads")),
            Err(error) => {
                assert!(files() == before, "something was written");
                let proven = verify_beside(&self.journal(), &outside, |_, _| {});
                proven.expect_err("verify says so too");
                Err(error.to_string())
            }
        }
    }
}

#[test]
fn yesterdays_folder_is_told_by_the_mark_that_lies_beside_the_copies() {
    let gym = Gym::new();
    assert!(gym.mark());
    assert!(!gym.mark(), "nothing new");
    assert_eq!(gym.start(), Ok(30));
    gym.put_yesterday_back();
    let told = gym.start().expect_err("twenty events are gone");
    assert!(told.contains("ends at event 10, but "), "{told}");
    assert!(told.contains(".mark knows it as far as event 30"), "{told}");
    // The place's mark does not go back.
    keep_mark(&gym.journal(), gym.place.path()).expect_err("it knows more");
    gym.start().expect_err("still");
}

#[test]
fn yesterdays_folder_is_told_by_a_copy_alone_and_mended_from_it() {
    let gym = Gym::new();
    gym.copy("2026-12-01");
    append(gym.data.path(), 33, 0);
    gym.mark();
    gym.put_yesterday_back();
    for entry in fs::read_dir(gym.place.path()).expect("reads").flatten() {
        if entry.file_name().to_string_lossy().ends_with(".mark") {
            fs::remove_file(entry.path()).expect("removes");
        }
    }
    let told = gym.start().expect_err("refused");
    assert!(
        told.contains("pinladder-2026-12-01.sqlite knows it as far as event 30"),
        "{told}"
    );
    let mended = mend(gym.data.path(), &gym.places()).expect("mends");
    assert_eq!((mended.last, mended.lost()), (30, 0));
    mended
        .prepared
        .put_in_place("x", &gym.places())
        .expect("in place");
    assert_eq!(gym.start(), Ok(30));
}

#[test]
fn what_is_given_up_deliberately_accuses_nobody_any_more() {
    let gym = Gym::new();
    gym.copy("2026-12-01");
    append(gym.data.path(), 35, 0);
    gym.mark();
    gym.put_yesterday_back();
    let mended = mend(gym.data.path(), &gym.places()).expect("mends");
    assert_eq!(
        (mended.last, mended.lost()),
        (30, 5),
        "the mark knows of five more"
    );
    mended
        .prepared
        .put_in_place("x", &gym.places())
        .expect("in place");
    assert_eq!(gym.start(), Ok(30));
    append(gym.data.path(), 31, 0);
    assert!(gym.mark(), "it is kept again");
    // Yesterday's folder is chosen: itself put in its own place, deliberately.
    gym.put_yesterday_back();
    gym.start().expect_err("refused");
    let chosen = gym.yesterday.path().join(JOURNAL_FILE);
    restore(&chosen, gym.data.path(), ("y", &gym.places()), |_, _| {}).expect("restores");
    assert_eq!(gym.start(), Ok(10));
    append(gym.data.path(), 11, 1);
    assert!(gym.mark());
    assert_eq!(gym.start(), Ok(11));
}

#[test]
fn one_that_went_on_from_yesterday_is_told_from_the_journal_that_was() {
    let gym = Gym::new();
    gym.mark();
    gym.put_yesterday_back();
    // The place was not there meanwhile.
    append(gym.data.path(), 40, 1);
    let told = gym.start().expect_err("refused");
    assert!(told.contains("another journal"), "{told}");
}

#[test]
fn another_gyms_copies_and_marks_in_the_same_place_accuse_nobody() {
    let gym = Gym::new();
    let other = folder();
    append(other.path(), 50, 2);
    backup(other.path(), gym.place.path(), "2026-12-01", 14).expect("copies");
    assert!(keep_mark(&other.path().join(JOURNAL_FILE), gym.place.path()).expect("is kept"));
    assert_eq!(gym.start(), Ok(30));
    assert!(gym.mark(), "each has a mark of its own");
    gym.put_yesterday_back();
    gym.start().expect_err("its own is heard");
}

#[test]
fn a_bad_mark_or_no_place_says_nothing() {
    let gym = Gym::new();
    gym.mark();
    let entry = fs::read_dir(gym.place.path())
        .expect("reads")
        .flatten()
        .next();
    let mark = entry.expect("a mark").path();
    let text = fs::read_to_string(&mark).expect("reads");
    gym.put_yesterday_back();
    for bad in [
        "",
        "noise\n",
        &text[..40],
        &text.replace("upto 0", "upto 1"),
    ] {
        fs::write(&mark, bad).expect("writes");
        assert_eq!(gym.start(), Ok(10), "{bad:?}");
    }
    fs::write(&mark, text).expect("writes");
    gym.start().expect_err("the sound one speaks");
    let none = [gym.place.path().join("none")];
    Outside::of(&none, true)
        .check(&gym.journal())
        .expect("knows nothing");
    assert!(!keep_mark(&gym.journal(), &none[0]).expect("not there"));
    assert!(!none[0].exists(), "and is not made");
}
