//! hardware.toml: which devices hang where. Every key is told in `app/hardware/HARDWARE.md`.
//!
//! Refuses: keys that it does not know, figures out of range, a linux device without its place.
use crate::lights::{LIGHTS_MAX, Lay};
use crate::switch::{Press, Wiring};
use serde::Deserialize;
use std::fmt;
use std::path::PathBuf;

/// What is wrong with the file.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct ConfigFault {
    /// The line, from 1, where one is known.
    pub line: Option<usize>,
    /// What is wrong and what is right, without a full stop.
    pub what: String,
}

impl fmt::Display for ConfigFault {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self.line {
            Some(line) => write!(f, "line {line}: {}", self.what),
            None => f.write_str(&self.what),
        }
    }
}

impl std::error::Error for ConfigFault {}

/// Where the pins are.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Deserialize)]
#[serde(rename_all = "lowercase")]
pub enum Kind {
    /// The machine's own: GPIO character devices, spidev, the backlight's folder.
    Linux,
    /// In memory: for trying things out, and for tests.
    Simulated,
}

/// The file, read and checked.
#[derive(Debug, Clone, PartialEq, Eq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Config {
    /// Where the pins are.
    pub kind: Kind,
    /// Whether simulated devices are drawn beside the screen.
    #[serde(default)]
    pub panel: bool,
    /// Buttons and foot switches, at most [`SWITCHES_MAX`].
    #[serde(default, rename = "switch")]
    pub switches: Vec<SwitchAt>,
    /// The buzzer.
    pub buzzer: Option<BuzzerAt>,
    /// The lamp.
    pub lamp: Option<LineAt>,
    /// The strip along the upright.
    pub lights: Option<LightsAt>,
    /// The panel's backlight.
    pub backlight: Option<BacklightAt>,
}

/// The most switches of one kiosk.
pub const SWITCHES_MAX: usize = 8;
/// The longest that a contact may take to settle, milliseconds.
pub const SETTLE_MS_MAX: u64 = 500;
/// The longest that a switch may be deaf after a press, milliseconds.
pub const AGAIN_AFTER_MS_MAX: u64 = 60_000;

/// A button or foot switch.
#[derive(Debug, Clone, PartialEq, Eq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct SwitchAt {
    /// What the coach's desk calls it.
    pub name: String,
    /// What a press means.
    pub does: Press,
    /// Its GPIO chip, such as "/dev/gpiochip0".
    pub chip: Option<PathBuf>,
    /// Its line on the chip.
    pub line: Option<u32>,
    /// Pressed pulls the line low; a switch to ground with a pull-up does.
    #[serde(default = "yes")]
    pub active_low: bool,
    /// How long the line must be steady, milliseconds.
    #[serde(default = "settle_ms")]
    pub settle_ms: u64,
    /// After a press no other counts before so long without one, milliseconds.
    #[serde(default = "again_after_ms")]
    pub again_after_ms: u64,
}

/// A device on one GPIO line.
#[derive(Debug, Clone, PartialEq, Eq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct LineAt {
    /// Its GPIO chip.
    pub chip: Option<PathBuf>,
    /// Its line on the chip.
    pub line: Option<u32>,
    /// On pulls the line low.
    #[serde(default)]
    pub active_low: bool,
}

/// The buzzer.
#[derive(Debug, Clone, PartialEq, Eq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct BuzzerAt {
    /// Its GPIO chip.
    pub chip: Option<PathBuf>,
    /// Its line on the chip.
    pub line: Option<u32>,
    /// On pulls the line low.
    #[serde(default)]
    pub active_low: bool,
    /// From when to when it is silent, by the gym's clock: "22:00", "07:00".
    pub quiet: Option<[Time; 2]>,
}

impl BuzzerAt {
    /// Where it hangs.
    #[must_use]
    pub fn at(&self) -> LineAt {
        LineAt {
            chip: self.chip.clone(),
            line: self.line,
            active_low: self.active_low,
        }
    }

