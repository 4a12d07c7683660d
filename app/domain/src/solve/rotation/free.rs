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
use super::numbers::Numbers;
use super::plates::{Packing, Plates};
use super::stacks::{Stacks, at};
use alloc::vec::Vec;
use core::ops::Range;

/// See the module.
#[derive(Debug)]
pub(super) struct Free<'a> {
    model: &'a Model,
    stacks: &'a Stacks,
    piles: Vec<Pile>,
    /// Of all piles, one after the other.
    blocks: Vec<Plates>,
    /// The same, as long as there is a packing.
    packed: Vec<Packed>,
    numbers: Numbers,
    /// By turn and place: the sets that serve.
    sets: Vec<Vec<Plates>>,
    start: u32,
    /// Where the counts of all kinds fit.
    packing: Option<Packing>,
    scratch: Vec<Keep>,
    /// Of the moves found last: what is kept, and the block that goes on.
    found: Vec<(Keep, Plates)>,
}

/// How many whole blocks are kept, which part of the next one, and both together.
type Keep = (usize, Plates, Plates);

/// A block in a few bits, and its handling.
type Packed = (u128, i64);

#[derive(Debug)]
struct Pile {
    /// Where its blocks are.
    blocks: Range<usize>,
    total: Plates,
    /// Of all its plates.
    handling: i64,
}

