//! Keeps count of the work, and asks now and then whether to go on.
//!
//! Refuses: reading a clock; the caller has one.
use super::Effort;

/// How much may still be done.
pub(super) struct Allowance<'a> {
    left: u64,
    go_on: &'a mut dyn FnMut() -> bool,
    /// States looked at.
    pub used: u64,
    /// There is no time or room for more.
    pub spent: bool,
    unasked: u64,
}

impl<'a> Allowance<'a> {
    /// How many states are looked at before the caller is asked again.
    const PATIENCE: u64 = 200;

    pub(super) fn new(effort: Effort<'a>) -> Self {
        let Effort { states, go_on } = effort;
        Self {
            left: states,
            go_on,
            used: 0,
            spent: false,
            unasked: 0,
        }
    }

    /// Takes note of so many states.
    pub(super) fn spend(&mut self, states: usize) {
        self.used += states as u64;
        self.spent = self.spent || self.used >= self.left;
        self.ponder(states);
    }

    /// Takes note of work as long as so many states take; says whether to go on.
    pub(super) fn ponder(&mut self, states: usize) -> bool {
        self.unasked += states as u64;
        if self.unasked >= Self::PATIENCE {
            self.unasked = 0;
            self.spent = self.spent || !(self.go_on)();
        }
        !self.spent
    }
}
