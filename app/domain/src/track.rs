//! A track: the sets of one lift whose load follows from one another.
//!
//! Refuses: long names; a sheet and each outing carry one.
use core::fmt;

/// Sets of one lift with the same reps, and by name where the plan gives one: heavy, light and
/// medium days of one lift do not disturb one another.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub struct Track {
    /// Reps of a set, the least of a range.
    pub reps: u8,
    /// The name; `None` where the plan gives none.
    pub name: Option<TrackName>,
}

impl Track {
    /// The one without a name.
    #[must_use]
    pub const fn of_reps(reps: u8) -> Self {
        Self { reps, name: None }
    }
}

/// What a coach calls a track: "heavy".
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub struct TrackName {
    /// UTF-8, filled up with zeros.
    bytes: [u8; Self::LONGEST],
    length: u8,
}

impl TrackName {
    /// Bytes of the longest name.
    pub const LONGEST: usize = 24;

    /// `None` for an empty name, and for one of over [`Self::LONGEST`] bytes.
    #[must_use]
    pub fn new(name: &str) -> Option<Self> {
        let mut bytes = [0; Self::LONGEST];
        bytes
            .get_mut(..name.len())?
            .copy_from_slice(name.as_bytes());
        let length = u8::try_from(name.len()).ok().filter(|length| *length > 0)?;
        Some(Self { bytes, length })
    }

    /// As it was given.
    #[must_use]
    pub fn as_str(&self) -> &str {
        let name = self.bytes.get(..usize::from(self.length));
        name.and_then(|name| core::str::from_utf8(name).ok())
            .unwrap_or_default()
    }
}

impl fmt::Debug for TrackName {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        fmt::Debug::fmt(self.as_str(), f)
    }
}

impl fmt::Display for TrackName {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(self.as_str())
    }
}
