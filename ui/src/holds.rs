//! Fills the page on which it is said what a bar holds.
use crate::draw::BarFace;
use crate::generated::{Answer, Holds, KioskWindow, PlateKey};
use crate::rows::Rows;
use slint::ComponentHandle as _;

/// Keeps its lists.
pub(crate) struct HoldsFace {
    answers: Rows<Answer>,
    plates: Rows<PlateKey>,
    bar: BarFace,
}

impl HoldsFace {
    pub(crate) fn new(window: &KioskWindow) -> Self {
        let face = Self {
            answers: Rows::new(),
            plates: Rows::new(),
            bar: BarFace::new(),
        };
        let to = window.global::<Holds<'_>>();
        to.set_answers(face.answers.model());
        to.set_plates(face.plates.model());
        face
    }

    pub(crate) fn show(&self, window: &KioskWindow, holds: &view::holds::Holds) {
        let to = window.global::<Holds<'_>>();
        to.set_question(holds.question.as_str().into());
        self.answers.settle(holds.answers.iter().map(|one| Answer {
            word: one.word.as_str().into(),
            more: one.more.as_str().into(),
        }));
        to.set_by_plate(holds.by_plate.as_str().into());
        self.plates.settle(holds.plates.iter().map(|key| PlateKey {
            word: key.word.as_str().into(),
            left: key.left,
        }));
        to.set_said(holds.said.as_str().into());
        to.set_total(holds.total.as_str().into());
        to.set_bar(self.bar.draw(&holds.bar));
        to.set_take_last(holds.take_last.as_str().into());
        to.set_main(holds.main.as_str().into());
    }
}
