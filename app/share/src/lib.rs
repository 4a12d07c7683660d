//! Shows the gym's record to its own network: the coach's pages, a lifter's own record, the floor
//! board, downloads.
//!
//! Refuses: writing anything, names from outside the local network, whoever has no right, telling
//! its insides.
#![forbid(unsafe_code)]

mod app;
mod attempts;
mod auth;
mod authority;
mod board;
mod chart;
mod code;
mod connection_limit;
mod cookies;
mod counts;
mod course;
mod course_chart;
mod course_page;
mod csv_file;
mod database_file;
mod deeds;
mod desk;
mod desk_page;
mod desk_stick;
mod documents;
mod documents_json;
mod entity_tag;
mod export;
mod form;
mod forwarded;
mod found;
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
mod public_pages;
mod qr;
mod query;
mod request_log;
mod request_rules;
mod rights;
mod routes;
mod seats;
mod serve;
mod sessions;
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
mod write_timeout;

pub use app::Front;
pub use board::{Board, BoardRack, BoardTurn};
pub use code::{
    CODE_FILE, CodeError, LONGEST as CODE_LONGEST, SHORTEST as CODE_SHORTEST, hash, is_code,
    keep_hash, kept_code, kept_hash, remove_code, set_code,
};
pub use desk::Desk;
pub use desk_page::{Counter, Night, Order, Told};
pub use export::{ExportError, write_csv, write_json};
pub use found::{Announced, announce};
pub use plain::Plain;
pub use programme::{Filled, ShareOf, Today};
pub use qr::{Qr, qr};
pub use request_rules::Peer;
pub use routes::router;
pub use serve::{ShareError, bind, converse, serve};
pub use sessions::LINK_MS;
pub use stream::Places;
pub use tls::{Identity, Standing, TlsError, identity};
