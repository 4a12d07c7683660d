//! The state as it stood after some event, beside the journal, so that a start need not read ten
//! years: `journal.state`, lines of facts in the journal's own wire form with what belongs to them.
//!
//! It is a help and never a source: it may be deleted at any time. One that is torn, of another
//! format or version, or whose event is not in the chain as it says, is ignored.
mod elsewhere;
mod form;
mod past;
mod read;
mod write;

use crate::fault::JournalError;
use crate::log::Journal;
use crate::mark::{Claim, hex};
use domain::State;
use sha2::{Digest as _, Sha256};
use std::fs::{self, File};
use std::io::{self, Write as _};
use std::path::{Path, PathBuf};

/// The name in the data folder.
pub const CHECKPOINT_FILE: &str = "journal.state";

/// Raise it whenever these lines change, or what `State::apply` makes of an event: `tests/journal/
/// checkpoint.rs` tells when.
const FORMAT: u32 = 8;

/// The first line: which format, and of which version of the program.
fn title() -> String {
    format!("pinladder state {FORMAT} {}\n", env!("CARGO_PKG_VERSION"))
}

/// The checkpoint beside the journal at `path`.
fn place(path: &Path) -> PathBuf {
    path.with_extension("state")
}

/// What a journal comes to.
#[derive(Debug)]
pub struct Reached {
    /// The state after the last event.
    pub state: State,
    /// The number of the last event.
    pub last: u64,
    /// The event up to which a checkpoint was believed; 0 when all was read.
    pub kept: u64,
}

impl Journal {
    /// What the journal comes to: from the checkpoint where there is one that the chain proves, and
    /// what follows it; else from the first event on.
    ///
    /// # Errors
    /// As [`Journal::events_after`].
    pub fn reached(&self) -> Result<Reached, JournalError> {
        let (mut state, kept) = self.checkpoint_that_holds()?.unwrap_or_default();
        let mut last = kept;
        self.each_after(kept, |seq, event| {
            state.apply(&event);
            last = seq;
            Ok::<_, JournalError>(())
        })?;
        Ok(Reached { state, last, kept })
    }

    fn checkpoint_that_holds(&self) -> Result<Option<(State, u64)>, JournalError> {
        let Some((claim, state)) = read(&place(self.path())) else {
            return Ok(None);
        };
        let holds = self.hash_at(claim.upto)? == Some(claim.seal);
        Ok(holds.then_some((state, claim.upto)))
    }

    /// Keeps `state`, which the first `upto` events make, for the next start: whole or not at all.
    ///
    /// # Errors
    /// The system's. The journal is safe whatever becomes of it.
    pub fn keep_state(&self, state: &State, upto: u64) -> io::Result<()> {
        let seal = self.hash_at(upto).map_err(io::Error::other)?;
        let seal = seal.ok_or_else(|| io::Error::other("no such event"))?;
        let text = written(state, Claim { upto, seal });
        let path = place(self.path());
        let new = path.with_extension("state.new");
        let mut file = File::create(&new)?;
        file.write_all(text.as_bytes())?;
        file.sync_data()?;
        fs::rename(&new, &path)
    }
}

/// The lines, the last of them the sum of all before.
fn written(state: &State, claim: Claim) -> String {
    let mut text = title() + &claim.line();
    write::lines(&mut text, state);
    let sum = hex(&Sha256::digest(&text));
    text + "sum " + &sum + "\n"
}

/// Reads a checkpoint; `None` for anything that is not exactly one of this program's.
fn read(path: &Path) -> Option<(Claim, State)> {
    let text = String::from_utf8(fs::read(path).ok()?).ok()?;
    let body = text.strip_prefix(&title())?;
    let (_, end) = text.trim_end_matches('\n').rsplit_once('\n')?;
    let sum = end.strip_prefix("sum ")?;
    let all = text.len().checked_sub(end.len() + 1)?;
    if hex(&Sha256::digest(text.get(..all)?)) != sum {
        return None;
    }
    let (claim, rest) = body.split_at(body.find('\n')? + 1);
    let claim = Claim::read(claim)?;
    let lines = rest.get(..rest.len().checked_sub(end.len() + 1)?)?;
    let state = read::state(lines.lines()).ok()?;
    Some((claim, state))
}
