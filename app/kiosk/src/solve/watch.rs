//! Times a planner. Refuses: to read a clock of its own.
use super::exact;
use serde_json::value::RawValue;

/// Runs a planner once, or once and as often again as it is to be timed.
pub(super) struct Watch<'a> {
    times: Option<u32>,
    within_ns: u64,
    clock: &'a mut dyn FnMut() -> u64,
}

impl<'a> Watch<'a> {
    pub(super) fn new(
        times: Option<u32>,
        within_ns: u64,
        clock: &'a mut dyn FnMut() -> u64,
    ) -> Self {
        Self {
            times,
            within_ns,
            clock,
        }
    }

    /// As [`Watch::run`], for a planner that asks now and then whether it may go on: each run
    /// may, until its time is up.
    pub(super) fn run_within<T>(
        &mut self,
        planner: impl Fn(&mut dyn FnMut() -> bool) -> T,
    ) -> (T, Option<Box<RawValue>>) {
        let clock = &mut self.clock;
        let mut timed = |within_ns: u64| {
            let start = clock();
            let plan = planner(&mut || clock().saturating_sub(start) < within_ns);
            (plan, clock().saturating_sub(start))
        };
        let (plan, _) = timed(self.within_ns);
        let Some(times) = self.times.filter(|times| *times > 0) else {
            return (plan, None);
        };
        let mut taken: Vec<u64> = (0..times).map(|_| timed(self.within_ns).1).collect();
        (plan, Some(exact::decimal(median(&mut taken), 3)))
    }

    /// What the planner says, and the median of its times in microseconds.
    pub(super) fn run<T>(&mut self, planner: impl Fn() -> T) -> (T, Option<Box<RawValue>>) {
        let plan = planner();
        let Some(times) = self.times.filter(|times| *times > 0) else {
            return (plan, None);
        };
        let mut taken: Vec<u64> = Vec::new();
        for _ in 0..times {
            let start = (self.clock)();
            drop(std::hint::black_box(planner()));
            taken.push((self.clock)().saturating_sub(start));
        }
        (plan, Some(exact::decimal(median(&mut taken), 3)))
    }
}

/// Of an even number of times the lower of the middle two.
fn median(taken: &mut [u64]) -> i128 {
    taken.sort_unstable();
    taken
        .get((taken.len() - 1) / 2)
        .map_or(0, |&ns| i128::from(ns))
}

#[cfg(test)]
mod tests {
    use super::Watch;

    #[test]
    fn the_median_is_of_the_timed_runs_alone() {
        let mut readings = [0, 5_000, 10_000, 11_500, 20_000, 29_000].into_iter();
        let mut clock = || readings.next().unwrap();
        let runs = std::cell::Cell::new(0);
        let (plan, median) = Watch::new(Some(3), 0, &mut clock).run(|| {
            runs.set(runs.get() + 1);
            runs.get()
        });
        assert_eq!((plan, runs.get()), (1, 4));
        assert_eq!(median.unwrap().get(), "5");
    }

    #[test]
    fn untimed_runs_leave_the_clock_alone() {
        let mut clock = || unreachable!("nobody asked");
        let (plan, median) = Watch::new(None, 0, &mut clock).run(|| 7);
        assert!(plan == 7 && median.is_none());
    }
}
