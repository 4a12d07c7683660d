//! How long an entry waits for the order of turns: plans of seeded evenings given 20 ms by the
//! clock, as the kiosk gives them after a tap, while another thread plans on as it does while people
//! rest.
//!
//! `cargo run --release -p domain --example rotation_taps [COUNT] [LIFTERSxTURNS] [any] [alone]`:
//! 20 evenings of six lifters with six turns (`6x6`), unless told otherwise; `alone` without the
//! other thread.
use domain::solve::rotation::{Effort, plan};
use std::sync::Arc;
use std::sync::atomic::{AtomicBool, Ordering};
use std::time::{Duration, Instant};

#[allow(dead_code, reason = "shared with the tests, which use all of it")]
#[path = "../tests/rotation/random.rs"]
mod random;

/// As in the kiosk's `replan`.
const WITHIN: Duration = Duration::from_millis(20);
const STATES_MAX: u64 = 200_000;
/// As in the kiosk's `ahead`.
const STATES_BESIDE: u64 = 2_000_000;

#[expect(clippy::print_stdout, reason = "a report")]
fn main() -> Result<(), String> {
    let (mut count, mut size, mut big_inside, mut alone) = (20, (6, 6), true, false);
    for word in std::env::args().skip(1) {
        let unknown = |_| format!("{word} is not a count, a size like 8x6, any or alone");
        if word == "any" {
            big_inside = false;
        } else if word == "alone" {
            alone = true;
        } else if let Some((lifters, turns)) = word.split_once('x') {
            size = (
                lifters.parse().map_err(unknown)?,
                turns.parse().map_err(unknown)?,
            );
        } else {
            count = word.parse().map_err(unknown)?;
        }
    }
    let over = Arc::new(AtomicBool::new(false));
    let beside = (!alone).then(|| {
        let over = Arc::clone(&over);
        let problem = random::evening(7_777, size.0, size.1, big_inside);
        std::thread::spawn(move || {
            while !over.load(Ordering::Relaxed) {
                let effort = Effort {
                    states: STATES_BESIDE,
                    go_on: &mut || !over.load(Ordering::Relaxed),
                };
                plan(&problem, effort).map_err(|refusal| refusal.to_string())?;
            }
            Ok::<(), String>(())
        })
    });
    let mut taken = Vec::new();
    for seed in 0..count {
        let problem = random::evening(seed, size.0, size.1, big_inside);
        let started = now();
        let effort = Effort {
            states: STATES_MAX,
            go_on: &mut || started.elapsed() < WITHIN,
        };
        plan(&problem, effort).map_err(|refusal| refusal.to_string())?;
        taken.push(started.elapsed());
    }
    over.store(true, Ordering::Relaxed);
    if let Some(beside) = beside {
        beside.join().map_err(|_| "the other thread fell")??;
    }
    taken.sort_unstable();
    let of = |hundredths: usize| taken[(taken.len() - 1) * hundredths / 100].as_secs_f64() * 1e3;
    println!(
        "{count} entries, {} x {}, {}: median {:.1} ms, 90 % within {:.1} ms, most {:.1} ms",
        size.0,
        size.1,
        if alone { "alone" } else { "planning on beside" },
        of(50),
        of(90),
        of(100)
    );
    Ok(())
}

#[expect(clippy::disallowed_methods, reason = "a stopwatch, not the planner")]
fn now() -> Instant {
    Instant::now()
}
