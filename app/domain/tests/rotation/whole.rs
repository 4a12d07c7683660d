//! Whole evenings: lifters of six turns over seven denominations, too many to try out.
use crate::small::solved;
use crate::{random, replay};
use domain::solve::rotation::{Effort, Problem, plan};

#[test]
fn evenings_of_four_are_proven() {
    for seed in 0..3 {
        let problem = random::evening(seed, 4, 6, true);
        let plan = solved(&problem).expect("an evening can be loaded");
        replay::check(&problem, &plan);
        assert!(plan.proven && plan.least_handling, "seed {seed}");
    }
}

/// The example `rotation_times` tells how long each takes.
#[test]
#[ignore = "takes minutes without optimisation: cargo test --release -- --ignored"]
fn fifty_evenings_of_four() {
    for seed in 0..50 {
        let problem = random::evening(seed, 4, 6, true);
        let plan = solved(&problem).expect("an evening can be loaded");
        replay::check(&problem, &plan);
        assert!(plan.proven && plan.least_handling, "seed {seed}");
    }
}

#[test]
fn what_is_cut_short_is_still_a_plan_with_an_honest_bound() {
    let problem = random::evening(1, 4, 6, true);
    cut_short(&problem, &[1, 100, 3_000, 30_000, 300_000]);
}

/// In any order the bounds look one step ahead, and plates may stay under others.
#[test]
fn so_it_is_in_any_order() {
    for seed in 0..3 {
        let problem = random::evening(seed, 3, 3, false);
        cut_short(&problem, &[1, 300, 3_000, 10_000]);
    }
}

/// Plans with so many states, against the plan with as many as it takes.
fn cut_short(problem: &Problem, counts: &[u64]) {
    let best = solved(problem).expect("an evening can be loaded");
    assert!(best.proven);
    let mut open = false;
    for &states in counts {
        let cut = || {
            let effort = Effort {
                states,
                go_on: &mut || true,
            };
            plan(problem, effort).expect("an evening can be loaded")
        };
        let first = cut();
        replay::check(problem, &first);
        assert_eq!(cut(), first, "the same again");
        assert!(first.at_least_ns <= best.ends_ns && best.ends_ns <= first.ends_ns);
        assert!(!first.proven || first.ends_ns == best.ends_ns);
        open |= !first.proven;
    }
    assert!(open, "some of these were too short to prove anything");
}

#[test]
fn stops_when_told_to() {
    let problem = random::evening(1, 4, 6, true);
    let effort = Effort {
        states: u64::MAX,
        go_on: &mut || false,
    };
    let cut = plan(&problem, effort).expect("an evening can be loaded");
    replay::check(&problem, &cut);
    assert!(!cut.proven && cut.states < 100_000);
}

#[test]
fn evenings_of_eight_get_a_plan() {
    // Too large for all bounds: lifters are kept abreast, and nothing is said to be proven.
    for big_inside in [true, false] {
        let problem = random::evening(4, 8, 4, big_inside);
        let effort = Effort {
            states: 3_000,
            go_on: &mut || true,
        };
        let cut = plan(&problem, effort).expect("an evening can be loaded");
        replay::check(&problem, &cut);
        assert!(!cut.proven);
    }
}
