//! Pins, buses and dimmers as the drivers here hold them: the traits of embedded-hal 1.0, boxed,
//! their errors as words.
//!
//! Refuses: devices that are not made from those traits.
use embedded_hal::digital::{InputPin, OutputPin};
use embedded_hal::pwm::SetDutyCycle;
use embedded_hal::spi::SpiBus;

/// A line that can be read.
pub trait Reads: Send {
    /// Whether the line is high.
    ///
    /// # Errors
    /// What the device said.
    fn high(&mut self) -> Result<bool, String>;
}

/// A line that can be driven.
pub trait Drives: Send {
    /// Makes the line high or low.
    ///
    /// # Errors
    /// What the device said.
    fn drive(&mut self, high: bool) -> Result<(), String>;
}

/// A bus that bytes are sent on, with nobody answering.
pub trait Sends: Send {
    /// Sends all of them and waits until they are out.
    ///
    /// # Errors
    /// What the device said.
    fn send(&mut self, bytes: &[u8]) -> Result<(), String>;
}

/// Something that can be bright or dim.
pub trait Dims: Send {
    /// From 0 to 100 percent; more is taken as 100.
    ///
    /// # Errors
    /// What the device said.
    fn dim(&mut self, percent: u8) -> Result<(), String>;
}

impl<P: InputPin + Send> Reads for P {
    fn high(&mut self) -> Result<bool, String> {
        self.is_high().map_err(|error| format!("{error:?}"))
    }
}

impl<P: OutputPin + Send> Drives for P {
    fn drive(&mut self, high: bool) -> Result<(), String> {
        self.set_state(high.into())
            .map_err(|error| format!("{error:?}"))
    }
}

impl<B: SpiBus<u8> + Send> Sends for B {
    fn send(&mut self, bytes: &[u8]) -> Result<(), String> {
        let sent = self.write(bytes).and_then(|()| self.flush());
        sent.map_err(|error| format!("{error:?}"))
    }
}

impl<D: SetDutyCycle + Send> Dims for D {
    fn dim(&mut self, percent: u8) -> Result<(), String> {
        self.set_duty_cycle_percent(percent.min(100))
            .map_err(|error| format!("{error:?}"))
    }
}
