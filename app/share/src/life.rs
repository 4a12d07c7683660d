//! That the kiosk behind the page lives: when it ticked, how long its day lasts, its sheets.
use crate::desk::{Desk, lock};
use std::sync::{Arc, Mutex, MutexGuard};

/// A kiosk that has not ticked for so long does not live.
const TICKS_MS: u64 = 10_000;

/// As the kiosk told it.
#[derive(Debug, Default)]
pub(crate) struct Life {
    /// When it ticked last.
    ticked: Mutex<Option<u64>>,
    /// When the day ends at the gym's clock.
    midnight: Mutex<Option<u64>>,
    /// The day's sheets as JSON.
    sheets: Mutex<Option<Arc<str>>>,
    /// Tokens are made and taken back one after the other.
    token_turn: Mutex<()>,
}

impl Desk {
    /// The kiosk lives: to be told at every tick.
    pub fn tick(&self) {
        *lock(&self.life().ticked) = Some(self.now());
    }

    /// Whether the kiosk has ticked of late.
    pub(crate) fn ticks(&self) -> bool {
        let at = *lock(&self.life().ticked);
        at.is_some_and(|at| self.now().saturating_sub(at) < TICKS_MS)
    }

    /// How long the day still lasts at the gym's clock, milliseconds.
    pub fn know_midnight(&self, left_ms: u64) {
        *lock(&self.life().midnight) = Some(self.now() + left_ms);
    }

    /// When the day ends, by the desk's clock.
    pub(crate) fn midnight(&self) -> Option<u64> {
        *lock(&self.life().midnight)
    }

    /// Lays out the day's sheets, as JSON.
    pub fn lay_sheets(&self, json: &str) {
        *lock(&self.life().sheets) = Some(json.into());
    }

    pub(crate) fn sheets(&self) -> Option<Arc<str>> {
        lock(&self.life().sheets).clone()
    }

    pub(crate) fn token_turn(&self) -> MutexGuard<'_, ()> {
        lock(&self.life().token_turn)
    }
}
