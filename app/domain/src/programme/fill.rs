//! Fills a day on which the coach's plan is silent from the programme that a lifter follows.
//!
//! Refuses: to stand beside a plan. Where the plan has a pulling day near by, the programme is
//! silent too.
use super::{Done, Due, Pace, Programme, Standing, blocks};
use crate::gym::Gym;
use crate::lifter::Lifter;
use crate::next::Due as NextDue;
use crate::next::here::{TrackOf, decision};
use crate::next::outing::Outing;
use crate::prescription::{LoadWish, Prescription, SetGroup};
use crate::state::State;
use crate::track::Track;
use alloc::string::String;
use alloc::vec::Vec;
use chrono::{Datelike as _, Days, NaiveDate};

/// What a programme has for a lifter's day.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Filled {
    /// These lifts.
    Lifts {
        /// "split pulls, heavy day".
        programme: String,
        /// In order, each with the decision that its load comes from; `None` the first time.
        rows: Vec<(Prescription, Option<NextDue>)>,
    },
    /// Nothing before a day.
    Rest {
        /// The programme's name.
        programme: String,
        /// When it goes on.
        from: NaiveDate,
    },
}

/// What the lifter's programme has for `date`; `None` without a programme, or where the plan
/// speaks for that time.
#[must_use]
pub fn fill(gym: &Gym, state: &State, lifter: &Lifter, date: NaiveDate) -> Option<Filled> {
    let programme = gym.coaching.of(&lifter.name)?;
    if planned_near(state, &lifter.name, programme, date) {
        return None;
    }
    if programme.pace == Pace::Blocks {
        return of_blocks(gym, state, lifter, programme, date);
    }
    let standing = standing(programme, state, &lifter.name, date);
    let (day, works) = match programme.due(&standing, date) {
        Due::Day { day, works } => (day, works),
        Due::Rest(from) => {
            return Some(Filled::Rest {
                programme: programme.name.clone(),
                from,
            });
        }
    };
    let rows = works.into_iter().map(|work| {
        let of = TrackOf {
            lift: &work.lift,
            track: Track::of_reps(work.reps),
            bar: work.bar.as_deref(),
        };
        let next = decision(gym, state, lifter, of, date);
        let due = next.as_ref().map(|next| LoadWish::Mass(next.decision.load));
        let load = due.unwrap_or(work.first);
        let row = Prescription {
            date,
            lifter: lifter.name.clone(),
            lift: work.lift.clone(),
            first: SetGroup {
                rest_s: work.rest_s,
                manner: work.manner,
                ..SetGroup::straight(work.sets, work.reps, load)
            },
            then: Vec::new(),
            track: None,
            ladder: work.ladder.clone(),
            bar: work.bar.clone(),
            note: work.note.clone(),
        };
        (row, next)
    });
    Some(Filled::Lifts {
        programme: alloc::format!("{}, {}", programme.name, day.name),
        rows: rows.collect(),
    })
}

/// The same for a programme of blocks; `None` once its last block is over.
fn of_blocks(
    gym: &Gym,
    state: &State,
    lifter: &Lifter,
    programme: &Programme,
    date: NaiveDate,
) -> Option<Filled> {
    let Some(on) = programme.block_day(date) else {
        return programme.next_block_day(date).map(|from| Filled::Rest {
            programme: programme.name.clone(),
            from,
        });
    };
    let light = on.block.light(on.week);
    let rows = on.day.lifts.iter().filter_map(|own| {
        let row = blocks::row(own, on.week, &lifter.name, date)?;
        let next = decision(gym, state, lifter, TrackOf::row(&row), date);
        let due = next.as_ref().map(|next| next.decision.load);
        let lift = gym.lifts.iter().find(|lift| lift.name == own.lift);
        let step = lift.and_then(|lift| lift.step_for(lifter.unit));
        let row = blocks::filled(&row, due, own.first, (light, step));
        Some((row, next))
    });
    Some(Filled::Lifts {
        programme: alloc::format!("{}, {}", programme.name, on.words()),
        rows: rows.collect(),
    })
}

