//! How hard to look: the search and ever sharper bounds by turns, until the search ends by itself.
//!
//! A bound over masses alone is cheap, and mostly good enough. Where its own plan takes plates
//! that are not there, or more sleeve, the search under it would have to rule out too much. So a
//! search that goes on for longer than its bound took is broken off, and the next bound counts
//! what the last one ignored. What the search has found stays found. Refuses: rungs that cannot
//! be loaded.
use super::Problem;
use super::bound::Use;
use super::grid::{Detail, Grid};
use super::prepare::Ready;
use super::refuse;
use super::search::Search;
use super::trace;
use crate::solve::Refusal;
use alloc::vec;
use alloc::vec::Vec;

/// When to turn from the search to a sharper bound.
#[derive(Debug, Clone, Copy)]
pub(super) struct Effort {
    /// Spots times stretches that the first bound may have.
    first_bound: usize,
    /// The most that a later one may have.
    last_bound: usize,
    /// Looking into one stretch takes about as long as so many spots of a bound.
    spots_per_look: usize,
    /// Stretches that are looked into before any thought of a better bound.
    first_looks: usize,
}

impl Effort {
    /// As measured; the greatest bound takes 128 MB.
    pub(super) const MEASURED: Self = Self {
        first_bound: 1_000_000,
        last_bound: 16_000_000,
        spots_per_look: 20,
        first_looks: 200,
    };
}

/// The plates of every rung, inside to outside.
///
/// # Errors
/// [`Refusal`] for the first rung that cannot be loaded.
pub(super) fn stacks(
    problem: &Problem,
    ready: &Ready,
    effort: Effort,
) -> Result<Vec<Vec<usize>>, Refusal> {
    let rungs = ready.windows.len();
    let stretches = rungs * (rungs + 1) / 2;
    let mut limit = effort.first_bound;
    let (mut detail, grid) = first_grid(ready, limit / stretches);
    refuse::loadable(problem, ready, &grid)?;
    let mut search = Search::new(ready, grid);
    let mut looks = effort.first_looks;
    loop {
        search.allow(looks);
        if let Some(stacks) = trace::stacks(&mut search) {
            return Ok(stacks);
        }
        assert!(search.spent(), "every rung can be loaded by itself");
        let used = search.plan_use();
        let sharper = loop {
            let details = sharper(ready, &detail, &used).into_iter();
            let grid = |d: Detail| Grid::new(ready, &d, limit / stretches).map(|grid| (d, grid));
            let found = details.filter_map(grid).next();
            if found.is_some() || limit >= effort.last_bound {
                break found;
            }
            limit *= 2;
        };
        if let Some((sharper, grid)) = sharper {
            detail = sharper;
            search.sharpen(grid);
        }
        looks = (looks * 2).max(search.size() / effort.spots_per_look);
    }
}

/// Masses to the nanogram if there are few enough, else as fine as may be.
fn first_grid(ready: &Ready, spots: usize) -> (Detail, Grid) {
    let mut detail = Detail::plain(ready);
    let most = ready.windows.iter().map(|w| w.high).max().unwrap_or(0);
    let mut floors = i64::try_from(spots.max(1)).expect("a small constant");
    loop {
        if let Some(grid) = Grid::new(ready, &detail, spots) {
            return (detail, grid);
        }
        detail.mass_step = most / floors + 1;
        floors = (floors / 2).max(1);
    }
}

/// Details that tell more about what the bound's plan `used` too much of: the most telling first.
fn sharper(ready: &Ready, detail: &Detail, used: &Use) -> Vec<Detail> {
    let too_many = used.too_many(ready);
    let fresh = too_many.iter().copied().filter(|&k| !detail.counted[k]);
    let worst = fresh.max_by_key(|&k| used.pairs[k] - ready.kinds[k].pairs);
    let (mut all, mut one) = (detail.clone(), detail.clone());
    too_many.iter().for_each(|&k| all.counted[k] = true);
    worst.into_iter().for_each(|k| one.counted[k] = true);
    let with_length = |detail: &Detail, steps: i64| Detail {
        length_step: ready.sleeve / steps + 1,
        ..detail.clone()
    };
    let mut sharper = vec![all.clone(), one.clone()];
    if used.length > ready.sleeve {
        sharper.insert(0, with_length(&all, 64));
        sharper.insert(2, with_length(&all, 16));
        sharper.extend([&one, detail].map(|d| with_length(d, 64)));
        sharper.push(with_length(detail, 16));
    }
    let coarser = |d: &Detail| detail.length_step > 0 && d.length_step > detail.length_step;
    sharper.retain(|d| d != detail && !coarser(d));
    sharper
}

#[cfg(test)]
#[path = "effort_tests.rs"]
mod tests;
