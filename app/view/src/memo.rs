//! What was worked out for the state that stands and holds until the next event, so that a frame
//! of a running clock costs no planning.
use domain::PlateFace;
use domain::believed::Stacks;
use domain::event::LiftNo;
use domain::settle::Choices;
use std::cell::{Cell, RefCell};
use std::collections::BTreeMap;

/// Results by what they were asked for.
#[derive(Debug, Default)]
pub struct Memo {
    /// The number of the last event of the state that they are for.
    seq: Cell<u64>,
    choices: RefCell<BTreeMap<LiftNo, Option<Choices>>>,
    stacks: RefCell<BTreeMap<(LiftNo, Vec<PlateFace>), Stacks>>,
}

impl Memo {
    /// For the state after event `seq`: what was worked out for another is forgotten.
    pub fn of(&self, seq: u64) -> &Self {
        if self.seq.replace(seq) != seq {
            self.choices.borrow_mut().clear();
            self.stacks.borrow_mut().clear();
        }
        self
    }

    /// The work loads that may be chosen for a lift.
    pub(crate) fn choices(
        &self,
        no: LiftNo,
        make: impl FnOnce() -> Option<Choices>,
    ) -> Option<Choices> {
        if let Some(known) = self.choices.borrow().get(&no) {
            return known.clone();
        }
        let made = make();
        self.choices.borrow_mut().insert(no, made.clone());
        made
    }

    /// The plates that make a stack of one side for a lift.
    pub(crate) fn stacks(
        &self,
        no: LiftNo,
        stack: &[PlateFace],
        make: impl FnOnce() -> Stacks,
    ) -> Stacks {
        let key = (no, stack.to_vec());
        if let Some(known) = self.stacks.borrow().get(&key) {
            return known.clone();
        }
        let made = make();
        self.stacks.borrow_mut().insert(key, made.clone());
        made
    }
}
