//! What can go wrong in the shell, in sentences that say what to do. Refuses: internals; those
//! go to the log.
use std::path::PathBuf;

/// A failure of a command or of the kiosk's start.
#[derive(Debug, thiserror::Error)]
pub enum KioskError {
    /// A file or folder could not be read or written.
    #[error("{path}: {why}; {}", advice(.why))]
    File {
        /// Which.
        path: PathBuf,
        /// What the system said.
        why: std::io::Error,
    },
    /// There is no home folder to keep state in.
    #[error("no home folder is set; choose a data folder with --data DIR")]
    NoHome,
    /// Faults in files, each a line.
    #[error("{}", lines(.0))]
    Faults(Vec<plan::Fault>),
    /// The journal.
    #[error(transparent)]
    Journal(#[from] journal::JournalError),
    /// The record.
    #[error(transparent)]
    Record(#[from] journal::RecordError),
    /// A copy of the journal.
    #[error(transparent)]
    Backup(#[from] journal::BackupError),
    /// The coach's code.
    #[error(transparent)]
    Code(#[from] share::CodeError),
    /// The core refused.
    #[error("{0}")]
    Refused(domain::Refusal),
    /// Something still needs what was to be taken out of the gym.
    #[error("{}", view::Language::English.need(.0))]
    Needed(domain::needs::Need),
    /// The screen could not be drawn.
    #[error("the picture could not be drawn: {0}")]
    Picture(String),
    /// Something went wrong in a way that has its own words, in any language.
    #[error("{0}")]
    Told(plan::Words),
    /// Something in the command was off.
    #[error("{0}")]
    Usage(String),
}

impl KioskError {
    /// Wraps a failure of the file system with the path.
    pub fn file(path: impl Into<PathBuf>) -> impl FnOnce(std::io::Error) -> Self {
        let path = path.into();
        move |why| Self::File { path, why }
    }
}

/// What to do when the system refuses a file.
fn advice(why: &std::io::Error) -> &'static str {
    if why.kind() == std::io::ErrorKind::StorageFull {
        "free some space and try again"
    } else {
        "check that it exists and that you may use it"
    }
}

fn lines(faults: &[plan::Fault]) -> String {
    faults
        .iter()
        .map(ToString::to_string)
        .collect::<Vec<_>>()
        .join("\n")
}
