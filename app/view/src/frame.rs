//! One whole face of the kiosk: who, which screen, who else is under way, what undo would do.
use crate::bar::AtTheBar;
use crate::choose::Choose;
use crate::end::End;
use crate::entry::Entry;
use crate::rest::Rest;
use crate::setup::SetUp;
use crate::stop::Stop;

/// All that the window shows.
#[derive(Debug, Clone, PartialEq)]
pub struct Frame {
    /// The lifter shown; empty on the screen of all lifters.
    pub lifter: String,
    /// The lift shown.
    pub lift: String,
    /// Time of day, "18:42".
    pub clock: String,
    /// Other lifters under way, for switching in one tap; at most three.
    pub chips: Vec<Chip>,
    /// What the button at the bottom left would do: "undo", "back"; empty when there is nothing.
    pub undo: String,
    /// More about it: "60 kg × 5".
    pub undo_detail: String,
    /// A sentence that the lifter must see (something failed), or empty.
    pub notice: String,
    /// The screen itself.
    pub screen: Screen,
}

/// How it stands with a lifter.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Pace {
    /// Has not begun.
    Fresh,
    /// Rests; the time left is shown.
    Resting,
    /// Rested: their turn may come.
    Ready,
    /// The back moved; a decision is open.
    Stopped,
    /// Done for today.
    Done,
    /// Something must be mended first (no plan, no load).
    Blocked,
}

/// Another lifter under way.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Chip {
    /// Name.
    pub lifter: String,
    /// "1:40", "ready", "back moved".
    pub word: String,
    /// For the look.
    pub pace: Pace,
}

/// Which screen, with what it shows.
#[derive(Debug, Clone, PartialEq)]
pub enum Screen {
    /// All lifters of the day.
    Choose(Choose),
    /// Rack, pins, gear, cautions, before the first rung.
    SetUp(SetUp),
    /// The rung of now.
    Bar(AtTheBar),
    /// A pad of numbers.
    Entry(Entry),
    /// Between two rungs.
    Rest(Rest),
    /// The back moved: end, or go on.
    Stop(Stop),
    /// The lift is over.
    End(End),
}
