//! What a look at the whole journal found after a start that believed its checkpoint, and what else
//! stands in the notice until it is mended.
use super::Kiosk;
use crate::desk;
use crate::error::KioskError;

impl Kiosk {
    /// Whether the start believed a checkpoint, so that events before it were not looked at.
    #[must_use]
    pub fn believed(&self) -> bool {
        self.owner.kept() > 0
    }

    /// The journal is not sound in a part that the start did not look at. It is told until it is
    /// mended; entries are kept all the same.
    pub fn tell_unsound(&mut self, error: KioskError) {
        tracing::error!(%error, "the journal is not sound");
        self.unsound = Some(error);
        self.notice = self.notice_of_files();
    }

    /// The damage that was found, or the first fault of the folder's files, so that somebody mends
    /// it; all faults are in `check`.
    pub(super) fn notice_of_files(&self) -> String {
        match &self.unsound {
            Some(error) => desk::words(self.say(), error),
            None => desk::faults_words(self.say(), &self.gym.faults),
        }
    }
}
