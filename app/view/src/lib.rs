//! Turns state and time into each screen's plain struct, and into words.
//!
//! Refuses: drawing, clocks, files. A screen is a pure function of what is here; the window
//! knows nothing else.
#![forbid(unsafe_code)]

pub mod bar;
pub mod choose;
pub mod draw;
pub mod end;
pub mod entry;
pub mod frame;
pub mod rest;
pub mod setup;
pub mod stop;
pub mod tap;

pub use frame::{Chip, Frame, Pace, Screen};
pub use tap::Tap;
