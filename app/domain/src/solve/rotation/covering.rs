//! A bound for rotations of any size that keeps the plates: all rests are forgotten but those
//! between two turns of one lifter that nobody else fills (see `pauses`), the plates are not.
//!
//! Whatever the order, each turn finds one of its stacks on the bar. So for every plate of that
//! stack, told apart by what lies inside it (in any order by how many of its kind there are), there
//! was a time when it was put on; plates too heavy for a hole change even once for each hole. The
//! least handling that covers all turns in this way is a covering problem; its dual is raised turn
//! by turn (Wong's dual ascent, 1984), which gives less, never more.
use super::model::{Model, NO_HOLE};
use super::one_tree;
use super::pauses;
use super::stacks::{Stacks, at};
use alloc::vec;
use alloc::vec::Vec;

/// Times that each turn's share is raised anew.
const ROUNDS: usize = 3;

/// The plates of all stacks, told apart.
pub(super) struct Plates<'a> {
    pub model: &'a Model,
    pub stacks: &'a Stacks,
    /// By node: the number of its outermost plate.
    pub number: Vec<usize>,
    /// By number: handling, nanoseconds.
    pub handling: Vec<i64>,
    /// By number: it cannot be on the bar during a hole change.
    pub heavy: Vec<bool>,
    /// Holes that turns use, and the one set at the start.
    pub holes: Vec<u8>,
}

/// What is left of each plate's handling to be shared out: by hole and number. What is not heavy is
/// kept at the first hole alone.
type Left = Vec<Vec<i64>>;

/// One turn's share: the plates that it is charged for, with how much.
type Share = Vec<(usize, i64)>;

/// No plan ends before, nanoseconds.
pub(super) fn at_least(model: &Model, stacks: &Stacks) -> i64 {
    let plates = Plates::new(model, stacks);
    let lasting: i64 = model.turns.iter().map(|turn| turn.lasts).sum();
    let used = |hole: &&u8| model.turns.iter().any(|turn| turn.hole == **hole);
    let set = plates.holes.iter().filter(|&&hole| hole != model.hole);
    let changes = set.filter(used).count();
    let changes = i64::try_from(changes).expect("few holes") * model.hole_change;
    let covered = plates.least_handling() + pauses::least(&plates);
    model.now + lasting + changes + covered.max(one_tree::least(model, stacks))
}

impl<'a> Plates<'a> {
    fn new(model: &'a Model, stacks: &'a Stacks) -> Self {
        let mut holes: Vec<u8> = model.turns.iter().map(|turn| turn.hole).collect();
        holes.retain(|&hole| hole != NO_HOLE);
        holes.push(model.hole);
        holes.sort_unstable();
        holes.dedup();
        let nodes = stacks.parent.len();
        let mut plates = Self {
            model,
            stacks,
            number: vec![0; nodes],
            handling: vec![0],
            heavy: vec![false],
            holes,
        };
        let most = usize::from(u8::MAX) + 1;
        let mut of_kind = vec![0; model.kinds.len() * most];
        let mut count = vec![0; nodes];
        for node in 1..nodes {
            let (parent, kind) = (at(stacks.parent[node]), usize::from(stacks.kind[node]));
            let same = parent != 0 && stacks.kind[parent] == stacks.kind[node];
            count[node] = if same { count[parent] + 1 } else { 1 };
            let load = if model.big_inside {
                stacks.load[node]
            } else {
                model.bar + 2 * count[node] * model.kinds[kind].mass
            };
            let slot = kind * most
                + usize::try_from(count[node])
                    .expect("few plates")
                    .min(most - 1);
            if !model.big_inside && of_kind[slot] != 0 {
                plates.number[node] = of_kind[slot];
                continue;
            }
            plates.number[node] = plates.handling.len();
            of_kind[slot] = plates.number[node];
            plates.handling.push(model.kinds[kind].handling);
            plates.heavy.push(!model.light(load));
        }
        plates
    }

    /// The numbers of a stack's plates.
    pub(super) fn of(&self, node: u32) -> Vec<usize> {
        let mut numbers = Vec::new();
        let mut node = at(node);
        while node != 0 {
            numbers.push(self.number[node]);
            node = at(self.stacks.parent[node]);
        }
        numbers
    }

    /// The holes, by place, that may be set while a turn is done.
    fn places(&self, turn: usize) -> core::ops::Range<usize> {
        let hole = self.model.turns[turn].hole;
        match self.holes.iter().position(|&other| other == hole) {
            Some(place) if hole != NO_HOLE => place..place + 1,
            _ => 0..self.holes.len(),
        }
    }

