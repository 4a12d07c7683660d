//! What is typed for the card of a meet day.

/// What is typed for a card.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct CardTyped {
    /// Whose.
    pub(crate) starter: usize,
    /// Whether it is the lot number, else the weight.
    pub(crate) lot: bool,
    pub(crate) text: String,
    /// What was wrong with it, or empty.
    pub(crate) wrong: String,
}
