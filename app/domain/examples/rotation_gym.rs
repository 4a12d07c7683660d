//! Planned rotations beside what people do without a plan, on the same seeded evenings: minutes
//! saved and pairs of plates not moved, as they were planned and with people as they are.
//!
//! `cargo run --release -p domain --example rotation_gym [COUNT] [LIFTERSxTURNS] [SECONDSs or
//! STATESstates] [any]`: limited by the clock, or by work, which is the same on every machine.
//! Without a plan each lifter loads the heaviest plates first, as on the ladder of the day, moves no
//! more pairs than that takes, and lifts either in fixed rounds or as soon as rested. As people
//! are: one set in four takes half as long again, and one lifter leaves after three turns; the
//! planned order is then kept as it was, without planning anew.
use domain::Mass;
use domain::solve::rotation::{Effort, Loaders, Plan, Problem, Turn, plan};
use std::time::{Duration, Instant};

#[allow(dead_code, reason = "shared with the tests, which use all of it")]
#[path = "../tests/rotation/random.rs"]
mod random;

/// What an evening came to.
#[derive(Debug, Clone, Copy)]
struct Evening {
    seconds: u64,
    pairs: usize,
}

/// How people are.
struct People {
    /// By lifter and turn.
    longer: Vec<Vec<bool>>,
    leaves: Option<usize>,
}

impl People {
    fn well_behaved(problem: &Problem) -> Self {
        let turns = problem.lifters.iter().map(|lifter| lifter.turns.len());
        Self {
            longer: turns.map(|count| vec![false; count]).collect(),
            leaves: None,
        }
    }

    fn as_they_are(problem: &Problem, seed: u64) -> Self {
        let dice = &mut random::Dice::new(seed ^ 0x9E0F);
        let mut people = Self::well_behaved(problem);
        for longer in people.longer.iter_mut().flatten() {
            *longer = dice.one_in(4);
        }
        let last = i64::try_from(problem.lifters.len()).expect("few") - 1;
        people.leaves = usize::try_from(dice.between(0, last)).ok();
        people
    }

    fn is_there(&self, lifter: usize, turn: usize) -> bool {
        self.leaves != Some(lifter) || turn < 3
    }
}

/// The rack while an evening goes on.
struct Rack<'a> {
    problem: &'a Problem,
    people: &'a People,
    bar: Vec<usize>,
    hole: Option<u16>,
    clock: u64,
    pairs: usize,
    ready: Vec<u64>,
}

impl<'a> Rack<'a> {
    fn new(problem: &'a Problem, people: &'a People) -> Self {
        Self {
            problem,
            people,
            bar: Vec::new(),
            hole: None,
            clock: 0,
            pairs: 0,
            ready: vec![0; problem.lifters.len()],
        }
    }

    fn lift(&mut self, lifter: usize, at: usize, stack: &[usize]) {
        if !self.people.is_there(lifter, at) {
            return;
        }
        let problem = self.problem;
        let turn = &problem.lifters[lifter].turns[at];
        let mut kept = self
            .bar
            .iter()
            .zip(stack)
            .take_while(|(a, b)| a == b)
            .count();
        let change = turn.hole.is_some() && turn.hole != self.hole;
        while change && problem.equipment.load(&self.bar[..kept]) > problem.hole_change_at_most {
            kept -= 1;
        }
        let moved: Vec<usize> = self.bar[kept..]
            .iter()
            .chain(&stack[kept..])
            .copied()
            .collect();
        let each = moved
            .iter()
            .map(|&kind| problem.equipment.plates[kind].handling_ns);
        let times = if problem.loaders == Loaders::One {
            2
        } else {
            1
        };
        self.clock += times * each.sum::<u64>();
        self.pairs += moved.len();
        if change {
            self.clock += problem.hole_change_ns;
            self.hole = turn.hole;
        }
        let more = if self.people.longer[lifter][at] {
            turn.lasts_ns / 2
        } else {
            0
        };
        self.clock = self.clock.max(self.ready[lifter]) + turn.lasts_ns + more;
        let rest = problem.lifters[lifter]
            .turns
            .get(at + 1)
            .map_or(0, |next| next.rest_ns);
        self.ready[lifter] = self.clock + rest;
        self.bar = stack.to_vec();
    }

    fn over(&self) -> Evening {
        Evening {
            seconds: self.clock / 1_000_000_000,
            pairs: self.pairs,
        }
    }
}

fn planned(problem: &Problem, people: &People, plan: &Plan) -> Evening {
    let mut rack = Rack::new(problem, people);
    for turn in &plan.turns {
        rack.lift(turn.lifter, turn.turn, &turn.per_side);
    }
    rack.over()
}

