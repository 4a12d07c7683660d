//! Many evenings of people as they are: `evenings COUNT [FIRST]`. Prints the first fault of each
//! seed that has one, and what was done in all.
#[path = "../rude/mod.rs"]
mod rude;

use std::collections::BTreeMap;

fn main() {
    let mut numbers = std::env::args()
        .skip(1)
        .filter_map(|word| word.parse::<u64>().ok());
    let (count, first) = (numbers.next().unwrap_or(100), numbers.next().unwrap_or(0));
    let (mut sets, mut restarts, mut in_doubt, mut bad) = (0, 0, 0, 0);
    let mut deeds: BTreeMap<&'static str, usize> = BTreeMap::new();
    for seed in first..first + count {
        let folder = tempfile::tempdir().expect("a folder");
        let out = rude::evening(seed, folder.path());
        if let Some(fault) = out.faults.first() {
            bad += 1;
            println!("seed {seed}: {fault}");
            if bad <= 2 {
                for line in &out.log {
                    println!("    {line}");
                }
            }
        }
        sets += out.sets;
        restarts += out.restarts;
        in_doubt += out.in_doubt;
        for (kind, often) in out.deeds {
            *deeds.entry(kind).or_default() += often;
        }
    }
    println!(
        "{count} evenings from seed {first}: {bad} with a fault; {sets} sets, {in_doubt} of them \
         in doubt, {restarts} restarts; {deeds:?}"
    );
}
