//! The loads that plates make, against all their sums.
mod dice;

use dice::Dice;
use domain::solve::loads::Loads;
use domain::solve::{Equipment, PairKind};
use domain::{Length, Mass, MassUnit};
use std::collections::BTreeSet;

fn equipment(dice: &mut Dice) -> Equipment {
    let plates = (0..dice.roll(6)).map(|_| PairKind {
        mass: Mass::of(
            dice.pick(&[MassUnit::Kg, MassUnit::Lb]),
            dice.pick(&[25_000, 20_000, 10_000, 10_001, 5_000, 2_500]),
        ),
        pairs: dice.roll(4),
        thickness: Length::mm(dice.pick(&[0, 20, 35, 50])),
        diameter: Length::ZERO,
        handling_ns: 0,
    });
    Equipment {
        plates: plates.collect(),
        bar_and_collars: Mass::of(MassUnit::Kg, 20_000),
        sleeve: dice
            .one_in(2)
            .then(|| Length::mm(dice.pick(&[60, 90, 130]))),
        big_inside: false,
    }
}

/// Every load up to `most`, by trying every number of pairs of every kind.
fn all_loads(equipment: &Equipment, most: Mass) -> BTreeSet<Mass> {
    let mut stacks: Vec<Vec<usize>> = vec![Vec::new()];
    for (kind, plate) in equipment.plates.iter().enumerate() {
        let with = |stack: &Vec<usize>| {
            let pairs = 0..=usize::from(plate.pairs);
            let more = pairs.map(|n| [&stack[..], &vec![kind; n]].concat());
            more.collect::<Vec<_>>()
        };
        stacks = stacks.iter().flat_map(with).collect();
    }
    stacks.retain(|stack| equipment.broken_by(stack).is_none());
    let loads = stacks.iter().map(|stack| equipment.load(stack));
    loads.filter(|load| *load <= most).collect()
}

#[test]
fn neighbours_of_any_load_are_those_of_enumeration() {
    for seed in 0..1_000 {
        let mut dice = Dice::new(seed);
        let equipment = equipment(&mut dice);
        let most = Mass::of(MassUnit::Kg, dice.pick(&[10_000, 20_000, 60_000, 500_000]));
        let loads = Loads::new(&equipment, most).unwrap();
        let all = all_loads(&equipment, most.max(equipment.bar_and_collars));
        for _ in 0..20 {
            let asked = Mass::of(MassUnit::Kg, i64::from(dice.roll(200)) * 1_250);
            let asked = asked - Mass::from_ng(i64::from(dice.roll(3)) - 1);
            let (below, above) = (all.range(..=asked).last(), all.range(asked..).next());
            assert_eq!(
                loads.at_most(asked),
                below.copied(),
                "seed {seed} {asked:?}"
            );
            assert_eq!(
                loads.at_least(asked),
                above.copied(),
                "seed {seed} {asked:?}"
            );
            let near = all.iter().min_by_key(|l| (l.apart(asked), **l));
            assert_eq!(loads.nearest(asked), near.copied(), "seed {seed} {asked:?}");
        }
    }
}
