//! A ladder problem in lean integers: kinds heaviest first, windows on one side's mass, costs
//! divided by all that they have in common.
//!
//! Refuses: figures out of range, plates on the bar that cannot be there.
use super::{Problem, Wish};
use crate::mass::Mass;
use crate::solve::equipment::{length_text, mass_in_range, mass_text, out_of_range, refusal};
use crate::solve::{Constraint, Refusal};
use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

/// Handling is read in nanoseconds, a penalty in nanoseconds for a kilogram of 10^12 ng.
pub(super) const ZS_PER_NS: i128 = 1_000_000_000_000;
/// Low bits of a [`Price`] that count pair moves.
pub(super) const MOVE_BITS: u32 = 20;
/// Cost in whole units, times 2^[`MOVE_BITS`], plus pair moves: so that less is less cost, then
/// fewer moves.
pub(super) type Price = i128;
/// What cannot be had. Two of them still add up.
pub(super) const NEVER: Price = i128::MAX / 4;

/// A kind of plate.
#[derive(Debug, Clone, Copy)]
pub(super) struct Kind {
    /// One plate, nanograms.
    pub mass: i64,
    /// One plate, nanometres.
    pub thickness: i64,
    /// As many pairs as can be of use.
    pub pairs: u16,
    /// One move of a pair.
    pub price: Price,
    /// Place in the problem's list.
    pub place: usize,
    /// First kind of the same mass.
    pub group: usize,
    /// Where its count lies among the bits of a set.
    pub shift: u32,
}

/// What one rung allows, for the plates of one side.
#[derive(Debug, Clone, Copy)]
pub(super) struct Window {
    /// Least mass, nanograms.
    pub low: i64,
    /// Greatest mass, nanograms.
    pub high: i64,
    /// Both sides' mass that would be on target; may be negative.
    aim: i64,
    /// All distances from the target are multiples of this.
    step: i64,
    /// Price of one such step.
    weight: Price,
}

impl Window {
    /// Price of `mass` on one side.
    pub(super) fn price(&self, mass: i64) -> Price {
        Price::from((self.aim - 2 * mass).abs() / self.step) * self.weight
    }

    /// At most the price of any allowed mass in `from..=to`; `None` when none is allowed.
    pub(super) fn least_price(&self, from: i64, to: i64) -> Option<Price> {
        let (from, to) = (from.max(self.low), to.min(self.high));
        if from > to {
            None
        } else if 2 * from >= self.aim {
            Some(self.price(from))
        } else if 2 * to <= self.aim {
            Some(self.price(to))
        } else {
            Some(0)
        }
    }
}

/// A problem, ready to be searched.
#[derive(Debug)]
pub(super) struct Ready {
    /// Heaviest first.
    pub kinds: Vec<Kind>,
    /// By rung.
    pub windows: Vec<Window>,
    /// On the bar before the first rung, as places in `kinds`, inside to outside.
    pub on_bar: Vec<usize>,
    /// Usable length, nanometres.
    pub sleeve: i64,
    /// Whether only plates as heavy or lighter go on top.
    pub big_inside: bool,
    /// Whether clearing the sleeve counts.
    pub strip_after: bool,
    /// No price that is not [`NEVER`] exceeds it.
    pub dearest: Price,
}

impl Ready {
    /// Price of a stay of `kind` up to rung `last`, the putting on included.
    pub(super) fn stay(&self, kind: usize, last: usize) -> Price {
        self.kinds[kind].price + self.removal(kind, last)
    }

    /// Price of taking off `kind` after rung `last`.
    pub(super) fn removal(&self, kind: usize, last: usize) -> Price {
        if last + 1 < self.windows.len() || self.strip_after {
            self.kinds[kind].price
        } else {
            0
        }
    }
}

/// Checks the problem and brings it into lean form.
pub(super) fn prepare(problem: &Problem) -> Result<Ready, Refusal> {
    check(problem)?;
    let equipment = &problem.equipment;
    let bar = equipment.bar_and_collars.ng();
    let sleeve = equipment.sleeve.map_or(i64::MAX, |s| s.nm());
    let mut windows = Vec::with_capacity(problem.rungs.len());
    for (at, wish) in problem.rungs.iter().enumerate() {
        windows.push(window(at, wish, equipment.bar_and_collars)?);
    }
    let most = windows.iter().map(|w| w.high).max().unwrap_or(0);
    let mut kinds: Vec<Kind> = equipment
        .plates
        .iter()
        .enumerate()
        .map(|(place, plate)| Kind {
            mass: plate.mass.ng(),
            thickness: plate.thickness.nm(),
            pairs: useful(plate.pairs, most, plate.mass.ng()).min(useful(
                plate.pairs,
                sleeve,
                plate.thickness.nm(),
            )),
            price: Price::from(plate.handling_ns) * ZS_PER_NS,
            place,
            group: 0,
            shift: 0,
        })
        .collect();
    kinds.sort_by_key(|k| (-k.mass, k.price, k.thickness, k.place));
    lay_out_bits(&mut kinds)?;
    let on_bar = problem.on_bar.iter().map(|&place| {
        let found = kinds.iter().position(|k| k.place == place);
        found.expect("checked to be in the list")
    });
    let mut ready = Ready {
        on_bar: on_bar.collect(),
        kinds,
        windows,
        sleeve,
        big_inside: equipment.big_inside,
        strip_after: problem.strip_after,
        dearest: 0,
    };
    price(&mut ready, problem, bar)?;
    Ok(ready)
}

