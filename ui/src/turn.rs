//! Fills the page on which somebody speaks of their turn.
use crate::generated::{Answer, KioskWindow, TurnPad};
use crate::rows::Rows;
use slint::ComponentHandle as _;

/// Keeps its answers.
pub(crate) struct TurnFace {
    answers: Rows<Answer>,
}

impl TurnFace {
    pub(crate) fn new(window: &KioskWindow) -> Self {
        let answers = Rows::new();
        window.global::<TurnPad<'_>>().set_answers(answers.model());
        Self { answers }
    }

    pub(crate) fn show(&self, window: &KioskWindow, pad: &view::turn_pad::TurnPad) {
        let to = window.global::<TurnPad<'_>>();
        to.set_question(pad.question.as_str().into());
        self.answers.settle(pad.answers.iter().map(|one| Answer {
            word: one.word.as_str().into(),
            more: one.more.as_str().into(),
        }));
        to.set_stop(pad.stop.as_str().into());
    }
}
