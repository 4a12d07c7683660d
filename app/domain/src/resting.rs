//! Where a bar lies between sets, and how far it is stripped before it is made to lie elsewhere.
//!
//! Refuses: to know where the bar is before the first set of the day.
use crate::believed::Belief;
use crate::gym::Gym;
use crate::mass::Mass;
use crate::moment::Moment;
use crate::sheet::LiftSheet;
use crate::state::{Entered, LiftRun, State};

/// Where a bar lies.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Resting {
    /// On its plates.
    Floor,
    /// On the pins in this hole.
    Pins(u16),
    /// In the hooks in this hole; in `None` where no hole is written.
    Hooks(Option<u16>),
}

/// What is done before the bar can lie where the next set starts.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct StripFirst {
    /// With no more than this on the bar, itself and collars included, pins and hooks are moved.
    pub to: Mass,
    /// Where it lies then.
    pub resting: Resting,
}

impl LiftSheet {
    /// Where the bar lies before a rung; `None` on pins whose hole is not known.
    #[must_use]
    pub fn resting(&self, rung: usize) -> Option<Resting> {
        if self.hooks.is_some() {
            return Some(Resting::Hooks(self.hook_hole(rung)));
        }
        let floor = self.is_from_floor().then_some(Resting::Floor);
        self.pin_hole(rung).map(Resting::Pins).or(floor)
    }
}

/// How far the bar is stripped before it lies where a rung of `run` starts: where the last set on it
/// today, whoever's, left it elsewhere with more than the rack's `hole_change_at_most`, and nobody
/// has built it up for this turn since. Nobody lifts a loaded bar from hole to hole; of a bar in
/// doubt nothing is known, and it is looked at first. Common practice, no source. With what is
/// believed comes whether that is what the turn needs.
#[must_use]
pub fn strip_first(
    gym: &Gym,
    state: &State,
    run: &LiftRun,
    rung: usize,
    (belief, is_done): (&Belief, bool),
) -> Option<StripFirst> {
    let sheet = &run.sheet;
    let rack = gym.racks.iter().find(|rack| rack.name == sheet.rack)?;
    let resting = sheet.resting(rung)?;
    let (set_at, left) = last_on(state, run)?;
    if belief.in_doubt || left == resting || (is_done && is_said_since(state, run, set_at)) {
        return None;
    }
    let bare = sheet.bar.mass + sheet.bar.collars;
    let to = rack.hole_change_at_most.max(bare);
    (bare + belief.holds.mass() > to).then_some(StripFirst { to, resting })
}

/// When the last set on the bar of `run` was today, and where it left the bar.
fn last_on(state: &State, run: &LiftRun) -> Option<(Moment, Resting)> {
    let (bar, rack) = (&run.sheet.bar.name, &run.sheet.rack);
    let here = |other: &&LiftRun| {
        let sheet = &other.sheet;
        // A lean lift no longer knows where it was done.
        other.day == run.day && !other.is_lean && sheet.bar.name == *bar && sheet.rack == *rack
    };
    let sets = state.lifts.values().filter(here).filter_map(|other| {
        let passed = other.passed().enumerate();
        let sets = passed.filter(|(_, entry)| matches!(entry.what, Entered::Set { .. }));
        let (rung, entry) = sets.last()?;
        Some((entry.at, other.sheet.resting(rung)?))
    });
    sets.max_by_key(|(at, _)| *at)
}

/// Whether somebody said after that set what the bar holds.
fn is_said_since(state: &State, run: &LiftRun, set_at: Moment) -> bool {
    let bar = state.bars.get(&run.sheet.bar.name);
    bar.is_some_and(|bar| bar.at > set_at)
}
