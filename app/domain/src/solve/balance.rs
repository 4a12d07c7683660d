//! The balance planner: plates as weighed, chosen and shared out so that the sides differ least,
//! and then so that the load is nearest to what the labels promise.
//!
//! Refuses: more plates of a kind than [`Problem::KIND_LIMIT`], fewer than the stack needs, and
//! figures so fine and so many that the answer could not be proven (it says what to do).
//!
//! # How it works
//! Plates of one label can only replace each other, so each label gives a set of pairs (left less
//! right, both less what the labels promise). Sets are folded into two, smallest first; the best
//! match between those two is found by walking both in order. All sums are whole nanograms.
//!
//! # Ties
//! Of plans alike in both figures the same one is taken every time; the heavier side, if any, is
//! the left one.
use super::{Constraint, Refusal};
use crate::mass::{Mass, MassUnit};
use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

mod options;
mod pairing;

use options::{Choice, Set};

/// Plates to be shared out.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Problem {
    /// Bar and both collars.
    pub bar: Mass,
    /// Every plate that was weighed.
    pub plates: Vec<Weighed>,
    /// What must be on each side, inside to outside, by label.
    pub per_side: Vec<Mass>,
}

/// One plate as weighed.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Weighed {
    /// The mark that the coach gave it.
    pub mark: String,
    /// What its label says.
    pub nominal: Mass,
    /// What it weighs.
    pub mass: Mass,
}

/// Which plate goes where.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Plan {
    /// Places in [`Problem::plates`], inside to outside.
    pub left: Vec<usize>,
    /// Places in [`Problem::plates`], inside to outside.
    pub right: Vec<usize>,
    /// Bar and all chosen plates.
    pub load: Mass,
    /// The heavier side less the lighter one.
    pub difference: Mass,
}

impl Problem {
    /// The most plates of one label.
    pub const KIND_LIMIT: usize = 16;
    /// The most different labels on a side.
    pub const LABELS_LIMIT: usize = 8;

    fn check(&self) -> Result<(), Refusal> {
        let fine = |mass: Mass| (Mass::ZERO..=Mass::LIMIT).contains(&mass);
        if !fine(self.bar) {
            return Err(refuse(
                Constraint::Range,
                "bar",
                &self.bar,
                "0 to 100000 kg",
            ));
        }
        for (at, plate) in self.plates.iter().enumerate() {
            for (name, mass) in [("nominal", plate.nominal), ("mass", plate.mass)] {
                if !fine(mass) || mass == Mass::ZERO {
                    let field = format!("plates[{at}].{name}");
                    return Err(refuse(
                        Constraint::Range,
                        &field,
                        &mass,
                        "over 0 to 100000 kg",
                    ));
                }
            }
            let alike = |other: &&Weighed| other.nominal == plate.nominal;
            let kind = self.plates.iter().filter(alike).count();
            if kind > Self::KIND_LIMIT {
                let text = format!(
                    "there are {kind} plates of {}, more than the {} that are planned with",
                    plate.nominal.exact(MassUnit::Kg),
                    Self::KIND_LIMIT
                );
                return Err(Refusal {
                    constraint: Constraint::Range,
                    field: "plates".into(),
                    text,
                });
            }
        }
        Ok(())
    }

    /// Labels of a side with how many of each, in the order of the side.
    fn labels(&self) -> Vec<(Mass, usize)> {
        let mut labels: Vec<(Mass, usize)> = Vec::new();
        for nominal in &self.per_side {
            match labels.iter_mut().find(|(label, _)| label == nominal) {
                Some((_, count)) => *count += 1,
                None => labels.push((*nominal, 1)),
            }
        }
        labels
    }
}

/// Shares the plates out.
///
/// # Errors
/// [`Refusal`] when a figure is out of range, when there are too few plates of a label, or when
/// there are too many different sums to prove the best.
pub fn plan(problem: &Problem) -> Result<Plan, Refusal> {
    problem.check()?;
    let labels = problem.labels();
    if labels.len() > Problem::LABELS_LIMIT {
        let text = format!(
            "has {} different labels, more than the {} that are planned with",
            labels.len(),
            Problem::LABELS_LIMIT
        );
        return Err(Refusal {
            constraint: Constraint::Range,
            field: "per_side".into(),
            text,
        });
    }
    let mut sets = Vec::new();
    for (at, (nominal, count)) in labels.iter().enumerate() {
        sets.push(options::of_label(problem, at, *nominal, *count)?);
    }
    let best = pairing::best(sets)?;
    Ok(told(problem, &labels, &best))
}

/// The plan that a choice stands for.
fn told(problem: &Problem, labels: &[(Mass, usize)], best: &Choice) -> Plan {
    let heavier_left = best.left_less_right >= 0;
    let (left, right) = if heavier_left {
        (best.left, best.right)
    } else {
        (best.right, best.left)
    };
    let (left, right) = (side(problem, labels, left), side(problem, labels, right));
    let all = left.iter().chain(&right).map(|at| problem.plates[*at].mass);
    Plan {
        load: problem.bar + all.sum(),
        difference: Mass::from_ng(best.left_less_right.abs()),
        left,
        right,
    }
}

/// The plates of one side in the order of the stack; within a label in the order given.
fn side(problem: &Problem, labels: &[(Mass, usize)], chosen: u128) -> Vec<usize> {
    let mut used = Vec::new();
    for nominal in &problem.per_side {
        let label = labels
            .iter()
            .position(|(mass, _)| mass == nominal)
            .unwrap_or(0);
        let plates = problem
            .plates
            .iter()
            .enumerate()
            .filter(|(_, p)| p.nominal == *nominal);
        let is_chosen = |place: usize| chosen >> (label * Problem::KIND_LIMIT + place) & 1 == 1;
        let next = plates
            .enumerate()
            .find(|(place, (at, _))| is_chosen(*place) && !used.contains(at))
            .map(|(_, (at, _))| at);
        used.extend(next);
    }
    used
}

fn refuse(constraint: Constraint, field: &str, mass: &Mass, range: &str) -> Refusal {
    let text = format!(
        "is {}, out of range; write {range}",
        mass.exact(MassUnit::Kg)
    );
    Refusal {
        constraint,
        field: field.into(),
        text,
    }
}

/// Too many sums to prove anything.
fn too_fine(sums: usize) -> Refusal {
    let text = format!(
        "the plates make over {sums} different sums; weigh them to 5 or 10 g, or give fewer"
    );
    Refusal {
        constraint: Constraint::Range,
        field: "plates".into(),
        text,
    }
}

/// The most sums that are kept for one half.
const SUMS_LIMIT: usize = 3_000_000;

/// How two sets are put together: every sum of one of each.
fn fold(a: &Set, b: &Set) -> Result<Set, Refusal> {
    if a.len().saturating_mul(b.len()) > 4 * SUMS_LIMIT {
        return Err(too_fine(SUMS_LIMIT));
    }
    let mut sums: Set = Vec::with_capacity(a.len() * b.len());
    for x in a {
        sums.extend(b.iter().map(|y| x.with(*y)));
    }
    options::keep_first(&mut sums);
    Ok(sums)
}
