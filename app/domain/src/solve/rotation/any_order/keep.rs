//! What may stay on the bar on the way to another set of plates.
//!
//! Refuses: ways that are not worth their handling.
use super::super::numbers::Numbers;
use super::super::plates::Plates;
use super::super::stacks::at;
use super::AnyOrder;
use alloc::vec::Vec;

impl AnyOrder<'_> {
    /// Forgets all piles but the start's and those `kept`, which get new numbers.
    pub(super) fn keep_only(&mut self, kept: &mut [(u8, u32)]) {
        let bars = core::iter::once(self.start).chain(kept.iter().map(|step| step.1));
        let piles: Vec<(Vec<Plates>, u32)> = bars
            .map(|bar| (self.blocks(bar).to_vec(), self.piles[at(bar)].node))
            .collect();
        self.numbers = Numbers::new();
        self.piles = Vec::new();
        self.blocks = Vec::new();
        self.handling = Vec::new();
        self.packed = Vec::new();
        let mut piles = piles.into_iter();
        if let Some((blocks, node)) = piles.next() {
            self.start = self.number(&blocks, node);
        }
        for (step, (blocks, node)) in kept.iter_mut().zip(piles) {
            step.1 = self.number(&blocks, node);
        }
    }

    /// Finds what may be kept of a pile on the way to the set `wanted`, as long as that is `worth`
    /// its handling, which is never less than `least`.
    pub(super) fn keeps(
        &mut self,
        bar: u32,
        (wanted, all): (&Plates, i64),
        change: bool,
        mut worth: impl FnMut(i64) -> bool,
    ) {
        let model = self.model;
        let pile = &self.piles[at(bar)];
        let blocks = &self.blocks[pile.blocks.clone()];
        let both = pile.handling + all;
        self.scratch.clear();
        self.levels.clear();
        let (mut kept, mut left, mut handling) = (Plates::NONE, *wanted, 0);
        for (block, &own) in blocks.iter().zip(&self.handling[pile.blocks.clone()]) {
            let most = block.common(&left);
            let whole = most == *block;
            let more = if whole { own } else { most.handling(model) };
            self.levels.push((kept, most, handling + more));
            if !whole {
                break;
            }
            kept = kept.and(block);
            left = left.without(block);
            handling += own;
        }
        let light = !change || model.light(kept.load(model));
        if kept == pile.total && light && worth(both - 2 * handling) {
            let keep = (blocks.len(), Plates::NONE, kept);
            self.scratch.push((keep, both - 2 * handling));
        }
        // The further in, the less is kept.
        for (whole, (kept, most, best)) in self.levels.iter().enumerate().rev() {
            if !worth(both - 2 * best) {
                break;
            }
            let block = &blocks[whole];
            let left_out = best - most.handling(model);
            most.parts(&mut self.parts);
            for part in &self.parts {
                let handling = both - 2 * (left_out + part.handling(model));
                if *part == *block || !worth(handling) {
                    continue;
                }
                let sum = kept.and(part);
                // What comes off one block alone and goes on again alone gains nothing.
                let idle = !change && sum.and(&block.without(part)) == *wanted;
                if !idle && (!change || model.light(sum.load(model))) {
                    self.scratch.push(((whole, *part, sum), handling));
                }
            }
        }
    }

    /// Handling of the plates that can stay at most on the way to the set `wanted`.
    pub(super) fn most_kept(&self, bar: u32, wanted: &Plates) -> i64 {
        let (mut kept, mut left) = (0, *wanted);
        let blocks = self.piles[at(bar)].blocks.clone();
        for (block, &own) in self.blocks[blocks.clone()]
            .iter()
            .zip(&self.handling[blocks])
        {
            let most = block.common(&left);
            if most != *block {
                return kept + most.handling(self.model);
            }
            kept += own;
            left = left.without(block);
        }
        kept
    }
}

#[cfg(test)]
mod tests {
    use super::super::super::bars::Bars as _;
    use super::super::super::model::Model;
    use super::super::super::plates::Plates;
    use super::super::super::stacks::Stacks;
    use super::super::super::{Lifter, Loaders, Problem, Standing, Turn};
    use super::super::{AnyOrder, MANY};
    use crate::length::Length;
    use crate::mass::{Mass, MassUnit};
    use crate::solve::{Equipment, PairKind};
    use alloc::vec;
    use alloc::vec::Vec;

    fn kg(kg: i64) -> Mass {
        Mass::of(MassUnit::Kg, kg * 1_000)
    }

    /// A bare bar of 20 kg and plates of 10 and 5 kg in any order, one lifter with one turn of 50
    /// kg.
    fn problem() -> Problem {
        let kind = |mass| PairKind {
            mass,
            pairs: 20,
            thickness: Length::ZERO,
            diameter: Length::ZERO,
            handling_ns: 1,
        };
        let turn = Turn {
            target: kg(50),
            below: Mass::ZERO,
            above: Mass::ZERO,
            least_diameter: Length::ZERO,
            hole: None,
            lasts_ns: 1,
            rest_ns: 0,
        };
        Problem {
            equipment: Equipment {
                bar_and_collars: kg(20),
                sleeve: None,
                big_inside: false,
                plates: vec![kind(kg(10)), kind(kg(5))],
            },
            loaders: Loaders::Two,
            hole_change_ns: 0,
            hole_change_at_most: kg(20),
            lifters: vec![Lifter {
                turns: vec![turn],
                ended_ns: None,
            }],
            standing: Standing::default(),
        }
    }

    /// Plates one after the other, by the binary digits of a number after the first.
    fn row(number: usize) -> Vec<u8> {
        let digits = (0..number.ilog2()).rev();
        digits
            .map(|digit| u8::from(number >> digit & 1 == 1))
            .collect()
    }

    /// A long search meets more bars than there is memory for; only those of the best plan stay.
    #[test]
    fn many_bars_are_forgotten_and_the_plans_own_lie_as_before() {
        let model = Model::new(&problem(), 0);
        let stacks = Stacks::new(&model, 100).expect("it can be loaded");
        let mut free = AnyOrder::new(&model, &stacks);
        let mut number = |row: &[u8]| {
            let blocks: Vec<Plates> = row.iter().map(|&kind| Plates::of(&[kind])).collect();
            free.number(&blocks, 0)
        };
        let bars: Vec<u32> = (2..=MANY).map(|n| number(&row(n))).collect();
        let order = [bars[40_000], bars[7], bars[40_000], bars[123]];
        let mut steps = order.map(|bar| (0, bar));
        let laid = free.lay(&order);
        assert_eq!(laid[1], row(9), "two rows of plates do not share a number");
        free.forget(&mut steps);
        assert_eq!(free.piles.len(), MANY, "there is room for as many");
        free.number(&[Plates::of(&[1]); 19], 0);
        let before = free.piles.len();
        free.forget(&mut steps);
        assert!(before > MANY && free.piles.len() == 4, "{before}");
        assert_eq!((free.blocks.len(), free.packed.len()), (24, 24));
        assert_eq!(free.lay(&steps.map(|step| step.1)), laid);
        assert_eq!(free.start(), 0, "the start's number stays");
    }
}