    /// Whether it is silent at this minute of the day. Hours that begin later than they end run over
    /// midnight; the last minute is not among them.
    #[must_use]
    pub fn is_quiet_at(&self, minute: u16) -> bool {
        let Some([from, to]) = self.quiet.map(|hours| hours.map(|time| time.0)) else {
            return false;
        };
        if from <= to {
            (from..to).contains(&minute)
        } else {
            minute >= from || minute < to
        }
    }
}

/// A time of day, minutes since midnight, written "07:30".
#[derive(Debug, Clone, Copy, PartialEq, Eq, Deserialize)]
#[serde(try_from = "String")]
pub struct Time(pub u16);

impl TryFrom<String> for Time {
    type Error = String;

    fn try_from(text: String) -> Result<Self, String> {
        let digits = |part: &str| (part.len() == 2).then(|| part.parse().ok()).flatten();
        let parts = text.split_once(':');
        let parts = parts.and_then(|(hour, minute)| Some((digits(hour)?, digits(minute)?)));
        match parts {
            Some((hour @ 0..=23, minute @ 0..=59)) => Ok(Self(hour * 60 + minute)),
            Some(_) | None => Err(format!(
                "{text:?} is not a time of day; write it as in \"22:00\", 00:00 to 23:59"
            )),
        }
    }
}

/// The strip.
#[derive(Debug, Clone, PartialEq, Eq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct LightsAt {
    /// Its SPI device, such as "/dev/spidev0.0".
    pub device: Option<PathBuf>,
    /// The rack whose upright it is on; without one it shows the hole at any rack.
    pub rack: Option<String>,
    /// Lights on the strip.
    pub count: u16,
    /// The light beside hole 1, from 0.
    #[serde(default)]
    pub first: u16,
    /// Lights from one hole to the next.
    pub every: u16,
    /// Lights lit for a hole.
    #[serde(default = "one")]
    pub wide: u16,
    /// Red, green, blue.
    #[serde(default = "amber")]
    pub colour: [u8; 3],
}

/// The backlight.
#[derive(Debug, Clone, PartialEq, Eq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct BacklightAt {
    /// Its folder, such as "/sys/class/backlight/panel".
    pub folder: Option<PathBuf>,
    /// Seconds without a touch until it dims.
    #[serde(default = "dim_after_s")]
    pub dim_after_s: u32,
    /// Percent while somebody is about.
    #[serde(default = "bright")]
    pub bright: u8,
    /// Percent when dimmed.
    #[serde(default = "dim")]
    pub dim: u8,
}

fn yes() -> bool {
    true
}

fn settle_ms() -> u64 {
    20
}

fn again_after_ms() -> u64 {
    1_500
}

fn one() -> u16 {
    1
}

/// Bright enough beside a dark upright, and little current: a third of full.
fn amber() -> [u8; 3] {
    [84, 48, 0]
}

fn dim_after_s() -> u32 {
    600
}

fn bright() -> u8 {
    100
}

fn dim() -> u8 {
    15
}

impl Config {
    /// Reads the file's text.
    ///
    /// # Errors
    /// The first thing that is wrong.
    pub fn read(text: &str) -> Result<Self, ConfigFault> {
        let config: Self = toml::from_str(text).map_err(|error| ConfigFault {
            line: error
                .span()
                .map(|at| 1 + text[..at.start.min(text.len())].matches('\n').count()),
            what: error.message().replace('\n', "; "),
        })?;
        match config.fault() {
            Some(what) => Err(ConfigFault { line: None, what }),
            None => Ok(config),
        }
    }

