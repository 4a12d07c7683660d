//! The buzzer: plays one tune at a time, the newest first asked.
//!
//! Refuses: sounding for ever; when the thread that drives it stands still it was told to be
//! silent by its last step, or it is a fault of the line.
use crate::faults::Faults;
use crate::kept::Kept;
use crate::ports::Drives;
use crate::tune::Tune;
use std::fmt;

/// An active buzzer on one line: it sounds while it has current.
pub struct Buzzer {
    line: Box<dyn Drives>,
    active_low: bool,
    playing: Option<(Tune, u64)>,
    kept: Kept<bool>,
}

impl Buzzer {
    /// A buzzer that sounds when its line is high, or low where `active_low`.
    #[must_use]
    pub fn new(line: Box<dyn Drives>, active_low: bool) -> Self {
        Self {
            line,
            active_low,
            playing: None,
            kept: Kept::new("buzzer"),
        }
    }

    /// Begins a tune; one that is playing is cut off.
    pub fn play(&mut self, now_ms: u64, tune: Tune) {
        self.playing = Some((tune, now_ms));
    }

    /// Sounds or is silent, as the tune has it now. Tells whether a tune is still playing.
    pub fn step(&mut self, now_ms: u64, faults: &Faults) -> bool {
        let sounds = self
            .playing
            .and_then(|(tune, began)| tune.sounds_at(now_ms.saturating_sub(began)));
        if sounds.is_none() {
            self.playing = None;
        }
        let (line, active_low) = (&mut self.line, self.active_low);
        self.kept
            .keep(now_ms, sounds.unwrap_or(false), faults, |on| {
                line.drive(*on != active_low)
            });
        self.playing.is_some()
    }
}

impl fmt::Debug for Buzzer {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "Buzzer({:?}, {:?})", self.playing, self.kept)
    }
}
