//! Fills the screen of the lift's set-up.
use crate::draw::{RackFace, rung};
use crate::generated::{KioskWindow, Rung, SetUp};
use crate::rows::Rows;
use slint::{ComponentHandle as _, SharedString};

/// Keeps its lists.
pub(crate) struct SetUpFace {
    rack: RackFace,
    cautions: Rows<SharedString>,
    warnings: Rows<SharedString>,
    ladder: Rows<Rung>,
}

impl SetUpFace {
    pub(crate) fn new(window: &KioskWindow) -> Self {
        let face = Self {
            rack: RackFace::new(),
            cautions: Rows::new(),
            warnings: Rows::new(),
            ladder: Rows::new(),
        };
        let to = window.global::<SetUp<'_>>();
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
        to.set_gear(setup.gear.join(", ").into());
        to.set_cues(setup.cues.join(", ").into());
        self.cautions.settle(words(&setup.cautions));
        self.warnings.settle(words(&setup.warnings));
        self.ladder.settle(setup.ladder.iter().map(rung));
        to.set_note(setup.note.as_str().into());
        to.set_main(setup.main.as_str().into());
        to.set_type(type_size(setup));
    }
}

/// The type sizes of the sheet, in units, largest first.
const TYPE: [f32; 5] = [28.0, 26.0, 24.0, 22.0, 20.0];
/// Room for the sheet's lines, in units: its width, and its height under the title.
const SHEET: (f32, f32) = (440.0, 420.0);
/// A letter's mean width and a line's height, in em, on the safe side of the face's own.
const LETTER: (f32, f32) = (0.46, 1.18);
/// Between two matters, in em.
const BETWEEN: f32 = 0.3;

/// The largest type in which everything there is to read fits; the type gives way before a line
/// is lost.
fn type_size(setup: &view::setup::SetUp) -> f32 {
    let joined = [setup.gear.join(", "), setup.cues.join(", ")];
    let ones = [&setup.height, &setup.overlap, &setup.bar, &setup.note];
    let lists = setup.cautions.iter().chain(&setup.warnings);
    let matters: Vec<f32> = ones
        .into_iter()
        .chain(&joined)
        .chain(lists)
        .filter(|matter| !matter.is_empty())
        .map(|matter| f32::from(u16::try_from(matter.chars().count()).unwrap_or(u16::MAX)))
        .collect();
    let height = |size: f32| {
        let lines = |letters: &f32| (letters * LETTER.0 * size / SHEET.0).ceil();
        let of = |letters| (lines(letters) * LETTER.1 + BETWEEN) * size;
        matters.iter().map(of).sum::<f32>()
    };
    let fits = TYPE.into_iter().find(|&size| height(size) <= SHEET.1);
    fits.unwrap_or(TYPE[TYPE.len() - 1])
}
