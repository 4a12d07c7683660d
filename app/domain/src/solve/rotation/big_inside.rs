//! Bars with the big plates inside: a bar is a node of the tree of stacks.
//!
//! Refuses: nothing.
use super::bars::{Bars, Move};
use super::model::Model;
use super::stacks::{Stacks, at};
use alloc::vec::Vec;

/// See the module.
#[derive(Debug)]
pub(super) struct BigInside<'a> {
    pub model: &'a Model,
    pub stacks: &'a Stacks,
}

impl Bars for BigInside<'_> {
    /// The bar, and the handling of all its plates.
    type Face = (u32, i64);

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
                    found: node,
                    handling,
                    stub: !stacks.serves(node, want),
                });
            }
        }
    }

    fn arrive(&mut self, _: u32, way: &Move) -> u32 {
        way.found
    }

    fn face(&self, bar: u32) -> (u32, i64) {
        (bar, self.stacks.handling[at(bar)])
    }

    fn handling(&self, face: &(u32, i64)) -> i64 {
        face.1
    }

    fn as_good(&self, face: &(u32, i64), other: &(u32, i64), most: i64) -> bool {
        self.stacks.apart(face.0, other.0, false) <= most
    }

    fn lay(&self, bars: &[u32]) -> Vec<Vec<u8>> {
        bars.iter().map(|&bar| self.stacks.plates(bar)).collect()
    }
}
