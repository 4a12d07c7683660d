//! Turns state and time into each screen's plain struct, and into words.
//!
//! Refuses: drawing, clocks, files. A screen is a pure function of what is here; the window
//! knows nothing else.
#![forbid(unsafe_code)]

pub mod aside;
pub mod bar;
pub mod beside;
pub mod buttons;
pub mod choose;
mod deed;
pub mod desk;
pub mod draw;
pub mod drawings;
pub mod end;
pub mod entry;
pub mod floor;
pub mod frame;
pub mod guard;
pub mod history;
pub mod holds;
pub mod idle;
pub mod language;
pub mod left_open;
pub mod list;
pub mod loading;
pub mod look;
pub mod meaning;
pub mod measure;
pub mod measure_svg;
pub mod meet;
pub mod meet_day;
mod meet_due;
pub mod meet_log;
pub mod memo;
pub mod next;
pub mod next_all;
pub mod next_doc;
mod panel;
pub mod rest;
pub mod scene;
pub mod settle;
pub mod setup;
pub mod sheet;
pub mod sheet_text;
pub mod signs;
pub mod single;
pub mod single_doc;
pub mod split;
pub mod split_doc;
pub mod split_svg;
pub mod spot;
pub mod stage;
pub mod stop;
mod svg;
pub mod tap;
pub mod trail;
pub mod trouble;
pub mod turn_pad;
pub mod why;
pub mod words;

pub use buttons::{Button, Deed, buttons};
pub use frame::{Chip, Frame, Pace, Screen, frame};
pub use guard::{Guard, Place, Weight};
pub use idle::{Idle, IdleTimes};
pub use language::Language;
pub use look::{Chosen, Light, Look};
pub use meaning::Numbering;
pub use memo::Memo;
pub use next_all::{AllDueDoc, all_due_doc, all_due_json, all_due_text};
pub use next_doc::{next_doc, next_json, next_text};
pub use scene::Scene;
pub use sheet::{schema_of, sheet_doc, sheet_json, sheet_schema};
pub use sheet_text::sheet_text;
pub use signs::{Signs, signs};
pub use stage::Stage;
pub use tap::{Meant, Tap};
