//! Today at the rack: one entry a lifter and lift, with its sheet or why there is none.
//!
//! Refuses: guessing. What is not measured, not written or not loadable is said.
use self::against::against;
use crate::disc_height;
use crate::equipment::{Bar, PlateSet};
use crate::gym::{Gym, Pattern};
use crate::ladder::{BuiltLadder, WorkSet, build_from, neighbours, work_off};
use crate::lift::{Lift, Start, to_step};
use crate::lifter::Lifter;
use crate::mass::{Mass, MassUnit};
use crate::next::Due;
use crate::next::here::{TrackOf, decision};
use crate::next::outing::Outing;
use crate::next::outings::outings;
use crate::place::place;
use crate::prescription::{LoadWish, Prescription, Role, SetGroup};
use crate::programme::fill::{Filled, fill};
use crate::sheet::{BarSheet, GroupSheet, HookSheet, LiftSheet, Rung, RungKind, Warning};
use crate::solve::Refusal;
use crate::split::{Split, advice};
use crate::state::State;
use crate::steel::{self, Figures};
use alloc::string::String;
use alloc::vec::Vec;
use chrono::NaiveDate;

mod no_sheet;

pub use no_sheet::NoSheet;

mod against;
mod bar;
pub mod groups;

pub use crate::lift_bar::loaded_with;

use groups::share_of;

/// One lifter's one lift of a day.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct DayEntry {
    /// Who.
    pub lifter: String,
    /// Kilo or pound for this lifter.
    pub unit: MassUnit,
    /// What; empty when nothing is planned.
    pub lift: String,
    /// The sheet, or why there is none.
    pub outcome: Result<LiftSheet, NoSheet>,
    /// The programme and its day, where the plan is silent: "split pulls, heavy day".
    pub programme: Option<String>,
    /// What the plan asks, where it is another load than the one that is due and the coach has not
    /// ruled; the sheet has the lower one.
    pub planned: Option<Mass>,
    /// What the rules of next time give for it, whoever wrote the load; `None` the first time.
    pub next: Option<Due>,
    /// What the makers' figures come to for the day's heaviest load; `None` where none was stated.
    pub steel: Option<Figures>,
    /// Advice on splitting the deadlift, for it and its partials; never done by itself.
    pub split: Option<Split>,
}

/// Every lifter's entries of `date`, in the order of the gym's file: those that the plan has, one
/// a row; where it has none, those of the lifter's programme; else one that says why there are
/// none.
#[must_use]
pub fn day(gym: &Gym, state: &State, date: NaiveDate) -> Vec<DayEntry> {
    let of = |lifter: &Lifter| entries(gym, state, lifter, date);
    gym.lifters.iter().flat_map(of).collect()
}

/// One lifter's entries of a day.
pub(crate) fn entries(gym: &Gym, state: &State, lifter: &Lifter, date: NaiveDate) -> Vec<DayEntry> {
    let none = |why| {
        Vec::from([DayEntry {
            lifter: lifter.name.clone(),
            unit: lifter.unit,
            lift: String::new(),
            outcome: Err(why),
            programme: None,
            planned: None,
            next: None,
            steel: None,
            split: None,
        }])
    };
    let entry = |row: &Prescription, next, programme: Option<&String>| {
        let next: Option<Due> = next;
        let (outcome, planned) = against(gym, state, lifter, row, next.as_ref());
        DayEntry {
            lifter: lifter.name.clone(),
            unit: lifter.unit,
            lift: row.lift.clone(),
            steel: outcome.as_ref().ok().and_then(|sheet| steel_of(gym, sheet)),
            outcome,
            programme: programme.cloned(),
            planned,
            next,
            split: advice(gym, state, lifter, date).filter(|split| split.rule.concerns(&row.lift)),
        }
    };
    let planned = state.plan.get(&(date, lifter.name.clone()));
    if let Some(rows) = planned.filter(|rows| !rows.is_empty()) {
        let next = |row: &Prescription| decision(gym, state, lifter, TrackOf::row(row), date);
        return rows.iter().map(|row| entry(row, next(row), None)).collect();
    }
    match fill(gym, state, lifter, date) {
        None => none(NoSheet::NothingToday {
            next: ahead(gym, state, lifter, date),
        }),
        Some(Filled::Rest { programme, from }) => none(NoSheet::Rest { programme, from }),
        Some(Filled::Lifts { programme, rows }) => rows
            .iter()
            .map(|(row, next)| entry(row, next.clone(), Some(&programme)))
            .collect(),
    }
}

/// Days after one without a lift on which a programme is asked for the next.
const AHEAD_DAYS: usize = 14;

