//! Acceptance: a whole kiosk on a bench, and the rules of the tree held by tests.
//!
//! Refuses: anything that ships; this crate is for `cargo test` alone.
#![forbid(unsafe_code)]

use std::path::{Path, PathBuf};

/// The repository's top folder.
///
/// # Panics
/// When this crate is not one below the top.
#[must_use]
pub fn top() -> PathBuf {
    let here = Path::new(env!("CARGO_MANIFEST_DIR"));
    here.parent()
        .expect("the crate is one below the top")
        .to_path_buf()
}

/// Whether generated things are to be written anew instead of compared.
#[must_use]
pub fn renewing() -> bool {
    std::env::var_os("PINLADDER_RENEW").is_some()
}
