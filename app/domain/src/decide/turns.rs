//! What may be said about a bar and about a turn: put off, passed over, claimed, longer, leaving,
//! back.
use super::{Command, Refusal};
use crate::attendance::LONGER_MOST_S;
use crate::event::Fact;
use crate::lift_no::LiftNo;
use crate::state::State;

/// The fact that follows from a command of this kind; every other kind is refused as saying
/// nothing.
pub(super) fn fact(state: &State, command: Command) -> Result<Fact, Refusal> {
    let open = |no: LiftNo, fact: Fact| {
        let run = state.lifts.get(&no).ok_or(Refusal::NoSuchLift)?;
        if run.is_over() {
            return Err(Refusal::Over);
        }
        Ok(fact)
    };
    match command {
        Command::SayBar(word) => Ok(Fact::BarSaid(word)),
        Command::UndoBarWord(bar) => {
            let known = state.bars.get(&bar).ok_or(Refusal::NothingSaid)?;
            if !known.can_take_back() {
                return Err(Refusal::NothingSaid);
            }
            Ok(Fact::BarWordUndone { bar })
        }
        Command::Defer(no) => open(no, Fact::TurnDeferred { no }),
        Command::Pass(no) => open(no, Fact::TurnPassed { no }),
        Command::Claim(no) => open(no, Fact::TurnClaimed { no }),
        Command::Lengthen { no, seconds } if (1..=LONGER_MOST_S).contains(&seconds) => {
            open(no, Fact::RestLengthened { no, seconds })
        }
        Command::Lengthen { seconds, .. } => Err(Refusal::LongerOutOfRange(seconds)),
        Command::Leave(no) => open(no, Fact::LifterLeft { no }),
        Command::Return(no) => open(no, Fact::LifterReturned { no }),
        Command::UnsayTurn(no) => open(no, Fact::TurnUnsaid { no }),
        Command::TakeFile { .. }
        | Command::TakePlan { .. }
        | Command::ClearDay { .. }
        | Command::BeginLift(_)
        | Command::EnterSet { .. }
        | Command::SkipRung { .. }
        | Command::StopLift(_)
        | Command::GoOn(_)
        | Command::SettleLoad { .. }
        | Command::FollowTop { .. }
        | Command::SayEffort { .. }
        | Command::DecideNext { .. }
        | Command::OverrideNext { .. }
        | Command::CallRotation { .. }
        | Command::Undo(_)
        | Command::SayCoach(_)
        | Command::Show(_)
        | Command::Day(_)
        | Command::TakeElsewhere(_) => Err(Refusal::NothingSaid),
    }
}
