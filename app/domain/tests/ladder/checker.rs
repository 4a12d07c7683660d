//! Whether a plan is what it says, from its stacks alone.
use domain::solve::ladder::{Plan, Problem};

pub(crate) fn check(problem: &Problem, plan: &Plan) {
    let equipment = &problem.equipment;
    assert_eq!(plan.rungs.len(), problem.rungs.len());
    let (mut handling, mut moves, mut penalties) = (0_i128, 0, 0_i128);
    let mut moved = |kind: usize| {
        handling += i128::from(equipment.plates[kind].handling_ns);
        moves += 1;
    };
    let mut bar = problem.on_bar.clone();
    for (step, wish) in plan.rungs.iter().zip(&problem.rungs) {
        for &kind in &step.change.take_off {
            assert_eq!(bar.pop(), Some(kind), "only the outermost plate comes off");
            moved(kind);
        }
        for &kind in &step.change.put_on {
            bar.push(kind);
            moved(kind);
        }
        assert_eq!(bar, step.per_side);
        assert_allowed(problem, &bar);
        let plates: i64 = bar.iter().map(|&k| equipment.plates[k].mass.ng()).sum();
        let load = equipment.bar_and_collars.ng() + 2 * plates;
        let off = load - wish.target.ng();
        assert_eq!((step.load.ng(), step.off_target.ng()), (load, off));
        assert!(-wish.below.ng() <= off && off <= wish.above.ng());
        let is_large = |&k: &usize| equipment.plates[k].diameter >= wish.least_diameter;
        assert!(wish.least_diameter.nm() == 0 || bar.iter().any(is_large));
        penalties += i128::from(off.abs()) * i128::from(wish.per_kg_off_ns);
    }
    if problem.strip_after {
        bar.into_iter().for_each(moved);
    }
    assert_eq!(i128::from(plan.handling_ns), handling);
    assert_eq!(plan.pair_moves, moves);
    assert_eq!(plan.cost_zs, handling * 1_000_000_000_000 + penalties);
}

fn assert_allowed(problem: &Problem, bar: &[usize]) {
    let equipment = &problem.equipment;
    for (kind, plate) in equipment.plates.iter().enumerate() {
        let used = bar.iter().filter(|&&k| k == kind).count();
        assert!(used <= usize::from(plate.pairs), "{used} of {plate:?}");
    }
    let length: i64 = bar
        .iter()
        .map(|&k| equipment.plates[k].thickness.nm())
        .sum();
    assert!(equipment.sleeve.is_none_or(|sleeve| length <= sleeve.nm()));
    let mass = |kind: usize| equipment.plates[kind].mass;
    let sorted = bar.windows(2).all(|w| mass(w[0]) >= mass(w[1]));
    assert!(sorted || !equipment.big_inside, "{bar:?}");
}
