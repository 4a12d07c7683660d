//! The masses that plates of one side can come to, and which plate leads from one to the next.
//!
//! A spot of the grid is a mass; where the bound needs more, also how many pairs of some scarce
//! kinds make it, or how long it is. With big inside there is one level for each mass of plate:
//! what may go on top depends on the outermost plate. In any order one level serves. Where rungs ask
//! for a plate of some size, a spot also tells the largest. Where there
//! are too many sums, masses are rounded down, and the grid says by how much at most. No way leads
//! from a spot to an earlier one.
use super::prepare::{Kind, Ready};
use super::price::Price;
use alloc::vec;
use alloc::vec::Vec;
use core::ops::Range;

/// A place on the grid.
pub(super) type Spot = u32;

/// No spot.
pub(super) const NOWHERE: Spot = Spot::MAX;

/// How much of a set its spot tells.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(super) struct Detail {
    /// By kind: whether its pairs are counted.
    pub counted: Vec<bool>,
    /// Lengths are told in so many nanometres, rounded down; 0 when they are not told.
    pub length_step: i64,
    /// Masses are told in so many nanograms, rounded down.
    pub mass_step: i64,
}

impl Detail {
    /// Masses alone.
    pub(super) fn plain<P>(ready: &Ready<P>) -> Self {
        Self {
            counted: vec![false; ready.kinds.len()],
            length_step: 0,
            mass_step: 1,
        }
    }
}

/// Where one more pair leads from a spot.
#[derive(Debug, Clone, Copy)]
pub(super) struct Ways {
    /// First kind that leads on.
    pub first: u8,
    /// One past the last kind that does.
    pub end: u8,
    /// Where these kinds' spots are listed.
    from: u32,
    /// The spot from which the later kinds lead on; [`NOWHERE`] when there are none.
    pub pass: Spot,
}

/// See the file's head.
#[derive(Debug)]
pub(super) struct Grid {
    /// Mass by spot, nanograms. A set on the spot has at least this mass.
    pub mass: Vec<i64>,
    /// And at most so much more.
    pub slack: i64,
    /// By spot, the size of the largest plate of its sets; empty where no rung asks for one.
    sizes: Vec<u8>,
    /// By spot.
    pub ways: Vec<Ways>,
    /// For each of the ways' kinds, where one more pair leads, or [`NOWHERE`].
    next: Vec<Spot>,
    /// From here on the spots are those of all sets, and their masses rise.
    listed: usize,
}

impl Grid {
    /// Without spots.
    pub(super) fn empty() -> Self {
        Self {
            mass: Vec::new(),
            slack: 0,
            sizes: Vec::new(),
            ways: Vec::new(),
            next: Vec::new(),
            listed: 0,
        }
    }

    /// Adds spots of these masses, from which the kinds from `first` to before `end` will lead on
    /// once [`Grid::lead`] says where; returns the first spot.
    pub(super) fn open(
        &mut self,
        masses: impl ExactSizeIterator<Item = i64>,
        (first, end): (usize, usize),
    ) -> usize {
        self.listed = self.mass.len();
        let kind = |kind: usize| u8::try_from(kind).expect("at most 32 kinds");
        let from = (0..masses.len()).map(|at| self.next.len() + at * (end - first));
        self.ways.extend(from.map(|from| Ways {
            first: kind(first),
            end: kind(end),
            from: spot(from),
            pass: NOWHERE,
        }));
        let more = masses.len() * (end - first);
        self.next.resize(self.next.len() + more, NOWHERE);
        self.mass.extend(masses);
        self.listed
    }

    /// Notes that the later kinds lead on from spot `to` as if it were `from`.
    pub(super) fn pass(&mut self, from: usize, to: usize) {
        self.ways[from].pass = spot(to);
    }

    /// Notes that one more pair of `kind`, which leads on from spot `from`, leads to spot `to`.
    pub(super) fn lead(&mut self, from: usize, kind: usize, to: usize) {
        let ways = self.ways[from];
        self.next[ways.from as usize + kind - usize::from(ways.first)] = spot(to);
    }

    /// Where one more pair leads, or [`NOWHERE`].
    pub(super) fn next(&self, kind: usize, spot: Spot) -> Spot {
        let mut at = spot;
        while let Some(ways) = self.ways.get(at as usize) {
            if kind < usize::from(ways.first) {
                return NOWHERE;
            }
            if kind < usize::from(ways.end) {
                return self.next[ways.from as usize + kind - usize::from(ways.first)];
            }
            at = ways.pass;
        }
        NOWHERE
    }

    /// Where one more pair of each of the spot's own kinds leads.
    pub(super) fn leads(&self, spot: usize) -> impl Iterator<Item = (usize, Spot)> {
        let ways = self.ways[spot];
        let kinds = usize::from(ways.first)..usize::from(ways.end);
        kinds.zip(self.next[ways.from as usize..].iter().copied())
    }

    /// The size of the largest plate of the sets on a spot.
    pub(super) fn size(&self, spot: usize) -> u8 {
        self.sizes.get(spot).copied().unwrap_or(0)
    }

    /// Whether some set has a mass from `low` to `high` and a plate of this size.
    pub(super) fn makes(&self, (low, high): (i64, i64), size: u8) -> bool {
        let masses = &self.mass[self.listed..];
        let from = self.listed + masses.partition_point(|&mass| mass < low);
        let within = (from..self.mass.len()).take_while(|&spot| self.mass[spot] <= high);
        within.into_iter().any(|spot| self.size(spot) >= size)
    }
}

/// What tells one spot from another.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
struct Sum {
    mass: i64,
    counts: u128,
    length: i64,
    size: u8,
    /// The least length of a set on this spot, unrounded.
    shortest: i64,
}

