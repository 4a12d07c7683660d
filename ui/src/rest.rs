//! Fills the screen between two rungs.
use crate::draw::{BarFace, change, rung, spot};
use crate::frame::number_and_word;
use crate::generated::{KioskWindow, Rest, Rung};
use crate::rows::Rows;
use slint::{ComponentHandle as _, SharedString};

/// Steps in which the time left is drawn.
const STEPS: u8 = 20;

/// Which steps are left; the last one stays until nothing is.
fn steps(share: f32) -> impl ExactSizeIterator<Item = bool> {
    (0..u16::from(STEPS)).map(move |step| f32::from(step) < share * f32::from(STEPS))
}

/// Keeps its lists.
pub(crate) struct RestFace {
    bar: BarFace,
    ladder: Rows<Rung>,
    digits: Rows<SharedString>,
    steps: Rows<bool>,
}

impl RestFace {
    pub(crate) fn new(window: &KioskWindow) -> Self {
        let face = Self {
            bar: BarFace::new(),
            ladder: Rows::new(),
            digits: Rows::new(),
            steps: Rows::new(),
        };
        let to = window.global::<Rest<'_>>();
        to.set_ladder(face.ladder.model());
        to.set_left_digits(face.digits.model());
        to.set_steps(face.steps.model());
        face
    }

    pub(crate) fn show(&self, window: &KioskWindow, rest: &view::rest::Rest) {
        let to = window.global::<Rest<'_>>();
        let (reps, reps_word) = number_and_word(&rest.reps);
        to.set_left(rest.left.as_str().into());
        let digits = rest.left.chars().map(String::from);
        self.digits.settle(digits.map(SharedString::from));
        self.steps.settle(steps(rest.share));
        // Rested, but not while others come first: then the number is a place, not a time.
        to.set_ticks(rest.left.contains(':'));
        to.set_over(rest.share <= 0.0 && rest.left.contains(':'));
        to.set_word(rest.word.as_str().into());
        to.set_last(rest.last.as_str().into());
        to.set_load(rest.load.as_str().into());
        to.set_unit(rest.unit.as_str().into());
        to.set_reps(reps.into());
        to.set_reps_word(reps_word.into());
        to.set_rung(rest.rung.as_str().into());
        to.set_bar(self.bar.draw(&rest.bar));
        to.set_change(change(&rest.change));
        self.ladder.settle(rest.ladder.iter().map(rung));
        to.set_spot(spot(&rest.spot));
        to.set_loaded(rest.loaded.as_str().into());
        to.set_holds(rest.holds.as_str().into());
        to.set_settle(rest.settle.as_str().into());
        to.set_cue(rest.cue.as_str().into());
        to.set_main(rest.main.as_str().into());
    }
}
