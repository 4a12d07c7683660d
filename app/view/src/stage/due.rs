//! Which screen is due, from where the eye is and what stands.
use super::{PadOpen, Stage};
use crate::scene::Scene;
use domain::state::LiftRun;

/// Which screen is due for a lifter.
#[derive(Debug, Clone)]
pub(crate) enum Due<'a> {
    /// All lifters.
    All,
    /// The turns of all lifters.
    Floor,
    /// Something beside the ladder.
    Aside,
    /// The set-up before a lift; `None` when there is nothing to lift.
    Fresh(Option<&'a domain::day::DayEntry>),
    /// The set-up in mid-lift.
    SetUp(&'a LiftRun),
    /// A pad, for this rung; none where the back moved and nobody has said how to go on.
    Pad(&'a LiftRun, Option<usize>, PadOpen),
    /// A decision after a moved back.
    Stop(&'a LiftRun),
    /// The work loads that may be chosen.
    Settle(&'a LiftRun, usize),
    /// Rest before this rung, seconds left; 0 for somebody rested who waits for their turn.
    Rest(&'a LiftRun, usize, u32),
    /// At the bar.
    Bar(&'a LiftRun, usize),
    /// The end.
    End(&'a LiftRun),
}

impl Stage {
    /// The screen that is due.
    pub(crate) fn due<'a>(&self, scene: &Scene<'a>) -> Due<'a> {
        if self.aside.is_some() {
            return Due::Aside;
        }
        let Some(lifter) = &self.lifter else {
            return if self.floor { Due::Floor } else { Due::All };
        };
        let Some(run) = scene.run(lifter) else {
            return Due::Fresh(scene.fresh(lifter));
        };
        if let (Some(PadOpen::Effort), Some(done)) = (&self.pad, run.effort_asked()) {
            return Due::Pad(run, Some(done), PadOpen::Effort);
        }
        let Some(rung) = run.next_rung() else {
            let fresh = scene.fresh(lifter);
            return match fresh {
                Some(_) if self.seen_end == Some(run.no) => Due::Fresh(fresh),
                _ => Due::End(run),
            };
        };
        let stopped = run.awaits_decision();
        if let Some(pad) = &self.pad
            && (!stopped || matches!(pad, PadOpen::Turn))
            && !matches!(pad, PadOpen::Effort)
        {
            return Due::Pad(run, (!stopped).then_some(rung), pad.clone());
        }
        if stopped {
            return Due::Stop(run);
        }
        if self.setup_again {
            return Due::SetUp(run);
        }
        if self.settles(scene, run) {
            return Due::Settle(run, rung);
        }
        let early = run.attendance.claimed || self.early == Some((run.no, rung));
        if early && scene.is_turn(run) {
            return Due::Bar(run, rung);
        }
        match scene.rest_left(run) {
            None if scene.is_turn(run) => Due::Bar(run, rung),
            left => Due::Rest(run, rung, left.unwrap_or(0)),
        }
    }

    /// Whether the work loads that may be chosen are shown: during the rest before the first work
    /// set until somebody chooses or keeps the plan, and whenever they are asked for.
    fn settles(&self, scene: &Scene<'_>, run: &LiftRun) -> bool {
        let shown = match self.settle {
            Some((no, open)) if no == run.no => open,
            Some(_) | None => {
                let goes = run.attendance.claimed || self.early.is_some();
                !goes && scene.rest_left(run).is_some()
            }
        };
        shown && scene.choices(run).is_some()
    }
}