/// What mostly decides whether one pile is as good as another.
#[derive(Debug, Clone, Copy)]
pub(super) struct Face {
    bar: u32,
    handling: i64,
    /// The innermost block, packed.
    inner: u128,
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
            blocks: Vec::new(),
            packed: Vec::new(),
            numbers: Numbers::new(),
            sets: sets.collect(),
            start: 0,
            packing: Packing::new(model),
            scratch: Vec::new(),
            found: Vec::new(),
        };
        let single = |kind: &u8| Plates::of(core::slice::from_ref(kind));
        let blocks: Vec<Plates> = model.on_bar.iter().map(single).collect();
        free.start = free.number(&blocks);
        free
    }

    fn number(&mut self, blocks: &[Plates]) -> u32 {
        let digest = blocks.iter().fold(0, |digest, block| block.digest(digest));
        let same = |number: u32| self.blocks[self.piles[at(number)].blocks.clone()] == *blocks;
        let (number, known) = self.numbers.find(digest, same);
        if known {
            return number;
        }
        let total = blocks
            .iter()
            .fold(Plates::NONE, |sum, block| sum.and(block));
        if let Some(packing) = &self.packing {
            let packed = |block: &Plates| (packing.pack(block), block.handling(self.model));
            self.packed.extend(blocks.iter().map(packed));
        }
        let from = self.blocks.len();
        self.blocks.extend_from_slice(blocks);
        self.piles.push(Pile {
            blocks: from..self.blocks.len(),
            total,
            handling: total.handling(self.model),
        });
        number
    }

    fn blocks(&self, bar: u32) -> &[Plates] {
        &self.blocks[self.piles[at(bar)].blocks.clone()]
    }

    /// Finds all that may be kept of a pile on the way to the set `wanted`.
    fn keeps(&mut self, bar: u32, wanted: &Plates, change: bool) {
        let blocks = &self.blocks[self.piles[at(bar)].blocks.clone()];
        self.scratch.clear();
        let mut kept = Plates::NONE;
        for (whole, block) in blocks.iter().enumerate() {
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
            self.scratch.push((blocks.len(), Plates::NONE, kept));
        }
    }

    /// Handling of the plates that can stay at most on the way to the set `wanted`.
    fn most_kept(&self, bar: u32, wanted: &Plates) -> i64 {
        let (mut kept, mut left) = (0, *wanted);
        for block in self.blocks(bar) {
            let most = block.common(&left);
            kept += most.handling(self.model);
            if most != *block {
                break;
            }
            left = left.without(&most);
        }
        kept
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
    type Face = Face;

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
        self.found.clear();
        for (place, &node) in stacks.serving[turn].iter().enumerate() {
            let stack = u32::try_from(place).expect("a place among nodes");
            if stacks.stub[at(node)] {
                let handling = self.least_to_stub(bar, node);
                if worth(place, handling) {
                    moves.push(Move {
                        stack,
                        found: u32::MAX,
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
            for &keep in &self.scratch {
                let (_, _, kept) = keep;
                let both = self.piles[at(bar)].handling + stacks.handling[at(node)];
                let handling = both - 2 * kept.handling(self.model);
                if worth(place, handling) {
                    moves.push(Move {
                        stack,
                        found: u32::try_from(self.found.len()).expect("fewer than 2^32"),
                        handling,
                        stub: false,
                    });
                    self.found.push((keep, wanted.without(&kept)));
                }
            }
        }
    }

    fn glances(
        &mut self,
        bar: u32,
        turn: usize,
        change: bool,
        mut worth: impl FnMut(usize, i64) -> bool,
        moves: &mut Vec<Move>,
    ) {
        if change {
            // What may stay then depends on its load.
            return self.moves(bar, turn, change, worth, moves);
        }
        let stacks = self.stacks;
        let want = self.model.turns[turn];
        for (place, &node) in stacks.serving[turn].iter().enumerate() {
            let stack = u32::try_from(place).expect("a place among nodes");
            let mut glance = |handling, stub| {
                if worth(place, handling) {
                    moves.push(Move {
                        stack,
                        found: u32::MAX,
                        handling,
                        stub,
                    });
                }
            };
            if stacks.stub[at(node)] {
                glance(self.least_to_stub(bar, node), true);
            }
            if want.serves(stacks.load[at(node)]) {
                let both = self.piles[at(bar)].handling + stacks.handling[at(node)];
                let kept = self.most_kept(bar, &self.sets[turn][place]);
                glance(both - 2 * kept, false);
            }
        }
    }

    fn arrive(&mut self, bar: u32, way: &Move) -> u32 {
        let ((whole, part, _), new) = self.found[at(way.found)];
        let mut blocks = self.blocks(bar)[..whole].to_vec();
        blocks.extend([part, new].into_iter().filter(|b| *b != Plates::NONE));
        self.number(&blocks)
    }

    fn face(&self, bar: u32) -> Face {
        let pile = &self.piles[at(bar)];
        let inner = self
            .packed
            .get(pile.blocks.start)
            .map_or(0, |block| block.0);
        Face {
            bar,
            handling: pile.handling,
            inner: if pile.blocks.is_empty() { 0 } else { inner },
        }
    }

    fn bare(&self, face: &Face) -> Option<i64> {
        Some(face.handling)
    }

    fn row(&self, face: &Face) -> u128 {
        face.inner
    }

    fn may_stay(&self, row: u128, other: u128) -> bool {
        // The innermost plates of the other are among the innermost here.
        let packing = self.packing.as_ref();
        packing.is_some_and(|packing| packing.within(other, row))
    }

    fn near(&self, face: &Face, other: &Face, most: i64) -> bool {
        (face.handling - other.handling).abs() <= most
    }

    fn as_good(&self, face: &Face, other: &Face, most: i64) -> bool {
        let all = face.handling + other.handling;
        let Some(packing) = self.packing.as_ref().filter(|_| all > most) else {
            return all <= most;
        };
        let packed = |face: &Face| &self.packed[self.piles[at(face.bar)].blocks.clone()];
        // Blocks that hold some blocks of the other in a row may stay, and so may such a part.
        let (mut kept, mut others) = (0, packed(other).iter().peekable());
        for (block, _) in packed(face) {
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
        all - 2 * kept <= most
    }

    fn lay(&self, bars: &[u32]) -> Vec<Vec<u8>> {
        let mut laid: Vec<Vec<u8>> = Vec::new();
        let mut after: &[Plates] = &[];
        for &bar in bars.iter().rev() {
            let blocks = self.blocks(bar);
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
