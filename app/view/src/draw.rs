//! Drawings as plain measures in millimetres; the window only scales them.
//!
//! Refuses: pixels and colours. Floats here are for the eye, never for a load.

/// A bar seen from the front, both sleeves. x runs outwards from the inner face of each inner
/// collar.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct BarDrawing {
    /// Shaft diameter.
    pub shaft_mm: f32,
    /// Usable length of one sleeve.
    pub sleeve_mm: f32,
    /// Plates of the left sleeve from the inside out, those that come off included (they stand
    /// outside those that stay; when something also goes on, the ones going on are drawn at their
    /// place and those coming off are left out of the drawing and told in words).
    pub left: Vec<PlateDrawing>,
    /// The same of the right sleeve.
    pub right: Vec<PlateDrawing>,
    /// Where the outer collar of the left sleeve stands, x.
    pub left_collar_mm: f32,
    /// The same of the right sleeve.
    pub right_collar_mm: f32,
    /// Whether collars are used.
    pub has_collar: bool,
    /// The largest diameter drawn, for scaling.
    pub tallest_mm: f32,
}

/// One plate of a drawing.
#[derive(Debug, Clone, PartialEq)]
pub struct PlateDrawing {
    /// Inner face.
    pub x_mm: f32,
    /// Thickness.
    pub thickness_mm: f32,
    /// Diameter.
    pub diameter_mm: f32,
    /// The number on it.
    pub label: String,
    /// Its painted mark, or empty.
    pub mark: String,
    /// Its colour code; the label is the first code.
    pub shade: Shade,
    /// What happens to it.
    pub fate: Fate,
}

/// Colour code of a plate: the competition colours for kilo discs (IWF rules), one plain shade
/// for pounds and for masses without a code.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Shade {
    /// 25 and 2.5 kg.
    Red,
    /// 20 and 2 kg.
    Blue,
    /// 15 and 1.5 kg.
    Yellow,
    /// 10 and 1 kg.
    Green,
    /// 5 and 0.5 kg.
    White,
    /// Pounds, and kilo discs without a colour.
    Plain,
}

/// What happens to a plate at this change.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Fate {
    /// It is on and stays.
    Stays,
    /// It has to go on.
    GoesOn,
    /// It has to come off.
    ComesOff,
}

/// What the hands have to do, in words.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct Change {
    /// "each side"; "look at the bar first"; "strip to 60 kg, then pins to hole 9";
    /// empty where the lines say each side by itself.
    pub heading: String,
    /// "take off 20 + 10", outermost first; empty for nothing.
    pub take_off: String,
    /// "put on 20 + 10", innermost first; in doubt the whole stack: "each side 25 + 20".
    pub put_on: String,
    /// All of it in one sentence: "each side: take off 20, then put on 25", "leave the bar as it
    /// is", "empty bar".
    pub sentence: String,
    /// Whether the heading says what comes before any plate goes on: to look, or to strip.
    pub heed: bool,
}

/// An upright of the rack seen from the side, heights above the floor.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct RackDrawing {
    /// Holes, lowest first.
    pub holes: Vec<HoleDrawing>,
    /// Height that the drawing must reach.
    pub top_mm: f32,
    /// Floor to the bar's centre as it lies on the pins.
    pub bar_mm: f32,
    /// Shaft diameter.
    pub shaft_mm: f32,
    /// Mats under the feet, thickness of each.
    pub mats_mm: Vec<f32>,
    /// Landmarks of the lifter, heights above the floor (mats included when stood on).
    pub marks: Vec<HeightMark>,
}

/// One hole.
#[derive(Debug, Clone, PartialEq)]
pub struct HoleDrawing {
    /// From 1 at the bottom.
    pub number: i32,
    /// Floor to its centre.
    pub height_mm: f32,
    /// Whether its number is written beside it (every fifth, and the chosen one).
    pub numbered: bool,
    /// Whether the pin goes here.
    pub chosen: bool,
}

/// A height with a word.
#[derive(Debug, Clone, PartialEq)]
pub struct HeightMark {
    /// "top of the patella".
    pub word: String,
    /// Above the floor.
    pub height_mm: f32,
}

/// The ladder beside the bar.
#[derive(Debug, Clone, PartialEq)]
pub struct LadderRow {
    /// "130".
    pub load: String,
    /// "×2".
    pub reps: String,
    /// Load as a share of the heaviest, 0 to 1.
    pub share: f32,
    /// "work", "back moved at 3", "4 of 5", "skipped", or empty.
    pub word: String,
    /// For the look.
    pub state: RowState,
}

/// How it stands with a rung.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum RowState {
    /// Still to come.
    Ahead,
    /// Now.
    Now,
    /// Done as planned.
    Done,
    /// Done with other reps.
    Other,
    /// The back moved.
    Moved,
    /// Left out.
    Skipped,
}
