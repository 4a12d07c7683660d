//! The kiosk: owns clock, threads, order of effects and the command line.
//!
//! Refuses: rules of the trade (`domain`), words (`view`), drawing (`ui`), SQL (`journal`).
#![forbid(unsafe_code)]

pub mod ahead;
mod bounded;
pub mod cli;
pub mod clock;
pub mod coach_desk;
pub mod copies;
pub mod desk;
pub mod devices;
pub mod doctor;
pub mod door;
mod echo;
pub mod error;
pub mod folder;
pub mod gym_files;
pub mod gym_hub;
pub mod input;
pub mod kiosk;
pub mod lan;
mod looker;
pub mod nearby;
pub mod nightly;
pub mod odd_rows;
pub mod outside;
pub mod owner;
pub mod picture;
pub mod rehearse;
pub mod replan;
pub mod run;
pub mod shared;
pub mod signals;
pub mod solve;
pub mod steady;
pub mod stick;
mod terminal;
mod trouble;
mod walk;
pub mod watch;
pub mod watchdog;

pub use clock::{Clock, SystemClock};
pub use devices::Devices;
pub use error::KioskError;
pub use folder::Folder;
pub use kiosk::{Kiosk, Pressed};
