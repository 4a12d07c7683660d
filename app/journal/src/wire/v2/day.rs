//! Wire version 2: clocks, and lifts that were left open. Once released never change; add v3.
use super::super::v1::{present, read_date, write_date};
use super::WireFault;
use chrono::NaiveDate;
use domain::steady::BootId;
use domain::{Fact, LiftNo};
use serde::{Deserialize, Serialize};

/// Body of `clock_anchored`.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct ClockAnchoredV2 {
    /// The boot's number, 32 hexadecimal digits: more than a number of JSON can hold.
    boot: String,
    up_ms: i64,
    #[serde(deserialize_with = "present")]
    offset_ms: Option<i64>,
}

impl ClockAnchoredV2 {
    pub(super) fn of(boot: BootId, up_ms: i64, offset_ms: Option<i64>) -> Self {
        Self {
            boot: format!("{:032x}", boot.0),
            up_ms,
            offset_ms,
        }
    }
}

impl TryFrom<ClockAnchoredV2> for Fact {
    type Error = WireFault;

    fn try_from(body: ClockAnchoredV2) -> Result<Self, WireFault> {
        let number = u128::from_str_radix(&body.boot, 16).ok();
        let number = number.filter(|number| format!("{number:032x}") == body.boot);
        let Some(number) = number else {
            return Err(WireFault::Value {
                field: "boot",
                found: body.boot,
                wanted: "32 hexadecimal digits",
            });
        };
        Ok(Self::ClockAnchored {
            boot: BootId(number),
            up_ms: body.up_ms,
            offset_ms: body.offset_ms,
        })
    }
}

/// Body of `clock_set`.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct ClockSetV2 {
    offset_ms: i64,
}

impl ClockSetV2 {
    pub(super) const fn of(offset_ms: i64) -> Self {
        Self { offset_ms }
    }
}

impl From<ClockSetV2> for Fact {
    fn from(body: ClockSetV2) -> Self {
        Self::ClockSet {
            offset_ms: body.offset_ms,
        }
    }
}

/// Body of `lift_lapsed`.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct LiftLapsedV2 {
    no: u32,
}

impl LiftLapsedV2 {
    pub(super) const fn of(no: LiftNo) -> Self {
        Self { no: no.0 }
    }
}

impl From<LiftLapsedV2> for Fact {
    fn from(body: LiftLapsedV2) -> Self {
        Self::LiftLapsed {
            no: LiftNo(body.no),
        }
    }
}

/// Body of `lift_reopened` and `lift_redated`: a lift and a day.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct LiftDayV2 {
    no: u32,
    /// ISO 8601.
    date: String,
}

impl LiftDayV2 {
    pub(super) fn of(no: LiftNo, date: NaiveDate) -> Self {
        Self {
            no: no.0,
            date: write_date(date),
        }
    }

    pub(super) fn reopened(&self) -> Result<Fact, WireFault> {
        let on = read_date(&self.date)?;
        Ok(Fact::LiftReopened {
            no: LiftNo(self.no),
            on,
        })
    }

    pub(super) fn redated(&self) -> Result<Fact, WireFault> {
        let date = read_date(&self.date)?;
        Ok(Fact::LiftRedated {
            no: LiftNo(self.no),
            date,
        })
    }
}
