//! Fills the screen at the bar.
use crate::draw::{BarFace, change, rung, spot};
use crate::frame::number_and_word;
use crate::generated::{AtTheBar, KioskWindow, Rung};
use crate::rows::Rows;
use slint::ComponentHandle as _;

/// Keeps its lists.
pub(crate) struct AtTheBarFace {
    bar: BarFace,
    ladder: Rows<Rung>,
}

impl AtTheBarFace {
    pub(crate) fn new(window: &KioskWindow) -> Self {
        let face = Self {
            bar: BarFace::new(),
            ladder: Rows::new(),
        };
        let to = window.global::<AtTheBar<'_>>();
        to.set_ladder(face.ladder.model());
        face
    }

    pub(crate) fn show(&self, window: &KioskWindow, at: &view::bar::AtTheBar) {
        let to = window.global::<AtTheBar<'_>>();
        let (reps, reps_word) = number_and_word(&at.reps);
        to.set_load(at.load.as_str().into());
        to.set_unit(at.unit.as_str().into());
        to.set_reps(reps.into());
        to.set_reps_word(reps_word.into());
        to.set_rung(at.rung.as_str().into());
        to.set_bar(self.bar.draw(&at.bar));
        to.set_change(change(&at.change));
        self.ladder.settle(at.ladder.iter().map(rung));
        to.set_spot(spot(&at.spot));
        to.set_loaded(at.loaded.as_str().into());
        to.set_holds(at.holds.as_str().into());
        to.set_caution(at.caution.as_str().into());
        to.set_settle(at.settle.as_str().into());
        to.set_main(at.main.as_str().into());
        to.set_main_detail(at.main_detail.as_str().into());
    }
}
