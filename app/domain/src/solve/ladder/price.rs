//! Costs as small whole numbers, in as few bits as hold them. Refuses: costs that do not add up
//! within 128 bits.
use super::prepare::Ready;
use super::problem::Problem;
use crate::solve::equipment::refusal;
use crate::solve::{Constraint, Refusal};
use alloc::string::String;
use core::fmt;
use core::ops::{Add, Sub};

/// Cost in whole units, then a few low bits that count pair moves: so that less is less cost,
/// then fewer moves.
pub(super) trait Price:
    Copy + Ord + Default + fmt::Debug + Add<Output = Self> + Sub<Output = Self>
{
    /// What cannot be had. Three of them still add up.
    const NEVER: Self;
    /// No two prices differ by less.
    const ONE: Self;
    /// From wide, which fits.
    fn narrow(wide: Wide) -> Self;
    /// The sum of two that are at most [`Price::NEVER`]. Checked where tests run alone, so that
    /// the processor adds several at once.
    fn plus(self, other: Self) -> Self;
    /// So many times this price, which fits.
    fn times(self, steps: i64) -> Self;
}

/// Where every price fits.
pub(super) type Wide = i128;

macro_rules! price {
    ($($width:ty),*) => {$(
        impl Price for $width {
            const NEVER: Self = Self::MAX / 4;
            const ONE: Self = 1;
            fn narrow(wide: Wide) -> Self {
                Self::try_from(wide).expect("the dearest fits")
            }
            fn plus(self, other: Self) -> Self {
                debug_assert!(self <= Self::NEVER && other <= Self::NEVER);
                self.wrapping_add(other)
            }
            fn times(self, steps: i64) -> Self {
                if self == 0 {
                    return 0;
                }
                self * Self::try_from(steps).expect("the dearest fits")
            }
        }
    )*};
}
price!(i32, i64, i128);

/// Divides all costs by what they have in common and adds the count of moves below.
pub(super) fn price(ready: &mut Ready<Wide>, problem: &Problem, bar: i64) -> Result<(), Refusal> {
    let both = ready
        .kinds
        .iter()
        .fold(0, |g, k| gcd(g, 2 * i128::from(k.mass)));
    let mut common = ready.kinds.iter().fold(0, |g, k| gcd(g, k.price));
    for (window, wish) in ready.windows.iter_mut().zip(&problem.rungs) {
        let step = gcd(both, i128::from(wish.target.ng() - bar)).max(1);
        window.step = i64::try_from(step).expect("divides a mass");
        window.weight *= step;
        common = gcd(common, window.weight);
    }
    let common = common.max(1);
    let pairs: i128 = ready.kinds.iter().map(|k| i128::from(k.pairs)).sum();
    let stacked = pairs + i128::try_from(ready.on_bar.len()).expect("a short list");
    let rungs = i128::try_from(ready.windows.len()).expect("a short list");
    let moves = 2 * (stacked + 1) * (rungs + 1);
    let move_bits = i128::BITS - moves.leading_zeros();
    let dearest_move = ready.kinds.iter().map(|k| k.price / common).max();
    let mut dearest = dearest_move.unwrap_or(0) * moves;
    for window in &mut ready.windows {
        window.weight /= common;
        let ends = window.price(window.low).max(window.price(window.high));
        dearest = dearest.saturating_add(ends);
        if ends == 0 {
            // No load that is allowed is off the target: any weight will do, so a small one.
            window.weight = 0;
        }
    }
    if dearest >= Wide::NEVER >> (move_bits + 1) {
        let text = String::from("cost more than can be added up exactly");
        return Err(refusal(Constraint::Range, "rungs", text));
    }
    ready.dearest = ((dearest + 1) << move_bits) + moves;
    for window in &mut ready.windows {
        window.weight <<= move_bits;
    }
    for kind in &mut ready.kinds {
        kind.price = ((kind.price / common) << move_bits) + 1;
    }
    Ok(())
}

fn gcd(a: i128, b: i128) -> i128 {
    let (mut a, mut b) = (a.unsigned_abs(), b.unsigned_abs());
    while b != 0 {
        // Narrow division is many times quicker, and soon enough.
        if let (Ok(small_a), Ok(small_b)) = (u64::try_from(a), u64::try_from(b)) {
            (a, b) = (b, u128::from(small_a % small_b));
        } else {
            (a, b) = (b, a % b);
        }
    }
    a.cast_signed()
}
