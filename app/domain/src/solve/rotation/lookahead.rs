//! States of which nothing useful can come, seen one step ahead.
//!
//! The bounds know a bar by its plates alone, not by the order in which they lie. One step from
//! the bar as it lies costs less than to hold a state against all others, and often says that
//! every way on is of no use.
//!
//! Refuses: leaving out a state that some way leads on from.
use super::bars::Bars;
use super::incumbent::Aim;
use super::layer::State;
use super::min_plus::Cost;
use super::search::Search;
use alloc::vec;
use alloc::vec::Vec;

/// Glances that are as much work as one state.
const GLANCES: usize = 8;

impl<B: Bars, C: Cost> Search<'_, '_, '_, B, C> {
    /// Leaves out of `states`, all at one place and sorted by hole and bar, the barren ones.
    ///
    /// When `thorough`, looks at all ways from the others too, for a better bound on their end.
    pub(super) fn drop_barren(
        &mut self,
        aim: Aim,
        place: usize,
        states: &mut Vec<State>,
        thorough: bool,
    ) {
        let next = self.course.places[place].next.clone();
        if next.iter().all(Option::is_none) {
            return; // Everybody is through.
        }
        let mut kept = 0;
        let mut from = 0;
        while from < states.len() {
            let first = states[from];
            let same = |s: &&State| s.bar == first.bar && s.hole == first.hole;
            let count = states[from..].iter().take_while(same).count();
            let ends = self.soonest(aim, &next, &states[from..from + count], thorough);
            for (offset, soonest) in ends.into_iter().enumerate() {
                let Some(soonest) = soonest else { continue };
                let mut state = states[from + offset];
                if thorough {
                    state.ends = state.ends.max(soonest);
                }
                states[kept] = state;
                kept += 1;
            }
            from += count;
        }
        states.truncate(kept);
    }

    /// For each of a group of states that share bar and hole: no useful plan from there ends
    /// before; `None` when there is no useful plan. If not `thorough`, any useful way will do.
    fn soonest(
        &mut self,
        aim: Aim,
        next: &[Option<u32>],
        group: &[State],
        thorough: bool,
    ) -> Vec<Option<i64>> {
        let mut ends: Vec<Option<i64>> = vec![None; group.len()];
        let mut ways = Vec::new();
        for (lifter, place) in next.iter().enumerate() {
            let Some(place) = place else { continue };
            if !thorough && ends.iter().all(Option::is_some) {
                break;
            }
            let Some(step) = self.step(aim, *place as usize, lifter, group[0].hole) else {
                continue;
            };
            self.glances(&step, group, &mut ways);
            for (state, soonest) in group.iter().zip(&mut ends) {
                for way in &ways {
                    if !thorough && soonest.is_some() {
                        break;
                    }
                    if let Some(child) = self.child(&step, state, 0, way) {
                        *soonest = Some(soonest.map_or(child.ends, |ends| ends.min(child.ends)));
                    }
                }
            }
            if !self
                .allowance
                .ponder(group.len() * ways.len() / GLANCES + 1)
            {
                // Nothing is known of the rest.
                return group.iter().map(|state| Some(state.ends)).collect();
            }
        }
        ends
    }
}
