//! Carries a plan out by its words: takes off, moves the pins, puts on, lifts, and checks every
//! rule and every figure on the way. Shares nothing with the planner.
use domain::Mass;
use domain::solve::rotation::{Loaders, Plan, PlannedTurn, Problem, Turn};

/// The rack while the plan is carried out.
struct Rack<'a> {
    problem: &'a Problem,
    bar: Vec<usize>,
    hole: Option<u16>,
    clock: u64,
    handling: u64,
    longest_wait: u64,
    ended: Vec<Option<u64>>,
    done: Vec<usize>,
}

/// Panics with what is wrong.
pub(crate) fn check(problem: &Problem, plan: &Plan) {
    let mut rack = Rack {
        problem,
        bar: problem.standing.on_bar.clone(),
        hole: problem.standing.hole,
        clock: problem.standing.now_ns,
        handling: 0,
        longest_wait: 0,
        ended: problem.lifters.iter().map(|l| l.ended_ns).collect(),
        done: vec![0; problem.lifters.len()],
    };
    for (at, step) in plan.turns.iter().enumerate() {
        if let Some(&called) = problem.standing.called.get(at) {
            assert_eq!(called, step.lifter, "turn {at} was called");
        }
        assert_eq!(
            step.turn, rack.done[step.lifter],
            "turn {at} is in the lifter's order"
        );
        let turn = problem.lifters[step.lifter].turns[step.turn];
        rack.change_over(at, step, &turn);
        rack.lift(at, step, &turn);
    }
    let counts: Vec<usize> = problem.lifters.iter().map(|l| l.turns.len()).collect();
    assert_eq!(rack.done, counts, "everyone does all turns");
    assert_eq!(plan.ends_ns, rack.clock, "the end");
    assert_eq!(plan.handling_ns, rack.handling, "the handling");
    assert_eq!(plan.longest_wait_ns, rack.longest_wait, "the longest wait");
    let changes = plan.turns.iter().map(|t| &t.change);
    let moves: usize = changes.map(|c| c.take_off.len() + c.put_on.len()).sum();
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

impl Rack<'_> {
    fn change_over(&mut self, at: usize, step: &PlannedTurn, turn: &Turn) {
        for &plate in &step.change.take_off {
            assert_eq!(
                self.bar.pop(),
                Some(plate),
                "turn {at} takes off what lies outermost"
            );
            self.handle(plate);
        }
        let moved_pins = turn.hole.is_some() && turn.hole != self.hole;
        assert_eq!(
            step.hole_change, moved_pins,
            "turn {at} moves the pins when it must"
        );
        if moved_pins {
            let bared = self.problem.equipment.load(&self.bar);
            assert!(
                bared <= self.problem.hole_change_at_most,
                "turn {at} moves pins under {bared:?}"
            );
            self.hole = turn.hole;
            self.clock += self.problem.hole_change_ns;
        }
        for &plate in &step.change.put_on {
            self.bar.push(plate);
            let broken = self.problem.equipment.broken_by(&self.bar);
            assert_eq!(broken, None, "turn {at} breaks a rule");
            self.handle(plate);
        }
        assert_eq!(self.bar, step.per_side, "turn {at} has its stack");
        assert_eq!(step.hole, turn.hole, "turn {at} has its hole");
        assert_eq!(step.ready_ns, self.clock, "turn {at} is ready");
    }

    fn handle(&mut self, plate: usize) {
        let sides = match self.problem.loaders {
            Loaders::One => 2,
            Loaders::Two => 1,
        };
        let handling = sides * self.problem.equipment.plates[plate].handling_ns;
        self.clock += handling;
        self.handling += handling;
    }

    fn lift(&mut self, at: usize, step: &PlannedTurn, turn: &Turn) {
        let equipment = &self.problem.equipment;
        let side: Mass = self.bar.iter().map(|&k| equipment.plates[k].mass).sum();
        let load = equipment.bar_and_collars + side + side;
        assert_eq!(step.load, load, "turn {at} has its load");
        assert!(turn.target - turn.below <= load, "turn {at} is too light");
        assert!(load <= turn.target + turn.above, "turn {at} is too heavy");
        let across = self.bar.iter().map(|&k| equipment.plates[k].diameter);
        let largest = across.max().unwrap_or_default();
        assert!(turn.least_diameter <= largest, "turn {at} lies too low");
        let now = self.problem.standing.now_ns;
        let ended = self.ended[step.lifter];
        let rested = ended.map_or(now, |ended| now.max(ended + turn.rest_ns));
        self.clock = self.clock.max(rested);
        self.longest_wait = self.longest_wait.max(self.clock - rested);
        assert_eq!(
            step.starts_ns, self.clock,
            "turn {at} starts as soon as it can"
        );
        self.clock += turn.lasts_ns;
        assert_eq!(step.ends_ns, self.clock, "turn {at} ends");
        self.ended[step.lifter] = Some(self.clock);
        self.done[step.lifter] += 1;
    }
}
