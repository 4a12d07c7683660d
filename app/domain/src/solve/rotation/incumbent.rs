//! The best plan known, and what would be better.
//!
//! Refuses: nothing.
use alloc::vec::Vec;

/// What a pass is after.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Aim {
    /// An earlier end, or the same with less handling.
    Both,
    /// An earlier end.
    Ends,
    /// Less handling, ending no later.
    Handling,
}

/// The best plan known: whose turn, and the bar for it.
#[derive(Debug, Clone)]
pub(super) struct Incumbent {
    pub ends: i64,
    pub handling: i64,
    pub steps: Vec<(u8, u32)>,
}

impl Incumbent {
    /// Whether a plan with these bounds would be of no use.
    pub(super) fn beats(&self, aim: Aim, ends: i64, handling: i64) -> bool {
        match aim {
            Aim::Both => (ends, handling) >= (self.ends, self.handling),
            Aim::Ends => ends >= self.ends,
            Aim::Handling => ends > self.ends || handling >= self.handling,
        }
    }
}
