//! Shows the record to the gym's own network: a page of sessions, CSV and JSON downloads.
//!
//! Refuses: writing anything, names from outside the local network, telling its insides.
#![forbid(unsafe_code)]

mod csv_file;
mod guard;
mod json_file;
mod moment;
mod page;
mod problem;
mod routes;
mod serve;
mod stall;
mod stream;

pub use routes::router;
pub use serve::{ShareError, bind, serve};
