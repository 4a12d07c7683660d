//! Seeded random rotations: the same on every machine.
use domain::solve::rotation::{Lifter, Loaders, Problem, Standing, Turn};
use domain::solve::{Equipment, PairKind};
use domain::{Length, Mass, MassUnit};

/// SplitMix64 (Steele, Lea and Flood 2014), by its published constants.
pub(crate) struct Dice(u64);

impl Dice {
    pub(crate) fn new(seed: u64) -> Self {
        Self(seed)
    }

    fn next(&mut self) -> u64 {
        self.0 = self.0.wrapping_add(0x9E37_79B9_7F4A_7C15);
        let mut z = self.0;
        z = (z ^ (z >> 30)).wrapping_mul(0xBF58_476D_1CE4_E5B9);
        z = (z ^ (z >> 27)).wrapping_mul(0x94D0_49BB_1331_11EB);
        z ^ (z >> 31)
    }

    pub(crate) fn between(&mut self, from: i64, to: i64) -> i64 {
        let span = (to - from + 1).unsigned_abs();
        from + i64::try_from(self.next() % span).expect("a small span")
    }

    pub(crate) fn one_in(&mut self, n: i64) -> bool {
        self.between(1, n) == 1
    }

    pub(crate) fn pick<T: Copy>(&mut self, from: &[T]) -> T {
        let last = i64::try_from(from.len()).expect("a short list") - 1;
        from[usize::try_from(self.between(0, last)).expect("a place")]
    }
}

pub(crate) fn grams(grams: i64) -> Mass {
    Mass::of(MassUnit::Kg, grams)
}

pub(crate) fn ms(ms: i64) -> u64 {
    ms.unsigned_abs() * 1_000_000
}

/// Two or three lifters of two or three turns with few plates: small enough to try everything.
/// About one in eight cannot be loaded.
pub(crate) fn small(seed: u64) -> Problem {
    let dice = &mut Dice::new(seed);
    let pounds = dice.one_in(4);
    let unit = if pounds { MassUnit::Lb } else { MassUnit::Kg };
    let masses: &[i64] = if pounds {
        &[45_000, 25_000, 10_000, 5_000, 2_500]
    } else {
        &[20_000, 10_000, 10_000, 5_000, 2_500]
    };
    let (kinds, big_inside) = (dice.between(2, 4), dice.one_in(2));
    // In any order four plates of a side lie in 24 ways already.
    let twice_in = if big_inside || kinds == 2 {
        2
    } else {
        2 * kinds
    };
    let from = dice.between(0, 5 - kinds);
    let plates = (from..from + kinds).map(|at| PairKind {
        mass: Mass::of(unit, masses[usize::try_from(at).expect("a place")]),
        pairs: if dice.one_in(twice_in) { 2 } else { 1 },
        thickness: Length::mm(dice.between(10, 40)),
        diameter: Length::ZERO,
        handling_ns: ms(dice.pick(&[0, 1_000, 1_500, 2_000, 4_000, 7_250])),
    });
    let plates: Vec<PairKind> = plates.collect();
    let equipment = Equipment {
        bar_and_collars: Mass::of(unit, if pounds { 45_000 } else { 20_000 }),
        sleeve: dice.one_in(2).then(|| Length::mm(dice.between(60, 160))),
        big_inside,
        plates,
    };
    // Three lifters with four kinds in any order can take seconds to try out.
    let most_lifters = if equipment.big_inside || kinds < 4 {
        3
    } else {
        2
    };
    let lifters = dice.between(2, most_lifters);
    let mut problem = Problem {
        loaders: dice.pick(&[Loaders::One, Loaders::Two]),
        hole_change_ns: ms(dice.between(0, 30) * 1_000),
        hole_change_at_most: equipment.bar_and_collars
            + Mass::of(unit, dice.between(0, 6) * 10_000),
        lifters: Vec::new(),
        standing: Standing::default(),
        equipment,
    };
    let pins = dice.pick(&[0, 2, 4]);
    let odd = dice.one_in(8);
    for _ in 0..lifters {
        let turns = dice.between(2, 3);
        let turns = (0..turns)
            .map(|_| small_turn(dice, &problem.equipment, unit, (pins, odd)))
            .collect();
        problem.lifters.push(Lifter {
            turns,
            ended_ns: None,
        });
    }
    problem
}

