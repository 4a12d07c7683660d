//! Power cut between any two writes, torn, lost and reordered sectors, failing syncs, a full and a
//! read-only disk: SQLite's own file layer with faults beneath the journal. What was acknowledged is
//! there, in order; what was not is whole or not at all; the mark accuses nobody.
//!
//! `PINLADDER_CUTS=10 cargo test -p journal --test power` looks ten times as long. A failing seed is
//! told and fails again.
use disk::{Disk, Fault, Random};
use domain::{Event, Fact, Moment};
use journal::{AppendError, JOURNAL_FILE, Journal, MARK_FILE, verify_with};
use std::fs;
use std::path::Path;
use tempfile::TempDir;

/// How many portions one run appends.
const PORTIONS: u64 = 14;

/// The event numbered `seq`, the same for ever; some fill several pages.
fn event(seq: u64) -> Event {
    let pages = if seq.is_multiple_of(5) { 1_600 } else { 12 };
    Event {
        at: Moment(i64::try_from(seq).expect("few")),
        fact: Fact::FileTaken {
            name: "gym.toml".to_owned(),
            text: format!("# {seq}\n").repeat(pages),
        },
    }
}

/// A folder in memory where there is one: this disk says itself what is safe.
fn room() -> TempDir {
    let memory = Path::new("/dev/shm");
    let made = match memory.is_dir() {
        true => tempfile::tempdir_in(memory),
        false => tempfile::tempdir(),
    };
    made.expect("a folder")
}

/// What one run came to.
#[derive(Debug, Default)]
struct Run {
    /// The last event that was acknowledged.
    said: u64,
    /// Ends of portions: the journal may end at one of them alone.
    ends: Vec<u64>,
    /// What the mark said, as it went on; the last ones may not have come to the disk.
    marks: Vec<Vec<u8>>,
}

/// Appends portions of one to three, rests at times, closes and opens again; whatever fails is read
/// anew and tried again, as the kiosk does, until the power is gone.
fn run(folder: &Path, random: &mut Random) -> Run {
    let path = folder.join(JOURNAL_FILE);
    let mut run = Run {
        ends: vec![0],
        ..Run::default()
    };
    let mut open = Journal::open(&path).ok();
    let mut last = 0;
    for _ in 0..PORTIONS {
        let Some(journal) = &mut open else {
            break;
        };
        if let Ok(now) = journal.last() {
            assert!(now >= run.said, "{now}, and {} was said", run.said);
            last = now;
        }
        let until = last + 1 + random.below(3);
        let portion: Vec<_> = (last + 1..=until).map(event).collect();
        run.ends.push(until);
        match journal.append(last, &portion) {
            Ok(now) => run.said = now,
            Err(AppendError::Moved { last }) => panic!("nobody else wrote, but it is at {last}"),
            Err(AppendError::Journal(_)) => {}
        }
        if random.below(5) == 0 && journal.rest().is_ok() {
            run.marks.clear();
        }
        run.marks.extend(fs::read(folder.join(MARK_FILE)));
        if random.below(9) == 0 {
            drop(open.take());
            open = Journal::open(&path).ok();
        }
    }
    run
}

/// What a power cut leaves of `folder`, opened, proven and held against what was said.
fn look(disk: &Disk, folder: &Path, run: &Run, random: &mut Random) {
    let left = room();
    disk.after_cut(folder, left.path(), random)
        .expect("is laid out");
    // The mark is written past SQLite: any of what it said since it was last synced.
    let marks = run.marks.len() as u64;
    if marks > 0 {
        let at = usize::try_from(random.below(marks)).expect("few");
        fs::write(left.path().join(MARK_FILE), &run.marks[at]).expect("writes");
    }
    disk.begin(&[]);
    let path = left.path().join(JOURNAL_FILE);
    let mut journal = Journal::open(&path).expect("opens after a cut");
    let mut last = 0;
    verify_with(&path, |seq, found| {
        assert_eq!(*found, event(seq), "event {seq}");
        last = seq;
    })
    .expect("sound after a cut");
    assert!(last >= run.said, "{} was said, {last} is there", run.said);
    assert!(run.ends.contains(&last), "half a portion: {last}");
    let on = journal.append(last, &[event(last + 1)]);
    assert_eq!(on.expect("goes on"), last + 1);
}

