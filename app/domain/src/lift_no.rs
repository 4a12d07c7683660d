//! The number of a lift.

/// Number of a lift that was begun, counted from 1 over the whole journal.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub struct LiftNo(pub u32);
