//! What was decided for the next time, as it is kept: the rule's figures, the decision with its
//! inputs, the reason in one sentence, and what the coach ruled instead.
//!
//! Refuses: to forget the rules' decision when the coach rules otherwise; both are kept.
use super::{Decision, Rule, Verdict, Why};
use crate::mass::{Mass, MassUnit};
use crate::moment::Moment;
use alloc::format;
use alloc::string::String;
use core::cmp::Ordering;

/// A decision by the rules, with all that it follows from.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Decided {
    /// The figures that were in force.
    pub rule: Rule,
    /// Inputs and outcome.
    pub decision: Decision,
    /// Why, in one sentence and in the lifter's unit.
    pub reason: String,
}

/// A recorded load for the next time.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Kept {
    /// The load.
    pub load: Mass,
    /// Whether the coach ruled it, not the rules.
    pub by_coach: bool,
    /// Whether the coach was asked and had not answered.
    pub asks: bool,
    /// When the coach ruled it; else of no account.
    pub at: Moment,
}

/// What the coach ruled instead.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Ruled {
    /// The work load.
    pub load: Mass,
    /// The coach's words.
    pub note: String,
    /// When.
    pub at: Moment,
}

/// What stands for the next time after one lift.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct NextTime {
    /// By the rules.
    pub decided: Decided,
    /// By the coach, which goes before the rules.
    pub ruled: Option<Ruled>,
}

impl NextTime {
    /// The load that is due, and by whom.
    #[must_use]
    pub fn kept(&self) -> Kept {
        match &self.ruled {
            Some(ruled) => Kept {
                load: ruled.load,
                by_coach: true,
                asks: false,
                at: ruled.at,
            },
            None => Kept {
                load: self.decided.decision.load,
                by_coach: false,
                asks: self.decided.decision.why.asks_coach(),
                at: Moment::default(),
            },
        }
    }

    /// What is due.
    #[must_use]
    pub fn due(&self) -> Due {
        let decision = self.decided.decision;
        match &self.ruled {
            None => Due::by_rule(decision),
            Some(by_coach) => Due {
                decision: ruled(&decision, by_coach.load),
                note: by_coach.note.clone(),
                asks: false,
            },
        }
    }
}

/// What is due the next time.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Due {
    /// The decision; with [`Why::Coach`] its load is the coach's.
    pub decision: Decision,
    /// The coach's words, empty where the rules decided.
    pub note: String,
    /// Whether the load waits for the coach's word, whatever else holds of it.
    pub asks: bool,
}

impl Due {
    /// What the rules give, and nobody ruled otherwise.
    #[must_use]
    pub const fn by_rule(decision: Decision) -> Self {
        Self {
            decision,
            note: String::new(),
            asks: decision.why.asks_coach(),
        }
    }

    /// One sentence with its figures, in the lifter's unit: the coach's own words where the coach
    /// ruled.
    #[must_use]
    pub fn sentence(&self, unit: MassUnit) -> String {
        if self.decision.why == Why::Coach && !self.note.is_empty() {
            let load = self.decision.load.words(unit);
            return format!("{load}, the coach ruled: {}", self.note);
        }
        self.decision.sentence(unit)
    }
}

/// A decision as the coach ruled it.
#[must_use]
pub fn ruled(decision: &Decision, load: Mass) -> Decision {
    let verdict = match load.cmp(&decision.from) {
        Ordering::Greater => Verdict::Raise,
        Ordering::Equal => Verdict::Repeat,
        Ordering::Less => Verdict::Drop,
    };
    Decision {
        verdict,
        why: Why::Coach,
        wished: load,
        load,
        ..*decision
    }
}
