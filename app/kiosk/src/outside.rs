//! Keeps a mark of how far the journal has come where copies are kept, and hears what those places
//! know, which may have come back only after the start.
//!
//! On a thread of its own: a stick or a network's disk may take long, and no tap waits for it.
use crate::error::KioskError;
use crate::folder::Folder;
use crate::input::Input;
use crate::watch::{spawn_again, stand_back};
use journal::JournalError;
use std::path::PathBuf;
use std::sync::mpsc::Sender;
use std::time::Duration;

/// Between two looks: what a folder put back at a bad moment can lose unseen.
const LOOK: Duration = Duration::from_secs(60);

/// What was found of late, so that it is told once.
#[derive(Debug)]
pub struct Places {
    folder: Folder,
    told: String,
}

impl Places {
    /// Before the first look.
    #[must_use]
    pub fn of(folder: &Folder) -> Self {
        Self {
            folder: folder.clone(),
            told: String::new(),
        }
    }

    /// Keeps the marks of all places that are there; gives what one of them knows that the journal
    /// does not hold, once.
    pub fn look(&mut self) -> Option<KioskError> {
        let journal = self.folder.journal();
        let keep = |place: PathBuf| journal::keep_mark(&journal, &place).err();
        let Some(error) = self.folder.places().into_iter().find_map(keep) else {
            self.told.clear();
            return None;
        };
        let told = error.to_string();
        if self.told == told {
            return None;
        }
        self.told = told;
        if matches!(
            error,
            JournalError::Lost { .. } | JournalError::Foreign { .. }
        ) {
            return Some(error.into());
        }
        tracing::warn!(%error, "no mark is kept outside the data folder");
        None
    }
}

/// Starts the thread; what it finds is told on the screen.
pub(crate) fn start(folder: &Folder, inputs: Sender<Input>) {
    let folder = folder.clone();
    let thread = spawn_again("places", move || {
        stand_back();
        let mut places = Places::of(&folder);
        loop {
            if let Some(error) = places.look() {
                // A send fails only when the owner has ended.
                drop(inputs.send(Input::Unsound(Box::new(error))));
            }
            std::thread::sleep(LOOK);
        }
    });
    if let Err(error) = thread {
        tracing::error!(%error, "no mark is kept outside: the system gives no thread");
    }
}
