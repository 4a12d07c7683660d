//! What the owner and the coach see of the page on the LAN, of a stick and of the copies: plain
//! words, ready to be drawn.
//!
//! Refuses: the code, the stick's files themselves, deciding whether a plan is taken.

/// The page on the LAN.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct LanCard {
    /// `http://192.168.1.20:8470/`, or empty when the page is off.
    pub address: String,
    /// `http://pinladder.local:8470/`, or empty where it is not announced.
    pub name: String,
    /// SHA-256 of the certificate, pairs of hexadecimal digits; empty without TLS.
    pub fingerprint: String,
    /// What is wrong or missing, and what to do; empty when all is well.
    pub trouble: String,
}

/// A stick with plans.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct StickCard {
    /// "two plans on the stick", "the stick may be pulled", or what went wrong.
    pub headline: String,
    /// Its plans.
    pub plans: Vec<StickPlanRow>,
    /// "Tevita: 2026-12-01 to 2026-12-22, 4 new days, 1 changed day", one a lifter.
    pub changes: Vec<String>,
    /// Whether all of it could be taken with the coach's code.
    pub can_take: bool,
    /// Whether the stick may be pulled now; it may be at any time, but then what was being
    /// written to it is lost.
    pub may_be_pulled: bool,
}

/// One plan of a stick.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct StickPlanRow {
    /// Its file's name.
    pub name: String,
    /// "24 rows", "3 faults", or why it was passed over.
    pub word: String,
    /// Its faults, by sheet, row and column.
    pub faults: Vec<String>,
}
