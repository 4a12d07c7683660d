//! A bound for rotations of any size by the changeovers one after the other: the evening is a
//! path from the bar at the start over all turns, and no path is shorter than a tree.
//!
//! From turn to turn it takes at least the handling between their nearest stacks, or the rest
//! where one lifter goes twice in a row; nobody's turn follows another of their own but the one
//! before it. Held and Karp's 1-trees (1970, 1971): the tree of least length, with a price on each
//! turn that is raised where the tree forks and lowered where it ends. Whatever the prices, no
//! path is shorter.
//!
//! Refuses: telling hole changes; whoever asks adds those that there must be.
use super::gaps::Gaps;
use super::model::{Model, NO_HOLE};
use super::stacks::Stacks;
use alloc::vec;
use alloc::vec::Vec;

/// Times that the prices are changed.
const ROUNDS: i64 = 400;
/// Pairs of stacks that are looked at; where there are more, nothing is told.
const PAIRS_LIMIT: usize = 60_000_000;

/// The shortest ways between all turns, the start last, nanoseconds.
struct Ways<'a> {
    model: &'a Model,
    count: usize,
    least: Vec<i64>,
}

/// All changeovers and the rests that nobody fills take at least this, nanoseconds.
pub(super) fn least(model: &Model, stacks: &Stacks) -> i64 {
    let pairs: usize = stacks.serving.iter().map(Vec::len).sum();
    if pairs.saturating_mul(pairs) / 2 > PAIRS_LIMIT || model.turns.is_empty() {
        return 0;
    }
    Ways::new(model, stacks).best_tree()
}

impl<'a> Ways<'a> {
    fn new(model: &'a Model, stacks: &Stacks) -> Self {
        let gaps = Gaps::new(model, stacks);
        let turns = model.turns.len();
        let mut ways = Self {
            model,
            count: turns + 1,
            least: vec![0; (turns + 1) * (turns + 1)],
        };
        for b in 0..turns {
            for a in 0..b {
                let way = ways.between(&gaps, stacks, a, b);
                ways.set(a, b, way);
            }
            let first = model.first.contains(&b);
            let way = if first {
                ways.handling(&gaps, (&[stacks.start], model.hole), &stacks.serving[b], b)
            } else {
                ways.never()
            };
            ways.set(b, turns, way);
        }
        ways
    }

    fn set(&mut self, a: usize, b: usize, way: i64) {
        self.least[a * self.count + b] = way;
        self.least[b * self.count + a] = way;
    }

    /// Longer than any plan.
    fn never(&self) -> i64 {
        self.model.horizon
    }

    /// From one turn to another or back.
    fn between(&self, gaps: &Gaps<'_>, stacks: &Stacks, a: usize, b: usize) -> i64 {
        let model = self.model;
        let same = model.first.windows(2).any(|of| of[0] <= a && b < of[1]);
        if same && a + 1 != b {
            return self.never();
        }
        let from = (&stacks.serving[a][..], model.turns[a].hole);
        let way = self.handling(gaps, from, &stacks.serving[b], b);
        if same {
            way.max(model.turns[b].rest)
        } else {
            way
        }
    }

    /// Handling between the nearest stacks.
    fn handling(&self, gaps: &Gaps<'_>, (from, set): (&[u32], u8), to: &[u32], turn: usize) -> i64 {
        let hole = self.model.turns[turn].hole;
        // With no hole it is not known which one is set.
        let change = hole != NO_HOLE && set != NO_HOLE && hole != set;
        let mut least = i64::MAX;
        for &a in from {
            for &b in to {
                // No hole change takes less than the way itself.
                if gaps.plain(a, b) < least {
                    least = least.min(gaps.between(a, b, change));
                }
            }
        }
        least
    }

    /// The longest of the shortest trees, over the prices that were tried.
    fn best_tree(&self) -> i64 {
        let mut prices = vec![0_i64; self.count];
        let (mut best, mut pace) = (0, 0);
        for round in 0..ROUNDS {
            let (length, degrees) = self.tree(&prices);
            best = best.max(length);
            if round == 0 {
                pace = length / self.turns().max(1);
            }
            if degrees.iter().all(|&degree| degree == 2) {
                break;
            }
            let step = pace * (ROUNDS - round) / ROUNDS / 2;
            for (price, degree) in prices.iter_mut().zip(degrees) {
                *price += step * (degree - 2);
            }
        }
        best
    }

    fn turns(&self) -> i64 {
        i64::try_from(self.model.turns.len()).expect("few turns")
    }

