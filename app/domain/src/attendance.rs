//! Whether a lifter under way is there for their turn: put off, passed over, away, or asking for a
//! longer rest.
use crate::moment::Moment;

/// The longest that somebody may ask for at once, seconds.
pub const LONGER_MOST_S: u16 = 600;
/// Whoever was called has so long to come, seconds, before somebody who is ready goes first: enough
/// to load, to move the pins and to lift. Common practice, no source.
pub const CALLED_FOR_S: u32 = 240;
/// How often in a row somebody is passed over before they count as away.
pub const PASSES_MOST: u8 = 2;

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
}

impl Attendance {
    /// The turn is put off until somebody else has lifted.
    pub(crate) const fn defer(&mut self) {
        self.deferred = true;
        self.claimed = false;
    }

    /// They were called and did not come.
    pub(crate) const fn pass(&mut self, at: Moment) {
        self.defer();
        self.passes = self.passes.saturating_add(1);
        self.passed_at = Some(at);
        self.away = self.passes >= PASSES_MOST;
    }

    /// A longer rest: not before `seconds` from now.
    pub(crate) fn lengthen(&mut self, at: Moment, seconds: u16) {
        let until = at.plus_seconds(u32::from(seconds));
        self.not_before = Some(self.not_before.map_or(until, |known| known.max(until)));
        self.claimed = false;
    }

    /// They are gone for now.
    pub(crate) const fn leave(&mut self) {
        self.away = true;
        self.claimed = false;
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
        };
    }

    /// They claim their turn: whatever they asked for before is over.
    pub(crate) const fn claim(&mut self, at: Moment) {
        self.come(at);
        self.not_before = None;
        self.claimed = true;
    }
}
