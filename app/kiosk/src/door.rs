//! The door of the coach's desk: four digits, kept as an argon2id hash beside the journal, tried
//! ever more slowly after wrong ones.
//!
//! Refuses: keeping or logging the digits. Whoever has the disk can find four digits however they
//! are hashed; the door keeps fingers out. What an older version wrote plainly into the journal
//! stays there, so the desk asks for other digits.
use crate::error::KioskError;
use crate::folder::Folder;
use crate::owner::Owner;
use domain::{Command, Moment};
use view::desk::{DESK_FILE, DoorNews, PLAIN_ONCE};

/// The file with the hash, in the data folder; it never goes into the journal.
const CODE_FILE: &str = "desk-code";
/// Wrong codes without a wait.
const FREE: u32 = 3;
/// The first wait, and the longest, milliseconds; each is twice the one before.
const WAIT_MS: i64 = 5_000;
const WAIT_MOST_MS: i64 = 900_000;

/// The door.
#[derive(Debug)]
pub struct Door {
    /// The data folder; `None` for a kiosk in memory.
    folder: Option<Folder>,
    kept: Option<String>,
    wrong: u32,
    until: Option<Moment>,
}

impl Door {
    /// The door of a data folder.
    ///
    /// # Errors
    /// [`KioskError::Code`] when the file cannot be read.
    pub fn of(folder: &Folder) -> Result<Self, KioskError> {
        Ok(Self {
            folder: Some(folder.clone()),
            kept: share::kept_hash(folder.path(), CODE_FILE)?,
            ..Self::in_memory()
        })
    }

    /// The door of a kiosk in memory.
    #[must_use]
    pub const fn in_memory() -> Self {
        Self {
            folder: None,
            kept: None,
            wrong: 0,
            until: None,
        }
    }

    /// Takes over a code that an older version kept plainly in the journal: from now on its hash
    /// stands beside it, and the desk asks for other digits.
    ///
    /// # Errors
    /// [`KioskError`] when either cannot be written.
    pub fn take_over(&mut self, owner: &mut Owner, now: Moment) -> Result<(), KioskError> {
        let text = owner.state().files.get(DESK_FILE);
        let plain = text.and_then(|text| plain_code(text));
        let Some(plain) = plain else { return Ok(()) };
        if self.kept.is_none() {
            self.keep(&plain)?;
        }
        owner.command(&taken(PLAIN_ONCE), now)
    }

    /// What the screen may know of it.
    #[must_use]
    pub fn news(&self) -> DoorNews {
        DoorNews {
            has_code: self.kept.is_some(),
            until: self.until,
        }
    }

    /// Tries a code: whether the door opens. The first one becomes the code.
    ///
    /// # Errors
    /// [`KioskError::Code`] when the first one cannot be kept.
    pub fn open(&mut self, code: &str, now: Moment) -> Result<bool, KioskError> {
        if self.until.is_some_and(|until| now < until) {
            return Ok(false);
        }
        let Some(kept) = &self.kept else {
            self.keep(code)?;
            return Ok(true);
        };
        if share::is_code(kept, code) {
            self.wrong = 0;
            self.until = None;
            return Ok(true);
        }
        self.wrong = self.wrong.saturating_add(1);
        self.until = self.wrong.checked_sub(FREE).map(|more| {
            let wait = WAIT_MS.saturating_mul(1 << more.min(30));
            Moment(now.0.saturating_add(wait.min(WAIT_MOST_MS)))
        });
        Ok(false)
    }

    /// Keeps another code.
    ///
    /// # Errors
    /// [`KioskError`] when it cannot be kept; the former one then stands.
    pub fn change(&mut self, code: &str, owner: &mut Owner, now: Moment) -> Result<(), KioskError> {
        self.keep(code)?;
        if owner
            .state()
            .files
            .get(DESK_FILE)
            .is_some_and(|text| !text.is_empty())
        {
            owner.command(&taken(""), now)?;
        }
        Ok(())
    }

    fn keep(&mut self, code: &str) -> Result<(), KioskError> {
        let hash = share::hash(code)?;
        if let Some(folder) = &self.folder {
            share::keep_hash(folder.path(), CODE_FILE, &hash)?;
        }
        self.kept = Some(hash);
        Ok(())
    }
}

/// The code of a text as older versions wrote it.
fn plain_code(text: &str) -> Option<String> {
    let value = text.trim().strip_prefix("code")?.trim().strip_prefix('=')?;
    Some(value.trim().trim_matches('"').to_owned())
}

fn taken(text: &str) -> Command {
    Command::TakeFile {
        name: DESK_FILE.into(),
        text: text.into(),
    }
}
