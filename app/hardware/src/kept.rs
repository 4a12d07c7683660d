//! Keeps a device as it is wanted: writes only what changed, and tries again later what failed.
//!
//! Refuses: hammering a device that fails; between two tries it is left alone.
use crate::faults::Faults;
use crate::trouble::Trouble;

/// Between two tries of a device that failed, milliseconds.
pub(crate) const AGAIN_AFTER_MS: u64 = 5_000;

/// What a device was last told.
#[derive(Debug)]
pub(crate) struct Kept<T> {
    name: &'static str,
    last: Option<T>,
    failed_at: Option<u64>,
}

impl<T: PartialEq> Kept<T> {
    pub(crate) fn new(name: &'static str) -> Self {
        Self {
            name,
            last: None,
            failed_at: None,
        }
    }

    /// Writes `want` if the device does not have it yet.
    pub(crate) fn keep(
        &mut self,
        now_ms: u64,
        want: T,
        faults: &Faults,
        write: impl FnOnce(&T) -> Result<(), String>,
    ) {
        let waits = |at: u64| now_ms < at.saturating_add(AGAIN_AFTER_MS);
        if self.last.as_ref() == Some(&want) || self.failed_at.is_some_and(waits) {
            return;
        }
        match write(&want) {
            Ok(()) => {
                self.last = Some(want);
                if self.failed_at.take().is_some() {
                    faults.clear(self.name);
                }
            }
            Err(why) => {
                // What it shows now is not known.
                self.last = None;
                self.failed_at = Some(now_ms);
                faults.report(self.name, Trouble::Disobeys(why));
            }
        }
    }
}
