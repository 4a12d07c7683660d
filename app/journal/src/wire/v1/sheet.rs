//! Wire version 1: a lift begun, with its sheet. Never change; add v2.
//!
//! Plate faces are written once per sheet and rungs name them by number, from 0: a sheet would
//! otherwise be several times as long. Refuses: unknown fields, numbers of no plate.
use super::rung::{PlateFaceV1, RungSheetV1};
use super::warning::WarningV1;
use super::words::{GripV1, LandmarkV1, UnitV1};
use super::{WireFault, present, read_date, write_date};
use domain::sheet::{BarSheet, HookSheet, Overlap, PinSheet, Warning};
use domain::{Fact, Length, LiftNo, LiftSheet, Mass, PlateFace};
use serde::{Deserialize, Serialize};

/// Body of `lift_begun`.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct LiftBegunV1 {
    /// Number of the lift.
    pub(crate) no: u32,
    /// What the rack shows.
    pub(crate) sheet: LiftSheetV1,
}

impl LiftBegunV1 {
    pub(super) fn of(no: LiftNo, sheet: &LiftSheet) -> Self {
        Self {
            no: no.0,
            sheet: sheet.into(),
        }
    }
}

impl TryFrom<LiftBegunV1> for Fact {
    type Error = WireFault;
    fn try_from(body: LiftBegunV1) -> Result<Self, WireFault> {
        Ok(Self::LiftBegun {
            no: LiftNo(body.no),
            sheet: Box::new(body.sheet.try_into()?),
        })
    }
}

/// A sheet.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct LiftSheetV1 {
    lifter: String,
    unit: UnitV1,
    lift: String,
    date: String,
    rack: String,
    bar: BarSheetV1,
    #[serde(deserialize_with = "present")]
    pins: Option<PinSheetV1>,
    #[serde(deserialize_with = "present")]
    hooks: Option<HookSheetV1>,
    #[serde(deserialize_with = "present")]
    overlap: Option<OverlapV1>,
    grip: GripV1,
    plates: Vec<PlateFaceV1>,
    rungs: Vec<RungSheetV1>,
    asked_ng: i64,
    cues: Vec<String>,
    cautions: Vec<String>,
    warnings: Vec<WarningV1>,
    note: String,
}

impl From<&LiftSheet> for LiftSheetV1 {
    fn from(sheet: &LiftSheet) -> Self {
        let mut faces = Vec::new();
        let rungs = sheet.rungs.iter();
        let rungs = rungs
            .map(|rung| RungSheetV1::of(rung, &mut faces))
            .collect();
        Self {
            lifter: sheet.lifter.clone(),
            unit: sheet.unit.into(),
            lift: sheet.lift.clone(),
            date: write_date(sheet.date),
            rack: sheet.rack.clone(),
            bar: (&sheet.bar).into(),
            pins: sheet.pins.as_ref().map(PinSheetV1::from),
            hooks: sheet.hooks.map(|hooks| HookSheetV1 { hole: hooks.hole }),
            overlap: sheet.overlap.as_ref().map(OverlapV1::from),
            grip: sheet.grip.into(),
            plates: faces.into_iter().map(PlateFaceV1::from).collect(),
            rungs,
            asked_ng: sheet.asked.ng(),
            cues: sheet.cues.clone(),
            cautions: sheet.cautions.clone(),
            warnings: sheet.warnings.iter().map(WarningV1::from).collect(),
            note: sheet.note.clone(),
        }
    }
}

impl TryFrom<LiftSheetV1> for LiftSheet {
    type Error = WireFault;
    fn try_from(sheet: LiftSheetV1) -> Result<Self, WireFault> {
        let faces: Vec<_> = sheet.plates.into_iter().map(PlateFace::from).collect();
        let rungs = sheet.rungs.into_iter().map(|rung| rung.with(&faces));
        Ok(Self {
            lifter: sheet.lifter,
            unit: sheet.unit.into(),
            lift: sheet.lift,
            track: None,
            date: read_date(&sheet.date)?,
            rack: sheet.rack,
            bar: sheet.bar.into(),
            pins: sheet.pins.map(PinSheet::from),
            hooks: sheet.hooks.map(|hooks| HookSheet { hole: hooks.hole }),
            overlap: sheet.overlap.map(Overlap::from),
            grip: sheet.grip.into(),
            rungs: rungs.collect::<Result<_, _>>()?,
            groups: Vec::new(),
            asked: Mass::from_ng(sheet.asked_ng),
            cues: sheet.cues,
            cautions: sheet.cautions,
            warnings: sheet.warnings.into_iter().map(Warning::from).collect(),
            note: sheet.note,
        })
    }
}

