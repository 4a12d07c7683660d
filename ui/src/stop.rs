//! Fills the screen after a moved back.
use crate::draw::rung;
use crate::generated::{KioskWindow, Rung, Stop};
use crate::rows::Rows;
use slint::ComponentHandle as _;

/// Keeps its ladder.
pub(crate) struct StopFace {
    ladder: Rows<Rung>,
}

impl StopFace {
    pub(crate) fn new(window: &KioskWindow) -> Self {
        let ladder = Rows::new();
        window.global::<Stop<'_>>().set_ladder(ladder.model());
        Self { ladder }
    }

    pub(crate) fn show(&self, window: &KioskWindow, stop: &view::stop::Stop) {
        let to = window.global::<Stop<'_>>();
        to.set_headline(stop.headline.as_str().into());
        to.set_set(stop.set.as_str().into());
        to.set_advice(stop.advice.as_str().into());
        self.ladder.settle(stop.ladder.iter().map(rung));
        to.set_main(stop.main.as_str().into());
        to.set_go_on(stop.go_on.as_str().into());
    }
}
