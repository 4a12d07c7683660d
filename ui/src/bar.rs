//! Fills the screen at the bar.
use crate::draw::{BarFace, RackFace, change, rung};
use crate::frame::number_and_word;
use crate::generated::{AtTheBar, KioskWindow, Rung};
use crate::rows::Rows;
use slint::{ComponentHandle as _, SharedString};

/// Keeps its lists.
pub(crate) struct AtTheBarFace {
    bar: BarFace,
    rack: RackFace,
    ladder: Rows<Rung>,
    gear: Rows<SharedString>,
}

impl AtTheBarFace {
    pub(crate) fn new(window: &KioskWindow) -> Self {
        let face = Self {
            bar: BarFace::new(),
            rack: RackFace::new(),
            ladder: Rows::new(),
            gear: Rows::new(),
        };
        let to = window.global::<AtTheBar<'_>>();
        to.set_ladder(face.ladder.model());
        to.set_gear(face.gear.model());
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
        to.set_rack(self.rack.draw(&at.rack));
        to.set_hole(at.hole.as_str().into());
        to.set_mats(at.mats.replacen(", ", "\n", 1).into());
        self.gear.settle(at.gear.iter().map(SharedString::from));
        to.set_grip(at.grip.as_str().into());
        to.set_caution(at.caution.as_str().into());
        to.set_settle(at.settle.as_str().into());
        to.set_main(at.main.as_str().into());
        to.set_main_detail(at.main_detail.as_str().into());
    }
}
