//! Fills the screen of the lift's set-up.
use crate::draw::{RackFace, rung};
use crate::generated::{KioskWindow, Rung, SetUp};
use crate::rows::Rows;
use slint::{ComponentHandle as _, SharedString};

/// Keeps its lists.
pub(crate) struct SetUpFace {
    rack: RackFace,
    gear: Rows<SharedString>,
    cues: Rows<SharedString>,
    cautions: Rows<SharedString>,
    warnings: Rows<SharedString>,
    ladder: Rows<Rung>,
}

impl SetUpFace {
    pub(crate) fn new(window: &KioskWindow) -> Self {
        let face = Self {
            rack: RackFace::new(),
            gear: Rows::new(),
            cues: Rows::new(),
            cautions: Rows::new(),
            warnings: Rows::new(),
            ladder: Rows::new(),
        };
        let to = window.global::<SetUp<'_>>();
        to.set_gear(face.gear.model());
        to.set_cues(face.cues.model());
        to.set_cautions(face.cautions.model());
        to.set_warnings(face.warnings.model());
        to.set_ladder(face.ladder.model());
        face
    }

    pub(crate) fn show(&self, window: &KioskWindow, setup: &view::setup::SetUp) {
        let to = window.global::<SetUp<'_>>();
        to.set_work(setup.work.as_str().into());
        to.set_rack(self.rack.draw(&setup.rack));
        to.set_hole(setup.hole.as_str().into());
        to.set_mats(setup.mats.as_str().into());
        to.set_height(setup.height.as_str().into());
        to.set_overlap(setup.overlap.as_str().into());
        to.set_overlap_small(setup.overlap_small);
        to.set_bar(setup.bar.as_str().into());
        let words = |list: &[String]| list.iter().map(SharedString::from).collect::<Vec<_>>();
        self.gear.settle(words(&setup.gear));
        self.cues.settle(words(&setup.cues));
        self.cautions.settle(words(&setup.cautions));
        self.warnings.settle(words(&setup.warnings));
        self.ladder.settle(setup.ladder.iter().map(rung));
        to.set_note(setup.note.as_str().into());
        to.set_main(setup.main.as_str().into());
        to.set_density(density(setup));
    }
}

/// How much there is to read, so that the type can give way before a line is lost.
fn density(setup: &view::setup::SetUp) -> i32 {
    let lists = [&setup.gear, &setup.cues, &setup.cautions, &setup.warnings];
    let lines = lists.iter().flat_map(|list| list.iter());
    let ones = [&setup.height, &setup.overlap, &setup.bar, &setup.note];
    let letters: usize = lines
        .chain(ones)
        .map(|line| line.chars().count().div_ceil(40) * 40)
        .sum();
    match letters {
        0..=400 => 0,
        401..=640 => 1,
        _ => 2,
    }
}
