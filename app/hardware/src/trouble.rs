//! What can be wrong with a device, and what to do about it.
//!
//! Refuses: hiding what the system said of it.
use std::fmt;

/// More changes than this within a second are a flood: a hand or a foot makes a few.
pub const CHANGES_MAX: u32 = 20;
/// Longer than this nobody presses on purpose, milliseconds.
pub const HELD_MS: u64 = 60_000;

/// What is wrong with a device.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord)]
pub enum Trouble {
    /// It could not be had; why.
    NotThere(String),
    /// Its line cannot be read; why.
    Unread(String),
    /// It changes far too often.
    Floods,
    /// Something lies on it.
    Held,
    /// It does not do what it is told; why.
    Disobeys(String),
    /// The system gives it no thread; why.
    NoThread(String),
    /// The file that names it is wrong; how, and what is right.
    File(String),
}

impl fmt::Display for Trouble {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::NotThere(why) => {
                write!(
                    f,
                    "{why}; check hardware.toml and the wiring, then start again"
                )
            }
            Self::Unread(why) => write!(f, "cannot be read ({why}); check its wiring"),
            Self::Floods => write!(
                f,
                "changed more than {CHANGES_MAX} times within a second and is not listened to; \
                 look for a loose wire"
            ),
            Self::Held => write!(
                f,
                "has been down for over {} s; see what lies on it",
                HELD_MS / 1_000
            ),
            Self::Disobeys(why) => {
                write!(f, "does not do what it is told ({why}); check its wiring")
            }
            Self::NoThread(why) => write!(f, "the system gives no thread ({why})"),
            Self::File(why) => f.write_str(why),
        }
    }
}
