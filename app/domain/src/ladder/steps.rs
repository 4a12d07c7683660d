//! Which warm-ups a pattern asks for below a given work load, and between which loads each may
//! stand. Refuses: windows that touch; so loads rise.
use super::Habit;
use crate::gym::{Pattern, PatternStep};
use crate::mass::Mass;
use crate::solve::loads::Loads;
use alloc::vec::Vec;

/// One warm-up that is wanted.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) struct Step {
    /// Where it would best stand.
    pub target: Mass,
    /// The least load that will do.
    pub low: Mass,
    /// The greatest.
    pub high: Mass,
    /// Reps to do.
    pub reps: u8,
}

/// The warm-ups below a work load, each with a load that can be made.
#[derive(Debug)]
pub(super) struct Steps<'a> {
    /// Rising.
    pub steps: Vec<Step>,
    /// The work load.
    pub work: Mass,
    /// What they are built by.
    pub habit: &'a Habit,
    loads: &'a Loads,
    /// Reps of the pattern's last.
    last_reps: Option<u8>,
}

impl<'a> Steps<'a> {
    /// The warm-ups of `pattern` below `work`.
    pub(super) fn new(pattern: &Pattern, work: Mass, loads: &'a Loads, habit: &'a Habit) -> Self {
        let bar = loads.least();
        let mut wanted: Vec<PatternStep> = pattern.steps.clone();
        wanted.sort_by_key(|step| step.share);
        let mut steps: Vec<Step> = Vec::new();
        for step in &wanted {
            let mut target = share(work, step.share);
            if target - bar < habit.least {
                target = bar;
            }
            if target < work && steps.last().is_none_or(|last| last.target < target) {
                steps.push(Step {
                    target,
                    low: target,
                    high: target,
                    reps: step.reps,
                });
            }
        }
        let mut all = Self {
            steps,
            work,
            habit,
            loads,
            last_reps: pattern.steps.last().map(|step| step.reps),
        };
        all.settle();
        all
    }

    /// Leaves out one that is too near to its neighbour `at + 1`, which may be the work set:
    /// itself, but not the empty bar for a warm-up.
    pub(super) fn leave_out(&mut self, at: usize) {
        let bar = self.steps[at].target == self.loads.least();
        let out = if bar && at + 1 < self.steps.len() {
            at + 1
        } else {
            at
        };
        self.steps.remove(out);
        self.settle();
    }

    /// One more before the one at `at`, half-way from `below` to `above`; false when the plates
    /// make none there.
    pub(super) fn go_half_way(&mut self, at: usize, below: Mass, above: Mass) -> bool {
        let reps = self
            .steps
            .get(at.saturating_sub(1))
            .map_or(0, |step| step.reps);
        let target = half(below + above);
        let step = Step {
            target,
            low: target,
            high: target,
            reps,
        };
        self.steps.insert(at, step);
        self.settle();
        self.steps.iter().any(|step| step.target == target)
    }

    /// Gives each its window, and leaves out those in whose window there is no load.
    fn settle(&mut self) {
        self.steps.sort_by_key(|step| step.target);
        loop {
            for at in 0..self.steps.len() {
                let narrow = self.window(at, self.off(at));
                let window = if self.makes(narrow) {
                    narrow
                } else {
                    self.window(at, self.work)
                };
                (self.steps[at].low, self.steps[at].high) = window;
            }
            let lost = |step: &Step| !self.makes((step.low, step.high));
            let Some(lost) = self.steps.iter().position(lost) else {
                break;
            };
            self.steps.remove(lost);
        }
        let bar = self.loads.least();
        if let (Some(step), Some(reps)) = (self.steps.last_mut(), self.last_reps)
            && step.target > bar
        {
            step.reps = reps;
        }
    }

    /// How far the one at `at` may be off.
    fn off(&self, at: usize) -> Mass {
        let thousandths = self.habit.off[usize::from(at + 1 == self.steps.len())];
        Mass::from_ng(self.work.ng() / 1_000 * thousandths).max(self.habit.least)
    }

    /// Within `off` of the target, half-way to its neighbours' at most, and a step from the
    /// empty bar and the work set.
    fn window(&self, at: usize, off: Mass) -> (Mass, Mass) {
        let bar = self.loads.least();
        let target = self.steps[at].target;
        if target == bar {
            return (bar, bar);
        }
        let (one, least) = (Mass::from_ng(1), self.habit.least);
        let low = match at.checked_sub(1).map(|before| self.steps[before].target) {
            Some(before) if before == bar => (half(bar + target) + one).max(bar + least),
            Some(before) => half(before + target) + one,
            None => bar,
        };
        let high = match self.steps.get(at + 1) {
            Some(next) => half(target + next.target),
            None => half(target + self.work).min(self.work - least),
        };
        (low.max(target - off), high.min(target + off))
    }

    fn makes(&self, (low, high): (Mass, Mass)) -> bool {
        self.loads.at_least(low).is_some_and(|load| load <= high)
    }
}

fn share(of: Mass, hundredths_of_percent: u32) -> Mass {
    let ng = i128::from(of.ng()) * i128::from(hundredths_of_percent) / 10_000;
    Mass::from_ng(i64::try_from(ng).unwrap_or(i64::MAX))
}

fn half(of: Mass) -> Mass {
    Mass::from_ng(of.ng() / 2)
}
