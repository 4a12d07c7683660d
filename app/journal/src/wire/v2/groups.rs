//! Wire version 2: prescriptions of several set groups, sheets that have them, and what is said and
//! follows set by set. Once released never change; add v3.
use super::manner::MannerV2;
use crate::wire::WireFault;
use crate::wire::v1::settle::LoadSettledV1;
use crate::wire::v1::sheet::LiftSheetV1;
use crate::wire::v1::{present, read_date, write_date};
use domain::prescription::{LoadWish, Reps, Role, SetGroup};
use domain::settle::Settled;
use domain::sheet::GroupSheet;
use domain::{Fact, LiftNo, LiftSheet, Mass, Prescription, TrackName};
use serde::{Deserialize, Serialize};

/// Body of `plan_taken`, where a row is more than straight sets.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct PlanTakenV2 {
    name: String,
    rows: Vec<PrescriptionV2>,
}

/// Body of `lift_begun`, where the sheet has set groups.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct LiftBegunV2 {
    no: u32,
    sheet: LiftSheetV1,
    groups: Vec<GroupSheetV2>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    track: Option<String>,
}

/// Body of `loads_followed`.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct LoadsFollowedV2 {
    no: u32,
    sets: Vec<LoadSettledV1>,
}

/// Body of `effort_said`.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct EffortSaidV2 {
    no: u32,
    rung: u16,
    /// RPE in tenths.
    effort: u8,
}

#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct PrescriptionV2 {
    date: String,
    lifter: String,
    lift: String,
    groups: Vec<SetGroupV2>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    track: Option<String>,
    #[serde(deserialize_with = "present")]
    ladder: Option<String>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    bar: Option<String>,
    note: String,
}

#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct SetGroupV2 {
    sets: u8,
    least: u8,
    #[serde(deserialize_with = "present")]
    most: Option<u8>,
    load: LoadWishV2,
    #[serde(deserialize_with = "present")]
    rest_s: Option<u32>,
    role: RoleV2,
    #[serde(deserialize_with = "present")]
    effort: Option<u8>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    manner: Option<MannerV2>,
}

#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct GroupSheetV2 {
    rung: u16,
    sets: u8,
    least: u8,
    #[serde(deserialize_with = "present")]
    most: Option<u8>,
    role: RoleV2,
    #[serde(deserialize_with = "present")]
    of_top: Option<u32>,
    #[serde(deserialize_with = "present")]
    effort: Option<u8>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    manner: Option<MannerV2>,
}

#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
enum RoleV2 {
    Work,
    Top,
    BackOff,
    Drop,
}

/// Masses in nanograms, shares in hundredths of a percent.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
enum LoadWishV2 {
    MassNg(i64),
    OfBest(u32),
    OfTraining(u32),
    OfTop(u32),
    MoreNg(i64),
    Due,
}

impl PlanTakenV2 {
    pub(super) fn of(name: &str, rows: &[Prescription]) -> Self {
        let row = |row: &Prescription| PrescriptionV2 {
            date: write_date(row.date),
            lifter: row.lifter.clone(),
            lift: row.lift.clone(),
            groups: row.groups().map(SetGroupV2::of).collect(),
            track: row.track.map(|name| name.as_str().to_owned()),
            ladder: row.ladder.clone(),
            bar: row.bar.clone(),
            note: row.note.clone(),
        };
        Self {
            name: name.to_owned(),
            rows: rows.iter().map(row).collect(),
        }
    }
}

impl TryFrom<PlanTakenV2> for Fact {
    type Error = WireFault;
    fn try_from(body: PlanTakenV2) -> Result<Self, WireFault> {
        let row = |row: PrescriptionV2| {
            let mut groups = row.groups.into_iter().map(SetGroup::from);
            let first = groups.next().ok_or_else(|| WireFault::Value {
                field: "groups",
                found: "[]".to_owned(),
                wanted: "at least one",
            })?;
            Ok(Prescription {
                date: read_date(&row.date)?,
                lifter: row.lifter,
                lift: row.lift,
                first,
                then: groups.collect(),
                track: track(row.track)?,
                ladder: row.ladder,
                bar: row.bar,
                note: row.note,
            })
        };
        Ok(Self::PlanTaken {
            name: body.name,
            rows: body
                .rows
                .into_iter()
                .map(row)
                .collect::<Result<_, WireFault>>()?,
        })
    }
}

impl LiftBegunV2 {
    pub(super) fn of(no: LiftNo, sheet: &LiftSheet) -> Self {
        Self {
            no: no.0,
            sheet: sheet.into(),
            groups: sheet.groups.iter().map(GroupSheetV2::of).collect(),
            track: sheet.track.map(|name| name.as_str().to_owned()),
        }
    }
}

