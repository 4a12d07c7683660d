//! Shows the gym's record to its own network: the coach's pages, a lifter's own record, the floor
//! board, downloads.
//!
//! Refuses: writing anything, names from outside the local network, whoever has no right, telling
//! its insides.
#![forbid(unsafe_code)]

mod access;
mod attempts;
mod authority;
mod board;
mod chart;
mod code;
mod counter;
mod crowd;
mod csv_file;
mod database_file;
mod desk;
mod doors;
mod export;
mod forwarded;
mod found;
mod front;
mod guard;
mod html;
mod json_file;
mod known;
mod lifter_page;
mod moment;
mod page;
mod pem_files;
mod plain;
mod problem;
mod programme;
mod qr;
mod routes;
mod seats;
mod serve;
mod sessions;
mod stall;
mod stream;
mod tls;
mod to_tls;
mod today;
mod token;
mod words;

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
pub use programme::{Filled, Today};
pub use qr::{Qr, qr};
pub use routes::{Front, Places, router};
pub use serve::{ShareError, bind, converse, serve};
pub use sessions::LINK_MS;
pub use tls::{Identity, Standing, TlsError, identity};
pub use words::every_page_phrase;
