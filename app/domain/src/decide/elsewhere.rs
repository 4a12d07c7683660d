//! What another kiosk's lift makes of this journal: it stands as it was done there, once.
use super::Refusal;
use crate::elsewhere::{Brought, DoneThere, NAME_MAX};
use crate::event::{Event, Fact};
use crate::lift_no::LiftNo;
use crate::moment::Moment;
use crate::state::{Entered, State};
use alloc::boxed::Box;
use alloc::vec::Vec;

/// The events by which a lift of another kiosk stands here, or stands otherwise than before.
///
/// # Errors
/// [`Refusal::KnownElsewhere`] when it stands already, or is older than what can still change;
/// [`Refusal::EmptyLadder`] for a sheet without rungs; [`Refusal::NoSuchLift`] for a kiosk without
/// a name.
pub(super) fn decide(state: &State, brought: Brought, now: Moment) -> Result<Vec<Event>, Refusal> {
    let name = brought.origin.kiosk.chars().count();
    if name == 0 || name > NAME_MAX {
        return Err(Refusal::NoSuchLift);
    }
    if brought.sheet.rungs.is_empty() {
        return Err(Refusal::EmptyLadder);
    }
    let brought = ended(brought);
    let no = number(state, &brought)?;
    let Brought {
        origin,
        sheet,
        begun,
        entries,
    } = brought;
    let origin = Box::new(origin);
    let begun = Fact::BegunElsewhere {
        no,
        origin,
        sheet,
        begun,
    };
    let done = entries
        .into_iter()
        .map(|done| Fact::DoneElsewhere { no, done });
    let facts = core::iter::once(begun).chain(done);
    Ok(facts.map(|fact| Event { at: now, fact }).collect())
}

/// The number under which it stands here, or is to stand.
fn number(state: &State, brought: &Brought) -> Result<LiftNo, Refusal> {
    let origin = &brought.origin;
    let taken = state.elsewhere.get(&origin.kiosk);
    if let Some((here, seq)) = taken.and_then(|taken| taken.lifts.get(&origin.no)) {
        let run = state.lifts.get(here).filter(|run| !run.is_lean);
        let changes = run.is_some_and(|run| !brought.says_as(run));
        return match changes && origin.seq >= *seq {
            true => Ok(*here),
            false => Err(Refusal::KnownElsewhere),
        };
    }
    if taken.is_some_and(|taken| origin.no.0 <= taken.floor) {
        return Err(Refusal::KnownElsewhere);
    }
    Ok(LiftNo(state.last_no.saturating_add(1)))
}

/// A lift comes over when it is over: one that is not is ended where it stands.
fn ended(mut brought: Brought) -> Brought {
    let passes = |done: &&DoneThere| matches!(done.what, Entered::Set { .. } | Entered::Skipped);
    let passed = brought.entries.iter().filter(passes).count();
    let last = brought.entries.last().map(|done| done.what);
    if passed < brought.sheet.rungs.len() && last != Some(Entered::Stopped) {
        brought.entries.push(DoneThere {
            at: brought.entries.last().map_or(brought.begun, |done| done.at),
            rung: u16::try_from(passed).unwrap_or(u16::MAX),
            what: Entered::Stopped,
            effort: None,
        });
    }
    brought
}
