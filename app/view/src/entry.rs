//! A pad of numbers: other reps, or the rep at which the back moved.

/// What it shows.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Entry {
    /// Which pad.
    pub pad: Pad,
    /// "How many reps at 130 kg?", "At which rep did the back move?".
    pub question: String,
    /// The numbers offered, in order; at most 12.
    pub numbers: Vec<u8>,
    /// The number planned, drawn quieter or outlined; 0 for none.
    pub planned: u8,
    /// Moved pad only: "stopped there" or "did all 5".
    pub through: String,
    /// Moved pad only: whether all reps were done all the same.
    pub through_on: bool,
    /// Reps pad only: "skip this rung", or empty.
    pub skip: String,
    /// Reps pad only: "end the lift", or empty.
    pub stop: String,
}

/// Which pad.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Pad {
    /// Reps done, back kept.
    Reps,
    /// Rep at which the back moved.
    Moved,
}
