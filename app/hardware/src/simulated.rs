//! Devices in memory: what they show can be looked at, and their switches can be pressed.
//!
//! The strip's bytes are decoded, so that what is seen is what a real one would show. Refuses:
//! failing; a device that fails is tried with mocks.
use crate::lights::{Colour, decoded};
use embedded_hal::digital::{ErrorType, InputPin, OutputPin};
use embedded_hal::pwm::SetDutyCycle;
use embedded_hal::spi::SpiBus;
use std::convert::Infallible;
use std::sync::{Arc, Mutex, MutexGuard, PoisonError};

/// All simulated devices; clones share them.
#[derive(Debug, Clone, Default)]
pub struct Panel(Arc<Mutex<PanelState>>);

/// What they show, for a side panel or a test.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct PanelState {
    /// Switches by name, and whether each is down.
    pub switches: Vec<(String, bool)>,
    /// Whether there is a buzzer, and it sounds.
    pub sounds: Option<bool>,
    /// How often the buzzer has begun to sound.
    pub sounded: u32,
    /// Whether there is a lamp, and it is on.
    pub lamp: Option<bool>,
    /// The strip's lights, from its first; empty when there is none.
    pub lights: Vec<Colour>,
    /// Whether there is a backlight, and its percent.
    pub backlight: Option<u8>,
}

impl Panel {
    /// What is shown now.
    #[must_use]
    pub fn state(&self) -> PanelState {
        self.lock().clone()
    }

    /// Pushes a switch down or lets it go; false when there is none of that name.
    pub fn push(&self, name: &str, down: bool) -> bool {
        let mut state = self.lock();
        let found = state.switches.iter_mut().find(|(known, _)| known == name);
        found.map(|(_, is_down)| *is_down = down).is_some()
    }

    /// A line that is high while the switch of that name is down.
    pub(crate) fn switch(&self, name: &str) -> SwitchLine {
        let mut state = self.lock();
        state.switches.push((name.to_owned(), false));
        SwitchLine(self.clone(), state.switches.len() - 1)
    }

    /// The buzzer's line.
    pub(crate) fn buzzer(&self) -> OutLine {
        self.lock().sounds = Some(false);
        OutLine(self.clone(), |state, on| {
            state.sounded += u32::from(on && state.sounds == Some(false));
            state.sounds = Some(on);
        })
    }

    /// The lamp's line.
    pub(crate) fn lamp(&self) -> OutLine {
        self.lock().lamp = Some(false);
        OutLine(self.clone(), |state, on| state.lamp = Some(on))
    }

    /// The strip's bus.
    pub(crate) fn strip(&self, count: u16) -> Strip {
        self.lock().lights = vec![[0; 3]; usize::from(count)];
        Strip(self.clone())
    }

    /// The backlight.
    pub(crate) fn backlight(&self) -> Dimmer {
        self.lock().backlight = Some(100);
        Dimmer(self.clone())
    }

    fn lock(&self) -> MutexGuard<'_, PanelState> {
        self.0.lock().unwrap_or_else(PoisonError::into_inner)
    }
}

/// A line that follows a switch.
#[derive(Debug)]
pub(crate) struct SwitchLine(Panel, usize);

impl ErrorType for SwitchLine {
    type Error = Infallible;
}

impl InputPin for SwitchLine {
    fn is_high(&mut self) -> Result<bool, Infallible> {
        let state = self.0.lock();
        Ok(state.switches.get(self.1).is_some_and(|(_, down)| *down))
    }

    fn is_low(&mut self) -> Result<bool, Infallible> {
        self.is_high().map(|high| !high)
    }
}

/// A line whose level goes into the state.
#[derive(Debug)]
pub(crate) struct OutLine(Panel, fn(&mut PanelState, bool));

impl ErrorType for OutLine {
    type Error = Infallible;
}

impl OutputPin for OutLine {
    fn set_low(&mut self) -> Result<(), Infallible> {
        self.1(&mut self.0.lock(), false);
        Ok(())
    }

    fn set_high(&mut self) -> Result<(), Infallible> {
        self.1(&mut self.0.lock(), true);
        Ok(())
    }
}

/// A strip that shows what it is sent.
#[derive(Debug)]
pub(crate) struct Strip(Panel);

impl embedded_hal::spi::ErrorType for Strip {
    type Error = Infallible;
}

impl SpiBus<u8> for Strip {
    fn read(&mut self, words: &mut [u8]) -> Result<(), Infallible> {
        words.fill(0);
        Ok(())
    }

    fn write(&mut self, words: &[u8]) -> Result<(), Infallible> {
        let mut state = self.0.lock();
        // A real strip shows nothing new either when it is sent what is no code.
        if let Some(colours) = decoded(words) {
            state.lights = colours;
        }
        Ok(())
    }

    fn transfer(&mut self, read: &mut [u8], write: &[u8]) -> Result<(), Infallible> {
        self.write(write)?;
        self.read(read)
    }

    fn transfer_in_place(&mut self, words: &mut [u8]) -> Result<(), Infallible> {
        self.write(words)?;
        self.read(words)
    }

    fn flush(&mut self) -> Result<(), Infallible> {
        Ok(())
    }
}

/// A backlight in percent.
#[derive(Debug)]
pub(crate) struct Dimmer(Panel);

impl embedded_hal::pwm::ErrorType for Dimmer {
    type Error = Infallible;
}

impl SetDutyCycle for Dimmer {
    fn max_duty_cycle(&self) -> u16 {
        100
    }

    fn set_duty_cycle(&mut self, duty: u16) -> Result<(), Infallible> {
        self.0.lock().backlight = Some(u8::try_from(duty.min(100)).unwrap_or(100));
        Ok(())
    }
}
