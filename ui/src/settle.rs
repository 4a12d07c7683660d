//! Fills the screen of work loads to choose from.
use crate::draw::{BarFace, change, spot};
use crate::generated::{KioskWindow, Offer, Settle};
use crate::rows::Rows;
use slint::ComponentHandle as _;
use std::cell::RefCell;

/// Keeps its cards, and a drawing for each.
pub(crate) struct SettleFace {
    offers: Rows<Offer>,
    bars: RefCell<Vec<BarFace>>,
}

impl SettleFace {
    pub(crate) fn new(window: &KioskWindow) -> Self {
        let offers = Rows::new();
        window.global::<Settle<'_>>().set_offers(offers.model());
        Self {
            offers,
            bars: RefCell::default(),
        }
    }

    pub(crate) fn show(&self, window: &KioskWindow, settle: &view::settle::Settle) {
        let to = window.global::<Settle<'_>>();
        to.set_work(settle.work.as_str().into());
        to.set_last(settle.last.as_str().into());
        to.set_asked(settle.asked.as_str().into());
        to.set_spot(spot(&settle.spot));
        to.set_done(settle.done.as_str().into());
        to.set_left(settle.left.as_str().into());
        let mut bars = self.bars.borrow_mut();
        let most = settle.loads.len().max(bars.len());
        bars.resize_with(most, BarFace::new);
        let cards = settle.loads.iter().zip(bars.iter());
        self.offers.settle(cards.map(|(choice, bar)| Offer {
            load: choice.load.as_str().into(),
            unit: choice.unit.as_str().into(),
            plan: choice.plan.as_str().into(),
            mark: choice.mark.as_str().into(),
            against: choice.against.as_str().into(),
            bar: bar.draw(&choice.bar),
            change: change(&choice.change),
            height: choice.height.clamp(0.0, 1.0),
        }));
        to.set_caution(settle.caution.as_str().into());
        to.set_main(settle.main.as_str().into());
    }
}
