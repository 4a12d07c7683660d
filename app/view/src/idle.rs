//! What a screen does that nobody touches: back to where all are shown, then dark, then moved by a
//! little every minute.
//!
//! Time comes in as milliseconds of a clock that never goes back. Refuses: touching what is under
//! way; only where the eye is moves.
use crate::aside::Aside;
use crate::scene::Scene;
use crate::stage::{Due, Stage};
use domain::state::LiftRun;

/// How long is waited for a touch.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct IdleTimes {
    /// Before all lifters are shown, milliseconds; `None` for never.
    pub leaves_after: Option<u64>,
    /// Before it is dark, milliseconds; `None` for never.
    pub sleeps_after: Option<u64>,
}

/// Since when nobody has touched it.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq)]
pub struct Idle {
    touched: u64,
    woken: u64,
}

/// Between two moves of a dark screen, milliseconds.
const MOVE_MS: u64 = 60_000;

/// Where a dark screen stands, one after another: no pixel shows the same for long.
const SHIFTS: [(i8, i8); 9] = [
    (0, 0),
    (3, 0),
    (3, 3),
    (0, 3),
    (-3, 3),
    (-3, 0),
    (-3, -3),
    (0, -3),
    (3, -3),
];

impl Idle {
    /// Somebody touched it, or stands before it because they were called.
    pub fn touch(&mut self, now: u64) {
        (self.touched, self.woken) = (now, now);
    }

    /// Somebody else was called: it is not dark for that.
    pub fn call(&mut self, now: u64) {
        self.woken = now;
    }

    /// Whether it is time to show all lifters.
    #[must_use]
    pub fn leaves(&self, now: u64, times: &IdleTimes) -> bool {
        let since = now.saturating_sub(self.touched);
        times.leaves_after.is_some_and(|after| since >= after)
    }

    /// Whether it is dark.
    #[must_use]
    pub fn is_asleep(&self, now: u64, times: &IdleTimes) -> bool {
        self.asleep_for(now, times).is_some()
    }

    /// How far everything is moved while it is dark: to the right and down, pixels of the
    /// reference panel.
    #[must_use]
    pub fn shift(&self, now: u64, times: &IdleTimes) -> (i8, i8) {
        let Some(asleep) = self.asleep_for(now, times) else {
            return (0, 0);
        };
        let count = u64::try_from(SHIFTS.len()).unwrap_or(1);
        let at = usize::try_from(asleep / MOVE_MS % count).unwrap_or(0);
        SHIFTS.get(at).copied().unwrap_or_default()
    }

    fn asleep_for(&self, now: u64, times: &IdleTimes) -> Option<u64> {
        let since = now.saturating_sub(self.woken.max(self.touched));
        since.checked_sub(times.sleeps_after?)
    }
}

impl Stage {
    /// Where the eye goes after a time without a touch: to the floor, or to all lifters when
    /// nobody is under way. `None` to stay: there already, on a meet day, or before the rest of
    /// the only lifter under way.
    #[must_use]
    pub fn home(&self, scene: &Scene<'_>) -> Option<Self> {
        let under_way = || scene.runs().filter(|run| !run.is_over());
        let home = Self {
            floor: under_way().next().is_some(),
            ..Self::default()
        };
        let alone = |run: &LiftRun| under_way().all(|other| other.no == run.no);
        let stays = match self.due(scene) {
            Due::Rest(run, ..) | Due::Settle(run, _) => {
                alone(run) && scene.rest_left(run).is_some()
            }
            Due::Aside => matches!(
                self.aside,
                Some(Aside::Meet | Aside::Card(_) | Aside::CardTyping(_))
            ),
            Due::All
            | Due::Floor
            | Due::Fresh(_)
            | Due::SetUp(_)
            | Due::Pad(..)
            | Due::Stop(_)
            | Due::Bar(..)
            | Due::End(_) => false,
        };
        (!stays && *self != home).then_some(home)
    }
}
