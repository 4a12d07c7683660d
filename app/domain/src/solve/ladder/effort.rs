//! How hard to look: the search and ever sharper bounds by turns, until the search ends by itself.
//!
//! A bound over masses alone is cheap, and mostly good enough. Where its own plan takes plates
//! that are not there, or more sleeve, the search under it would have to rule out too much. So a
//! search that goes on for longer than its bound took is broken off, and the next bound counts
//! what the last one ignored. What the search has found stays found. When the time is up, a plan that
//! looks no further than the next rung stands in for the best one. Refuses: rungs that cannot be
//! loaded.
use super::bound::stretches;
use super::grid::{Detail, Grid};
use super::layers;
use super::prepare::{Ready, prepare};
use super::price::{Price, Wide};
use super::prices::Prices as _;
use super::problem::Problem;
use super::refuse;
use super::relaxed::Use;
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
    /// Bytes that a later one may have; two are there while they are compared.
    last_bound: usize,
    /// Looking into one stretch takes about as long as so many spots of a bound.
    spots_per_look: usize,
    /// Stretches that are looked into before any thought of a better bound.
    first_looks: usize,
    /// Stretches that are looked into in all, before the problem is given up.
    looks: usize,
}

/// More spots than these take longer to list than they save.
const FIRST_SPOTS: usize = 10_000;
const LAST_SPOTS: usize = 400_000;
/// A search that is not over after so many looks may not be over in time.
const EASY: usize = 20_000;
/// So many looks at once are a long search.
const LONG: usize = 200_000;

impl Effort {
    /// As measured; with the table and the grids all of it stays under 256 MB.
    pub(super) const MEASURED: Self = Self {
        first_bound: 1_000_000,
        last_bound: 48 << 20,
        spots_per_look: 20,
        first_looks: 200,
        looks: 20_000_000,
    };

    /// For one rung alone, on the way to a plan that need not be the best.
    const ALONE: Self = Self {
        first_bound: 200_000,
        last_bound: 4 << 20,
        looks: 4_000,
        ..Self::MEASURED
    };
}

/// What came of the looking.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(super) enum Found {
    /// The plan itself: the plates of every rung, inside to outside.
    Best(Vec<Vec<usize>>),
    /// It was broken off.
    Open {
        /// A plan that can be carried out, if one was found.
        some: Option<Vec<Vec<usize>>>,
        /// Stacks that cost at most what the best plan does, though the gym may not have them.
        least: Option<Vec<Vec<usize>>>,
    },
}

/// Looks in the narrowest numbers that do.
///
/// # Errors
/// As [`stacks`].
pub(super) fn narrowed(
    problem: &Problem,
    ready: &Ready<Wide>,
    effort: Effort,
    go_on: &mut dyn FnMut() -> bool,
) -> Result<Found, Refusal> {
    if ready.fit::<i32>() {
        stacks(problem, &mut ready.narrow::<i32>(), effort, go_on)
    } else if ready.fit::<i64>() {
        stacks(problem, &mut ready.narrow::<i64>(), effort, go_on)
    } else {
        stacks(problem, &mut ready.narrow::<Wide>(), effort, go_on)
    }
}

/// Looks until the plan is found, `go_on` says that the time is up, or it was looked enough.
///
/// # Errors
/// [`Refusal`] for the first rung that cannot be loaded.
pub(super) fn stacks<P: Price>(
    problem: &Problem,
    ready: &mut Ready<P>,
    effort: Effort,
    go_on: &mut dyn FnMut() -> bool,
) -> Result<Found, Refusal> {
    let rungs = ready.windows.len();
    let stretches = stretches(rungs);
    let limit = (effort.first_bound / stretches).min(FIRST_SPOTS);
    let (detail, grid) = first_grid(ready, limit);
    refuse::loadable(problem, ready, &grid)?;
    let mut search = Search::new(ready, grid, go_on);
    // Of what the bound allows this is the first of the best; nothing comes before it, then.
    let first = search.relaxed().plan();
    if let Some(stacks) = first.as_ref().filter(|stacks| can_be(problem, stacks)) {
        return Ok(Found::Best(stacks.clone()));
    }
    let mut sharpener = Sharpener {
        detail,
        limit,
        last_limit: (effort.last_bound / size_of::<P>() / stretches).min(LAST_SPOTS),
        tried: Vec::new(),
    };
    let mut looks = effort.first_looks;
    let mut looked = 0;
    let mut some = None;
    while looked < effort.looks && search.goes_on() {
        search.allow(looks);
        if let Some(stacks) = trace::stacks(&mut search) {
            return Ok(Found::Best(stacks));
        }
        assert!(search.spent(), "every rung can be loaded by itself");
        looked += looks;
        if some.is_none() && rungs > 1 && looked > EASY {
            some = one_by_one(problem);
        }
        let _ = sharpener.sharpen(&mut search) || (looks > LONG && sharpener.refine(&mut search));
        looks = (looks * 2).max(search.size() / effort.spots_per_look);
    }
    if some.is_none() && rungs > 1 {
        some = one_by_one(problem);
    }
    let least = search.relaxed().plan().or(first);
    Ok(Found::Open { some, least })
}

