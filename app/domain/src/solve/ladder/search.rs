//! The true least price of a stretch of rungs over a set of pairs: branch and bound with memory.
//!
//! Refuses: guesses. What it returns within the budget is exact, above it a lower bound.
use super::bound::{Bound, Use};
use super::grid::{Grid, Spot};
use super::prepare::{COUNT_BITS, NEVER, Price, Ready};
use super::table::{Known, Table};
use alloc::vec::Vec;

/// The pairs that lie beneath all of a stretch.
#[derive(Debug, Clone, Copy)]
pub(super) struct Beneath {
    /// How many of each kind, packed.
    counts: u128,
    /// One side, nanograms.
    mass: i64,
    /// One side, nanometres.
    thickness: i64,
    spot: Spot,
    /// First kind that may go on top.
    first: usize,
}

/// What to do with a stretch.
#[derive(Debug, Clone, Copy)]
enum Way {
    /// One more pair of the kind, for all of it.
    Stay(usize),
    /// Nothing stays for all of it: apart after this rung.
    Cut(usize),
}

/// The search and what it remembers.
#[derive(Debug)]
pub(super) struct Search<'a> {
    /// The problem.
    pub ready: &'a Ready,
    grid: Grid,
    bound: Bound,
    table: Table,
    /// Ways of the stretches under way, each with its bound: one stack for all depths.
    ways: Vec<(Price, Way)>,
    /// Stretches that may still be looked into.
    effort: usize,
}

impl<'a> Search<'a> {
    /// Remembers nothing yet.
    pub(super) fn new(ready: &'a Ready, grid: Grid) -> Self {
        Self {
            bound: Bound::new(ready, &grid),
            ready,
            grid,
            table: Table::new(),
            ways: Vec::new(),
            effort: 0,
        }
    }

    /// Takes the bound over another grid, which is `finer` or else must say more of the whole
    /// ladder to be taken. What was found stays true.
    pub(super) fn sharpen(&mut self, grid: Grid, finer: bool) -> bool {
        let bound = Bound::new(self.ready, &grid);
        let last = self.ready.windows.len() - 1;
        let better = finer || bound.price(0, last, 0) > self.bound.price(0, last, 0);
        if better {
            self.bound = bound;
            self.grid = grid;
        }
        better
    }

    /// Allows so many more stretches to be looked into.
    pub(super) fn allow(&mut self, effort: usize) {
        self.effort = effort;
    }

    /// Whether the search broke off: then nothing that it returned since counts.
    pub(super) fn spent(&self) -> bool {
        self.effort == 0
    }

    /// What the bound's own plan has on the bar at most.
    pub(super) fn plan_use(&self) -> Use {
        self.bound.plan_use(self.ready, &self.grid)
    }

    /// Spots times stretches of the bound.
    pub(super) fn size(&self) -> usize {
        self.grid.mass.len() * self.ready.windows.len() * (self.ready.windows.len() + 1) / 2
    }

    /// No pairs at all.
    pub(super) fn bare(&self) -> Beneath {
        Beneath {
            counts: 0,
            mass: 0,
            thickness: 0,
            spot: 0,
            first: 0,
        }
    }

    /// One more pair of `kind` on the outside, where that is allowed.
    pub(super) fn with(&self, beneath: &Beneath, kind: usize) -> Option<Beneath> {
        let plate = &self.ready.kinds[kind];
        let bits = u16::BITS - plate.pairs.leading_zeros();
        let used = (beneath.counts >> plate.shift) & ((1 << bits) - 1);
        let thickness = beneath.thickness + plate.thickness;
        let spot = self.grid.next[kind][beneath.spot as usize];
        let allowed = kind >= beneath.first
            && used < u128::from(plate.pairs)
            && thickness <= self.ready.sleeve
            && spot != self.grid.nowhere();
        allowed.then(|| Beneath {
            counts: beneath.counts + (1 << plate.shift),
            mass: beneath.mass + plate.mass,
            thickness,
            spot,
            first: if self.ready.big_inside {
                plate.group
            } else {
                0
            },
        })
    }

    /// A lower bound for rungs `first..=last`, read off at once. No rungs cost nothing.
    pub(super) fn least(&self, first: usize, last: usize, beneath: &Beneath) -> Price {
        if first > last {
            return 0;
        }
        self.bound.price(first, last, beneath.spot)
    }

    /// The price of rung `rung` with nothing on top of `beneath`.
    pub(super) fn alone(&self, rung: usize, beneath: &Beneath) -> Price {
        let window = &self.ready.windows[rung];
        if (window.low..=window.high).contains(&beneath.mass) {
            window.price(beneath.mass)
        } else {
            NEVER
        }
    }

    /// The least price of rungs `first..=last` over `beneath` if it is within `budget`, else a
    /// lower bound above `budget`.
    pub(super) fn price(
        &mut self,
        first: usize,
        last: usize,
        beneath: &Beneath,
        budget: Price,
    ) -> Price {
        let least = self.least(first, last, beneath);
        if first > last || least > budget {
            return least;
        }
        let key = beneath.counts | (((first << 6) | last) as u128) << COUNT_BITS;
        if let Some(known) = self.table.get(key)
            && (known.exact || known.price > budget)
        {
            return known.price;
        }
        if self.effort == 0 {
            return NEVER;
        }
        self.effort -= 1;
        let base = self.ways.len();
        self.collect_ways(first, last, beneath);
        let mut best = NEVER;
        let mut floor = NEVER;
        if first == last {
            best = self.alone(first, beneath);
        }
        for at in base..self.ways.len() {
            let limit = budget.min(best - 1);
            let (bound, way) = self.ways[at];
            if bound > limit {
                floor = floor.min(bound);
                break;
            }
            let price = self.follow(way, first, last, beneath, limit);
            if price <= limit {
                best = price;
            } else {
                floor = floor.min(price);
            }
        }
        self.ways.truncate(base);
        if self.effort == 0 {
            return NEVER;
        }
        let exact = best <= budget;
        let price = if exact { best } else { floor.min(best) };
        self.table.put(key, Known { price, exact });
        price
    }

    /// Least bound first.
    fn collect_ways(&mut self, first: usize, last: usize, beneath: &Beneath) {
        let base = self.ways.len();
        for kind in beneath.first..self.ready.kinds.len() {
            if let Some(on) = self.with(beneath, kind) {
                let bound = self.ready.stay(kind, last) + self.least(first, last, &on);
                self.ways.push((bound, Way::Stay(kind)));
            }
        }
        for cut in first..last {
            let bound = self.least(first, cut, beneath) + self.least(cut + 1, last, beneath);
            self.ways.push((bound, Way::Cut(cut)));
        }
        self.ways[base..].sort_by_key(|(bound, _)| *bound);
    }

    fn follow(
        &mut self,
        way: Way,
        first: usize,
        last: usize,
        beneath: &Beneath,
        limit: Price,
    ) -> Price {
        match way {
            Way::Stay(kind) => {
                let on = self.with(beneath, kind).expect("it was allowed before");
                let stay = self.ready.stay(kind, last);
                stay + self.price(first, last, &on, limit - stay)
            }
            Way::Cut(cut) => {
                let rest = self.least(cut + 1, last, beneath);
                let left = self.price(first, cut, beneath, limit - rest);
                if left + rest > limit {
                    return left + rest;
                }
                left + self.price(cut + 1, last, beneath, limit - left)
            }
        }
    }
}
