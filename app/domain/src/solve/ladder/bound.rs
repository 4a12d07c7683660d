//! The least price of any stretch of rungs over any spot of the grid.
//!
//! Never above the true price. Equal to it where what the spots do not tell does not bind.
use super::grid::{Grid, NOWHERE, Spot};
use super::prepare::Ready;
use super::price::Price;
use alloc::vec;
use alloc::vec::Vec;

/// Prices by spot and stretch: row by first rung, of which each is one shorter than the last.
#[derive(Debug)]
pub(super) struct Bound<P> {
    rungs: usize,
    prices: Vec<P>,
}

/// How many stretches so many rungs have.
pub(super) fn stretches(rungs: usize) -> usize {
    rungs * (rungs + 1) / 2
}

/// Where stretch `first..=last` of so many rungs lies: one place on for each further last rung.
fn place(rungs: usize, first: usize, last: usize) -> usize {
    first * (2 * rungs - first - 1) / 2 + last
}

impl<P: Price> Bound<P> {
    /// Solves the recursion for every stretch and spot.
    pub(super) fn new(ready: &Ready<P>, grid: &Grid) -> Self {
        let rungs = ready.windows.len();
        let width = stretches(rungs);
        let mut prices = vec![P::NEVER; grid.mass.len() * width];
        let stays = stays(ready);
        for (spot, &mass) in grid.mass.iter().enumerate().rev() {
            // Lighter rungs come first, mostly; nothing can be had of them.
            let light = ready.windows.iter().take_while(|w| w.high < mass).count();
            if light == rungs {
                continue;
            }
            let from = place(rungs, light, light);
            let (here, later) = prices[spot * width..].split_at_mut(width);
            for (rung, window) in ready.windows.iter().enumerate().skip(light) {
                if grid.size(spot) >= window.size
                    && let Some(price) = window.least_price(mass, mass + grid.slack)
                {
                    here[place(rungs, rung, rung)] = price;
                }
            }
            let there = |to: Spot| &later[(to as usize - spot - 1) * width..][from..width];
            for (kind, to) in grid.leads(spot) {
                // Where masses are rounded to nothing, a way may lead round to its own spot.
                if to == NOWHERE || to as usize == spot {
                    continue;
                }
                let stays = &stays[kind * width..][from..width];
                for ((price, on), stay) in here[from..].iter_mut().zip(there(to)).zip(stays) {
                    *price = (*price).min(on.plus(*stay));
                }
            }
            let pass = grid.ways[spot].pass;
            if pass != NOWHERE {
                for (price, on) in here[from..].iter_mut().zip(there(pass)) {
                    *price = (*price).min(*on);
                }
            }
            cut_all(&mut here[from..], rungs - light);
        }
        Self { rungs, prices }
    }

    /// At most the price of rungs `first..=last` over a set on `spot`.
    pub(super) fn price(&self, first: usize, last: usize, spot: Spot) -> P {
        let row = spot as usize * stretches(self.rungs);
        self.prices[row + place(self.rungs, first, last)]
    }
}

/// By kind and stretch: what a stay for all of it costs.
fn stays<P: Price>(ready: &Ready<P>) -> Vec<P> {
    let rungs = ready.windows.len();
    let mut stays = Vec::with_capacity(ready.kinds.len() * stretches(rungs));
    for kind in 0..ready.kinds.len() {
        for first in 0..rungs {
            stays.extend((first..rungs).map(|last| ready.stay(kind, last)));
        }
    }
    stays
}

/// Lowers each stretch of so many rungs to the sum of its two halves, wherever it is cut.
fn cut_all<P: Price>(prices: &mut [P], rungs: usize) {
    // Where the number is known beforehand, the loops are unrolled: most of the work is here.
    match rungs {
        1 => {}
        2 => cut(prices, 2),
        3 => cut(prices, 3),
        4 => cut(prices, 4),
        5 => cut(prices, 5),
        6 => cut(prices, 6),
        _ => cut(prices, rungs),
    }
}

#[inline(always)]
fn cut<P: Price>(prices: &mut [P], rungs: usize) {
    let prices = &mut prices[..stretches(rungs)];
    let (mut begins, mut length) = (prices.len(), 0);
    for _ in 0..rungs {
        length += 1;
        begins -= length;
        // The stretches that begin later are final, and so is the one up to the cut.
        let (row, mut later) = prices[begins..].split_at_mut(length);
        for cut in 0..length - 1 {
            let left = row[cut];
            for (price, right) in row[cut + 1..].iter_mut().zip(&*later) {
                *price = (*price).min(left.plus(*right));
            }
            later = &mut later[length - 1 - cut..];
        }
    }
}
