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
#[derive(Debug, Clone)]
pub(super) struct Steps<'a> {
    /// Rising.
    pub steps: Vec<Step>,
    /// The work load.
    pub work: Mass,
    /// What they are built by.
    pub habit: &'a Habit,
    /// What the ladder starts from: the bar, or from the floor what stands at the right height.
    pub first: Mass,
    /// How far a warm-up may be off its share, in thousandths of the work load.
    pub off: i64,
    /// Whether the first step is never too long.
    pub already_warm: bool,
    loads: &'a Loads,
    /// Reps of the pattern's last.
    last_reps: Option<u8>,
}

impl<'a> Steps<'a> {
    /// The warm-ups of `pattern` from `first` to below `work`.
    pub(super) fn new(
        pattern: &Pattern,
        (first, work): (Mass, Mass),
        loads: &'a Loads,
        habit: &'a Habit,
    ) -> Self {
        let mut wanted: Vec<PatternStep> = pattern.steps.clone();
        wanted.sort_by_key(|step| step.share);
        let mut steps: Vec<Step> = Vec::new();
        for step in &wanted {
            let mut target = share(work, step.share);
            if target - first < habit.least {
                target = first;
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
            first,
            off: habit.off_most,
            already_warm: pattern.already_warm,
            loads,
            last_reps: pattern.steps.last().map(|step| step.reps),
        };
        all.settle();
        all
    }

    /// The same, each at most so many thousandths of the work load off its share.
    pub(super) fn within(&self, off: i64) -> Self {
        let mut nearer = self.clone();
        nearer.off = off;
        nearer.settle();
        nearer
    }

    /// Leaves out one that is too near to its neighbour `at + 1`, which may be the work set:
    /// itself, but not what the ladder starts from for a warm-up.
    pub(super) fn leave_out(&mut self, at: usize) {
        let first = self.steps[at].target == self.first;
        let out = if first && at + 1 < self.steps.len() {
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
        let mut target = half(below + above);
        if at == self.steps.len() {
            target = target.min(self.share_of_last(self.last_reps.unwrap_or(reps)));
        }
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
                    self.window(at, [self.work; 2])
                };
                (self.steps[at].low, self.steps[at].high) = window;
            }
            let lost = |step: &Step| !self.makes((step.low, step.high));
            let Some(lost) = self.steps.iter().position(lost) else {
                break;
            };
            self.steps.remove(lost);
        }
        if let (Some(step), Some(reps)) = (self.steps.last_mut(), self.last_reps)
            && step.target > self.first
        {
            step.reps = reps;
        }
    }

    /// How far the one at `at` may be under and over its share.
    fn off(&self, at: usize) -> [Mass; 2] {
        let thousandths = if at + 1 == self.steps.len() {
            self.habit.off_last
        } else {
            [self.off; 2]
        };
        thousandths.map(|off| thousandth(self.work, off).max(self.habit.least))
    }

    /// So far under and over the target, half-way to its neighbours' at most, and a step from the
    /// first load and the work set.
    fn window(&self, at: usize, [under, over]: [Mass; 2]) -> (Mass, Mass) {
        let first = self.first;
        let target = self.steps[at].target;
        if target == first {
            return (first, first);
        }
        let (one, least) = (Mass::from_ng(1), self.habit.least);
        let low = match at.checked_sub(1).map(|before| self.steps[before].target) {
            Some(before) if before == first => (half(first + target) + one).max(first + least),
            Some(before) => half(before + target) + one,
            None => first,
        };
        let high = match self.steps.get(at + 1) {
            Some(next) => half(target + next.target),
            None => (self.work - least).min(self.last_most(at)),
        };
        (low.max(target - under), high.min(target + over))
    }

    /// The heaviest that the one at `at` may be as the last: what is done for many reps must not
    /// tire. What is written heavier stays so.
    fn last_most(&self, at: usize) -> Mass {
        let Step { target, reps, .. } = self.steps[at];
        self.share_of_last(self.last_reps.unwrap_or(reps))
            .max(target)
    }

    /// The share that the last is kept to, where nothing heavier is written.
    fn share_of_last(&self, reps: u8) -> Mass {
        let many = reps > self.habit.few_reps;
        thousandth(self.work, self.habit.last_most[usize::from(many)])
    }

    fn makes(&self, (low, high): (Mass, Mass)) -> bool {
        self.loads.at_least(low).is_some_and(|load| load <= high)
    }
}

fn share(of: Mass, hundredths_of_percent: u32) -> Mass {
    let ng = i128::from(of.ng()) * i128::from(hundredths_of_percent) / 10_000;
    Mass::from_ng(i64::try_from(ng).unwrap_or(i64::MAX))
}

/// So many thousandths of a load.
pub(super) fn thousandth(of: Mass, thousandths: i64) -> Mass {
    Mass::from_ng(of.ng() / 1_000 * thousandths)
}

fn half(of: Mass) -> Mass {
    Mass::from_ng(of.ng() / 2)
}
