//! Wire version 1: a work load settled on the day. Never change; add v2.
//!
//! Refuses: unknown fields.
use super::rung::PlateFaceV1;
use domain::settle::Settled;
use domain::{Fact, LiftNo, Mass};
use serde::{Deserialize, Serialize};

/// Body of `load_settled`.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct LoadSettledV1 {
    /// Number of the lift.
    pub(crate) no: u32,
    /// First rung that it is for, from 0.
    rung: u16,
    load_ng: i64,
    /// Plates of one side, inside to outside.
    per_side: Vec<PlateFaceV1>,
    belt: bool,
    straps: bool,
}

impl LoadSettledV1 {
    pub(in crate::wire) fn of(no: LiftNo, settled: &Settled) -> Self {
        Self {
            no: no.0,
            rung: settled.rung,
            load_ng: settled.load.ng(),
            per_side: settled.per_side.iter().copied().map(Into::into).collect(),
            belt: settled.belt,
            straps: settled.straps,
        }
    }
}

impl From<LoadSettledV1> for Settled {
    fn from(body: LoadSettledV1) -> Self {
        Self {
            rung: body.rung,
            load: Mass::from_ng(body.load_ng),
            per_side: body.per_side.into_iter().map(Into::into).collect(),
            belt: body.belt,
            straps: body.straps,
        }
    }
}

impl From<LoadSettledV1> for Fact {
    fn from(body: LoadSettledV1) -> Self {
        Self::LoadSettled {
            no: LiftNo(body.no),
            settled: body.into(),
        }
    }
}
