//! What the record testifies of the journal: how far it followed, under a sum of its own, so that a
//! flipped bit in it accuses nobody.
use super::layout::{APPLICATION, LAYOUT};
use crate::chain::Hash;
use crate::mark::Claim;
use rusqlite::{Connection, OpenFlags, params};
use sha2::{Digest as _, Sha256};
use std::path::Path;

/// The first layout whose mark has a sum.
const SUMMED: i64 = 5;

/// The last event that the record at `path` has followed, and whether a sum proves that; `None`
/// when there is no record, or it cannot speak.
pub(crate) fn claim(path: &Path) -> Option<(Claim, bool)> {
    if !path.exists() {
        return None;
    }
    let flags = OpenFlags::SQLITE_OPEN_READ_ONLY | OpenFlags::SQLITE_OPEN_NO_MUTEX;
    let file = Connection::open_with_flags(path, flags).ok()?;
    let number = |pragma| file.pragma_query_value(None, pragma, |row| row.get::<_, i64>(0));
    if number("application_id").ok()? != APPLICATION {
        return None;
    }
    let summed = number("user_version").ok()? >= SUMMED;
    let read = |sql| file.query_row(sql, [], |row| Ok((row.get(0)?, row.get(1)?, row.get(2)?)));
    let (upto, seal, sum): (u64, Hash, Option<Hash>) = match summed {
        true => read("SELECT upto, hash, sum FROM mark").ok()?,
        false => read("SELECT upto, hash, NULL FROM mark").ok()?,
    };
    let claim = Claim { upto, seal };
    (!summed || sum == Some(sum_of(claim))).then_some((claim, summed))
}

/// Writes how far the record goes.
pub(super) fn write(tables: &Connection, claim: Claim) -> rusqlite::Result<()> {
    tables
        .execute(
            "INSERT OR REPLACE INTO mark (id, upto, hash, sum) VALUES (1, ?1, ?2, ?3)",
            params![claim.upto, claim.seal, sum_of(claim)],
        )
        .map(drop)
}

fn sum_of(claim: Claim) -> Hash {
    let mut sha = Sha256::new();
    sha.update("record");
    sha.update(claim.upto.to_be_bytes());
    sha.update(claim.seal);
    sha.finalize().into()
}

/// Keeps the layout's number and the sum in step.
const _: () = assert!(LAYOUT >= SUMMED);
