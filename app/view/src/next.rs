//! Next time: the load that is due, why, and the outings that it follows from.
//!
//! Refuses: deciding. The rules of the core do, or the coach.
use crate::draw::RowState;
use crate::drawings;
use crate::language::{Language, p};
use crate::scene::Scene;
use domain::next::Why;
use domain::next::outing::{Outing, Went, outings};
use domain::state::LiftRun;

/// What the end of a lift shows of it.
#[derive(Debug, Clone, PartialEq)]
pub struct Next {
    /// "182.5 kg × 5", "3 sets of 182.5 kg × 5".
    pub work: String,
    /// "raise", "repeat", "drop", "reset", "ease": which way, for the look and in words.
    pub verdict: String,
    /// Why, in one sentence.
    pub reason: String,
    /// Whether the coach ruled it.
    pub by_coach: bool,
    /// The last outings with as many reps, oldest first, this one last; then what is due.
    pub past: Vec<PastRow>,
}

/// One outing of a small history.
#[derive(Debug, Clone, PartialEq)]
pub struct PastRow {
    /// "18 Nov"; "next" for what is due.
    pub date: String,
    /// "180".
    pub load: String,
    /// Load as a share of the heaviest shown, 0 to 1.
    pub height: f32,
    /// "well", "3 of 5 reps", "back moved at rep 4", or empty for what is due.
    pub word: String,
    /// For the look.
    pub state: RowState,
}

/// Outings shown beside what is due.
const PAST_MAX: usize = 6;

/// What is due after `run`; `None` as long as nothing was decided.
pub(crate) fn next(scene: &Scene<'_>, run: &LiftRun) -> Option<Next> {
    let say = scene.language();
    let due = run.next.as_ref()?.due();
    let sheet = &run.sheet;
    let decision = &due.decision;
    let tomorrow = sheet.date.succ_opt()?;
    let mut past = outings(scene.state, &sheet.lifter, &sheet.lift, tomorrow);
    past.retain(|o| o.reps == decision.reps && (o.date, o.no) <= (sheet.date, run.no));
    let past = &past[past.len().saturating_sub(PAST_MAX)..];
    let heaviest = past.iter().map(|o| o.load).chain([decision.load]).max();
    let height = |load: domain::Mass| drawings::share(load.ng(), heaviest.map_or(1, |m| m.ng()));
    let mut rows: Vec<PastRow> = past
        .iter()
        .map(|outing| past_row(say, outing, sheet.unit, height(outing.load)))
        .collect();
    rows.push(PastRow {
        date: say.say(p::NEXT_SESSION),
        load: say.mass_number(decision.load, sheet.unit),
        height: height(decision.load),
        word: String::new(),
        state: RowState::Ahead,
    });
    let one = say.set(decision.load, sheet.unit, decision.reps);
    Some(Next {
        work: match decision.sets {
            1 => one,
            sets => say.fill(p::SETS_OF, &[&sets.to_string(), &one]),
        },
        verdict: say.verdict(decision.verdict),
        reason: say.due(&due, sheet.unit),
        by_coach: decision.why == Why::Coach,
        past: rows,
    })
}

/// One outing, drawn so high.
pub(crate) fn past_row(
    say: Language,
    outing: &Outing,
    unit: domain::MassUnit,
    height: f32,
) -> PastRow {
    PastRow {
        date: say.short_date(outing.date),
        load: say.mass_number(outing.load, unit),
        height,
        word: say.outing(outing),
        state: state(outing.went),
    }
}

const fn state(went: Went) -> RowState {
    match went {
        Went::Well => RowState::Done,
        Went::Short { .. } | Went::Cut { .. } => RowState::Other,
        Went::Moved { .. } | Went::MovedWarm => RowState::Moved,
    }
}