fn useful(pairs: u16, room: i64, each: i64) -> u16 {
    let fit = room.max(0).checked_div(each).unwrap_or(i64::MAX);
    pairs.min(u16::try_from(fit).unwrap_or(u16::MAX))
}

fn check(problem: &Problem) -> Result<(), Refusal> {
    problem.equipment.check()?;
    let rungs = problem.rungs.len();
    if rungs == 0 || rungs > Problem::RUNGS_LIMIT {
        let text = format!("are {rungs}, and 1 to {} are planned", Problem::RUNGS_LIMIT);
        return Err(refusal(Constraint::Range, "rungs", text));
    }
    for (at, wish) in problem.rungs.iter().enumerate() {
        let masses = [
            ("target", wish.target),
            ("below", wish.below),
            ("above", wish.above),
        ];
        if let Some((name, mass)) = masses.into_iter().find(|(_, m)| !mass_in_range(*m)) {
            return Err(out_of_range(
                &format!("rungs[{at}].{name}"),
                mass_text(mass),
            ));
        }
        if wish.per_kg_off_ns > Problem::PER_KG_OFF_LIMIT_NS {
            let field = format!("rungs[{at}].per_kg_off_s");
            return Err(out_of_range(&field, format!("{} ns", wish.per_kg_off_ns)));
        }
    }
    check_on_bar(problem)
}

fn check_on_bar(problem: &Problem) -> Result<(), Refusal> {
    let plates = &problem.equipment.plates;
    if let Some(at) = problem.on_bar.iter().position(|&k| k >= plates.len()) {
        let field = format!("on_bar[{at}]");
        let text = String::from("is not among the plates");
        return Err(refusal(Constraint::Inventory, &field, text));
    }
    for end in 1..=problem.on_bar.len() {
        let Some(broken) = problem.equipment.broken_by(&problem.on_bar[..end]) else {
            continue;
        };
        let outer = &plates[problem.on_bar[end - 1]];
        let mass = mass_text(outer.mass);
        let text = match broken {
            Constraint::Inventory => {
                format!("is one more {mass} than the {} pairs allow", outer.pairs)
            }
            Constraint::BigInside => format!("puts {mass} outside a lighter plate"),
            Constraint::Range
            | Constraint::Bar
            | Constraint::Sleeve
            | Constraint::Tolerance
            | Constraint::Hole => format!(
                "does not fit on the sleeve of {}",
                problem
                    .equipment
                    .sleeve
                    .map(length_text)
                    .unwrap_or_default()
            ),
        };
        return Err(refusal(broken, &format!("on_bar[{}]", end - 1), text));
    }
    Ok(())
}

fn window(at: usize, wish: &Wish, bar: Mass) -> Result<Window, Refusal> {
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
        aim,
        step: 1,
        weight: Price::from(wish.per_kg_off_ns),
    })
}

/// Bits of a set's key that are left for counts; the rest names the rungs.
pub(super) const COUNT_BITS: u32 = 116;

fn lay_out_bits(kinds: &mut [Kind]) -> Result<(), Refusal> {
    let mut shift = 0;
    for at in 0..kinds.len() {
        kinds[at].shift = shift;
        shift += u16::BITS - kinds[at].pairs.leading_zeros();
        kinds[at].group = match at.checked_sub(1) {
            Some(before) if kinds[before].mass == kinds[at].mass => kinds[before].group,
            _ => at,
        };
    }
    if shift > COUNT_BITS {
        let text = String::from("are too many kinds and pairs to plan exactly");
        return Err(refusal(Constraint::Range, "plates", text));
    }
    Ok(())
}

/// Divides all costs by what they have in common and adds the count of moves below.
fn price(ready: &mut Ready, problem: &Problem, bar: i64) -> Result<(), Refusal> {
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
