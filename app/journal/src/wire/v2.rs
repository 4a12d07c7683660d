//! Wire version 2: kinds that version 1 does not have. Once released, **never change anything
//! here: add v3.** Masses are whole nanograms, lengths whole nanometres, dates ISO 8601.
mod bar;
mod coach;
mod day;
mod elsewhere;
mod groups;
mod manner;
mod next;
mod shown;
mod turn;

use super::v1::{read_in, write_in};
use super::{WireFault, Written};
use bar::{BarSaidV2, BarV2};
use coach::CoachSaidV2;
use day::{ClockAnchoredV2, ClockSetV2, LiftDayV2, LiftLapsedV2};
use domain::Fact;
use domain::Prescription;
use elsewhere::{BEGUN_ELSEWHERE, BegunElsewhereV2, DONE_ELSEWHERE, DoneElsewhereV2};
use groups::{EffortSaidV2, LiftBegunV2, LoadsFollowedV2, PlanTakenV2};
use next::NextDecidedV2;
use shown::ScreenShownV2;
use turn::{LiftV2, RestLengthenedV2};

/// The number of this version.
pub const VERSION: u32 = 2;

const BAR_SAID: &str = "bar_said";
const BAR_WORD_UNDONE: &str = "bar_word_undone";
const TURN_DEFERRED: &str = "turn_deferred";
const TURN_PASSED: &str = "turn_passed";
const TURN_CLAIMED: &str = "turn_claimed";
const REST_LENGTHENED: &str = "rest_lengthened";
const LIFTER_LEFT: &str = "lifter_left";
const LIFTER_RETURNED: &str = "lifter_returned";
const TURN_UNSAID: &str = "turn_unsaid";
const SCREEN_SHOWN: &str = "screen_shown";
const COACH_SAID: &str = "coach_said";
const NEXT_DECIDED: &str = "next_decided";
const PLAN_TAKEN: &str = "plan_taken";
const LIFT_BEGUN: &str = "lift_begun";
const LOADS_FOLLOWED: &str = "loads_followed";
const EFFORT_SAID: &str = "effort_said";
const CLOCK_ANCHORED: &str = "clock_anchored";
const CLOCK_SET: &str = "clock_set";
const LIFT_LAPSED: &str = "lift_lapsed";
const LIFT_REOPENED: &str = "lift_reopened";
const LIFT_REDATED: &str = "lift_redated";

/// Writes a fact that this version has; `None` for those of earlier versions.
#[must_use]
pub fn encode(fact: &Fact) -> Option<Written> {
    let written = match fact {
        Fact::BarSaid(word) => write_in(VERSION, BAR_SAID, &BarSaidV2::of(word)),
        Fact::BarWordUndone { bar } => write_in(VERSION, BAR_WORD_UNDONE, &BarV2::of(bar)),
        Fact::TurnDeferred { no } => write_in(VERSION, TURN_DEFERRED, &LiftV2::of(*no)),
        Fact::TurnPassed { no } => write_in(VERSION, TURN_PASSED, &LiftV2::of(*no)),
        Fact::TurnClaimed { no } => write_in(VERSION, TURN_CLAIMED, &LiftV2::of(*no)),
        Fact::RestLengthened { no, seconds } => write_in(
            VERSION,
            REST_LENGTHENED,
            &RestLengthenedV2::of(*no, *seconds),
        ),
        Fact::LifterLeft { no } => write_in(VERSION, LIFTER_LEFT, &LiftV2::of(*no)),
        Fact::LifterReturned { no } => write_in(VERSION, LIFTER_RETURNED, &LiftV2::of(*no)),
        Fact::TurnUnsaid { no } => write_in(VERSION, TURN_UNSAID, &LiftV2::of(*no)),
        Fact::ScreenShown(shown) => write_in(VERSION, SCREEN_SHOWN, &ScreenShownV2::of(shown)),
        Fact::CoachSaid(word) => write_in(VERSION, COACH_SAID, &CoachSaidV2::of(word)),
        // Straight sets are written as version 1 has them.
        Fact::PlanTaken { name, rows } if !rows.iter().all(Prescription::is_straight) => {
            write_in(VERSION, PLAN_TAKEN, &PlanTakenV2::of(name, rows))
        }
        Fact::LiftBegun { no, sheet } if !sheet.groups.is_empty() || sheet.track.is_some() => {
            write_in(VERSION, LIFT_BEGUN, &LiftBegunV2::of(*no, sheet))
        }
        Fact::LoadsFollowed { no, sets } => {
            write_in(VERSION, LOADS_FOLLOWED, &LoadsFollowedV2::of(*no, sets))
        }
        Fact::EffortSaid { no, rung, effort } => {
            write_in(VERSION, EFFORT_SAID, &EffortSaidV2::of(*no, *rung, *effort))
        }
        Fact::NextDecided { no, decided } => {
            let body = NextDecidedV2::of(*no, decided)?;
            write_in(VERSION, NEXT_DECIDED, &body)
        }
        Fact::ClockAnchored {
            boot,
            up_ms,
            offset_ms,
        } => {
            let body = ClockAnchoredV2::of(*boot, *up_ms, *offset_ms);
            write_in(VERSION, CLOCK_ANCHORED, &body)
        }
        Fact::ClockSet { offset_ms } => write_in(VERSION, CLOCK_SET, &ClockSetV2::of(*offset_ms)),
        Fact::LiftLapsed { no } => write_in(VERSION, LIFT_LAPSED, &LiftLapsedV2::of(*no)),
        Fact::LiftReopened { no, on } => write_in(VERSION, LIFT_REOPENED, &LiftDayV2::of(*no, *on)),
        Fact::LiftRedated { no, date } => {
            write_in(VERSION, LIFT_REDATED, &LiftDayV2::of(*no, *date))
        }
        Fact::BegunElsewhere { .. } | Fact::DoneElsewhere { .. } => {
            return elsewhere::written(fact);
        }
        Fact::FileTaken { .. }
        | Fact::PlanTaken { .. }
        | Fact::DayCleared { .. }
        | Fact::LiftBegun { .. }
        | Fact::SetDone { .. }
        | Fact::RungSkipped { .. }
        | Fact::LiftStopped { .. }
        | Fact::WentOn { .. }
        | Fact::LoadSettled { .. }
        | Fact::NextOverridden { .. }
        | Fact::RotationPlanned { .. }
        | Fact::EntryUndone { .. } => return None,
    };
    Some(written)
}

