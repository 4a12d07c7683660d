//! Wire version 1: what is due the next time, by the rules and by the coach. Never change; add
//! v2.
//!
//! Refuses: unknown fields, days that are none.
use super::{WireFault, read_date, write_date};
use domain::next::outing::Went;
use domain::next::{Decided, Decision, Rule, Step, Verdict, Why};
use domain::{Fact, LiftNo, Mass};
use serde::{Deserialize, Serialize};

/// Body of `next_decided`.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct NextDecidedV1 {
    /// Number of the lift.
    pub(crate) no: u32,
    rule: RuleV1,
    decision: DecisionV1,
    reason: String,
}

impl NextDecidedV1 {
    pub(super) fn of(no: LiftNo, decided: &Decided) -> Self {
        Self {
            no: no.0,
            rule: decided.rule.into(),
            decision: decided.decision.into(),
            reason: decided.reason.clone(),
        }
    }
}

impl TryFrom<NextDecidedV1> for Fact {
    type Error = WireFault;
    fn try_from(body: NextDecidedV1) -> Result<Self, WireFault> {
        let decided = Decided {
            rule: body.rule.into(),
            decision: body.decision.try_into()?,
            reason: body.reason,
        };
        Ok(Self::NextDecided {
            no: LiftNo(body.no),
            decided: Box::new(decided),
        })
    }
}

/// Body of `next_overridden`.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct NextOverriddenV1 {
    /// Number of the lift.
    pub(crate) no: u32,
    load_ng: i64,
    note: String,
}

impl NextOverriddenV1 {
    pub(super) fn of(no: LiftNo, load: Mass, note: &str) -> Self {
        Self {
            no: no.0,
            load_ng: load.ng(),
            note: note.to_owned(),
        }
    }
}

impl From<NextOverriddenV1> for Fact {
    fn from(body: NextOverriddenV1) -> Self {
        Self::NextOverridden {
            no: LiftNo(body.no),
            load: Mass::from_ng(body.load_ng),
            note: body.note,
        }
    }
}

/// What a lift that went well adds.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub(crate) enum StepV1 {
    /// Nanograms.
    MassNg(i64),
    /// Hundredths of a percent.
    Share(u32),
}

/// The rule's figures.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct RuleV1 {
    step: StepV1,
    tries: u8,
    /// Missing where the back had the same tries as the reps.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    moved_tries: Option<u8>,
    drop: u32,
    drops: u8,
    reset: u32,
    away_days: u16,
    away: u32,
}

impl From<Rule> for RuleV1 {
    fn from(rule: Rule) -> Self {
        Self {
            step: match rule.step {
                Step::Mass(mass) => StepV1::MassNg(mass.ng()),
                Step::Share(share) => StepV1::Share(share),
            },
            tries: rule.tries,
            moved_tries: Some(rule.moved_tries),
            drop: rule.drop,
            drops: rule.drops,
            reset: rule.reset,
            away_days: rule.away_days,
            away: rule.away,
        }
    }
}

impl From<RuleV1> for Rule {
    fn from(rule: RuleV1) -> Self {
        Self {
            step: match rule.step {
                StepV1::MassNg(ng) => Step::Mass(Mass::from_ng(ng)),
                StepV1::Share(share) => Step::Share(share),
            },
            tries: rule.tries,
            moved_tries: rule.moved_tries.unwrap_or(rule.tries),
            drop: rule.drop,
            drops: rule.drops,
            reset: rule.reset,
            away_days: rule.away_days,
            away: rule.away,
        }
    }
}

/// How the lift went.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case", deny_unknown_fields)]
pub(crate) enum WentV1 {
    /// All of it.
    Well,
    /// Reps were missed.
    Short {
        /// The worst set, from 1.
        set: u8,
        /// Its reps.
        reps: u8,
    },
    /// The back moved.
    Moved {
        /// In which set, from 1.
        set: u8,
        /// At which rep, from 1.
        rep: u8,
    },
    /// The back moved in a warm-up.
    MovedWarm,
    /// Sets were left out.
    Cut {
        /// How many were done.
        done: u8,
    },
}

impl From<Went> for WentV1 {
    fn from(went: Went) -> Self {
        match went {
            Went::Well => Self::Well,
            Went::Short { set, reps } => Self::Short { set, reps },
            Went::Moved { set, rep } => Self::Moved { set, rep },
            Went::MovedWarm => Self::MovedWarm,
            Went::Cut { done } => Self::Cut { done },
        }
    }
}

