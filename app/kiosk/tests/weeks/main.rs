//! A whole gym through weeks on simulated time, from a seed: lifters, a coach at another machine,
//! sticks, visitors of the page, foot switches, the clock and the disk, with faults at random. After
//! each fault: all that was acknowledged is there once and in order, the state is a replay, the
//! record says the same, and after a kill the face is the same.
//!
//! `PINLADDER_WEEKS=100 cargo test --workspace --test weeks` goes through so many seeds of three
//! weeks each. A failing seed is told and fails again.
mod faults;
mod gym;
mod people;

use disk::Disk;
use gym::Gym;
use std::collections::BTreeMap;
use std::panic::{AssertUnwindSafe, catch_unwind};

/// Days on which somebody trains, of three weeks, where more is asked for; else of one.
const EVENINGS: [u64; 2] = [4, 12];
/// Deeds of an evening between two faults.
const DEEDS: usize = 8;
/// Faults of an evening.
const FAULTS: usize = 3;

fn weeks(disk: &Disk, seed: u64, evenings: u64) -> BTreeMap<&'static str, u64> {
    disk.begin(&[]);
    let mut gym = Gym::open(seed);
    for _ in 0..evenings {
        for _ in 0..FAULTS {
            gym.evening(DEEDS);
            gym.fault(disk);
        }
        for _ in 0..=gym.random.below(2) {
            gym.sleep(3_600);
        }
        let before = gym.acknowledged();
        gym.holds(&before);
    }
    let events = gym.kiosk.seq();
    gym.done.insert("events", events);
    assert!(
        events > 25 * evenings,
        "only {events} events in {evenings} evenings"
    );
    gym.done
}

#[test]
fn a_gym_goes_through_weeks_of_faults_and_loses_nothing() {
    let disk = Disk::take();
    let asked = std::env::var("PINLADDER_WEEKS").ok();
    let seeds = asked
        .as_deref()
        .map_or(2, |text| text.parse().expect("a number"));
    let evenings = EVENINGS[usize::from(asked.is_some())];
    let mut all = BTreeMap::<&str, u64>::new();
    for seed in 0..seeds {
        let tried = AssertUnwindSafe(|| weeks(&disk, seed, evenings));
        let done = catch_unwind(tried).unwrap_or_else(|_| panic!("seed {seed}"));
        for (what, many) in done {
            *all.entry(what).or_default() += many;
        }
    }
    println!("{seeds} seeds of {evenings} evenings: {all:?}");
}
