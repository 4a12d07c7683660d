//! The ladder planner: which plates lie on the bar on every rung, at the least cost.
//!
//! Refuses: a rung that no plates make (saying what bites), plates on the bar that are not in
//! the gym, figures out of range, and problems that would take minutes: a dozen and more kinds of
//! plates as weighed, most of them scarce. Never returns a plan that some other plan beats.
//!
//! # How it works
//! Plates move at the outer end only, so the stays of two pairs on the bar are either apart or
//! one lies within the other. Hence the least cost of rungs `i..=j` over a given set of pairs
//! beneath, `f(i, j, beneath)`, is the least of: a further pair that stays for all of `i..=j`,
//! plus `f(i, j, beneath + pair)`; or a cut after some rung `k`, `f(i, k, beneath) +
//! f(k + 1, j, beneath)`; or, for a single rung, what its load costs. Order beneath does not
//! matter, but what is left in the store, the sleeve and (with big inside) the outermost plate do.
//! A bound solves the same recursion with the set beneath replaced by its mass (with big inside,
//! also by the outermost kind and how many there are of it), which never costs more. If the plan
//! that the bound itself comes to can be carried out, it is the plan; mostly it can. Else the
//! search solves the recursion in full, visiting only what the bound cannot rule out. Costs are
//! whole numbers throughout.
//!
//! # Ties
//! Of several plans of least cost: the fewest pair moves. Of those, read from the first rung
//! and from the inside: the heaviest plate first (of equal masses the quicker to handle, then
//! the thinner); a plate before none; and a plate's longest stay first. That leaves one plan,
//! whatever the order of [`Equipment::plates`](crate::solve::Equipment::plates).
use self::effort::Effort;
use super::equipment::refusal;
use super::{Change, Constraint, Refusal, change};
use crate::mass::Mass;
use alloc::string::String;
use alloc::vec::Vec;

mod bound;
mod check;
mod effort;
mod grid;
mod layers;
mod prepare;
mod price;
mod prices;
mod problem;
pub(super) mod refuse;
mod relaxed;
mod search;
mod table;
mod trace;
mod window;

pub use problem::{Problem, Wish};

/// A ladder with its plates.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Plan {
    /// Handling and penalties, in units of 10^-21 s: exact.
    pub cost_zs: i128,
    /// Handling alone, nanoseconds.
    pub handling_ns: u64,
    /// How many times a pair is put on or taken off; clearing the sleeve at the end counts if
    /// it was asked for.
    pub pair_moves: u32,
    /// The rungs in order.
    pub rungs: Vec<Step>,
}

/// One rung of a plan.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Step {
    /// Bar, collars and plates.
    pub load: Mass,
    /// Load less target.
    pub off_target: Mass,
    /// One side, inside to outside.
    pub per_side: Vec<usize>,
    /// What to do at each sleeve to get here.
    pub change: Change<usize>,
}

/// What was found in the time that there was.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Found {
    /// The plan.
    pub plan: Plan,
    /// Whether no other plan costs less.
    pub proven: bool,
    /// No plan costs less than this, in units of 10^-21 s.
    pub at_least_zs: i128,
}

/// Plans the ladder.
///
/// # Errors
/// [`Refusal`] when a figure is out of range, when `on_bar` cannot be, when a rung cannot be
/// loaded, or when the problem is too hard.
pub fn plan(problem: &Problem) -> Result<Plan, Refusal> {
    let ready = prepare::prepare(problem)?;
    match effort::narrowed(problem, &ready, Effort::MEASURED, &mut || true)? {
        effort::Found::Best(stacks) => Ok(spell_out(problem, stacks)),
        effort::Found::Open { .. } => Err(too_hard(
            "are too hard to plan exactly: leave out kinds of plates or rungs",
        )),
    }
}

/// Plans the ladder for as long as `go_on` says so; what is not proven by then is the best that was
/// found. The memory stays under 256 MB.
///
/// # Errors
/// As [`plan`]; too hard is what has no plan at all by then.
pub fn plan_within(problem: &Problem, go_on: &mut dyn FnMut() -> bool) -> Result<Found, Refusal> {
    let ready = prepare::prepare(problem)?;
    let (some, least) = match effort::narrowed(problem, &ready, Effort::MEASURED, go_on)? {
        effort::Found::Best(stacks) => {
            let plan = spell_out(problem, stacks);
            return Ok(Found {
                at_least_zs: plan.cost_zs,
                plan,
                proven: true,
            });
        }
        effort::Found::Open { some, least } => (some, least),
    };
    let some = some.ok_or_else(|| {
        too_hard(
            "are too hard to plan in that time: leave out kinds of plates or rungs, or give it longer",
        )
    })?;
    let plan = spell_out(problem, some);
    let least = least.map_or(0, |stacks| spell_out(problem, stacks).cost_zs);
    Ok(Found {
        at_least_zs: least.min(plan.cost_zs),
        proven: least >= plan.cost_zs,
        plan,
    })
}

fn too_hard(text: &str) -> Refusal {
    refusal(Constraint::Range, "rungs", String::from(text))
}

/// Counts a plan afresh from its stacks.
fn spell_out(problem: &Problem, stacks: Vec<Vec<usize>>) -> Plan {
    let plates = &problem.equipment.plates;
    let handling = |moved: &[usize]| moved.iter().map(|&k| plates[k].handling_ns).sum::<u64>();
    let mut plan = Plan {
        cost_zs: 0,
        handling_ns: 0,
        pair_moves: 0,
        rungs: Vec::with_capacity(stacks.len()),
    };
    let mut before = problem.on_bar.clone();
    for (wish, per_side) in problem.rungs.iter().zip(stacks) {
        let change = change(&before, &per_side);
        plan.handling_ns += handling(&change.take_off) + handling(&change.put_on);
        plan.pair_moves += count(&change.take_off) + count(&change.put_on);
        let load = problem.equipment.load(&per_side);
        let off_target = load - wish.target;
        plan.cost_zs += i128::from(off_target.ng().unsigned_abs()) * i128::from(wish.per_kg_off_ns);
        before.clone_from(&per_side);
        plan.rungs.push(Step {
            load,
            off_target,
            per_side,
            change,
        });
    }
    if problem.strip_after {
        plan.handling_ns += handling(&before);
        plan.pair_moves += count(&before);
    }
    plan.cost_zs += i128::from(plan.handling_ns) * prepare::ZS_PER_NS;
    plan
}

fn count(moved: &[usize]) -> u32 {
    u32::try_from(moved.len()).expect("a sleeve holds few plates")
}
