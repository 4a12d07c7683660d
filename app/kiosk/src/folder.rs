//! The data folder: the gym's files, the journal, the record.
//!
//! Refuses: the checkout. State is kept in the user's data folder, or where `--data` says.
use crate::error::KioskError;
use journal::{Journal, Outside};
use plan::words;
use std::fs::TryLockError;
use std::path::{Path, PathBuf};
use std::sync::mpsc::channel;
use std::time::Duration;
use text::keys::checked as k;

/// The gym's files, in the order in which they are read.
pub const GYM_FILES: [&str; 4] = ["gym.toml", "lifters.toml", "kiosk.toml", "programme.toml"];

/// The file of a meet or test day, which may be there or not.
pub const MEET_FILE: &str = "meet.toml";

/// The demo gym, for a folder that has no gym yet.
pub const DEMO: [(&str, &str); 4] = [
    ("gym.toml", include_str!("../../../demo-data/gym.toml")),
    (
        "lifters.toml",
        include_str!("../../../demo-data/lifters.toml"),
    ),
    ("kiosk.toml", include_str!("../../../demo-data/kiosk.toml")),
    (
        "programme.toml",
        include_str!("../../../demo-data/programme.toml"),
    ),
];

/// The demo gym's plan.
pub const DEMO_PLAN: &str = include_str!("../../../demo-data/plans/four-weeks.csv");

/// How long a place outside the folder is waited for: at the rack somebody waits too.
const HANGS: Duration = Duration::from_secs(2);

/// How often, and how long apart, a folder that somebody has is asked for.
const LOCK_TRIES: u32 = 10;
const LOCK_WAIT: Duration = Duration::from_millis(50);

/// That a folder is this kiosk's alone.
#[derive(Debug)]
pub struct Alone {
    _lock: Option<std::fs::File>,
}

/// Whether the system says that this place cannot be written, now or ever.
fn is_closed(why: &std::io::Error) -> bool {
    use std::io::ErrorKind::{PermissionDenied, ReadOnlyFilesystem, StorageFull};
    matches!(
        why.kind(),
        PermissionDenied | ReadOnlyFilesystem | StorageFull
    )
}

/// A data folder.
#[derive(Debug, Clone)]
pub struct Folder(PathBuf);

impl Folder {
    /// `chosen`, else `$XDG_DATA_HOME/pinladder`, else `~/.local/share/pinladder`; made if it is
    /// not there (XDG base directory specification 0.8: a relative `XDG_DATA_HOME` is ignored).
    ///
    /// # Errors
    /// [`KioskError`] without a home or when the folder cannot be made.
    pub fn open(chosen: Option<&Path>) -> Result<Self, KioskError> {
        let path = Self::path_of(chosen)?;
        journal::make_private(&path).map_err(KioskError::file(&path))?;
        Ok(Self(path))
    }

    /// Which folder [`Folder::open`] opens; nothing is made.
    ///
    /// # Errors
    /// [`KioskError::NoHome`] without a home.
    pub fn path_of(chosen: Option<&Path>) -> Result<PathBuf, KioskError> {
        let absolute = |name: &str| {
            std::env::var_os(name)
                .map(PathBuf::from)
                .filter(|path| path.is_absolute())
        };
        let home = || absolute("HOME").map(|home| home.join(".local/share"));
        Ok(match chosen {
            Some(path) => path.to_path_buf(),
            None => absolute("XDG_DATA_HOME")
                .or_else(home)
                .ok_or(KioskError::NoHome)?
                .join("pinladder"),
        })
    }

    /// A folder that is only looked at, whether it is there or not.
    pub(crate) fn at(path: &Path) -> Self {
        Self(path.to_owned())
    }

    /// That others on this machine may look into the folder, and what to do; `None` where they may
    /// not. A folder that is made here is private, but older ones were not.
    #[must_use]
    pub fn open_to_others(&self) -> Option<String> {
        use std::os::unix::fs::PermissionsExt as _;
        let mode = std::fs::metadata(&self.0).ok()?.permissions().mode() & 0o777;
        let path = self.0.display();
        (mode & 0o007 != 0).then(|| {
            format!(
                "{path} can be read by others on this machine (mode {mode:04o}), with what lifters \
                 weigh and lift; make it private: chmod 700 {path}"
            )
        })
    }

    /// The folder itself.
    #[must_use]
    pub fn path(&self) -> &Path {
        &self.0
    }

    /// The journal's file.
    #[must_use]
    pub fn journal(&self) -> PathBuf {
        self.0.join("journal.sqlite")
    }

    /// Opens the journal, held to what is known outside the folder too.
    ///
    /// # Errors
    /// [`KioskError::Journal`] when it cannot be opened, or is not all that it had been.
    pub fn open_journal(&self) -> Result<Journal, KioskError> {
        Ok(Journal::open_beside(&self.journal(), &self.outside())?)
    }

