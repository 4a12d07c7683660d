//! What the owner and the coach see of the page on the LAN: plain words, ready to be drawn.
//!
//! Refuses: the code, and turning the page on.
use chrono::NaiveDate;

/// The page on the LAN.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct LanCard {
    /// `http://192.168.1.20:8470/`, or empty when the page is off.
    pub address: String,
    /// `http://pinladder.local:8470/`, or empty where it is not announced.
    pub name: String,
    /// SHA-256 of the certificate, pairs of hexadecimal digits; empty without TLS.
    pub fingerprint: String,
    /// SHA-256 of the device's own root, which phones can be told to trust; empty without one.
    pub root_fingerprint: String,
    /// Whether other machines reach it without TLS, so that the coach's code travels readable.
    pub readable: bool,
    /// Whether TLS is on although no file says so.
    pub tls_by_itself: bool,
    /// Why a newer certificate is not served; empty when all is well.
    pub certificate_trouble: String,
    /// The last day of the owner's certificate, where it is near or over.
    pub certificate_ends: Option<NaiveDate>,
    /// What is wrong or missing, and what to do; empty when all is well.
    pub trouble: String,
}
