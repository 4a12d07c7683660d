//! From what is still to pay with each stack of the next turn, to what is still to pay with each
//! stack of the turn before: the least over all stacks of the way there and the rest.
//!
//! Several such questions are answered at once, in lanes. With big inside the ways run along the
//! tree of stacks, so two passes over the tree do. In any order the way between two sets of plates
//! is at least what they differ by; all pairs are looked at.
//!
//! Refuses: nothing.
use super::bundles::Bundles;
use super::gaps::{counts_of, differ};
use super::model::Model;
use super::stacks::{Stacks, at};
use alloc::vec::Vec;
use core::fmt;
use core::ops::{Add, Sub};

/// Durations in units of [`Model::unit`]: small ones where they fit, for speed.
pub(super) trait Cost:
    Copy + Ord + Default + fmt::Debug + Add<Output = Self> + Sub<Output = Self>
{
    /// Out of reach. Two of them still add up.
    const FAR: Self;
    /// From whole units.
    fn of(units: i64) -> Self;
    /// In whole units.
    fn units(self) -> i64;
    /// The sum of two, neither beyond [`Cost::FAR`] by more than as much again. Without a check,
    /// which would keep the compiler from adding lanes side by side.
    fn plus(self, other: Self) -> Self;
}

impl Cost for i16 {
    const FAR: Self = Self::MAX / 2;
    fn of(units: i64) -> Self {
        // What is farther than that is out of reach.
        Self::try_from(units).map_or(Self::FAR, |units| units.min(Self::FAR))
    }
    fn units(self) -> i64 {
        i64::from(self)
    }
    fn plus(self, other: Self) -> Self {
        self.wrapping_add(other)
    }
}

impl Cost for i32 {
    const FAR: Self = Self::MAX / 4;
    fn of(units: i64) -> Self {
        Self::try_from(units).expect("the horizon is checked to fit")
    }
    fn units(self) -> i64 {
        i64::from(self)
    }
    fn plus(self, other: Self) -> Self {
        self.wrapping_add(other)
    }
}

impl Cost for i64 {
    const FAR: Self = Self::MAX / 4;
    fn of(units: i64) -> Self {
        units
    }
    fn units(self) -> i64 {
        self
    }
    fn plus(self, other: Self) -> Self {
        self.wrapping_add(other)
    }
}

/// How many questions are answered at once.
pub(super) const LANES: usize = 8;
/// One number for each question.
pub(super) type Lanes<C> = [C; LANES];

/// The ways from each turn's stacks to each other turn's, worked out when first asked for.
#[derive(Debug)]
pub(super) struct MinPlus<'a, C> {
    model: &'a Model,
    stacks: &'a Stacks,
    /// By turn before (the start comes last) and next turn.
    ways: Vec<Option<Ways<C>>>,
    /// Where stacks that are alike are not told apart.
    bundles: Option<Bundles<'a, C>>,
    scratch: Vec<Lanes<C>>,
}

#[derive(Debug)]
enum Ways<C> {
    Tree(Tree<C>),
    Table(Table<C>),
}

/// The part of the tree of stacks that joins two turns' stacks.
#[derive(Debug)]
struct Tree<C> {
    parent: Vec<u32>,
    edge: Vec<C>,
    light: Vec<bool>,
    /// Where each stack of the turn before lies.
    before: Vec<u32>,
    /// Where each stack of the next turn lies.
    next: Vec<u32>,
}

/// All ways, by stack before and next stack: without and with a hole change.
#[derive(Debug)]
struct Table<C> {
    plain: Vec<C>,
    change: Vec<C>,
    before: usize,
}

impl<'a, C: Cost> MinPlus<'a, C> {
    pub(super) fn new(model: &'a Model, stacks: &'a Stacks) -> Self {
        let turns = model.turns.len();
        let mut ways = Vec::new();
        ways.resize_with((turns + 1) * turns, || None);
        Self {
            model,
            stacks,
            ways,
            bundles: None,
            scratch: Vec::new(),
        }
    }

    /// As [`MinPlus::new`], but at most `most` stacks a turn are told apart: those that differ least
    /// are bundled, and from bundle to bundle the way is the least between any two of their stacks.
    pub(super) fn bundled(model: &'a Model, stacks: &'a Stacks, most: usize) -> Self {
        let mut spread = Self::new(model, stacks);
        spread.bundles = Some(Bundles::new(model, stacks, most));
        spread
    }

    /// By stack of turn `before`, the number of its bundle; a stack each where none are bundled.
    pub(super) fn bundle_of(&self, before: usize) -> Vec<u16> {
        let alone = || (0..).take(self.before(before).len()).collect();
        self.bundles
            .as_ref()
            .map_or_else(alone, |all| all.of(before))
    }

    /// How many stacks or bundles of turn `before` are told apart.
    pub(super) fn count(&self, before: usize) -> usize {
        let alone = || self.before(before).len();
        self.bundles
            .as_ref()
            .map_or_else(alone, |all| all.count(before))
    }

    /// The stacks that a bar may have carried after turn `before`; the start's is the one past
    /// the last turn.
    pub(super) fn before(&self, before: usize) -> &[u32] {
        let start = core::slice::from_ref(&self.stacks.start);
        self.stacks.serving.get(before).map_or(start, |nodes| nodes)
    }