    fn fault(&self) -> Option<String> {
        if self.panel && self.kind == Kind::Linux {
            let what = "panel draws simulated devices, and kind is \"linux\"";
            return Some(format!(
                "{what}; leave it out, or write kind = \"simulated\""
            ));
        }
        if self.switches.len() > SWITCHES_MAX {
            let count = self.switches.len();
            return Some(format!(
                "there are {count} switches, at most {SWITCHES_MAX}"
            ));
        }
        let each = self.switches.iter().enumerate();
        let mut wrong = each.filter_map(|(at, switch)| {
            let twice = self.switches[..at].iter().any(|s| s.name == switch.name);
            switch.fault(self.kind, twice)
        });
        wrong
            .next()
            .or_else(|| {
                let at = self.buzzer.as_ref().map(BuzzerAt::at);
                line_fault(self.kind, "buzzer", at.as_ref())
            })
            .or_else(|| line_fault(self.kind, "lamp", self.lamp.as_ref()))
            .or_else(|| self.lights.as_ref().and_then(|l| l.fault(self.kind)))
            .or_else(|| self.backlight.as_ref().and_then(|b| b.fault(self.kind)))
    }
}

fn line_fault(kind: Kind, name: &str, at: Option<&LineAt>) -> Option<String> {
    let at = at?;
    let nowhere = kind == Kind::Linux && (at.chip.is_none() || at.line.is_none());
    nowhere.then(|| format!("{name}: write chip and line, as in chip = \"/dev/gpiochip0\""))
}

impl SwitchAt {
    fn fault(&self, kind: Kind, twice: bool) -> Option<String> {
        let name = &self.name;
        if name.trim().is_empty() || twice {
            return Some(format!("switch \"{name}\": give each a name of its own"));
        }
        if self.settle_ms > SETTLE_MS_MAX {
            let ms = self.settle_ms;
            return Some(format!(
                "{name}: settle_ms is {ms}, at most {SETTLE_MS_MAX}"
            ));
        }
        if self.again_after_ms > AGAIN_AFTER_MS_MAX {
            let ms = self.again_after_ms;
            let most = AGAIN_AFTER_MS_MAX;
            return Some(format!("{name}: again_after_ms is {ms}, at most {most}"));
        }
        let at = LineAt {
            chip: self.chip.clone(),
            line: self.line,
            active_low: self.active_low,
        };
        line_fault(kind, name, Some(&at))
    }

    /// How it is wired and when a press counts.
    #[must_use]
    pub fn wiring(&self) -> Wiring {
        Wiring {
            name: self.name.clone(),
            does: self.does,
            active_low: self.active_low,
            settle_ms: self.settle_ms,
            again_after_ms: self.again_after_ms,
        }
    }
}

impl LightsAt {
    fn fault(&self, kind: Kind) -> Option<String> {
        if kind == Kind::Linux && self.device.is_none() {
            let right = "write its device, as in device = \"/dev/spidev0.0\"";
            return Some(format!("lights: {right}"));
        }
        if self.count == 0 || self.count > LIGHTS_MAX {
            let count = self.count;
            return Some(format!("lights: count is {count}, 1 to {LIGHTS_MAX}"));
        }
        let nothing = self.every == 0 || self.wide == 0;
        nothing.then(|| "lights: every and wide are at least 1".to_owned())
    }

    /// How the strip lies.
    #[must_use]
    pub fn lay(&self) -> Lay {
        Lay {
            count: self.count,
            first: self.first,
            every: self.every,
            wide: self.wide,
            colour: self.colour,
        }
    }
}

impl BacklightAt {
    fn fault(&self, kind: Kind) -> Option<String> {
        if kind == Kind::Linux && self.folder.is_none() {
            let right = "write its folder, as in folder = \"/sys/class/backlight/panel\"";
            return Some(format!("backlight: {right}"));
        }
        let fine = |percent: u8| (1..=100).contains(&percent);
        let (bright, dim) = (self.bright, self.dim);
        let wrong = !fine(bright) || !fine(dim);
        wrong.then(|| format!("backlight: bright is {bright} and dim is {dim}, each 1 to 100"))
    }
}
