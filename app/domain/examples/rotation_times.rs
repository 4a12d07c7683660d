//! How long rotations take to plan: 50 random evenings of four lifters with six turns each over
//! seven denominations.
//!
//! `cargo run --release -p domain --example rotation_times [COUNT] [any]`, where `any` lets plates
//! lie in any order. Refuses: more than ten seconds for one evening.
use domain::solve::rotation::{Effort, plan};
use std::time::{Duration, Instant};

#[allow(dead_code, reason = "shared with the tests, which use all of it")]
#[path = "../tests/rotation/random.rs"]
mod random;

const WITHIN: Duration = Duration::from_secs(10);

#[expect(clippy::print_stdout, reason = "a report")]
fn main() {
    let words: Vec<String> = std::env::args().skip(1).collect();
    let count = words
        .iter()
        .find_map(|word| word.parse().ok())
        .unwrap_or(50);
    let big_inside = !words.iter().any(|word| word == "any");
    let mut taken = Vec::new();
    let (mut proven, mut least_handling) = (0, 0);
    for seed in 0..count {
        let problem = random::evening(seed, 4, 6, big_inside);
        let started = now();
        let effort = Effort {
            states: u64::MAX,
            go_on: &mut || started.elapsed() < WITHIN,
        };
        let plan = plan(&problem, effort).expect("an evening can be loaded");
        taken.push(started.elapsed());
        proven += usize::from(plan.proven);
        least_handling += usize::from(plan.least_handling);
    }
    taken.sort_unstable();
    let share = |hundredths: usize| taken[(taken.len() - 1) * hundredths / 100].as_millis();
    println!("{count} evenings: {proven} proven, {least_handling} with the least handling proven");
    println!(
        "least {} ms, median {} ms, 90 % within {} ms, most {} ms",
        share(0),
        share(50),
        share(90),
        share(100)
    );
}

#[expect(clippy::disallowed_methods, reason = "a stopwatch, not the planner")]
fn now() -> Instant {
    Instant::now()
}
