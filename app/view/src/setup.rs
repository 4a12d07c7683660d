//! The lift's set-up: the rack drawn with its hole and mats, gear, overlap, cautions.
use crate::draw::{LadderRow, RackDrawing};

/// What it shows.
#[derive(Debug, Clone, PartialEq)]
pub struct SetUp {
    /// "180 kg × 5", "3 sets of 180 kg × 5".
    pub work: String,
    /// The rack; without a chosen hole when the lift starts from the floor.
    pub rack: RackDrawing,
    /// "9"; empty from the floor.
    pub hole: String,
    /// "1 mat, 20 mm"; "no mat"; empty from the floor.
    pub mats: String,
    /// "bar 431 mm above your feet, 4 mm under the mark"; "from the floor".
    pub height: String,
    /// "shares 96 mm (3.8 in) with the halting deadlift"; empty without a partner.
    pub overlap: String,
    /// Whether the overlap is under the coach's least.
    pub overlap_small: bool,
    /// "retired bar, 20 kg, collars 5 kg".
    pub bar: String,
    /// "double overhand grip", "belt from 130 kg", "straps from 165 kg".
    pub gear: Vec<String>,
    /// Short reminders.
    pub cues: Vec<String>,
    /// What can hurt.
    pub cautions: Vec<String>,
    /// What the coach should know.
    pub warnings: Vec<String>,
    /// The ladder, lowest rung first.
    pub ladder: Vec<LadderRow>,
    /// The coach's words.
    pub note: String,
    /// The main button: "start" or "back to the bar"; empty when the lift cannot begin.
    pub main: String,
}
