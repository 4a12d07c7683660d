//! Wire version 2: how sets are done, where the plan says so. Once released never change; add v3.
use domain::Length;
use domain::lift::Grip;
use domain::manner::{Manner, Tempo};
use serde::{Deserialize, Serialize};

/// What is left out is the lift's and the lifter's own. Lengths in nanometres.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct MannerV2 {
    #[serde(default, skip_serializing_if = "Option::is_none")]
    hole: Option<u16>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    block_nm: Option<i64>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    tempo: Option<TempoV2>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pause_s: Option<u8>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    belt: Option<bool>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    straps: Option<bool>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    grip: Option<GripV2>,
}

/// Seconds; `raise` is left out for as fast as it goes.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct TempoV2 {
    lower: u8,
    bottom: u8,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    raise: Option<u8>,
    top: u8,
}

#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
enum GripV2 {
    DoubleOverhand,
    Hook,
}

impl MannerV2 {
    /// Nothing where the plan says nothing.
    pub(super) fn of(manner: &Manner) -> Option<Self> {
        (!manner.is_own()).then(|| Self {
            hole: manner.hole,
            block_nm: manner.block.map(Length::nm),
            tempo: manner.tempo.map(|tempo| TempoV2 {
                lower: tempo.lower,
                bottom: tempo.bottom,
                raise: tempo.raise,
                top: tempo.top,
            }),
            pause_s: manner.pause_s,
            belt: manner.belt,
            straps: manner.straps,
            grip: manner.grip.map(|grip| match grip {
                Grip::DoubleOverhand => GripV2::DoubleOverhand,
                Grip::Hook => GripV2::Hook,
            }),
        })
    }

    pub(super) fn manner(self) -> Manner {
        Manner {
            hole: self.hole,
            block: self.block_nm.map(Length::from_nm),
            tempo: self.tempo.map(|tempo| Tempo {
                lower: tempo.lower,
                bottom: tempo.bottom,
                raise: tempo.raise,
                top: tempo.top,
            }),
            pause_s: self.pause_s,
            belt: self.belt,
            straps: self.straps,
            grip: self.grip.map(|grip| match grip {
                GripV2::DoubleOverhand => Grip::DoubleOverhand,
                GripV2::Hook => Grip::Hook,
            }),
        }
    }
}
