//! Whether the low back held.

/// Did the back keep its position in that set.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Hold {
    /// All the way.
    Kept,
    /// It moved at this rep, counted from 1.
    MovedAt(u8),
}
