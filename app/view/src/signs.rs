//! What stands beside the screen: who is up (for a lamp), which hole (for lights along the
//! upright), who waits or rests (so that a buzzer can call when that changes).
//!
//! Refuses: devices, and what the screen does not say as well.
use crate::scene::Scene;
use crate::stage::{Due, Stage};
use domain::LiftNo;
use domain::attendance::Attendance;
use domain::state::LiftRun;
use std::collections::BTreeMap;

/// A rest is nearly over when so much of it is left, seconds: time to chalk up and walk over. Common
/// practice, no source.
pub const NEARLY_S: u32 = 15;

/// How it stands with a lift under way.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Standing {
    /// Rested, and nobody comes before.
    Up,
    /// Rested; others come before.
    Waiting,
    /// Still has to rest.
    Resting,
    /// Rests for [`NEARLY_S`] more at most.
    NearlyRested,
    /// Was called and did not come.
    Missed,
    /// The back moved; a decision is open.
    Stopped,
}

/// All of it.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct Signs {
    /// Lifts of today under way.
    pub lifts: BTreeMap<LiftNo, Standing>,
    /// Rack and hole of the lift that is shown or, where none is, of the first that is up.
    pub hole: Option<(String, u16)>,
}

impl Signs {
    /// Whether somebody is up.
    #[must_use]
    pub fn somebody_is_up(&self) -> bool {
        self.holds(Standing::Up)
    }

    /// Whether it stands so with anybody.
    #[must_use]
    pub fn holds(&self, standing: Standing) -> bool {
        self.lifts.values().any(|now| *now == standing)
    }
}

/// Whether somebody was called, did not come, and others go before them since. Called again they are
/// up like everybody.
const fn is_missed(attendance: &Attendance) -> bool {
    attendance.passes > 0 && (attendance.deferred || attendance.away)
}

/// The signs of now.
#[must_use]
pub fn signs(stage: &Stage, scene: &Scene<'_>) -> Signs {
    // Whoever goes before the rest is over, or out of turn, is up all the same.
    let (shown, at_bar) = match stage.due(scene) {
        Due::Bar(run, _) | Due::Pad(run, ..) => (Some(run), Some(run.no)),
        Due::SetUp(run) | Due::Rest(run, ..) | Due::Settle(run, _) => (Some(run), None),
        Due::All | Due::Aside | Due::Floor | Due::Fresh(_) | Due::Stop(_) | Due::End(_) => {
            (None, None)
        }
    };
    let standing = |run: &LiftRun| {
        if run.awaits_decision() {
            Standing::Stopped
        } else if at_bar == Some(run.no) {
            Standing::Up
        } else if is_missed(&run.attendance) {
            Standing::Missed
        } else if let Some(left) = scene.rest_left(run) {
            if left > NEARLY_S {
                Standing::Resting
            } else {
                Standing::NearlyRested
            }
        } else if scene.first_before(run).is_some() {
            Standing::Waiting
        } else {
            Standing::Up
        }
    };
    let open = scene.runs().filter(|run| !run.is_over());
    let lifts: BTreeMap<LiftNo, Standing> = open.map(|run| (run.no, standing(run))).collect();
    let next = |run: &LiftRun| run.next_rung().unwrap_or(0);
    let first_up = || {
        let up = lifts.iter().filter(|(_, now)| **now == Standing::Up);
        let mut runs = up.filter_map(|(no, _)| scene.state.lifts.get(no));
        runs.find(|run| run.sheet.pin_hole(next(run)).is_some())
    };
    let hole = shown.or_else(first_up).and_then(|run| {
        let hole = run.sheet.pin_hole(next(run))?;
        Some((run.sheet.rack.clone(), hole))
    });
    Signs { lifts, hole }
}

#[cfg(test)]
mod tests {
    use super::is_missed;
    use domain::attendance::Attendance;

    #[test]
    fn whoever_was_passed_over_is_missed_until_called_again() {
        let passed = Attendance {
            passes: 1,
            deferred: true,
            ..Attendance::default()
        };
        let gone = Attendance {
            passes: 2,
            away: true,
            ..Attendance::default()
        };
        assert!(is_missed(&passed) && is_missed(&gone));
        // Somebody else has lifted, and it is their turn once more.
        let again = Attendance {
            deferred: false,
            ..passed
        };
        assert!(!is_missed(&again));
        // Others were let first by their own word.
        let put_off = Attendance {
            passes: 0,
            ..passed
        };
        assert!(!is_missed(&put_off));
    }
}
