//! What somebody can say about their turn: later, skip, longer, leave, my turn now.
use crate::language::{Language, p};
use crate::scene::Scene;
use crate::tap::{Tap, TurnTap};
use domain::state::LiftRun;

/// What it shows.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct TurnPad {
    /// "Hamza: what now?".
    pub question: String,
    /// The answers, in order; at most five.
    pub answers: Vec<Answer>,
    /// "end the lift", held.
    pub stop: String,
}

/// One answer.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Answer {
    /// "later".
    pub word: String,
    /// "after the next lifter".
    pub more: String,
    /// What a tap on it says.
    pub tap: Tap,
}

pub(crate) fn turn_pad(scene: &Scene<'_>, run: &LiftRun, rung: Option<usize>) -> TurnPad {
    let say = scene.language();
    let mut answers = Vec::new();
    let away = run.attendance.away;
    if away {
        answers.push(answer(say, p::I_AM_BACK, p::BACK_MORE, TurnTap::Back));
    }
    let own = rung.is_some() && !away;
    if own && scene.first_before(run).is_some() {
        answers.push(answer(say, p::MINE, p::MINE_MORE, TurnTap::Mine));
    }
    if own && scene.others_here(run) && !run.attendance.deferred {
        answers.push(answer(say, p::LATER, p::LATER_MORE, TurnTap::Later));
    }
    if own {
        answers.push(answer(say, p::LONGER, p::LONGER_MORE, TurnTap::Longer));
    }
    if let Some(rung) = rung.and_then(|at| run.sheet.rungs.get(at)) {
        answers.push(Answer {
            word: say.say(p::SKIP_SET),
            more: say.set(rung.load, run.sheet.unit, rung.reps),
            tap: Tap::Skip,
        });
    }
    if !away {
        answers.push(answer(say, p::LEAVE, p::LEAVE_MORE, TurnTap::Leave));
    }
    TurnPad {
        question: say.fill(p::TURN_QUESTION, &[&run.sheet.lifter]),
        answers,
        stop: say.say(p::END_LIFT),
    }
}

fn answer(
    say: Language,
    word: crate::language::Phrase,
    more: crate::language::Phrase,
    tap: TurnTap,
) -> Answer {
    Answer {
        word: say.say(word),
        more: say.say(more),
        tap: Tap::Turn(tap),
    }
}
