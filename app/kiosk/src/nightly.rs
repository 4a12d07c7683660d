//! The nightly copy of the journal, on a thread of its own.
//!
//! Refuses: keeping the owner's thread from anything; it has a connection of its own.
use crate::clock::{Clock as _, SystemClock};
use crate::watch::spawn_again;
use chrono::{NaiveDateTime, Timelike as _};
use std::path::{Path, PathBuf};
use std::sync::{Arc, Mutex, PoisonError};
use std::time::Duration;

/// From this hour of the gym's clock on.
const HOUR: u32 = 3;
/// Between two looks at the clock.
const LOOK: Duration = Duration::from_secs(60);
/// Between two tries of one night, in looks.
const AGAIN: u32 = 15;

/// Where copies go and how many are kept.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Nightly {
    /// The data folder.
    pub folder: PathBuf,
    /// The second place.
    pub place: PathBuf,
    /// How many copies are kept.
    pub keep: usize,
}

/// How the last copy went, for the desk.
#[derive(Debug, Clone, Default)]
pub struct NightlyState(Arc<Mutex<String>>);

impl NightlyState {
    /// "last copy 2026-11-25, 1234 events", or what went wrong; empty before the first.
    #[must_use]
    pub fn words(&self) -> String {
        let words = self.0.lock().unwrap_or_else(PoisonError::into_inner);
        words.clone()
    }

    fn set(&self, words: String) {
        *self.0.lock().unwrap_or_else(PoisonError::into_inner) = words;
    }
}

/// Whether a copy is due: it is night or later, and none has today's name.
#[must_use]
pub fn is_due(place: &Path, now: NaiveDateTime) -> bool {
    let today = now.date().to_string();
    let has = journal::copies(place).is_ok_and(|copies| {
        copies
            .iter()
            .any(|copy| copy.to_string_lossy().contains(&today))
    });
    now.hour() >= HOUR && !has
}

/// Starts the thread.
pub fn start(nightly: Nightly) -> NightlyState {
    let state = NightlyState::default();
    let told = state.clone();
    let thread = spawn_again("backup", move || {
        let mut wait = 0;
        loop {
            let now = SystemClock.local();
            if wait == 0 && is_due(&nightly.place, now) {
                wait = AGAIN;
                copy(&nightly, now, &told);
            }
            wait = wait.saturating_sub(1);
            std::thread::sleep(LOOK);
        }
    });
    if let Err(error) = thread {
        tracing::error!(%error, "no nightly copy: the system gives no thread");
    }
    state
}

fn copy(nightly: &Nightly, now: NaiveDateTime, told: &NightlyState) {
    let stamp = now.date().to_string();
    let Nightly {
        folder,
        place,
        keep,
    } = nightly;
    match journal::backup(folder, place, &stamp, *keep) {
        Ok(copied) => {
            let events = copied.report.events;
            tracing::info!(path = %copied.path.display(), events, "the journal was copied");
            told.set(format!("last copy {stamp}, {events} events"));
        }
        Err(error) => {
            tracing::error!(%error, "the journal was not copied");
            told.set(format!("no copy on {stamp}: {error}"));
        }
    }
}
