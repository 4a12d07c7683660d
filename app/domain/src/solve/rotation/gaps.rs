//! Handling between two stacks; of sets of plates, as much as they differ by.
use super::model::Model;
use super::stacks::{Stacks, at};
use super::strip::{Shared, stripped};
use alloc::vec;
use alloc::vec::Vec;

/// Handling between single stacks.
#[derive(Debug)]
pub(super) struct Gaps<'a> {
    model: &'a Model,
    stacks: &'a Stacks,
    /// By node, where plates may lie in any order: how many of each kind.
    counts: Vec<Vec<(u8, u8)>>,
}

impl<'a> Gaps<'a> {
    pub(super) fn new(model: &'a Model, stacks: &'a Stacks) -> Self {
        let nodes = 0..u32::try_from(stacks.parent.len()).expect("within the limit of nodes");
        let counts = nodes.filter(|_| !model.big_inside);
        Self {
            model,
            stacks,
            counts: counts.map(|node| counts_of(model, stacks, node)).collect(),
        }
    }

    /// From one stack to another without a hole change; in any order at least.
    pub(super) fn plain(&self, from: u32, to: u32) -> i64 {
        match (self.counts.get(at(from)), self.counts.get(at(to))) {
            (Some(from), Some(to)) => apart(self.model, from, to),
            _ => self.stacks.apart(from, to, false),
        }
    }

    /// From one stack to another, with a hole change or not; in any order at least.
    pub(super) fn between(&self, from: u32, to: u32, change: bool) -> i64 {
        match (self.counts.get(at(from)), self.counts.get(at(to))) {
            (Some(from), Some(to)) if change => differ(self.model, from, to).1,
            (Some(from), Some(to)) => apart(self.model, from, to),
            _ => self.stacks.apart(from, to, change),
        }
    }
}

/// The handling of the plates that two sets differ by, at least.
fn apart(model: &Model, from: &[(u8, u8)], to: &[(u8, u8)]) -> i64 {
    let pairs = from.iter().zip(to).zip(&model.kinds);
    let differ = |(a, b): (&(u8, u8), &(u8, u8))| {
        i64::from(a.0.saturating_sub(b.1).max(b.0.saturating_sub(a.1)))
    };
    pairs.map(|(both, kind)| differ(both) * kind.handling).sum()
}

/// How many of each kind a set has, or may have if it is a stub.
pub(super) fn counts_of(model: &Model, stacks: &Stacks, node: u32) -> Vec<(u8, u8)> {
    let mut counts = vec![(0, 0); model.kinds.len()];
    let plates = stacks.plates(node);
    for &kind in &plates {
        let count = &mut counts[usize::from(kind)];
        *count = (count.0 + 1, count.1 + 1);
    }
    if stacks.stub[at(node)] {
        let open = plates.last().map_or(0, |&kind| usize::from(kind));
        for count in &mut counts[open..] {
            count.1 = u8::MAX;
        }
    }
    counts
}

/// At least what it takes to get from one set to the other, without and with a hole change.
pub(super) fn differ(model: &Model, from: &[(u8, u8)], to: &[(u8, u8)]) -> (i64, i64) {
    let pairs = from.iter().zip(to).zip(&model.kinds);
    let mut plain = 0;
    let mut shared: Vec<Shared> = Vec::new();
    for ((a, b), kind) in pairs {
        let apart = a.0.saturating_sub(b.1).max(b.0.saturating_sub(a.1));
        plain += i64::from(apart) * kind.handling;
        let (least, most) = (a.0.min(b.0), a.0.max(b.0).min(a.1).min(b.1));
        if most > 0 {
            shared.push(Shared {
                mass: 2 * kind.mass,
                handling: kind.handling,
                both: i64::from(least),
                one: i64::from(most - least),
            });
        }
    }
    (
        plain,
        plain + stripped(&shared, model.hole_change_at_most - model.bar),
    )
}
