//! Why somebody was not signed in, and what they are told.
use crate::words as w;
use view::Language;

/// Why somebody was not signed in.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum NotIn {
    /// No code is set.
    NoCode,
    /// The code was wrong.
    Wrong,
    /// Too many were wrong; seconds to wait.
    Wait(u64),
    /// The code's file, or the random source, failed.
    Failed,
}

impl NotIn {
    /// What happened and what to do.
    pub(crate) fn words(self, say: Language) -> String {
        match self {
            Self::NoCode => say.say(w::NO_CODE),
            Self::Wrong => say.say(w::WRONG),
            Self::Wait(s) => say.fill(w::WAIT, &[&s.to_string()]),
            Self::Failed => say.say(w::NOT_JUDGED),
        }
    }
}
