//! Rotations small enough to be worked out by hand, and what is refused.
use crate::random::{grams, ms};
use crate::replay;
use crate::small::solved;
use domain::Length;
use domain::solve::rotation::{Lifter, Loaders, Plan, Problem, Standing, Turn};
use domain::solve::{Constraint, Equipment, PairKind};

/// 20 kg bar; two pairs each of 20 and 10 kg, 5 s a pair; pins move in 10 s under up to 40 kg.
fn gym(turns: &[&[Turn]]) -> Problem {
    let plates = [20_000, 10_000].map(|mass| PairKind {
        mass: grams(mass),
        pairs: 2,
        thickness: Length::mm(30),
        diameter: Length::ZERO,
        handling_ns: ms(5_000),
    });
    let lifter = |turns: &&[Turn]| Lifter {
        turns: turns.to_vec(),
        ended_ns: None,
    };
    Problem {
        equipment: Equipment {
            bar_and_collars: grams(20_000),
            sleeve: None,
            big_inside: true,
            plates: plates.to_vec(),
        },
        loaders: Loaders::Two,
        hole_change_ns: ms(10_000),
        hole_change_at_most: grams(40_000),
        lifters: turns.iter().map(lifter).collect(),
        standing: Standing::default(),
    }
}

/// A turn of 30 s after a rest of 60 s, from the floor.
fn turn(kg: i64) -> Turn {
    Turn {
        target: grams(kg * 1_000),
        below: grams(0),
        above: grams(0),
        least_diameter: Length::ZERO,
        hole: None,
        lasts_ns: ms(30_000),
        rest_ns: ms(60_000),
    }
}

fn planned(problem: &Problem) -> Plan {
    let plan = solved(problem).expect("can be loaded");
    replay::check(problem, &plan);
    assert!(plan.proven && plan.least_handling);
    plan
}

#[test]
fn a_lifter_alone_loads_while_resting() {
    // Load 5 s, lift until 35, rest until 95 (loading is done at 40), lift until 125.
    let plan = planned(&gym(&[&[turn(60), turn(80)]]));
    assert_eq!((plan.ends_ns, plan.handling_ns), (ms(125_000), ms(10_000)));
    assert_eq!(plan.turns[1].ready_ns, ms(40_000));
}

#[test]
fn one_loader_takes_twice_as_long() {
    let mut problem = gym(&[&[turn(60), turn(80)]]);
    problem.loaders = Loaders::One;
    let plan = planned(&problem);
    assert_eq!((plan.ends_ns, plan.handling_ns), (ms(130_000), ms(20_000)));
}

#[test]
fn two_lifters_fill_each_others_rest() {
    // a 60, b 60, a 80, b 80: 5 + 30, 30, then a is rested at 95: loaded at 70, lifts 95 to 125;
    // b was done at 65, rested at 125, lifts 125 to 155.
    let plan = planned(&gym(&[&[turn(60), turn(80)], &[turn(60), turn(80)]]));
    assert_eq!((plan.ends_ns, plan.handling_ns), (ms(155_000), ms(10_000)));
}

#[test]
fn pins_move_only_under_a_light_bar() {
    // 100 kg is 20 + 20 a side. The pins move at 40 kg: of the second turn's bar both 20s must
    // come off first (5 + 5), pins (10), both go on again (5 + 5).
    let at = |hole| Turn {
        hole: Some(hole),
        rest_ns: 0,
        ..turn(100)
    };
    let plan = planned(&gym(&[&[at(3), at(5)]]));
    // 10 on, 10 pins, 30 lift; 10 off, 10 pins, 10 on, 30 lift.
    assert_eq!((plan.ends_ns, plan.handling_ns), (ms(110_000), ms(30_000)));
    assert!(plan.turns.iter().all(|turn| turn.hole_change));
    let mut problem = gym(&[&[at(3), at(5)]]);
    problem.hole_change_at_most = grams(60_000);
    // Now one 20 may stay on: 5 off and 5 on less.
    let plan = planned(&problem);
    assert_eq!((plan.ends_ns, plan.handling_ns), (ms(100_000), ms(20_000)));
}

