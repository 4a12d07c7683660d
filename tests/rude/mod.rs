//! A gym of people who obey every order to the letter but go out of turn, undo, tap twice, leave
//! and come back, put their turn off, say wrong things and take them back, restart the kiosk and
//! set its clock; with real plates.
use kiosk::Folder;
use kiosk::rehearse::{Answer, Line, Rehearsal};
use std::collections::BTreeMap;
use std::path::Path;

mod faces;
mod gyms;
mod length;
mod machine;
mod people;
mod plates;
mod rudeness;
mod words;

pub(crate) use length::length_s;

use gyms::Evening;
use people::People;

/// A random source of one number, so that a seed tells all of an evening (SplitMix64, public
/// domain; constants from memory).
#[derive(Debug, Clone)]
pub(crate) struct Dice(u64);

impl Dice {
    pub(crate) const fn new(seed: u64) -> Self {
        Self(seed)
    }

    fn next(&mut self) -> u64 {
        self.0 = self.0.wrapping_add(0x9E37_79B9_7F4A_7C15);
        let mut z = self.0;
        z = (z ^ (z >> 30)).wrapping_mul(0xBF58_476D_1CE4_E5B9);
        z = (z ^ (z >> 27)).wrapping_mul(0x94D0_49BB_1331_11EB);
        z ^ (z >> 31)
    }

    /// From 0 to one less than `sides`.
    pub(crate) fn roll(&mut self, sides: u64) -> u64 {
        self.next() % sides.max(1)
    }

    /// True so often in a hundred.
    pub(crate) fn chance(&mut self, percent: u64) -> bool {
        self.roll(100) < percent
    }

    /// One of them.
    pub(crate) fn pick<'a, T>(&mut self, all: &'a [T]) -> Option<&'a T> {
        let at = self.roll(all.len() as u64);
        all.get(usize::try_from(at).unwrap_or(0))
    }
}

/// What a seed's evening came to.
#[derive(Debug, Clone, Default)]
pub(crate) struct Outcome {
    /// Sets that were done.
    pub(crate) sets: usize,
    /// Restarts, each held against the face before it.
    pub(crate) restarts: usize,
    /// Power cuts between two events of one tap, each held against the face after it.
    pub(crate) cuts: usize,
    /// Orders that were given in doubt.
    pub(crate) in_doubt: usize,
    /// Looks at the floor, each held against every lifter's own screen.
    pub(crate) floors: usize,
    /// What went wrong, with the line it happened at.
    pub(crate) faults: Vec<String>,
    /// What was done, for whoever looks for a fault.
    pub(crate) log: Vec<String>,
    /// Rude deeds by kind.
    pub(crate) deeds: BTreeMap<&'static str, usize>,
}

/// Runs the evening of a seed.
pub(crate) fn evening(seed: u64, folder: &Path) -> Outcome {
    let mut dice = Dice::new(seed);
    let evening = Evening::lay(&mut dice, folder);
    let folder = Folder::open(Some(folder)).expect("a folder");
    let mut rehearsal = Rehearsal::open(&folder, evening.at).expect("it opens");
    rehearsal.read_texts(false);
    People::new(rehearsal, dice, evening.lifters).run()
}

/// One line.
fn say(rehearsal: &mut Rehearsal, line: &Line) -> Answer {
    rehearsal.line(line).expect("it goes on")
}