    /// What the places outside the folder know of its journal. One that hangs, as a network's disk
    /// may, is not waited for: whoever looks each minute asks it again.
    #[must_use]
    pub fn outside(&self) -> Outside {
        let (places, (tell, told)) = (self.places(), channel());
        if places.is_empty() {
            return Outside::default();
        }
        // A journal whose own witnesses are gone is held to all that there is.
        let all = !self.0.join(journal::MARK_FILE).exists();
        let ask = move || drop(tell.send(Outside::of(&places, all)));
        match std::thread::Builder::new().name("places".into()).spawn(ask) {
            Ok(_) => told.recv_timeout(HANGS).unwrap_or_default(),
            Err(_) => Outside::default(),
        }
    }

    /// The places outside the folder where something may be known of its journal: where copies are
    /// kept, and a folder beside it with `-witness` behind its name, where there is one.
    #[must_use]
    pub fn places(&self) -> Vec<PathBuf> {
        let witness = || {
            let own = std::path::absolute(&self.0).ok()?;
            let mut name = own.file_name()?.to_owned();
            name.push("-witness");
            Some(own.with_file_name(name)).filter(|place| place.is_dir())
        };
        self.copies_place().into_iter().chain(witness()).collect()
    }

    /// The second place, as the settings that lie in the folder name it.
    #[must_use]
    pub fn copies_place(&self) -> Option<PathBuf> {
        let text = self.text("kiosk.toml").ok().flatten()?;
        let source = plan::Source {
            name: "kiosk.toml",
            text: text.as_bytes(),
        };
        plan::kiosk(source, None).ok()?.backup.map(PathBuf::from)
    }

    /// Has the folder for one kiosk alone, until what is returned is dropped or its process ends,
    /// however that is. Halves that an earlier one left are cleared.
    ///
    /// # Errors
    /// [`KioskError::Told`] when another kiosk has it.
    pub fn alone(&self) -> Result<Alone, KioskError> {
        let path = self.0.join("kiosk.lock");
        let mut options = std::fs::File::options();
        let file = options.create(true).append(true).open(&path);
        let lock = match file {
            Ok(file) => file,
            // A folder that cannot be written is nobody's alone, and nobody can harm it.
            Err(why) if is_closed(&why) => return Ok(Alone { _lock: None }),
            Err(why) => return Err(KioskError::File { path, why }),
        };
        // A process that is being started holds for a moment what its parent has open.
        let mut tried = 0;
        let got = loop {
            match lock.try_lock() {
                Err(TryLockError::WouldBlock) if tried < LOCK_TRIES => {
                    tried += 1;
                    std::thread::sleep(LOCK_WAIT);
                }
                got => break got,
            }
        };
        match got {
            Ok(()) => {
                journal::clear_halves(&self.0);
                Ok(Alone { _lock: Some(lock) })
            }
            Err(TryLockError::WouldBlock) => Err(KioskError::Told(words!(
                k::ANOTHER_KIOSK_RUNS_ON_CLOSE,
                self.0.display().to_string()
            ))),
            // A file system without locks: as before there were any.
            Err(TryLockError::Error(_)) => Ok(Alone { _lock: Some(lock) }),
        }
    }

    /// The record's file.
    #[must_use]
    pub fn record(&self) -> PathBuf {
        self.0.join("record.sqlite")
    }

    /// The text of one of the gym's files; `None` when it is not there.
    ///
    /// # Errors
    /// [`KioskError::File`] when it is there but cannot be read as UTF-8 text.
    pub fn text(&self, name: &str) -> Result<Option<String>, KioskError> {
        let path = self.0.join(name);
        match std::fs::read_to_string(&path) {
            Ok(text) => Ok(Some(text)),
            Err(why) if why.kind() == std::io::ErrorKind::NotFound => Ok(None),
            Err(why) => Err(KioskError::File { path, why }),
        }
    }

    /// Where plans lie.
    #[must_use]
    pub fn plans(&self) -> PathBuf {
        self.0.join("plans")
    }

    /// Replaces one of the gym's files, whole: a cut at any instant leaves the old or the new.
    ///
    /// # Errors
    /// [`KioskError::File`] when it cannot be written.
    pub fn replace(&self, name: &str, text: &str) -> Result<(), KioskError> {
        use std::io::Write as _;
        let (path, new) = (self.0.join(name), self.0.join(format!("{name}.new")));
        let write = || {
            let mut file = std::fs::File::create(&new)?;
            file.write_all(text.as_bytes())?;
            file.sync_all()?;
            std::fs::rename(&new, &path)?;
            std::fs::File::open(&self.0)?.sync_all()
        };
        write().map_err(KioskError::file(&path))
    }

    /// Keeps a copy of one of the gym's files beside it, before it becomes another.
    ///
    /// # Errors
    /// [`KioskError::File`] when it cannot be written.
    pub fn keep_before(&self, name: &str) -> Result<(), KioskError> {
        match self.text(name)? {
            Some(text) => self.replace(&format!("{name}.before"), &text),
            None => Ok(()),
        }
    }

    /// Writes the demo gym's files, those that are not there, each whole or not at all.
    ///
    /// # Errors
    /// [`KioskError::File`] when one cannot be written.
    pub fn lay_demo(&self) -> Result<(), KioskError> {
        for (name, text) in DEMO {
            if !self.0.join(name).exists() {
                self.replace(name, text)?;
            }
        }
        Ok(())
    }
}
