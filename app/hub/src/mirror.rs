//! Another kiosk's journal as this one has read it, whole and proven: a folder of its own that may
//! be deleted at any time, and its state, from which lifts that are over come here.
use domain::elsewhere::Brought;
use domain::{Event, Fact, LiftNo, State};
use journal::{JOURNAL_FILE, Journal, JournalError, Sealed, SealedReader};
use std::collections::BTreeMap;
use std::fs;
use std::path::Path;

/// So many events after the last one the state is kept anew.
const KEEP_AFTER: u64 = 2_000;

#[derive(Debug)]
pub(crate) struct Mirror {
    kiosk: String,
    journal: Journal,
    state: State,
    pub(crate) upto: u64,
    kept: u64,
    /// Lifts as they were told last.
    told: BTreeMap<LiftNo, Brought>,
    /// Whether all that stands was told since the start.
    is_told: bool,
}

impl Mirror {
    /// Opens what was read of `kiosk` in its folder; what is damaged is read anew from the hub.
    pub(crate) fn open(kiosk: &str, folder: &Path) -> Result<Self, JournalError> {
        match Self::of(kiosk, folder) {
            Err(error) if folder.exists() => {
                tracing::warn!(kiosk, %error, "what was read of another kiosk is read anew");
                // What cannot be deleted fails again just below.
                drop(fs::remove_dir_all(folder));
                Self::of(kiosk, folder)
            }
            opened => opened,
        }
    }

    fn of(kiosk: &str, folder: &Path) -> Result<Self, JournalError> {
        // Where it cannot be made, opening tells.
        drop(fs::create_dir_all(folder));
        let journal = Journal::open(&folder.join(JOURNAL_FILE))?;
        let reached = journal.reached()?;
        Ok(Self {
            kiosk: kiosk.into(),
            journal,
            state: reached.state,
            upto: reached.last,
            kept: reached.kept,
            told: BTreeMap::new(),
            is_told: false,
        })
    }

    /// What seals the last event that was read.
    pub(crate) fn seal(&self) -> Result<journal::Seal, JournalError> {
        if self.upto == 0 {
            return Ok([0; 32]);
        }
        Ok(SealedReader::open(self.journal.path())?.last()?.1)
    }

    /// Keeps events that follow, and hands on what became of lifts.
    pub(crate) fn take(
        &mut self,
        rows: &[Sealed],
        tell: &mut dyn FnMut(Brought),
    ) -> Result<(), JournalError> {
        let events = self.journal.append_sealed(rows)?;
        for event in &events {
            self.upto += 1;
            self.state.apply(event);
            self.tell_taken_back(event, tell);
        }
        self.tell_over(tell);
        Ok(())
    }

    /// Hands on all that stands, once after a start: what was read before a power cut may not have
    /// been taken over yet.
    pub(crate) fn tell_all(&mut self, tell: &mut dyn FnMut(Brought)) {
        if !self.is_told {
            self.is_told = true;
            self.tell_over(tell);
        }
    }

    /// Brings what was read to rest on the disk; the next pass tries again what fails.
    pub(crate) fn rest(&mut self) {
        if let Err(error) = self.journal.rest() {
            tracing::warn!(kiosk = self.kiosk, %error, "what was read of another kiosk rests not");
        }
        if self.upto.saturating_sub(self.kept) >= KEEP_AFTER
            && self.journal.keep_state(&self.state, self.upto).is_ok()
        {
            self.kept = self.upto;
        }
    }

    /// A lift of which the beginning itself was taken back stands no longer there.
    fn tell_taken_back(&mut self, event: &Event, tell: &mut dyn FnMut(Brought)) {
        let Fact::EntryUndone { no } = &event.fact else {
            return;
        };
        if !self.state.lifts.contains_key(no)
            && let Some(told) = self.told.remove(no)
        {
            tell(told.taken_back(self.upto));
        }
    }

    /// Lifts that are over, as far as they are others than were told last.
    fn tell_over(&mut self, tell: &mut dyn FnMut(Brought)) {
        let own = |no: LiftNo| !self.state.is_from_elsewhere(no);
        let over = self.state.lifts.values();
        let over = over.filter(|run| run.is_over() && !run.is_lean && own(run.no));
        for run in over {
            let now = Brought::of(&self.state, run, &self.kiosk, self.upto);
            let told = self.told.get(&run.no);
            if told.is_none_or(|told| told.entries != now.entries || told.sheet != now.sheet) {
                tell(now.clone());
                self.told.insert(run.no, now);
            }
        }
        let lifts = &self.state.lifts;
        self.told
            .retain(|no, _| lifts.get(no).is_some_and(|run| !run.is_lean));
    }
}
