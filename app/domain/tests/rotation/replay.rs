//! Carries a plan out by its words: takes off, moves the pins, puts on, lifts, and checks every
//! rule and every figure on the way. Shares nothing with the planner.
use domain::Mass;
use domain::solve::rotation::{Loaders, Plan, Problem};

/// Panics with what is wrong.
pub fn check(problem: &Problem, plan: &Plan) {
    let equipment = &problem.equipment;
    let mut bar = problem.standing.on_bar.clone();
    let mut hole = problem.standing.hole;
    let mut clock = problem.standing.now_ns;
    let mut ended: Vec<Option<u64>> = problem.lifters.iter().map(|l| l.ended_ns).collect();
    let mut done = vec![0; problem.lifters.len()];
    let (mut handling, mut moves) = (0, 0);
    for (at, step) in plan.turns.iter().enumerate() {
        if let Some(&called) = problem.standing.called.get(at) {
            assert_eq!(called, step.lifter, "turn {at} was called");
        }
        assert_eq!(
            step.turn, done[step.lifter],
            "turn {at} is in the lifter's order"
        );
        let turn = problem.lifters[step.lifter].turns[step.turn];
        for &plate in &step.change.take_off {
            assert_eq!(
                bar.pop(),
                Some(plate),
                "turn {at} takes off what lies outermost"
            );
            clock += time(problem, plate);
            handling += time(problem, plate);
        }
        let moved_pins = turn.hole.is_some() && turn.hole != hole;
        assert_eq!(
            step.hole_change, moved_pins,
            "turn {at} moves the pins when it must"
        );
        if moved_pins {
            let bared = equipment.load(&bar);
            assert!(
                bared <= problem.hole_change_at_most,
                "turn {at} moves pins under {bared:?}"
            );
            hole = turn.hole;
            clock += problem.hole_change_ns;
        }
        for &plate in &step.change.put_on {
            bar.push(plate);
            assert_eq!(equipment.broken_by(&bar), None, "turn {at} breaks a rule");
            clock += time(problem, plate);
            handling += time(problem, plate);
        }
        moves += step.change.take_off.len() + step.change.put_on.len();
        assert_eq!(bar, step.per_side, "turn {at} has its stack");
        assert_eq!(step.hole, turn.hole, "turn {at} has its hole");
        assert_eq!(step.ready_ns, clock, "turn {at} is ready");
        let side: Mass = bar.iter().map(|&k| equipment.plates[k].mass).sum();
        assert_eq!(
            step.load,
            equipment.bar_and_collars + side + side,
            "turn {at} has its load"
        );
        assert!(
            turn.target - turn.below <= step.load,
            "turn {at} is too light"
        );
        assert!(
            step.load <= turn.target + turn.above,
            "turn {at} is too heavy"
        );
        if let Some(ended) = ended[step.lifter] {
            clock = clock.max(ended + turn.rest_ns);
        }
        assert_eq!(step.starts_ns, clock, "turn {at} starts as soon as it can");
        clock += turn.lasts_ns;
        assert_eq!(step.ends_ns, clock, "turn {at} ends");
        ended[step.lifter] = Some(clock);
        done[step.lifter] += 1;
    }
    let counts: Vec<usize> = problem.lifters.iter().map(|l| l.turns.len()).collect();
    assert_eq!(done, counts, "everyone does all turns");
    assert_eq!(plan.ends_ns, clock, "the end");
    assert_eq!(plan.handling_ns, handling, "the handling");
    assert_eq!(plan.pair_moves as usize, moves, "the moves");
    assert!(plan.at_least_ns <= plan.ends_ns, "a bound is a bound");
    assert!(
        !plan.proven || plan.at_least_ns == plan.ends_ns,
        "proven means so"
    );
    assert!(
        !plan.least_handling || plan.proven,
        "handling only after the end"
    );
}

fn time(problem: &Problem, plate: usize) -> u64 {
    let sides = match problem.loaders {
        Loaders::One => 2,
        Loaders::Two => 1,
    };
    sides * problem.equipment.plates[plate].handling_ns
}
