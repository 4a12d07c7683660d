//! The hash chain: each row seals itself and, through the row before, all earlier ones.
//!
//! Refuses: secrecy or signatures. The chain tells damage and edits by hand; somebody who can
//! write the file and run a program can make a new chain.
use crate::fault::RowFault;
use sha2::{Digest as _, Sha256};

/// SHA-256 of a row (FIPS 180-4).
pub(crate) type Hash = [u8; 32];

/// What stands before the first row.
pub(crate) const BEFORE_FIRST: Hash = [0; 32];

/// A row of the journal as it lies in the file.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(crate) struct Row {
    pub(crate) seq: u64,
    pub(crate) at_ms: i64,
    pub(crate) version: u32,
    pub(crate) kind: String,
    pub(crate) body: String,
    pub(crate) hash: Hash,
}

/// The hash of a row that follows `before`. Numbers are big-endian; texts carry their length in
/// bytes first, so that no two rows are sealed alike.
pub(crate) fn seal(
    before: &Hash,
    seq: u64,
    at_ms: i64,
    version: u32,
    kind: &str,
    body: &str,
) -> Hash {
    let mut sha = Sha256::new();
    sha.update(before);
    sha.update(seq.to_be_bytes());
    sha.update(at_ms.to_be_bytes());
    sha.update(version.to_be_bytes());
    for text in [kind, body] {
        sha.update((text.len() as u64).to_be_bytes());
        sha.update(text);
    }
    sha.finalize().into()
}

/// Whether `row` follows a row numbered `last` with the hash `before`.
///
/// # Errors
/// [`RowFault`] when rows are missing between, or the seal does not match.
pub(crate) fn check(last: u64, before: &Hash, row: &Row) -> Result<(), RowFault> {
    if row.seq != last + 1 {
        return Err(RowFault::Missing {
            first: last + 1,
            last: row.seq.saturating_sub(1),
        });
    }
    let sealed = seal(
        before,
        row.seq,
        row.at_ms,
        row.version,
        &row.kind,
        &row.body,
    );
    if sealed == row.hash {
        Ok(())
    } else {
        Err(RowFault::Altered)
    }
}
