//! What was done at other kiosks, in the record: sets like all others, at the rack where they were
//! done and by the wall clock there.
use super::project::{enter as entered, note_set};
use domain::elsewhere::DoneThere;
use domain::state::Entered;
use domain::{Hold, LiftNo};
use rusqlite::Connection;

/// An entry of a lift that was done elsewhere.
pub(super) fn enter(
    tables: &Connection,
    seq: u64,
    no: LiftNo,
    done: &DoneThere,
) -> rusqlite::Result<()> {
    let what = match done.what {
        Entered::Set { .. } => "set",
        Entered::Skipped => "skip",
        Entered::Stopped => "stop",
        Entered::WentOn => "go on",
        Entered::Settled => "settle",
        Entered::LeftOpen => "left open",
    };
    let stands = entered(tables, seq, no, what)?;
    let Entered::Set { reps, hold } = done.what else {
        return Ok(());
    };
    if !stands {
        return Ok(());
    }
    let moved_at = match hold {
        Hold::Kept => None,
        Hold::MovedAt(rep) => Some(rep),
    };
    note_set(tables, seq, no, done.rung, reps, moved_at, done.at.0)
}
