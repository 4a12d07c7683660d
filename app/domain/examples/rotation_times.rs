//! How long rotations take to plan: random evenings of lifters with six turns each over seven
//! denominations.
//!
//! `cargo run --release -p domain --example rotation_times [COUNT] [LIFTERSx6] [SECONDSs] [any]`:
//! 50 evenings of four lifters (`4x6`), given ten seconds each (`10s`), unless told otherwise;
//! `any` lets plates lie in any order. Refuses: words that it does not know.
use domain::solve::rotation::{Effort, plan};
use std::time::{Duration, Instant};

#[allow(dead_code, reason = "shared with the tests, which use all of it")]
#[path = "../tests/rotation/random.rs"]
mod random;

/// What is asked for.
struct Asked {
    count: u64,
    lifters: usize,
    within: Duration,
    big_inside: bool,
}

fn asked() -> Result<Asked, String> {
    let mut asked = Asked {
        count: 50,
        lifters: 4,
        within: Duration::from_secs(10),
        big_inside: true,
    };
    for word in std::env::args().skip(1) {
        let unknown = |_| format!("{word} is not a count, a size like 5x6, a time like 2s, or any");
        if word == "any" {
            asked.big_inside = false;
        } else if let Some(seconds) = word.strip_suffix('s') {
            asked.within = Duration::from_secs(seconds.parse().map_err(unknown)?);
        } else if let Some(lifters) = word.strip_suffix("x6") {
            asked.lifters = lifters.parse().map_err(unknown)?;
        } else {
            asked.count = word.parse().map_err(unknown)?;
        }
    }
    Ok(asked)
}

#[expect(clippy::print_stdout, reason = "a report")]
fn main() -> Result<(), String> {
    let asked = asked()?;
    let mut taken = Vec::new();
    let (mut proven, mut least_handling, mut open) = (0, 0, Vec::new());
    for seed in 0..asked.count {
        let problem = random::evening(seed, asked.lifters, 6, asked.big_inside);
        let started = now();
        let effort = Effort {
            states: u64::MAX,
            go_on: &mut || started.elapsed() < asked.within,
        };
        let plan = plan(&problem, effort).map_err(|refusal| refusal.to_string())?;
        taken.push(started.elapsed());
        proven += usize::from(plan.proven);
        least_handling += usize::from(plan.least_handling);
        if !plan.proven {
            open.push(1_000 * (plan.ends_ns - plan.at_least_ns) / plan.ends_ns);
        }
    }
    taken.sort_unstable();
    let share = |hundredths: usize| taken[(taken.len() - 1) * hundredths / 100].as_millis();
    println!(
        "{} evenings: {proven} proven, {least_handling} with the least handling proven",
        asked.count
    );
    println!(
        "least {} ms, median {} ms, 90 % within {} ms, most {} ms",
        share(0),
        share(50),
        share(90),
        share(100)
    );
    open.sort_unstable();
    if let Some(median) = open.get(open.len() / 2) {
        println!("not proven: the bound lies {median} thousandths below the end at the median");
    }
    Ok(())
}

#[expect(clippy::disallowed_methods, reason = "a stopwatch, not the planner")]
fn now() -> Instant {
    Instant::now()
}