fn small_turn(
    dice: &mut Dice,
    equipment: &Equipment,
    unit: MassUnit,
    (pins, odd): (i64, bool),
) -> Turn {
    let stack = stack(dice, equipment);
    let off = Mass::of(
        unit,
        if odd {
            dice.pick(&[0, 0, 2_500, 5_000])
        } else {
            0
        },
    );
    let hole = dice.between(0, 4) < pins;
    Turn {
        target: equipment.load(&stack) + off,
        below: Mass::of(unit, dice.pick(&[0, 0, 2_500, 5_000])),
        above: Mass::of(unit, dice.pick(&[0, 0, 2_500, 5_000])),
        least_diameter: Length::ZERO,
        hole: hole.then(|| u16::try_from(dice.between(3, 5)).expect("few")),
        lasts_ns: ms(dice.between(5, 40) * 500),
        rest_ns: ms(dice.pick(&[0, 10_000, 30_000, 60_000, 90_000]) + dice.between(0, 9) * 1_000),
    }
}

/// A stack that the rules allow.
fn stack(dice: &mut Dice, equipment: &Equipment) -> Vec<usize> {
    let mut stack = Vec::new();
    for _ in 0..dice.between(0, 4) {
        let last = i64::try_from(equipment.plates.len()).expect("few") - 1;
        stack.push(usize::try_from(dice.between(0, last)).expect("a place"));
        if equipment.big_inside {
            stack.sort_by_key(|&k: &usize| -equipment.plates[k].mass.ng());
        }
        if equipment.broken_by(&stack).is_some() {
            return Vec::new();
        }
    }
    stack
}

/// Three to six lifters of one to three turns, eight in all, with two kinds of plates: so many that
/// rests overlap in every way.
pub(crate) fn crowd(seed: u64) -> Problem {
    let dice = &mut Dice::new(seed ^ 0xC407D);
    let mut problem = under_way(dice.between(0, 1 << 40).unsigned_abs());
    problem.equipment.plates.truncate(2);
    problem.equipment.big_inside = dice.one_in(2);
    problem.equipment.sleeve = None;
    let standing = &mut problem.standing.on_bar;
    standing.retain(|&kind| kind < 2);
    if problem.equipment.broken_by(standing).is_some() {
        standing.clear();
    }
    problem.standing.called.clear();
    problem.standing.now_ns = 0;
    problem.lifters.clear();
    let rest = dice.pick(&[20_000, 60_000, 120_000]);
    let (mut left, lifters) = (8, dice.between(3, 6));
    for _ in 0..lifters {
        let turns = dice.between(1, 3).min(left);
        left -= turns;
        let turns = (0..turns).map(|_| Turn {
            rest_ns: ms(rest + dice.between(0, 40) * 1_000),
            ..small_turn(dice, &problem.equipment, MassUnit::Kg, (2, false))
        });
        problem.lifters.push(Lifter {
            turns: turns.collect(),
            ended_ns: dice.one_in(3).then_some(0),
        });
    }
    problem
}

/// So many lifters of two turns each, or of one where they are more than six, with one kind of plate
/// or two, none of them under way.
pub(crate) fn many(seed: u64, lifters: usize) -> Problem {
    let mut problem = crowd(seed);
    let dice = &mut Dice::new(seed ^ 0x3A27);
    let kinds = if lifters > 6 { 1 } else { 2 };
    problem.equipment.plates.truncate(kinds);
    problem.standing = Standing::default();
    let rest = dice.pick(&[20_000, 60_000, 120_000]);
    let turns = if lifters > 6 { 1 } else { 2 };
    let row = |lifter: usize, dice: &mut Dice| {
        // Two of many go twice, so that someone has to rest.
        let turns = if lifter < 2 { 2 } else { turns };
        let turns = (0..turns).map(|_| Turn {
            rest_ns: ms(rest + dice.between(0, 40) * 1_000),
            ..small_turn(dice, &problem.equipment, MassUnit::Kg, (2, false))
        });
        Lifter {
            turns: turns.collect(),
            ended_ns: None,
        }
    };
    problem.lifters = (0..lifters).map(|lifter| row(lifter, dice)).collect();
    problem
}

