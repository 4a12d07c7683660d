//! Costs as small whole numbers. Refuses: costs that do not add up within 128 bits.
use super::Problem;
use super::prepare::{MOVE_BITS, NEVER, Ready};
use crate::solve::equipment::refusal;
use crate::solve::{Constraint, Refusal};
use alloc::string::String;

/// Divides all costs by what they have in common and adds the count of moves below.
pub(super) fn price(ready: &mut Ready, problem: &Problem, bar: i64) -> Result<(), Refusal> {
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
    let dearest_move = ready.kinds.iter().map(|k| k.price / common).max();
    let mut dearest = dearest_move.unwrap_or(0) * moves;
    for window in &mut ready.windows {
        window.weight /= common;
        let ends = window.price(window.low).max(window.price(window.high));
        dearest = dearest.saturating_add(ends);
    }
    if moves >= 1 << MOVE_BITS || dearest >= NEVER >> (MOVE_BITS + 1) {
        let text = String::from("cost more than can be added up exactly");
        return Err(refusal(Constraint::Range, "rungs", text));
    }
    ready.dearest = ((dearest + 1) << MOVE_BITS) + moves;
    for window in &mut ready.windows {
        window.weight <<= MOVE_BITS;
    }
    for kind in &mut ready.kinds {
        kind.price = ((kind.price / common) << MOVE_BITS) + 1;
    }
    Ok(())
}

fn gcd(a: i128, b: i128) -> i128 {
    let (mut a, mut b) = (a.abs(), b.abs());
    while b != 0 {
        (a, b) = (b, a % b);
    }
    a
}
