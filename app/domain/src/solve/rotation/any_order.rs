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
use alloc::vec;
use alloc::vec::Vec;
use core::ops::Range;

mod keep;

/// Piles that are worth forgetting, some hundred bytes each.
const MANY: usize = 50_000;

/// See the module.
#[derive(Debug)]
pub(super) struct AnyOrder<'a> {
    model: &'a Model,
    stacks: &'a Stacks,
    piles: Vec<Pile>,
    /// Of all piles, one after the other.
    blocks: Vec<Plates>,
    /// The handling of each.
    handling: Vec<i64>,
    /// The blocks in a few bits, as long as there is a packing.
    packed: Vec<u128>,
    numbers: Numbers,
    /// By turn and place: the sets that serve.
    sets: Vec<Vec<Plates>>,
    start: u32,
    /// Where the counts of all kinds fit.
    packing: Option<Packing>,
    /// By node and turn: where the row of `apart` begins, once it is worked out.
    rows: Vec<u32>,
    /// By row and place: the handling that sets differ by.
    apart: Vec<i64>,
    /// Of the moves found last: what is kept, the block that goes on, and the node.
    found: Vec<(Keep, Plates, u32)>,
    /// What may be kept, with the handling that it takes then.
    scratch: Vec<(Keep, i64)>,
    /// By block: what all blocks inside hold, what may stay of this one at most, and the handling
    /// of both.
    levels: Vec<(Plates, Plates, i64)>,
    parts: Vec<Plates>,
}

/// How many whole blocks are kept, which part of the next one, and both together.
type Keep = (usize, Plates, Plates);

#[derive(Debug)]
struct Pile {
    /// Where its blocks are.
    blocks: Range<usize>,
    total: Plates,
    /// The node with the same plates.
    node: u32,
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

impl<'a> AnyOrder<'a> {
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
            handling: Vec::new(),
            packed: Vec::new(),
            numbers: Numbers::new(),
            sets: sets.collect(),
            start: 0,
            packing: Packing::new(model),
            rows: vec![u32::MAX; stacks.parent.len() * model.turns.len()],
            apart: Vec::new(),
            found: Vec::new(),
            scratch: Vec::new(),
            levels: Vec::new(),
            parts: Vec::new(),
        };
        let single = |kind: &u8| Plates::of(core::slice::from_ref(kind));
        let blocks: Vec<Plates> = model.on_bar.iter().map(single).collect();
        free.start = free.number(&blocks, stacks.start);
        free
    }

    /// The pile of `blocks`, whose plates are those of `node`.
    fn number(&mut self, blocks: &[Plates], node: u32) -> u32 {
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
            self.packed
                .extend(blocks.iter().map(|block| packing.pack(block)));
        }
        let handling = |block: &Plates| block.handling(self.model);
        self.handling.extend(blocks.iter().map(handling));
        let from = self.blocks.len();
        self.blocks.extend_from_slice(blocks);
        self.piles.push(Pile {
            blocks: from..self.blocks.len(),
            total,
            node,
            handling: total.handling(self.model),
        });
        number
    }

    fn blocks(&self, bar: u32) -> &[Plates] {
        &self.blocks[self.piles[at(bar)].blocks.clone()]
    }

    /// Where the handling that a pile's plates and each of a turn's sets differ by begins in
    /// `apart`.
    fn apart(&mut self, bar: u32, turn: usize) -> usize {
        let pile = &self.piles[at(bar)];
        let slot = at(pile.node) * self.model.turns.len() + turn;
        if self.rows[slot] == u32::MAX {
            self.rows[slot] = u32::try_from(self.apart.len()).expect("fewer than 2^32");
            let total = pile.total;
            let differ = |set: &Plates| total.without(set).and(&set.without(&total));
            let sets = self.sets[turn].iter();
            self.apart
                .extend(sets.map(|set| differ(set).handling(self.model)));
        }
        at(self.rows[slot])
    }

    /// The way to a stub of the stacks that serve a turn, if `node` is one: of its set only what it
    /// holds at least is known, so the way takes at least this.
    fn stub(&self, bar: u32, (stack, node): (u32, u32)) -> Option<Move> {
        self.stacks.stub[at(node)].then(|| Move {
            stack,
            found: u32::MAX,
            handling: self.least_to_stub(bar, node),
            stub: true,
        })
    }

    fn least_to_stub(&self, bar: u32, node: u32) -> i64 {
        let plates = self.stacks.plates(node);
        let open = plates.last().map_or(0, |&kind| usize::from(kind));
        let (has, wants) = (&self.piles[at(bar)].total, Plates::of(&plates));
        let over = has.without(&wants).before(open);
        over.and(&wants.without(has)).handling(self.model)
    }
}

