//! Seeded random problems. Refuses: nothing; some cannot be loaded, on purpose.
use crate::dice::Dice;
use domain::solve::ladder::{Problem, Wish};
use domain::solve::{Equipment, PairKind};
use domain::{Length, Mass, MassUnit};

/// How large a random problem may be.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Shape {
    kinds: u16,
    pairs: u16,
    rungs: u16,
}

impl Shape {
    /// Small enough to try every order of plates.
    pub(crate) const SMALL: Self = Self {
        kinds: 5,
        pairs: 8,
        rungs: 6,
    };
    /// Small enough to list every best plan.
    pub(crate) const TINY: Self = Self {
        kinds: 3,
        pairs: 4,
        rungs: 4,
    };
}

pub(crate) fn random(seed: u64, shape: Shape) -> Problem {
    let mut dice = Dice::new(seed);
    let equipment = equipment(&mut dice, shape);
    let on_bar = if dice.one_in(2) {
        on_bar(&mut dice, &equipment)
    } else {
        Vec::new()
    };
    let wide = dice.one_in(2);
    let rungs = (0..1 + dice.roll(shape.rungs)).map(|_| wish(&mut dice, &equipment, wide));
    let mut rungs: Vec<Wish> = rungs.collect();
    if !dice.one_in(4) {
        rungs.sort_by_key(|wish| wish.target);
    }
    Problem {
        on_bar,
        strip_after: dice.one_in(2),
        rungs,
        equipment,
    }
}

/// The same with plates of three sizes, of which half of the rungs ask for one.
pub(crate) fn sized(seed: u64, shape: Shape) -> Problem {
    let mut problem = random(seed, shape);
    give_sizes(&mut problem, seed);
    problem
}

/// [`gym`] with sizes.
pub(crate) fn sized_gym(seed: u64) -> Problem {
    let mut problem = gym(seed);
    give_sizes(&mut problem, seed);
    problem
}

fn give_sizes(problem: &mut Problem, seed: u64) {
    let mut dice = Dice::new(seed ^ 0x517E);
    for plate in &mut problem.equipment.plates {
        plate.diameter = Length::mm(dice.pick(&[230, 325, 450]));
    }
    for wish in &mut problem.rungs {
        wish.least_diameter = Length::mm(dice.pick(&[0, 0, 200, 325, 400, 450]));
    }
}

fn equipment(dice: &mut Dice, shape: Shape) -> Equipment {
    let unit = dice.pick(&[MassUnit::Kg, MassUnit::Lb]);
    let mixed = dice.one_in(4);
    let mut left = shape.pairs;
    let mut plates = Vec::new();
    for _ in 0..1 + dice.roll(shape.kinds).max(dice.roll(shape.kinds)) {
        let other = if mixed {
            dice.pick(&[MassUnit::Kg, MassUnit::Lb])
        } else {
            unit
        };
        let pairs = (1 + dice.roll(3)).min(left);
        left -= pairs;
        plates.push(PairKind {
            mass: Mass::of(other, dice.pick(&[25, 20, 15, 10, 10, 5, 5, 2]) * 1_000),
            pairs,
            thickness: Length::mm(dice.pick(&[0, 20, 27, 35, 50])),
            diameter: Length::ZERO,
            handling_ns: dice.pick(&[0, 1, 2, 3, 8, 9]) * 500_000_000 + u64::from(dice.roll(2)),
        });
    }
    Equipment {
        bar_and_collars: Mass::of(unit, 20_000),
        sleeve: dice
            .one_in(2)
            .then(|| Length::mm(dice.pick(&[90, 130, 170]))),
        big_inside: dice.one_in(2),
        plates,
    }
}

/// Any stack that is allowed.
fn on_bar(dice: &mut Dice, equipment: &Equipment) -> Vec<usize> {
    let kinds: Vec<usize> = (0..equipment.plates.len()).collect();
    let mut stack = Vec::new();
    for _ in 0..dice.roll(8) {
        let kind = dice.pick(&kinds);
        stack.push(kind);
        if equipment.broken_by(&stack).is_some() {
            stack.pop();
        }
    }
    stack
}

/// Mostly near a load that can be made.
fn wish(dice: &mut Dice, equipment: &Equipment, wide: bool) -> Wish {
    let near = equipment.load(&on_bar(dice, equipment));
    let off = |dice: &mut Dice| Mass::of(MassUnit::Kg, i64::from(dice.roll(9)) * 500);
    let (below, above) = match dice.roll(if wide { 2 } else { 5 }) {
        0 => (
            Mass::of(MassUnit::Kg, 12_000),
            Mass::of(MassUnit::Kg, 15_000),
        ),
        1 => (Mass::of(MassUnit::Kg, 40_000), Mass::ZERO),
        2 => (Mass::ZERO, Mass::ZERO),
        _ => (off(dice), off(dice)),
    };
    let target = match dice.roll(4) {
        0 => near + off(dice),
        1 => near + Mass::from_ng(1),
        _ => near,
    };
    Wish {
        target,
        below,
        above,
        per_kg_off_ns: dice.pick(&[0, 1, 100_000_000, 1_000_000_000, 2_500_000_000]),
        least_diameter: Length::ZERO,
    }
}

/// Six rising rungs over seven kinds of pound plates, of which few are there.
pub(crate) fn gym(seed: u64) -> Problem {
    let mut dice = Dice::new(seed);
    let plates = [45_000, 35_000, 25_000, 10_000, 5_000, 2_500, 1_250].map(|mass| PairKind {
        mass: Mass::of(MassUnit::Lb, mass),
        pairs: dice.pick(&[1, 1, 2, 3]),
        thickness: Length::mm(10 + mass / 1_000),
        diameter: Length::ZERO,
        handling_ns: 4_000_000_000 + u64::from(dice.roll(17)) * 500_000_000,
    });
    let mut equipment = Equipment {
        bar_and_collars: Mass::of(MassUnit::Lb, 45_000),
        sleeve: dice.one_in(3).then(|| Length::mm(250)),
        big_inside: true,
        plates: plates.to_vec(),
    };
    let mut rungs: Vec<Wish> = (0..6)
        .map(|_| Wish {
            target: equipment.load(&on_bar(&mut dice, &equipment)),
            below: Mass::of(MassUnit::Lb, dice.pick(&[0, 5_000, 10_000])),
            above: Mass::of(MassUnit::Lb, dice.pick(&[0, 5_000, 10_000])),
            per_kg_off_ns: dice.pick(&[0, 100_000_000, 1_000_000_000]),
            least_diameter: Length::ZERO,
        })
        .collect();
    rungs.sort_by_key(|wish| wish.target);
    equipment.plates.rotate_left(3);
    Problem {
        on_bar: Vec::new(),
        strip_after: dice.one_in(2),
        rungs,
        equipment,
    }
}
