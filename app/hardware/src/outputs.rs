//! All that shows or sounds, kept as it is wanted.
//!
//! Refuses: deciding what is wanted, and waiting; one step does what is due and returns.
use crate::backlight::Backlight;
use crate::buzzer::Buzzer;
use crate::faults::Faults;
use crate::lamp::{Glow, Lamp};
use crate::lights::Lights;
use crate::tune::Tune;

/// What the devices are to show.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct Wanted {
    /// Whether somebody is up, or what keeps them.
    pub lamp: Glow,
    /// The hole to use, with its rack.
    pub hole: Option<(String, u16)>,
    /// Nobody is about.
    pub dim: bool,
}

/// The devices that are there.
#[derive(Debug, Default)]
pub struct Outputs {
    /// The buzzer.
    pub buzzer: Option<Buzzer>,
    /// The lamp.
    pub lamp: Option<Lamp>,
    /// The strip.
    pub lights: Option<Lights>,
    /// The backlight.
    pub backlight: Option<Backlight>,
    pub(crate) faults: Faults,
}

impl Outputs {
    /// Whether there is none.
    #[must_use]
    pub fn is_empty(&self) -> bool {
        self.buzzer.is_none()
            && self.lamp.is_none()
            && self.lights.is_none()
            && self.backlight.is_none()
    }

    /// Begins a tune.
    pub fn play(&mut self, now_ms: u64, tune: Tune) {
        if let Some(buzzer) = &mut self.buzzer {
            buzzer.play(now_ms, tune);
        }
    }

    /// Does what is due. Tells whether a tune is playing or a lamp blinks, so that the next step must
    /// come soon.
    pub fn step(&mut self, now_ms: u64, wanted: &Wanted) -> bool {
        let faults = &self.faults;
        if let Some(lamp) = &mut self.lamp {
            lamp.step(now_ms, wanted.lamp, faults);
        }
        if let Some(lights) = &mut self.lights {
            let hole = wanted.hole.as_ref();
            let hole = hole.map(|(rack, hole)| (rack.as_str(), *hole));
            lights.step(now_ms, hole, faults);
        }
        if let Some(backlight) = &mut self.backlight {
            backlight.step(now_ms, wanted.dim, faults);
        }
        let buzzer = self.buzzer.as_mut();
        let plays = buzzer.is_some_and(|buzzer| buzzer.step(now_ms, faults));
        plays || (self.lamp.is_some() && wanted.lamp.blinks())
    }
}
