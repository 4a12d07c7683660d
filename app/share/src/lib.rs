//! Shows the gym's record to its own network: the coach's pages, a lifter's own record, the floor
//! board, downloads.
//!
//! Refuses: writing anything, names from outside the local network, whoever has no right, telling
//! its insides.
#![forbid(unsafe_code)]

mod access;
mod app;
mod attempts;
mod authority;
mod board;
mod chart;
mod code;
mod cookies;
mod counter;
mod counter_stick;
mod counts;
mod course;
mod course_chart;
mod course_page;
mod crowd;
mod csv_file;
mod database_file;
mod deeds;
mod desk;
mod documents;
mod documents_json;
mod doors;
mod entity_tag;
mod export;
mod form;
mod forwarded;
mod found;
mod front;
mod guard;
mod gzip;
mod health;
mod html;
mod json_file;
mod known;
mod life;
mod lifter_page;
mod lifters;
mod look;
mod masthead;
mod moment;
mod not_in;
mod own;
mod page;
mod pem_files;
mod plain;
mod plan_table;
mod plans;
mod plans_by_token;
mod plans_page;
mod problem;
mod programme;
mod qr;
mod query;
mod rights;
mod routes;
mod seats;
mod serve;
mod sessions;
mod stall;
mod stream;
mod tls;
mod to_tls;
mod today;
mod today_forms;
mod token;
mod token_acts;
mod token_page;
mod tokens;
mod upload;
mod week;
mod week_change;
mod week_grid;
mod week_page;
mod words;

pub use app::Front;
pub use board::{Board, BoardRack, BoardTurn};
pub use code::{
    CODE_FILE, CodeError, LONGEST as CODE_LONGEST, SHORTEST as CODE_SHORTEST, hash, is_code,
    keep_hash, kept_code, kept_hash, remove_code, set_code,
};
pub use counter::{Counter, Night, Order, Told};
pub use desk::Desk;
pub use export::{ExportError, write_csv, write_json};
pub use found::{Announced, announce};
pub use guard::Peer;
pub use plain::Plain;
pub use programme::{Filled, ShareOf, Today};
pub use qr::{Qr, qr};
pub use routes::router;
pub use serve::{ShareError, bind, converse, serve};
pub use sessions::LINK_MS;
pub use stream::Places;
pub use tls::{Identity, Standing, TlsError, identity};