impl TryFrom<LiftBegunV2> for Fact {
    type Error = WireFault;
    fn try_from(body: LiftBegunV2) -> Result<Self, WireFault> {
        let sheet = LiftSheet::try_from(body.sheet)?;
        let groups = body.groups.into_iter().map(GroupSheet::from).collect();
        let sheet = LiftSheet {
            groups,
            track: track(body.track)?,
            ..sheet
        };
        Ok(Self::LiftBegun {
            no: LiftNo(body.no),
            sheet: Box::new(sheet),
        })
    }
}

fn track(name: Option<String>) -> Result<Option<TrackName>, WireFault> {
    let Some(name) = name else {
        return Ok(None);
    };
    let track = TrackName::new(&name).ok_or(WireFault::Value {
        field: "track",
        found: name,
        wanted: "1 to 24 bytes",
    })?;
    Ok(Some(track))
}

impl LoadsFollowedV2 {
    pub(super) fn of(no: LiftNo, sets: &[Settled]) -> Self {
        let sets = sets.iter().map(|settled| LoadSettledV1::of(no, settled));
        Self {
            no: no.0,
            sets: sets.collect(),
        }
    }
}

impl From<LoadsFollowedV2> for Fact {
    fn from(body: LoadsFollowedV2) -> Self {
        Self::LoadsFollowed {
            no: LiftNo(body.no),
            sets: body.sets.into_iter().map(Settled::from).collect(),
        }
    }
}

impl EffortSaidV2 {
    pub(super) const fn of(no: LiftNo, rung: u16, effort: u8) -> Self {
        Self {
            no: no.0,
            rung,
            effort,
        }
    }
}

impl From<EffortSaidV2> for Fact {
    fn from(body: EffortSaidV2) -> Self {
        Self::EffortSaid {
            no: LiftNo(body.no),
            rung: body.rung,
            effort: body.effort,
        }
    }
}

impl SetGroupV2 {
    fn of(group: &SetGroup) -> Self {
        Self {
            sets: group.sets,
            least: group.reps.least,
            most: group.reps.most,
            load: match group.load {
                LoadWish::Mass(mass) => LoadWishV2::MassNg(mass.ng()),
                LoadWish::OfBest(share) => LoadWishV2::OfBest(share),
                LoadWish::OfTraining(share) => LoadWishV2::OfTraining(share),
                LoadWish::OfTop(share) => LoadWishV2::OfTop(share),
                LoadWish::More(mass) => LoadWishV2::MoreNg(mass.ng()),
                LoadWish::Due => LoadWishV2::Due,
            },
            rest_s: group.rest_s,
            role: group.role.into(),
            effort: group.effort,
            manner: MannerV2::of(&group.manner),
        }
    }
}

impl From<SetGroupV2> for SetGroup {
    fn from(group: SetGroupV2) -> Self {
        Self {
            sets: group.sets,
            reps: Reps {
                least: group.least,
                most: group.most,
            },
            load: match group.load {
                LoadWishV2::MassNg(ng) => LoadWish::Mass(Mass::from_ng(ng)),
                LoadWishV2::OfBest(share) => LoadWish::OfBest(share),
                LoadWishV2::OfTraining(share) => LoadWish::OfTraining(share),
                LoadWishV2::OfTop(share) => LoadWish::OfTop(share),
                LoadWishV2::MoreNg(ng) => LoadWish::More(Mass::from_ng(ng)),
                LoadWishV2::Due => LoadWish::Due,
            },
            rest_s: group.rest_s,
            role: group.role.into(),
            effort: group.effort,
            manner: group.manner.map(MannerV2::manner).unwrap_or_default(),
        }
    }
}

impl GroupSheetV2 {
    fn of(group: &GroupSheet) -> Self {
        Self {
            rung: group.rung,
            sets: group.sets,
            least: group.reps.least,
            most: group.reps.most,
            role: group.role.into(),
            of_top: group.of_top,
            effort: group.effort,
            manner: MannerV2::of(&group.manner),
        }
    }
}

impl From<GroupSheetV2> for GroupSheet {
    fn from(group: GroupSheetV2) -> Self {
        Self {
            rung: group.rung,
            sets: group.sets,
            reps: Reps {
                least: group.least,
                most: group.most,
            },
            role: group.role.into(),
            of_top: group.of_top,
            effort: group.effort,
            manner: group.manner.map(MannerV2::manner).unwrap_or_default(),
        }
    }
}

impl From<Role> for RoleV2 {
    fn from(role: Role) -> Self {
        match role {
            Role::Work => Self::Work,
            Role::Top => Self::Top,
            Role::BackOff => Self::BackOff,
            Role::Drop => Self::Drop,
        }
    }
}

impl From<RoleV2> for Role {
    fn from(role: RoleV2) -> Self {
        match role {
            RoleV2::Work => Self::Work,
            RoleV2::Top => Self::Top,
            RoleV2::BackOff => Self::BackOff,
            RoleV2::Drop => Self::Drop,
        }
    }
}