impl Bars for AnyOrder<'_> {
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
        let apart = self.apart(bar, turn);
        self.found.clear();
        for (place, &node) in stacks.serving[turn].iter().enumerate() {
            let stack = u32::try_from(place).expect("a place among nodes");
            let stub = self.stub(bar, (stack, node));
            moves.extend(stub.filter(|way| worth(place, way.handling)));
            let serves = stacks.serves(node, &want);
            if !serves || !worth(place, self.apart[apart + place]) {
                continue;
            }
            let wanted = self.sets[turn][place];
            let all = stacks.handling[at(node)];
            self.keeps(bar, (&wanted, all), change, |handling| {
                worth(place, handling)
            });
            for &(keep, handling) in &self.scratch {
                moves.push(Move {
                    stack,
                    found: u32::try_from(self.found.len()).expect("fewer than 2^32"),
                    handling,
                    stub: false,
                });
                self.found.push((keep, wanted.without(&keep.2), node));
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
        let stacks = self.stacks;
        let want = self.model.turns[turn];
        let apart = self.apart(bar, turn);
        for (place, &node) in stacks.serving[turn].iter().enumerate() {
            let stack = u32::try_from(place).expect("a place among nodes");
            let stub = self.stub(bar, (stack, node));
            moves.extend(stub.filter(|way| worth(place, way.handling)));
            let serves = stacks.serves(node, &want);
            if !serves || !worth(place, self.apart[apart + place]) {
                continue;
            }
            let wanted = self.sets[turn][place];
            let all = stacks.handling[at(node)];
            let least = if change {
                // What may stay then depends on its load.
                self.keeps(bar, (&wanted, all), change, |handling| {
                    worth(place, handling)
                });
                self.scratch.iter().map(|found| found.1).min()
            } else {
                let both = self.piles[at(bar)].handling + all;
                let handling = both - 2 * self.most_kept(bar, &wanted);
                Some(handling).filter(|&handling| worth(place, handling))
            };
            moves.extend(least.map(|handling| Move {
                stack,
                found: u32::MAX,
                handling,
                stub: false,
            }));
        }
    }

    fn arrive(&mut self, bar: u32, way: &Move) -> u32 {
        let ((whole, part, _), new, node) = self.found[at(way.found)];
        let mut blocks = self.blocks(bar)[..whole].to_vec();
        blocks.extend([part, new].into_iter().filter(|b| *b != Plates::NONE));
        self.number(&blocks, node)
    }

    fn forget(&mut self, kept: &mut [(u8, u32)]) {
        if self.piles.len() > MANY {
            self.keep_only(kept);
        }
    }

    fn face(&self, bar: u32) -> Face {
        let pile = &self.piles[at(bar)];
        let inner = self.packed.get(pile.blocks.start).copied().unwrap_or(0);
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

    fn handling(&self, face: &Face) -> i64 {
        face.handling
    }

    fn as_good(&self, face: &Face, other: &Face, most: i64) -> bool {
        let all = face.handling + other.handling;
        let Some(packing) = self.packing.as_ref().filter(|_| all > most) else {
            return all <= most;
        };
        let blocks = |face: &Face| self.piles[at(face.bar)].blocks.clone();
        let packed = |face: &Face| self.packed[blocks(face)].iter().copied();
        // Blocks that hold some blocks of the other in a row may stay, and so may such a part.
        let own = self.handling[blocks(other)].iter();
        let (mut kept, mut others) = (0, packed(other).zip(own).peekable());
        for block in packed(face) {
            let mut sum = 0;
            while let Some((other, handling)) =
                others.next_if(|other| packing.within(sum + other.0, block))
            {
                sum += other;
                kept += handling;
            }
            if sum != block {
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
