//! End of the lift: what was done.
use crate::draw::RowState;
use crate::drawings;
use crate::next::{Next, next};
use crate::rest::last_words;
use crate::scene::Scene;
use crate::single::{SingleFace, single_face};
use crate::split::{SplitFace, split_face};
use crate::stage::last_touched;
use crate::words;
use domain::event::Hold;
use domain::sheet::{LiftSheet, RungKind};
use domain::state::{Entered, LiftRun};

/// What it shows.
#[derive(Debug, Clone, PartialEq)]
pub struct End {
    /// "180 kg × 5, back kept".
    pub headline: String,
    /// Whether the headline is a moved back or a short set.
    pub short: bool,
    /// One a rung, in order.
    pub rows: Vec<DoneRow>,
    /// "5 sets, 16 reps, 34 minutes".
    pub sum: String,
    /// What is due the next time; `None` when nothing follows from this lift.
    pub next: Option<Next>,
    /// Estimates of the single; `None` where the equations mean nothing.
    pub single: Option<SingleFace>,
    /// Advice to split the deadlift, or to go back to it; `None` when there is nothing to do.
    pub split: Option<SplitFace>,
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
    /// "2 reps", "4 of 5 reps", "skipped".
    pub reps: String,
    /// "back kept", "back moved at 3", or empty.
    pub hold: String,
    /// For the look.
    pub state: RowState,
    /// "warm-up" or "work".
    pub kind: String,
}

pub(crate) fn end(scene: &Scene<'_>, run: &LiftRun) -> End {
    let sheet = &run.sheet;
    let passed: Vec<Entered> = run.passed().map(|e| e.what).collect();
    let rows: Vec<DoneRow> = sheet
        .rungs
        .iter()
        .enumerate()
        .map(|(at, rung)| done_row(sheet, rung, passed.get(at)))
        .collect();
    let short = run.is_stopped()
        || passed
            .iter()
            .zip(&sheet.rungs)
            .any(|(entered, rung)| match entered {
                Entered::Set { reps, hold } => *reps < rung.reps || *hold != Hold::Kept,
                Entered::Skipped | Entered::Stopped | Entered::WentOn | Entered::Settled => false,
            });
    let later = scene.fresh(&sheet.lifter);
    End {
        headline: if passed.is_empty() {
            "nothing done".into()
        } else {
            last_words(run)
        },
        short,
        rows,
        sum: sum(run, &passed),
        next: next(scene, run),
        single: single_face(scene.lift(&sheet.lift), run),
        split: scene.split(run).map(|split| split_face(&split, sheet.unit)),
        main: match (scene.first_before(run), later) {
            (Some(next), _) => format!("next: {}", next.sheet.lifter),
            (None, Some(entry)) => format!("next: {}", entry.lift),
            (None, None) => "next lifter".into(),
        },
        // Whoever shares the page puts it there; nothing of the state says that it is on.
        link: None,
    }
}

fn done_row(sheet: &LiftSheet, rung: &domain::Rung, entered: Option<&Entered>) -> DoneRow {
    let (state, _) = drawings::row_state(rung, entered, false);
    let (reps, hold) = match entered {
        Some(Entered::Set { reps, hold }) if *reps == rung.reps => {
            (words::reps(*reps), words::hold(*hold))
        }
        Some(Entered::Set { reps, hold }) => (
            format!("{reps} of {}", words::reps(rung.reps)),
            words::hold(*hold),
        ),
        Some(Entered::Skipped | Entered::Stopped | Entered::WentOn | Entered::Settled) => {
            ("skipped".into(), String::new())
        }
        None => ("not done".into(), String::new()),
    };
    let kind = if rung.kind == RungKind::Work {
        "work"
    } else {
        "warm-up"
    };
    DoneRow {
        load: rung.load.words(sheet.unit),
        reps,
        hold,
        state,
        kind: kind.into(),
    }
}

fn sum(run: &LiftRun, passed: &[Entered]) -> String {
    let sets: Vec<u32> = passed
        .iter()
        .filter_map(|entered| match entered {
            Entered::Set { reps, .. } => Some(u32::from(*reps)),
            Entered::Skipped | Entered::Stopped | Entered::WentOn | Entered::Settled => None,
        })
        .collect();
    let minutes = run.begun_at.seconds_until(last_touched(run).0).div_ceil(60);
    let plural = |n: usize, one: &str, many: &str| {
        if n == 1 {
            format!("1 {one}")
        } else {
            format!("{n} {many}")
        }
    };
    format!(
        "{}, {} reps in all, {}",
        plural(sets.len(), "set", "sets"),
        sets.iter().sum::<u32>(),
        plural(minutes as usize, "minute", "minutes"),
    )
}
