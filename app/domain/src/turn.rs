//! A station, and a turn that was called there.
use crate::equipment::PlateFace;
use crate::lift_no::LiftNo;
use alloc::string::String;
use alloc::vec::Vec;

/// One bar at one rack.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord)]
pub struct Station {
    /// Name of the rack.
    pub rack: String,
    /// Name of the bar.
    pub bar: String,
}

/// One turn that was called: whose, which rung, and the stack that serves it.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct CalledTurn {
    /// Which lift.
    pub no: LiftNo,
    /// Which rung, from 0.
    pub rung: u16,
    /// Plates of one side, inside to outside.
    pub per_side: Vec<PlateFace>,
}
