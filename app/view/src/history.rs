//! A lifter's history of one lift: the work load of each session, reps made, back held or moved.
//!
//! Refuses: judging; the next load is reckoned elsewhere and only told here.
use crate::draw::RowState;
use crate::drawings::share;
use crate::language::{Language, p};
use crate::scene::Scene;
use chrono::NaiveDate;
use domain::next::outing::{Outing, Went};
use domain::next::outings::outings;
use domain::state::LiftRun;
use domain::{LiftNo, Mass, MassUnit};

/// What it shows.
#[derive(Debug, Clone, PartialEq)]
pub struct History {
    /// "rack pull".
    pub lift: String,
    /// "kg".
    pub unit: String,
    /// Sessions, oldest first, the latest that fit; then what is due next time, in the look of what is
    /// ahead.
    pub sessions: Vec<Session>,
    /// What is due next time, in one sentence; empty when nothing follows.
    pub next: String,
    /// A sentence when there is nothing to show, or empty.
    pub empty: String,
    /// The main button: another lift of theirs, or empty.
    pub main: String,
}

/// One session's work sets.
#[derive(Debug, Clone, PartialEq)]
pub struct Session {
    /// "25 Nov".
    pub date: String,
    /// "180".
    pub load: String,
    /// "5", "3 × 5", "3 of 5".
    pub reps: String,
    /// "back moved at 3", "best", or empty.
    pub word: String,
    /// Load as a share of the heaviest shown, 0 to 1.
    pub share: f32,
    /// For the look.
    pub state: RowState,
}

/// The most sessions that are shown.
const SESSIONS_MAX: usize = 10;

/// The lifts of which a lifter has sessions, in the order of the first one.
pub(crate) fn lifts_of(scene: &Scene<'_>, lifter: &str) -> Vec<String> {
    scene.state.lifts_with_outings(lifter)
}

/// The lift after `lift`, round and round; `None` when there is no other.
pub(crate) fn lift_after(scene: &Scene<'_>, lifter: &str, lift: &str) -> Option<String> {
    let lifts = lifts_of(scene, lifter);
    let at = lifts.iter().position(|name| name == lift);
    let next = at.map_or(0, |at| (at + 1) % lifts.len());
    lifts.get(next).filter(|name| *name != lift).cloned()
}

pub(crate) fn history(scene: &Scene<'_>, lifter: &str, lift: &str) -> History {
    let say = scene.language();
    let own = scene.state.runs_of(lifter);
    let mut runs: Vec<&LiftRun> = own.filter(|run| run.sheet.lift == lift).collect();
    runs.sort_by_key(|run| (run.sheet.date, run.no));
    let unit = runs.last().map_or(MassUnit::Kg, |run| run.sheet.unit);
    let due = runs.iter().rev().find_map(|run| run.next.as_ref());
    let next = due
        .map(|next| say.fill(p::NEXT_TIME, &[&say.due(&next.due(), unit)]))
        .unwrap_or_default();
    let outings = outings(scene.state, lifter, lift, NaiveDate::MAX);
    let shown = &outings[outings.len().saturating_sub(SESSIONS_MAX)..];
    let coming = due.and_then(|next| next.due().decision.due());
    let loads = shown.iter().map(|outing| outing.load).chain(coming);
    let heaviest = loads.map(Mass::ng).max().unwrap_or(1);
    let best = best(&outings);
    let session = |outing: &Outing| {
        let (state, reps, mut word) = went(say, outing);
        if word.is_empty() && scene.state.was_left_open(lifter, outing.no) {
            word = say.say(p::days::LEFT_OPEN);
        }
        if word.is_empty() && best == Some(outing.no) {
            word = say.say(p::A_BEST);
        }
        Session {
            date: say.short_date(outing.date),
            load: say.mass_number(outing.load, unit),
            reps,
            word,
            share: share(outing.load.ng(), heaviest),
            state,
        }
    };
    let ahead = |load: Mass| Session {
        date: say.say(p::NEXT_SESSION),
        load: say.mass_number(load, unit),
        reps: String::new(),
        word: String::new(),
        share: share(load.ng(), heaviest),
        state: RowState::Ahead,
    };
    let sessions = shown.iter().map(session);
    History {
        lift: say.shipped(lift),
        unit: unit.word().into(),
        sessions: sessions.chain(coming.map(ahead)).collect(),
        next,
        empty: if shown.is_empty() {
            say.say(p::NO_SESSIONS)
        } else {
            String::new()
        },
        main: lift_after(scene, lifter, lift)
            .map(|other| say.shipped(&other))
            .unwrap_or_default(),
    }
}

/// The heaviest session with all its reps and the back held, the first of several alike.
fn best(outings: &[Outing]) -> Option<LiftNo> {
    let well = outings.iter().filter(|outing| outing.went == Went::Well);
    let best = well.reduce(|best, outing| {
        if outing.load > best.load {
            outing
        } else {
            best
        }
    });
    best.map(|outing| outing.no)
}

/// The look, the reps made and the word of a session.
fn went(say: Language, outing: &Outing) -> (RowState, String, String) {
    let (sets, reps) = (outing.sets.to_string(), outing.reps.to_string());
    let all = match outing.sets {
        1 => reps.clone(),
        _ => format!("{sets} × {reps}"),
    };
    match outing.went {
        Went::Well => (RowState::Done, all, String::new()),
        Went::Short { reps: made, .. } => (
            RowState::Other,
            say.fill(p::OF, &[&made.to_string(), &reps]),
            String::new(),
        ),
        Went::Moved { rep, .. } => (
            RowState::Moved,
            all,
            say.fill(p::BACK_MOVED_AT, &[&rep.to_string()]),
        ),
        Went::MovedWarm => (RowState::Moved, String::new(), say.say(p::MOVED_WARM)),
        Went::Cut { done } => (
            RowState::Other,
            say.fill(p::SETS_DONE_OF, &[&done.to_string(), &sets]),
            String::new(),
        ),
    }
}
