//! Every key of the TOML files and every column of a plan: the list that readers check against.
//!
//! FILES.md is written from it, and a test holds the two together. Refuses: keys that no reader
//! reads.

use crate::words::Term;
mod blocks;
mod coach;
mod equipment;
mod lifts;
mod meet;
mod people;
mod plan;

pub use blocks::{BLOCK, BLOCK_DAY, BLOCK_LIFT};
pub use coach::{BEGIN, COACHING, DAY, PROGRAMME, RULE, SPLIT, TASK, WORK};
pub use equipment::{BAR, CALIBRATION, GYM, PLATE, PLATE_SET, RACK, WEIGHED};
pub use lifts::{LIFT, PATTERN, STEP};
pub use meet::{FLIGHT, MEET, OTHER, STARTER};
pub use people::{KIOSK, LANDMARKS, LIFTER, LIFTERS, TRAINING_MAX};
pub use plan::{COLUMNS, MORE_COLUMNS, PlanColumn};

/// A table of a TOML file.
#[derive(Debug, Clone, Copy)]
pub struct Table {
    /// With its article, for faults: "a rack".
    pub a: Term,
    /// How it is written in the file.
    pub form: &'static str,
    /// Its keys.
    pub fields: &'static [Field],
}

/// A key of a table, or a column of a plan.
#[derive(Debug, Clone, Copy)]
pub struct Field {
    /// As written.
    pub key: &'static str,
    /// Whether it can be left out.
    pub need: Need,
    /// A value as written in the file.
    pub example: &'static str,
    /// What it means, with unit and range.
    pub means: &'static str,
}

/// Whether something can be left out.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Need {
    /// No.
    Always,
    /// Yes; what then holds.
    Else(&'static str),
}

const fn must(key: &'static str, example: &'static str, means: &'static str) -> Field {
    Field {
        key,
        need: Need::Always,
        example,
        means,
    }
}

const fn may(
    key: &'static str,
    otherwise: &'static str,
    example: &'static str,
    means: &'static str,
) -> Field {
    Field {
        key,
        need: Need::Else(otherwise),
        example,
        means,
    }
}

/// All tables, each with the file that it belongs to, in the order of FILES.md.
pub const TABLES: &[(&str, &Table)] = &[
    ("gym.toml", &GYM),
    ("gym.toml", &RACK),
    ("gym.toml", &CALIBRATION),
    ("gym.toml", &BAR),
    ("gym.toml", &PLATE_SET),
    ("gym.toml", &PLATE),
    ("gym.toml", &WEIGHED),
    ("gym.toml", &LIFT),
    ("gym.toml", &PATTERN),
    ("gym.toml", &STEP),
    ("lifters.toml", &LIFTERS),
    ("lifters.toml", &LIFTER),
    ("lifters.toml", &LANDMARKS),
    ("lifters.toml", &TRAINING_MAX),
    ("programme.toml", &COACHING),
    ("programme.toml", &PROGRAMME),
    ("programme.toml", &BEGIN),
    ("programme.toml", &DAY),
    ("programme.toml", &TASK),
    ("programme.toml", &WORK),
    ("programme.toml", &BLOCK),
    ("programme.toml", &BLOCK_DAY),
    ("programme.toml", &BLOCK_LIFT),
    ("programme.toml", &RULE),
    ("programme.toml", &SPLIT),
    ("kiosk.toml", &KIOSK),
    ("meet.toml", &MEET),
    ("meet.toml", &FLIGHT),
    ("meet.toml", &STARTER),
    ("meet.toml", &OTHER),
];
