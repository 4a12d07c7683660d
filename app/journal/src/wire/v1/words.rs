//! Wire version 1: choices as words. Never change; add v2.
//!
//! Refuses: any other word.
use domain::MassUnit;
use domain::lift::{Grip, Landmark};
use domain::sheet::RungKind;
use serde::{Deserialize, Serialize};

/// Kilo or pound.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub(crate) enum UnitV1 {
    /// Kilogram.
    Kg,
    /// Pound.
    Lb,
}

impl From<MassUnit> for UnitV1 {
    fn from(unit: MassUnit) -> Self {
        match unit {
            MassUnit::Kg => Self::Kg,
            MassUnit::Lb => Self::Lb,
        }
    }
}

impl From<UnitV1> for MassUnit {
    fn from(unit: UnitV1) -> Self {
        match unit {
            UnitV1::Kg => Self::Kg,
            UnitV1::Lb => Self::Lb,
        }
    }
}

/// A height on the body.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub(crate) enum LandmarkV1 {
    /// Below the knee.
    TibialTuberosity,
    /// Upper edge of the kneecap.
    PatellaTop,
    /// Half-way up the thigh.
    MidThigh,
    /// The bar in hanging hands.
    Lockout,
}

impl From<Landmark> for LandmarkV1 {
    fn from(landmark: Landmark) -> Self {
        match landmark {
            Landmark::TibialTuberosity => Self::TibialTuberosity,
            Landmark::PatellaTop => Self::PatellaTop,
            Landmark::MidThigh => Self::MidThigh,
            Landmark::Lockout => Self::Lockout,
        }
    }
}

impl From<LandmarkV1> for Landmark {
    fn from(landmark: LandmarkV1) -> Self {
        match landmark {
            LandmarkV1::TibialTuberosity => Self::TibialTuberosity,
            LandmarkV1::PatellaTop => Self::PatellaTop,
            LandmarkV1::MidThigh => Self::MidThigh,
            LandmarkV1::Lockout => Self::Lockout,
        }
    }
}

/// How the bar is held.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub(crate) enum GripV1 {
    /// Both palms to the lifter.
    DoubleOverhand,
    /// With the thumb under the fingers.
    Hook,
}

impl From<Grip> for GripV1 {
    fn from(grip: Grip) -> Self {
        match grip {
            Grip::DoubleOverhand => Self::DoubleOverhand,
            Grip::Hook => Self::Hook,
        }
    }
}

impl From<GripV1> for Grip {
    fn from(grip: GripV1) -> Self {
        match grip {
            GripV1::DoubleOverhand => Self::DoubleOverhand,
            GripV1::Hook => Self::Hook,
        }
    }
}

/// Warm-up or work set.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub(crate) enum RungKindV1 {
    /// On the way up.
    WarmUp,
    /// What the day is for.
    Work,
}

impl From<RungKind> for RungKindV1 {
    fn from(kind: RungKind) -> Self {
        match kind {
            RungKind::WarmUp => Self::WarmUp,
            RungKind::Work => Self::Work,
        }
    }
}

impl From<RungKindV1> for RungKind {
    fn from(kind: RungKindV1) -> Self {
        match kind {
            RungKindV1::WarmUp => Self::WarmUp,
            RungKindV1::Work => Self::Work,
        }
    }
}
