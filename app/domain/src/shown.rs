//! What the screen showed, so that it shows the same after a restart, and which orders about a
//! bar hands may have begun to obey.
use crate::believed::Stacks;
use crate::lift_no::LiftNo;
use alloc::string::String;
use alloc::vec::Vec;
use chrono::NaiveDate;

/// What a kiosk's screen showed.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Shown {
    /// On which training day; on another one everybody begins anew.
    pub date: NaiveDate,
    /// Which screen.
    pub screen: ShownScreen,
    /// The rung that was begun before its rest was over.
    pub early: Option<(LiftNo, u16)>,
    /// The lift whose entry brought up this screen.
    pub entered: Option<LiftNo>,
    /// The lift whose choice of work loads was opened (true) or left for the plan (false).
    pub settle: Option<(LiftNo, bool)>,
    /// The lift whose end was seen.
    pub seen_end: Option<LiftNo>,
    /// The orders on it, at most one a bar.
    pub orders: Vec<ShownOrder>,
}

/// Which screen was shown.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum ShownScreen {
    /// All lifters.
    All,
    /// The turns of all lifters.
    Floor,
    /// One lifter's.
    Lifter(String, LifterPart),
    /// One of the kiosk's own.
    Own(OwnPage),
}

/// A page of the kiosk itself.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum OwnPage {
    /// Its own page: language, light.
    Panel,
    /// What it is.
    About,
    /// Where its page on the network is.
    Lan,
    /// A meet or test day.
    Meet,
    /// The coach's desk, of which a restart closes the door.
    Desk,
}

/// One of the things that stand behind the end of a lift.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum WhyPart {
    /// What is due the next time.
    Next,
    /// When to split the deadlift.
    Split,
    /// Estimates of the single.
    Single,
}

/// Which part of a lifter's screens was shown.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum LifterPart {
    /// Whatever is due: set-up, bar, rest, end.
    Due,
    /// The set-up again, in mid-lift.
    SetUp,
    /// The pad of other reps.
    Reps,
    /// The pad of the moved back, with all reps done all the same or not.
    Moved(bool),
    /// Later, skip, longer, leave.
    Turn,
    /// What the bar holds; plates of one side stated so far, by their place in the plate set.
    Holds(Vec<u16>),
    /// Their history of a lift.
    History(String),
    /// What stands behind the end of a lift.
    Why(LiftNo, WhyPart),
}

/// One order to load a bar.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct ShownOrder {
    /// Name of the rack.
    pub rack: String,
    /// Name of the bar.
    pub bar: String,
    /// The training day.
    pub date: NaiveDate,
    /// What it should hold.
    pub to: Stacks,
}