/// The bar of a sheet.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct BarSheetV1 {
    name: String,
    mass_ng: i64,
    collars_ng: i64,
    shaft_diameter_nm: i64,
    sleeve_nm: i64,
}

impl From<&BarSheet> for BarSheetV1 {
    fn from(bar: &BarSheet) -> Self {
        Self {
            name: bar.name.clone(),
            mass_ng: bar.mass.ng(),
            collars_ng: bar.collars.ng(),
            shaft_diameter_nm: bar.shaft_diameter.nm(),
            sleeve_nm: bar.sleeve.nm(),
        }
    }
}

impl From<BarSheetV1> for BarSheet {
    fn from(bar: BarSheetV1) -> Self {
        Self {
            name: bar.name,
            mass: Mass::from_ng(bar.mass_ng),
            collars: Mass::from_ng(bar.collars_ng),
            shaft_diameter: Length::from_nm(bar.shaft_diameter_nm),
            sleeve: Length::from_nm(bar.sleeve_nm),
        }
    }
}

/// The pins of a sheet.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct PinSheetV1 {
    hole: u16,
    mats_nm: Vec<i64>,
    bar_height_nm: i64,
    off_target_nm: i64,
    landmark: LandmarkV1,
    landmark_height_nm: i64,
    #[serde(deserialize_with = "present")]
    patella_top_nm: Option<i64>,
    first_hole_nm: i64,
    spacing_nm: i64,
    holes: u16,
}

impl From<&PinSheet> for PinSheetV1 {
    fn from(pins: &PinSheet) -> Self {
        Self {
            hole: pins.hole,
            mats_nm: pins.mats.iter().map(|mat| mat.nm()).collect(),
            bar_height_nm: pins.bar_height.nm(),
            off_target_nm: pins.off_target.nm(),
            landmark: pins.landmark.into(),
            landmark_height_nm: pins.landmark_height.nm(),
            patella_top_nm: pins.patella_top.map(Length::nm),
            first_hole_nm: pins.first_hole.nm(),
            spacing_nm: pins.spacing.nm(),
            holes: pins.holes,
        }
    }
}

impl From<PinSheetV1> for PinSheet {
    fn from(pins: PinSheetV1) -> Self {
        Self {
            hole: pins.hole,
            mats: pins.mats_nm.into_iter().map(Length::from_nm).collect(),
            bar_height: Length::from_nm(pins.bar_height_nm),
            off_target: Length::from_nm(pins.off_target_nm),
            landmark: pins.landmark.into(),
            landmark_height: Length::from_nm(pins.landmark_height_nm),
            patella_top: pins.patella_top_nm.map(Length::from_nm),
            first_hole: Length::from_nm(pins.first_hole_nm),
            spacing: Length::from_nm(pins.spacing_nm),
            holes: pins.holes,
        }
    }
}

/// The hooks of a sheet.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct HookSheetV1 {
    #[serde(deserialize_with = "present")]
    hole: Option<u16>,
}

/// Height shared by two partial pulls.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct OverlapV1 {
    partner: String,
    length_nm: i64,
    least_nm: i64,
}

impl From<&Overlap> for OverlapV1 {
    fn from(overlap: &Overlap) -> Self {
        Self {
            partner: overlap.partner.clone(),
            length_nm: overlap.length.nm(),
            least_nm: overlap.least.nm(),
        }
    }
}

impl From<OverlapV1> for Overlap {
    fn from(overlap: OverlapV1) -> Self {
        Self {
            partner: overlap.partner,
            length: Length::from_nm(overlap.length_nm),
            least: Length::from_nm(overlap.least_nm),
        }
    }
}