/// What the lifter's programme had and has for the days from `first` to `last`, as it can be said
/// on `today`: the name of the programme and its day, and a row a lift. Of days that follow each
/// other whenever somebody comes, those on which something was done, and the next; of days of the
/// week all, from the lifter's first lift on.
#[must_use]
pub fn filled(
    gym: &Gym,
    state: &State,
    lifter: &Lifter,
    (first, last): (NaiveDate, NaiveDate),
    today: NaiveDate,
) -> Vec<(String, Prescription)> {
    let Some(programme) = gym.coaching.of(&lifter.name) else {
        return Vec::new();
    };
    let done = done(state, &lifter.name, NaiveDate::MAX);
    let mut dates: Vec<NaiveDate> = match programme.pace {
        Pace::Week => {
            let since = done.first().map_or(today, |day| day.date).max(first);
            since.iter_days().take_while(|day| *day <= last).collect()
        }
        Pace::Blocks => first.iter_days().take_while(|day| *day <= last).collect(),
        Pace::Queue { .. } => {
            let on_days = done.iter().map(|day| day.date);
            let next = match fill(gym, state, lifter, today) {
                Some(Filled::Rest { from, .. }) => from,
                Some(Filled::Lifts { .. }) | None => today,
            };
            on_days.chain([next]).collect()
        }
    };
    dates.retain(|day| (first..=last).contains(day));
    dates.sort_unstable();
    dates.dedup();
    let rows = dates.into_iter().filter_map(|day| {
        let Filled::Lifts { programme, rows } = fill(gym, state, lifter, day)? else {
            return None;
        };
        Some(
            rows.into_iter()
                .map(move |(row, _)| (programme.clone(), row)),
        )
    });
    rows.flatten().collect()
}

/// Where a lifter stands in a programme on `date`, from what was done before it and where the
/// coach put them.
#[must_use]
pub fn standing(programme: &Programme, state: &State, lifter: &str, date: NaiveDate) -> Standing {
    programme.standing_of(lifter, date, done(state, lifter, date))
}

/// What a lifter did before `date`, a day at a time.
fn done<'s>(state: &'s State, lifter: &str, date: NaiveDate) -> Vec<Done<'s>> {
    let past = state.past.lifters.get(lifter);
    let past = past.into_iter().flat_map(|past| past.done());
    let runs = state.runs_of(lifter);
    let late = runs
        .filter(|run| Outing::of(run).is_some())
        .map(|run| (run.sheet.date, run.sheet.lift.as_str()));
    let mut lifts: Vec<_> = past.chain(late).filter(|(day, _)| *day < date).collect();
    lifts.sort_by_key(|(day, _)| *day);
    let same = |a: &(NaiveDate, &str), b: &(NaiveDate, &str)| a.0 == b.0;
    lifts
        .chunk_by(same)
        .map(|day| Done {
            date: day[0].0,
            lifts: day.iter().map(|(_, lift)| *lift).collect(),
        })
        .collect()
}

/// Whether the plan has a row for the lifter within the programme's distance, or in the same week
/// where days of the week rule.
fn planned_near(state: &State, lifter: &str, programme: &Programme, date: NaiveDate) -> bool {
    let (from, to) = match programme.pace {
        Pace::Queue { apart_days } => {
            let days = Days::new(u64::from(apart_days.saturating_sub(1)));
            (date.checked_sub_days(days), date.checked_add_days(days))
        }
        Pace::Week | Pace::Blocks => {
            let monday = u64::from(date.weekday().num_days_from_monday());
            let monday = date.checked_sub_days(Days::new(monday));
            (
                monday,
                monday.and_then(|day| day.checked_add_days(Days::new(6))),
            )
        }
    };
    let from = (from.unwrap_or(NaiveDate::MIN), String::new());
    let to = to.unwrap_or(NaiveDate::MAX);
    let near = state
        .plan
        .range(from..)
        .take_while(|((day, _), _)| *day <= to);
    near.into_iter().any(|((_, name), _)| name == lifter)
}
