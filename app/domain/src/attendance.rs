//! Whether a lifter under way is there for their turn: put off, passed over, away, or asking for a
//! longer rest.
use crate::lift_no::LiftNo;
use crate::moment::Moment;

/// The longest that somebody may ask for at once, seconds.
pub const LONGER_MOST_S: u16 = 600;
/// Whoever was called has so long to come, seconds, before somebody who is ready goes first: enough
/// to load, to move the pins and to lift. Common practice, no source.
pub const CALLED_FOR_S: u32 = 240;
/// How often in a row somebody is passed over before they count as away.
pub const PASSES_MOST: u8 = 2;

/// What somebody said of their turn that can be taken back.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum TurnWord {
    /// Others first.
    Later,
    /// A longer rest.
    Longer,
    /// Gone for now.
    Leaving,
    /// There again.
    Back,
}

/// How it stands with a lifter's turn.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub struct Attendance {
    /// Gone, with the lift still open; no turn is called until they are back.
    pub away: bool,
    /// Whether the turn was put off until somebody else has lifted.
    pub deferred: bool,
    /// How often in a row they were called and did not come.
    pub passes: u8,
    /// When they were passed over last.
    pub passed_at: Option<Moment>,
    /// Not before this moment, where a longer rest was asked for.
    pub not_before: Option<Moment>,
    /// When they came: started, came back, or asked for their turn.
    pub here_since: Option<Moment>,
    /// Whether they said that their turn is now, rested or not: it stays theirs until the set is
    /// entered, or they say otherwise, or do not come.
    pub claimed: bool,
    /// Whether they came back from where they were, and have said nothing else since.
    pub back: bool,
    /// Whose turn it was when they put theirs off or claimed it, and when: whoever takes that back
    /// leaves the order as it was, where nobody has lifted since.
    pub was_up: Option<(LiftNo, Moment)>,
}

impl Attendance {
    /// The turn is put off until somebody else has lifted.
    pub(crate) const fn defer(&mut self) {
        self.speak();
        self.deferred = true;
    }

    /// Whoever says something of their turn is there, and claims it no longer.
    const fn speak(&mut self) {
        (self.passes, self.passed_at) = (0, None);
        (self.claimed, self.back) = (false, false);
    }

    /// Whether they have said something of their turn that still holds.
    pub(crate) const fn is_said(&self) -> bool {
        self.claimed || self.said().is_some()
    }

    /// What they said last of their turn but that it is now, where it still holds: nothing where a
    /// clock passed them over.
    #[must_use]
    pub const fn said(&self) -> Option<TurnWord> {
        match self {
            Self { passes: 1.., .. } => None,
            Self { away: true, .. } => Some(TurnWord::Leaving),
            Self { deferred: true, .. } => Some(TurnWord::Later),
            Self {
                not_before: Some(_),
                ..
            } => Some(TurnWord::Longer),
            Self { back: true, .. } => Some(TurnWord::Back),
            Self { .. } => None,
        }
    }

    /// They were called and did not come.
    pub(crate) const fn pass(&mut self, at: Moment) {
        (self.was_up, self.back) = (None, false);
        self.deferred = true;
        self.claimed = false;
        self.passes = self.passes.saturating_add(1);
        self.passed_at = Some(at);
        self.away = self.passes >= PASSES_MOST;
    }

    /// A longer rest: not before `seconds` from now.
    pub(crate) fn lengthen(&mut self, at: Moment, seconds: u16) {
        self.speak();
        let until = at.plus_seconds(u32::from(seconds));
        self.not_before = Some(self.not_before.map_or(until, |known| known.max(until)));
    }

    /// They are gone for now.
    pub(crate) const fn leave(&mut self) {
        self.speak();
        self.away = true;
    }

    /// They are there, for their turn.
    pub(crate) const fn come(&mut self, at: Moment) {
        *self = Self {
            away: false,
            deferred: false,
            passes: 0,
            passed_at: None,
            not_before: self.not_before,
            here_since: Some(at),
            claimed: false,
            back: self.away,
            was_up: self.was_up,
        };
    }

    /// Nothing that they said of their turn holds.
    pub(crate) const fn unsay(&mut self, at: Moment) {
        self.come(at);
        (self.not_before, self.back) = (None, false);
    }

    /// They claim their turn: whatever they asked for before is over.
    pub(crate) const fn claim(&mut self, at: Moment) {
        self.come(at);
        self.not_before = None;
        (self.claimed, self.back) = (true, false);
    }
}
