//! The keys of the catalogue, a file of them for each of its files.
mod checked_blocks;
mod checked_gym;
mod checked_kiosk;
mod checked_manners;
mod checked_plans;
mod checked_schemes;
pub mod coach;
pub mod dates;
pub mod days;
pub mod groups;
pub mod list;
pub mod page;
pub mod shipped;

use crate::Message;

mod desk;
mod loads;
mod screen;
mod turn;

pub use desk::*;
pub use loads::*;
pub use screen::*;
pub use turn::*;

/// What the checkers of files say, and what the kiosk says of what failed.
pub mod checked {
    pub use super::checked_blocks::*;
    pub use super::checked_gym::*;
    pub use super::checked_kiosk::*;
    pub use super::checked_manners::*;
    pub use super::checked_plans::*;
    pub use super::checked_schemes::*;
}

/// The keys of the page on the network.
#[must_use]
pub fn of_page() -> Vec<Message> {
    page::ALL.to_vec()
}

/// Every key.
#[must_use]
#[allow(
    unused_qualifications,
    reason = "every file calls its table by one name"
)]
pub fn every() -> Vec<Message> {
    [
        checked_blocks::ALL,
        checked_gym::ALL,
        checked_kiosk::ALL,
        checked_manners::ALL,
        checked_plans::ALL,
        checked_schemes::ALL,
        coach::ALL,
        dates::ALL,
        days::ALL,
        desk::ALL,
        groups::ALL,
        list::ALL,
        loads::ALL,
        page::ALL,
        screen::ALL,
        shipped::ALL,
        turn::ALL,
    ]
    .concat()
}
