//! Keeps events for ever, in order, and proves it.
//!
//! Refuses: changing or removing anything once written, deciding what an event means for the
//! state, reading a clock.
#![forbid(unsafe_code)]

mod ahead;
mod backup;
mod chain;
mod checkpoint;
mod claims;
mod copies;
mod fault;
#[cfg(test)]
mod faults_tests;
mod log;
mod mark;
mod mend;
mod open;
mod outside;
mod private;
mod rebuild;
mod record;
mod rows;
mod sealed;
mod verify;
pub mod wire;
mod witness;

pub use backup::{
    BackupError, Copied, Prepared, Restored, backup, clear_halves, copies, copy, copy_to_read,
    prepare, restore,
};
pub use checkpoint::{CHECKPOINT_FILE, Reached};
pub use domain::prescription::LoadWish;
pub use domain::{Mass, MassUnit};
pub use fault::{AppendError, JournalError, RowFault};
pub use log::Journal;
pub use mark::MARK_FILE;
pub use mend::{Mended, mend};
pub use outside::{Outside, keep_mark};
pub use private::make_private;
pub use rebuild::{FileOutcome, Rebuilt, rebuild};
pub use record::{
    Followed, LifterSum, PlannedRow, Record, RecordError, RecordReader, SetRow, SetsOf, WeekRow,
    prove_record, remake_record,
};
pub use sealed::{Seal, Sealed, SealedReader};
pub use verify::{Report, read_aside, verify, verify_beside, verify_with};

/// The journal's name in the data folder.
pub const JOURNAL_FILE: &str = "journal.sqlite";

/// The record's name in the data folder. It may be deleted at any time.
pub const RECORD_FILE: &str = "record.sqlite";
