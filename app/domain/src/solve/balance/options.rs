//! What the plates of one label can give: every different pair of figures, with one choice each.
//!
//! Refuses: keeping two choices that are alike in both figures.
use super::{Problem, SUMS_LIMIT, Weighed, too_fine};
use crate::mass::{Mass, MassUnit};
use crate::solve::{Constraint, Refusal};
use alloc::format;
use alloc::vec::Vec;

/// One way to choose plates.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub(super) struct Choice {
    /// Nanograms on the left less those on the right.
    pub(super) left_less_right: i64,
    /// Nanograms on both sides less what the labels promise.
    pub(super) over: i64,
    /// Plates on the left, a bit each: sixteen for every label.
    pub(super) left: u128,
    /// Plates on the right.
    pub(super) right: u128,
}

/// Options in the order of their figures, each pair of figures once.
pub(super) type Set = Vec<Choice>;

impl Choice {
    pub(super) const NOTHING: Self = Self {
        left_less_right: 0,
        over: 0,
        left: 0,
        right: 0,
    };

    /// This choice and that one.
    pub(super) fn with(self, other: Self) -> Self {
        Self {
            left_less_right: self.left_less_right + other.left_less_right,
            over: self.over + other.over,
            left: self.left | other.left,
            right: self.right | other.right,
        }
    }

    fn and_left(self, bit: u128, plate: &Weighed) -> Self {
        Self {
            left_less_right: self.left_less_right + plate.mass.ng(),
            over: self.over + plate.mass.ng() - plate.nominal.ng(),
            left: self.left | bit,
            right: self.right,
        }
    }

    fn and_right(self, bit: u128, plate: &Weighed) -> Self {
        Self {
            left_less_right: self.left_less_right - plate.mass.ng(),
            over: self.over + plate.mass.ng() - plate.nominal.ng(),
            left: self.left,
            right: self.right | bit,
        }
    }
}

/// Sorts and keeps, of options alike in both figures, the first in the order of the plates.
pub(super) fn keep_first(set: &mut Set) {
    set.sort_unstable();
    set.dedup_by_key(|option| (option.left_less_right, option.over));
}

/// All that `count` plates of a label on each side can give.
pub(super) fn of_label(
    problem: &Problem,
    label: usize,
    nominal: Mass,
    count: usize,
) -> Result<Set, Refusal> {
    let plates: Vec<&Weighed> = problem
        .plates
        .iter()
        .filter(|p| p.nominal == nominal)
        .collect();
    if plates.len() < 2 * count {
        let text = format!(
            "needs {} plates of {} for both sides, and {} are there",
            2 * count,
            nominal.exact(MassUnit::Kg),
            plates.len()
        );
        let field = format!("per_side[{label}]");
        return Err(Refusal {
            constraint: Constraint::Inventory,
            field,
            text,
        });
    }
    // Options by how many are on the left and on the right so far.
    let mut cells: Vec<Vec<Set>> = alloc::vec![alloc::vec![Set::new(); count + 1]; count + 1];
    cells[0][0].push(Choice::NOTHING);
    for (at, plate) in plates.into_iter().enumerate() {
        let bit = 1 << (label * Problem::KIND_LIMIT + at);
        for left in (0..=count).rev() {
            for right in (0..=count).rev() {
                let mut more = Set::new();
                if left > 0 {
                    more.extend(
                        cells[left - 1][right]
                            .iter()
                            .map(|o| o.and_left(bit, plate)),
                    );
                }
                if right > 0 {
                    more.extend(
                        cells[left][right - 1]
                            .iter()
                            .map(|o| o.and_right(bit, plate)),
                    );
                }
                let cell = &mut cells[left][right];
                cell.append(&mut more);
                keep_first(cell);
                if cell.len() > SUMS_LIMIT {
                    return Err(too_fine(SUMS_LIMIT));
                }
            }
        }
    }
    Ok(core::mem::take(&mut cells[count][count]))
}
