//! What is kept of one lifter's earlier lifts, as numbers in one line.
use chrono::NaiveDate;
use domain::next::outing::{Kept, Outing, Went};
use domain::past::{LifterPast, PastDay, PastOuting, Top};
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
    /// Two numbers a lift: days since the one before, place of the name.
    days: Vec<u16>,
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
        let mut before = 0;
        let mut flat = Vec::with_capacity(days.len() * 2);
        for PastDay { day, lift } in days {
            flat.extend([day.saturating_sub(before), *lift]);
            before = *day;
        }
        Self {
            lifter: lifter.to_owned(),
            names: names.clone(),
            tops: tops.iter().map(top).collect(),
            outings: outings.iter().map(One::of).collect(),
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
        let is_named = |lift: u16| usize::from(lift) < self.names.len();
        let mut day = 0_u16;
        let mut days = Vec::with_capacity(self.days.len() / 2);
        for two in self.days.chunks(2) {
            let [more, lift] = *two else {
                return None;
            };
            day = day.checked_add(more)?;
            days.push(PastDay { day, lift });
        }
        let mut outings = Vec::with_capacity(self.outings.len());
        for one in self.outings {
            outings.push(one.outing()?);
        }
        let named = days.iter().map(|done| done.lift);
        let mut named = named.chain(outings.iter().map(|past| past.lift));
        if !named.all(is_named) {
            return None;
        }
        Some(LifterPast {
            tops,
            outings,
            days,
            names: self.names,
            ..LifterPast::default()
        })
    }
}

impl One {
    fn of(past: &PastOuting) -> Self {
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
        Self(
            past.lift,
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

    fn outing(self) -> Option<PastOuting> {
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
            lift,
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
