//! What is kept of one lifter's earlier lifts, as numbers in one line.
use chrono::NaiveDate;
use domain::next::outing::{Kept, Outing, Went};
use domain::past::{LifterPast, PastOuting, Top};
use domain::{LiftNo, Mass, MassUnit, Moment, TrackName};
use serde::{Deserialize, Serialize};
use std::collections::BTreeMap;

/// One lifter's.
#[derive(Debug, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct Past {
    pub(super) lifter: String,
    names: Vec<String>,
    tops: Vec<Best>,
    outings: Vec<One>,
    /// Three numbers a lift: days and numbers since the one before, place of the name.
    days: Vec<i64>,
}

/// Lift, first number, best in nanograms, greatest product.
type Best = (String, Option<u32>, Option<i64>, Option<String>);

/// Place of the lift in `names`, number, day since 1970-01-01, load, sets, reps, how it went, flags, what was due, when, track.
#[derive(Debug, Serialize, Deserialize)]
struct One(
    u16,
    u32,
    i32,
    i64,
    u8,
    u8,
    (u8, u8, u8),
    u8,
    Option<(i64, bool, bool, i64)>,
    i64,
    Option<String>,
);

const AT_TOP: u8 = 1;
const CHOSEN: u8 = 2;
const LEFT_OPEN: u8 = 4;
const POUNDS: u8 = 8;
const HARD: u8 = 16;

impl Past {
    pub(super) fn of(lifter: &str, past: &LifterPast) -> Self {
        let LifterPast {
            whole: _,
            tops,
            outings,
            days,
            names,
        } = past;
        let top = |(lift, top): (&String, &Top)| {
            let first = top.first.map(|no| no.0);
            let most = top.most.map(|most| most.to_string());
            (lift.clone(), first, top.best.map(Mass::ng), most)
        };
        let (mut day, mut no) = (0, 0);
        let mut flat = Vec::new();
        for (date, own, at) in days {
            let now = (i64::from(date.to_epoch_days()), i64::from(own.0));
            flat.extend([now.0 - day, now.1 - no, i64::from(*at)]);
            (day, no) = now;
        }
        Self {
            lifter: lifter.to_owned(),
            names: names.clone(),
            tops: tops.iter().map(top).collect(),
            outings: outings.iter().map(|past| One::of(past, names)).collect(),
            days: flat,
        }
    }

    /// `None` when a number is none that could have been written.
    pub(super) fn kept(self) -> Option<LifterPast> {
        let mut tops = BTreeMap::new();
        for (lift, first, best, most) in self.tops {
            let top = Top {
                first: first.map(LiftNo),
                best: best.map(Mass::from_ng),
                most: most.map(|text| text.parse()).transpose().ok()?,
            };
            tops.insert(lift, top);
        }
        let (mut day, mut no) = (0_i64, 0_i64);
        let mut days = Vec::new();
        for three in self.days.chunks(3) {
            let [more_days, more, at] = three else {
                return None;
            };
            (day, no) = (day.checked_add(*more_days)?, no.checked_add(*more)?);
            let date = NaiveDate::from_epoch_days(day.try_into().ok()?)?;
            days.push((date, LiftNo(no.try_into().ok()?), (*at).try_into().ok()?));
        }
        let names = &self.names;
        let outings = self.outings.into_iter().map(|one| one.outing(names));
        Some(LifterPast {
            tops,
            outings: outings.collect::<Option<_>>()?,
            days,
            names: self.names,
            ..LifterPast::default()
        })
    }
}

impl One {
    fn of(past: &PastOuting, names: &[String]) -> Self {
        let o = &past.outing;
        let flag = |on: bool, bit: u8| if on { bit } else { 0 };
        let flags = flag(o.at_top, AT_TOP)
            | flag(o.hard, HARD)
            | flag(o.chosen, CHOSEN)
            | flag(past.left_open, LEFT_OPEN)
            | flag(past.unit == MassUnit::Lb, POUNDS);
        let went = match o.went {
            Went::Well => (0, 0, 0),
            Went::Short { set, reps } => (1, set, reps),
            Went::Moved { set, rep } => (2, set, rep),
            Went::MovedWarm => (3, 0, 0),
            Went::Cut { done } => (4, done, 0),
        };
        let kept = o.kept.map(|k| (k.load.ng(), k.by_coach, k.asks, k.at.0));
        let day = o.date.to_epoch_days();
        let lift = names.iter().position(|name| *name == past.lift);
        let lift = lift
            .and_then(|at| u16::try_from(at).ok())
            .unwrap_or(u16::MAX);
        Self(
            lift,
            o.no.0,
            day,
            o.load.ng(),
            o.sets,
            o.reps,
            went,
            flags,
            kept,
            past.at.0,
            o.track.map(|name| name.as_str().to_owned()),
        )
    }

    fn outing(self, names: &[String]) -> Option<PastOuting> {
        let Self(lift, no, day, load, sets, reps, went, flags, kept, at, track) = self;
        let went = match went {
            (0, _, _) => Went::Well,
            (1, set, reps) => Went::Short { set, reps },
            (2, set, rep) => Went::Moved { set, rep },
            (3, _, _) => Went::MovedWarm,
            (4, done, _) => Went::Cut { done },
            _ => return None,
        };
        let on = |bit: u8| flags & bit != 0;
        let kept = kept.map(|(load, by_coach, asks, at)| Kept {
            load: Mass::from_ng(load),
            by_coach,
            asks,
            at: Moment(at),
        });
        let track = match track {
            Some(name) => Some(TrackName::new(&name)?),
            None => None,
        };
        Some(PastOuting {
            lift: names.get(usize::from(lift))?.clone(),
            outing: Outing {
                no: LiftNo(no),
                date: NaiveDate::from_epoch_days(day)?,
                load: Mass::from_ng(load),
                sets,
                reps,
                track,
                went,
                at_top: on(AT_TOP),
                hard: on(HARD),
                chosen: on(CHOSEN),
                kept,
            },
            at: Moment(at),
            left_open: on(LEFT_OPEN),
            unit: if on(POUNDS) {
                MassUnit::Lb
            } else {
                MassUnit::Kg
            },
        })
    }
}
