//! Reads what an owner and a coach write: the gym's TOML files and plans in CSV, XLSX and ODS.
//!
//! Every fault is told at once, with file, row, column, what was read and what would be right.
//! Refuses: half-taken files, guesses, clocks, the file system (text comes in as a parameter).
#![forbid(unsafe_code)]

mod against;
mod bar_file;
mod blank;
mod block_file;
mod book;
mod bounds;
mod carry;
mod cells;
mod check;
mod coach_file;
mod coach_names;
mod columns;
mod date;
mod facts;
mod fault;
mod file_kind;
mod gathered;
mod gym_file;
mod header;
mod headless;
mod kiosk_file;
mod known;
mod lift_file;
mod lifter_file;
mod meet_file;
mod meet_flight;
mod nearest;
mod pattern_file;
mod plan_count;
mod plan_day;
mod plan_extra;
mod plan_faults;
mod plan_fit;
mod plan_hold;
mod plan_load;
mod plan_loads;
mod plan_manner;
mod plan_names;
mod plan_reading;
mod plan_row;
mod plan_sets;
mod plan_text;
mod plan_time;
mod plan_work;
mod plates_file;
mod programme_file;
mod quantity;
mod rack_file;
mod rule_file;
mod scheme;
mod set_group;
mod set_numbers;
mod sheets;
mod shift;
mod side_by_side;
mod split_file;
mod table;
mod titles;
mod toml_doc;
mod toml_entry;
mod weekday;
mod weighed_file;
mod wording;
mod words;

pub mod edit;
pub mod fields;
pub mod hub_address;

pub use blank::{blank_csv, blank_xlsx};
pub use check::{PLAN_ENDINGS, check, check_all};
pub use coach_file::{Understood, coach_plan, coach_plan_since, understand};
pub use domain::prescription::Role;
pub use fault::{Column, Fault, Weight, count};
pub use gathered::shorten;
pub use gym_file::{gym, gym_noted};
pub use kiosk_file::{Kiosk, kiosk, kiosk_noted};
pub use meet_file::meet;
pub use plan_text::{PlanCells, plan_csv};
pub use programme_file::coaching;
pub use set_group::{
    From, LoadAsk, PlanRow, Reps, SetGroup, ShareOf, effort_text, manner_texts, share_text,
};
pub use shift::shift_days;
pub use words::{Piece, Term, Words};

/// A file's name and its bytes as they were found.
#[derive(Debug, Clone, Copy)]
pub struct Source<'a> {
    /// As the owner knows it: "lifters.toml", "plans/december.csv".
    pub name: &'a str,
    /// All of it.
    pub text: &'a [u8],
}
