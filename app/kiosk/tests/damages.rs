//! Damage to every file of the data folder, seeded: each is told, or does no harm; none is silent.
//!
//! `PINLADDER_DAMAGES=400 cargo test -p kiosk --test damages` does so many to each file.
#[path = "evening/mod.rs"]
mod evening;

use disk::Random;
use domain::State;
use evening::lift_until;
use kiosk::clock::BenchClock;
use kiosk::kiosk::remake_record;
use kiosk::{Folder, Kiosk, KioskError};
use std::collections::BTreeMap;
use std::fs;
use std::path::Path;

type Files = BTreeMap<String, Vec<u8>>;

/// Damages to each file, where nobody asks for more.
const FEW: u64 = 10;
/// Events of the evening: enough for the state to be kept.
const EVENTS: u64 = 300;

fn open(data: &Path) -> Result<Kiosk, KioskError> {
    let day = chrono::NaiveDate::from_ymd_opt(2026, 12, 2).expect("a day");
    let clock = BenchClock::at(day.and_hms_opt(18, 0, 0).expect("a time"));
    let folder = Folder::open(Some(data)).expect("a folder");
    let _alone = folder.alone().expect("nobody else");
    Kiosk::open(&folder, Box::new(clock))
}

/// A folder as a power cut leaves it in the middle of an evening, and as a kiosk leaves it that was
/// ended: what lay in the logs was brought home.
fn left() -> ([Files; 2], State) {
    let data = tempfile::tempdir().expect("a folder");
    let mut kiosk = open(data.path()).expect("opens");
    lift_until(&mut kiosk, EVENTS);
    for _ in 0..25 {
        kiosk.tick();
    }
    lift_until(&mut kiosk, EVENTS + 12);
    let (cut, state) = (files(data.path()), kiosk.state().clone());
    drop(kiosk);
    ([cut, files(data.path())], state)
}

fn files(folder: &Path) -> Files {
    let entry = |entry: fs::DirEntry| {
        let bytes = fs::read(entry.path()).ok()?;
        Some((entry.file_name().to_string_lossy().into_owned(), bytes))
    };
    let found = fs::read_dir(folder).expect("a folder").flatten();
    found.filter_map(entry).collect()
}

/// What a hand, a disk or a power cut does to a file; `None` takes it away.
fn damage(bytes: &[u8], random: &mut Random) -> (String, Option<Vec<u8>>) {
    let many = bytes.len() as u64;
    let at = usize::try_from(random.below(many)).expect("small");
    let mut bytes = bytes.to_vec();
    let what = match random.below(10) {
        0 => return ("taken away".to_owned(), None),
        1 => {
            bytes.clear();
            "emptied".to_owned()
        }
        2 | 3 => {
            bytes.truncate(at);
            format!("cut at {at}")
        }
        4 | 5 => {
            let end = bytes.len().min(at + 512);
            bytes[at..end].fill(0);
            format!("512 zeros at {at}")
        }
        6 => {
            bytes.extend_from_slice(b"\x00noise");
            "noise behind it".to_owned()
        }
        _ if bytes.is_empty() => "as it was".to_owned(),
        _ => {
            bytes[at] ^= 1 << random.below(8);
            format!("a bit of byte {at}")
        }
    };
    (what, Some(bytes))
}

/// What came of it.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
enum Came {
    /// The start says what is wrong and what to do.
    Refused,
    /// The face says it, or a look at the whole journal and the record that follows the start. A file
    /// of the gym that reads as another text is taken as what the owner wrote, and that is told too.
    Told,
    /// All that was there is there.
    Harmless,
}

fn came(data: &Path, before: &State) -> Came {
    let proven = journal::verify(&data.join("journal.sqlite"));
    let mut kiosk = match open(data) {
        Ok(kiosk) => kiosk,
        Err(error) => {
            assert!(error.to_string().len() > 20, "what is to be done? {error}");
            return Came::Refused;
        }
    };
    let told = !kiosk.frame().notice.is_empty() || proven.is_err();
    let told = record_is_told(data, &mut kiosk) || told;
    let now = kiosk.state();
    let done = now.lifts == before.lifts && now.past == before.past && now.bars == before.bars;
    let kept = done && now.plan == before.plan && now.health == before.health;
    match (kept && now.files == before.files, told) {
        (_, true) => Came::Told,
        (true, false) => Came::Harmless,
        (false, false) => panic!("something is lost, and not a word"),
    }
}

/// Whether the look at the record, which follows every start, finds it damaged; it is then told and
/// made again, as the run loop does it.
fn record_is_told(data: &Path, kiosk: &mut Kiosk) -> bool {
    match journal::prove_record(data) {
        Ok(true) => false,
        Ok(false) => {
            kiosk.tell_record();
            assert!(kiosk.frame().notice.contains("record.sqlite"));
            let folder = Folder::open(Some(data)).expect("a folder");
            remake_record(&folder);
            kiosk.follow_anew(&folder);
            assert!(journal::prove_record(data).expect("can be told"));
            true
        }
        // The page says that it cannot be read, and what to do.
        Err(error) => {
            assert!(error.to_string().len() > 20, "what is to be done? {error}");
            true
        }
    }
}

#[test]
fn every_file_damaged_is_told_or_harmless() {
    let asked = std::env::var("PINLADDER_DAMAGES").ok();
    let many = asked.map_or(FEW, |text| text.parse().expect("a number"));
    let ([cut, ended], before) = left();
    assert!(
        cut.contains_key("journal.state") && cut.contains_key("programme.toml") && cut.len() >= 9,
        "{:?}",
        cut.keys()
    );
    // The logs hold the pages that an evening changes; the record's own file is read without.
    let of_ended = (&"record.sqlite".to_owned(), &ended);
    let of_cut = cut.keys().map(|name| (name, &cut));
    for (seed, (name, left)) in (0..).zip(of_cut.chain([of_ended])) {
        let bytes = &left[name];
        let mut random = Random::of(seed);
        let mut tally = BTreeMap::<Came, u64>::new();
        for round in 0..many {
            let (what, damaged) = damage(bytes, &mut random);
            let data = tempfile::tempdir().expect("a folder");
            for (other, bytes) in left {
                let bytes = match &damaged {
                    Some(damaged) if other == name => damaged,
                    None if other == name => continue,
                    _ => bytes,
                };
                fs::write(data.path().join(other), bytes).expect("writes");
            }
            println!("{name}, round {round}: {what}");
            *tally.entry(came(data.path(), &before)).or_default() += 1;
        }
        println!("{name}: {tally:?}");
        // After a cut the record's pages lie in its log; the file itself is read once it was ended.
        let is_read = match name.as_str() {
            "record.sqlite" => std::ptr::eq(left, &ended),
            name => name == "programme.toml",
        };
        if is_read && many >= 100 {
            assert!(tally.contains_key(&Came::Told), "{name}: {tally:?}");
        }
    }
}
