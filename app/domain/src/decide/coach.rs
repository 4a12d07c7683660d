//! Whether what a coach rules and says of a lifter can be.
use super::{NOTE_MAX, Refusal, load_in_range};
use crate::coach_word::{CoachSays, CoachWord};
use crate::event::Fact;
use crate::lift_no::LiftNo;
use crate::mass::Mass;
use crate::state::State;
use alloc::string::String;

/// The word, if it can be said.
///
/// # Errors
/// [`Refusal`] without a note or with a long one, for somebody fit who is not hurt, for an
/// illness that ends before it begins, for a load out of range.
pub(super) fn checked(mut word: CoachWord, state: &State) -> Result<CoachWord, Refusal> {
    word.note = noted(&word.note)?;
    match &word.what {
        CoachSays::Fit => {
            let health = state.health.get(&word.lifter);
            if health.is_none_or(|health| health.hurt.is_none()) {
                return Err(Refusal::NotHurt(word.lifter));
            }
        }
        CoachSays::Ill(ill) if ill.to < ill.from => return Err(Refusal::IllBackwards(*ill)),
        CoachSays::LoadMeant { load, .. } => load_in_range(*load)?,
        CoachSays::Hurt { .. } | CoachSays::Ill(_) => {}
    }
    Ok(word)
}

/// The fact that the coach rules another load for the next time.
///
/// # Errors
/// [`Refusal`] where nothing was decided, for a load out of range, without a note or with a long one.
pub(super) fn override_next(
    state: &State,
    no: LiftNo,
    load: Mass,
    note: &str,
) -> Result<Fact, Refusal> {
    let run = state.lifts.get(&no).ok_or(Refusal::NoSuchLift)?;
    if run.next.is_none() {
        return Err(Refusal::NothingDecided);
    }
    load_in_range(load)?;
    let note = noted(note)?;
    Ok(Fact::NextOverridden { no, load, note })
}

/// The coach's words, if there are some and not too many.
fn noted(note: &str) -> Result<String, Refusal> {
    let note = note.trim();
    match note.chars().count() {
        1..=NOTE_MAX => Ok(note.into()),
        long => Err(Refusal::NoteLength(long)),
    }
}
