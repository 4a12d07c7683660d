//! End of the lift: what was done.
use crate::draw::RowState;

/// What it shows.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct End {
    /// "180 kg × 5, back kept".
    pub headline: String,
    /// Whether the headline is a moved back or a short set.
    pub short: bool,
    /// One a rung, in order.
    pub rows: Vec<DoneRow>,
    /// "5 sets, 16 reps, 34 minutes".
    pub sum: String,
    /// The main button: "next lifter".
    pub main: String,
}

/// One rung as done.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct DoneRow {
    /// "130 kg".
    pub load: String,
    /// "2 reps", "4 of 5 reps", "skipped".
    pub reps: String,
    /// "back kept", "back moved at 3", or empty.
    pub hold: String,
    /// For the look.
    pub state: RowState,
    /// "warm-up" or "work".
    pub kind: String,
}
