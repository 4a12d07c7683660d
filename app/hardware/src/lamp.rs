//! The lamp: lit while somebody is up; it blinks while a rest is nearly over, and faster while
//! whoever was called has not come. Never more than two flashes a second: WCAG 2.2, success
//! criterion 2.3.1, allows three.
use crate::faults::Faults;
use crate::kept::Kept;
use crate::ports::Drives;
use std::fmt;

/// What the lamp says.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum Glow {
    /// Nobody is up.
    #[default]
    Out,
    /// Somebody is up.
    Lit,
    /// The next rest is nearly over: on for a second, off for a second.
    Nearly,
    /// Whoever was called has not come: twice a second.
    Missed,
}

impl Glow {
    /// Whether it is on so long after the kiosk began.
    #[must_use]
    pub const fn is_on_at(self, now_ms: u64) -> bool {
        match self {
            Self::Out => false,
            Self::Lit => true,
            Self::Nearly => now_ms % 2_000 < 1_000,
            Self::Missed => now_ms % 500 < 250,
        }
    }

    /// Whether it changes by itself.
    #[must_use]
    pub const fn blinks(self) -> bool {
        matches!(self, Self::Nearly | Self::Missed)
    }
}

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
    pub fn step(&mut self, now_ms: u64, glow: Glow, faults: &Faults) {
        let on = glow.is_on_at(now_ms);
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
