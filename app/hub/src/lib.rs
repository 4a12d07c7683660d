//! Many racks in one record: the journals of a gym's kiosks meet in a PostgreSQL database.
//!
//! Each event is known by its kiosk and number and sealed by the kiosk's chain. It is sent at least
//! once and stands once; what does not follow is refused. Refuses: being needed. A kiosk that is cut
//! off works alone and catches up.
#![forbid(unsafe_code)]

mod error;
mod fetch;
mod link;
mod mirror;
mod prepare;
mod secret;
mod send;
mod tls;

pub use domain::elsewhere::Brought;
pub use error::{HubError, OtherFault};
pub use fetch::{Heard, OTHERS_FOLDER, Others};
pub use link::{Head, Link, Places};
pub use plan::hub_address::{AddressFault, HubAddress as Address, is_kiosk_name};
pub use prepare::{Prepare, SCHEMA};
pub use send::{Sent, send};

/// The file in the data folder that holds the kiosk's password, and nothing else.
pub const PASSWORD_FILE: &str = "hub.password";

/// The file in the data folder that holds the certificates by which the server is believed.
pub const ROOTS_FILE: &str = "hub.pem";
