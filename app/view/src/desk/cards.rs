//! What the owner and the coach see of the page on the LAN: plain words, ready to be drawn.
//!
//! Refuses: the code, and turning the page on.

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
