//! End of the lift: what was done.
use crate::draw::RowState;
use crate::drawings;
use crate::language::{Language, c, p};
use crate::next::{Next, next};
use crate::rest::last_words;
use crate::scene::Scene;
use crate::why::{Part, parts};
use domain::event::Hold;
use domain::gym::DAY_ENDS_AFTER_S;
use domain::sheet::{LiftSheet, RungKind};
use domain::state::{Entered, LiftRun};

/// What it shows.
#[derive(Debug, Clone, PartialEq)]
pub struct End {
    /// "180 kg × 5, back held".
    pub headline: String,
    /// Whether the headline is a moved back or a short set.
    pub short: bool,
    /// One a rung, in order.
    pub rows: Vec<DoneRow>,
    /// "5 sets, 16 reps, 34 minutes".
    pub sum: String,
    /// What is due the next time; `None` when nothing follows from this lift.
    pub next: Option<Next>,
    /// That there is advice on the lift, or empty.
    pub advice: String,
    /// The button to what stands behind it: "why"; empty when nothing does.
    pub why: String,
    /// The main button: "next lifter".
    pub main: String,
    /// The link to the lifter's own record; `None` when the page is off or the link was used.
    pub link: Option<Link>,
}

/// A link that opens the lifter's own record once, as a QR code (ISO/IEC 18004).
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Link {
    /// "your record on your phone, for ten minutes".
    pub words: String,
    /// Modules on a side, without the quiet zone of four modules that belongs around it.
    pub size: usize,
    /// Row by row from the top left: whether a module is dark; `size * size` of them.
    pub dark: Vec<bool>,
}

/// One rung as done.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct DoneRow {
    /// "130 kg".
    pub load: String,
    /// "2 reps", "4 of 5", "skipped".
    pub reps: String,
    /// "back held", "back moved at 3", or empty.
    pub hold: String,
    /// For the look.
    pub state: RowState,
    /// "warm-up" or "work".
    pub kind: String,
}

pub(crate) fn end(scene: &Scene<'_>, run: &LiftRun) -> End {
    let say = scene.language();
    let sheet = &run.sheet;
    let passed: Vec<Entered> = run.passed().map(|e| e.what).collect();
    let rows: Vec<DoneRow> = sheet
        .rungs
        .iter()
        .enumerate()
        .map(|(at, rung)| done_row(say, sheet, (at, rung), passed.get(at)))
        .collect();
    let short = run.is_stopped()
        || passed
            .iter()
            .enumerate()
            .any(|(at, entered)| match entered {
                Entered::Set { reps, hold } => {
                    !sheet.reps_of(at).is_done(*reps) || *hold != Hold::Kept
                }
                Entered::Skipped
                | Entered::Stopped
                | Entered::WentOn
                | Entered::Settled
                | Entered::LeftOpen => false,
            });
    let later = scene.fresh(&sheet.lifter);
    let told = parts(scene, run);
    End {
        headline: if run.is_left_open() {
            say.say(p::days::LEFT_OPEN_CLOSED)
        } else if !passed.iter().any(|e| matches!(e, Entered::Set { .. })) {
            say.say(p::NOTHING_DONE)
        } else {
            last_words(say, run)
        },
        short,
        rows,
        sum: sum(say, run, &passed),
        next: next(scene, run),
        advice: if told.contains(&Part::Split) {
            say.fill(c::ADVICE_WAITS, &[&say.shipped(&sheet.lift)])
        } else {
            String::new()
        },
        why: if told.is_empty() {
            String::new()
        } else {
            say.say(c::WHY)
        },
        main: match (scene.first_before(run), later) {
            (Some(next), _) => say.fill(p::NEXT, &[&next.sheet.lifter]),
            (None, Some(entry)) => say.fill(p::NEXT, &[&say.shipped(&entry.lift)]),
            (None, None) => say.say(p::NEXT_LIFTER),
        },
        // Whoever shares the page puts it there; nothing of the state says that it is on.
        link: None,
    }
}

fn done_row(
    say: Language,
    sheet: &LiftSheet,
    (at, rung): (usize, &domain::Rung),
    entered: Option<&Entered>,
) -> DoneRow {
    let (state, _) = drawings::row_state(say, (rung, sheet.reps_of(at)), entered, false);
    let (reps, hold) = match entered {
        Some(Entered::Set { reps, hold }) if *reps == rung.reps || !sheet.reps_of(at).is_just() => {
            (say.reps(*reps), hold_words(say, *hold))
        }
        Some(Entered::Set { reps, hold }) => (
            say.fill(p::OF, &[&reps.to_string(), &rung.reps.to_string()]),
            hold_words(say, *hold),
        ),
        Some(
            Entered::Skipped
            | Entered::Stopped
            | Entered::WentOn
            | Entered::Settled
            | Entered::LeftOpen,
        ) => (say.say(p::SKIPPED), String::new()),
        None => (say.say(p::NOT_DONE), String::new()),
    };
    let kind = if rung.kind == RungKind::Work {
        p::WORK
    } else {
        p::WARM_UP
    };
    DoneRow {
        load: say.mass(rung.load, sheet.unit),
        reps,
        hold,
        state,
        kind: say.say(kind),
    }
}

/// How long somebody was at it, a night apart in which it lay open.
fn seconds_at_it(run: &LiftRun) -> u32 {
    let entered = run.entries.iter();
    let entered = entered.filter(|entry| entry.what != Entered::LeftOpen);
    let mut last = run.begun_at;
    let gaps = entered.map(|entry| {
        let gap = last.seconds_until(entry.at);
        last = entry.at;
        gap
    });
    gaps.filter(|gap| *gap < DAY_ENDS_AFTER_S).sum()
}

/// "back held", "back moved at 3": short, for a row.
fn hold_words(say: Language, hold: Hold) -> String {
    match hold {
        Hold::Kept => say.hold(hold),
        Hold::MovedAt(rep) => say.fill(p::BACK_MOVED_AT, &[&rep.to_string()]),
    }
}

fn sum(say: Language, run: &LiftRun, passed: &[Entered]) -> String {
    let sets: Vec<u32> = passed
        .iter()
        .filter_map(|entered| match entered {
            Entered::Set { reps, .. } => Some(u32::from(*reps)),
            Entered::Skipped
            | Entered::Stopped
            | Entered::WentOn
            | Entered::Settled
            | Entered::LeftOpen => None,
        })
        .collect();
    let minutes = seconds_at_it(run).div_ceil(60);
    let reps = sets.iter().sum::<u32>() as usize;
    [
        say.count(p::SETS, sets.len()),
        say.count(p::REPS_IN_ALL, reps),
        say.count(p::MINUTES, minutes as usize),
    ]
    .join(", ")
}
