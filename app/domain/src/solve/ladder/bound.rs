//! The least price of any stretch of rungs over any spot of the grid.
//!
//! Never above the true price. Equal to it where what the spots do not tell does not bind.
use super::grid::{Grid, Spot};
use super::prepare::{MOVE_BITS, NEVER, Price, Ready};
use alloc::vec;
use alloc::vec::Vec;
use core::ops::Range;

/// Prices in 64 bits, by stretch and spot.
#[derive(Debug)]
pub(super) struct Bound {
    /// Spots of one stretch, and one more for nowhere.
    width: usize,
    /// A unit of these prices is so many of the true ones, rounded down.
    unit: Price,
    prices: Vec<i64>,
}

const NEVER_64: i64 = i64::MAX / 4;

/// The most of each that a plan of the bound has on the bar at once.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(super) struct Use {
    /// Pairs by kind.
    pub pairs: Vec<u16>,
    /// One side, nanometres.
    pub length: i64,
}

impl Use {
    /// The kinds of which there are not so many.
    pub(super) fn too_many(&self, ready: &Ready) -> Vec<usize> {
        let kinds = ready.kinds.iter().zip(&self.pairs).enumerate();
        kinds
            .filter(|(_, (kind, used))| **used > kind.pairs)
            .map(|(at, _)| at)
            .collect()
    }
}

impl Bound {
    /// Solves the recursion for every stretch and spot.
    pub(super) fn new(ready: &Ready, grid: &Grid) -> Self {
        let rungs = ready.windows.len();
        let width = grid.mass.len() + 1;
        let top = Price::from(NEVER_64 >> (MOVE_BITS + 1));
        let mut bound = Self {
            width,
            unit: (ready.dearest >> MOVE_BITS) / top + 1,
            prices: vec![NEVER_64; rungs * (rungs + 1) / 2 * width],
        };
        for last in 0..rungs {
            for first in (0..=last).rev() {
                bound.fill(ready, grid, first, last);
            }
        }
        bound
    }

    /// At most the price of rungs `first..=last` over a set on `spot`.
    pub(super) fn price(&self, first: usize, last: usize, spot: Spot) -> Price {
        let price = self.prices[self.row(first, last) + spot as usize];
        if price >= NEVER_64 {
            return NEVER;
        }
        if self.unit == 1 {
            return Price::from(price);
        }
        let units = Price::from(price >> MOVE_BITS) * self.unit;
        (units << MOVE_BITS) | Price::from(price & ((1 << MOVE_BITS) - 1))
    }

    fn row(&self, first: usize, last: usize) -> usize {
        (last * (last + 1) / 2 + last - first) * self.width
    }

    fn narrow(&self, price: Price) -> i64 {
        let units = (price >> MOVE_BITS) / self.unit;
        let units = i64::try_from(units).expect("the dearest fits");
        let moves = i64::try_from(price & ((1 << MOVE_BITS) - 1)).expect("few bits");
        (units << MOVE_BITS) | moves
    }

    fn fill(&mut self, ready: &Ready, grid: &Grid, first: usize, last: usize) {
        let most = ready.windows[first..=last].iter().map(|w| w.high).min();
        let most = most.expect("at least one rung");
        let here = self.row(first, last);
        for level in grid.levels.iter().rev() {
            let range = level.from..grid.up_to(level, most);
            if first == last {
                self.fill_one(ready, grid, first, range.clone());
            }
            for cut in first..last {
                let (left, right) = (self.row(first, cut), self.row(cut + 1, last));
                self.add_up(here, left, right, range.clone());
            }
            let stays: Vec<(i64, &[Spot])> = (level.first..ready.kinds.len())
                .map(|kind| (self.narrow(ready.stay(kind, last)), &*grid.next[kind]))
                .collect();
            let row = &mut self.prices[here..here + self.width];
            for at in range.rev() {
                let through = stays
                    .iter()
                    .map(|(stay, next)| stay + row[next[at] as usize]);
                row[at] = through.fold(row[at], i64::min);
            }
        }
    }

    /// Lowers a row to the sum of two earlier ones.
    fn add_up(&mut self, here: usize, left: usize, right: usize, range: Range<usize>) {
        let (before, from_here) = self.prices.split_at_mut(here);
        let sums = before[left..][range.clone()]
            .iter()
            .zip(&before[right..][range.clone()]);
        for (price, (left, right)) in from_here[range].iter_mut().zip(sums) {
            *price = (*price).min(left + right);
        }
    }

    fn fill_one(&mut self, ready: &Ready, grid: &Grid, rung: usize, spots: Range<usize>) {
        let here = self.row(rung, rung);
        for at in spots {
            let mass = grid.mass[at];
            if let Some(price) = ready.windows[rung].least_price(mass, mass + grid.slack) {
                self.prices[here + at] = self.narrow(price);
            }
        }
    }

    /// What one plan of this bound has on the bar at most, from an empty bar.
    pub(super) fn plan_use(&self, ready: &Ready, grid: &Grid) -> Use {
        let mut most = Use {
            pairs: vec![0; ready.kinds.len()],
            length: 0,
        };
        let mut now = most.clone();
        let last = ready.windows.len() - 1;
        if self.prices[self.row(0, last)] < NEVER_64 {
            self.follow(ready, grid, (0, last), 0, &mut now, &mut most);
        }
        most
    }

    fn follow(
        &self,
        ready: &Ready,
        grid: &Grid,
        (first, last): (usize, usize),
        spot: Spot,
        now: &mut Use,
        most: &mut Use,
    ) {
        let price = |first, last, spot: Spot| self.prices[self.row(first, last) + spot as usize];
        let here = price(first, last, spot);
        let level = grid.levels.iter().find(|l| (spot as usize) < l.to);
        let allowed = level.map_or(0, |l| l.first)..ready.kinds.len();
        for kind in allowed {
            let next = grid.next[kind][spot as usize];
            if self.narrow(ready.stay(kind, last)) + price(first, last, next) == here {
                now.pairs[kind] += 1;
                now.length += ready.kinds[kind].thickness;
                most.pairs[kind] = most.pairs[kind].max(now.pairs[kind]);
                most.length = most.length.max(now.length);
                self.follow(ready, grid, (first, last), next, now, most);
                now.pairs[kind] -= 1;
                now.length -= ready.kinds[kind].thickness;
                return;
            }
        }
        let sum = |&cut: &usize| price(first, cut, spot) + price(cut + 1, last, spot) == here;
        if let Some(cut) = (first..last).find(sum) {
            self.follow(ready, grid, (first, cut), spot, now, most);
            self.follow(ready, grid, (cut + 1, last), spot, now, most);
        }
    }
}
