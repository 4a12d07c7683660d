//! Plans in which nobody waits too long, against exhaustive search.
use crate::{exhaust, random, replay};
use domain::solve::rotation::{Effort, Plan, Problem, plan, plan_fairly};

fn fairly(problem: &Problem, at_most: u64, states: u64) -> Option<Plan> {
    let effort = Effort {
        states,
        go_on: &mut || true,
    };
    plan_fairly(problem, at_most, effort).ok()
}

fn freely(problem: &Problem) -> Option<Plan> {
    let effort = Effort {
        states: u64::MAX,
        go_on: &mut || true,
    };
    plan(problem, effort).ok()
}

/// So much less than somebody waits in the plan that minds no waits can often not be kept to.
#[test]
fn what_is_kept_to_is_no_better_than_the_best_that_keeps_to_it() {
    let (mut kept, mut best, mut later, mut impossible) = (0, 0, 0, 0);
    for seed in 0..100 {
        let problem = random::small(seed);
        let Some(free) = freely(&problem) else {
            continue;
        };
        let at_most = free.longest_wait_ns / 20 * (12 + seed % 8);
        let fair = fairly(&problem, at_most, u64::MAX).expect("it can be loaded");
        replay::check(&problem, &fair);
        let least = exhaust::fairest(&problem, at_most).map(|least| least.0);
        let Some(least) = least else {
            assert!(fair.longest_wait_ns > at_most, "seed {seed}: {problem:?}");
            assert!(!fair.proven, "seed {seed} keeps to nothing");
            impossible += 1;
            continue;
        };
        assert!(fair.at_least_ns <= least, "seed {seed}: {problem:?}");
        if fair.longest_wait_ns <= at_most {
            assert!(fair.ends_ns >= least, "seed {seed}: {problem:?}");
            assert!(!fair.proven || fair.ends_ns == least, "seed {seed}");
            best += usize::from(fair.ends_ns == least);
            later += usize::from(least > free.ends_ns);
            kept += 1;
        } else {
            // It can be kept to, but only an order with plates moved for nothing may do so.
            assert!(!fair.proven, "seed {seed}");
        }
    }
    println!("kept {kept}, best {best}, later {later}, impossible {impossible}");
    assert!(kept >= 20 && 10 * best >= 9 * kept, "{best} best of {kept}");
    assert!(later >= 5, "only {later} were later for it");
    assert!(impossible >= 10, "only {impossible} could not be kept to");
}

/// Where nobody has to wait longer anyway, nothing changes.
#[test]
fn a_wait_that_nobody_reaches_changes_nothing() {
    for seed in 0..60 {
        let problem = random::under_way(seed);
        let Some(free) = freely(&problem) else {
            continue;
        };
        let fair = fairly(&problem, free.longest_wait_ns, u64::MAX).expect("it can be loaded");
        replay::check(&problem, &fair);
        assert!(fair.proven, "seed {seed}");
        assert_eq!(fair.ends_ns, free.ends_ns, "seed {seed}");
        assert!(fair.longest_wait_ns <= free.longest_wait_ns, "seed {seed}");
    }
}

/// Six lifters: the longest wait falls to what was asked for, or nearer to it; the same again.
#[test]
fn a_crowd_waits_no_longer_than_asked() {
    for seed in 0..3 {
        let problem = random::evening(seed, 6, 6, seed % 2 == 0);
        let free = fairly(&problem, u64::MAX, 60_000).expect("it can be loaded");
        let at_most = 9 * (free.longest_wait_ns / 10);
        let fair = fairly(&problem, at_most, 60_000).expect("it can be loaded");
        replay::check(&problem, &fair);
        let waits = (fair.longest_wait_ns, at_most, free.longest_wait_ns);
        assert!(waits.0 <= at_most, "seed {seed}: {waits:?}");
        assert!(fair.at_least_ns <= fair.ends_ns, "seed {seed}");
        assert_eq!(fairly(&problem, at_most, 60_000), Some(fair), "seed {seed}");
    }
}
