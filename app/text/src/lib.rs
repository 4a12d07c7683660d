//! Every word that a person reads on the screen and on the page: one catalogue per language.
//!
//! The words stand in `catalogue/LANGUAGE/*.ftl`, in Fluent's syntax; `keys` names each of them.
//! What people wrote, and documents and files, stay as they are.
#![forbid(unsafe_code)]

mod catalogue;
mod dates;
mod desk;
mod groups;
pub mod keys;
mod language;
mod next;
mod numbers;
mod phrase;
mod refused;
mod said;
mod say;
mod shipped;
mod warn;

pub use catalogue::source;
pub use language::Language;
pub use phrase::{Message, Phrase};
pub use said::Said;
pub use say::whole_mm;
pub use shipped::every_shipped_word;
