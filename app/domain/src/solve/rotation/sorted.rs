//! Bars with the big plates inside: a bar is a node of the tree of stacks.
//!
//! Refuses: nothing.
use super::bars::{Bars, Move};
use super::model::Model;
use super::stacks::{Stacks, at};
use alloc::vec::Vec;

/// See the module.
#[derive(Debug)]
pub(super) struct Sorted<'a> {
    pub model: &'a Model,
    pub stacks: &'a Stacks,
}

impl Bars for Sorted<'_> {
    fn start(&self) -> u32 {
        self.stacks.start
    }

    fn moves(
        &mut self,
        bar: u32,
        turn: usize,
        change: bool,
        mut worth: impl FnMut(usize, i64) -> bool,
        moves: &mut Vec<Move>,
    ) {
        let (stacks, want) = (self.stacks, &self.model.turns[turn]);
        for (place, &node) in stacks.serving[turn].iter().enumerate() {
            let least = (stacks.handling[at(bar)] - stacks.handling[at(node)]).abs();
            if !worth(place, least) {
                continue;
            }
            let handling = stacks.apart(bar, node, change);
            if worth(place, handling) {
                moves.push(Move {
                    stack: u32::try_from(place).expect("a place among nodes"),
                    bar: node,
                    handling,
                    stub: !want.serves(stacks.load[at(node)]),
                });
            }
        }
    }

    fn as_good(&self, bar: u32, other: u32, most: i64) -> bool {
        let handling = |bar: u32| self.stacks.handling[at(bar)];
        let least = (handling(bar) - handling(other)).abs();
        least <= most && self.stacks.apart(bar, other, false) <= most
    }

    fn lay(&self, bars: &[u32]) -> Vec<Vec<u8>> {
        bars.iter().map(|&bar| self.stacks.plates(bar)).collect()
    }
}
