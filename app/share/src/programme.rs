//! Days that a programme fills, among those of the plan: what was done of them comes from the
//! record, the rest is laid out by the kiosk.
//!
//! Refuses: standing beside the plan; where the plan has a lifter's day, the programme's rows are
//! left out.
use chrono::NaiveDate;
use journal::{LoadWish, Mass, MassUnit, PlannedRow};
use std::collections::BTreeMap;
use std::sync::Arc;

/// A row that a programme has for a day.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Filled {
    /// "split pulls, heavy day".
    pub programme: String,
    /// What is asked; nothing of it is done.
    pub row: PlannedRow,
}

/// What the kiosk lays out beside the record.
#[derive(Debug, Clone, Default)]
pub(crate) struct Laid {
    /// Days that programmes fill.
    pub(crate) filled: Arc<[Filled]>,
    /// In what each lifter reads loads, also one who has lifted nothing yet.
    pub(crate) units: Arc<BTreeMap<String, MassUnit>>,
    /// What shares of the days to come are in mass.
    pub(crate) shares: Arc<BTreeMap<ShareOf, Mass>>,
    /// The kiosk's day; `None` before it is told.
    pub(crate) today: Option<Today>,
}

/// Day (ISO 8601), lifter and lift of a row that asks for a share.
pub type ShareOf = (String, String, String);

/// A day of a gym.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Today {
    /// The day.
    pub date: NaiveDate,
    /// The gym's name.
    pub gym: String,
}

/// A row as it is shown, with its programme's name where that is known.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(crate) struct Shown {
    pub(crate) row: PlannedRow,
    pub(crate) programme: Option<String>,
    /// What a share of it is in mass, as it stands now.
    pub(crate) now: Option<Mass>,
}

/// The rows of the record with those of programmes for the days from `first` to `last`, of one
/// lifter or of all: latest day first, then by lifter.
pub(crate) fn together(
    rows: Vec<PlannedRow>,
    laid: &Laid,
    (first, last): (&str, &str),
    lifter: Option<&str>,
) -> Vec<Shown> {
    let mut all: Vec<Shown> = rows
        .into_iter()
        .map(|row| Shown {
            row,
            programme: None,
            now: None,
        })
        .collect();
    let is_wanted = |of: &&Filled| {
        let days = first..=last;
        days.contains(&of.row.date.as_str()) && lifter.is_none_or(|name| name == of.row.lifter)
    };
    for of in laid.filled.iter().filter(is_wanted) {
        let same_day =
            |shown: &Shown| shown.row.date == of.row.date && shown.row.lifter == of.row.lifter;
        if let Some(done) = all
            .iter_mut()
            .find(|shown| same_day(shown) && shown.row.lift == of.row.lift)
        {
            if done.row.by_programme {
                done.programme = Some(of.programme.clone());
            }
        } else if !all
            .iter()
            .any(|shown| same_day(shown) && !shown.row.by_programme)
        {
            all.push(Shown {
                row: of.row.clone(),
                programme: Some(of.programme.clone()),
                now: None,
            });
        }
    }
    for shown in &mut all {
        let reads = laid.units.get(&shown.row.lifter);
        shown.row.unit = reads.copied().or(shown.row.unit);
        let row = &shown.row;
        let of = (row.date.clone(), row.lifter.clone(), row.lift.clone());
        shown.now = laid.shares.get(&of).copied().filter(|_| is_share(row.load));
    }
    all.sort_by(|a, b| {
        let key = |shown: &Shown| (shown.row.lifter.clone(), shown.row.by_programme);
        b.row
            .date
            .cmp(&a.row.date)
            .then_with(|| key(a).cmp(&key(b)))
    });
    all
}

const fn is_share(load: LoadWish) -> bool {
    matches!(load, LoadWish::OfBest(_) | LoadWish::OfTraining(_))
}

/// The latest day of a programme.
pub(crate) fn last_day(laid: &Laid) -> Option<&str> {
    laid.filled.iter().map(|of| of.row.date.as_str()).max()
}
