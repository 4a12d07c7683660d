//! The screen on which something is typed.

/// The screen on which something is typed.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Typing {
    /// "Tevita, lockout".
    pub title: String,
    /// What is asked, or what was wrong.
    pub hint: String,
    /// Whether the hint is a fault.
    pub wrong: bool,
    /// As typed so far, in the language's signs.
    pub typed: String,
    /// "mm"; empty for names.
    pub unit: String,
    /// The keys, in order; a tap is a row of that number.
    pub keys: Vec<String>,
    /// The button after the keys: another unit, other letters; empty for none.
    pub other: String,
    /// The button after that: "delete".
    pub delete: String,
    /// The main button: "keep"; empty where the last figure is enough.
    pub main: String,
}