#[test]
fn a_turn_from_the_floor_leaves_the_pins_alone() {
    let pins = |hole| Turn {
        hole,
        rest_ns: 0,
        ..turn(60)
    };
    let plan = planned(&gym(&[&[pins(Some(4)), pins(None), pins(Some(4))]]));
    // 5 on, 10 pins, three times 30.
    assert_eq!((plan.ends_ns, plan.handling_ns), (ms(105_000), ms(5_000)));
}

#[test]
fn the_rest_is_planned_from_the_bar_as_it_stands() {
    let mut problem = gym(&[&[turn(80)], &[turn(60), turn(80)]]);
    problem.standing = Standing {
        now_ns: ms(1_000_000),
        on_bar: vec![0],
        hole: Some(7),
        called: vec![0, 1],
    };
    problem.lifters[0].ended_ns = Some(ms(980_000));
    // Lifter 0 is rested at 1040 and goes first all the same: 1040 to 1070. Then the 10s come off
    // (5), lifter 1 lifts 1075 to 1105, rests to 1165, lifts to 1195.
    let plan = planned(&problem);
    assert_eq!(
        (plan.ends_ns, plan.handling_ns),
        (ms(1_195_000), ms(15_000))
    );
    problem.standing.called.clear();
    // Not called: lifter 1 first 1000 to 1030; lifter 0 1040 to 1070; lifter 1 1090 to 1120.
    let plan = planned(&problem);
    assert_eq!((plan.ends_ns, plan.handling_ns), (ms(1_120_000), ms(5_000)));
}

#[test]
fn handling_decides_between_plans_that_end_together() {
    // In a long rest there is time for anything, so no plate may move in vain: of 60 kg as 20
    // or as 10 + 10, only the 20 may stay for 80 kg.
    let rested = Turn {
        rest_ns: ms(600_000),
        ..turn(80)
    };
    let plan = planned(&gym(&[&[turn(60), rested]]));
    assert_eq!((plan.ends_ns, plan.handling_ns), (ms(665_000), ms(10_000)));
}

fn refused(problem: &Problem) -> (Constraint, String, String) {
    let refusal = solved(problem).expect_err("cannot be planned");
    (refusal.constraint, refusal.field, refusal.text)
}

#[test]
fn what_bites_is_told() {
    let mut refusals = Vec::new();
    let mut refuse = |change: &dyn Fn(&mut Problem)| {
        let mut problem = gym(&[&[turn(60)], &[turn(20), turn(80)]]);
        change(&mut problem);
        let (constraint, field, text) = refused(&problem);
        refusals.push(format!("{constraint:?} {field}: {text}"));
    };
    refuse(&|p| p.lifters[1].turns[1].target = grams(15_000));
    refuse(&|p| p.lifters[1].turns[1].target = grams(500_000));
    refuse(&|p| p.lifters[1].turns[1].target = grams(81_000));
    refuse(&|p| p.equipment.sleeve = Some(Length::mm(30)));
    refuse(&|p| {
        p.lifters[0].turns[0].hole = Some(3);
        p.hole_change_at_most = grams(19_000);
    });
    refuse(&|p| p.lifters.clear());
    refuse(&|p| p.lifters.iter_mut().for_each(|l| l.turns.clear()));
    refuse(&|p| p.lifters[0].turns = vec![turn(60); 200]);
    refuse(&|p| p.lifters = vec![p.lifters[0].clone(); 11]);
    refuse(&|p| p.lifters[0].turns[0].lasts_ns = u64::MAX);
    refuse(&|p| p.lifters[0].turns[0].rest_ns = Problem::TIME_LIMIT_NS + 1);
    refuse(&|p| p.hole_change_ns = u64::MAX);
    refuse(&|p| p.hole_change_at_most = grams(-1));
    refuse(&|p| p.lifters[0].turns[0].below = grams(-1));
    refuse(&|p| p.equipment.plates[1].handling_ns = u64::MAX);
    refuse(&|p| p.standing.on_bar = vec![2]);
    refuse(&|p| p.standing.on_bar = vec![1, 0]);
    refuse(&|p| p.standing.on_bar = vec![0, 0, 0]);
    refuse(&|p| p.standing.called = vec![0, 0]);
    refuse(&|p| p.standing.called = vec![2]);
    refuse(&|p| p.standing.now_ns = u64::MAX);
    insta::assert_snapshot!(refusals.join("\n"));
}
