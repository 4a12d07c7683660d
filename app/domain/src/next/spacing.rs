//! How many days the programme itself puts between two times of one lift, so that nobody is taken
//! for absent who comes whenever they are asked to.
use crate::lifter::Lifter;
use crate::next::away;
use crate::next::outing::Outing;
use crate::programme::{Coaching, Day, Pace, Task};
use crate::state::State;
use crate::track::Track;
use alloc::string::String;
use alloc::vec::Vec;
use chrono::NaiveDate;

/// Where nothing is planned and little was done: once a week. Common practice, no source.
const DAYS: u16 = 7;

/// The spacing of a lifter's lift with so many reps on `date`: the usual one of the plan's days if
/// the plan has it on that day, else the programme's, else the plan's or that of what was done.
#[must_use]
pub(crate) fn spacing(
    coaching: &Coaching,
    state: &State,
    lifter: &Lifter,
    (lift, track): (&str, Track),
    past: &[Outing],
    date: NaiveDate,
) -> u16 {
    let planned = planned(state, &lifter.name, lift, track);
    let by_plan = usual(&planned);
    if let Some(days) = by_plan.filter(|_| planned.contains(&date)) {
        return days;
    }
    let programme = coaching.of(&lifter.name);
    let by_programme = programme.and_then(|p| match p.pace {
        Pace::Blocks => usual(&p.block_dates(lift, track)),
        Pace::Week | Pace::Queue { .. } => of_programme(&p.days, p.pace, lift, track),
    });
    let done: Vec<NaiveDate> = past.iter().map(|outing| outing.date).collect();
    let by_record = || usual(&done).map(|days| days.max(DAYS));
    by_programme.or(by_plan).or_else(by_record).unwrap_or(DAYS)
}

/// The days on which the plan has or had the lift, oldest first.
fn planned(state: &State, lifter: &str, lift: &str, track: Track) -> Vec<NaiveDate> {
    let of = |(_, who): &&(NaiveDate, String)| who.as_str() == lifter;
    let days = state.plan.iter().filter(|(key, _)| of(key));
    let has = days.filter(|(_, rows)| {
        rows.iter()
            .any(|row| row.lift == lift && row.track() == track)
    });
    has.map(|((date, _), _)| *date).collect()
}

/// The median of the days between dates, the longer of the middle two; `None` for fewer than two.
fn usual(dates: &[NaiveDate]) -> Option<u16> {
    let mut gaps: Vec<u16> = dates
        .windows(2)
        .map(|pair| away::days(pair[0], pair[1]))
        .filter(|days| *days > 0)
        .collect();
    gaps.sort_unstable();
    gaps.get(gaps.len() / 2).copied()
}

/// The spacing of a lift in a programme: the time that its days take to come round, over how often
/// the lift is in them.
fn of_programme(days: &[Day], pace: Pace, lift: &str, track: Track) -> Option<u16> {
    let round = match pace {
        Pace::Week | Pace::Blocks => 7,
        Pace::Queue { apart_days } => u16::from(apart_days) * u16::try_from(days.len()).ok()?,
    };
    let tasks = days.iter().flat_map(|day| &day.tasks);
    // Times in so many rounds as the longest row of lifts that take turns has.
    let is = |task: &&Task| {
        task.alternate
            .iter()
            .any(|w| w.lift == lift && Track::of_reps(w.reps) == track)
    };
    let gap = |task: &Task| {
        let here = task
            .alternate
            .iter()
            .filter(|w| w.lift == lift && Track::of_reps(w.reps) == track);
        let (times, turns) = (here.count(), task.alternate.len());
        round * u16::try_from(turns.div_ceil(times.max(1))).unwrap_or(1)
    };
    let having: Vec<&Task> = tasks.filter(is).collect();
    let least = having.iter().map(|task| gap(task)).min()?;
    let often = u16::try_from(having.len()).unwrap_or(1).max(1);
    Some(least.div_ceil(often))
}
