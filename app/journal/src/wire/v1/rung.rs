//! Wire version 1: the rungs of a sheet and the plates that they name. Never change; add v2.
//!
//! Refuses: unknown fields, numbers of no plate.
use super::WireFault;
use super::words::{RungKindV1, UnitV1};
use domain::{Length, Mass, PlateFace, Rung};
use serde::{Deserialize, Serialize};

/// What one plate is and looks like.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct PlateFaceV1 {
    mass_ng: i64,
    unit: UnitV1,
    thickness_nm: i64,
    diameter_nm: i64,
}

impl From<PlateFace> for PlateFaceV1 {
    fn from(face: PlateFace) -> Self {
        Self {
            mass_ng: face.mass.ng(),
            unit: face.unit.into(),
            thickness_nm: face.thickness.nm(),
            diameter_nm: face.diameter.nm(),
        }
    }
}

impl From<PlateFaceV1> for PlateFace {
    fn from(face: PlateFaceV1) -> Self {
        Self {
            mass: Mass::from_ng(face.mass_ng),
            unit: face.unit.into(),
            thickness: Length::from_nm(face.thickness_nm),
            diameter: Length::from_nm(face.diameter_nm),
        }
    }
}

/// One rung of a sheet. Plates are numbers into the sheet's list.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct RungSheetV1 {
    kind: RungKindV1,
    load_ng: i64,
    reps: u8,
    per_side: Vec<usize>,
    take_off: Vec<usize>,
    put_on: Vec<usize>,
    belt: bool,
    straps: bool,
    rest_s: u32,
}

impl RungSheetV1 {
    /// Writes a rung, adding plates that `faces` does not have yet.
    pub(super) fn of(rung: &Rung, faces: &mut Vec<PlateFace>) -> Self {
        Self {
            kind: rung.kind.into(),
            load_ng: rung.load.ng(),
            reps: rung.reps,
            per_side: number(&rung.per_side, faces),
            take_off: number(&rung.take_off, faces),
            put_on: number(&rung.put_on, faces),
            belt: rung.belt,
            straps: rung.straps,
            rest_s: rung.rest_s,
        }
    }

    /// The rung, its plates looked up.
    pub(super) fn with(self, faces: &[PlateFace]) -> Result<Rung, WireFault> {
        Ok(Rung {
            kind: self.kind.into(),
            load: Mass::from_ng(self.load_ng),
            reps: self.reps,
            per_side: look_up("per_side", &self.per_side, faces)?,
            take_off: look_up("take_off", &self.take_off, faces)?,
            put_on: look_up("put_on", &self.put_on, faces)?,
            belt: self.belt,
            straps: self.straps,
            rest_s: self.rest_s,
        })
    }
}

pub(super) fn number(plates: &[PlateFace], faces: &mut Vec<PlateFace>) -> Vec<usize> {
    let one = |plate: &PlateFace| {
        faces
            .iter()
            .position(|face| face == plate)
            .unwrap_or_else(|| {
                faces.push(*plate);
                faces.len() - 1
            })
    };
    plates.iter().map(one).collect()
}

pub(super) fn look_up(
    field: &'static str,
    numbers: &[usize],
    faces: &[PlateFace],
) -> Result<Vec<PlateFace>, WireFault> {
    let one = |number: &usize| {
        faces.get(*number).copied().ok_or_else(|| WireFault::Value {
            field,
            found: number.to_string(),
            wanted: "the number of one of the listed plates",
        })
    };
    numbers.iter().map(one).collect()
}
