//! What the buzzer plays: on and off times of an active buzzer, one pitch.
//!
//! Refuses: melodies. Signals differ in rhythm, so that they are told apart in a loud room.

/// A signal.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Tune {
    /// Two short sounds: the rest is over and the bar is free.
    RestOver,
    /// One short sound: the next rest is nearly over.
    NearlyOver,
    /// Three long sounds: whoever was called has not come.
    Missed,
    /// One long sound: somebody rested is up, since the one before has done their turn.
    YourTurn,
}

impl Tune {
    /// Sound and silence in turn, milliseconds, beginning with sound.
    #[must_use]
    pub fn spans_ms(self) -> &'static [u64] {
        match self {
            Self::RestOver => &[120, 120, 120],
            Self::YourTurn => &[600],
            Self::NearlyOver => &[120],
            Self::Missed => &[350, 200, 350, 200, 350],
        }
    }

    /// Whether it sounds so long after its start; `None` when it is over.
    #[must_use]
    pub fn sounds_at(self, since_start_ms: u64) -> Option<bool> {
        let mut end = 0;
        for (at, span) in self.spans_ms().iter().enumerate() {
            end += span;
            if since_start_ms < end {
                return Some(at % 2 == 0);
            }
        }
        None
    }
}

#[cfg(test)]
mod tests {
    use super::Tune;

    #[test]
    fn a_tune_sounds_rests_and_ends() {
        let at = |ms| Tune::RestOver.sounds_at(ms);
        assert_eq!((at(0), at(119)), (Some(true), Some(true)));
        assert_eq!((at(120), at(239)), (Some(false), Some(false)));
        assert_eq!((at(240), at(359)), (Some(true), Some(true)));
        assert_eq!(at(360), None);
        assert_eq!(Tune::YourTurn.sounds_at(600), None);
        let all = [
            Tune::RestOver,
            Tune::YourTurn,
            Tune::NearlyOver,
            Tune::Missed,
        ];
        for (at, one) in all.iter().enumerate() {
            for other in &all[at + 1..] {
                assert_ne!(one.spans_ms(), other.spans_ms(), "{one:?} {other:?}");
            }
        }
    }
}
