//! What a lifter is doing just now.
use crate::language::p;
use crate::scene::Scene;
use crate::words;
use domain::state::LiftRun;

/// How it stands with a lifter.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Pace {
    /// Has not begun.
    Fresh,
    /// Rests; the time left is shown.
    Resting,
    /// Rested: their turn may come.
    Ready,
    /// The back moved; a decision is open.
    Stopped,
    /// Not there.
    Away,
    /// Done for today.
    Done,
    /// Something must be mended first (no plan, no load).
    Blocked,
}

/// What the lifter of `run` is doing, and the word for it.
pub(crate) fn pace(scene: &Scene<'_>, run: &LiftRun) -> (Pace, String) {
    let say = scene.language();
    if run.is_over() {
        return (Pace::Done, say.say(p::DONE));
    }
    if run.awaits_decision() {
        return (Pace::Stopped, say.say(p::BACK_MOVED));
    }
    if run.attendance.away {
        return (Pace::Away, say.say(p::AWAY));
    }
    match scene.rest_left(run) {
        Some(left) => (Pace::Resting, words::minutes(left)),
        None => (Pace::Ready, say.say(p::READY)),
    }
}
