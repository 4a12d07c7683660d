//! The lines of a coach's file: figures of next time and of the split, for one lift, one lifter,
//! both or all.
use super::Coaching;
use crate::mass::Mass;
use crate::next::{Limits, Rule, Step};
use crate::split::SplitRule;
use alloc::string::String;
use alloc::vec::Vec;
use chrono::NaiveDate;

/// Some figures of [`Rule`] for one lift, one lifter, both or all.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct RuleLine {
    /// Which lift; `None` for all.
    pub lift: Option<String>,
    /// Which lifter; `None` for all.
    pub lifter: Option<String>,
    /// See [`Rule`], as all below.
    pub step: Option<Step>,
    /// Tries.
    pub tries: Option<u8>,
    /// Tries when the back moved.
    pub moved_tries: Option<u8>,
    /// Share of a drop.
    pub drop: Option<u32>,
    /// Drops before a reset.
    pub drops: Option<u8>,
    /// Share of a reset.
    pub reset: Option<u32>,
    /// Days that are no break.
    pub away_days: Option<u16>,
    /// Share that a step of easing takes off.
    pub away: Option<u32>,
    /// See [`Limits`], as all below.
    pub late_days: Option<u16>,
    /// Days to a step of easing.
    pub away_step_days: Option<u16>,
    /// Days after which a lift begins anew.
    pub anew_days: Option<u16>,
    /// Days that a day of illness counts beside itself.
    pub ill: Option<u8>,
    /// Most of a week's rise.
    pub week: Option<u32>,
    /// The coarsest smallest step.
    pub coarse: Option<u32>,
    /// Pulls in a row that are over-reaching.
    pub over: Option<u8>,
    /// Within so many days.
    pub over_days: Option<u16>,
    /// Days of lighter days that are what a track follows from.
    pub light_days: Option<u16>,
}

impl RuleLine {
    /// Its figures laid over others.
    fn limits(&self, old: Limits) -> Limits {
        Limits {
            late_days: self.late_days.unwrap_or(old.late_days),
            away_step_days: self.away_step_days.unwrap_or(old.away_step_days),
            anew_days: self.anew_days.unwrap_or(old.anew_days),
            ill: self.ill.unwrap_or(old.ill),
            week: self.week.unwrap_or(old.week),
            coarse: self.coarse.unwrap_or(old.coarse),
            over: self.over.unwrap_or(old.over),
            over_days: self.over_days.unwrap_or(old.over_days),
            light_days: self.light_days.unwrap_or(old.light_days),
        }
    }
}

/// Some figures of [`SplitRule`] for one lifter or all.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct SplitLine {
    /// Which lifter; `None` for all.
    pub lifter: Option<String>,
    /// See [`SplitRule`], as all below.
    pub from: Option<Mass>,
    /// How many outings are looked at.
    pub outings: Option<u8>,
    /// Share of what is due under which progress is slow.
    pub slow: Option<u32>,
    /// How many outings must have fallen short.
    pub troubles: Option<u8>,
    /// The day of the test or the meet.
    pub test: Option<NaiveDate>,
    /// Days before it on which the full lift comes back.
    pub back_days: Option<u16>,
}

impl Coaching {
    /// When to split for a lifter: as shipped, changed figure by figure by the lines for all, then
    /// by those for the lifter; of two alike the later.
    #[must_use]
    pub fn split(&self, lifter: &str) -> SplitRule {
        let of = |line: &&SplitLine| line.lifter.as_deref().is_none_or(|name| name == lifter);
        let mut lines: Vec<&SplitLine> = self.splits.iter().filter(of).collect();
        lines.sort_by_key(|line| line.lifter.is_some());
        let mut rule = SplitRule::shipped();
        for line in lines {
            rule = SplitRule {
                from: line.from.unwrap_or(rule.from),
                outings: line.outings.unwrap_or(rule.outings),
                slow: line.slow.unwrap_or(rule.slow),
                troubles: line.troubles.unwrap_or(rule.troubles),
                test: line.test.or(rule.test),
                back_days: line.back_days.unwrap_or(rule.back_days),
                ..rule
            };
        }
        rule
    }

    /// The rule for a lifter's lift: the shipped one, changed figure by figure by the lines for
    /// all, then for the lift, then for the lifter, then for both; of two alike the later.
    #[must_use]
    pub fn rule(&self, lifter: &str, lift: &str) -> Rule {
        let mut rule = Rule::SHIPPED;
        for line in self.lines(lifter, lift) {
            rule = Rule {
                step: line.step.unwrap_or(rule.step),
                tries: line.tries.unwrap_or(rule.tries),
                moved_tries: line.moved_tries.unwrap_or(rule.moved_tries),
                drop: line.drop.unwrap_or(rule.drop),
                drops: line.drops.unwrap_or(rule.drops),
                reset: line.reset.unwrap_or(rule.reset),
                away_days: line.away_days.unwrap_or(rule.away_days),
                away: line.away.unwrap_or(rule.away),
            };
        }
        rule
    }

    /// What holds on the day for a lifter's lift, in the same order.
    #[must_use]
    pub fn limits(&self, lifter: &str, lift: &str) -> Limits {
        let lines = self.lines(lifter, lift);
        lines
            .into_iter()
            .fold(Limits::SHIPPED, |limits, line| line.limits(limits))
    }

    /// The lines for a lifter's lift, those that go before others last.
    fn lines(&self, lifter: &str, lift: &str) -> Vec<&RuleLine> {
        let of = |line: &&RuleLine| {
            let is = |wanted: &Option<String>, name| wanted.as_deref().is_none_or(|w| w == name);
            is(&line.lifter, lifter) && is(&line.lift, lift)
        };
        let mut lines: Vec<&RuleLine> = self.rules.iter().filter(of).collect();
        lines.sort_by_key(|line| (line.lifter.is_some(), line.lift.is_some()));
        lines
    }
}
