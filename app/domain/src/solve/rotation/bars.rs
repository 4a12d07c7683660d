//! What the search asks of a loaded bar, whichever rule the plates follow.
//!
//! Refuses: nothing.
use alloc::vec::Vec;

/// A way to get the bar ready for a turn.
#[derive(Debug, Clone, Copy)]
pub(super) struct Move {
    /// Place among the stacks that serve the turn.
    pub stack: u32,
    /// What [`Bars::arrive`] makes the bar of.
    pub found: u32,
    /// Handling, nanoseconds.
    pub handling: i64,
    /// It is only known that it takes at least this.
    pub stub: bool,
}

/// Bars by number.
pub(super) trait Bars {
    /// What is asked most often about a bar, to have it at hand.
    type Face: Copy;

    /// The bar at the start.
    fn start(&self) -> u32;

    /// Appends to `moves` all ways from `bar` to `turn` that are `worth` their handling, given
    /// by stack. What is not worth it is not made worth it by less handling left out.
    fn moves(
        &mut self,
        bar: u32,
        turn: usize,
        change: bool,
        worth: impl FnMut(usize, i64) -> bool,
        moves: &mut Vec<Move>,
    );

    /// As [`Bars::moves`], but for each stack only the least handling, or less; nothing can be
    /// made of these.
    fn glances(
        &mut self,
        bar: u32,
        turn: usize,
        change: bool,
        worth: impl FnMut(usize, i64) -> bool,
        moves: &mut Vec<Move>,
    ) {
        self.moves(bar, turn, change, worth, moves);
    }

    /// The bar after a move of those found last, from the same `bar`.
    fn arrive(&mut self, bar: u32, way: &Move) -> u32;

    /// Makes room where many bars were met: all but the start and those `kept` are forgotten, which
    /// get new numbers.
    fn forget(&mut self, _kept: &mut [(u8, u32)]) {}

    /// What to ask [`Bars::as_good`] with.
    fn face(&self, bar: u32) -> Self::Face;

    /// What taking all its plates off takes, for bars that are held against others bare as well
    /// as by rows; `None` where rows tell all.
    fn bare(&self, _face: &Self::Face) -> Option<i64> {
        None
    }

    /// What bars have in common that may keep plates for the same others.
    fn row(&self, _face: &Self::Face) -> u128 {
        0
    }

    /// Whether a bar of the row `row` may be made as good as one of the row `other` with some of
    /// its plates staying on.
    fn may_stay(&self, _row: u128, _other: u128) -> bool {
        true
    }

    /// What all its plates take to handle. No bar is made as good as another with less handling
    /// than they differ by.
    fn handling(&self, face: &Self::Face) -> i64;

    /// Whether one bar is known to be as good as another, for whatever may come, after handling
    /// of at most `most`.
    fn as_good(&self, face: &Self::Face, other: &Self::Face, most: i64) -> bool;

    /// The plates of one side, inside to outside, for each of a row of bars that follow one
    /// another, the start's not among them.
    fn lay(&self, bars: &[u32]) -> Vec<Vec<u8>>;
}