fn in_rounds(problem: &Problem, people: &People) -> Evening {
    let mut rack = Rack::new(problem, people);
    let most = problem
        .lifters
        .iter()
        .map(|lifter| lifter.turns.len())
        .max();
    for at in 0..most.unwrap_or(0) {
        for (lifter, all) in problem.lifters.iter().enumerate() {
            if let Some(turn) = all.turns.get(at) {
                rack.lift(lifter, at, &heaviest_first(problem, turn));
            }
        }
    }
    rack.over()
}

fn as_soon_as_rested(problem: &Problem, people: &People) -> Evening {
    let mut rack = Rack::new(problem, people);
    let mut done = vec![0; problem.lifters.len()];
    loop {
        let left = |l: &usize| done[*l] < problem.lifters[*l].turns.len();
        let next = (0..done.len())
            .filter(left)
            .min_by_key(|&l| (rack.ready[l], l));
        let Some(lifter) = next else {
            return rack.over();
        };
        let turn = &problem.lifters[lifter].turns[done[lifter]];
        rack.lift(lifter, done[lifter], &heaviest_first(problem, turn));
        done[lifter] += 1;
    }
}

/// The plates that a lifter takes without a plan.
fn heaviest_first(problem: &Problem, turn: &Turn) -> Vec<usize> {
    let mut stack = Vec::new();
    let found = fill(problem, turn, 0, &mut stack);
    assert!(found, "an evening can be loaded");
    stack
}

fn fill(problem: &Problem, turn: &Turn, from: usize, stack: &mut Vec<usize>) -> bool {
    let load = problem.equipment.load(stack);
    if load > turn.target + turn.above || problem.equipment.broken_by(stack).is_some() {
        return false;
    }
    if turn.target - turn.below <= load {
        return true;
    }
    for kind in from..problem.equipment.plates.len() {
        if problem.equipment.plates[kind].mass > Mass::ZERO {
            stack.push(kind);
            if fill(problem, turn, kind, stack) {
                return true;
            }
            stack.pop();
        }
    }
    false
}

#[expect(clippy::print_stdout, reason = "a report")]
fn main() -> Result<(), String> {
    let (mut count, mut size, mut within, mut big_inside) = (50, (6, 6), 2.0, true);
    let mut most = u64::MAX;
    for word in std::env::args().skip(1) {
        let unknown = |_| format!("{word} is not a count, a size like 8x6, a time like 2s, or any");
        let unknown_time = |_| format!("{word} is not a time like 2s");
        if word == "any" {
            big_inside = false;
        } else if let Some(states) = word.strip_suffix("states") {
            (most, within) = (states.parse().map_err(unknown)?, f64::MAX);
        } else if let Some(seconds) = word.strip_suffix('s') {
            within = seconds.parse().map_err(unknown_time)?;
        } else if let Some((lifters, turns)) = word.split_once('x') {
            size = (
                lifters.parse().map_err(unknown)?,
                turns.parse().map_err(unknown)?,
            );
        } else {
            count = word.parse().map_err(unknown)?;
        }
    }
    // By whether people are well-behaved, and by what they do without a plan: seconds and pairs.
    let mut saved = vec![vec![(Vec::new(), Vec::new()); 2]; 2];
    for seed in 0..count {
        let problem = random::evening(seed, size.0, size.1, big_inside);
        let started = now();
        let limit = Duration::try_from_secs_f64(within).unwrap_or(Duration::MAX);
        let effort = Effort {
            states: most,
            go_on: &mut || started.elapsed() < limit,
        };
        let plan = plan(&problem, effort).map_err(|refusal| refusal.to_string())?;
        let people = [
            People::well_behaved(&problem),
            People::as_they_are(&problem, seed),
        ];
        for (people, saved) in people.iter().zip(&mut saved) {
            let ours = planned(&problem, people, &plan);
            let theirs = [
                in_rounds(&problem, people),
                as_soon_as_rested(&problem, people),
            ];
            for (theirs, saved) in theirs.iter().zip(saved) {
                saved.0.push(theirs.seconds as i64 - ours.seconds as i64);
                saved.1.push(theirs.pairs as i64 - ours.pairs as i64);
            }
        }
    }
    for (people, saved) in ["as planned", "as people are"].iter().zip(&mut saved) {
        for (theirs, (seconds, pairs)) in ["fixed rounds", "as soon as rested"].iter().zip(saved) {
            seconds.sort_unstable();
            pairs.sort_unstable();
            let of = |all: &[i64], tenths: usize| all[(all.len() - 1) * tenths / 10];
            println!(
                "{people}, beside {theirs}: saved {:.1} min at the median ({:.1} to {:.1} for 8 of \
                 10 evenings), {} pairs not moved ({} to {})",
                of(seconds, 5) as f64 / 60.0,
                of(seconds, 1) as f64 / 60.0,
                of(seconds, 9) as f64 / 60.0,
                of(pairs, 5),
                of(pairs, 1),
                of(pairs, 9)
            );
        }
    }
    Ok(())
}

#[expect(clippy::disallowed_methods, reason = "a stopwatch, not the planner")]
fn now() -> Instant {
    Instant::now()
}
