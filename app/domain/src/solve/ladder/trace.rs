//! From least prices to the one plan that the tie-break names; and what lies on the bar first.
//!
//! Plates on the bar before the first rung are stays that began earlier: how long each is left
//! on is one more choice, from the inside outwards.
use super::price::Price;
use super::prices::Prices;
use super::table::Known;
use alloc::vec;
use alloc::vec::Vec;

/// The plates of every rung as places in the problem's list; `None` when there is no plan, or
/// when the search broke off.
pub(super) fn stacks<P: Price>(search: &mut impl Prices<P>) -> Option<Vec<Vec<usize>>> {
    let rungs = search.ready().windows.len();
    let mut trace = Trace::new(search);
    let price = trace.left(0, rungs, P::NEVER - P::ONE);
    if price >= P::NEVER || trace.search.spent() {
        return None;
    }
    trace.walk_left(0, rungs, price);
    let spent = trace.search.spent();
    (!spent).then_some(trace.stacks)
}

struct Trace<'t, P, S: Prices<P>> {
    search: &'t mut S,
    /// The first so many of the plates on the bar; `None` when too heavy for any rung.
    kept: Vec<Option<S::Set>>,
    /// By plates kept and rungs covered: a lower bound, or the price.
    known: Vec<Vec<Known<P>>>,
    stacks: Vec<Vec<usize>>,
}

impl<'t, P: Price, S: Prices<P>> Trace<'t, P, S> {
    fn new(search: &'t mut S) -> Self {
        let rungs = search.ready().windows.len();
        let on_bar = search.ready().on_bar.clone();
        let mut kept = vec![Some(search.bare())];
        for &kind in &on_bar {
            let inner = kept.last().copied().flatten();
            kept.push(inner.and_then(|b| search.with(&b, kind)));
        }
        let mut trace = Self {
            search,
            known: vec![Vec::new(); kept.len()],
            kept,
            stacks: vec![Vec::new(); rungs],
        };
        for kept in (0..=on_bar.len()).rev() {
            let bounds = (0..=rungs).map(|covered| Known {
                price: trace.bound(kept, covered),
                exact: false,
            });
            trace.known[kept] = bounds.collect();
        }
        trace
    }

    /// Lower bound for the first `covered` rungs when `kept` plates are left on for all of them.
    fn bound(&self, kept: usize, covered: usize) -> P {
        if kept + 1 == self.kept.len() {
            return self.over_least(kept, 0, covered);
        }
        let ways = (0..=covered).map(|stays| {
            let inner = self.known[kept + 1][stays].price;
            self.removal(kept, stays) + inner + self.over_least(kept, stays, covered)
        });
        ways.min().expect("at least one").min(P::NEVER)
    }

    /// Price of taking off the next plate after `stays` rungs.
    fn removal(&self, kept: usize, stays: usize) -> P {
        let kind = self.search.ready().on_bar[kept];
        match stays.checked_sub(1) {
            Some(last) => self.search.ready().removal(kind, last),
            None => self.search.ready().kinds[kind].price,
        }
    }

    fn over_least(&self, kept: usize, from: usize, to: usize) -> P {
        match &self.kept[kept] {
            _ if from == to => P::default(),
            Some(beneath) => self.search.least(from, to - 1, beneath),
            None => P::NEVER,
        }
    }

    fn over(&mut self, kept: usize, from: usize, to: usize, budget: P) -> P {
        match self.kept[kept] {
            _ if from == to => P::default(),
            Some(beneath) => self.search.price(from, to - 1, &beneath, budget),
            None => P::NEVER,
        }
    }

    /// The least price of the first `covered` rungs when `kept` plates are left on for all of
    /// them, if within `budget`; else a lower bound above it.
    fn left(&mut self, kept: usize, covered: usize, budget: P) -> P {
        let known = self.known[kept][covered];
        if known.exact || known.price > budget {
            return known.price;
        }
        let (mut best, mut floor) = (P::NEVER, P::NEVER);
        if kept + 1 == self.kept.len() {
            floor = self.over(kept, 0, covered, budget);
            if floor <= budget {
                best = floor;
            }
        } else {
            for stays in (0..=covered).rev() {
                let limit = budget.min(best - P::ONE);
                let price = self.left_for(kept, covered, stays, limit);
                if price <= limit {
                    best = price;
                } else {
                    floor = floor.min(price);
                }
            }
        }
        if self.search.spent() {
            return P::NEVER;
        }
        let exact = best <= budget;
        let price = if exact { best } else { floor.min(best) };
        self.known[kept][covered] = Known { price, exact };
        price
    }

    /// The same when the next plate is left on for `stays` of them.
    fn left_for(&mut self, kept: usize, covered: usize, stays: usize, limit: P) -> P {
        let removal = self.removal(kept, stays);
        let rest = removal + self.over_least(kept, stays, covered);
        if rest + self.known[kept + 1][stays].price > limit {
            return (rest + self.known[kept + 1][stays].price).min(P::NEVER);
        }
        let inner = self.left(kept + 1, stays, limit - rest);
        if inner + rest > limit {
            return inner + rest;
        }
        inner + removal + self.over(kept, stays, covered, limit - inner - removal)
    }

    fn walk_left(&mut self, kept: usize, covered: usize, price: P) {
        if kept + 1 == self.kept.len() {
            return self.walk_over(kept, 0, covered, price);
        }
        for stays in (0..=covered).rev() {
            if self.left_for(kept, covered, stays, price) != price {
                continue;
            }
            let kind = self.search.ready().on_bar[kept];
            self.lay(kind, 0, stays);
            let inner = self.left(kept + 1, stays, price);
            self.walk_left(kept + 1, stays, inner);
            let rest = price - inner - self.removal(kept, stays);
            return self.walk_over(kept, stays, covered, rest);
        }
    }

    fn walk_over(&mut self, kept: usize, from: usize, to: usize, price: P) {
        if from < to
            && let Some(beneath) = self.kept[kept]
        {
            self.walk(from, to - 1, &beneath, price);
        }
    }

    /// Lays the plates of rungs `first..=last` over `beneath`, which cost `price`.
    fn walk(&mut self, first: usize, last: usize, beneath: &S::Set, price: P) {
        if first > last || self.search.spent() {
            return;
        }
        for kind in 0..self.search.ready().kinds.len() {
            let Some(on) = self.search.with(beneath, kind) else {
                continue;
            };
            for end in (first..=last).rev() {
                let stay = self.search.ready().stay(kind, end);
                let rest = self.search.least(end + 1, last, beneath);
                let budget = price - stay - rest;
                let inner = self.search.price(first, end, &on, budget);
                if inner > budget {
                    continue;
                }
                let budget = price - stay - inner;
                if self.search.price(end + 1, last, beneath, budget) == budget {
                    self.lay(kind, first, end + 1);
                    self.walk(first, end, &on, inner);
                    return self.walk(end + 1, last, beneath, budget);
                }
            }
        }
        let alone = self.search.alone(first, beneath);
        self.walk(first + 1, last, beneath, price - alone);
    }

    fn lay(&mut self, kind: usize, from: usize, to: usize) {
        let place = self.search.ready().kinds[kind].place;
        for stack in &mut self.stacks[from..to] {
            stack.push(place);
        }
    }
}
