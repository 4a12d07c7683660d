//! Where the bar is for a rung of a sheet, and what is worn: the plan's word, else the lift's and the
//! lifter's own.
use super::LiftSheet;
use crate::length::Length;
use crate::lift::Grip;
use crate::lifter::Lifter;
use crate::manner::Manner;
use crate::mass::Mass;

impl LiftSheet {
    /// How a rung is done, where the plan says so: warm-ups where the first sets are, and the rest
    /// as the lifter always does them.
    #[must_use]
    pub fn manner_of(&self, rung: usize) -> Manner {
        if let Some(group) = self.group_of(rung) {
            return group.manner;
        }
        let first = self.groups.first().map(|group| group.manner);
        first.map_or_else(Manner::default, |first| Manner {
            hole: first.hole,
            block: first.block,
            ..Manner::default()
        })
    }

    /// The hole of the pins for a rung; `None` where it does not start on pins, or none can be given.
    #[must_use]
    pub fn pin_hole(&self, rung: usize) -> Option<u16> {
        let own = self.pins.as_ref().map(|pins| pins.hole);
        let said = self.manner_of(rung).hole;
        if self.hooks.is_some() {
            None
        } else {
            said.or(own)
        }
    }

    /// The hole of the hooks for a rung, where one is written.
    #[must_use]
    pub fn hook_hole(&self, rung: usize) -> Option<u16> {
        let own = self.hooks?.hole;
        self.manner_of(rung).hole.or(own)
    }

    /// The mats that are stood on for a rung: none where the coach says the hole.
    #[must_use]
    pub fn mats_of(&self, rung: usize) -> &[Length] {
        match (&self.pins, self.manner_of(rung).hole) {
            (Some(pins), None) => &pins.mats,
            (Some(_), Some(_)) | (None, _) => &[],
        }
    }

    /// How the bar is held for a rung.
    #[must_use]
    pub fn grip_of(&self, rung: usize) -> Grip {
        self.manner_of(rung).grip.unwrap_or(self.grip)
    }

    /// Whether belt and straps are worn for a rung at `load`.
    #[must_use]
    pub fn worn(&self, lifter: &Lifter, rung: usize, load: Mass) -> (bool, bool) {
        let said = self.manner_of(rung);
        let belt = said
            .belt
            .unwrap_or_else(|| lifter.belt.worn(rung + 1, load));
        let straps = said
            .straps
            .unwrap_or_else(|| lifter.straps.worn(rung + 1, load));
        (belt, straps)
    }

    /// Adds what is worn to each rung.
    pub(crate) fn dress(&mut self, lifter: &Lifter) {
        for at in 0..self.rungs.len() {
            let worn = self.worn(lifter, at, self.rungs[at].load);
            (self.rungs[at].belt, self.rungs[at].straps) = worn;
        }
    }
}
