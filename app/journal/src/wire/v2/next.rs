//! Wire version 2: what is due the next time, for reasons that version 1 does not have. Once
//! released never change; add v3.
use crate::wire::WireFault;
use crate::wire::v1::next::{RuleV1, VerdictV1, WentV1};
use crate::wire::v1::{read_date, write_date};
use domain::next::{Decided, Decision, Why};
use domain::{Fact, LiftNo, Mass};
use serde::{Deserialize, Serialize};

/// Body of `next_decided`.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct NextDecidedV2 {
    no: u32,
    rule: RuleV1,
    verdict: VerdictV1,
    why: WhyV2,
    after: u32,
    date: String,
    went: WentV1,
    sets: u8,
    reps: u8,
    from_ng: i64,
    nth: u8,
    tries: u8,
    wished_ng: i64,
    load_ng: i64,
    away_days: u16,
    reason: String,
}

/// Reasons that came with this version.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
enum WhyV2 {
    Range,
    Hard,
    Waiting,
    Anew,
    Ill,
    Family,
    OverReaching,
    LongAgo,
    Week,
    Hurt,
}

impl WhyV2 {
    /// `None` for the reasons of version 1.
    const fn of(why: Why) -> Option<Self> {
        Some(match why {
            Why::Range => Self::Range,
            Why::Hard => Self::Hard,
            Why::Waiting => Self::Waiting,
            Why::Anew => Self::Anew,
            Why::Ill => Self::Ill,
            Why::Family => Self::Family,
            Why::OverReaching => Self::OverReaching,
            Why::LongAgo => Self::LongAgo,
            Why::Week => Self::Week,
            Why::Hurt => Self::Hurt,
            Why::Well
            | Why::Back
            | Why::NoStep
            | Why::Light
            | Why::TryAgain
            | Why::Cut
            | Why::OutOfTries
            | Why::TooMuch
            | Why::Stuck
            | Why::Away
            | Why::Coach => return None,
        })
    }
}

impl From<WhyV2> for Why {
    fn from(why: WhyV2) -> Self {
        match why {
            WhyV2::Range => Self::Range,
            WhyV2::Hard => Self::Hard,
            WhyV2::Waiting => Self::Waiting,
            WhyV2::Anew => Self::Anew,
            WhyV2::Ill => Self::Ill,
            WhyV2::Family => Self::Family,
            WhyV2::OverReaching => Self::OverReaching,
            WhyV2::LongAgo => Self::LongAgo,
            WhyV2::Week => Self::Week,
            WhyV2::Hurt => Self::Hurt,
        }
    }
}

impl NextDecidedV2 {
    /// `None` for a decision that version 1 can write.
    pub(super) fn of(no: LiftNo, decided: &Decided) -> Option<Self> {
        let decision = &decided.decision;
        Some(Self {
            no: no.0,
            rule: decided.rule.into(),
            verdict: decision.verdict.into(),
            why: WhyV2::of(decision.why)?,
            after: decision.after.0,
            date: write_date(decision.date),
            went: decision.went.into(),
            sets: decision.sets,
            reps: decision.reps,
            from_ng: decision.from.ng(),
            nth: decision.nth,
            tries: decision.tries,
            wished_ng: decision.wished.ng(),
            load_ng: decision.load.ng(),
            away_days: decision.away_days,
            reason: decided.reason.clone(),
        })
    }
}

impl TryFrom<NextDecidedV2> for Fact {
    type Error = WireFault;
    fn try_from(body: NextDecidedV2) -> Result<Self, WireFault> {
        let decision = Decision {
            verdict: body.verdict.into(),
            why: body.why.into(),
            after: LiftNo(body.after),
            date: read_date(&body.date)?,
            went: body.went.into(),
            sets: body.sets,
            reps: body.reps,
            from: Mass::from_ng(body.from_ng),
            nth: body.nth,
            tries: body.tries,
            wished: Mass::from_ng(body.wished_ng),
            load: Mass::from_ng(body.load_ng),
            away_days: body.away_days,
        };
        Ok(Self::NextDecided {
            no: LiftNo(body.no),
            decided: Box::new(Decided {
                rule: body.rule.into(),
                decision,
                reason: body.reason,
            }),
        })
    }
}