/// Reads a fact of this version.
///
/// # Errors
/// [`WireFault`] when kind or body are none of this version.
pub fn decode(kind: &str, body: &str) -> Result<Fact, WireFault> {
    match kind {
        BAR_SAID => read_in::<BarSaidV2>(BAR_SAID, body)?.try_into(),
        BAR_WORD_UNDONE => Ok(read_in::<BarV2>(BAR_WORD_UNDONE, body)?.into()),
        TURN_DEFERRED => Ok(read_in::<LiftV2>(TURN_DEFERRED, body)?.deferred()),
        TURN_PASSED => Ok(read_in::<LiftV2>(TURN_PASSED, body)?.passed()),
        TURN_CLAIMED => Ok(read_in::<LiftV2>(TURN_CLAIMED, body)?.claimed()),
        REST_LENGTHENED => Ok(read_in::<RestLengthenedV2>(REST_LENGTHENED, body)?.into()),
        LIFTER_LEFT => Ok(read_in::<LiftV2>(LIFTER_LEFT, body)?.left()),
        LIFTER_RETURNED => Ok(read_in::<LiftV2>(LIFTER_RETURNED, body)?.returned()),
        TURN_UNSAID => Ok(read_in::<LiftV2>(TURN_UNSAID, body)?.unsaid()),
        PLAN_TAKEN => read_in::<PlanTakenV2>(PLAN_TAKEN, body)?.try_into(),
        LIFT_BEGUN => read_in::<LiftBegunV2>(LIFT_BEGUN, body)?.try_into(),
        LOADS_FOLLOWED => Ok(read_in::<LoadsFollowedV2>(LOADS_FOLLOWED, body)?.into()),
        EFFORT_SAID => Ok(read_in::<EffortSaidV2>(EFFORT_SAID, body)?.into()),
        COACH_SAID => read_in::<CoachSaidV2>(COACH_SAID, body)?.try_into(),
        NEXT_DECIDED => read_in::<NextDecidedV2>(NEXT_DECIDED, body)?.try_into(),
        SCREEN_SHOWN => read_in::<ScreenShownV2>(SCREEN_SHOWN, body)?.try_into(),
        CLOCK_ANCHORED => read_in::<ClockAnchoredV2>(CLOCK_ANCHORED, body)?.try_into(),
        CLOCK_SET => Ok(read_in::<ClockSetV2>(CLOCK_SET, body)?.into()),
        LIFT_LAPSED => Ok(read_in::<LiftLapsedV2>(LIFT_LAPSED, body)?.into()),
        LIFT_REOPENED => read_in::<LiftDayV2>(LIFT_REOPENED, body)?.reopened(),
        LIFT_REDATED => read_in::<LiftDayV2>(LIFT_REDATED, body)?.redated(),
        BEGUN_ELSEWHERE => read_in::<BegunElsewhereV2>(BEGUN_ELSEWHERE, body)?.try_into(),
        DONE_ELSEWHERE => Ok(read_in::<DoneElsewhereV2>(DONE_ELSEWHERE, body)?.into()),
        _ => Err(WireFault::Kind {
            version: VERSION,
            kind: kind.to_owned(),
        }),
    }
}