/// A small rotation that is already under way.
pub(crate) fn under_way(seed: u64) -> Problem {
    let mut problem = small(seed);
    let dice = &mut Dice::new(seed ^ 0xB0A7);
    problem.standing = Standing {
        now_ns: ms(dice.between(0, 100) * 1_000),
        on_bar: stack(dice, &problem.equipment),
        hole: dice
            .one_in(2)
            .then(|| u16::try_from(dice.between(3, 5)).expect("few")),
        called: Vec::new(),
    };
    for at in 0..problem.lifters.len() {
        if dice.one_in(2) {
            problem.lifters[at].ended_ns = Some(ms(dice.between(0, 100) * 1_000));
        }
        if dice.one_in(3) {
            problem.lifters[at].turns.truncate(1);
        }
        if dice.one_in(3) {
            problem.standing.called.push(at);
        }
    }
    problem
}

/// A small rotation in any order whose pins can hardly be moved: the bar alone is too heavy for it,
/// or just light enough; most turns use the hole that is set, or none.
pub(crate) fn stuck(seed: u64) -> Problem {
    let mut problem = under_way(seed);
    let dice = &mut Dice::new(seed ^ 0x57CC);
    problem.equipment.big_inside = false;
    let off = dice.pick(&[-20_000, -1, -1, 0]);
    problem.hole_change_at_most = problem.equipment.bar_and_collars + grams(off);
    let often = dice.one_in(2);
    for turn in problem.lifters.iter_mut().flat_map(|l| &mut l.turns) {
        if often || !dice.one_in(6) {
            turn.hole = problem.standing.hole.filter(|_| dice.one_in(2));
        }
    }
    problem
}

/// A gym's evening: lifters with the usual percentages of a work load, over seven denominations.
pub(crate) fn evening(seed: u64, lifters: usize, turns: usize, big_inside: bool) -> Problem {
    let dice = &mut Dice::new(seed);
    let masses = [25_000, 20_000, 15_000, 10_000, 5_000, 2_500, 1_250];
    let plates = masses.iter().map(|&mass| PairKind {
        mass: grams(mass),
        pairs: u16::try_from(if mass == 25_000 {
            dice.between(4, 8)
        } else {
            dice.between(1, 3)
        })
        .expect("few"),
        thickness: Length::mm(20),
        diameter: Length::ZERO,
        handling_ns: ms(1_000
            * match mass {
                20_000.. => dice.between(7, 10),
                10_000.. => dice.between(5, 7),
                _ => dice.between(3, 5),
            }),
    });
    let equipment = Equipment {
        bar_and_collars: grams(20_000),
        sleeve: Some(Length::mm(415)),
        big_inside,
        plates: plates.collect(),
    };
    let mut rows = Vec::new();
    for _ in 0..lifters {
        let work = dice.between(24, 80) * 2_500;
        let hole = dice
            .one_in(2)
            .then(|| u16::try_from(dice.between(3, 5)).expect("few"));
        let rest = ms(dice.between(9, 20) * 10_000);
        let row = (0..turns).map(|turn| {
            let share = [35, 50, 65, 80, 90, 100][turn.min(5)];
            let target = (work * share / 250_000 * 2_500).max(20_000);
            let off = [
                (0, 0),
                (1_250, 1_250),
                (2_500, 2_500),
                (2_500, 0),
                (0, 2_500),
            ];
            let (below, above) = dice.pick(&off);
            Turn {
                target: grams(target),
                below: grams(below),
                above: grams(above),
                least_diameter: Length::ZERO,
                hole,
                lasts_ns: ms(dice.between(20, 60) * 1_000),
                rest_ns: rest,
            }
        });
        rows.push(Lifter {
            turns: row.collect(),
            ended_ns: None,
        });
    }
    Problem {
        equipment,
        loaders: dice.pick(&[Loaders::One, Loaders::Two]),
        hole_change_ns: ms(dice.between(10, 40) * 1_000),
        hole_change_at_most: grams(20_000 + dice.between(0, 8) * 10_000),
        lifters: rows,
        standing: Standing::default(),
    }
}
