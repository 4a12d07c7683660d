//! Bars whose plates may lie in any order.
//!
//! Plates that go on together need no order before some of them come off again: those that stay
//! longer then lie inside. So a bar is a row of blocks, inside to outside, each a set of plates
//! put on together. To get to another set, the outer blocks come off, perhaps part of one more
//! block, and what is missing goes on as a new block. It can pay to take off more than must be,
//! so that it goes on again in one block with the rest; all of that is offered.
//!
//! Refuses: nothing.
use super::bars::{Bars, Move};
use super::model::Model;
use super::stacks::{Stacks, at};
use alloc::collections::BTreeMap;
use alloc::vec;
use alloc::vec::Vec;

/// How many of each kind.
type Counts = Vec<u8>;

/// See the module.
#[derive(Debug)]
pub(super) struct Free<'a> {
    model: &'a Model,
    stacks: &'a Stacks,
    piles: Vec<Pile>,
    numbers: BTreeMap<Vec<Counts>, u32>,
    /// By turn and place: the sets that serve.
    sets: Vec<Vec<Counts>>,
    start: u32,
}

#[derive(Debug)]
struct Pile {
    blocks: Vec<Counts>,
    total: Counts,
    handling: i64,
}

impl<'a> Free<'a> {
    pub(super) fn new(model: &'a Model, stacks: &'a Stacks) -> Self {
        let counts = |node: &u32| count(model, &stacks.plates(*node));
        let sets = stacks
            .serving
            .iter()
            .map(|nodes| nodes.iter().map(counts).collect());
        let mut free = Self {
            model,
            stacks,
            piles: Vec::new(),
            numbers: BTreeMap::new(),
            sets: sets.collect(),
            start: 0,
        };
        let single = |kind: &u8| count(model, core::slice::from_ref(kind));
        free.start = free.number(model.on_bar.iter().map(single).collect());
        free
    }

    fn number(&mut self, blocks: Vec<Counts>) -> u32 {
        if let Some(&number) = self.numbers.get(&blocks) {
            return number;
        }
        let number = u32::try_from(self.piles.len()).expect("fewer than 2^32 states");
        let mut total = vec![0; self.model.kinds.len()];
        for block in &blocks {
            add(&mut total, block);
        }
        let handling = self.handling(&total);
        self.numbers.insert(blocks.clone(), number);
        self.piles.push(Pile {
            blocks,
            total,
            handling,
        });
        number
    }

    fn handling(&self, counts: &[u8]) -> i64 {
        let kinds = self.model.kinds.iter().zip(counts);
        kinds.map(|(kind, &n)| i64::from(n) * kind.handling).sum()
    }

    fn load(&self, counts: &[u8]) -> i64 {
        let kinds = self.model.kinds.iter().zip(counts);
        self.model.bar
            + kinds
                .map(|(kind, &n)| 2 * i64::from(n) * kind.mass)
                .sum::<i64>()
    }

    /// All that may be kept of a pile on the way to the set `wanted`: how many whole blocks, and
    /// which part of the next one.
    fn keeps(&self, pile: &Pile, wanted: &[u8], change: bool) -> Vec<(usize, Counts)> {
        let mut keeps = Vec::new();
        let mut left = wanted.to_vec();
        let mut kept = vec![0; wanted.len()];
        for (whole, block) in pile.blocks.iter().enumerate() {
            let most: Counts = block.iter().zip(&left).map(|(a, b)| *a.min(b)).collect();
            let all = most == *block;
            for part in parts(&most) {
                let mut load = kept.clone();
                add(&mut load, &part);
                let light = !change || self.model.light(self.load(&load));
                if part != *block && light {
                    keeps.push((whole, part));
                }
            }
            if !all {
                return keeps;
            }
            add(&mut kept, block);
            for (left, taken) in left.iter_mut().zip(block) {
                *left -= taken;
            }
        }
        if !change || self.model.light(self.load(&kept)) {
            keeps.push((pile.blocks.len(), vec![0; wanted.len()]));
        }
        keeps
    }

    /// A stub only says what the set holds at least.
    fn least_to_stub(&self, pile: &Pile, node: u32) -> i64 {
        let plates = self.stacks.plates(node);
        let open = plates.last().map_or(0, |&kind| usize::from(kind));
        let counts = count(self.model, &plates);
        let kinds = self
            .model
            .kinds
            .iter()
            .zip(pile.total.iter().zip(&counts))
            .enumerate();
        kinds
            .map(|(at, (kind, (&has, &wants)))| {
                let over = if at < open {
                    has.saturating_sub(wants)
                } else {
                    0
                };
                i64::from(over.max(wants.saturating_sub(has))) * kind.handling
            })
            .sum()
    }
}

