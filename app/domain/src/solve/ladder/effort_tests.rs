//! How hard the planner looks must not show in what it finds.
use super::{Effort, Found};
use crate::length::Length;
use crate::mass::{Mass, MassUnit};
use crate::solve::ladder::prepare::{Ready, prepare};
use crate::solve::ladder::price::Wide;
use crate::solve::ladder::{Problem, Wish, plan_within};
use crate::solve::{Equipment, PairKind, Refusal};
use alloc::vec::Vec;
use proptest::prelude::*;

/// Gives up the search at once, and cannot afford a fine bound.
const HASTY: Effort = Effort {
    first_bound: 300,
    last_bound: 3_000,
    spots_per_look: 100,
    first_looks: 1,
    looks: usize::MAX,
};
/// Sharpens at every turn.
const FUSSY: Effort = Effort {
    first_looks: 1,
    spots_per_look: 1_000_000,
    ..Effort::MEASURED
};

/// The plan, or that it was given up.
fn narrowed(
    problem: &Problem,
    ready: &Ready<Wide>,
    effort: Effort,
) -> Result<Vec<Vec<usize>>, Option<Refusal>> {
    match super::narrowed(problem, ready, effort, &mut || true).map_err(Some)? {
        Found::Best(stacks) => Ok(stacks),
        Found::Open { .. } => Err(None),
    }
}

/// Plates as weighed, so that sums are many and counts matter.
fn problems() -> impl Strategy<Value = Problem> {
    let plate = (500..25_000_i64, 1..4_u16, 10..40_i64, 2..12_u64);
    let wish = (0..100_i64, 500..9_000_i64, 500..9_000_i64, 0..3_u64);
    let plates = prop::collection::vec(plate, 1..7);
    let rungs = prop::collection::vec(wish, 1..6);
    let flags = (any::<bool>(), any::<bool>(), prop::option::of(100..300_i64));
    (plates, rungs, flags).prop_map(|(plates, rungs, (big_inside, strip_after, sleeve))| {
        let all: i64 = plates.iter().map(|p| 2 * p.0 * i64::from(p.1)).sum();
        let plates = plates.into_iter().map(|(grams, pairs, mm, s)| PairKind {
            mass: Mass::of(MassUnit::Kg, grams),
            pairs,
            thickness: Length::mm(mm),
            diameter: Length::mm(10 * (mm / 10)),
            handling_ns: s * 1_000_000_000,
        });
        let rungs = rungs.into_iter().map(|(percent, below, above, s)| Wish {
            target: Mass::of(MassUnit::Kg, 20_000 + all / 100 * percent),
            below: Mass::of(MassUnit::Kg, below),
            above: Mass::of(MassUnit::Kg, above),
            per_kg_off_ns: s * 1_000_000_000,
            // Two wishes in three do not care.
            least_diameter: Length::mm([0, 0, 20][usize::try_from(percent % 3).expect("small")]),
        });
        Problem {
            equipment: Equipment {
                bar_and_collars: Mass::of(MassUnit::Kg, 20_000),
                sleeve: sleeve.map(Length::mm),
                big_inside,
                plates: plates.collect(),
            },
            on_bar: Vec::new(),
            strip_after,
            rungs: rungs.collect(),
        }
    })
}

proptest! {
    #[test]
    fn hasty_fussy_and_measured_efforts_agree(problem in problems()) {
        let ready = prepare(&problem);
        prop_assume!(ready.is_ok());
        let ready = ready.expect("assumed");
        let measured = narrowed(&problem, &ready, Effort::MEASURED);
        prop_assume!(measured.is_ok());
        prop_assert_eq!(&narrowed(&problem, &ready, HASTY), &measured);
        prop_assert_eq!(&narrowed(&problem, &ready, FUSSY), &measured);
        // Given up too early it is refused, never answered otherwise.
        let given_up = narrowed(&problem, &ready, Effort { looks: 20, ..FUSSY });
        let honest = match &given_up {
            Ok(_) => given_up == measured,
            Err(refusal) => refusal.is_none(),
        };
        prop_assert!(honest, "{:?}", given_up);
    }

    /// Stopped at any time it answers with what can be loaded, and with a bound that holds; or says
    /// that it has nothing.
    #[test]
    fn what_is_broken_off_is_honest(problem in problems(), asks in 0..6_u32) {
        let ready = prepare(&problem);
        prop_assume!(ready.is_ok());
        let whole = plan_within(&problem, &mut || true);
        let mut left = asks;
        let broken = plan_within(&problem, &mut || {
            left = left.saturating_sub(1);
            left > 0
        });
        let (Ok(whole), Ok(broken)) = (whole, broken) else {
            return Ok(());
        };
        prop_assert!(whole.proven);
        prop_assert!(broken.at_least_zs <= whole.plan.cost_zs);
        prop_assert!(whole.plan.cost_zs <= broken.plan.cost_zs);
        prop_assert!(!broken.proven || broken.plan.cost_zs == whole.plan.cost_zs);
        for (step, wish) in broken.plan.rungs.iter().zip(&problem.rungs) {
            prop_assert_eq!(problem.equipment.broken_by(&step.per_side), None);
            prop_assert!(-wish.below <= step.off_target && step.off_target <= wish.above);
        }
    }
}
