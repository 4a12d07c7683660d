//! A gym of people who obey every order to the letter but go out of turn, undo, tap twice, leave
//! and come back, put their turn off, restart the kiosk and set its clock; with real plates.
use kiosk::Folder;
use kiosk::rehearse::{Answer, Line, Rehearsal, moment};
use std::collections::BTreeMap;
use std::path::Path;

mod people;
mod plates;

pub(crate) use people::Evening;
pub(crate) use plates::Bars;

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
}

/// What a seed's evening came to.
#[derive(Debug, Clone, Default)]
pub(crate) struct Outcome {
    /// Sets that were done.
    pub(crate) sets: usize,
    /// Restarts.
    pub(crate) restarts: usize,
    /// Orders that were given in doubt.
    pub(crate) in_doubt: usize,
    /// What went wrong, with the line it happened at.
    pub(crate) faults: Vec<String>,
    /// What was done, for whoever looks for a fault.
    pub(crate) log: Vec<String>,
    /// Rude deeds by kind.
    pub(crate) deeds: BTreeMap<&'static str, usize>,
}

/// Runs the evening of a seed.
pub(crate) fn evening(seed: u64, folder: &Path) -> Outcome {
    let folder = Folder::open(Some(folder)).expect("a folder");
    let at = moment("2026-12-02T18:00").expect("a time");
    let mut rehearsal = Rehearsal::open(&folder, at).expect("it opens");
    rehearsal.read_texts(false);
    Evening::new(rehearsal, Dice::new(seed)).run()
}

/// What must look the same after a restart.
fn same_face(before: &Answer, after: &Answer) -> Result<(), String> {
    let key = |a: &Answer| {
        let labels: Vec<&str> = a.buttons.iter().map(|b| b.label.as_str()).collect();
        format!(
            "{:?}",
            (
                (a.screen, &a.lifter, &a.lift, &a.load, a.reps),
                (&a.left, &a.right, &a.take_off, &a.put_on, &a.believed),
                (a.hole, &a.mats, a.sets_logged, labels),
            )
        )
    };
    if key(before) != key(after) {
        return Err(format!("{} became {}", key(before), key(after)));
    }
    let (old, new) = (before.rest_s.unwrap_or(0), after.rest_s.unwrap_or(0));
    if old.abs_diff(new) > 1 {
        return Err(format!("a rest of {old} s became {new} s"));
    }
    Ok(())
}

/// One line.
fn say(rehearsal: &mut Rehearsal, line: &Line) -> Answer {
    rehearsal.line(line).expect("it goes on")
}

/// Whether the face says that a plate hangs on another bar.
fn lacks(face: &Answer) -> bool {
    face.warnings
        .iter()
        .any(|told| told.contains("take it from there"))
}
