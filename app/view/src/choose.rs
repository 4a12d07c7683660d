//! The screen of all lifters: big tiles.
use crate::frame::Pace;

/// What it shows.
#[derive(Debug, Clone, PartialEq)]
pub struct Choose {
    /// The gym.
    pub gym: String,
    /// "Wednesday 25 November".
    pub date: String,
    /// One a lifter, those of today first.
    pub tiles: Vec<Tile>,
    /// A sentence when there is nobody to show, or empty.
    pub empty: String,
}

/// One lifter.
#[derive(Debug, Clone, PartialEq)]
pub struct Tile {
    /// Name.
    pub lifter: String,
    /// "rack pull", or "nothing today".
    pub lift: String,
    /// The work set: "180 kg × 5".
    pub work: String,
    /// "hole 9", "from the floor", or empty.
    pub place: String,
    /// "2 of 5 done", "rest 1:40", "done", or what must be mended.
    pub word: String,
    /// For the look.
    pub pace: Pace,
    /// Share of the ladder that is done, 0 to 1.
    pub share: f32,
}
