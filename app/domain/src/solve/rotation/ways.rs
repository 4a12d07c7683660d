//! Ways to go on after a turn, and which of them are alike.
//!
//! Refuses: ways that are out of reach with every stack.
use super::Problem;
use super::min_plus::Cost;
use alloc::vec;
use alloc::vec::Vec;

/// From the start of each lifter's next turn to the end of all.
pub(super) type Coming<C> = [C; Problem::LIFTERS_LIMIT];

/// Ways to go on, before they are merged.
pub(super) struct Ways<C> {
    pub coming: Vec<Coming<C>>,
    /// By way and stack: time to the end, and handling.
    pub least: Vec<(C, C)>,
    /// By way: the least time.
    pub soonest: Vec<C>,
}

impl<C: Cost> Ways<C> {
    pub(super) fn new() -> Self {
        Self {
            coming: Vec::new(),
            least: Vec::new(),
            soonest: Vec::new(),
        }
    }

    /// Adds a way, unless it is out of reach with every stack.
    pub(super) fn push(&mut self, coming: Coming<C>, least: &[(C, C)]) {
        let soonest = least.iter().map(|least| least.0).min().unwrap_or(C::FAR);
        if soonest < C::FAR {
            self.coming.push(coming);
            self.least.extend_from_slice(least);
            self.soonest.push(soonest);
        }
    }

    /// Keeps the ways that `useful` says yes to.
    pub(super) fn keep(&mut self, useful: impl Fn(&Coming<C>) -> bool, count: usize) {
        let mut kept = 0;
        for way in 0..self.coming.len() {
            if useful(&self.coming[way]) {
                self.coming[kept] = self.coming[way];
                self.soonest[kept] = self.soonest[way];
                self.least
                    .copy_within(way * count..(way + 1) * count, kept * count);
                kept += 1;
            }
        }
        self.coming.truncate(kept);
        self.soonest.truncate(kept);
        self.least.truncate(kept * count);
    }

    /// How much is lost when two ways are merged.
    fn apart(&self, a: usize, b: usize, lifters: usize) -> i64 {
        let comings = self.coming[a][..lifters].iter().zip(&self.coming[b]);
        let differ = |a: C, b: C| (a.max(b) - a.min(b)).units();
        comings.map(|(&a, &b)| differ(a, b)).sum::<i64>() + differ(self.soonest[a], self.soonest[b])
    }

    /// The shape of each way, `most` at most: those farthest apart found shapes, the others join the nearest.
    pub(super) fn shapes(&self, lifters: usize, most: usize) -> Vec<usize> {
        let count = self.coming.len();
        if count <= most {
            return (0..count).collect();
        }
        let mut near = vec![0; count];
        let mut away: Vec<i64> = (0..count).map(|way| self.apart(0, way, lifters)).collect();
        for shape in 1..most {
            let farthest = (0..count).max_by_key(|&way| (away[way], core::cmp::Reverse(way)));
            let farthest = farthest.unwrap_or(0);
            for way in 0..count {
                let apart = self.apart(farthest, way, lifters);
                if apart < away[way] {
                    (away[way], near[way]) = (apart, shape);
                }
            }
        }
        near
    }
}