/// A plan that looks no further than the next rung: each is loaded from the one before as cheaply
/// as can be.
fn one_by_one(problem: &Problem) -> Option<Vec<Vec<usize>>> {
    let mut on_bar = problem.on_bar.clone();
    let mut stacks = Vec::new();
    for wish in &problem.rungs {
        let alone = Problem {
            equipment: problem.equipment.clone(),
            on_bar,
            strip_after: false,
            rungs: vec![*wish],
        };
        let ready = prepare(&alone).ok()?;
        let Ok(Found::Best(found)) = narrowed(&alone, &ready, Effort::ALONE, &mut || true) else {
            return None;
        };
        on_bar = found.into_iter().next()?;
        stacks.push(on_bar.clone());
    }
    Some(stacks)
}

/// Whether the store and the sleeve allow these stacks.
fn can_be(problem: &Problem, stacks: &[Vec<usize>]) -> bool {
    let equipment = &problem.equipment;
    stacks
        .iter()
        .all(|stack| equipment.broken_by(stack).is_none())
}

/// Which bound comes next.
struct Sharpener {
    /// What the present one tells.
    detail: Detail,
    /// Spots that the next may have.
    limit: usize,
    /// The most that any may have.
    last_limit: usize,
    /// What was found to be of no use.
    tried: Vec<Detail>,
}

impl Sharpener {
    /// Counts what the present bound's plan has too much of; at the cost of coarser masses if it
    /// must be. False when that cannot be afforded or does not help.
    fn sharpen<P: Price>(&mut self, search: &mut Search<'_, P>) -> bool {
        let used = search.relaxed().plan_use();
        loop {
            let details = sharper(search.ready, &self.detail, &used);
            for detail in details {
                if let Some(grid) = Grid::new(search.ready, &detail, self.limit) {
                    self.detail = detail;
                    return search.sharpen(grid, true);
                }
            }
            if self.limit >= self.last_limit {
                break;
            }
            self.limit = (self.limit * 2).min(self.last_limit);
        }
        let details = coarser(search.ready, &self.detail, &used);
        details.into_iter().any(|d| self.attempt(search, d))
    }

    /// Tells masses more finely.
    fn refine<P: Price>(&mut self, search: &mut Search<'_, P>) -> bool {
        let mass_step = self.detail.mass_step / 8 + 1;
        self.detail.mass_step > 1 && self.attempt(search, with_mass(&self.detail, mass_step))
    }

    fn attempt<P: Price>(&mut self, search: &mut Search<'_, P>, detail: Detail) -> bool {
        if self.tried.contains(&detail) {
            return false;
        }
        let finer = detail.mass_step < self.detail.mass_step;
        let grid = Grid::new(search.ready, &detail, self.last_limit);
        let better = grid.is_some_and(|grid| search.sharpen(grid, finer));
        if better {
            self.detail = detail;
        } else {
            self.tried.push(detail);
        }
        better
    }
}

/// Masses to the nanogram if there are few enough, else as fine as may be.
fn first_grid<P: Price>(ready: &Ready<P>, spots: usize) -> (Detail, Grid) {
    let mut detail = Detail::plain(ready);
    // The layers do not tell sizes.
    let layers = (!ready.asks_for_size()).then(|| layers::grid(ready, spots));
    if let Some(grid) = layers.flatten() {
        return (detail, grid);
    }
    let most = ready.most();
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
fn sharper<P: Price>(ready: &Ready<P>, detail: &Detail, used: &Use) -> Vec<Detail> {
    let [all, one] = counting(ready, detail, used);
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

/// Details that count more, but tell masses less finely.
fn coarser<P: Price>(ready: &Ready<P>, detail: &Detail, used: &Use) -> Vec<Detail> {
    let [all, one] = counting(ready, detail, used);
    let mut coarser = Vec::new();
    for floors in [4_000, 1_000, 250] {
        let coarse = ready.most() / floors + 1;
        if one != *detail && coarse > detail.mass_step {
            coarser.extend([&all, &one].map(|d| with_mass(d, coarse)));
        }
    }
    coarser
}

/// With all kinds counted that `used` has too many of, and with the worst alone.
fn counting<P: Price>(ready: &Ready<P>, detail: &Detail, used: &Use) -> [Detail; 2] {
    let too_many = used.too_many(ready);
    let fresh = too_many.iter().copied().filter(|&k| !detail.counted[k]);
    let worst = fresh.max_by_key(|&k| used.pairs[k] - ready.kinds[k].pairs);
    let (mut all, mut one) = (detail.clone(), detail.clone());
    too_many.iter().for_each(|&k| all.counted[k] = true);
    worst.into_iter().for_each(|k| one.counted[k] = true);
    [all, one]
}

fn with_mass(detail: &Detail, mass_step: i64) -> Detail {
    Detail {
        mass_step,
        ..detail.clone()
    }
}

#[cfg(test)]
#[path = "effort_tests.rs"]
mod tests;
