//! Wire version 1: files taken, sets done, rungs skipped, lifts stopped, entries undone. Never
//! change; add v2.
//!
//! Refuses: unknown fields.
use domain::{Fact, Hold, LiftNo};
use serde::{Deserialize, Serialize};

/// Body of `file_taken`.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct FileTakenV1 {
    /// The file's name.
    pub(crate) name: String,
    /// Its text.
    pub(crate) text: String,
}

impl FileTakenV1 {
    pub(super) fn of(name: &str, text: &str) -> Self {
        Self {
            name: name.to_owned(),
            text: text.to_owned(),
        }
    }
}

impl From<FileTakenV1> for Fact {
    fn from(body: FileTakenV1) -> Self {
        Self::FileTaken {
            name: body.name,
            text: body.text,
        }
    }
}

/// Did the back keep its position.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub(crate) enum BackV1 {
    /// All the way.
    Kept,
    /// It moved at this rep, from 1.
    MovedAt(u8),
}

impl From<Hold> for BackV1 {
    fn from(hold: Hold) -> Self {
        match hold {
            Hold::Kept => Self::Kept,
            Hold::MovedAt(rep) => Self::MovedAt(rep),
        }
    }
}

impl From<BackV1> for Hold {
    fn from(back: BackV1) -> Self {
        match back {
            BackV1::Kept => Self::Kept,
            BackV1::MovedAt(rep) => Self::MovedAt(rep),
        }
    }
}

/// Body of `set_done`.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct SetDoneV1 {
    /// Number of the lift.
    pub(crate) no: u32,
    /// Rung, from 0.
    pub(crate) rung: u16,
    /// Reps done.
    pub(crate) reps: u8,
    /// The back.
    pub(crate) back: BackV1,
}

impl SetDoneV1 {
    pub(super) fn of(no: LiftNo, rung: u16, reps: u8, hold: Hold) -> Self {
        Self {
            no: no.0,
            rung,
            reps,
            back: hold.into(),
        }
    }
}

impl From<SetDoneV1> for Fact {
    fn from(body: SetDoneV1) -> Self {
        Self::SetDone {
            no: LiftNo(body.no),
            rung: body.rung,
            reps: body.reps,
            hold: body.back.into(),
        }
    }
}

/// Body of `rung_skipped`.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct RungV1 {
    /// Number of the lift.
    pub(crate) no: u32,
    /// Rung, from 0.
    pub(crate) rung: u16,
}

impl RungV1 {
    pub(super) const fn of(no: LiftNo, rung: u16) -> Self {
        Self { no: no.0, rung }
    }
}

impl From<RungV1> for Fact {
    fn from(body: RungV1) -> Self {
        Self::RungSkipped {
            no: LiftNo(body.no),
            rung: body.rung,
        }
    }
}

/// Body of `lift_stopped`, `went_on` and `entry_undone`.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct LiftV1 {
    /// Number of the lift.
    pub(crate) no: u32,
}

impl LiftV1 {
    pub(super) const fn of(no: LiftNo) -> Self {
        Self { no: no.0 }
    }

    pub(super) const fn stopped(self) -> Fact {
        Fact::LiftStopped {
            no: LiftNo(self.no),
        }
    }

    pub(super) const fn went_on(self) -> Fact {
        Fact::WentOn {
            no: LiftNo(self.no),
        }
    }

    pub(super) const fn undone(self) -> Fact {
        Fact::EntryUndone {
            no: LiftNo(self.no),
        }
    }
}
