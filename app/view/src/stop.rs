//! The back moved: end the lift here, or go on upon the coach's word.
use crate::draw::{LadderRow, RowState};
use crate::drawings;
use crate::language::{Language, p};
use domain::event::Hold;
use domain::state::Entered;
use domain::state::LiftRun;

/// What it shows.
#[derive(Debug, Clone, PartialEq)]
pub struct Stop {
    /// "back moved at rep 3".
    pub headline: String,
    /// "130 kg, 3 of 5 reps".
    pub set: String,
    /// What follows: "A moved back ends the climb. Pain means stop: ask a clinician."
    pub advice: String,
    /// The ladder, lowest rung first.
    pub ladder: Vec<LadderRow>,
    /// The main button: "end the lift".
    pub main: String,
    /// The other button: "go on, coach agrees"; empty after the last rung.
    pub go_on: String,
}

pub(crate) fn stop(say: Language, run: &LiftRun) -> Stop {
    let at = run.passed().count().saturating_sub(1);
    let rung = &run.sheet.rungs[at];
    let (reps, hold) = match run.last_set().map(|e| e.what) {
        Some(Entered::Set { reps, hold }) => (reps, hold),
        Some(
            Entered::Skipped
            | Entered::Stopped
            | Entered::WentOn
            | Entered::Settled
            | Entered::LeftOpen,
        )
        | None => (0, Hold::Kept),
    };
    Stop {
        headline: match hold {
            Hold::Kept => say.hold(hold),
            Hold::MovedAt(rep) => say.fill(p::STOPPED_AT_REP, &[&rep.to_string()]),
        },
        set: say.fill(
            p::SET_OF,
            &[
                &say.mass(rung.load, run.sheet.unit),
                &reps.to_string(),
                &say.reps(rung.reps),
            ],
        ),
        advice: say.say(p::MOVED_ADVICE),
        ladder: still(drawings::ladder(say, &run.sheet, Some(run))),
        main: say.say(p::END_LIFT),
        go_on: if run.next_rung().is_some() {
            say.say(p::GO_ON)
        } else {
            String::new()
        },
    }
}

/// Nothing is due now: the next rung waits for the coach's word.
fn still(mut ladder: Vec<LadderRow>) -> Vec<LadderRow> {
    for row in ladder.iter_mut().filter(|row| row.state == RowState::Now) {
        row.state = RowState::Ahead;
    }
    ladder
}
