//! At the bar: the rung of now.
use crate::draw::{BarDrawing, Change, LadderRow, RackDrawing};

/// What it shows.
#[derive(Debug, Clone, PartialEq)]
pub struct AtTheBar {
    /// "130".
    pub load: String,
    /// "kg".
    pub unit: String,
    /// "2 reps", "1 rep".
    pub reps: String,
    /// "warm-up 3 of 4", "work set", "work set 2 of 3".
    pub rung: String,
    /// The bar to scale.
    pub bar: BarDrawing,
    /// What the hands have to do.
    pub change: Change,
    /// The ladder, lowest rung first.
    pub ladder: Vec<LadderRow>,
    /// The rack; empty holes from the floor.
    pub rack: RackDrawing,
    /// "9"; empty from the floor.
    pub hole: String,
    /// "1 mat, 20 mm" or empty.
    pub mats: String,
    /// "belt", "straps": what is worn now, loudest first; empty when nothing.
    pub gear: Vec<String>,
    /// "double overhand".
    pub grip: String,
    /// One short caution that matters now, or empty.
    pub caution: String,
    /// The main button: "2 done".
    pub main: String,
    /// Under it: "back kept".
    pub main_detail: String,
}
