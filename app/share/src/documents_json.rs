//! Rows of the documents for programs. Words are English; loads are exact texts with their unit.
use crate::programme::Shown;
use journal::{LoadWish, MassUnit};
use serde::Serialize;
use view::Language;
use view::next_all::{self, CoachLine};

const SAY: Language = Language::English;

/// A line of the coach's list.
#[derive(Debug, Serialize)]
pub(crate) struct DueJson {
    pub(crate) lifter: String,
    pub(crate) lift: Option<String>,
    /// The track's name.
    track: Option<String>,
    /// Reps of the track's main sets.
    reps: Option<u8>,
    /// "due", "stuck", "hurt", in words.
    state: String,
    /// Whether it waits for the coach.
    waits: bool,
    /// The load that is due; null where none is.
    due: Option<String>,
    unit: &'static str,
    why: String,
}

impl DueJson {
    pub(crate) fn of(line: &CoachLine) -> Self {
        let due = line.due.as_ref().and_then(|due| due.decision.due());
        let track = line.of.as_ref().map(|(_, track)| track);
        let name = track.and_then(|track| track.name);
        Self {
            lifter: line.lifter.clone(),
            lift: line.of.as_ref().map(|(lift, _)| lift.clone()),
            track: name.map(|name| name.as_str().to_owned()),
            reps: track.map(|track| track.reps),
            state: SAY.say(next_all::state_of(&line.concern)),
            waits: line.concern.waits(),
            due: due.map(|load| load.exact(line.unit)),
            unit: line.unit.word(),
            why: next_all::because(SAY, line),
        }
    }
}

/// Somebody of the gym.
#[derive(Debug, Serialize)]
pub(crate) struct LifterJson {
    pub(crate) lifter: String,
    /// Null where neither gym nor record knows it.
    pub(crate) unit: Option<&'static str>,
    /// Sets that stand.
    pub(crate) sets: u64,
    /// The latest day with one.
    pub(crate) last: Option<String>,
    /// Whether the gym's file has them now.
    pub(crate) in_gym: bool,
}

impl LifterJson {
    pub(crate) fn new(lifter: &str, unit: Option<MassUnit>) -> Self {
        Self {
            lifter: lifter.to_owned(),
            unit: unit.map(MassUnit::word),
            sets: 0,
            last: None,
            in_gym: unit.is_some(),
        }
    }
}

/// A row of the plan, or one that a programme fills.
#[derive(Debug, Serialize)]
pub(crate) struct PlanJson<'r> {
    date: &'r str,
    lifter: &'r str,
    lift: &'r str,
    sets: u32,
    reps: u32,
    /// The load as a plan writes it; null for what is due.
    load: Option<String>,
    /// What a share comes to now.
    load_now: Option<String>,
    note: &'r str,
    by_programme: bool,
    done_sets: u32,
    done_reps: u32,
    done_load: Option<String>,
    /// Work sets in which the back moved.
    back_moved: u32,
}

impl<'r> PlanJson<'r> {
    pub(crate) fn of(Shown { row, now, .. }: &'r Shown) -> Self {
        let unit = row.unit.unwrap_or_default();
        Self {
            date: &row.date,
            lifter: &row.lifter,
            lift: &row.lift,
            sets: row.sets,
            reps: row.reps,
            load: match row.load {
                LoadWish::Mass(mass) => Some(mass.exact(unit)),
                LoadWish::OfBest(share) => Some(SAY.percent(share)),
                LoadWish::Due => None,
                LoadWish::OfTraining(_) | LoadWish::OfTop(_) | LoadWish::More(_) => {
                    Some(SAY.wish(row.load, unit))
                }
            },
            load_now: now.map(|now| now.exact(unit)),
            note: &row.note,
            by_programme: row.by_programme,
            done_sets: row.done_sets,
            done_reps: row.done_reps,
            done_load: row.done_load.map(|load| load.exact(unit)),
            back_moved: row.moved,
        }
    }
}
