//! The ladder as a bound sees it: what its spots do not tell is forgotten.
//!
//! If its plan can be carried out all the same, that is the plan. Refuses: nothing.
use super::bound::Bound;
use super::grid::{Grid, NOWHERE, Spot};
use super::prepare::Ready;
use super::price::Price;
use super::prices::Prices;
use super::trace;
use alloc::vec;
use alloc::vec::Vec;

/// See the file's head.
#[derive(Debug, Clone, Copy)]
pub(super) struct Relaxed<'a, P> {
    pub ready: &'a Ready<P>,
    pub grid: &'a Grid,
    pub bound: &'a Bound<P>,
}

/// The most of each that a plan has on the bar at once.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(super) struct Use {
    /// Pairs by kind.
    pub pairs: Vec<u16>,
    /// One side, nanometres.
    pub length: i64,
}

impl Use {
    /// The kinds of which there are not so many.
    pub(super) fn too_many<P>(&self, ready: &Ready<P>) -> Vec<usize> {
        let kinds = ready.kinds.iter().zip(&self.pairs).enumerate();
        kinds
            .filter(|(_, (kind, used))| **used > kind.pairs)
            .map(|(at, _)| at)
            .collect()
    }
}

impl<P: Price> Relaxed<'_, P> {
    /// The first of the best plans, if the grid tells masses exactly.
    pub(super) fn plan(mut self) -> Option<Vec<Vec<usize>>> {
        if self.grid.slack > 0 {
            return None;
        }
        trace::stacks(&mut self)
    }

    /// What one of the best plans has on the bar at most.
    pub(super) fn plan_use(mut self) -> Use {
        let kinds = &self.ready.kinds;
        let mut most = Use {
            pairs: vec![0; kinds.len()],
            length: 0,
        };
        for stack in trace::stacks(&mut self).unwrap_or_default() {
            let mut pairs = vec![0; kinds.len()];
            let mut length = 0;
            for place in stack {
                let kind = kinds.iter().position(|kind| kind.place == place);
                let kind = kind.expect("a kind for every place");
                pairs[kind] += 1;
                length += kinds[kind].thickness;
            }
            for (most, pairs) in most.pairs.iter_mut().zip(pairs) {
                *most = pairs.max(*most);
            }
            most.length = most.length.max(length);
        }
        most
    }
}

impl<P: Price> Prices<P> for Relaxed<'_, P> {
    type Set = Spot;

    fn ready(&self) -> &Ready<P> {
        self.ready
    }

    fn bare(&self) -> Spot {
        0
    }

    fn with(&self, beneath: &Spot, kind: usize) -> Option<Spot> {
        let spot = self.grid.next(kind, *beneath);
        (spot != NOWHERE).then_some(spot)
    }

    fn least(&self, first: usize, last: usize, beneath: &Spot) -> P {
        if first > last {
            return P::default();
        }
        self.bound.price(first, last, *beneath)
    }

    fn price(&mut self, first: usize, last: usize, beneath: &Spot, _: P) -> P {
        self.least(first, last, beneath)
    }

    fn alone(&self, rung: usize, beneath: &Spot) -> P {
        let window = &self.ready.windows[rung];
        if self.grid.size(*beneath as usize) < window.size {
            return P::NEVER;
        }
        let mass = self.grid.mass[*beneath as usize];
        let price = window.least_price(mass, mass + self.grid.slack);
        price.unwrap_or(P::NEVER)
    }

    fn spent(&self) -> bool {
        false
    }
}
