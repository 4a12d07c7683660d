//! Every stack of mats, as two halves put together. Refuses: stacking a mat twice.
use super::Rule;
use crate::length::Length;
use alloc::vec;
use alloc::vec::Vec;
use core::cmp::Reverse;

/// A selection of mats.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(super) struct Stack {
    /// Nanometres.
    pub thickness: i64,
    /// Places in the problem's list, thickest first.
    pub mats: Vec<usize>,
}

/// All stacks of the thicker mats, and all of the rest: by thickness, of each the best.
#[derive(Debug)]
pub(super) struct Stacks {
    halves: [Vec<Half>; 2],
    /// Places in the problem's list, thickest first.
    order: Vec<usize>,
}

/// A stack of one half's mats; its bits are places in the order, thickest lowest.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
struct Half {
    thickness: i64,
    bits: u32,
}

impl Half {
    /// Fewest mats first, then the thickest single mats.
    fn rank(self) -> (u32, Reverse<u32>) {
        (self.bits.count_ones(), Reverse(self.bits.reverse_bits()))
    }
}

impl Stacks {
    /// Lists both halves.
    pub(super) fn new(mats: &[Length]) -> Self {
        let mut order: Vec<usize> = (0..mats.len()).collect();
        order.sort_by_key(|&at| (Reverse(mats[at]), at));
        let middle = order.len() / 2;
        let half = |from: usize, to: usize| {
            let mut stacks = vec![Half {
                thickness: 0,
                bits: 0,
            }];
            for (place, &mat) in order.iter().enumerate().take(to).skip(from) {
                let with = |half: &Half| Half {
                    thickness: half.thickness + mats[mat].nm(),
                    bits: half.bits | 1 << place,
                };
                let more: Vec<Half> = stacks.iter().map(with).collect();
                stacks.extend(more);
                stacks.sort_by_key(|half| (half.thickness, half.rank()));
                stacks.dedup_by_key(|half| half.thickness);
            }
            stacks
        };
        Self {
            halves: [half(0, middle), half(middle, order.len())],
            order,
        }
    }

    /// The stack that comes nearest to lowering a bar by `drop` half nanometres under `rule`;
    /// of equally near ones the fewest mats, the thinnest, the thickest single mats.
    pub(super) fn best(&self, drop: i64, rule: Rule) -> Option<Stack> {
        let [thick, thin] = &self.halves;
        let pairs = thick.iter().flat_map(|left| {
            let rest = drop - 2 * left.thickness;
            // The first that lowers the bar far enough, and the last that does not.
            let enough = thin.partition_point(|right| 2 * right.thickness < rest);
            let less = match rule {
                Rule::AtOrBelow => None,
                Rule::Nearest => enough.checked_sub(1),
            };
            let found = [Some(enough), less].into_iter().flatten();
            found.filter_map(|at| thin.get(at)).map(|right| Half {
                thickness: left.thickness + right.thickness,
                bits: left.bits | right.bits,
            })
        });
        let best = pairs.min_by_key(|both| {
            let (count, singles) = both.rank();
            let off = (2 * both.thickness - drop).abs();
            (off, count, both.thickness, singles)
        })?;
        let used = |place: &usize| best.bits >> place & 1 == 1;
        let places = (0..self.order.len()).filter(used);
        Some(Stack {
            thickness: best.thickness,
            mats: places.map(|place| self.order[place]).collect(),
        })
    }
}
