//! Next time: the load that is due, why, and the outings that it follows from.
//!
//! Refuses: deciding. The rules of the core do, or the coach.
use crate::draw::RowState;
use crate::language::{Language, p};
use crate::scene::Scene;
use crate::trail::{Point, Scale, Trail, point};
use domain::next::outings::outings;
use domain::next::{Due, Why};
use domain::state::LiftRun;

/// What the end of a lift shows of it.
#[derive(Debug, Clone, PartialEq)]
pub struct Next {
    /// "182.5 kg × 5", "3 sets of 182.5 kg × 5".
    pub work: String,
    /// "raise", "repeat", "drop", "reset", "ease": which way, for the look and in words.
    pub verdict: String,
    /// Why, in one sentence beside the load: "up 2.5 kg: all reps with the back held".
    pub reason: String,
    /// Whether the coach ruled it.
    pub by_coach: bool,
}

/// Outings shown beside what is due.
const PAST_MAX: usize = 6;

/// What is due after `run`; `None` as long as nothing was decided.
pub(crate) fn next(scene: &Scene<'_>, run: &LiftRun) -> Option<Next> {
    let say = scene.language();
    let due = run.next.as_ref()?.due();
    Some(Next {
        work: work(say, run, &due),
        verdict: say.verdict(due.decision.verdict),
        reason: say.due_beside(&due, run.sheet.unit),
        by_coach: due.decision.why == Why::Coach,
    })
}

/// "3 sets of 182.5 kg × 5".
fn work(say: Language, run: &LiftRun, due: &Due) -> String {
    let decision = &due.decision;
    let one = say.set(decision.load, run.sheet.unit, decision.reps);
    match decision.sets {
        1 => one,
        sets => say.fill(p::SETS_OF, &[&sets.to_string(), &one]),
    }
}

/// The last outings with as many reps, oldest first, this one last; then what is due. Nothing as
/// long as nothing was decided.
pub(crate) fn next_trail(scene: &Scene<'_>, run: &LiftRun) -> Trail {
    let say = scene.language();
    let sheet = &run.sheet;
    let tomorrow = sheet.date.succ_opt();
    let (Some(next), Some(tomorrow)) = (run.next.as_ref(), tomorrow) else {
        return Trail::default();
    };
    let decision = next.due().decision;
    let mut past = outings(scene.state, &sheet.lifter, &sheet.lift, tomorrow);
    past.retain(|o| {
        o.reps == decision.reps && o.track == sheet.track && (o.date, o.no) <= (sheet.date, run.no)
    });
    let past = &past[past.len().saturating_sub(PAST_MAX)..];
    let scale = Scale::of(past.iter().map(|o| o.load).chain([decision.load]));
    let due = Point {
        date: say.say(p::NEXT_SESSION),
        load: say.mass_number(decision.load, sheet.unit),
        height: scale.height(decision.load),
        word: String::new(),
        state: RowState::Ahead,
    };
    let points = past.iter().map(|o| point(say, o, sheet.unit, scale));
    Trail {
        points: points.chain([due]).collect(),
        ..Trail::default()
    }
}
