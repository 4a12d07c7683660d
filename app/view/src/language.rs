//! The words of the screens, as `text` has them, under the names that the screens use.
pub use text::*;

pub(crate) use text::keys as p;
pub(crate) use text::keys::NOTES;
pub(crate) use text::keys::coach as c;
