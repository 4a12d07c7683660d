//! Wire version 2: what was done at other kiosks. Once released never change; add v3.
use super::super::Written;
use super::super::v1::{present, write_in};
use super::groups::LiftBegunV2;
use super::{VERSION, WireFault};
use domain::elsewhere::{DoneThere, Origin};
use domain::state::Entered;
use domain::{Fact, Hold, LiftNo, LiftSheet, Moment};
use serde::{Deserialize, Serialize};

pub(super) const BEGUN_ELSEWHERE: &str = "begun_elsewhere";
pub(super) const DONE_ELSEWHERE: &str = "done_elsewhere";

/// Writes what was done at another kiosk; `None` for any other fact.
#[allow(
    clippy::wildcard_enum_match_arm,
    reason = "all others are not of this file"
)]
pub(super) fn written(fact: &Fact) -> Option<Written> {
    match fact {
        Fact::BegunElsewhere {
            no,
            origin,
            sheet,
            begun,
        } => {
            let body = BegunElsewhereV2::of(*no, origin, sheet, *begun);
            Some(write_in(VERSION, BEGUN_ELSEWHERE, &body))
        }
        Fact::DoneElsewhere { no, done } => {
            let body = DoneElsewhereV2::of(*no, *done);
            Some(write_in(VERSION, DONE_ELSEWHERE, &body))
        }
        _ => None,
    }
}

/// Body of `begun_elsewhere`.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct BegunElsewhereV2 {
    kiosk: String,
    /// The lift's number there.
    there: u32,
    /// That kiosk's event up to which it was read.
    seq: u64,
    /// By the wall clock there, milliseconds since 1970-01-01T00:00:00Z.
    begun_ms: i64,
    /// Number here, and sheet.
    lift: LiftBegunV2,
}

impl BegunElsewhereV2 {
    pub(super) fn of(no: LiftNo, origin: &Origin, sheet: &LiftSheet, begun: Moment) -> Self {
        Self {
            kiosk: origin.kiosk.clone(),
            there: origin.no.0,
            seq: origin.seq,
            begun_ms: begun.0,
            lift: LiftBegunV2::of(no, sheet),
        }
    }
}

impl TryFrom<BegunElsewhereV2> for Fact {
    type Error = WireFault;

    fn try_from(body: BegunElsewhereV2) -> Result<Self, WireFault> {
        let Self::LiftBegun { no, sheet } = Self::try_from(body.lift)? else {
            unreachable!("a lift that was begun is read as one");
        };
        Ok(Self::BegunElsewhere {
            no,
            origin: Box::new(Origin {
                kiosk: body.kiosk,
                no: LiftNo(body.there),
                seq: body.seq,
            }),
            sheet,
            begun: Moment(body.begun_ms),
        })
    }
}

/// Body of `done_elsewhere`.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct DoneElsewhereV2 {
    /// The lift's number here.
    no: u32,
    /// By the wall clock there.
    at_ms: i64,
    /// From 0.
    rung: u16,
    what: EnteredV2,
    /// RPE in tenths.
    #[serde(deserialize_with = "present")]
    effort: Option<u8>,
}

/// What was entered.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case", deny_unknown_fields)]
enum EnteredV2 {
    Set {
        reps: u8,
        /// The rep at which the back moved, from 1.
        #[serde(deserialize_with = "present")]
        moved_at: Option<u8>,
    },
    Skipped,
    Stopped,
    WentOn,
    Settled,
    LeftOpen,
}

impl DoneElsewhereV2 {
    pub(super) const fn of(no: LiftNo, done: DoneThere) -> Self {
        let what = match done.what {
            Entered::Set { reps, hold } => EnteredV2::Set {
                reps,
                moved_at: match hold {
                    Hold::Kept => None,
                    Hold::MovedAt(rep) => Some(rep),
                },
            },
            Entered::Skipped => EnteredV2::Skipped,
            Entered::Stopped => EnteredV2::Stopped,
            Entered::WentOn => EnteredV2::WentOn,
            Entered::Settled => EnteredV2::Settled,
            Entered::LeftOpen => EnteredV2::LeftOpen,
        };
        Self {
            no: no.0,
            at_ms: done.at.0,
            rung: done.rung,
            what,
            effort: done.effort,
        }
    }
}

impl From<DoneElsewhereV2> for Fact {
    fn from(body: DoneElsewhereV2) -> Self {
        let what = match body.what {
            EnteredV2::Set { reps, moved_at } => Entered::Set {
                reps,
                hold: moved_at.map_or(Hold::Kept, Hold::MovedAt),
            },
            EnteredV2::Skipped => Entered::Skipped,
            EnteredV2::Stopped => Entered::Stopped,
            EnteredV2::WentOn => Entered::WentOn,
            EnteredV2::Settled => Entered::Settled,
            EnteredV2::LeftOpen => Entered::LeftOpen,
        };
        Self::DoneElsewhere {
            no: LiftNo(body.no),
            done: DoneThere {
                at: Moment(body.at_ms),
                rung: body.rung,
                what,
                effort: body.effort,
            },
        }
    }
}
