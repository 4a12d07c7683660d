//! A ladder problem in lean integers: kinds heaviest first, windows on one side's mass, costs
//! divided by all that they have in common.
//!
//! Refuses: figures out of range, plates on the bar that cannot be there.
use super::check::check;
use super::price::{Price, Wide, price};
use super::problem::Problem;
use super::window::{Window, window};
use crate::length::Length;
use crate::solve::equipment::refusal;
use crate::solve::{Constraint, Refusal};
use alloc::string::String;
use alloc::vec::Vec;

/// Handling is read in nanoseconds, a penalty in nanoseconds for a kilogram of 10^12 ng.
pub(super) const ZS_PER_NS: i128 = 1_000_000_000_000;
/// A kind of plate.
#[derive(Debug, Clone, Copy)]
pub(super) struct Kind<P> {
    /// One plate, nanograms.
    pub mass: i64,
    /// One plate, nanometres.
    pub thickness: i64,
    /// How many of the sizes that rungs ask for it reaches.
    pub size: u8,
    /// As many pairs as can be of use.
    pub pairs: u16,
    /// One move of a pair.
    pub price: P,
    /// Place in the problem's list.
    pub place: usize,
    /// First kind of the same mass.
    pub group: usize,
    /// Where its count lies among the bits of a set.
    pub shift: u32,
}

/// A problem, ready to be searched.
#[derive(Debug)]
pub(super) struct Ready<P> {
    /// Heaviest first.
    pub kinds: Vec<Kind<P>>,
    /// By rung.
    pub windows: Vec<Window<P>>,
    /// On the bar before the first rung, as places in `kinds`, inside to outside.
    pub on_bar: Vec<usize>,
    /// Usable length, nanometres.
    pub sleeve: i64,
    /// Whether only plates as heavy or lighter go on top.
    pub big_inside: bool,
    /// Whether clearing the sleeve counts.
    pub strip_after: bool,
    /// No price that can be had exceeds it.
    pub dearest: P,
}

impl<P: Price> Ready<P> {
    /// Price of a stay of `kind` up to rung `last`, the putting on included.
    pub(super) fn stay(&self, kind: usize, last: usize) -> P {
        self.kinds[kind].price + self.removal(kind, last)
    }

    /// Whether some rung asks for a plate of some size.
    pub(super) fn asks_for_size(&self) -> bool {
        self.windows.iter().any(|window| window.size > 0)
    }

    /// The greatest mass that any rung allows on one side.
    pub(super) fn most(&self) -> i64 {
        self.windows.iter().map(|w| w.high).max().unwrap_or(0)
    }

    /// Price of taking off `kind` after rung `last`.
    pub(super) fn removal(&self, kind: usize, last: usize) -> P {
        if last + 1 < self.windows.len() || self.strip_after {
            self.kinds[kind].price
        } else {
            P::default()
        }
    }
}

impl Ready<Wide> {
    /// Whether all prices fit into `P`, with room to add them up.
    pub(super) fn fit<P: Price + Into<Wide>>(&self) -> bool {
        self.dearest < P::NEVER.into()
    }

    /// The same with all prices in `P`, where they fit.
    pub(super) fn narrow<P: Price>(&self) -> Ready<P> {
        let kinds = self.kinds.iter().map(|kind| Kind {
            mass: kind.mass,
            thickness: kind.thickness,
            size: kind.size,
            pairs: kind.pairs,
            price: P::narrow(kind.price),
            place: kind.place,
            group: kind.group,
            shift: kind.shift,
        });
        Ready {
            kinds: kinds.collect(),
            windows: self.windows.iter().map(Window::narrow).collect(),
            on_bar: self.on_bar.clone(),
            sleeve: self.sleeve,
            big_inside: self.big_inside,
            strip_after: self.strip_after,
            dearest: P::narrow(self.dearest),
        }
    }
}

/// Checks the problem and brings it into lean form.
pub(super) fn prepare(problem: &Problem) -> Result<Ready<Wide>, Refusal> {
    check(problem)?;
    let equipment = &problem.equipment;
    let bar = equipment.bar_and_collars.ng();
    let sleeve = equipment.sleeve.map_or(i64::MAX, |s| s.nm());
    let mut windows = Vec::with_capacity(problem.rungs.len());
    for (at, wish) in problem.rungs.iter().enumerate() {
        windows.push(window(at, wish, equipment.bar_and_collars)?);
    }
    let sizes = sizes(problem);
    for (window, wish) in windows.iter_mut().zip(&problem.rungs) {
        window.size = reached(&sizes, wish.least_diameter);
    }
    let most = windows.iter().map(|w| w.high).max().unwrap_or(0);
    let mut kinds: Vec<Kind<Wide>> = equipment
        .plates
        .iter()
        .enumerate()
        .map(|(place, plate)| Kind {
            mass: plate.mass.ng(),
            thickness: plate.thickness.nm(),
            size: reached(&sizes, plate.diameter),
            pairs: useful(plate.pairs, most, plate.mass.ng()).min(useful(
                plate.pairs,
                sleeve,
                plate.thickness.nm(),
            )),
            price: Wide::from(plate.handling_ns) * ZS_PER_NS,
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

/// The diameters that rungs ask for, rising, each once.
fn sizes(problem: &Problem) -> Vec<Length> {
    let asked = problem.rungs.iter().map(|wish| wish.least_diameter);
    let mut sizes: Vec<Length> = asked.filter(|size| *size > Length::ZERO).collect();
    sizes.sort_unstable();
    sizes.dedup();
    sizes
}

/// How many of `sizes` are at most `diameter`.
fn reached(sizes: &[Length], diameter: Length) -> u8 {
    let reached = sizes.partition_point(|size| *size <= diameter);
    u8::try_from(reached).expect("at most 48 rungs")
}

fn useful(pairs: u16, room: i64, each: i64) -> u16 {
    let fit = room.max(0).checked_div(each).unwrap_or(i64::MAX);
    pairs.min(u16::try_from(fit).unwrap_or(u16::MAX))
}

/// Bits of a set's key that are left for counts; the rest names the rungs.
pub(super) const COUNT_BITS: u32 = 116;

fn lay_out_bits(kinds: &mut [Kind<Wide>]) -> Result<(), Refusal> {
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
