//! What a look at the whole journal found after a start that believed its checkpoint, and what else
//! stands in the notice until it is mended.
use super::Kiosk;
use crate::desk;
use crate::error::KioskError;
use plan::words;
use text::keys::checked as k;

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

    /// The record is not what the journal makes of it. It is let go of, and followed again once it
    /// was made anew ([`Kiosk::follow_anew`]); what people read of it until then may be wrong.
    pub fn tell_record(&mut self) {
        self.record = None;
        let why = words!(k::THE_RECORD_IN_RECORD_SQLITE);
        tracing::error!("the record is not what the journal makes of it");
        self.notice = desk::in_words(self.say(), &why);
    }

    /// As [`Kiosk::notice_of_files`]; where nothing is wrong, which files read otherwise than when
    /// the kiosk ran last: by their owner's hand, or by none.
    pub(super) fn notice_at_start(&self) -> String {
        let notice = self.notice_of_files();
        if !notice.is_empty() || self.gym.changed.is_empty() {
            return notice;
        }
        let changed = words!(k::CHANGED_SINCE_THE_KIOSK_RAN, self.gym.changed.join(", "));
        desk::in_words(self.say(), &changed)
    }

    /// Says that it was saved, where nothing more urgent is to be said.
    pub(super) fn tell_saved(&mut self) {
        if self.notice.is_empty() {
            self.notice = self.say().say(text::keys::SAVED);
        }
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