/// The next day after `date` on which plan or programme has something for a lifter, and the first
/// lift of that day. The programme is silent around the plan's days, so the sooner one counts.
fn ahead(
    gym: &Gym,
    state: &State,
    lifter: &Lifter,
    date: NaiveDate,
) -> Option<(NaiveDate, String)> {
    let from = date.succ_opt()?;
    let all = state.plan.range((from, String::new())..);
    let mut planned = all
        .filter(|((_, who), _)| *who == lifter.name)
        .filter_map(|((day, _), rows)| Some((*day, rows.first()?.lift.clone())));
    let mut filled = from.iter_days().take(AHEAD_DAYS).filter_map(|day| {
        let Some(Filled::Lifts { rows, .. }) = fill(gym, state, lifter, day) else {
            return None;
        };
        Some((day, rows.first()?.0.lift.clone()))
    });
    let next = [planned.next(), filled.next()];
    next.into_iter().flatten().min_by_key(|(day, _)| *day)
}

/// The makers' figures for a sheet, as the gym has them.
fn steel_of(gym: &Gym, sheet: &LiftSheet) -> Option<Figures> {
    let rack = gym.racks.iter().find(|rack| rack.name == sheet.rack)?;
    let bar = gym.bars.iter().find(|bar| bar.name == sheet.bar.name)?;
    let lift = gym.lifts.iter().find(|lift| lift.name == sheet.lift)?;
    steel::figures(rack, bar, lift, &sheet.rungs)
}

/// The sheet of one row of the plan.
///
/// # Errors
/// [`NoSheet`] when the gym's files miss something or nothing can be loaded.
pub fn sheet(
    gym: &Gym,
    state: &State,
    lifter: &Lifter,
    row: &Prescription,
) -> Result<LiftSheet, NoSheet> {
    let missing = |what, name: &str| NoSheet::Missing {
        what,
        name: name.into(),
    };
    let lift = gym.lifts.iter().find(|l| l.name == row.lift);
    let lift = lift.ok_or_else(|| missing("lift", &row.lift))?;
    let rack = gym.racks.iter().find(|r| r.name == lifter.rack);
    let rack = rack.ok_or_else(|| missing("rack", &lifter.rack))?;
    let plates = gym.plate_sets.iter().find(|p| p.name == rack.plates);
    let plates = plates.ok_or_else(|| missing("plate set", &rack.plates))?;
    let bar = bar::of_row(gym, rack, lifter, lift, row)?;
    bar::holes(rack, row)?;
    let wanted = row.ladder.as_ref().unwrap_or(&lifter.ladder);
    let pattern = gym.patterns.iter().find(|p| p.name == *wanted);
    let pattern = pattern.ok_or_else(|| missing("warm-up pattern", wanted))?;

    let asked = asked((gym, state), lifter, row, &row.first)?;
    let mut warnings = Vec::new();
    let place = place(
        gym,
        (rack, bar),
        lifter,
        lift,
        row.first.manner.hole,
        &mut warnings,
    );
    makes(bar, plates, lifter.unit, asked)?;
    let built = ladder((lift, bar, plates), pattern, row, asked)?;
    let grouped = groups::add((lift, bar, plates, lifter), row, built.rungs, |group| {
        self::asked((gym, state), lifter, row, group)
    })?;
    if built.off != Mass::ZERO {
        warnings.push(Warning::NotLoadable);
    }
    // On blocks each rung says how high its bar is.
    if row.groups().all(|group| group.manner.block.is_none()) {
        disc_height::warn(lift, &grouped.rungs, &mut warnings);
    }
    steel::warn(rack, bar, lift, &grouped.rungs, &mut warnings);
    let mut sheet = LiftSheet {
        lifter: lifter.name.clone(),
        unit: lifter.unit,
        lift: lift.name.clone(),
        track: row.track,
        date: row.date,
        rack: rack.name.clone(),
        bar: BarSheet {
            name: bar.name.clone(),
            mass: bar.mass,
            collars: bar.collars,
            shaft_diameter: bar.shaft_diameter,
            sleeve: bar.sleeve,
        },
        pins: place.pins,
        hooks: (lift.start == Start::Hooks).then(|| HookSheet {
            hole: lifter.hook_hole(&lift.name),
        }),
        overlap: place.overlap,
        grip: lift.grip,
        rungs: rested(grouped.rungs, lift, (row, &grouped.groups)),
        groups: groups::told(row, grouped.groups),
        asked,
        cues: lift.cues.clone(),
        cautions: lift.cautions.clone(),
        warnings,
        note: row.note.clone(),
    };
    sheet.dress(lifter);
    Ok(sheet)
}

