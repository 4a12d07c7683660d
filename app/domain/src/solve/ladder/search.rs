//! The true least price of a stretch of rungs over a set of pairs: branch and bound with memory.
//!
//! Refuses: guesses. What it returns within the budget is exact, above it a lower bound.
use super::bound::{Bound, stretches};
use super::grid::{Grid, NOWHERE, Spot};
use super::prepare::{COUNT_BITS, Ready};
use super::price::Price;
use super::prices::Prices;
use super::relaxed::Relaxed;
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
    /// Of the largest plate.
    size: u8,
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

/// Stretches between two questions whether there is time left.
const BETWEEN: usize = 512;

/// The search and what it remembers.
pub(super) struct Search<'a, P> {
    /// The problem.
    pub ready: &'a Ready<P>,
    grid: Grid,
    bound: Bound<P>,
    table: Table<P>,
    /// Ways of the stretches under way, each with its bound: one stack for all depths.
    ways: Vec<(P, Way)>,
    /// Stretches that may still be looked into.
    effort: usize,
    /// Whether there is time left.
    go_on: &'a mut dyn FnMut() -> bool,
}

impl<'a, P: Price> Search<'a, P> {
    /// Remembers nothing yet.
    pub(super) fn new(ready: &'a Ready<P>, grid: Grid, go_on: &'a mut dyn FnMut() -> bool) -> Self {
        Self {
            bound: Bound::new(ready, &grid),
            ready,
            grid,
            table: Table::new(),
            ways: Vec::new(),
            effort: 0,
            go_on,
        }
    }

    /// Whether there is time left.
    pub(super) fn goes_on(&mut self) -> bool {
        (self.go_on)()
    }

    /// Takes the bound over another grid, which is `finer` or else must say more of the whole
    /// ladder to be taken. What was found stays true.
    pub(super) fn sharpen(&mut self, grid: Grid, finer: bool) -> bool {
        if !(self.go_on)() {
            return false;
        }
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

    /// The same ladder, as the bound sees it.
    pub(super) fn relaxed(&self) -> Relaxed<'_, P> {
        Relaxed {
            ready: self.ready,
            grid: &self.grid,
            bound: &self.bound,
        }
    }

    /// Spots times stretches of the bound.
    pub(super) fn size(&self) -> usize {
        self.grid.mass.len() * stretches(self.ready.windows.len())
    }
}

impl<P: Price> Prices<P> for Search<'_, P> {
    type Set = Beneath;

    fn ready(&self) -> &Ready<P> {
        self.ready
    }

    fn bare(&self) -> Beneath {
        Beneath {
            counts: 0,
            mass: 0,
            thickness: 0,
            size: 0,
            spot: 0,
            first: 0,
        }
    }

    fn with(&self, beneath: &Beneath, kind: usize) -> Option<Beneath> {
        let plate = &self.ready.kinds[kind];
        let bits = u16::BITS - plate.pairs.leading_zeros();
        let used = (beneath.counts >> plate.shift) & ((1 << bits) - 1);
        let thickness = beneath.thickness + plate.thickness;
        let spot = self.grid.next(kind, beneath.spot);
        let allowed = kind >= beneath.first
            && used < u128::from(plate.pairs)
            && thickness <= self.ready.sleeve
            && spot != NOWHERE;
        allowed.then(|| Beneath {
            counts: beneath.counts + (1 << plate.shift),
            mass: beneath.mass + plate.mass,
            thickness,
            size: beneath.size.max(plate.size),
            spot,
            first: if self.ready.big_inside {
                plate.group
            } else {
                0
            },
        })
    }

    fn least(&self, first: usize, last: usize, beneath: &Beneath) -> P {
        if first > last {
            return P::default();
        }
        self.bound.price(first, last, beneath.spot)
    }

    fn alone(&self, rung: usize, beneath: &Beneath) -> P {
        let window = &self.ready.windows[rung];
        if (window.low..=window.high).contains(&beneath.mass) && beneath.size >= window.size {
            window.price(beneath.mass)
        } else {
            P::NEVER
        }
    }

    fn price(&mut self, first: usize, last: usize, beneath: &Beneath, budget: P) -> P {
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
            return P::NEVER;
        }
        self.effort -= 1;
        if self.effort.is_multiple_of(BETWEEN) && !(self.go_on)() {
            self.effort = 0;
            return P::NEVER;
        }
        let base = self.ways.len();
        self.collect_ways(first, last, beneath);
        let mut best = P::NEVER;
        let mut floor = P::NEVER;
        if first == last {
            best = self.alone(first, beneath);
        }
        for at in base..self.ways.len() {
            let limit = budget.min(best - P::ONE);
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
            return P::NEVER;
        }
        let exact = best <= budget;
        let price = if exact { best } else { floor.min(best) };
        self.table.put(key, Known { price, exact });
        price
    }

    fn spent(&self) -> bool {
        self.effort == 0
    }
}

impl<P: Price> Search<'_, P> {
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

    fn follow(&mut self, way: Way, first: usize, last: usize, beneath: &Beneath, limit: P) -> P {
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
