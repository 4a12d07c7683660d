//! A rotation in lean integers: kinds heaviest first, turns in one row, holes by number.
//!
//! Refuses: nothing; the figures are checked before.
use super::{Loaders, Problem};
use alloc::vec::Vec;

/// A kind of plate.
#[derive(Debug, Clone, Copy)]
pub(super) struct Kind {
    /// One plate, nanograms.
    pub mass: i64,
    /// One plate, nanometres.
    pub thickness: i64,
    /// One plate, nanometres.
    pub diameter: i64,
    /// Pairs there are.
    pub pairs: u16,
    /// What a move of a pair takes with the loaders there are, nanoseconds.
    pub handling: i64,
    /// Place in the problem's list.
    pub place: usize,
}

/// What a turn asks for.
#[derive(Debug, Clone, Copy)]
pub(super) struct Want {
    /// Least load, nanograms.
    pub low: i64,
    /// Greatest load, nanograms.
    pub high: i64,
    /// Least diameter of the largest plate, nanometres; 0 for any.
    pub least_diameter: i64,
    /// Number of the hole; [`NO_HOLE`] for none.
    pub hole: u8,
    /// Nanoseconds.
    pub lasts: i64,
    /// Nanoseconds.
    pub rest: i64,
}

impl Want {
    /// Whether `load` is within the tolerance, and the largest plate large enough.
    pub(super) fn serves(&self, load: i64, largest: i64) -> bool {
        self.low <= load && load <= self.high && self.least_diameter <= largest
    }
}

/// No hole is used, or none is set.
pub(super) const NO_HOLE: u8 = 0;

/// What is set after a turn that uses hole `used`, if `set` was set before.
pub(super) fn hole_after(used: u8, set: u8) -> u8 {
    if used == NO_HOLE { set } else { used }
}

/// A checked problem, ready to be planned.
#[derive(Debug)]
pub(super) struct Model {
    /// Heaviest first.
    pub kinds: Vec<Kind>,
    /// Bar and collars, nanograms.
    pub bar: i64,
    /// Usable length, nanometres.
    pub sleeve: i64,
    /// Whether only plates as heavy or lighter go on top.
    pub big_inside: bool,
    /// Nanoseconds.
    pub hole_change: i64,
    /// Nanograms.
    pub hole_change_at_most: i64,
    /// All turns, lifter by lifter.
    pub turns: Vec<Want>,
    /// Where each lifter's turns begin in `turns`, and at the end how many there are.
    pub first: Vec<usize>,
    /// When each lifter may start the first turn.
    pub ready: Vec<i64>,
    /// Nanoseconds.
    pub now: i64,
    /// An end before this is worth no more than this one.
    pub soon_enough: i64,
    /// On the bar, as places in `kinds`, inside to outside.
    pub on_bar: Vec<u8>,
    /// Number of the hole last set.
    pub hole: u8,
    /// Whose turns come first.
    pub called: Vec<usize>,
    /// All durations are multiples of this, nanoseconds.
    pub unit: i64,
    /// No sum of durations in a sensible plan exceeds this, nanoseconds.
    pub horizon: i64,
}

impl Model {
    pub(super) fn new(problem: &Problem, soon_enough: u64) -> Self {
        let kinds = kinds(problem);
        let holes = holes(problem);
        let number = |hole: Option<u16>| {
            let at = hole.and_then(|hole| holes.binary_search(&hole).ok());
            at.map_or(NO_HOLE, |at| {
                u8::try_from(at + 1).expect("at most 129 holes")
            })
        };
        let mut first = Vec::from([0]);
        let mut turns = Vec::new();
        for lifter in &problem.lifters {
            turns.extend(lifter.turns.iter().map(|turn| Want {
                low: (turn.target - turn.below).ng(),
                high: (turn.target + turn.above).ng(),
                least_diameter: turn.least_diameter.nm(),
                hole: number(turn.hole),
                lasts: signed(turn.lasts_ns),
                rest: signed(turn.rest_ns),
            }));
            first.push(turns.len());
        }
        let now = signed(problem.standing.now_ns);
        let ready = problem.lifters.iter().map(|lifter| {
            let rest = lifter.turns.first().map_or(0, |turn| signed(turn.rest_ns));
            lifter.ended_ns.map_or(now, |ended| signed(ended) + rest)
        });
        let on_bar = problem.standing.on_bar.iter().map(|&place| {
            let at = kinds.iter().position(|kind| kind.place == place);
            u8::try_from(at.expect("checked to be in the list")).expect("at most 32 kinds")
        });
        let mut model = Self {
            bar: problem.equipment.bar_and_collars.ng(),
            sleeve: problem.equipment.sleeve.map_or(i64::MAX, |s| s.nm()),
            big_inside: problem.equipment.big_inside,
            hole_change: signed(problem.hole_change_ns),
            hole_change_at_most: problem.hole_change_at_most.ng(),
            ready: ready.collect(),
            on_bar: on_bar.collect(),
            hole: number(problem.standing.hole),
            called: problem.standing.called.clone(),
            kinds,
            turns,
            first,
            now,
            soon_enough: signed(soon_enough),
            unit: 1,
            horizon: 0,
        };
        model.measure();
        model
    }

