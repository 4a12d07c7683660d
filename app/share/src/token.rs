//! Tokens that nobody can guess. Refuses: keeping one; what is kept is its hash.
use sha2::{Digest as _, Sha256};

/// SHA-256 of a token (FIPS 180-4).
pub(crate) type TokenHash = [u8; 32];

/// 256 bits from the system's random source, in hexadecimal; `None` when it gives none.
pub(crate) fn fresh() -> Option<String> {
    let mut bytes = [0_u8; 32];
    getrandom::fill(&mut bytes).ok()?;
    Some(hex(&bytes))
}

/// The hash that is kept of a token.
pub(crate) fn hash(token: &str) -> TokenHash {
    Sha256::digest(token).into()
}

/// Whether a text has the form of a token.
pub(crate) fn is_token(text: &str) -> bool {
    text.len() == 64
        && text
            .bytes()
            .all(|b| b.is_ascii_digit() || (b'a'..=b'f').contains(&b))
}

/// Two hexadecimal digits a byte.
pub(crate) fn hex(bytes: &[u8]) -> String {
    bytes.iter().map(|byte| format!("{byte:02x}")).collect()
}