impl From<WentV1> for Went {
    fn from(went: WentV1) -> Self {
        match went {
            WentV1::Well => Self::Well,
            WentV1::Short { set, reps } => Self::Short { set, reps },
            WentV1::Moved { set, rep } => Self::Moved { set, rep },
            WentV1::MovedWarm => Self::MovedWarm,
            WentV1::Cut { done } => Self::Cut { done },
        }
    }
}

/// Which way the load goes.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub(crate) enum VerdictV1 {
    /// Up.
    Raise,
    /// The same.
    Repeat,
    /// Down a little.
    Drop,
    /// Down further.
    Reset,
    /// Down after a break.
    Ease,
}

impl From<Verdict> for VerdictV1 {
    fn from(verdict: Verdict) -> Self {
        match verdict {
            Verdict::Raise => Self::Raise,
            Verdict::Repeat => Self::Repeat,
            Verdict::Drop => Self::Drop,
            Verdict::Reset => Self::Reset,
            Verdict::Ease => Self::Ease,
        }
    }
}

impl From<VerdictV1> for Verdict {
    fn from(verdict: VerdictV1) -> Self {
        match verdict {
            VerdictV1::Raise => Self::Raise,
            VerdictV1::Repeat => Self::Repeat,
            VerdictV1::Drop => Self::Drop,
            VerdictV1::Reset => Self::Reset,
            VerdictV1::Ease => Self::Ease,
        }
    }
}

/// Why.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub(crate) enum WhyV1 {
    /// It went well.
    Well,
    /// On the way back from a break.
    Back,
    /// Nothing near above can be loaded.
    NoStep,
    /// A lighter day by choice.
    Light,
    /// Another try.
    TryAgain,
    /// Cut short.
    Cut,
    /// All tries used up.
    OutOfTries,
    /// Too much, too early.
    TooMuch,
    /// Stuck.
    Stuck,
    /// A break.
    Away,
    /// The coach.
    Coach,
}

impl From<Why> for WhyV1 {
    fn from(why: Why) -> Self {
        match why {
            Why::Well => Self::Well,
            Why::Back => Self::Back,
            Why::NoStep => Self::NoStep,
            Why::Light => Self::Light,
            Why::TryAgain => Self::TryAgain,
            Why::Cut => Self::Cut,
            Why::OutOfTries => Self::OutOfTries,
            Why::TooMuch => Self::TooMuch,
            Why::Stuck => Self::Stuck,
            Why::Away => Self::Away,
            Why::Coach => Self::Coach,
            Why::Range
            | Why::Hard
            | Why::Waiting
            | Why::Anew
            | Why::Ill
            | Why::Family
            | Why::OverReaching
            | Why::LongAgo
            | Why::Week
            | Why::Hurt => unreachable!("version 2 writes these"),
        }
    }
}

impl From<WhyV1> for Why {
    fn from(why: WhyV1) -> Self {
        match why {
            WhyV1::Well => Self::Well,
            WhyV1::Back => Self::Back,
            WhyV1::NoStep => Self::NoStep,
            WhyV1::Light => Self::Light,
            WhyV1::TryAgain => Self::TryAgain,
            WhyV1::Cut => Self::Cut,
            WhyV1::OutOfTries => Self::OutOfTries,
            WhyV1::TooMuch => Self::TooMuch,
            WhyV1::Stuck => Self::Stuck,
            WhyV1::Away => Self::Away,
            WhyV1::Coach => Self::Coach,
        }
    }
}

/// The decision with what it follows from.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct DecisionV1 {
    verdict: VerdictV1,
    why: WhyV1,
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
}

impl From<Decision> for DecisionV1 {
    fn from(decision: Decision) -> Self {
        Self {
            verdict: decision.verdict.into(),
            why: decision.why.into(),
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
        }
    }
}

impl TryFrom<DecisionV1> for Decision {
    type Error = WireFault;
    fn try_from(decision: DecisionV1) -> Result<Self, WireFault> {
        Ok(Self {
            verdict: decision.verdict.into(),
            why: decision.why.into(),
            after: LiftNo(decision.after),
            date: read_date(&decision.date)?,
            went: decision.went.into(),
            sets: decision.sets,
            reps: decision.reps,
            from: Mass::from_ng(decision.from_ng),
            nth: decision.nth,
            tries: decision.tries,
            wished: Mass::from_ng(decision.wished_ng),
            load: Mass::from_ng(decision.load_ng),
            away_days: decision.away_days,
        })
    }
}
