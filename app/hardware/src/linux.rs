//! The machine's own pins: GPIO character devices and spidev by linux-embedded-hal, the backlight
//! by its files under `/sys/class/backlight`.
//!
//! Refuses: sysfs GPIO, which the kernel has given up. Pull-ups are the board's: the interface
//! used here cannot set them.
use crate::lights::CLOCK_HZ;
use embedded_hal::pwm::{ErrorKind, ErrorType, SetDutyCycle};
use linux_embedded_hal::gpio_cdev::{Chip, LineRequestFlags};
use linux_embedded_hal::spidev::{SpiModeFlags, SpidevOptions};
use linux_embedded_hal::{CdevPin, SpidevBus};
use std::fs;
use std::io;
use std::path::{Path, PathBuf};

/// What the kernel shows as the user of a line.
const CONSUMER: &str = "pinladder";

/// A line to read.
///
/// # Errors
/// What the system said.
pub fn input(chip: &Path, line: u32) -> Result<CdevPin, String> {
    request(chip, line, LineRequestFlags::INPUT, 0)
}

/// A line to drive, which starts at `high`.
///
/// # Errors
/// What the system said.
pub fn output(chip: &Path, line: u32, high: bool) -> Result<CdevPin, String> {
    request(chip, line, LineRequestFlags::OUTPUT, u8::from(high))
}

fn request(chip: &Path, line: u32, flags: LineRequestFlags, first: u8) -> Result<CdevPin, String> {
    let opened = Chip::new(chip)
        .and_then(|mut chip| chip.get_line(line))
        .and_then(|line| line.request(flags, first, CONSUMER))
        .and_then(CdevPin::new);
    opened.map_err(|error| {
        let chip = chip.display();
        format!("line {line} of {chip} cannot be had: {error}")
    })
}

/// A bus whose data line carries a strip's code.
///
/// # Errors
/// What the system said.
pub fn strip(device: &Path) -> Result<SpidevBus, String> {
    let failed = |error: &dyn std::fmt::Display| {
        let device = device.display();
        format!("{device} cannot be used: {error}")
    };
    let mut bus = SpidevBus::open(device).map_err(|error| failed(&error))?;
    let options = SpidevOptions::new()
        .bits_per_word(8)
        .max_speed_hz(CLOCK_HZ)
        .mode(SpiModeFlags::SPI_MODE_0)
        .build();
    bus.configure(&options).map_err(|error| failed(&error))?;
    Ok(bus)
}

/// A backlight as the kernel shows it: `max_brightness` and `brightness` in one folder.
#[derive(Debug)]
pub struct SysfsBacklight {
    brightness: PathBuf,
    max: u32,
}

impl SysfsBacklight {
    /// The backlight of this folder.
    ///
    /// # Errors
    /// When its files cannot be read, or are not those of a backlight.
    pub fn open(folder: &Path) -> Result<Self, String> {
        let path = folder.join("max_brightness");
        let shown = path.display();
        let text = fs::read_to_string(&path).map_err(|error| format!("{shown}: {error}"))?;
        let max = text.trim().parse::<u32>().ok().filter(|max| *max > 0);
        let max = max.ok_or_else(|| format!("{shown} holds no brightness: {text:?}"))?;
        Ok(Self {
            brightness: folder.join("brightness"),
            max,
        })
    }
}

/// The system's error, as embedded-hal wants it.
#[derive(Debug)]
pub struct BacklightError(pub io::Error);

impl embedded_hal::pwm::Error for BacklightError {
    fn kind(&self) -> ErrorKind {
        ErrorKind::Other
    }
}

impl ErrorType for SysfsBacklight {
    type Error = BacklightError;
}

impl SetDutyCycle for SysfsBacklight {
    fn max_duty_cycle(&self) -> u16 {
        u16::try_from(self.max).unwrap_or(u16::MAX)
    }

    fn set_duty_cycle(&mut self, duty: u16) -> Result<(), BacklightError> {
        // Panels of more steps than 65535 get the nearest one below.
        let most = u64::from(self.max_duty_cycle());
        let value = u64::from(self.max) * u64::from(duty) / most;
        fs::write(&self.brightness, value.to_string()).map_err(BacklightError)
    }
}
