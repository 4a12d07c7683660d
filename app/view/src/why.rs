//! What stands behind the end of a lift, one thing at a time: what is due next time, advice on
//! splitting the deadlift, estimates of the single.
//!
//! Refuses: deciding. The rules of the core do, or the coach.
use crate::language::{Language, c};
use crate::next::{next, next_trail};
use crate::scene::Scene;
use crate::single::{Estimate, single_face};
use crate::split::split_face;
use crate::trail::Trail;
use domain::event::LiftNo;
pub use domain::shown::WhyPart as Part;
use domain::state::LiftRun;

/// What it shows; what is empty is left out.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Why {
    /// "next time", "when to split", "the single".
    pub title: String,
    /// Large: "505 lb × 5", "530 to 560 lb".
    pub headline: String,
    /// Why, in one sentence.
    pub sentence: String,
    /// Outings that it follows from.
    pub trail: Trail,
    /// What each equation gives.
    pub estimates: Vec<Estimate>,
    /// Title of `back`, or empty.
    pub back_title: String,
    /// The way back before a test.
    pub back: Vec<String>,
    /// What must be known with it.
    pub caution: String,
    /// The main button: the next thing, or empty.
    pub main: String,
}

/// What there is to tell after a lift, advice first.
pub(crate) fn parts(scene: &Scene<'_>, run: &LiftRun) -> Vec<Part> {
    let say = scene.language();
    let mut parts = Vec::new();
    if scene.split(run).is_some() {
        parts.push(Part::Split);
    }
    if run.next.is_some() {
        parts.push(Part::Next);
    }
    if single_face(say, scene.lift(&run.sheet.lift), run).is_some() {
        parts.push(Part::Single);
    }
    parts
}

/// The part after `part`, round and round; `None` when there is no other.
pub(crate) fn part_after(scene: &Scene<'_>, no: LiftNo, part: Part) -> Option<Part> {
    let parts = parts(scene, scene.state.lifts.get(&no)?);
    let at = parts.iter().position(|one| *one == part);
    let next = at.map_or(0, |at| (at + 1) % parts.len().max(1));
    parts.get(next).copied().filter(|one| *one != part)
}

/// The screen of one part; empty when the lift was taken back meanwhile.
pub(crate) fn why(scene: &Scene<'_>, no: LiftNo, part: Part) -> Why {
    let Some(run) = scene.state.lifts.get(&no) else {
        return Why::default();
    };
    let say = scene.language();
    let told = match part {
        Part::Next => told_next(scene, run),
        Part::Split => told_split(scene, run),
        Part::Single => told_single(scene, run),
    };
    let main = part_after(scene, no, part).map(|part| title(say, part));
    Why {
        title: title(say, part),
        main: main.unwrap_or_default(),
        ..told.unwrap_or_default()
    }
}

fn title(say: Language, part: Part) -> String {
    say.say(match part {
        Part::Next => c::NEXT_TIME_TITLE,
        Part::Split => c::SPLIT_TITLE,
        Part::Single => c::SINGLE_TITLE,
    })
}

fn told_next(scene: &Scene<'_>, run: &LiftRun) -> Option<Why> {
    let next = next(scene, run)?;
    Some(Why {
        headline: next.work,
        sentence: next.reason,
        trail: next_trail(scene, run),
        ..Why::default()
    })
}

fn told_split(scene: &Scene<'_>, run: &LiftRun) -> Option<Why> {
    let say = scene.language();
    let face = split_face(say, &scene.split(run)?, run.sheet.unit);
    Some(Why {
        sentence: face.sentence,
        trail: face.trail,
        back_title: if face.back.is_empty() {
            String::new()
        } else {
            say.say(c::BACK_TITLE)
        },
        back: face.back,
        ..Why::default()
    })
}

fn told_single(scene: &Scene<'_>, run: &LiftRun) -> Option<Why> {
    let face = single_face(scene.language(), scene.lift(&run.sheet.lift), run)?;
    Some(Why {
        headline: face.spread,
        sentence: face.how,
        estimates: face.each,
        caution: face.caution,
        ..Why::default()
    })
}
