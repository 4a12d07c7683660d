//! The masses that plates of one side can come to, and which plate leads from one to the next.
//!
//! A spot of the grid is a mass; where the bound needs more, also how many pairs of some scarce
//! kinds make it, or how long it is. With big inside there is one level for each mass of plate:
//! what may go on top depends on the outermost plate. In any order one level serves. Where there
//! are too many sums, masses are rounded down, and the grid says by how much at most.
use super::prepare::{Kind, Ready};
use alloc::vec;
use alloc::vec::Vec;

/// A place on the grid.
pub(super) type Spot = u32;

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
    pub(super) fn plain(ready: &Ready) -> Self {
        Self {
            counted: vec![false; ready.kinds.len()],
            length_step: 0,
            mass_step: 1,
        }
    }
}

/// Sets whose outermost plate is of one mass, or all sets.
#[derive(Debug)]
pub(super) struct Level {
    /// First spot; the masses rise from there.
    pub from: usize,
    /// One past the last spot.
    pub to: usize,
    /// First kind that may go on top; all lighter ones may.
    pub first: usize,
}

/// See the file's head.
#[derive(Debug)]
pub(super) struct Grid {
    /// Heaviest outermost plate first.
    pub levels: Vec<Level>,
    /// Mass by spot, nanograms. A set on the spot has at least this mass.
    pub mass: Vec<i64>,
    /// And at most so much more.
    pub slack: i64,
    /// By kind, then by spot: where one more pair leads. [`Grid::nowhere`] is no spot.
    pub next: Vec<Vec<Spot>>,
}

/// What tells one spot from another.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
struct Sum {
    mass: i64,
    counts: u128,
    length: i64,
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
            shortest: self.shortest + other.shortest * often,
        }
    }

    fn spot(&self) -> (i64, u128, i64) {
        (self.mass, self.counts, self.length)
    }
}

impl Grid {
    /// The grid with at most `limit` spots, if that is enough.
    pub(super) fn new(ready: &Ready, detail: &Detail, limit: usize) -> Option<Self> {
        let most = ready.most();
        let starts = starts(ready);
        let plates = plates(ready, detail)?;
        let mut sums = vec![Sum {
            mass: 0,
            counts: 0,
            length: 0,
            shortest: 0,
        }];
        let mut lists = Vec::with_capacity(starts.len());
        let mut total = 0;
        for (level, _) in starts.iter().enumerate() {
            for (kind, &plate) in ready.kinds.iter().zip(&plates) {
                if level_of(&starts, kind) == level {
                    sums = with_kind(&sums, plate, kind.pairs, most, ready.sleeve);
                    if total + sums.len() > limit {
                        return None;
                    }
                }
            }
            total += sums.len();
            lists.push(sums.clone());
        }
        let mut grid = Self::bare(&starts, &lists);
        grid.slack = slack(ready, most, detail.mass_step);
        let all: Vec<Sum> = lists.into_iter().flatten().collect();
        let nowhere = grid.nowhere();
        for (kind, &plate) in ready.kinds.iter().zip(&plates) {
            let to = &grid.levels[level_of(&starts, kind)];
            let mut next = vec![nowhere; all.len()];
            for level in grid.levels.iter().filter(|l| l.first <= kind.group) {
                link(&all, level, to, plate, &mut next);
            }
            grid.next.push(next);
        }
        Some(grid)
    }

    /// The spot that is none.
    pub(super) fn nowhere(&self) -> Spot {
        spot(self.mass.len())
    }

    /// One past the last spot of `level` whose mass is at most `most`.
    pub(super) fn up_to(&self, level: &Level, most: i64) -> usize {
        level.from + self.mass[level.from..level.to].partition_point(|&m| m <= most)
    }

    fn bare(starts: &[usize], lists: &[Vec<Sum>]) -> Self {
        let mut from = 0;
        let levels = starts.iter().zip(lists).map(|(&first, list)| {
            from += list.len();
            Level {
                from: from - list.len(),
                to: from,
                first,
            }
        });
        Self {
            levels: levels.collect(),
            mass: lists.iter().flatten().map(|sum| sum.mass).collect(),
            slack: 0,
            next: Vec::new(),
        }
    }
}

/// Adding a plate keeps the order of sums, so that both lists are walked once.
fn link(all: &[Sum], from: &Level, to: &Level, plate: Sum, next: &mut [Spot]) {
    let mut at = to.from;
    for here in from.from..from.to {
        let sum = all[here].and(plate, 1).spot();
        while at < to.to && all[at].spot() < sum {
            at += 1;
        }
        if at < to.to && all[at].spot() == sum {
            next[here] = spot(at);
        }
    }
}

fn spot(at: usize) -> Spot {
    Spot::try_from(at).expect("the grid is bounded by its work")
}

/// First kind of each level.
fn starts(ready: &Ready) -> Vec<usize> {
    let mut starts: Vec<usize> = ready.kinds.iter().map(|k| k.group).collect();
    starts.dedup();
    if !ready.big_inside || starts.is_empty() {
        return vec![0];
    }
    starts
}

fn level_of(starts: &[usize], kind: &Kind) -> usize {
    starts.partition_point(|&s| s <= kind.group) - 1
}

/// Each kind's plate as a sum, or `None` when the counts do not fit.
fn plates(ready: &Ready, detail: &Detail) -> Option<Vec<Sum>> {
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
fn slack(ready: &Ready, most: i64, step: i64) -> i64 {
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
