//! Puts one flipped bit of a row right: its seal says when it is.
use crate::chain::{self, Row};
use crate::mark::Claim;

/// Bytes of a row up to which all its bits are tried, each with one hash: some seconds at most.
const BYTES_MAX: usize = 16 * 1_024;

/// The row that follows `last` as it was before one bit of it flipped; `None` when it was not that.
pub(super) fn put_right(last: Claim, row: &Row) -> Option<Row> {
    let fits = |row: &Row| chain::check(last.upto, &last.seal, row).is_ok();
    let mut tried = Row {
        seq: last.upto + 1,
        ..row.clone()
    };
    // A seal that was hit itself: what stands fits everything but its last byte or two.
    let seal = chain::seal(
        &last.seal,
        tried.seq,
        row.at_ms,
        row.version,
        &row.kind,
        &row.body,
    );
    let off: u32 = seal
        .iter()
        .zip(row.hash)
        .map(|(a, b)| (a ^ b).count_ones())
        .sum();
    if off <= 1 {
        tried.hash = seal;
        return Some(tried);
    }
    for bit in 0..64 {
        tried.at_ms = row.at_ms ^ (1 << bit);
        if fits(&tried) {
            return Some(tried);
        }
    }
    tried.at_ms = row.at_ms;
    for bit in 0..32 {
        tried.version = row.version ^ (1 << bit);
        if fits(&tried) {
            return Some(tried);
        }
    }
    tried.version = row.version;
    if row.kind.len() + row.body.len() > BYTES_MAX {
        return None;
    }
    for kind in flipped(&row.kind) {
        tried.kind = kind;
        if fits(&tried) {
            return Some(tried);
        }
    }
    tried.kind.clone_from(&row.kind);
    for body in flipped(&row.body) {
        tried.body = body;
        if fits(&tried) {
            return Some(tried);
        }
    }
    None
}

/// The text with each of its bits flipped in turn, where that is a text.
fn flipped(text: &str) -> impl Iterator<Item = String> {
    (0..text.len() * 8).filter_map(|bit| {
        let mut bytes = text.as_bytes().to_vec();
        bytes[bit / 8] ^= 1 << (bit % 8);
        String::from_utf8(bytes).ok()
    })
}
