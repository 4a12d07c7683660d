//! After an entry: the order of turns at that station is planned anew from the bar as it stands.
//!
//! Those called already keep their places, and whoever is up keeps the plates that the screen
//! shows: hands may be at work on them. Refuses: keeping a lifter waiting; the planner ends
//! with the best it has when its time is up, and a station that cannot be planned keeps the
//! ladders' own order.
use crate::clock::stopwatch;
use chrono::NaiveDate;
use domain::order::order;
use domain::rotation::{Asked, CalledTurn, Station, ask, open_at};
use domain::solve::rotation::Effort;
use domain::state::LiftRun;
use domain::{Gym, LiftNo, Moment, State};
use std::collections::BTreeSet;

/// Time for one plan, nanoseconds: with it, and what is begun already when it is up, the order is
/// there within 40 ms (the example `rotation_taps` of `domain` measures it).
const WITHIN_NS: u64 = 20_000_000;
/// States for one plan; bounds its memory.
const STATES_MAX: u64 = 200_000;
/// States for one plan that must be the same on every machine, whatever its speed.
const STATES_UNTIMED: u64 = 10_000;

/// How long a plan may take.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Patience {
    /// Somebody waits at the rack.
    AtTheRack,
    /// A picture: only the number of states counts.
    Untimed,
    /// On the way to a picture: the order that was called stays.
    Never,
}

/// What makes the turns at a station be looked at.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Because {
    /// Something happened to a lifter of that station; who must come first, if anybody.
    Here(Option<LiftNo>),
    /// Something happened elsewhere: what is called stays while it can be carried out.
    Elsewhere,
}

/// The turns to call at `station`; `None` when what is called still serves, or nothing can be
/// planned.
#[must_use]
pub fn replan(
    gym: &Gym,
    state: &State,
    station: &Station,
    date: NaiveDate,
    now: Moment,
    because: Because,
    patience: Patience,
) -> Option<Vec<CalledTurn>> {
    let lifters = open_at(state, station, date).count();
    let called = state.rotation(station);
    let never = patience == Patience::Never;
    let (first, may_stay) = match because {
        Because::Here(first) => (first, lifters == 1),
        Because::Elsewhere => (None, true),
    };
    let serves = may_stay
        && is_next(state, called)
        && is_for(open_at(state, station, date), called)
        && !lacks(gym, state, station, now);
    if never || lifters == 0 || serves {
        return None;
    }
    let Some(asked) = ask(gym, state, station, date, now, first) else {
        return Some(by_rest(state, station, date)).filter(|turns| turns != called);
    };
    let mut clock = stopwatch();
    let timed = patience == Patience::AtTheRack;
    let mut attempt = |asked: &Asked| {
        let mut go_on = || !timed || clock() < WITHIN_NS;
        let effort = Effort {
            states: if timed { STATES_MAX } else { STATES_UNTIMED },
            go_on: &mut go_on,
        };
        asked.plan(effort).map(|plan| asked.turns(&plan))
    };
    let mut turns = attempt(&asked);
    if turns.is_err() {
        turns = attempt(&asked.with_all_plates());
    }
    let mut turns = turns.unwrap_or_else(|refusal| {
        tracing::warn!(%refusal, ?station, "the order of turns cannot be planned");
        by_rest(state, station, date)
    });
    if let (Some(up), Some(was)) = (turns.first_mut(), called.first())
        && (up.no, up.rung) == (was.no, was.rung)
        && is_at_work(state, was)
        && !lacks(gym, state, station, now)
    {
        up.per_side.clone_from(&was.per_side);
    }
    Some(turns).filter(|turns| turns != called)
}

/// Whether all who are called have turns to come there, and nobody else has.
fn is_for<'s>(open: impl Iterator<Item = &'s LiftRun>, called: &[CalledTurn]) -> bool {
    let open: BTreeSet<LiftNo> = open.map(|run| run.no).collect();
    open == called.iter().map(|turn| turn.no).collect()
}

/// Whether the plates of that turn were shown, and nobody has said anything of the bar since.
fn is_at_work(state: &State, turn: &CalledTurn) -> bool {
    let run = state.lifts.get(&turn.no);
    let known = run.and_then(|run| state.bars.get(&run.sheet.bar.name));
    let ordered = known.and_then(|known| known.ordered.as_ref());
    ordered.is_some_and(|ordered| ordered.faces() == turn.per_side)
}

/// Whether what was called begins with the rung of now: not after an undo.
fn is_next(state: &State, called: &[CalledTurn]) -> bool {
    called.first().is_some_and(|turn| {
        let run = state.lifts.get(&turn.no);
        run.and_then(LiftRun::next_rung) == Some(usize::from(turn.rung))
    })
}

/// Whether the turn that was called wants a plate that hangs on another bar.
fn lacks(gym: &Gym, state: &State, station: &Station, now: Moment) -> bool {
    let first = state.rotation(station).first();
    let run = first.and_then(|turn| Some((turn, state.lifts.get(&turn.no)?)));
    run.is_some_and(|(turn, run)| {
        let order = order(gym, state, run, usize::from(turn.rung), now);
        !order.lacks.is_empty()
    })
}

/// Where nothing can be planned: whoever is rested first comes first, on the ladders' own stacks, so
/// that nobody under way is left out.
fn by_rest(state: &State, station: &Station, date: NaiveDate) -> Vec<CalledTurn> {
    let mut runs: Vec<&LiftRun> = open_at(state, station, date).collect();
    runs.sort_by_key(|run| (run.attendance.deferred, run.ready_at(), run.no));
    let turn = |run: &LiftRun| {
        let rung = run.next_rung()?;
        Some(CalledTurn {
            no: run.no,
            rung: u16::try_from(rung).ok()?,
            per_side: run.sheet.rungs.get(rung)?.per_side.clone(),
        })
    };
    runs.into_iter().filter_map(turn).collect()
}
