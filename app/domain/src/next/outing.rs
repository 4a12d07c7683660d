//! One lift of one day, as the next load sees it.
//!
//! Refuses: lifts of which no work set was begun and no back moved; nothing follows from those.
use crate::hold::Hold;
use crate::lift_no::LiftNo;
use crate::mass::Mass;
use crate::next::NextTime;
use crate::sheet::RungKind;
use crate::state::run::{Entered, LiftRun};
use crate::track::{Track, TrackName};
use chrono::NaiveDate;
use core::ops::Range;

pub use super::time::Kept;
pub use super::went::Went;

/// One lift of one day.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Outing {
    /// Its number.
    pub no: LiftNo,
    /// The day.
    pub date: NaiveDate,
    /// Load of the work sets.
    pub load: Mass,
    /// Work sets asked.
    pub sets: u8,
    /// Reps of a work set asked.
    pub reps: u8,
    /// The track's name, where the plan gave one.
    pub track: Option<TrackName>,
    /// How it went.
    pub went: Went,
    /// Whether every set reached the top of its range of reps; so it does where there is none.
    pub at_top: bool,
    /// Whether a set was harder than the plan asked.
    pub hard: bool,
    /// Whether the lifter settled the load on the day.
    pub chosen: bool,
    /// What was recorded as due after it.
    pub kept: Option<Kept>,
}

impl Outing {
    /// What became of a lift; `None` when no work set was begun and no back moved.
    #[must_use]
    pub fn of(run: &LiftRun) -> Option<Self> {
        let main = run.sheet.main_rungs();
        let first = run.sheet.rungs.get(main.start)?;
        let asked = run.sheet.reps_of(main.start).least;
        let sets = u8::try_from(main.len()).unwrap_or(u8::MAX);
        let went = went(run, &main)?;
        Some(Self {
            no: run.no,
            date: run.sheet.date,
            load: first.load,
            sets,
            reps: asked,
            track: run.sheet.track,
            went,
            at_top: at_top(run, &main),
            hard: is_hard(run, &main),
            chosen: run.is_settled(),
            kept: run.next.as_ref().map(NextTime::kept),
        })
    }

    /// What follows from it and what it follows from.
    #[must_use]
    pub const fn track(&self) -> Track {
        Track {
            reps: self.reps,
            name: self.track,
        }
    }

    /// Whether it went wrong so early that the same load again is no use: in a warm-up, or with
    /// less than half of the reps clean.
    #[must_use]
    pub const fn is_early(&self) -> bool {
        let clean = match self.went {
            Went::Well | Went::Cut { .. } => return false,
            Went::MovedWarm => return true,
            Went::Short { reps, .. } => reps,
            Went::Moved { rep, .. } => rep.saturating_sub(1),
        };
        (clean as u16) * 2 < self.reps as u16
    }
}

/// A moved back counts wherever it was; reps and sets count in the main work alone.
fn went(run: &LiftRun, main: &Range<usize>) -> Option<Went> {
    let (mut warm_moved, mut moved, mut short) = (false, None, None);
    let (mut done, mut done_main) = (0_u8, 0_usize);
    for (at, (entry, rung)) in run.passed().zip(&run.sheet.rungs).enumerate() {
        let Entered::Set { reps, hold } = entry.what else {
            continue;
        };
        if rung.kind == RungKind::WarmUp {
            warm_moved |= hold != Hold::Kept;
            continue;
        }
        done = done.saturating_add(1);
        let is_main = main.contains(&at);
        done_main += usize::from(is_main);
        let asked = run.sheet.reps_of(at).least;
        match hold {
            Hold::MovedAt(rep) => keep_least(&mut moved, done, rep),
            Hold::Kept if is_main && reps < asked => keep_least(&mut short, done, reps),
            Hold::Kept => {}
        }
    }
    if let Some((set, rep)) = moved {
        return Some(Went::Moved { set, rep });
    }
    if let Some((set, reps)) = short {
        return Some(Went::Short { set, reps });
    }
    match done {
        0 if warm_moved => Some(Went::MovedWarm),
        0 => None,
        done if done_main < main.len() => Some(Went::Cut { done }),
        _ => Some(Went::Well),
    }
}

/// The sets of the main work, with their rungs and reps.
fn main_sets<'r>(
    run: &'r LiftRun,
    main: &'r Range<usize>,
) -> impl Iterator<Item = (usize, u8)> + use<'r> {
    let all = run.passed().enumerate();
    let own = all.filter(|(at, _)| main.contains(at));
    own.filter_map(|(at, entry)| match entry.what {
        Entered::Set { reps, .. } => Some((at, reps)),
        Entered::Skipped
        | Entered::Stopped
        | Entered::WentOn
        | Entered::Settled
        | Entered::LeftOpen => None,
    })
}

/// Whether every set of the main work has the most reps of its range.
fn at_top(run: &LiftRun, main: &Range<usize>) -> bool {
    main_sets(run, main).all(|(at, reps)| reps >= run.sheet.reps_of(at).planned())
}

/// Whether a set of the main work was harder than asked, by half a point and more.
fn is_hard(run: &LiftRun, main: &Range<usize>) -> bool {
    let mut said = run.efforts.iter();
    said.any(|(at, effort)| {
        let at = usize::from(*at);
        let asked = run.sheet.group_of(at).and_then(|group| group.effort);
        main.contains(&at) && asked.is_some_and(|asked| *effort >= asked.saturating_add(5))
    })
}

/// Keeps the set with the fewest reps, the first of those.
fn keep_least(kept: &mut Option<(u8, u8)>, set: u8, reps: u8) {
    if kept.is_none_or(|(_, fewest)| reps < fewest) {
        *kept = Some((set, reps));
    }
}
