//! The back moved: end the lift here, or go on upon the coach's word.
use crate::draw::LadderRow;

/// What it shows.
#[derive(Debug, Clone, PartialEq)]
pub struct Stop {
    /// "back moved at rep 3".
    pub headline: String,
    /// "130 kg, 3 of 5 reps".
    pub set: String,
    /// What follows: "A moved back ends the climb. Pain means stop: ask a clinician."
    pub advice: String,
    /// The ladder, lowest rung first.
    pub ladder: Vec<LadderRow>,
    /// The main button: "end the lift".
    pub main: String,
    /// The other button: "go on, coach agrees"; empty after the last rung.
    pub go_on: String,
}