fn times() -> u64 {
    let told = std::env::var("PINLADDER_CUTS").ok();
    told.and_then(|text| text.parse().ok()).unwrap_or(1)
}

/// Runs with one seed and these faults, then cuts the power and looks.
fn try_out(disk: &Disk, seed: u64, faults: &[(u64, Fault)]) -> u64 {
    let folder = room();
    disk.begin(faults);
    let mut random = Random::of(seed);
    let ran = run(folder.path(), &mut random);
    let steps = disk.steps();
    look(disk, folder.path(), &ran, &mut random);
    steps
}

/// As [`try_out`]; a failure says which seed.
fn told(disk: &Disk, seed: u64, faults: &[(u64, Fault)]) -> u64 {
    let tried = std::panic::AssertUnwindSafe(|| try_out(disk, seed, faults));
    std::panic::catch_unwind(tried).unwrap_or_else(|_| panic!("seed {seed}, faults {faults:?}"))
}

#[test]
fn the_power_goes_between_any_two_writes() {
    let disk = Disk::take();
    let mut cuts = 0;
    for seed in 0..2 * times() {
        let steps = told(&disk, seed, &[]);
        assert!(steps > 60, "only {steps} steps");
        for at in 1..=steps {
            told(&disk, seed, &[(at, Fault::Cut)]);
            cuts += 1;
        }
    }
    println!("{cuts} power cuts");
}

#[test]
fn a_sync_fails_and_later_the_power() {
    let disk = Disk::take();
    let mut met = 0;
    for seed in 1_000..1_000 + times() {
        let steps = told(&disk, seed, &[]);
        for at in 1..steps {
            let mut random = Random::of(seed ^ at);
            let cut = at + 1 + random.below(40);
            told(&disk, seed, &[(at, Fault::Sync), (cut, Fault::Cut)]);
            met += 1;
        }
    }
    println!("{met} failing syncs");
}

#[test]
fn the_disk_is_full_or_closed_for_a_while_and_it_goes_on_by_itself() {
    let disk = Disk::take();
    let mut met = 0;
    for seed in 2_000..2_000 + times() {
        let steps = told(&disk, seed, &[]);
        for at in 20..steps {
            let mut random = Random::of(seed ^ at);
            let long = random.below(30);
            let fault = match random.below(2) {
                0 => Fault::Full(long),
                _ => Fault::ReadOnly(long),
            };
            told(&disk, seed, &[(at, fault)]);
            met += 1;
        }
    }
    println!("{met} full or closed disks");
}

#[test]
fn an_entry_on_a_full_disk_is_refused_plainly_and_taken_when_there_is_room() {
    let disk = Disk::take();
    let folder = room();
    let mut journal = Journal::open(&folder.path().join(JOURNAL_FILE)).expect("opens");
    journal.append(0, &[event(1)]).expect("appends");
    for (fault, words) in [
        (Fault::Full(1_000_000), "the disk is full"),
        (Fault::ReadOnly(1_000_000), "cannot be written"),
    ] {
        let last = journal.last().expect("reads");
        disk.begin(&[(1, fault)]);
        let refused = journal.append(last, &[event(last + 1), event(last + 2)]);
        let told = refused.expect_err("no room").to_string();
        assert!(told.contains(words), "{told}");
        // What is there is still shown.
        let shown = journal.events_after(0).expect("reads");
        assert_eq!(shown.len() as u64, last);
        assert!(disk.met() > 0);
        disk.begin(&[]);
        let done = journal.append(last, &[event(last + 1), event(last + 2)]);
        assert_eq!(done.expect("room again"), last + 2);
    }
}