    /// Where a plate's handling is kept, for a hole.
    fn place(&self, place: usize, number: usize) -> usize {
        if self.heavy[number] { place } else { 0 }
    }

    /// Handling of all changeovers, at least.
    fn least_handling(&self) -> i64 {
        let mut turns: Vec<usize> = (0..self.model.turns.len()).collect();
        turns.sort_by_key(|&turn| core::cmp::Reverse(self.model.turns[turn].low));
        let heavy_first = self.raised(&turns);
        turns.reverse();
        heavy_first.max(self.raised(&turns))
    }

    /// The same, with the turns' shares raised in a given order.
    fn raised(&self, turns: &[usize]) -> i64 {
        let mut left: Left = vec![self.handling.clone(); self.holes.len()];
        let set = self.holes.iter().position(|&hole| hole == self.model.hole);
        // What is on the bar at the start need not be put on.
        for number in self.of(self.stacks.start) {
            left[self.place(set.unwrap_or(0), number)][number] = 0;
        }
        let full = left.clone();
        let mut shares: Vec<(i64, Share)> = vec![(0, Vec::new()); self.model.turns.len()];
        for _ in 0..ROUNDS {
            for &turn in turns {
                let share = core::mem::take(&mut shares[turn].1);
                self.charge(turn, &share, -1, &mut left);
                shares[turn] = self.raise(turn, &left);
                self.charge(turn, &shares[turn].1, 1, &mut left);
            }
        }
        let put_on: i64 = shares.iter().map(|share| share.0).sum();
        let last = (0..self.model.lifters()).filter(|&l| self.model.count(l) > 0);
        let last = last.map(|lifter| self.model.first[lifter + 1] - 1);
        let off_again = last.map(|turn| {
            self.charge(turn, &shares[turn].1, -1, &mut left);
            let others = put_on - shares[turn].0;
            let most = self.through(turn, others, (&full, &left));
            self.charge(turn, &shares[turn].1, 1, &mut left);
            most
        });
        put_on.max(off_again.min().unwrap_or(0))
    }

    /// Handling at least if a turn is the last of all, where the `others` put on so much: what goes
    /// on comes off again, but for its own stack.
    fn through(&self, turn: usize, others: i64, (full, left): (&Left, &Left)) -> i64 {
        let start: i64 = self
            .of(self.stacks.start)
            .iter()
            .map(|&n| self.handling[n])
            .sum();
        let mut least = i64::MAX;
        for &node in &self.stacks.serving[turn] {
            if self.stacks.stub[at(node)] {
                return 0;
            }
            for place in self.places(turn) {
                let each = self.of(node).into_iter().map(|number| {
                    let place = self.place(place, number);
                    let spent = full[place][number] - left[place][number];
                    2 * (full[place][number] - spent) - self.handling[number]
                });
                least = least.min(each.sum());
            }
        }
        (2 * others + start).saturating_add(least)
    }

    /// Charges a turn's share, or gives it back.
    fn charge(&self, turn: usize, share: &Share, times: i64, left: &mut Left) {
        for &(number, handling) in share {
            if self.heavy[number] {
                for place in self.places(turn) {
                    left[place][number] -= times * handling;
                }
            } else {
                left[0][number] -= times * handling;
            }
        }
    }

    /// The most that a turn can be charged: what it takes to its nearest stack by what is left,
    /// with the plates charged that lie farthest out.
    fn raise(&self, turn: usize, left: &Left) -> (i64, Share) {
        let stacks = self.stacks;
        let nodes = stacks.parent.len();
        let there = |number: usize| {
            let places = self
                .places(turn)
                .map(|place| left[self.place(place, number)][number]);
            places.min().unwrap_or(0)
        };
        let mut away = vec![i64::MAX / 4; nodes];
        for &node in &stacks.serving[turn] {
            away[at(node)] = 0;
        }
        for node in (1..nodes).rev() {
            let parent = at(stacks.parent[node]);
            away[parent] = away[parent].min(away[node] + there(self.number[node]));
        }
        let all = away[0];
        let mut charged = vec![0; self.handling.len()];
        for node in 1..nodes {
            let (here, inside) = (away[node].min(all), away[at(stacks.parent[node])].min(all));
            let charged = &mut charged[self.number[node]];
            *charged = (*charged).max(inside - here);
        }
        let share = charged
            .into_iter()
            .enumerate()
            .filter(|(_, handling)| *handling > 0);
        (all, share.collect())
    }
}
