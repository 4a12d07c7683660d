//! The lamp: on while somebody is up. Refuses: blinking; the buzzer calls, the lamp stays.
use crate::faults::Faults;
use crate::kept::Kept;
use crate::ports::Drives;
use std::fmt;

/// A lamp on one line.
pub struct Lamp {
    line: Box<dyn Drives>,
    active_low: bool,
    kept: Kept<bool>,
}

impl Lamp {
    /// A lamp that is on when its line is high, or low where `active_low`.
    #[must_use]
    pub fn new(line: Box<dyn Drives>, active_low: bool) -> Self {
        Self {
            line,
            active_low,
            kept: Kept::new("lamp"),
        }
    }

    /// Switches it on or off, if it is not so already.
    pub fn step(&mut self, now_ms: u64, on: bool, faults: &Faults) {
        let (line, active_low) = (&mut self.line, self.active_low);
        self.kept
            .keep(now_ms, on, faults, |on| line.drive(*on != active_low));
    }
}

impl fmt::Debug for Lamp {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "Lamp({:?})", self.kept)
    }
}
