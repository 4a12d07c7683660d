//! Opens what hardware.toml names. Refuses: giving up; what cannot be opened is told and left
//! out, and the rest works.
use crate::backlight::Backlight;
use crate::buzzer::Buzzer;
use crate::config::{Config, Kind, LineAt};
use crate::faults::Faults;
use crate::lamp::Lamp;
use crate::lights::Lights;
use crate::outputs::Outputs;
use crate::ports::{Dims, Drives, Reads, Sends};
use crate::simulated::Panel;
use crate::switch::{Switch, Switches};
use crate::trouble::Trouble;
use std::path::Path;

/// Devices that are there.
#[derive(Debug)]
pub struct Opened {
    /// Buttons and foot switches.
    pub switches: Switches,
    /// All that shows or sounds.
    pub outputs: Outputs,
    /// The devices in memory, when they are simulated.
    pub panel: Option<Panel>,
}

/// Opens all devices of `config`; faults go to `faults`, now and later.
#[must_use]
pub fn open(config: &Config, faults: &Faults) -> Opened {
    let panel = (config.kind == Kind::Simulated).then(Panel::default);
    let shelf = Shelf {
        panel: panel.as_ref(),
        faults,
    };
    let mut switches = Switches {
        all: Vec::new(),
        faults: faults.clone(),
    };
    for at in &config.switches {
        let mut wiring = at.wiring();
        // A simulated line is high while its switch is down.
        wiring.active_low &= panel.is_none();
        if let Some(line) = shelf.switch(&at.name, at.chip.as_deref(), at.line) {
            switches.all.push(Switch::new(line, wiring));
        }
    }
    Opened {
        switches,
        outputs: shelf.outputs(config),
        panel,
    }
}

/// Where devices are had from.
struct Shelf<'a> {
    panel: Option<&'a Panel>,
    faults: &'a Faults,
}

impl Shelf<'_> {
    fn outputs(&self, config: &Config) -> Outputs {
        let buzzer = config.buzzer.as_ref().and_then(|at| {
            let line = match self.panel {
                Some(panel) => Some(Box::new(panel.buzzer()) as Box<dyn Drives>),
                None => self.line("buzzer", &at.at()),
            };
            line.map(|line| Buzzer::new(line, at.active_low && self.panel.is_none()))
        });
        let lamp = config.lamp.as_ref().and_then(|at| {
            let line = match self.panel {
                Some(panel) => Some(Box::new(panel.lamp()) as Box<dyn Drives>),
                None => self.line("lamp", at),
            };
            line.map(|line| Lamp::new(line, at.active_low && self.panel.is_none()))
        });
        let lights = config.lights.as_ref().and_then(|at| {
            let bus = match self.panel {
                Some(panel) => Some(Box::new(panel.strip(at.count)) as Box<dyn Sends>),
                None => self.strip(at.device.as_deref()),
            };
            bus.map(|bus| Lights::new(bus, at.lay(), at.rack.clone()))
        });
        let backlight = config.backlight.as_ref().and_then(|at| {
            let dimmer = match self.panel {
                Some(panel) => Some(Box::new(panel.backlight()) as Box<dyn Dims>),
                None => self.backlight(at.folder.as_deref()),
            };
            dimmer.map(|dimmer| Backlight::new(dimmer, at.bright, at.dim))
        });
        Outputs {
            buzzer,
            lamp,
            lights,
            backlight,
            faults: self.faults.clone(),
        }
    }

    fn told<T>(&self, device: &str, opened: Result<T, String>) -> Option<T> {
        match opened {
            Ok(opened) => Some(opened),
            Err(why) => {
                self.faults.report(device, Trouble::NotThere(why));
                None
            }
        }
    }
}

#[cfg(target_os = "linux")]
impl Shelf<'_> {
    fn switch(&self, name: &str, chip: Option<&Path>, line: Option<u32>) -> Option<Box<dyn Reads>> {
        if let Some(panel) = self.panel {
            return Some(Box::new(panel.switch(name)));
        }
        let opened = crate::linux::input(chip?, line?);
        Some(Box::new(self.told(name, opened)?))
    }

    fn line(&self, name: &str, at: &LineAt) -> Option<Box<dyn Drives>> {
        // Off from the first instant.
        let opened = crate::linux::output(at.chip.as_deref()?, at.line?, at.active_low);
        Some(Box::new(self.told(name, opened)?))
    }

    fn strip(&self, device: Option<&Path>) -> Option<Box<dyn Sends>> {
        Some(Box::new(self.told("lights", crate::linux::strip(device?))?))
    }

    fn backlight(&self, folder: Option<&Path>) -> Option<Box<dyn Dims>> {
        let opened = crate::linux::SysfsBacklight::open(folder?);
        Some(Box::new(self.told("backlight", opened)?))
    }
}

#[cfg(not(target_os = "linux"))]
impl Shelf<'_> {
    fn switch(&self, name: &str, _: Option<&Path>, _: Option<u32>) -> Option<Box<dyn Reads>> {
        match self.panel {
            Some(panel) => Some(Box::new(panel.switch(name))),
            None => self.told(name, not_here()),
        }
    }

    fn line(&self, name: &str, _: &LineAt) -> Option<Box<dyn Drives>> {
        self.told(name, not_here())
    }

    fn strip(&self, _: Option<&Path>) -> Option<Box<dyn Sends>> {
        self.told("lights", not_here())
    }

    fn backlight(&self, _: Option<&Path>) -> Option<Box<dyn Dims>> {
        self.told("backlight", not_here())
    }
}

#[cfg(not(target_os = "linux"))]
fn not_here<T>() -> Result<T, String> {
    Err("kind is \"linux\", and this is another system".to_owned())
}
