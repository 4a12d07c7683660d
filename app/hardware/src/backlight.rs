//! The panel's backlight: full while somebody is about, dim when nobody touched for long.
//!
//! Refuses: going dark; the day sheet can be read at any time.
use crate::faults::Faults;
use crate::kept::Kept;
use crate::ports::Dims;
use std::fmt;

/// A backlight.
pub struct Backlight {
    dimmer: Box<dyn Dims>,
    awake_percent: u8,
    dim_percent: u8,
    kept: Kept<u8>,
}

impl Backlight {
    /// Percentages of full brightness, 1 to 100.
    #[must_use]
    pub fn new(dimmer: Box<dyn Dims>, awake_percent: u8, dim_percent: u8) -> Self {
        Self {
            dimmer,
            awake_percent,
            dim_percent,
            kept: Kept::new("backlight"),
        }
    }

    /// Makes it bright or dim, if it is not so already.
    pub fn step(&mut self, now_ms: u64, dim: bool, faults: &Faults) {
        let percent = if dim {
            self.dim_percent
        } else {
            self.awake_percent
        };
        let dimmer = &mut self.dimmer;
        self.kept
            .keep(now_ms, percent, faults, |percent| dimmer.dim(*percent));
    }
}

impl fmt::Debug for Backlight {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "Backlight({:?})", self.kept)
    }
}