/// The load that a group of the plan asks for. A best is the lifter's file's or the record's, whichever is
/// heavier.
fn asked(
    (gym, state): (&Gym, &State),
    lifter: &Lifter,
    row: &Prescription,
    group: &SetGroup,
) -> Result<Mass, NoSheet> {
    let lift = gym.lifts.iter().find(|lift| lift.name == row.lift);
    let step = lift.and_then(|lift| lift.step_for(lifter.unit));
    let share = match group.load {
        LoadWish::Mass(mass) => return Ok(mass),
        LoadWish::OfBest(share) => share,
        LoadWish::OfTraining(share) => {
            let max = lifter.training_max(&row.lift, row.date);
            return Ok(to_step(
                share_of(max.ok_or(NoSheet::NoTrainingMax)?, share),
                step,
            ));
        }
        LoadWish::More(more) => {
            let past = outings(state, &lifter.name, &row.lift, row.date);
            let like = |outing: &&Outing| outing.track() == row.track();
            let last = past.iter().rev().find(like).ok_or(NoSheet::NoLoad)?;
            return Ok(last.load + more);
        }
        LoadWish::Due | LoadWish::OfTop(_) => return Err(NoSheet::NoLoad),
    };
    let written = lifter
        .bests
        .iter()
        .find(|(lift, _)| *lift == row.lift)
        .map(|(_, best)| *best);
    let best = written
        .max(state.best(&lifter.name, &row.lift))
        .ok_or(NoSheet::NoBest)?;
    Ok(to_step(share_of(best, share), step))
}

/// The load that a group of the plan says by itself, as far as the lifter has what it is a share of.
pub(crate) fn planned_load(
    with: (&Gym, &State),
    lifter: &Lifter,
    row: &Prescription,
    group: &SetGroup,
) -> Option<Mass> {
    match group.load {
        LoadWish::Mass(_) | LoadWish::OfBest(_) | LoadWish::OfTraining(_) => {
            asked(with, lifter, row, group).ok()
        }
        LoadWish::More(_) | LoadWish::Due | LoadWish::OfTop(_) => None,
    }
}

/// What a group's share of a best or of a training max comes to, as the lifter has it now; `None`
/// where no such share is asked or its whole is not known.
#[must_use]
pub fn share_now(
    with: (&Gym, &State),
    lifter: &Lifter,
    row: &Prescription,
    group: &SetGroup,
) -> Option<Mass> {
    planned_load(with, lifter, row, group).filter(|_| group.load.mass().is_none())
}

/// Whether the plates that a row's lifter has make the mass that it asks for. A row that names
/// what is not there, or a share, is left to others.
///
/// # Errors
/// [`NoSheet::NotMade`] when they do not, [`NoSheet::NoLadder`] when they are beyond what is
/// planned with.
pub fn check_load(gym: &Gym, row: &Prescription) -> Result<(), NoSheet> {
    let lifter = gym.lifters.iter().find(|l| l.name == row.lifter);
    let lift = gym.lifts.iter().find(|l| l.name == row.lift);
    let (Some(lifter), Some(lift), LoadWish::Mass(asked)) = (lifter, lift, row.first.load) else {
        return Ok(());
    };
    let own = row.bar.as_ref();
    let own = own.and_then(|name| gym.bars.iter().find(|bar| bar.name == *name));
    match loaded_with(gym, lifter, lift).map(|(bar, plates)| (own.unwrap_or(bar), plates)) {
        Some((bar, plates)) => makes(bar, plates, lifter.unit, asked),
        None => Ok(()),
    }
}

/// Whether the plates make what is asked for, or near enough.
pub(crate) fn makes(
    bar: &Bar,
    plates: &PlateSet,
    unit: MassUnit,
    asked: Mass,
) -> Result<(), NoSheet> {
    let (below, above) = neighbours(asked, bar, plates).map_err(no_ladder)?;
    let near = |load: &Mass| load.apart(asked) <= work_off(asked);
    if below.iter().chain(&above).any(near) {
        return Ok(());
    }
    Err(NoSheet::NotMade {
        asked,
        unit,
        below,
        above,
    })
}

pub(crate) fn no_ladder(refusal: Refusal) -> NoSheet {
    NoSheet::NoLadder {
        constraint: refusal.constraint,
        text: refusal.text,
    }
}

/// The ladder, planned with this bar and these plates.
fn ladder(
    (lift, bar, plates): (&Lift, &Bar, &PlateSet),
    pattern: &Pattern,
    row: &Prescription,
    asked: Mass,
) -> Result<BuiltLadder, NoSheet> {
    let work = WorkSet {
        load: asked,
        sets: row.first.sets,
        reps: row.first.reps.planned(),
    };
    build_from(lift.start, &work, pattern, bar, plates).map_err(no_ladder)
}

/// Adds rests to the rungs.
fn rested(
    mut rungs: Vec<Rung>,
    lift: &Lift,
    (row, groups): (&Prescription, &[GroupSheet]),
) -> Vec<Rung> {
    let rest_of = |at: usize| {
        let of = groups.iter().position(|group| group.rungs().contains(&at));
        let group = of.and_then(|of| row.groups().nth(of));
        let group = group.unwrap_or(&row.first);
        let own = match group.role {
            Role::Drop => 0,
            Role::Work | Role::Top | Role::BackOff => lift.rest_work_s,
        };
        group.rest_s.unwrap_or(own)
    };
    for (at, rung) in rungs.iter_mut().enumerate() {
        rung.rest_s = match rung.kind {
            _ if at == 0 => 0,
            RungKind::WarmUp => lift.rest_warm_s,
            RungKind::Work => rest_of(at),
        };
    }
    rungs
}
