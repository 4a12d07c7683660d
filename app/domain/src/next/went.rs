//! How an outing went.

/// How an outing went.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Went {
    /// All work sets, all reps, the back held.
    Well,
    /// A work set fell short with the back held.
    Short {
        /// The worst one, from 1.
        set: u8,
        /// Its reps.
        reps: u8,
    },
    /// The back moved in a work set.
    Moved {
        /// The one in which it moved earliest, from 1.
        set: u8,
        /// The rep, from 1.
        rep: u8,
    },
    /// The back moved in a warm-up, and the work sets were left out.
    MovedWarm,
    /// Some work sets were left out; those that were done were clean.
    Cut {
        /// How many were done.
        done: u8,
    },
}

impl Went {
    /// Whether the back moved.
    #[must_use]
    pub const fn moved(self) -> bool {
        matches!(self, Self::Moved { .. } | Self::MovedWarm)
    }

    /// Whether anything went wrong.
    #[must_use]
    pub const fn wrong(self) -> bool {
        self.moved() || matches!(self, Self::Short { .. })
    }
}
