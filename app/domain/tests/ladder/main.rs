//! The ladder planner against searches that know nothing of how it works.
mod checker;
#[path = "../dice/mod.rs"]
mod dice;
mod exhaustive;
mod problems;
mod refusals;
mod ties;

use domain::solve::ladder;
use problems::Shape;

/// Least cost and fewest moves of 1,000 problems, by Dijkstra over every single move of a pair.
#[test]
fn a_thousand_ladders_cost_what_exhaustive_search_says() {
    let mut planned = 0;
    for seed in 0..1_000 {
        let problem = problems::random(seed, Shape::SMALL);
        let found = ladder::plan(&problem).ok();
        let best = exhaustive::least(&problem);
        let cost = found.as_ref().map(|p| (p.cost_zs, p.pair_moves));
        assert_eq!(cost, best, "seed {seed}: {problem:#?}");
        if let Some(plan) = &found {
            checker::check(&problem, plan);
            planned += 1;
        }
    }
    assert!(planned > 700, "only {planned} problems could be planned");
}

/// Where rungs ask for a plate of some size, as from the floor.
#[test]
fn ladders_with_sizes_cost_what_exhaustive_search_says() {
    let (mut planned, mut dearer) = (0, 0);
    for seed in 0..1_000 {
        let problem = problems::sized(seed, Shape::SMALL);
        let found = ladder::plan(&problem).ok();
        let best = exhaustive::least(&problem);
        let cost = found.as_ref().map(|p| (p.cost_zs, p.pair_moves));
        assert_eq!(cost, best, "seed {seed}: {problem:#?}");
        if let Some(plan) = &found {
            checker::check(&problem, plan);
            planned += 1;
            let of_any_size = ladder::plan(&problems::random(seed, Shape::SMALL));
            dearer += usize::from(of_any_size.is_ok_and(|any| any.cost_zs < plan.cost_zs));
        }
    }
    assert!(planned > 400, "only {planned} problems could be planned");
    assert!(dearer > 100, "only {dearer} cost more for the size");
}

#[test]
fn whole_gyms_with_sizes_cost_what_exhaustive_search_says() {
    for seed in 0..25 {
        let problem = problems::sized_gym(seed);
        let found = ladder::plan(&problem).ok();
        if let Some(plan) = &found {
            checker::check(&problem, plan);
        }
        let cost = found.map(|p| (p.cost_zs, p.pair_moves));
        assert_eq!(cost, exhaustive::least(&problem), "seed {seed}");
    }
}

/// At full size, where big inside keeps the stacks few enough to search them all.
#[test]
fn whole_gyms_with_big_inside_cost_what_exhaustive_search_says() {
    for seed in 0..25 {
        let problem = problems::gym(seed);
        let plan = ladder::plan(&problem).unwrap();
        checker::check(&problem, &plan);
        let cost = (plan.cost_zs, plan.pair_moves);
        assert_eq!(Some(cost), exhaustive::least(&problem), "seed {seed}");
    }
}
