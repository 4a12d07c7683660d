//! Things beside the screen: buttons and a foot switch, a buzzer, a lamp, lights along the
//! upright that show the hole, the panel's backlight.
//!
//! Drivers stand on the traits of embedded-hal 1.0; which pins they get is chosen at run time by
//! `hardware.toml`: the machine's own, or simulated ones in memory. Refuses: threads and clocks
//! (`kiosk` has those), rules of the trade, and to matter: a device that is missing or broken is
//! told once and left out, and sets are logged without it.
#![forbid(unsafe_code)]

pub mod backlight;
pub mod buzzer;
pub mod config;
pub mod faults;
mod kept;
pub mod lamp;
pub mod lights;
#[cfg(target_os = "linux")]
pub mod linux;
pub mod open;
pub mod orders;
pub mod outputs;
pub mod ports;
pub mod simulated;
pub mod switch;
pub mod trouble;
pub mod tune;

pub use config::{BuzzerAt, Config, ConfigFault};
pub use faults::{DeviceFault, Faults};
pub use lamp::Glow;
pub use open::{Opened, open};
pub use orders::Orders;
pub use outputs::{Outputs, Wanted};
pub use simulated::{Panel, PanelState};
pub use switch::{Press, Switch, Switches};
pub use trouble::Trouble;
pub use tune::Tune;
