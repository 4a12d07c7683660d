//! How the sets of a group are done, where the plan says so: place, gear, tempo, pause.
//!
//! What it leaves out is the lift's and the lifter's own.
use crate::length::Length;
use crate::lift::Grip;
use core::fmt;

/// How sets are done.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub struct Manner {
    /// Hole of the pins, or of the hooks, from 1; no mats are stood on then.
    pub hole: Option<u16>,
    /// What the plates stand on, where the lift starts on the floor; 0 for the floor itself.
    pub block: Option<Length>,
    /// How fast a rep goes.
    pub tempo: Option<Tempo>,
    /// Seconds that each rep is paused, 1 to [`Manner::PAUSE_MOST_S`].
    pub pause_s: Option<u8>,
    /// Whether a belt is worn.
    pub belt: Option<bool>,
    /// Whether straps are worn.
    pub straps: Option<bool>,
    /// How the bar is held.
    pub grip: Option<Grip>,
}

impl Manner {
    /// The longest pause within a rep; what lasts longer is a rest. Common practice, no source.
    pub const PAUSE_MOST_S: u8 = 14;

    /// Whether it says nothing.
    #[must_use]
    pub fn is_own(&self) -> bool {
        *self == Self::default()
    }

    /// The same with what it leaves out taken from another.
    #[must_use]
    pub fn or(self, other: Self) -> Self {
        Self {
            hole: self.hole.or(other.hole),
            block: self.block.or(other.block),
            tempo: self.tempo.or(other.tempo),
            pause_s: self.pause_s.or(other.pause_s),
            belt: self.belt.or(other.belt),
            straps: self.straps.or(other.straps),
            grip: self.grip.or(other.grip),
        }
    }

    /// What both say otherwise than each other: the first of its words.
    #[must_use]
    pub fn clash(&self, other: &Self) -> Option<&'static str> {
        fn differ<T: PartialEq>(one: Option<T>, two: Option<T>) -> bool {
            matches!((one, two), (Some(one), Some(two)) if one != two)
        }
        let all = [
            (differ(self.hole, other.hole), "hole"),
            (differ(self.block, other.block), "blocks"),
            (differ(self.tempo, other.tempo), "tempo"),
            (differ(self.pause_s, other.pause_s), "pause"),
            (differ(self.belt, other.belt), "belt"),
            (differ(self.straps, other.straps), "straps"),
            (differ(self.grip, other.grip), "grip"),
        ];
        all.into_iter().find(|(is, _)| *is).map(|(_, word)| word)
    }
}

/// Seconds of the four parts of a rep, as coaches write them: lowering, the bottom, raising, the
/// top. Common practice, no source.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Tempo {
    /// Lowering, 0 to 9.
    pub lower: u8,
    /// At the bottom, 0 to 9.
    pub bottom: u8,
    /// Raising, 0 to 9; `None` for as fast as it goes, written X.
    pub raise: Option<u8>,
    /// At the top, 0 to 9.
    pub top: u8,
}

/// "3-0-1-0", "3-0-X-0".
impl fmt::Display for Tempo {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{}-{}-", self.lower, self.bottom)?;
        match self.raise {
            Some(raise) => write!(f, "{raise}")?,
            None => f.write_str("X")?,
        }
        write!(f, "-{}", self.top)
    }
}
