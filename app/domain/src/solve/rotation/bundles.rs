//! Stacks of a turn that are alike, bundled: a table of bounds then has fewer rows, and tells
//! hardly less.
use super::gaps::Gaps;
use super::min_plus::{Cost, LANES, Lanes, lower};
use super::model::Model;
use super::stacks::Stacks;
use alloc::vec;
use alloc::vec::Vec;

/// Which stacks of each turn are bundled, and the ways from bundle to bundle.
#[derive(Debug)]
pub(super) struct Bundles<'a, C> {
    model: &'a Model,
    stacks: &'a Stacks,
    gaps: Gaps<'a>,
    /// By turn and stack: the number of its bundle.
    of: Vec<Vec<u16>>,
    /// By turn: how many bundles there are.
    count: Vec<usize>,
    /// By turn before (the start comes last), next turn, and whether the hole changes: by bundle
    /// before and next bundle, worked out when first asked for.
    ways: Vec<Option<Vec<C>>>,
}

impl<'a, C: Cost> Bundles<'a, C> {
    /// At most `most` bundles a turn.
    pub(super) fn new(model: &'a Model, stacks: &'a Stacks, most: usize) -> Self {
        let gaps = Gaps::new(model, stacks);
        let of = stacks.serving.iter();
        let of: Vec<Vec<u16>> = of.map(|nodes| bundled(&gaps, nodes, most)).collect();
        let count = of
            .iter()
            .map(|bundles| bundles.iter().max().map_or(0, |&b| usize::from(b) + 1));
        Self {
            model,
            stacks,
            count: count.collect(),
            of,
            gaps,
            ways: vec![None; 2 * (model.turns.len() + 1) * model.turns.len()],
        }
    }

    /// By stack of turn `before`, or of the start, the number of its bundle.
    pub(super) fn of(&self, before: usize) -> Vec<u16> {
        self.of.get(before).cloned().unwrap_or_else(|| vec![0])
    }

    /// How many bundles turn `before`, or the start, has.
    pub(super) fn count(&self, before: usize) -> usize {
        self.count.get(before).copied().unwrap_or(1)
    }

    /// As [`super::min_plus::Spread::least`], by bundle.
    pub(super) fn least(
        &mut self,
        (before, turn): (usize, usize),
        change: bool,
        next: &[Lanes<C>],
        least: &mut Vec<Lanes<C>>,
    ) {
        let slot = 2 * (before * self.model.turns.len() + turn) + usize::from(change);
        if self.ways[slot].is_none() {
            self.ways[slot] = Some(self.between((before, turn), change));
        }
        let ways = self.ways[slot].as_ref().expect("just set");
        for row in ways.chunks_exact(self.count[turn]) {
            let mut lanes = [C::FAR; LANES];
            for (to, &way) in next.iter().zip(row) {
                lower(&mut lanes, to, way);
            }
            least.push(lanes);
        }
    }

    fn between(&self, (before, turn): (usize, usize), change: bool) -> Vec<C> {
        let start = [self.stacks.start];
        let from = self
            .stacks
            .serving
            .get(before)
            .map_or(&start[..], |nodes| nodes);
        let (of, count) = (self.of(before), self.count[turn]);
        let mut ways = vec![i64::MAX; self.count(before) * count];
        for (&a, &row) in from.iter().zip(&of) {
            for (&b, &column) in self.stacks.serving[turn].iter().zip(&self.of[turn]) {
                let way = &mut ways[usize::from(row) * count + usize::from(column)];
                // No hole change takes less than the way itself.
                if self.gaps.plain(a, b) < *way {
                    *way = (*way).min(self.gaps.between(a, b, change));
                }
            }
        }
        let unit = self.model.unit;
        ways.into_iter().map(|way| C::of(way / unit)).collect()
    }
}

/// Bundles round the stacks that lie farthest apart.
fn bundled(gaps: &Gaps<'_>, nodes: &[u32], most: usize) -> Vec<u16> {
    if nodes.len() <= most {
        return (0..).take(nodes.len()).collect();
    }
    let mut bundle = vec![0; nodes.len()];
    let away = |from: u32| nodes.iter().map(move |&node| gaps.plain(from, node));
    let mut nearest: Vec<i64> = away(nodes[0]).collect();
    for next in 1..most {
        let farthest = (0..nodes.len()).max_by_key(|&n| (nearest[n], core::cmp::Reverse(n)));
        let farthest = farthest.unwrap_or(0);
        for (stack, way) in away(nodes[farthest]).enumerate() {
            if way < nearest[stack] {
                nearest[stack] = way;
                bundle[stack] = u16::try_from(next).expect("few bundles");
            }
        }
    }
    // Numbers without gaps.
    let mut used: Vec<u16> = bundle.clone();
    used.sort_unstable();
    used.dedup();
    let number = |b: &u16| used.binary_search(b).map_or(0, |at| at);
    let numbers = bundle.iter().map(number);
    numbers
        .map(|n| u16::try_from(n).expect("few bundles"))
        .collect()
}
