//! What a button does, as one closed list with a word for machines.

/// What a button does.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Deed {
    /// Logs exactly this set as planned, in one tap.
    Done,
    /// To the bar, before the rest is over or after the set-up; says nothing about the bar.
    Go,
    /// Begins the lift; says nothing about the bar.
    Start,
    /// Says that the bar holds what it should.
    Loaded,
    /// Says what else the bar holds.
    Holds,
    /// Takes the last entry back.
    Undo,
    /// Shows another lifter.
    Lifter,
    /// Shows the turns of all.
    Floor,
    /// Lets others go first.
    Later,
    /// Leaves this set out.
    Skip,
    /// The lifter leaves.
    Leave,
    /// The lifter needs longer.
    Longer,
    /// The lifter takes their turn now.
    Mine,
    /// Other reps than planned: opens the pad, or is a number of it.
    Reps,
    /// The back moved: opens the pad, or is an answer on it.
    Moved,
    /// Chooses the work load of the day.
    Choose,
    /// Ends the lift.
    End,
    /// On from the end of a lift.
    Next,
    /// Anything else; nothing of it is a set.
    Other,
}

impl Deed {
    /// All of them.
    pub const ALL: [Self; 19] = [
        Self::Done,
        Self::Go,
        Self::Start,
        Self::Loaded,
        Self::Holds,
        Self::Undo,
        Self::Lifter,
        Self::Floor,
        Self::Later,
        Self::Skip,
        Self::Leave,
        Self::Longer,
        Self::Mine,
        Self::Reps,
        Self::Moved,
        Self::Choose,
        Self::End,
        Self::Next,
        Self::Other,
    ];

    /// Its word for machines, in lower case; the same in every language.
    #[must_use]
    pub const fn word(self) -> &'static str {
        match self {
            Self::Done => "done",
            Self::Go => "go",
            Self::Start => "start",
            Self::Loaded => "loaded",
            Self::Holds => "holds",
            Self::Undo => "undo",
            Self::Lifter => "lifter",
            Self::Floor => "floor",
            Self::Later => "later",
            Self::Skip => "skip",
            Self::Leave => "leave",
            Self::Longer => "longer",
            Self::Mine => "mine",
            Self::Reps => "reps",
            Self::Moved => "moved",
            Self::Choose => "choose",
            Self::End => "end",
            Self::Next => "next",
            Self::Other => "other",
        }
    }
}
