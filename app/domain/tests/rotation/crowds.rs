//! Many lifters at one bar, and small problems planned as if they were many.
use crate::{exhaust, random, replay};
use domain::solve::Refusal;
use domain::solve::rotation::{Effort, Plan, Problem, plan, plan_as_a_crowd};

/// Stacks a turn that are told apart: so few that bundles matter.
const BUNDLES: usize = 2;

/// Makes a problem of a seed.
type Make = fn(u64) -> Problem;

fn in_states(problem: &Problem, states: u64) -> Result<Plan, Refusal> {
    let effort = Effort {
        states,
        go_on: &mut || true,
    };
    plan_as_a_crowd(problem, BUNDLES, effort)
}

/// Whether it could be solved.
fn agrees_as_a_crowd(seed: u64, problem: &Problem) -> bool {
    let best = exhaust::best(problem);
    match in_states(problem, u64::MAX) {
        Ok(plan) => {
            replay::check(problem, &plan);
            assert!(plan.proven, "seed {seed} is proven");
            let ends = best.map(|best| best.0);
            assert_eq!(Some(plan.ends_ns), ends, "seed {seed}: {problem:?}");
            if plan.least_handling {
                let handling = best.map(|best| best.1);
                assert_eq!(Some(plan.handling_ns), handling, "seed {seed}: {problem:?}");
            }
            true
        }
        Err(refusal) => {
            assert_eq!(best, None, "seed {seed} was refused: {refusal}");
            false
        }
    }
}

#[test]
fn small_problems_planned_as_a_crowd_equal_exhaustive_search() {
    let kinds: [(u64, Make); 3] = [
        (120, random::small),
        (80, random::under_way),
        (60, random::crowd),
    ];
    for (count, make) in kinds {
        let solved = (0..count).filter(|&seed| agrees_as_a_crowd(seed, &make(seed)));
        let (solved, least) = (solved.count() as u64, count / 2);
        assert!(solved >= least, "only {solved} of {count} could be solved");
    }
}

/// Cut short anywhere, what is told is no more than true.
#[test]
fn a_crowd_cut_short_gets_an_honest_bound() {
    let mut open = 0;
    for seed in 0..40 {
        let problem = random::crowd(seed);
        let Some((ends, _)) = exhaust::best(&problem) else {
            continue;
        };
        for states in [1, 40, 400, 4_000] {
            let cut = in_states(&problem, states).expect("it can be loaded");
            replay::check(&problem, &cut);
            assert!(
                cut.at_least_ns <= ends && ends <= cut.ends_ns,
                "seed {seed}"
            );
            assert!(!cut.proven || cut.ends_ns == ends, "seed {seed}");
            assert_eq!(
                in_states(&problem, states),
                Ok(cut.clone()),
                "the same again"
            );
            open += usize::from(!cut.proven);
        }
    }
    assert!(open > 20, "only {open} were cut short");
}

fn agrees(seed: u64, lifters: usize) {
    let problem = random::many(seed, lifters);
    let effort = Effort {
        states: u64::MAX,
        go_on: &mut || true,
    };
    let Some(best) = exhaust::best(&problem) else {
        return;
    };
    let plan = plan(&problem, effort).expect("it can be loaded");
    replay::check(&problem, &plan);
    assert!(plan.proven, "seed {seed} of {lifters} is proven");
    assert_eq!(
        plan.ends_ns, best.0,
        "seed {seed} of {lifters}: {problem:?}"
    );
}

#[test]
fn five_and_six_lifters_of_two_turns_equal_exhaustive_search() {
    for seed in 0..2 {
        agrees(seed, 5);
    }
    agrees(0, 6);
}

#[test]
fn nine_and_ten_lifters_equal_exhaustive_search() {
    for seed in 0..4 {
        agrees(seed, 9);
        agrees(seed, 10);
    }
}

/// A plan of eight by six is better than first come, first served, within as few states as the
/// kiosk allows.
#[test]
fn a_crowd_gets_a_better_plan_than_by_turns() {
    for seed in 0..2 {
        let problem = random::evening(seed, 8, 6, true);
        let in_states = |states| {
            let effort = Effort {
                states,
                go_on: &mut || true,
            };
            plan(&problem, effort).expect("an evening can be loaded")
        };
        let (first, later) = (in_states(1), in_states(20_000));
        replay::check(&problem, &later);
        assert!(
            later.ends_ns + first.ends_ns / 20 < first.ends_ns,
            "seed {seed}: {} then {}",
            first.ends_ns,
            later.ends_ns
        );
    }
}
