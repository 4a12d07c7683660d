//! By what a record's file is known.

/// "PinR": marks the file as a record of this program.
pub(crate) const APPLICATION: i64 = 0x5069_6e52;
/// The layout of `record/layout.sql`. A record of any other is made again.
pub(crate) const LAYOUT: i64 = 8;
