//! The steady clock: moments that only go on, whatever is done to the wall clock.
//!
//! Moments of events, rests and orders of turns are steady. Within one boot of the machine they
//! follow its uptime from an anchor in the journal, so that a restart of the program changes
//! nothing; over boots they never go behind the last event. What the wall clock was ahead is kept
//! beside them, so that times of day can be told.
use crate::moment::Moment;
use alloc::vec::Vec;

/// A wall clock before this moment, 2026-01-01T00:00:00Z, was never set: this program is younger.
/// A machine without a battery for its clock begins in 1970.
pub const KNOWN_FROM: Moment = Moment(1_767_225_600_000);

/// How far a wall clock may be from what is known of it before it counts as set anew, milliseconds.
pub const SET_BEYOND_MS: i64 = 2_000;

/// A machine that was off for longer than this begins with the wall clock's own time, milliseconds:
/// no rest goes on over it.
const LONG_OFF_MS: i64 = 3 * 3_600_000;

/// Boots whose anchors are kept: machines that share a journal, with room to spare.
const ANCHORS_MAX: usize = 8;

/// One start of a machine, by the 128-bit number that its system gave it.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct BootId(pub u128);

/// One look at a machine's clocks.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Reading {
    /// Which boot.
    pub boot: BootId,
    /// Milliseconds since that boot; nobody can set them.
    pub up_ms: i64,
    /// What the wall clock says, in UTC.
    pub wall: Moment,
}

impl Reading {
    /// Whether the wall clock was set at all.
    #[must_use]
    pub fn is_known(self) -> bool {
        self.wall >= KNOWN_FROM
    }
}

/// A steady moment of one boot, from which its others follow.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Anchor {
    /// Which boot.
    pub boot: BootId,
    /// Milliseconds since that boot at the moment.
    pub up_ms: i64,
    /// The moment.
    pub moment: Moment,
}

impl Anchor {
    /// The moment at so many milliseconds since the same boot.
    #[must_use]
    pub const fn moment_at(self, up_ms: i64) -> Moment {
        self.moment.plus_ms(up_ms.saturating_sub(self.up_ms))
    }
}

/// What the journal knows of its clocks.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct Times {
    /// How far the wall clock was ahead of the steady one when last seen, milliseconds.
    pub offset_ms: i64,
    /// Since when the time of day is a guess: the boot began with a wall clock that was never set.
    pub unknown_since: Option<Moment>,
    /// The latest boots' anchors, oldest first.
    pub anchors: Vec<Anchor>,
    /// When the last event was.
    pub last: Option<Moment>,
    /// When the boot that wrote last began.
    pub boot_began: Option<Moment>,
    /// Whether nothing says how long the machine was off before this boot.
    pub off_unknown: bool,
    /// How long it was off beyond what the steady clock counted, as the wall clock told later.
    pub off_ms: i64,
}

impl Times {
    /// The anchor for a machine whose clocks read so: the journal's own where it is the same boot,
    /// else one that goes on from the last event.
    #[must_use]
    pub fn anchor(&self, reading: Reading) -> Anchor {
        let kept = self.anchors.iter().find(|own| own.boot == reading.boot);
        let goes_on = |own: &&Anchor| {
            self.last
                .is_none_or(|last| own.moment_at(reading.up_ms) >= last)
        };
        if let Some(own) = kept.filter(goes_on) {
            return *own;
        }
        Anchor {
            boot: reading.boot,
            up_ms: reading.up_ms,
            moment: self.moment_of_new(reading, kept.is_some()),
        }
    }

    /// Whether the journal has that anchor.
    #[must_use]
    pub fn has(&self, anchor: Anchor) -> bool {
        self.anchors.contains(&anchor)
    }

    fn moment_of_new(&self, reading: Reading, same_boot: bool) -> Moment {
        let Some(last) = self.last else {
            return reading.wall;
        };
        let next = last.plus_ms(1);
        if same_boot || !reading.is_known() {
            return next;
        }
        // By the wall clock as it went before, so that a short power cut is as long as it was.
        let as_before = reading.wall.plus_ms(self.offset_ms.saturating_neg());
        if as_before.since(last) < LONG_OFF_MS {
            as_before.max(next)
        } else {
            reading.wall.max(next)
        }
    }

    /// How far the wall clock is ahead, if the journal should be told; `now` is the steady moment
    /// of the reading, and `noted_ms` what this machine saw last.
    #[must_use]
    pub fn seen_set(&self, reading: Reading, now: Moment, noted_ms: i64) -> Option<i64> {
        let offset_ms = reading.wall.since(now);
        let differs = offset_ms.saturating_sub(noted_ms).saturating_abs() > SET_BEYOND_MS;
        (reading.is_known() && (differs || self.unknown_since.is_some())).then_some(offset_ms)
    }

    /// How long ago something was entered, milliseconds: by the steady clock, with the time that
    /// the machine was off where that is known. A moment that lies ahead, of an older journal or of
    /// another machine, is as far away as it lies ahead.
    #[must_use]
    pub fn ago_ms(&self, at: Moment, now: Moment) -> i64 {
        let before_boot = self.boot_began.is_some_and(|began| at < began);
        let off = if before_boot { self.off_ms } else { 0 };
        now.since(at).saturating_abs().saturating_add(off)
    }

    /// Whether `at` may be longer ago than `most_ms`: it is, or the machine was off since for nobody
    /// knows how long.
    #[must_use]
    pub fn may_be_long_ago(&self, at: Moment, now: Moment, most_ms: i64) -> bool {
        let before_boot = self.boot_began.is_some_and(|began| at < began);
        (before_boot && self.off_unknown) || self.ago_ms(at, now) > most_ms
    }

    /// The moment of the last event.
    #[must_use]
    pub const fn last(&self) -> Option<Moment> {
        self.last
    }

    /// What the wall clock showed at a steady moment, as far as is known now, in UTC.
    #[must_use]
    pub const fn told(&self, at: Moment) -> Moment {
        at.plus_ms(self.offset_ms)
    }

    pub(crate) fn anchored(
        &mut self,
        (boot, up_ms): (BootId, i64),
        moment: Moment,
        offset_ms: Option<i64>,
    ) {
        let anchor = Anchor {
            boot,
            up_ms,
            moment,
        };
        let same_boot = self.anchors.iter().any(|own| own.boot == anchor.boot);
        self.anchors.retain(|own| own.boot != anchor.boot);
        self.anchors.push(anchor);
        let surplus = self.anchors.len().saturating_sub(ANCHORS_MAX);
        self.anchors.drain(..surplus);
        if !same_boot {
            let moved_up = self
                .last
                .is_some_and(|last| anchor.moment <= last.plus_ms(1));
            self.boot_began = Some(anchor.moment);
            self.off_unknown = offset_ms.is_none() || moved_up;
            self.off_ms = 0;
            self.unknown_since = offset_ms.is_none().then_some(anchor.moment);
        }
        self.offset_ms = offset_ms.unwrap_or(self.offset_ms);
    }

    pub(crate) fn set(&mut self, offset_ms: i64) {
        if self.off_unknown {
            self.off_unknown = false;
            self.off_ms = offset_ms.saturating_sub(self.offset_ms).max(0);
        }
        self.offset_ms = offset_ms;
        self.unknown_since = None;
    }

    pub(crate) fn passed(&mut self, at: Moment) {
        self.last = Some(at);
    }
}
