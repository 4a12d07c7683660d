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
use super::plates::{Packing, Plates};
use super::stacks::{Stacks, at};
use alloc::collections::BTreeMap;
use alloc::vec::Vec;

/// See the module.
#[derive(Debug)]
pub(super) struct Free<'a> {
    model: &'a Model,
    stacks: &'a Stacks,
    piles: Vec<Pile>,
    /// By digest of the blocks.
    numbers: BTreeMap<u64, Vec<u32>>,
    /// By turn and place: the sets that serve.
    sets: Vec<Vec<Plates>>,
    start: u32,
    /// Where the counts of all kinds fit.
    packing: Option<Packing>,
    scratch: Vec<(usize, Plates, Plates)>,
}

/// A block in a few bits, and its handling.
type Packed = (u128, i64);

#[derive(Debug)]
struct Pile {
    blocks: Vec<Plates>,
    packed: Vec<Packed>,
    total: Plates,
    handling: i64,
}

impl<'a> Free<'a> {
    pub(super) fn new(model: &'a Model, stacks: &'a Stacks) -> Self {
        let set = |node: &u32| Plates::of(&stacks.plates(*node));
        let sets = stacks
            .serving
            .iter()
            .map(|nodes| nodes.iter().map(set).collect());
        let mut free = Self {
            model,
            stacks,
            piles: Vec::new(),
            numbers: BTreeMap::new(),
            sets: sets.collect(),
            start: 0,
            packing: Packing::new(model),
            scratch: Vec::new(),
        };
        let single = |kind: &u8| Plates::of(core::slice::from_ref(kind));
        let blocks: Vec<Plates> = model.on_bar.iter().map(single).collect();
        free.start = free.number(&blocks);
        free
    }

    fn number(&mut self, blocks: &[Plates]) -> u32 {
        let digest = blocks.iter().fold(0, |digest, block| block.digest(digest));
        let alike = self.numbers.entry(digest).or_default();
        let same = |number: &&u32| self.piles[at(**number)].blocks == blocks;
        if let Some(&number) = alike.iter().find(same) {
            return number;
        }
        let number = u32::try_from(self.piles.len()).expect("fewer than 2^32 states");
        alike.push(number);
        let total = blocks
            .iter()
            .fold(Plates::NONE, |sum, block| sum.and(block));
        let handling = total.handling(self.model);
        let pack = |packing: &Packing| {
            let packed = |block: &Plates| (packing.pack(block), block.handling(self.model));
            blocks.iter().map(packed).collect()
        };
        self.piles.push(Pile {
            blocks: blocks.to_vec(),
            packed: self.packing.as_ref().map(pack).unwrap_or_default(),
            total,
            handling,
        });
        number
    }

    /// Finds all that may be kept of a pile on the way to the set `wanted`: how many whole
    /// blocks, which part of the next one, and both together.
    fn keeps(&mut self, bar: u32, wanted: &Plates, change: bool) {
        let pile = &self.piles[at(bar)];
        self.scratch.clear();
        let mut kept = Plates::NONE;
        for (whole, block) in pile.blocks.iter().enumerate() {
            let most = block.common(&wanted.without(&kept));
            for part in most.parts() {
                let sum = kept.and(&part);
                let light = !change || self.model.light(sum.load(self.model));
                // What comes off one block alone and goes on again alone gains nothing.
                let idle = !change && sum.and(&block.without(&part)) == *wanted;
                if part != *block && light && !idle {
                    self.scratch.push((whole, part, sum));
                }
            }
            if most != *block {
                return;
            }
            kept = kept.and(block);
        }
        if !change || self.model.light(kept.load(self.model)) {
            self.scratch.push((pile.blocks.len(), Plates::NONE, kept));
        }
    }

    /// At least what it takes to get to a set of which a stub only says what it holds at least.
    fn least_to_stub(&self, bar: u32, node: u32) -> i64 {
        let plates = self.stacks.plates(node);
        let open = plates.last().map_or(0, |&kind| usize::from(kind));
        let (has, wants) = (&self.piles[at(bar)].total, Plates::of(&plates));
        let over = has.without(&wants).before(open);
        over.and(&wants.without(has)).handling(self.model)
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
        let mut blocks = Vec::new();
        for (place, &node) in stacks.serving[turn].iter().enumerate() {
            let stack = u32::try_from(place).expect("a place among nodes");
            if stacks.stub[at(node)] {
                let handling = self.least_to_stub(bar, node);
                if worth(place, handling) {
                    moves.push(Move {
                        stack,
                        bar,
                        handling,
                        stub: true,
                    });
                }
            }
            let wanted = self.sets[turn][place];
            let pile = &self.piles[at(bar)];
            let differ = pile
                .total
                .without(&wanted)
                .and(&wanted.without(&pile.total));
            let serves = want.serves(stacks.load[at(node)]);
            if !serves || !worth(place, differ.handling(self.model)) {
                continue;
            }
            self.keeps(bar, &wanted, change);
            for at_keep in 0..self.scratch.len() {
                let (whole, part, kept) = self.scratch[at_keep];
                let pile = &self.piles[at(bar)];
                let both = pile.handling + stacks.handling[at(node)];
                let handling = both - 2 * kept.handling(self.model);
                if worth(place, handling) {
                    blocks.clear();
                    blocks.extend_from_slice(&pile.blocks[..whole]);
                    let new = [part, wanted.without(&kept)];
                    blocks.extend(new.into_iter().filter(|block| *block != Plates::NONE));
                    let bar = self.number(&blocks);
                    moves.push(Move {
                        stack,
                        bar,
                        handling,
                        stub: false,
                    });
                }
            }
        }
    }

    fn as_good(&self, bar: u32, other: u32, most: i64) -> bool {
        let (a, b) = (&self.piles[at(bar)], &self.piles[at(other)]);
        if (a.handling - b.handling).abs() > most {
            return false;
        }
        let Some(packing) = &self.packing else {
            return false;
        };
        // Blocks that hold some blocks of the other in a row may stay, and so may such a part.
        let (mut kept, mut others) = (0, b.packed.iter().peekable());
        for (block, _) in &a.packed {
            let mut sum = 0;
            let more = |sum: u128, other: &Packed| packing.within(sum + other.0, *block);
            while let Some(other) = others.next_if(|other| more(sum, other)) {
                sum += other.0;
                kept += other.1;
            }
            if sum != *block {
                break;
            }
        }
        a.handling + b.handling - 2 * kept <= most
    }

    fn lay(&self, bars: &[u32]) -> Vec<Vec<u8>> {
        let mut laid: Vec<Vec<u8>> = Vec::new();
        let mut after: &[Plates] = &[];
        for &bar in bars.iter().rev() {
            let blocks = &self.piles[at(bar)].blocks;
            let mut from = blocks.iter().zip(after).take_while(|(a, b)| a == b).count();
            let mut kept: usize = blocks[..from].iter().map(Plates::count).sum();
            let mut outside = Plates::NONE;
            if let (Some(block), Some(part)) = (blocks.get(from), after.get(from))
                && part.within(block)
            {
                kept += part.count();
                outside = block.without(part);
                from += 1;
            }
            let mut stack = Vec::new();
            if let Some(later) = laid.last() {
                stack.extend_from_slice(&later[..kept]);
            }
            for block in core::iter::once(&outside).chain(&blocks[from..]) {
                stack.extend(block.heaviest_first());
            }
            laid.push(stack);
            after = blocks;
        }
        laid.reverse();
        laid
    }
}
