//! What a pass of the search has room for, and what it gave up.
//!
//! Refuses: calling a pass whole that gave anything up.
use super::incumbent::Aim;
use super::layer::{Layer, Promise, State, promise};

/// What a pass found out, apart from a better plan.
#[derive(Debug, Clone, Copy)]
pub(super) struct Outcome {
    /// No state was dropped for want of room or time, or because stacks were left out.
    pub whole: bool,
    /// No plan that was dropped ends before.
    pub at_least: i64,
}

impl Outcome {
    /// Something that ends no sooner than `ends` was dropped.
    pub(super) fn give_up(&mut self, ends: i64) {
        self.whole = false;
        self.at_least = self.at_least.min(ends);
    }
}

/// What becomes of the states of a pass.
pub(super) struct Beam {
    pub aim: Aim,
    /// The least promising state that the layer still has room for, once it is full.
    pub worst: Option<Promise>,
    pub outcome: Outcome,
}

impl Beam {
    pub(super) fn new(aim: Aim) -> Self {
        Self {
            aim,
            worst: None,
            outcome: Outcome {
                whole: true,
                at_least: i64::MAX,
            },
        }
    }

    /// Whether there is no room for this state.
    pub(super) fn falls_through(&self, state: &State) -> bool {
        self.worst
            .is_some_and(|worst| promise(self.aim, state) > worst)
    }

    /// Makes room.
    pub(super) fn narrow(&mut self, layer: &mut Layer, width: usize) {
        if let Some(dropped) = layer.narrow(width, self.aim) {
            self.outcome.give_up(dropped);
            self.worst = layer.states.iter().map(|s| promise(self.aim, s)).max();
        }
    }
}
