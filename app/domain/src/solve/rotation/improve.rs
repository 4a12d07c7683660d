//! Better orders by small changes: a turn, or a few in a row, moved elsewhere, or two exchanged.
//!
//! Threshold accepting (Dueck and Scheuer 1990): a change is taken if it makes the order worse by
//! no more than a threshold that falls to nothing. The changes are drawn from a generator of fixed
//! numbers, so that the same problem gets the same order.
use super::allowance::Allowance;
use super::model::Model;
use super::stacks::Stacks;
use super::trail::{Rack, Worth};
use alloc::vec::Vec;

/// SplitMix64 (Steele, Lea and Flood 2014), by its published constants.
#[derive(Debug)]
struct Draws(u64);

impl Draws {
    fn below(&mut self, count: usize) -> usize {
        self.0 = self.0.wrapping_add(0x9E37_79B9_7F4A_7C15);
        let mut z = self.0;
        z = (z ^ (z >> 30)).wrapping_mul(0xBF58_476D_1CE4_E5B9);
        z = (z ^ (z >> 27)).wrapping_mul(0x94D0_49BB_1331_11EB);
        let drawn = (z ^ (z >> 31)) % count.max(1) as u64;
        usize::try_from(drawn).expect("less than a count")
    }
}

/// An order, with what it is worth and its stacks, as places among those that serve each turn.
#[derive(Debug, Clone)]
pub(super) struct Ordered {
    pub order: Vec<u8>,
    pub worth: Worth,
    pub stacks: Vec<u32>,
}

/// Looks for better orders.
#[derive(Debug)]
pub(super) struct Improver<'a> {
    model: &'a Model,
    rack: Rack<'a>,
    draws: Draws,
}

/// Shares of an order's length that the first threshold allows, in thousandths.
const SLACK: i64 = 12;
/// A nanosecond of handling counts as much as so many of the end: it tells orders apart that wait
/// for the same rest.
const HANDLING: i64 = 32;
/// A wait that is too long by a nanosecond counts as much as so many of the end.
const OVER: i64 = 4;

impl<'a> Improver<'a> {
    pub(super) fn new(model: &'a Model, stacks: &'a Stacks, seed: u64) -> Self {
        Self::fair(model, stacks, seed, i64::MAX / 4)
    }

    /// As [`Improver::new`], for orders in which nobody waits longer once rested, nanoseconds.
    pub(super) fn fair(model: &'a Model, stacks: &'a Stacks, seed: u64, longest_wait: i64) -> Self {
        Self {
            model,
            rack: Rack::new(model, stacks, longest_wait),
            draws: Draws(seed),
        }
    }

    /// The order as it is, with the best stacks for it.
    pub(super) fn as_it_is(&mut self, order: Vec<u8>) -> Option<Ordered> {
        let mut trail = self.rack.start();
        let worth = self.rack.carry_out(&mut trail, &order, 0, i64::MAX)?;
        let stacks = self.rack.stacks(&trail);
        Some(Ordered {
            order,
            worth,
            stacks,
        })
    }

    /// The best of `tries` orders that come of `from`, with thresholds `heat` times the usual.
    pub(super) fn improve(
        &mut self,
        from: Ordered,
        (tries, heat): (usize, i64),
        allowance: &mut Allowance<'_>,
    ) -> Ordered {
        let fixed = self.model.called.len();
        let count = from.order.len();
        if count < fixed + 2 {
            return from;
        }
        let mut best = from.clone();
        let mut order = from.order;
        let mut trail = self.rack.start();
        let Some(worth) = self.rack.carry_out(&mut trail, &order, 0, i64::MAX) else {
            return best;
        };
        let mut now = cost(worth);
        let slack = (worth.ends - self.model.now) / 1_000 * SLACK * heat;
        let mut tried = trail.clone();
        let mut changed = order.clone();
        for round in 0..tries {
            allowance.spend(count / 8 + 1);
            if allowance.spent {
                break;
            }
            changed.clone_from(&order);
            let first = self.change(&mut changed, fixed);
            if first >= count || changed == order {
                continue;
            }
            let left = i64::try_from(tries - round).unwrap_or(i64::MAX);
            let all = i64::try_from(tries).unwrap_or(i64::MAX);
            let limit = now + slack / all * left;
            tried.copy_to(&trail, first);
            let worth = self.rack.carry_out(&mut tried, &changed, first, limit + 1);
            let Some(worth) = worth.filter(|worth| cost(*worth) <= limit) else {
                continue;
            };
            now = cost(worth);
            core::mem::swap(&mut order, &mut changed);
            trail.take_from(&mut tried, first);
            if worth < best.worth {
                best = Ordered {
                    order: order.clone(),
                    worth,
                    stacks: self.rack.stacks(&trail),
                };
            }
        }
        best
    }

    /// An order that differs from `order` by one change and ends no later than `ends`, if the change
    /// drawn makes one.
    pub(super) fn neighbour(&mut self, order: &[u8], ends: i64) -> Option<Ordered> {
        let fixed = self.model.called.len();
        if order.len() < fixed + 2 {
            return None;
        }
        let mut changed = order.to_vec();
        self.change(&mut changed, fixed);
        let other = self.as_it_is(changed)?;
        (other.order != order && other.worth.ends <= ends).then_some(other)
    }

    /// Changes an order somewhere after its first `fixed` turns; says from where on.
    fn change(&mut self, order: &mut [u8], fixed: usize) -> usize {
        let draws = &mut self.draws;
        let count = order.len();
        let at = fixed + draws.below(count - fixed);
        let reach = 2 * self.model.lifters() + 2;
        let low = at.saturating_sub(reach).max(fixed);
        let high = (at + reach).min(count - 1);
        let to = low + draws.below(high - low + 1);
        let (first, last) = (at.min(to), at.max(to));
        match draws.below(8) {
            0 => order.swap(at, to),
            1 | 2 => {
                // A few turns in a row go elsewhere.
                let few = (2 + draws.below(3)).min(last - first + 1);
                if at < to {
                    order[first..=last].rotate_left(few);
                } else {
                    order[first..=last].rotate_right(few);
                }
            }
            _ if at < to => order[first..=last].rotate_left(1),
            _ => order[first..=last].rotate_right(1),
        }
        first
    }
}

fn cost(worth: Worth) -> i64 {
    let over = worth.over.saturating_mul(OVER);
    worth.ends.saturating_add(over) + worth.handling / HANDLING
}
