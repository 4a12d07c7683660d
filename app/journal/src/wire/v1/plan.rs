//! Wire version 1: a coach's plan. Never change; add v2.
//!
//! Refuses: unknown fields, days in any other form.
use super::{WireFault, present, read_date, write_date};
use domain::prescription::{LoadWish, SetGroup};
use domain::{Fact, Mass, Prescription};
use serde::{Deserialize, Serialize};

/// Body of `plan_taken`.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct PlanTakenV1 {
    /// The file's name.
    pub(crate) name: String,
    /// Its rows.
    pub(crate) rows: Vec<PrescriptionV1>,
}

impl PlanTakenV1 {
    pub(super) fn of(name: &str, rows: &[Prescription]) -> Self {
        Self {
            name: name.to_owned(),
            rows: rows.iter().map(PrescriptionV1::from).collect(),
        }
    }
}

impl TryFrom<PlanTakenV1> for Fact {
    type Error = WireFault;
    fn try_from(body: PlanTakenV1) -> Result<Self, WireFault> {
        let rows = body.rows.into_iter().map(Prescription::try_from);
        Ok(Self::PlanTaken {
            name: body.name,
            rows: rows.collect::<Result<_, _>>()?,
        })
    }
}

/// Body of `day_cleared`.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct DayClearedV1 {
    /// Who.
    pub(crate) lifter: String,
    /// ISO 8601.
    pub(crate) date: String,
}

impl DayClearedV1 {
    pub(super) fn of(lifter: &str, date: chrono::NaiveDate) -> Self {
        Self {
            lifter: lifter.to_owned(),
            date: write_date(date),
        }
    }
}

impl TryFrom<DayClearedV1> for Fact {
    type Error = WireFault;
    fn try_from(body: DayClearedV1) -> Result<Self, WireFault> {
        Ok(Self::DayCleared {
            lifter: body.lifter,
            date: read_date(&body.date)?,
        })
    }
}

/// One row of a plan.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct PrescriptionV1 {
    /// ISO 8601.
    pub(crate) date: String,
    /// Who.
    pub(crate) lifter: String,
    /// What.
    pub(crate) lift: String,
    /// Work sets.
    pub(crate) sets: u8,
    /// Reps of one.
    pub(crate) reps: u8,
    /// How much.
    pub(crate) load: LoadWishV1,
    /// Pattern, null for the lifter's own.
    #[serde(deserialize_with = "present")]
    pub(crate) ladder: Option<String>,
    /// Seconds, null for the lift's own.
    #[serde(deserialize_with = "present")]
    pub(crate) rest_s: Option<u32>,
    /// The coach's words.
    pub(crate) note: String,
}

impl From<&Prescription> for PrescriptionV1 {
    fn from(row: &Prescription) -> Self {
        Self {
            date: write_date(row.date),
            lifter: row.lifter.clone(),
            lift: row.lift.clone(),
            sets: row.first.sets,
            reps: row.first.reps.planned(),
            load: match row.first.load {
                LoadWish::Mass(mass) => LoadWishV1::MassNg(mass.ng()),
                LoadWish::OfBest(share) => LoadWishV1::OfBest(share),
                LoadWish::OfTraining(_)
                | LoadWish::OfTop(_)
                | LoadWish::More(_)
                | LoadWish::Due => {
                    unreachable!("version 2 writes rows that are not straight")
                }
            },
            ladder: row.ladder.clone(),
            rest_s: row.first.rest_s,
            note: row.note.clone(),
        }
    }
}

impl TryFrom<PrescriptionV1> for Prescription {
    type Error = WireFault;
    fn try_from(row: PrescriptionV1) -> Result<Self, WireFault> {
        let load = match row.load {
            LoadWishV1::MassNg(ng) => LoadWish::Mass(Mass::from_ng(ng)),
            LoadWishV1::OfBest(share) => LoadWish::OfBest(share),
        };
        Ok(Self {
            date: read_date(&row.date)?,
            lifter: row.lifter,
            lift: row.lift,
            first: SetGroup {
                rest_s: row.rest_s,
                ..SetGroup::straight(row.sets, row.reps, load)
            },
            track: None,
            then: Vec::new(),
            ladder: row.ladder,
            bar: None,
            note: row.note,
        })
    }
}

/// How a plan names a load.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub(crate) enum LoadWishV1 {
    /// Nanograms.
    MassNg(i64),
    /// Hundredths of a percent of the recorded best.
    OfBest(u32),
}
