//! What is wrong with which device: told once in the log, listed for the coach's desk.
//!
//! Refuses: repeating itself; a device that fails a thousand times is one line.
use crate::trouble::Trouble;
use std::collections::{BTreeMap, BTreeSet};
use std::fmt;
use std::sync::{Arc, Mutex, MutexGuard, PoisonError};

/// One device that does not work as it should.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct DeviceFault {
    /// The device: "foot switch", "buzzer", or the file "hardware.toml".
    pub device: String,
    /// What is wrong with it.
    pub what: Trouble,
}

impl fmt::Display for DeviceFault {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{}: {}", self.device, self.what)
    }
}

/// The list of faults; clones share it.
#[derive(Debug, Clone, Default)]
pub struct Faults(Arc<Mutex<Told>>);

#[derive(Debug, Default)]
struct Told {
    standing: BTreeMap<String, Trouble>,
    logged: BTreeSet<(String, Trouble)>,
}

impl Faults {
    /// Notes what is wrong with a device. The log is told the first time only.
    pub fn report(&self, device: &str, what: Trouble) {
        let mut told = self.lock();
        let new = told.logged.insert((device.to_owned(), what.clone()));
        if new {
            tracing::warn!(
                device,
                %what,
                "a device does not work; sets are logged without it"
            );
        }
        told.standing.insert(device.to_owned(), what);
    }

    /// The device works again.
    pub fn clear(&self, device: &str) {
        if self.lock().standing.remove(device).is_some() {
            tracing::info!(device, "a device works again");
        }
    }

    /// What is wrong now, by device.
    #[must_use]
    pub fn list(&self) -> Vec<DeviceFault> {
        let told = self.lock();
        let fault = |(device, what): (&String, &Trouble)| DeviceFault {
            device: device.clone(),
            what: what.clone(),
        };
        told.standing.iter().map(fault).collect()
    }

    fn lock(&self) -> MutexGuard<'_, Told> {
        self.0.lock().unwrap_or_else(PoisonError::into_inner)
    }
}