    /// Sets unit and horizon.
    fn measure(&mut self) {
        let turns = self.turns.iter().flat_map(|t| [t.lasts, t.rest]);
        let kinds = self.kinds.iter().map(|k| k.handling);
        let all = turns.chain(kinds).chain([self.hole_change]);
        self.unit = all.fold(0, gcd).max(1);
        let stack: i64 = self
            .kinds
            .iter()
            .map(|k| self.fitting(k) * k.handling)
            .sum();
        let change = 2 * stack + self.hole_change;
        self.horizon = self.turns.iter().map(|t| t.lasts + t.rest + change).sum();
    }

    /// How many plates of a kind a sleeve may ever carry.
    pub(super) fn fitting(&self, kind: &Kind) -> i64 {
        let most = self.turns.iter().map(|t| t.high).max().unwrap_or(0);
        let light = (most - self.bar).max(0) / (2 * kind.mass);
        let on_bar = self.on_bar.len();
        i64::from(kind.pairs).min(light.max(i64::try_from(on_bar).expect("a short list")))
    }

    /// What a plan that ends at `clock` is taken to end at.
    pub(super) fn counted(&self, clock: i64) -> i64 {
        clock.max(self.soon_enough)
    }

    pub(super) fn lifters(&self) -> usize {
        self.ready.len()
    }

    /// How many turns a lifter has.
    pub(super) fn count(&self, lifter: usize) -> usize {
        self.first[lifter + 1] - self.first[lifter]
    }

    /// Bar and `side` twice.
    pub(super) fn load(&self, side: &[u8]) -> i64 {
        let masses = side.iter().map(|&k| self.kinds[usize::from(k)].mass);
        self.bar + 2 * masses.sum::<i64>()
    }

    /// Diameter of the largest plate of `side`; 0 when there is none.
    pub(super) fn largest(&self, side: &[u8]) -> i64 {
        let diameters = side.iter().map(|&k| self.kinds[usize::from(k)].diameter);
        diameters.max().unwrap_or(0)
    }

    /// Whether the pins may be moved with this load.
    pub(super) fn light(&self, load: i64) -> bool {
        load <= self.hole_change_at_most
    }

    /// What moving all of `plates` takes.
    pub(super) fn handling(&self, plates: &[u8]) -> i64 {
        plates
            .iter()
            .map(|&k| self.kinds[usize::from(k)].handling)
            .sum()
    }
}

fn kinds(problem: &Problem) -> Vec<Kind> {
    let times = match problem.loaders {
        Loaders::One => 2,
        Loaders::Two => 1,
    };
    let plates = problem.equipment.plates.iter().enumerate();
    let mut kinds: Vec<Kind> = plates
        .map(|(place, plate)| Kind {
            mass: plate.mass.ng(),
            thickness: plate.thickness.nm(),
            diameter: plate.diameter.nm(),
            pairs: plate.pairs,
            handling: times * signed(plate.handling_ns),
            place,
        })
        .collect();
    kinds.sort_by_key(|k| (-k.mass, k.handling, k.thickness, k.place));
    kinds
}

fn holes(problem: &Problem) -> Vec<u16> {
    let turns = problem.lifters.iter().flat_map(|l| &l.turns);
    let asked = turns.filter_map(|turn| turn.hole);
    let mut holes: Vec<u16> = asked.chain(problem.standing.hole).collect();
    holes.sort_unstable();
    holes.dedup();
    holes
}

fn signed(ns: u64) -> i64 {
    i64::try_from(ns).expect("times are checked to be far below 2^63")
}

fn gcd(a: i64, b: i64) -> i64 {
    let (mut a, mut b) = (a, b);
    while b != 0 {
        (a, b) = (b, a % b);
    }
    a
}
