//! What may stay on the bar on the way to another set of plates.
//!
//! Refuses: ways that are not worth their handling.
use super::super::plates::Plates;
use super::super::stacks::at;
use super::Free;

impl Free<'_> {
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
