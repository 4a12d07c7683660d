//! What was done at the gym's other racks, as the hub tells it.
use super::Kiosk;
use crate::error::KioskError;
use domain::elsewhere::Brought;
use domain::{Command, Refusal};

impl Kiosk {
    /// Keeps a lift that is over at another rack, once however often it is told. One that cannot be
    /// kept now is told again after the next start.
    pub fn take_elsewhere(&mut self, lift: Brought) {
        let of = lift.origin.clone();
        let command = Command::TakeElsewhere(Box::new(lift));
        match self.owner.command(&command, self.clock.now()) {
            Ok(()) => self.after_change(),
            Err(KioskError::Refused(Refusal::KnownElsewhere)) => {}
            Err(error) => tracing::warn!(%error, ?of, "a lift of another rack is not kept"),
        }
    }
}