impl Sum {
    /// With one more pair of a kind, given as a sum.
    fn and(self, other: Self, times: u16) -> Self {
        let often = i64::from(times);
        Self {
            mass: self.mass + other.mass * often,
            counts: self.counts + other.counts * u128::from(times),
            length: self.length + other.length * often,
            size: self.size.max(other.size),
            shortest: self.shortest + other.shortest * often,
        }
    }

    /// Adding a plate to two sums leaves them in this order, or makes them one.
    fn spot(&self) -> (i64, u128, i64, u8) {
        (self.mass, self.counts, self.length, self.size)
    }
}

impl Grid {
    /// The grid with at most `limit` spots, if that is enough.
    pub(super) fn new<P: Price>(ready: &Ready<P>, detail: &Detail, limit: usize) -> Option<Self> {
        let most = ready.most();
        let starts = starts(ready);
        let plates = plates(ready, detail)?;
        let mut sums = vec![Sum {
            mass: 0,
            counts: 0,
            length: 0,
            size: 0,
            shortest: 0,
        }];
        let mut grid = Self::empty();
        let mut levels = Vec::with_capacity(starts.len());
        let mut all: Vec<Sum> = Vec::new();
        for (level, &first) in starts.iter().enumerate() {
            for (kind, &plate) in ready.kinds.iter().zip(&plates) {
                if level_of(&starts, kind) == level {
                    sums = with_kind(&sums, plate, kind.pairs, most, ready.sleeve);
                    if all.len() + sums.len() > limit {
                        return None;
                    }
                }
            }
            let from = grid.open(sums.iter().map(|sum| sum.mass), (first, ready.kinds.len()));
            all.extend(&sums);
            levels.push(from..all.len());
        }
        if ready.asks_for_size() {
            grid.sizes = all.iter().map(|sum| sum.size).collect();
        }
        grid.slack = slack(ready, most, detail.mass_step);
        for (&first, level) in starts.iter().zip(&levels) {
            for (kind, &plate) in plates.iter().enumerate().skip(first) {
                let to = levels[level_of(&starts, &ready.kinds[kind])].clone();
                link(&all, level.clone(), to, plate, |here, there| {
                    grid.lead(here, kind, there);
                });
            }
        }
        Some(grid)
    }
}

/// Adding a plate keeps the order of sums, so that both lists are walked once.
fn link(
    all: &[Sum],
    from: Range<usize>,
    to: Range<usize>,
    plate: Sum,
    mut note: impl FnMut(usize, usize),
) {
    let mut at = to.start;
    for here in from {
        let sum = all[here].and(plate, 1).spot();
        while at < to.end && all[at].spot() < sum {
            at += 1;
        }
        if at < to.end && all[at].spot() == sum {
            note(here, at);
        }
    }
}

fn spot(at: usize) -> Spot {
    Spot::try_from(at).expect("the grid is bounded by its work")
}

/// First kind of each level.
fn starts<P>(ready: &Ready<P>) -> Vec<usize> {
    let mut starts: Vec<usize> = ready.kinds.iter().map(|k| k.group).collect();
    starts.dedup();
    if !ready.big_inside || starts.is_empty() {
        return vec![0];
    }
    starts
}

fn level_of<P>(starts: &[usize], kind: &Kind<P>) -> usize {
    starts.partition_point(|&s| s <= kind.group) - 1
}

/// Each kind's plate as a sum, or `None` when the counts do not fit.
fn plates<P>(ready: &Ready<P>, detail: &Detail) -> Option<Vec<Sum>> {
    let mut shift = 0;
    let mut plates = Vec::with_capacity(ready.kinds.len());
    for (kind, &counted) in ready.kinds.iter().zip(&detail.counted) {
        let counts = if counted { 1 << shift } else { 0 };
        if counted {
            // Room for one too many, so that counts never run into each other.
            shift += u32::BITS - (u32::from(kind.pairs) + 1).leading_zeros();
        }
        if shift >= u128::BITS {
            return None;
        }
        plates.push(Sum {
            mass: kind.mass - kind.mass % detail.mass_step,
            counts,
            length: kind.thickness.checked_div(detail.length_step).unwrap_or(0),
            size: kind.size,
            shortest: kind.thickness,
        });
    }
    Some(plates)
}

/// All of `sums`, each with none to all pairs of a kind more.
fn with_kind(sums: &[Sum], plate: Sum, pairs: u16, most: i64, sleeve: i64) -> Vec<Sum> {
    let mut more = sums.to_vec();
    for times in 1..=pairs {
        let before = more.len();
        let added = sums.iter().map(|sum| sum.and(plate, times));
        more.extend(added.filter(|sum| sum.mass <= most && sum.shortest <= sleeve));
        if more.len() == before {
            break;
        }
    }
    // Stable, because it finds the runs that are sorted already.
    more.sort();
    more.dedup_by_key(|sum| sum.spot());
    more
}

/// How far the rounded masses of a set's plates can fall short of its mass: the fractional
/// knapsack of what each plate loses.
fn slack<P>(ready: &Ready<P>, most: i64, step: i64) -> i64 {
    let losses = ready.kinds.iter().map(|k| (k.mass % step, k.mass, k.pairs));
    let mut losses: Vec<_> = losses.filter(|(loss, ..)| *loss > 0).collect();
    losses.sort_by_key(|&(loss, mass, _)| -(i128::from(loss) << 40) / i128::from(mass));
    let (mut room, mut slack) = (most, 0);
    for (loss, mass, pairs) in losses {
        let used = i64::from(pairs).min(room / mass);
        slack += used * loss;
        room -= used * mass;
        if used < i64::from(pairs) {
            return slack + loss;
        }
    }
    slack
}
