//! How near the plans of busy evenings come to the bounds proven for them: seeded evenings over
//! seven denominations, one line each and a row of figures at the end.
//!
//! `cargo run --release -p domain --example rotation_evenings [COUNT] [LIFTERSxTURNS] [SECONDSs]
//! [any] [from SEED] [quiet]`: 20 evenings of six lifters with six turns (`6x6`), given two seconds of
//! processor time each (`2s`), unless told otherwise; `any` lets plates lie in any order.
use domain::solve::rotation::{Effort, plan};
use std::fs::read_to_string;
use std::time::Duration;

#[allow(dead_code, reason = "shared with the tests, which use all of it")]
#[path = "../tests/rotation/random.rs"]
mod random;

/// What is asked for.
struct Asked {
    count: u64,
    from: u64,
    lifters: usize,
    turns: usize,
    within: f64,
    big_inside: bool,
    quiet: bool,
}

fn asked() -> Result<Asked, String> {
    let mut asked = Asked {
        count: 20,
        from: 0,
        lifters: 6,
        turns: 6,
        within: 2.0,
        big_inside: true,
        quiet: false,
    };
    let mut words = std::env::args().skip(1);
    while let Some(word) = words.next() {
        let unknown = || format!("{word} is not a count, a size like 8x6, a time like 2s, or any");
        if word == "any" {
            asked.big_inside = false;
        } else if word == "quiet" {
            asked.quiet = true;
        } else if word == "from" {
            let seed = words.next().ok_or_else(unknown)?;
            asked.from = seed.parse().map_err(|_| unknown())?;
        } else if let Some(seconds) = word.strip_suffix('s') {
            asked.within = seconds.parse().map_err(|_| unknown())?;
        } else if let Some((lifters, turns)) = word.split_once('x') {
            asked.lifters = lifters.parse().map_err(|_| unknown())?;
            asked.turns = turns.parse().map_err(|_| unknown())?;
        } else {
            asked.count = word.parse().map_err(|_| unknown())?;
        }
    }
    Ok(asked)
}

#[expect(clippy::print_stdout, reason = "a report")]
fn main() -> Result<(), String> {
    let asked = asked()?;
    let (mut gaps, mut taken, mut proven) = (Vec::new(), Vec::new(), 0);
    for seed in asked.from..asked.from + asked.count {
        let problem = random::evening(seed, asked.lifters, asked.turns, asked.big_inside);
        let started = processor_seconds();
        let effort = Effort {
            states: u64::MAX,
            go_on: &mut || processor_seconds() - started < asked.within,
        };
        let plan = plan(&problem, effort).map_err(|refusal| refusal.to_string())?;
        let took = processor_seconds() - started;
        let open = u128::from(plan.ends_ns - plan.at_least_ns);
        let gap = 1_000_000 * open / u128::from(plan.at_least_ns.max(1));
        proven += usize::from(plan.proven);
        if !asked.quiet {
            println!(
                "{seed}: ends {} s, at least {} s, gap {:.2} %, handling {} s, {took:.2} s",
                plan.ends_ns / 1_000_000_000,
                plan.at_least_ns / 1_000_000_000,
                gap as f64 / 1e4,
                plan.handling_ns / 1_000_000_000,
            );
        }
        gaps.push(gap);
        taken.push(Duration::from_secs_f64(took).as_millis());
    }
    gaps.sort_unstable();
    taken.sort_unstable();
    let of = |all: &[u128], hundredths: usize| all[(all.len() - 1) * hundredths / 100];
    println!(
        "{} evenings of {} x {}, {}: {proven} proven; gap median {:.2} %, 90 % within {:.2} %, \
         most {:.2} %; time median {} ms, most {} ms; memory at most {} MB",
        asked.count,
        asked.lifters,
        asked.turns,
        if asked.big_inside {
            "big inside"
        } else {
            "any order"
        },
        of(&gaps, 50) as f64 / 1e4,
        of(&gaps, 90) as f64 / 1e4,
        of(&gaps, 100) as f64 / 1e4,
        of(&taken, 50),
        of(&taken, 100),
        most_memory_mb()
    );
    Ok(())
}

/// Time that this thread had a processor for, so that a busy machine tells the same.
fn processor_seconds() -> f64 {
    let told = read_to_string("/proc/thread-self/schedstat").unwrap_or_default();
    let ns: f64 = told
        .split(' ')
        .next()
        .and_then(|ns| ns.parse().ok())
        .unwrap_or_default();
    ns / 1e9
}

fn most_memory_mb() -> u64 {
    let told = read_to_string("/proc/self/status").unwrap_or_default();
    let line = told.lines().find_map(|line| line.strip_prefix("VmHWM:"));
    let kilobytes = line.and_then(|line| line.trim().split(' ').next()?.parse::<u64>().ok());
    kilobytes.unwrap_or_default() / 1_024
}