impl Bars for Free<'_> {
    fn start(&self) -> u32 {
        self.start
    }

    fn moves(
        &mut self,
        bar: u32,
        turn: usize,
        change: bool,
        mut worth: impl FnMut(usize, i64) -> bool,
        moves: &mut Vec<Move>,
    ) {
        let stacks = self.stacks;
        let want = self.model.turns[turn];
        for (place, &node) in stacks.serving[turn].iter().enumerate() {
            let stack = u32::try_from(place).expect("a place among nodes");
            let pile = &self.piles[at(bar)];
            if stacks.stub[at(node)] {
                let handling = self.least_to_stub(pile, node);
                if worth(place, handling) {
                    moves.push(Move {
                        stack,
                        bar,
                        handling,
                        stub: true,
                    });
                }
            }
            let wanted = &self.sets[turn][place];
            let handling = stacks.handling[at(node)];
            if !want.serves(stacks.load[at(node)]) || !worth(place, differ(self, pile, wanted)) {
                continue;
            }
            let mut found = Vec::new();
            for (whole, part) in self.keeps(pile, wanted, change) {
                let mut kept = part.clone();
                for block in &pile.blocks[..whole] {
                    add(&mut kept, block);
                }
                let moved = pile.handling + handling - 2 * self.handling(&kept);
                if worth(place, moved) {
                    let fresh: Counts = wanted.iter().zip(&kept).map(|(a, b)| a - b).collect();
                    let mut blocks = pile.blocks[..whole].to_vec();
                    blocks.extend(
                        [part, fresh]
                            .into_iter()
                            .filter(|b| b.iter().any(|&n| n > 0)),
                    );
                    found.push((blocks, moved));
                }
            }
            for (blocks, handling) in found {
                let bar = self.number(blocks);
                moves.push(Move {
                    stack,
                    bar,
                    handling,
                    stub: false,
                });
            }
        }
    }

    fn as_good(&self, bar: u32, other: u32) -> Option<i64> {
        let (a, b) = (&self.piles[at(bar)], &self.piles[at(other)]);
        if a.total != b.total || a.blocks.len() > b.blocks.len() {
            return None;
        }
        // Each block must be some blocks of the other in a row.
        let mut others = b.blocks.iter();
        for block in &a.blocks {
            let mut sum = vec![0; block.len()];
            while sum != *block {
                add(&mut sum, others.next()?);
                if sum.iter().zip(block).any(|(s, b)| s > b) {
                    return None;
                }
            }
        }
        Some(0)
    }

    fn lay(&self, bars: &[u32]) -> Vec<Vec<u8>> {
        let mut laid: Vec<Vec<u8>> = Vec::new();
        for &bar in bars.iter().rev() {
            let blocks = &self.piles[at(bar)].blocks;
            let mut stack = Vec::new();
            let mut from = 0;
            if let (Some(later), Some(after)) = (laid.last(), laid.len().checked_sub(1)) {
                let after = &self.piles[at(bars[bars.len() - 1 - after])].blocks;
                let same = blocks.iter().zip(after).take_while(|(a, b)| a == b).count();
                from = same;
                let mut kept: usize = blocks[..same].iter().map(size).sum();
                if let (Some(block), Some(part)) = (blocks.get(same), after.get(same))
                    && part.iter().zip(block).all(|(p, b)| p <= b)
                {
                    kept += size(part);
                    stack.extend_from_slice(&later[..kept]);
                    let rest: Counts = block.iter().zip(part).map(|(b, p)| b - p).collect();
                    spread_out(&rest, &mut stack);
                    from += 1;
                } else {
                    stack.extend_from_slice(&later[..kept]);
                }
            }
            for block in &blocks[from..] {
                spread_out(block, &mut stack);
            }
            laid.push(stack);
        }
        laid.reverse();
        laid
    }
}

/// At least what it takes to get from a pile to a set.
fn differ(free: &Free<'_>, pile: &Pile, wanted: &[u8]) -> i64 {
    let kinds = free.model.kinds.iter().zip(pile.total.iter().zip(wanted));
    kinds
        .map(|(kind, (a, b))| i64::from(a.abs_diff(*b)) * kind.handling)
        .sum()
}

fn count(model: &Model, plates: &[u8]) -> Counts {
    let mut counts = vec![0; model.kinds.len()];
    for &kind in plates {
        counts[usize::from(kind)] += 1;
    }
    counts
}

fn add(sum: &mut [u8], more: &[u8]) {
    for (sum, more) in sum.iter_mut().zip(more) {
        *sum += more;
    }
}

fn size(block: &Counts) -> usize {
    block.iter().map(|&n| usize::from(n)).sum()
}

/// Appends the plates of a block, heaviest inside.
fn spread_out(block: &[u8], stack: &mut Vec<u8>) {
    for (kind, &n) in (0..).zip(block) {
        stack.extend(core::iter::repeat_n(kind, usize::from(n)));
    }
}

/// All sets within `most`, the empty one among them.
fn parts(most: &[u8]) -> Vec<Counts> {
    let mut parts = vec![vec![0; most.len()]];
    for (kind, &n) in most.iter().enumerate() {
        for at in 0..parts.len() {
            for m in 1..=n {
                let mut part = parts[at].clone();
                part[kind] = m;
                parts.push(part);
            }
        }
    }
    parts
}
