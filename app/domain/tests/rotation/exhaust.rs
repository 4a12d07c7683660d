//! Tries everything: every order, every allowed stack for every turn, every way to get there.
//! Shares nothing with the planner. Cut short is only what is already no better than the best, or
//! got to the same turns, stack and hole in no respect sooner than something tried before.
use domain::solve::rotation::{Loaders, Problem};
use domain::solve::{Constraint, Equipment};
use std::collections::BTreeMap;

/// Earliest end of the last turn and, with that, the least handling, in nanoseconds; `None` when
/// a turn cannot be done.
pub(crate) fn best(problem: &Problem) -> Option<(u64, u64)> {
    best_by(problem, 0)
}

/// As [`best`], where an end before `soon_enough` is worth no more than that one.
pub(crate) fn best_by(problem: &Problem, soon_enough: u64) -> Option<(u64, u64)> {
    search(problem, soon_enough, u64::MAX)
}

/// As [`best`], where nobody waits longer than `longest_wait` once rested.
pub(crate) fn fairest(problem: &Problem, longest_wait: u64) -> Option<(u64, u64)> {
    search(problem, 0, longest_wait)
}

fn search(problem: &Problem, soon_enough: u64, longest_wait: u64) -> Option<(u64, u64)> {
    let stacks = all_stacks(&problem.equipment);
    let bar = problem.equipment.bar_and_collars;
    let mut able = Vec::new();
    for lifter in &problem.lifters {
        let mut row = Vec::new();
        for turn in &lifter.turns {
            let fits = |stack: &&Vec<usize>| {
                let load = problem.equipment.load(stack);
                let within = turn.target - turn.below <= load && load <= turn.target + turn.above;
                within && turn.least_diameter <= problem.equipment.largest(stack)
            };
            let fitting: Vec<Vec<usize>> = stacks.iter().filter(fits).cloned().collect();
            let change = turn.hole.is_some() && turn.hole != problem.standing.hole;
            if fitting.is_empty() || (change && bar > problem.hole_change_at_most) {
                return None;
            }
            row.push(fitting);
        }
        able.push(row);
    }
    let mut tries = Tries {
        problem,
        able,
        soon_enough,
        longest_wait,
        best: None,
        seen: BTreeMap::new(),
    };
    tries.go_on(&Stand {
        done: vec![0; problem.lifters.len()],
        stack: problem.standing.on_bar.clone(),
        hole: problem.standing.hole,
        clock: problem.standing.now_ns,
        ended: problem.lifters.iter().map(|l| l.ended_ns).collect(),
        handling: 0,
    });
    tries.best
}

/// Every stack that breaks no rule.
fn all_stacks(equipment: &Equipment) -> Vec<Vec<usize>> {
    let mut all = vec![Vec::new()];
    let mut at = 0;
    while at < all.len() {
        for kind in 0..equipment.plates.len() {
            let mut longer = all[at].clone();
            longer.push(kind);
            let broken: Option<Constraint> = equipment.broken_by(&longer);
            if broken.is_none() {
                all.push(longer);
            }
        }
        at += 1;
    }
    all
}

#[derive(Debug, Clone)]
struct Stand {
    done: Vec<usize>,
    stack: Vec<usize>,
    hole: Option<u16>,
    clock: u64,
    ended: Vec<Option<u64>>,
    handling: u64,
}

/// Turns done, stack and hole.
type Key = (Vec<usize>, Vec<usize>, Option<u16>);

struct Tries<'a> {
    problem: &'a Problem,
    able: Vec<Vec<Vec<Vec<usize>>>>,
    soon_enough: u64,
    longest_wait: u64,
    best: Option<(u64, u64)>,
    seen: BTreeMap<Key, Vec<Stand>>,
}

impl Tries<'_> {
    fn go_on(&mut self, stand: &Stand) {
        let so_far = (stand.clock.max(self.soon_enough), stand.handling);
        let lasting = self.problem.lifters.iter().zip(&stand.done);
        let lasting = lasting
            .flat_map(|(l, &done)| &l.turns[done..])
            .map(|t| t.lasts_ns);
        let clock = stand.clock + lasting.sum::<u64>();
        let hopeful = (clock.max(self.soon_enough), stand.handling);
        if self.best.is_some_and(|best| hopeful >= best) || self.seen_before(stand) {
            return;
        }
        let turns_done: usize = stand.done.iter().sum();
        let called = self.problem.standing.called.get(turns_done).copied();
        let mut through = true;
        for lifter in 0..stand.done.len() {
            if stand.done[lifter] == self.problem.lifters[lifter].turns.len() {
                continue;
            }
            through = false;
            if called.is_none_or(|called| called == lifter) {
                for stack in self.able[lifter][stand.done[lifter]].clone() {
                    self.try_stack(stand, lifter, &stack);
                }
            }
        }
        if through {
            self.best = Some(so_far);
        }
    }

    fn seen_before(&mut self, stand: &Stand) -> bool {
        let key = (stand.done.clone(), stand.stack.clone(), stand.hole);
        let seen = self.seen.entry(key).or_default();
        // Whoever is through does not matter any more.
        let lifters = &self.problem.lifters;
        let goes_on = |lifter: usize| stand.done[lifter] < lifters[lifter].turns.len();
        // Whoever is rested earlier also waits longer, so where waits matter only what is the same
        // is seen before.
        let waits_matter = self.longest_wait != u64::MAX;
        let no_later = |s: &Stand| {
            if waits_matter && (s.clock, &s.ended) != (stand.clock, &stand.ended) {
                return false;
            }
            let mut going = (0..lifters.len()).filter(|&lifter| goes_on(lifter));
            s.clock <= stand.clock
                && s.handling <= stand.handling
                && going.all(|lifter| s.ended[lifter] <= stand.ended[lifter])
        };
        if seen.iter().any(no_later) {
            return true;
        }
        seen.push(stand.clone());
        false
    }

    fn try_stack(&mut self, stand: &Stand, lifter: usize, stack: &[usize]) {
        let problem = self.problem;
        let turn = &problem.lifters[lifter].turns[stand.done[lifter]];
        let changes = turn.hole.is_some() && turn.hole != stand.hole;
        let sides = match problem.loaders {
            Loaders::One => 2,
            Loaders::Two => 1,
        };
        // Any part that both have in common from the inside may stay on.
        for kept in 0..=stand.stack.len().min(stack.len()) {
            if stand.stack[..kept] != stack[..kept] {
                break;
            }
            let bared = problem.equipment.load(&stack[..kept]);
            if changes && bared > problem.hole_change_at_most {
                break;
            }
            let moved = stand.stack[kept..].iter().chain(&stack[kept..]);
            let handling: u64 = moved
                .map(|&k| problem.equipment.plates[k].handling_ns)
                .sum();
            let handling = sides * handling;
            let mut starts = stand.clock + handling;
            if changes {
                starts += problem.hole_change_ns;
            }
            if let Some(ended) = stand.ended[lifter] {
                starts = starts.max(ended + turn.rest_ns);
            }
            let rested = stand.ended[lifter].map_or(0, |ended| ended + turn.rest_ns);
            if starts - rested.max(problem.standing.now_ns) > self.longest_wait {
                continue;
            }
            let mut then = stand.clone();
            then.done[lifter] += 1;
            then.stack = stack.to_vec();
            then.hole = turn.hole.or(stand.hole);
            then.clock = starts + turn.lasts_ns;
            then.ended[lifter] = Some(then.clock);
            then.handling += handling;
            self.go_on(&then);
        }
    }
}
