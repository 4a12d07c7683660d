//! What a finger can say. Refuses: what it means; `stage` decides that.

/// One tap, as the window reports it.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Tap {
    /// A lifter's tile or chip.
    Lifter(String),
    /// Back to all lifters.
    All,
    /// The turns of all lifters at one glance.
    Floor,
    /// Bottom left: take back the last entry, or leave a pad without an entry.
    Undo,
    /// The main button of the screen: start, done as planned, go now, end the lift.
    Main,
    /// Open the pad of reps.
    OtherReps,
    /// Open the pad of the rep at which the back moved.
    BackMoved,
    /// A number of a pad.
    Number(u8),
    /// In the pad of the moved back: all reps were done all the same, or not.
    WentThrough,
    /// Leave out this rung.
    Skip,
    /// End the lift before its last rung.
    Stop,
    /// Go on after a moved back, on the coach's word.
    GoOn,
    /// Look at the set-up again.
    SetUp,
    /// Show the work loads that may be chosen on the day.
    Settle,
    /// One of them, from 0.
    Choose(usize),
    /// This kiosk's own page.
    Panel,
    /// The lifter's history.
    History,
    /// What stands behind the end of a lift.
    Why,
    /// On a meet day: everything a minute earlier.
    Sooner,
    /// On a meet day: everything a minute later.
    Later,
    /// A row of a list, from 0.
    Row(usize),
    /// A touch of a sleeping screen: it wakes, and nothing else happens.
    Wake,
    /// The bar is loaded as the screen says.
    Loaded,
    /// Say what the bar holds.
    Holds,
    /// One of the answers of a page, from 0.
    Answer(usize),
    /// What the bar holds, said by hand.
    Hold(HoldsTap),
    /// Later, skip, longer, leave.
    TurnPad,
    /// One of them.
    Turn(TurnTap),
}

/// What somebody says about the plates on a bar.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum HoldsTap {
    /// No plates.
    Empty,
    /// As the turn wants it.
    Wanted,
    /// As it was believed to be.
    Before,
    /// One more plate on each side, by its place in the plate set.
    Plate(u16),
    /// The outermost that was said, taken back.
    TakeLast,
    /// What was said stands.
    Save,
}

/// What somebody says about their turn.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum TurnTap {
    /// Put it off until somebody else has lifted.
    Later,
    /// A longer rest.
    Longer,
    /// Leave with the lift open.
    Leave,
    /// Lift now, whoever was called.
    Mine,
    /// Be back.
    Back,
}

/// A tap on its way from the window, and the face that it was meant for.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Meant {
    /// What the finger said.
    pub tap: Tap,
    /// [`Frame::number`](crate::Frame) of the face that was drawn when the finger came down.
    pub number: u64,
    /// Counts the window's taps from 1; the frame that answers this one names it.
    pub id: u64,
}
