//! Fills the screen of what stands behind the end of a lift.
use crate::draw::rung_state;
use crate::generated::{Equation, KioskWindow, Outing, Why};
use crate::rows::Rows;
use crate::setup::tied;
use slint::{ComponentHandle as _, SharedString};

/// Keeps its rows.
pub(crate) struct WhyFace {
    outings: Rows<Outing>,
    equations: Rows<Equation>,
    back: Rows<SharedString>,
}

impl WhyFace {
    pub(crate) fn new(window: &KioskWindow) -> Self {
        let face = Self {
            outings: Rows::new(),
            equations: Rows::new(),
            back: Rows::new(),
        };
        let to = window.global::<Why<'_>>();
        to.set_outings(face.outings.model());
        to.set_equations(face.equations.model());
        to.set_back(face.back.model());
        face
    }

    pub(crate) fn show(&self, window: &KioskWindow, why: &view::why::Why) {
        let to = window.global::<Why<'_>>();
        to.set_title(why.title.as_str().into());
        to.set_headline(why.headline.as_str().into());
        to.set_sentence(tied(&why.sentence).into());
        let trail = &why.trail;
        self.outings.settle(trail.points.iter().map(|point| Outing {
            date: point.date.as_str().into(),
            load: point.load.as_str().into(),
            word: point.word.as_str().into(),
            height: point.height.clamp(0.0, 1.0),
            state: rung_state(point.state),
        }));
        let (from, to_end) = trail.line.unwrap_or_default();
        to.set_fitted(trail.line.is_some());
        to.set_line_from(from);
        to.set_line_to(to_end);
        let threshold = trail.threshold.as_ref();
        to.set_threshold(threshold.map_or(0.0, |(height, _)| *height));
        to.set_threshold_words(tied(threshold.map_or("", |(_, words)| words)).into());
        self.equations
            .settle(why.estimates.iter().map(|one| Equation {
                name: one.equation.as_str().into(),
                single: one.single.as_str().into(),
                place: one.place.clamp(0.0, 1.0),
            }));
        to.set_back_title(why.back_title.as_str().into());
        self.back
            .settle(why.back.iter().map(|day| tied(day).into()));
        to.set_caution(why.caution.as_str().into());
        to.set_main(why.main.as_str().into());
    }
}