    /// Appends to `least`, for each stack of turn `before`, the least of way and `next`, the
    /// latter by stack of turn `turn`.
    pub(super) fn least(
        &mut self,
        (before, turn): (usize, usize),
        change: bool,
        next: &[Lanes<C>],
        least: &mut Vec<Lanes<C>>,
    ) {
        if let Some(bundles) = &mut self.bundles {
            return bundles.least((before, turn), change, next, least);
        }
        let slot = before * self.model.turns.len() + turn;
        if self.ways[slot].is_none() {
            self.ways[slot] = Some(self.ways(before, turn));
        }
        let ways = self.ways[slot].as_ref().expect("just set");
        match ways {
            Ways::Tree(tree) => tree.least(change, next, &mut self.scratch, least),
            Ways::Table(table) => table.least(change, next, least),
        }
    }

    fn ways(&self, before: usize, turn: usize) -> Ways<C> {
        let (a, b) = (self.before(before), &self.stacks.serving[turn]);
        if self.model.big_inside {
            Ways::Tree(Tree::new(self.model, self.stacks, a, b))
        } else {
            Ways::Table(Table::new(self.model, self.stacks, a, b))
        }
    }
}

impl<C: Cost> Tree<C> {
    fn new(model: &Model, stacks: &Stacks, before: &[u32], next: &[u32]) -> Self {
        let mut nodes: Vec<u32> = before.iter().chain(next).copied().collect();
        // A way with a hole change turns round at a light stack.
        nodes.extend(before.iter().chain(next).map(|&n| stacks.light[at(n)]));
        nodes.push(0);
        nodes.sort_unstable();
        nodes.dedup();
        let forks: Vec<u32> = nodes
            .windows(2)
            .map(|w| stacks.common(w[0], w[1]))
            .collect();
        nodes.extend(forks);
        nodes.sort_unstable();
        nodes.dedup();
        let mut tree = Self {
            parent: Vec::with_capacity(nodes.len()),
            edge: Vec::with_capacity(nodes.len()),
            light: Vec::with_capacity(nodes.len()),
            before: Vec::new(),
            next: Vec::new(),
        };
        let mut inside: Vec<usize> = Vec::new();
        for (here, &node) in nodes.iter().enumerate() {
            while inside
                .last()
                .is_some_and(|&i| stacks.end[at(nodes[i])] <= node)
            {
                inside.pop();
            }
            let parent = inside.last().copied().unwrap_or(0);
            let edge = stacks.handling[at(node)] - stacks.handling[at(nodes[parent])];
            tree.parent.push(narrow(parent));
            tree.edge.push(C::of(edge / model.unit));
            tree.light
                .push(stacks.light[at(node)] == node && model.light(stacks.load[at(node)]));
            inside.push(here);
        }
        let find = |&node: &u32| narrow(nodes.binary_search(&node).expect("among them"));
        tree.before = before.iter().map(find).collect();
        tree.next = next.iter().map(find).collect();
        tree
    }

    fn least(
        &self,
        change: bool,
        next: &[Lanes<C>],
        scratch: &mut Vec<Lanes<C>>,
        least: &mut Vec<Lanes<C>>,
    ) {
        scratch.clear();
        scratch.resize(self.parent.len(), [C::FAR; LANES]);
        for (&node, lanes) in self.next.iter().zip(next) {
            scratch[at(node)] = *lanes;
        }
        for node in (1..self.parent.len()).rev() {
            let (inner, outer) = scratch.split_at_mut(node);
            lower(
                &mut inner[at(self.parent[node])],
                &outer[0],
                self.edge[node],
            );
        }
        for node in 1..self.parent.len() {
            let (inner, outer) = scratch.split_at_mut(node);
            if change && !self.light[node] {
                outer[0] = [C::FAR; LANES];
            }
            lower(
                &mut outer[0],
                &inner[at(self.parent[node])],
                self.edge[node],
            );
        }
        least.extend(self.before.iter().map(|&node| scratch[at(node)]));
    }
}

/// Lowers `lanes` to `other` and `way`, where that is less.
pub(super) fn lower<C: Cost>(lanes: &mut Lanes<C>, other: &Lanes<C>, way: C) {
    for (lane, other) in lanes.iter_mut().zip(other) {
        *lane = (*lane).min(other.plus(way));
    }
}

impl<C: Cost> Table<C> {
    fn new(model: &Model, stacks: &Stacks, before: &[u32], next: &[u32]) -> Self {
        let ranges = |nodes: &[u32]| -> Vec<Vec<(u8, u8)>> {
            nodes.iter().map(|&n| counts_of(model, stacks, n)).collect()
        };
        let (a, b) = (ranges(before), ranges(next));
        let mut table = Self {
            plain: Vec::with_capacity(a.len() * b.len()),
            change: Vec::with_capacity(a.len() * b.len()),
            before: a.len(),
        };
        for from in &a {
            for to in &b {
                let (plain, change) = differ(model, from, to);
                table.plain.push(C::of(plain / model.unit));
                table.change.push(C::of(change / model.unit));
            }
        }
        table
    }

    fn least(&self, change: bool, next: &[Lanes<C>], least: &mut Vec<Lanes<C>>) {
        let ways = if change { &self.change } else { &self.plain };
        for from in 0..self.before {
            let mut lanes = [C::FAR; LANES];
            for (to, &way) in next.iter().zip(&ways[from * next.len()..]) {
                lower(&mut lanes, to, way);
            }
            least.push(lanes);
        }
    }
}

fn narrow(place: usize) -> u32 {
    u32::try_from(place).expect("within the limit of nodes")
}
