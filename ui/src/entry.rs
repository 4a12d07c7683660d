//! Fills the pad of numbers.
use crate::generated::{Entry, KioskWindow};
use crate::rows::Rows;
use slint::ComponentHandle as _;

/// Keeps its numbers.
pub(crate) struct EntryFace {
    numbers: Rows<i32>,
}

impl EntryFace {
    pub(crate) fn new(window: &KioskWindow) -> Self {
        let numbers = Rows::new();
        window.global::<Entry<'_>>().set_numbers(numbers.model());
        Self { numbers }
    }

    pub(crate) fn show(&self, window: &KioskWindow, entry: &view::entry::Entry) {
        let to = window.global::<Entry<'_>>();
        to.set_moved(entry.pad == view::entry::Pad::Moved);
        to.set_question(entry.question.as_str().into());
        self.numbers
            .settle(entry.numbers.iter().copied().map(i32::from));
        to.set_planned(entry.planned.into());
        to.set_through(entry.through.as_str().into());
        to.set_through_on(entry.through_on);
    }
}
