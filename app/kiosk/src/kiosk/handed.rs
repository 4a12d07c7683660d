//! What is handed to the kiosk past its screens: a plan that was checked, a copy of the journal,
//! a look for a picture.
//!
//! Refuses: a part of a plan; going on without a journal that keeps what is entered.
use super::Kiosk;
use crate::error::KioskError;
use crate::folder::Folder;
use crate::owner::Owner;
use domain::Command;
use journal::Journal;
use view::Stage;

impl Kiosk {
    /// Chooses language and light, as a finger does on the kiosk's own page.
    ///
    /// # Errors
    /// [`KioskError`] when the journal cannot keep it.
    pub fn choose_look(&mut self, chosen: view::Chosen) -> Result<(), KioskError> {
        let take = Command::TakeFile {
            name: view::look::SCREEN_FILE.into(),
            text: chosen.write(),
        };
        self.owner.command(&take, self.clock.now())
    }

    /// Takes a plan that was checked against the gym in force, whole.
    ///
    /// # Errors
    /// [`KioskError`] when it cannot be kept; nothing of it stands then.
    pub fn take_plan(
        &mut self,
        name: String,
        rows: Vec<domain::Prescription>,
    ) -> Result<(), KioskError> {
        let command = Command::TakePlan { name, rows };
        self.owner.command(&command, self.clock.now())?;
        self.after_change();
        Ok(())
    }

    /// Proves the copy at `file`, puts it in the place of the journal, which is kept beside it,
    /// and goes on from what it holds: the number of its events.
    ///
    /// # Errors
    /// [`KioskError`] when the copy is not sound or nothing can be put in place; the kiosk then
    /// goes on with what stood.
    pub fn restore(&mut self, folder: &Folder, file: &std::path::Path) -> Result<u64, KioskError> {
        let stamp = self.clock.local().format("%Y-%m-%dT%H%M%S").to_string();
        // The journal must be closed to be put aside; meanwhile the state is kept in memory.
        self.owner = Owner::in_memory(self.owner.state().clone());
        let restored = journal::restore(file, folder.path(), &stamp, |_, _| {});
        let reopened = Journal::open(&folder.journal()).map_err(KioskError::from);
        self.owner = match reopened.and_then(Owner::open) {
            Ok(owner) => owner,
            // Nothing more could be kept: the kiosk ends, and its service starts it anew.
            Err(error) => panic!("the journal cannot be opened any more: {error}"),
        };
        self.today.made_for = None;
        self.after_change();
        let time = self.time_of_day();
        self.stage = Stage::resume(&self.scene(&time));
        Ok(restored?.report.events)
    }
}
