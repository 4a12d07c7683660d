//! What a rung allows on one side, and what its load costs. Refuses: a bar that is too heavy.
use super::price::{Price, Wide};
use super::problem::Wish;
use crate::mass::Mass;
use crate::solve::equipment::{mass_text, refusal};
use crate::solve::{Constraint, Refusal};
use alloc::format;

/// What one rung allows, for the plates of one side.
#[derive(Debug, Clone, Copy)]
pub(super) struct Window<P> {
    /// Least mass, nanograms.
    pub low: i64,
    /// Greatest mass, nanograms.
    pub high: i64,
    /// The size that the largest plate must have, see [`super::prepare::Kind::size`]; 0 for any.
    pub size: u8,
    /// Both sides' mass that would be on target; may be negative.
    aim: i64,
    /// All distances from the target are multiples of this.
    pub step: i64,
    /// Price of one such step.
    pub weight: P,
    /// No load costs less.
    pub least: P,
}

impl<P: Price> Window<P> {
    /// Price of `mass` on one side, which is allowed.
    pub(super) fn price(&self, mass: i64) -> P {
        self.weight.times((self.aim - 2 * mass).abs() / self.step)
    }

    /// At most the price of any allowed mass in `from..=to`; `None` when none is allowed.
    pub(super) fn least_price(&self, from: i64, to: i64) -> Option<P> {
        let (from, to) = (from.max(self.low), to.min(self.high));
        if from > to {
            None
        } else if 2 * from >= self.aim {
            Some(self.price(from))
        } else if 2 * to <= self.aim {
            Some(self.price(to))
        } else {
            Some(self.least)
        }
    }
}

impl Window<Wide> {
    /// The same with prices in `P`, where they fit.
    pub(super) fn narrow<P: Price>(&self) -> Window<P> {
        Window {
            low: self.low,
            high: self.high,
            size: self.size,
            aim: self.aim,
            step: self.step,
            weight: P::narrow(self.weight),
            least: P::narrow(self.least),
        }
    }
}

/// The window of rung `at`.
///
/// # Errors
/// [`Refusal`] when the bar with its collars is too heavy already.
pub(super) fn window(at: usize, wish: &Wish, bar: Mass) -> Result<Window<Wide>, Refusal> {
    let aim = (wish.target - bar).ng();
    let (low, high) = (aim - wish.below.ng(), aim + wish.above.ng());
    if high < 0 {
        let text = format!(
            "the bar with its collars weighs {}, more than the {} that this rung allows",
            mass_text(bar),
            mass_text(wish.target + wish.above)
        );
        let field = format!("rungs[{at}].target");
        return Err(refusal(Constraint::Bar, &field, text));
    }
    Ok(Window {
        low: low.max(0).div_euclid(2) + low.max(0) % 2,
        high: high / 2,
        size: 0,
        aim,
        step: 1,
        weight: Wide::from(wish.per_kg_off_ns),
        least: 0,
    })
}
