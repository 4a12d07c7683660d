//! The laws of next time over random seasons of rude lifters, each law written anew from its
//! sentence and held against what the rule gives.
//!
//! `cargo test --release -p domain --test laws -- --ignored` goes through 100,000 seasons.
#[path = "../dice/mod.rs"]
mod dice;
mod judge;
mod season;

use crate::judge::{Broken, Seen};
use crate::season::live;
use std::collections::BTreeMap;

/// Seasons of every run of the tests.
const SAMPLE: u64 = 100;

/// Lives the seasons of these seeds, and tells the first broken law with its seed.
fn all(seeds: std::ops::Range<u64>) -> Seen {
    let mut seen = Seen::default();
    for seed in seeds {
        if let Err(Broken { law, told }) = live(seed, &mut seen) {
            panic!("season {seed}, law {law}: {told}");
        }
    }
    seen
}

#[test]
fn a_sample_of_seasons_keeps_every_law() {
    let seen = all(0..SAMPLE);
    // Each thing that can happen did happen, so that no law holds for want of a case.
    let never: Vec<&str> = judge::CASES
        .into_iter()
        .filter(|case| !seen.0.contains_key(case))
        .collect();
    assert!(never.is_empty(), "never seen: {never:?}");
}

#[test]
#[ignore = "a minute and more; run it in release"]
fn a_hundred_thousand_seasons_keep_every_law() {
    let seen: BTreeMap<_, _> = all(0..100_000).0;
    for (case, times) in seen {
        println!("{times:>10}  {case}");
    }
}
