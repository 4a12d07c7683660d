//! Between two rungs: the rest, and the next rung's loading.
use crate::draw::{BarDrawing, Change, LadderRow};

/// What it shows.
#[derive(Debug, Clone, PartialEq)]
pub struct Rest {
    /// "2:10".
    pub left: String,
    /// Share of the rest that is left, 0 to 1, in steps of whole seconds.
    pub share: f32,
    /// "rest".
    pub word: String,
    /// What was just done: "130 kg × 2, back kept".
    pub last: String,
    /// "165".
    pub load: String,
    /// "kg".
    pub unit: String,
    /// "1 rep".
    pub reps: String,
    /// "warm-up 4 of 4", "work set".
    pub rung: String,
    /// The bar as it must be loaded, to scale.
    pub bar: BarDrawing,
    /// What the hands have to do.
    pub change: Change,
    /// The ladder, lowest rung first.
    pub ladder: Vec<LadderRow>,
    /// "belt", "straps" that go on now.
    pub gear: Vec<String>,
    /// The main button: "go now".
    pub main: String,
}
