//! A kiosk that runs for a month on simulated time without a restart: memory, files and what is open
//! stay as they were after its first days. The journal and what is made of it grow with what was
//! lifted, and with nothing else.
//!
//! `cargo test --workspace --test soak -- --ignored --nocapture` goes through thirty days and prints
//! the figures; the sample of every run is four.
#[allow(dead_code, reason = "it is the gym of the weeks with faults")]
#[path = "weeks/gym.rs"]
mod gym;
#[path = "weeks/people.rs"]
mod people;

use gym::Gym;
use std::collections::BTreeSet;
use std::fs;

/// Deeds of an evening.
const DEEDS: usize = 60;
/// Seconds between two ticks at night.
const EVERY: u64 = 60;
/// What the allocator may hold more than after the first days: pages that are not yet full.
const MORE_KB: u64 = 12_288;
/// Days after which all that is made once was made.
const SETTLED: u64 = 2;

/// What this process and the folder take.
#[derive(Debug, Clone, PartialEq, Eq)]
struct Taken {
    resident_kb: u64,
    open_files: usize,
    names: BTreeSet<String>,
    copies: usize,
    bytes: u64,
}

fn taken(gym: &Gym) -> Taken {
    let status = fs::read_to_string("/proc/self/status").expect("Linux tells");
    let resident = status.lines().find_map(|line| line.strip_prefix("VmRSS:"));
    let resident = resident.and_then(|rest| rest.split_whitespace().next()?.parse().ok());
    let entries: Vec<_> = fs::read_dir(gym.data.path())
        .expect("a folder")
        .flatten()
        .collect();
    let name = |entry: &fs::DirEntry| entry.file_name().to_string_lossy().into_owned();
    Taken {
        resident_kb: resident.expect("a number"),
        open_files: fs::read_dir("/proc/self/fd").expect("Linux tells").count(),
        names: entries.iter().map(name).collect(),
        copies: fs::read_dir(gym.place.path()).expect("a place").count(),
        bytes: entries
            .iter()
            .filter_map(|entry| Some(entry.metadata().ok()?.len()))
            .sum(),
    }
}

fn soak(days: u64, tell: impl Fn(&str)) {
    let mut gym = Gym::open(30);
    let mut settled: Option<Taken> = None;
    for day in 1..=days {
        gym.evening(DEEDS);
        gym.sleep(EVERY);
        let now = taken(&gym);
        tell(&format!(
            "day {day}: {} events, {} kB resident, {} open, {} files, {} copies, {} bytes",
            gym.kiosk.seq(),
            now.resident_kb,
            now.open_files,
            now.names.len(),
            now.copies,
            now.bytes
        ));
        if day == SETTLED {
            settled = Some(now);
        } else if let Some(before) = &settled {
            let grown = now.resident_kb.saturating_sub(before.resident_kb);
            assert!(grown <= MORE_KB, "{grown} kB more than on day {SETTLED}");
            assert!(
                now.open_files <= before.open_files,
                "{now:?} after {before:?}"
            );
            let new = now.names.difference(&before.names);
            // Kept once there is enough to keep.
            let new: Vec<_> = new
                .filter(|name| *name != journal::CHECKPOINT_FILE)
                .collect();
            assert!(new.is_empty(), "new in the folder: {new:?}");
            assert!(now.copies <= gym::COPIES + 1, "{} copies", now.copies);
        }
    }
    tell(&format!("{:?}", gym.done));
}

#[test]
fn four_days_take_no_more_than_the_first_two() {
    soak(4, |line| println!("{line}"));
}

#[test]
#[ignore = "takes minutes; its figures stand in DEVELOPERS.md"]
fn thirty_days_take_no_more_than_the_first_two() {
    soak(30, |line| println!("{line}"));
}
