//! A work load as settled on the day, laid over the rungs that it is for.
use crate::equipment::PlateFace;
use crate::mass::Mass;
use crate::sheet::Rung;
use crate::solve::change;
use alloc::vec::Vec;

/// A work load as settled, for all work sets that are left.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Settled {
    /// The first rung that it is for, from 0.
    pub rung: u16,
    /// Bar, collars and plates.
    pub load: Mass,
    /// Plates of one side, inside to outside.
    pub per_side: Vec<PlateFace>,
    /// Belt on.
    pub belt: bool,
    /// Straps on.
    pub straps: bool,
}

impl Settled {
    /// Gives the rungs from its own on, up to `end`, this load.
    pub(crate) fn lay_over(&self, rungs: &mut [Rung], end: usize) {
        let end = end.min(rungs.len());
        for rung in rungs.iter_mut().take(end).skip(usize::from(self.rung)) {
            rung.load = self.load;
            rung.per_side.clone_from(&self.per_side);
            (rung.belt, rung.straps) = (self.belt, self.straps);
        }
        // The hands have something else to do before the rung after them too.
        for at in usize::from(self.rung)..(end + 1).min(rungs.len()) {
            let before = match at.checked_sub(1) {
                Some(before) => rungs[before].per_side.clone(),
                None => Vec::new(),
            };
            let hands = change(&before, &rungs[at].per_side);
            rungs[at].take_off = hands.take_off;
            rungs[at].put_on = hands.put_on;
        }
    }
}
