//! A decision that was made of one bar, on another: a load that this one makes.
use super::round::{again, raised};
use super::{Decision, Season, Verdict, Why};

/// The same decision with a load of the season's bar and plates, whichever it was recorded for. A
/// raise stays one where the plates let it; all else is never above what was decided. What the
/// coach ruled stands as it was ruled.
pub(super) fn made(decision: Decision, season: &Season<'_>) -> Decision {
    let recorded = decision.load;
    let is_made = season.loads.at_most_in_any_step(recorded) == Some(recorded);
    if is_made || decision.why == Why::Coach {
        return decision;
    }
    let up = (decision.verdict == Verdict::Raise)
        .then(|| raised(decision.from, recorded, &season.limits, season.loads))
        .flatten();
    Decision {
        load: up.unwrap_or_else(|| again(recorded, recorded, season.loads)),
        ..decision
    }
}
