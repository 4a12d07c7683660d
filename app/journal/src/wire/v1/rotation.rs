//! Version 1 of a planned order of turns. Frozen: write a version 2 instead.
//!
//! Refuses: plates that the body's own list does not have.
use super::rung::{PlateFaceV1, look_up, number};
use crate::wire::WireFault;
use domain::rotation::{CalledTurn, Station};
use domain::{Fact, LiftNo, PlateFace};
use serde::{Deserialize, Serialize};

/// Body of `rotation_planned`. Plates are numbers into its own list.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct RotationV1 {
    rack: String,
    bar: String,
    plates: Vec<PlateFaceV1>,
    turns: Vec<TurnV1>,
}

/// One turn of it.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct TurnV1 {
    no: u32,
    rung: u16,
    per_side: Vec<usize>,
}

impl RotationV1 {
    pub(super) fn of(station: &Station, turns: &[CalledTurn]) -> Self {
        let mut faces: Vec<PlateFace> = Vec::new();
        let turns = turns.iter().map(|turn| TurnV1 {
            no: turn.no.0,
            rung: turn.rung,
            per_side: number(&turn.per_side, &mut faces),
        });
        let turns = turns.collect();
        Self {
            rack: station.rack.clone(),
            bar: station.bar.clone(),
            plates: faces.into_iter().map(Into::into).collect(),
            turns,
        }
    }
}

impl TryFrom<RotationV1> for Fact {
    type Error = WireFault;

    fn try_from(body: RotationV1) -> Result<Self, WireFault> {
        let faces: Vec<PlateFace> = body.plates.into_iter().map(Into::into).collect();
        let turn = |turn: TurnV1| {
            Ok(CalledTurn {
                no: LiftNo(turn.no),
                rung: turn.rung,
                per_side: look_up("per_side", &turn.per_side, &faces)?,
            })
        };
        Ok(Self::RotationPlanned {
            station: Station {
                rack: body.rack,
                bar: body.bar,
            },
            turns: body
                .turns
                .into_iter()
                .map(turn)
                .collect::<Result<_, WireFault>>()?,
        })
    }
}
