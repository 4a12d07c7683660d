//! Many evenings of people as they are: `evenings COUNT [FIRST]`. Prints the first faults of each
//! seed that has one, every hundred evenings what was done so far, and what was done in all.
//! `evenings --length COUNT [FIRST]` tells how long evenings take with the ways to put a turn off,
//! to leave, to need longer and to be passed over, and without.
#![allow(clippy::print_stdout, reason = "it is there to tell what it found")]

#[path = "../rude/mod.rs"]
mod rude;

use std::collections::BTreeMap;

/// Evenings between two lines of what was done so far.
const TELLS_EVERY: u64 = 100;
/// Seeds whose whole evening is told.
const TOLD_MAX: usize = 3;

/// What was done so far.
#[derive(Debug, Default)]
struct Sum {
    evenings: u64,
    bad: usize,
    sets: usize,
    restarts: usize,
    cuts: usize,
    in_doubt: usize,
    floors: usize,
    deeds: BTreeMap<&'static str, usize>,
}

impl Sum {
    fn add(&mut self, out: rude::Outcome) {
        self.evenings += 1;
        self.bad += usize::from(!out.faults.is_empty());
        self.sets += out.sets;
        self.restarts += out.restarts;
        self.cuts += out.cuts;
        self.in_doubt += out.in_doubt;
        self.floors += out.floors;
        for (kind, often) in out.deeds {
            *self.deeds.entry(kind).or_default() += often;
        }
    }

    fn tell(&self, first: u64) {
        let Self {
            evenings,
            bad,
            sets,
            restarts,
            cuts,
            in_doubt,
            floors,
            deeds,
        } = self;
        println!(
            "{evenings} evenings from seed {first}: {bad} with a fault; {sets} sets, {in_doubt} of \
             them in doubt, {restarts} restarts, {cuts} cuts within a tap, {floors} looks at the \
             floor; {deeds:?}"
        );
    }
}

/// Seconds at a share of a sorted list, in hundredths.
fn at_share(sorted: &[i64], hundredths: usize) -> i64 {
    let at = (sorted.len().saturating_sub(1) * hundredths).div_ceil(100);
    sorted.get(at).copied().unwrap_or(0)
}

fn tell_lengths(count: u64, first: u64) {
    let length = |seed, new_ways| {
        let folder = tempfile::tempdir().expect("a folder");
        rude::length_s(seed, folder.path(), new_ways)
    };
    let (mut without, mut with) = (Vec::new(), Vec::new());
    let (mut gains, mut open) = (Vec::new(), 0);
    for seed in first..first + count {
        let (Some(old), Some(new)) = (length(seed, false), length(seed, true)) else {
            println!("seed {seed}: did not end");
            open += 1;
            continue;
        };
        without.push(old);
        with.push(new);
        gains.push(old - new);
    }
    for (what, all) in [
        ("without", &mut without),
        ("with", &mut with),
        ("shorter by", &mut gains),
    ] {
        all.sort_unstable();
        let (median, most) = (at_share(all, 50), at_share(all, 90));
        println!("{what}: median {median} s, 90th percentile {most} s");
    }
    println!(
        "{} evenings from seed {first}, {open} did not end",
        with.len()
    );
}

fn main() {
    let mut numbers = std::env::args()
        .skip(1)
        .filter_map(|word| word.parse::<u64>().ok());
    let (count, first) = (numbers.next().unwrap_or(100), numbers.next().unwrap_or(0));
    if std::env::args().any(|word| word == "--length") {
        return tell_lengths(count, first);
    }
    let mut sum = Sum::default();
    for seed in first..first + count {
        let folder = tempfile::tempdir().expect("a folder");
        let out = rude::evening(seed, folder.path());
        for fault in &out.faults {
            println!("seed {seed}: {fault}");
        }
        if !out.faults.is_empty() && sum.bad < TOLD_MAX {
            for line in &out.log {
                println!("    {line}");
            }
        }
        sum.add(out);
        if sum.evenings % TELLS_EVERY == 0 {
            sum.tell(first);
        }
    }
    sum.tell(first);
}
