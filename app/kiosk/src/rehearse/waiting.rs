//! Taps that wait until whoever owns the state gets to them, as on a slow disk.
use std::collections::VecDeque;
use view::Meant;

/// Taps on their way, oldest first.
#[derive(Debug, Default)]
pub(super) struct Waiting {
    /// How long each takes, milliseconds.
    each_ms: u64,
    /// What is left of it, and the tap.
    taps: VecDeque<(u64, Meant)>,
}

impl Waiting {
    /// From now on each tap takes so long.
    pub(super) fn be_slow(&mut self, ms: u64) {
        self.each_ms = ms;
    }

    pub(super) fn push(&mut self, tap: Meant) {
        self.taps.push_back((self.each_ms, tap));
    }

    pub(super) fn is_empty(&self) -> bool {
        self.taps.is_empty()
    }

    /// What was not answered is lost.
    pub(super) fn clear(&mut self) {
        self.taps.clear();
    }

    /// Milliseconds until the next one is answered, at least 1.
    pub(super) fn until_next(&self) -> u64 {
        self.taps.front().map_or(u64::MAX, |(ms, _)| (*ms).max(1))
    }

    /// Time has passed, for the first of them.
    pub(super) fn pass(&mut self, ms: u64) {
        if let Some((left, _)) = self.taps.front_mut() {
            *left = left.saturating_sub(ms);
        }
    }

    /// The next one that has waited long enough.
    pub(super) fn next(&mut self) -> Option<Meant> {
        let due = self.taps.front().is_some_and(|(left, _)| *left == 0);
        due.then(|| self.taps.pop_front())?.map(|(_, tap)| tap)
    }
}