    /// The length of the shortest tree at these prices, less the prices, and by turn how many ways
    /// meet there: the start and the last turn have one more, as if a way led from one to the
    /// other.
    fn tree(&self, prices: &[i64]) -> (i64, Vec<i64>) {
        let (count, start) = (self.count, self.count - 1);
        let mut degrees = vec![0; count];
        let mut length: i64 = -2 * prices.iter().sum::<i64>();
        // Grown from the start as by Prim: the way to each turn from what is joined already.
        let mut nearest: Vec<(i64, usize)> = vec![(i64::MAX, start); count];
        let mut joined = vec![false; count];
        let mut last = start;
        for _ in 1..count {
            joined[last] = true;
            let mut next = (i64::MAX, start);
            for turn in (0..count).filter(|&turn| !joined[turn]) {
                let way = self.least[last * count + turn] + prices[last] + prices[turn];
                if way < nearest[turn].0 {
                    nearest[turn] = (way, last);
                }
                next = next.min((nearest[turn].0, turn));
            }
            length += next.0;
            last = next.1;
            degrees[last] += 1;
            degrees[nearest[last].1] += 1;
        }
        let lifters = 0..self.model.lifters();
        let lasts = lifters.filter(|&l| self.model.count(l) > 0);
        let ends = lasts.map(|l| self.model.first[l + 1] - 1);
        let end = ends.min_by_key(|&turn| (prices[turn], turn));
        for turn in end.into_iter().chain([start]) {
            length += prices[turn];
            degrees[turn] += 1;
        }
        (length, degrees)
    }
}

#[cfg(test)]
mod tests {
    use super::super::model::Model;
    use super::super::stacks::Stacks;
    use super::super::{Lifter, Loaders, Problem, Standing, Turn};
    use super::least;
    use crate::length::Length;
    use crate::mass::{Mass, MassUnit};
    use crate::solve::{Equipment, PairKind};

    fn grams(grams: i64) -> Mass {
        Mass::of(MassUnit::Kg, grams)
    }

    /// A bar of 20 kg with a pair each of 10, 5 and 2.5 kg in any order, a microsecond each to
    /// handle; lifters with turns of these loads in grams.
    fn problem(lifters: &[&[i64]], rest_ns: u64) -> Problem {
        let kind = |mass| PairKind {
            mass: grams(mass),
            pairs: 1,
            thickness: Length::ZERO,
            diameter: Length::ZERO,
            handling_ns: 1_000,
        };
        let turn = |&load: &i64| Turn {
            target: grams(load),
            below: Mass::ZERO,
            above: Mass::ZERO,
            least_diameter: Length::ZERO,
            hole: None,
            lasts_ns: 1,
            rest_ns,
        };
        let lifter = |loads: &&[i64]| Lifter {
            turns: loads.iter().map(turn).collect(),
            ended_ns: None,
        };
        Problem {
            equipment: Equipment {
                bar_and_collars: grams(20_000),
                sleeve: None,
                big_inside: false,
                plates: [10_000, 5_000, 2_500].map(kind).to_vec(),
            },
            loaders: Loaders::Two,
            hole_change_ns: 0,
            hole_change_at_most: grams(20_000),
            lifters: lifters.iter().map(lifter).collect(),
            standing: Standing::default(),
        }
    }

    fn told(lifters: &[&[i64]], rest_ns: u64) -> i64 {
        let model = Model::new(&problem(lifters, rest_ns), 0);
        let stacks = Stacks::new(&model, 100).expect("it can be loaded");
        least(&model, &stacks)
    }

    /// By hand: 10 and 5, 5 and 2.5, 2.5 and 10. Two go on, then one comes off and one goes on,
    /// twice: 6, where each plate counted once makes 3, and with what comes off again 4.
    #[test]
    fn plates_that_cannot_all_stay_on_are_told() {
        assert_eq!(told(&[&[50_000], &[35_000], &[45_000]], 0), 6_000);
    }

    /// By hand: the 10 goes on, and one lifter alone rests twice for 500 us; with somebody else
    /// for in between, whose 5 goes on and comes off again, the 10 once more: 1 + 2 + 2 us.
    #[test]
    fn one_lifter_alone_rests_and_two_may_take_turns() {
        assert_eq!(told(&[&[40_000, 40_000, 40_000]], 500_000), 1_001_000);
        assert_eq!(told(&[&[40_000, 40_000], &[30_000]], 500_000), 5_000);
    }

    /// Nobody's third turn follows the first, nor the fourth the second: with nobody else there is
    /// one path alone, up and down and up again, 4 us. In any order the two light ones would come
    /// first and the two heavy ones after them, 2 us.
    #[test]
    fn one_lifters_turns_stay_in_their_order() {
        assert_eq!(told(&[&[30_000, 50_000, 30_000, 50_000]], 0), 4_000);
    }
}
