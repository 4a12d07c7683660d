//! What the owner of state wants of the devices, handed over without ever waiting for them.
//!
//! Of what is to be shown the last word counts; of tunes the newest few. Refuses: growing.
use crate::outputs::Wanted;
use crate::tune::Tune;
use std::collections::VecDeque;
use std::sync::{Arc, Condvar, Mutex, MutexGuard, PoisonError};
use std::time::Duration;

/// Tunes that wait at most; the oldest makes way.
pub const TUNES_MAX: usize = 4;

/// The place where they are left; clones share it.
#[derive(Debug, Clone, Default)]
pub struct Orders(Arc<Shared>);

#[derive(Debug, Default)]
struct Shared {
    slot: Mutex<Slot>,
    changed: Condvar,
}

#[derive(Debug, Default)]
struct Slot {
    wanted: Wanted,
    tunes: VecDeque<Tune>,
    fresh: bool,
}

impl Orders {
    /// From now on this is to be shown.
    pub fn show(&self, wanted: Wanted) {
        let mut slot = self.lock();
        if slot.wanted != wanted {
            slot.wanted = wanted;
            slot.fresh = true;
            self.0.changed.notify_one();
        }
    }

    /// This is to be played.
    pub fn play(&self, tune: Tune) {
        let mut slot = self.lock();
        if slot.tunes.len() == TUNES_MAX {
            slot.tunes.pop_front();
        }
        slot.tunes.push_back(tune);
        slot.fresh = true;
        self.0.changed.notify_one();
    }

    /// What is to be shown, and the tunes that came; waits for news at most so long.
    #[must_use]
    pub fn next(&self, wait: Duration) -> (Wanted, Vec<Tune>) {
        let slot = self.lock();
        let waited = self.0.changed.wait_timeout_while(slot, wait, |s| !s.fresh);
        let (mut slot, _) = waited.unwrap_or_else(PoisonError::into_inner);
        slot.fresh = false;
        (slot.wanted.clone(), slot.tunes.drain(..).collect())
    }

    fn lock(&self) -> MutexGuard<'_, Slot> {
        self.0.slot.lock().unwrap_or_else(PoisonError::into_inner)
    }
}
