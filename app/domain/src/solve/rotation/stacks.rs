//! All stacks that serve some turn, as a tree: a stack hangs below the stack without its
//! outermost plate.
//!
//! With big inside the tree holds the stacks themselves. In any order it holds sets of plates,
//! each once, heaviest first; how they lie is the `any_order` bars' business.
//!
//! Refuses: growing beyond a limit. What would not fit is stood for by a stub: a node that says
//! "something further out from here", so that bounds stay bounds.
use super::model::{Model, Want};
use alloc::collections::BTreeSet;
use alloc::vec;
use alloc::vec::Vec;

/// The tree. Nodes are numbered so that all below a node directly follow it; 0 is the empty bar.
#[derive(Debug, Default)]
pub(super) struct Stacks {
    /// The stack without its outermost plate.
    pub parent: Vec<u32>,
    /// The outermost plate.
    pub kind: Vec<u8>,
    /// Handling of all plates, nanoseconds.
    pub handling: Vec<i64>,
    /// Bar, collars and plates, nanograms.
    pub load: Vec<i64>,
    /// Diameter of the largest plate, nanometres.
    pub largest: Vec<i64>,
    /// One past the last node below.
    pub end: Vec<u32>,
    /// The deepest stack inside this one that is light enough for a hole change.
    pub light: Vec<u32>,
    /// Whether what lies further out was left out.
    pub stub: Vec<bool>,
    /// For each turn, the nodes that serve it, rising.
    pub serving: Vec<Vec<u32>>,
    /// What stands on the bar at the start.
    pub start: u32,
}

/// Nodes that may be looked at while a tree is built.
const VISITS_LIMIT: usize = 300_000;

impl Stacks {
    /// Builds the largest tree of at most `limit` nodes: stacks that waste the least handling
    /// are the last to be left out, and one for each turn stays in any case. `None` when some
    /// turn has no stack.
    pub(super) fn new(model: &Model, limit: usize) -> Option<Self> {
        let reach = reach(model);
        let stay = staying(model, &reach);
        let typical = model.kinds.iter().map(|k| k.handling).max().unwrap_or(0);
        let build = |waste: i128, plates: usize, visits: usize| {
            Builder::new(model, &reach, waste, plates).build(&stay, visits)
        };
        for plates in [usize::MAX, 12, 8] {
            for quarters in [i128::MAX, 48, 32, 24, 16, 12, 8, 6, 4, 2, 1, 0] {
                let waste = quarters.saturating_mul(i128::from(typical)) / 4;
                let tree = build(waste, plates, VISITS_LIMIT);
                if let Some(tree) = tree.filter(|tree| tree.parent.len() <= limit) {
                    return Some(tree).filter(|tree| tree.serves_all(model));
                }
            }
        }
        // One stack for each turn, whatever the limit.
        build(0, 0, usize::MAX).filter(|tree| tree.serves_all(model))
    }

    /// Whether each turn has a stack that is not a mere stub.
    pub(super) fn serves_all(&self, model: &Model) -> bool {
        let turns = model.turns.iter().zip(&self.serving);
        let real = |turn: &Want, node: &u32| self.serves(*node, turn);
        turns
            .into_iter()
            .all(|(turn, nodes)| nodes.iter().any(|node| real(turn, node)))
    }

    /// Whether a node's own stack serves a turn.
    pub(super) fn serves(&self, node: u32, turn: &Want) -> bool {
        turn.serves(self.load[at(node)], self.largest[at(node)])
    }

    /// The plates of a node, inside to outside.
    pub(super) fn plates(&self, node: u32) -> Vec<u8> {
        let mut plates = Vec::new();
        let mut node = at(node);
        while node != 0 {
            plates.push(self.kind[node]);
            node = at(self.parent[node]);
        }
        plates.reverse();
        plates
    }

    /// What two stacks have in common from the inside.
    pub(super) fn common(&self, a: u32, b: u32) -> u32 {
        let (mut a, mut b) = (a, b);
        while a != b {
            if a > b {
                a = self.parent[at(a)];
            } else {
                b = self.parent[at(b)];
            }
        }
        a
    }

    /// Handling from one stack to another, by way of a stack that is light if there is a
    /// `change` of the hole.
    pub(super) fn apart(&self, a: u32, b: u32, change: bool) -> i64 {
        let mut common = self.common(a, b);
        if change {
            common = self.light[at(common)];
        }
        self.handling[at(a)] + self.handling[at(b)] - 2 * self.handling[at(common)]
    }

    fn push(&mut self, model: &Model, parent: u32, kind: u8) {
        let (above, added) = (at(parent), model.kinds[usize::from(kind)]);
        let node = u32::try_from(self.parent.len()).expect("within the limit of visits");
        let load = self.load[above] + 2 * added.mass;
        self.parent.push(parent);
        self.kind.push(kind);
        self.handling.push(self.handling[above] + added.handling);
        self.load.push(load);
        self.largest.push(self.largest[above].max(added.diameter));
        self.end.push(node + 1);
        self.stub.push(false);
        let inside = self.light[above];
        self.light
            .push(if model.light(load) { node } else { inside });
    }

    fn pop(&mut self) {
        self.parent.pop();
        self.kind.pop();
        self.handling.pop();
        self.load.pop();
        self.largest.pop();
        self.end.pop();
        self.stub.pop();
        self.light.pop();
    }
}

/// A node's number as a place.
pub(super) fn at(node: u32) -> usize {
    node as usize
}

/// A stack to stay, with its number.
type Path<'a> = (usize, &'a Vec<u8>);

/// By kind: masses that plates from there on can add, if they could be listed.
type Reach = Vec<Option<Vec<i64>>>;

struct Builder<'a> {
    model: &'a Model,
    tree: Stacks,
    left: Vec<u16>,
    /// Handling may exceed what the quickest plates would take by this, times `pace.1`.
    waste: i128,
    /// Handling and mass of the kind that is quickest for its mass.
    pace: (i64, i64),
    plates: usize,
    visits: usize,
    visits_limit: usize,
    reach: &'a Reach,
    most: i64,
}

impl<'a> Builder<'a> {
    fn new(model: &'a Model, reach: &'a Reach, waste: i128, plates: usize) -> Self {
        let quickest = model.kinds.iter().min_by(|a, b| {
            let of = |k: &super::model::Kind, other: &super::model::Kind| {
                i128::from(k.handling) * i128::from(other.mass)
            };
            of(a, b).cmp(&of(b, a))
        });
        let pace = quickest.map_or((0, 1), |k| (k.handling, k.mass));
        Self {
            model,
            tree: Stacks::default(),
            left: model.kinds.iter().map(|k| k.pairs).collect(),
            waste: waste.saturating_mul(i128::from(pace.1)),
            pace,
            plates,
            visits: 0,
            visits_limit: 0,
            reach,
            most: model.turns.iter().map(|t| t.high).max().unwrap_or(0),
        }
    }

    /// The tree, or `None` when it takes more visits than allowed. The stacks to `stay` are not
    /// left out; the start's comes first.
    fn build(mut self, stay: &[Vec<u8>], visits_limit: usize) -> Option<Stacks> {
        self.visits_limit = visits_limit;
        let model = self.model;
        self.tree.parent.push(0);
        self.tree.kind.push(u8::MAX);
        self.tree.handling.push(0);
        self.tree.load.push(model.bar);
        self.tree.largest.push(0);
        self.tree.end.push(1);
        self.tree.light.push(0);
        self.tree.stub.push(false);
        let paths: Vec<Path<'_>> = stay.iter().enumerate().collect();
        self.grow(0, 0, 0, &paths)?;
        let mut tree = self.tree;
        let turns = model.turns.iter();
        tree.serving = turns.map(|turn| serving(model, &tree, turn)).collect();
        Some(tree)
    }

    /// Adds all below `node`. Of the stacks to stay, `paths` has those that lead on from here.
    fn grow(&mut self, node: u32, length: i64, plates: usize, paths: &[Path<'_>]) -> Option<()> {
        self.visits += 1;
        if self.visits > self.visits_limit {
            return None;
        }
        let starts = |(number, path): &&Path<'_>| *number == 0 && path.len() == plates;
        if paths.iter().any(|path| starts(&path)) {
            self.tree.start = node;
        }
        let cut = self.cut(node, plates);
        for (kind, plate) in self.model.kinds.iter().enumerate() {
            let next = u8::try_from(kind).expect("at most 32 kinds");
            let leads_on = |path: &&Path<'_>| path.1.get(plates) == Some(&next);
            let paths: Vec<Path<'_>> = paths.iter().filter(leads_on).copied().collect();
            let long = length.saturating_add(plate.thickness);
            if self.left[kind] == 0 || long > self.model.sleeve || !self.may_follow(node, next) {
                continue;
            }
            let load = self.tree.load[at(node)] + 2 * plate.mass;
            if paths.is_empty() && (load > self.most || !self.leads_somewhere(load, kind)) {
                continue;
            }
            if paths.is_empty() && cut {
                self.tree.stub[at(node)] = true;
                continue;
            }
            let child = u32::try_from(self.tree.parent.len()).expect("within the limit of visits");
            self.tree.push(self.model, node, next);
            self.left[kind] -= 1;
            let grown = self.grow(child, long, plates + 1, &paths);
            self.left[kind] += 1;
            grown?;
            let leaf = self.tree.parent.len() == at(child) + 1;
            let idle = !self.tree.stub[at(child)] && !self.serves(child);
            if leaf && idle && paths.is_empty() {
                self.tree.pop();
            }
        }
        self.tree.end[at(node)] = u32::try_from(self.tree.parent.len()).expect("within the limit");
        Some(())
    }

    fn may_follow(&self, node: u32, next: u8) -> bool {
        let last = self.tree.kind[at(node)];
        if node == 0 {
            true
        } else if self.model.big_inside {
            let mass = |k: u8| self.model.kinds[usize::from(k)].mass;
            mass(next) <= mass(last)
        } else {
            next >= last
        }
    }

    fn cut(&self, node: u32, plates: usize) -> bool {
        let mass = (self.tree.load[at(node)] - self.model.bar) / 2;
        let handling = i128::from(self.tree.handling[at(node)]) * i128::from(self.pace.1);
        let wasted = handling - i128::from(mass) * i128::from(self.pace.0);
        plates >= self.plates || wasted > self.waste
    }

    fn serves(&self, node: u32) -> bool {
        let mut turns = self.model.turns.iter();
        turns.any(|turn| self.tree.serves(node, turn))
    }

    /// Whether plates from `kind` on may bring `load` to what some turn asks for.
    fn leads_somewhere(&self, load: i64, kind: usize) -> bool {
        let mass = self.model.kinds[kind].mass;
        let from = self.model.kinds.partition_point(|k| k.mass > mass);
        self.model.turns.iter().any(|turn| {
            let Some(sums) = &self.reach[from] else {
                return turn.high >= load;
            };
            let needed = turn.low - load;
            let next = sums.partition_point(|&sum| 2 * sum < needed);
            sums.get(next)
                .is_some_and(|sum| load + 2 * sum <= turn.high)
        })
    }
}

/// Sums of one side that are worth listing.
const REACH_LIMIT: usize = 50_000;

/// For each kind, the sums of that and all lighter kinds.
fn reach(model: &Model) -> Reach {
    let most = model.turns.iter().map(|t| t.high).max().unwrap_or(0) - model.bar;
    let mut sums = Some(BTreeSet::from([0]));
    let mut reach = vec![None; model.kinds.len()];
    for (at, kind) in model.kinds.iter().enumerate().rev() {
        for _ in 0..kind.pairs {
            let Some(before) = &sums else { break };
            let more = before.iter().map(|sum| sum + kind.mass);
            let more = more.filter(|sum| 2 * sum <= most);
            let all: BTreeSet<i64> = before.iter().copied().chain(more).collect();
            if all.len() == before.len() {
                break;
            }
            sums = Some(all).filter(|all| all.len() <= REACH_LIMIT);
        }
        reach[at] = sums.as_ref().map(|sums| sums.iter().copied().collect());
    }
    reach
}

/// The start's stack, and one for each turn that has any and for which one is soon found.
fn staying(model: &Model, reach: &Reach) -> Vec<Vec<u8>> {
    let mut start = model.on_bar.clone();
    if !model.big_inside {
        start.sort_unstable();
    }
    let mut stay = vec![start];
    for turn in &model.turns {
        let serves = |stack: &Vec<u8>| turn.serves(model.load(stack), model.largest(stack));
        if !stay[1..].iter().any(serves) {
            let (mut stack, mut tries) = (Vec::new(), VISITS_LIMIT);
            if find(model, reach, turn, (0, 0), &mut stack, &mut tries) {
                stay.push(stack);
            }
        }
    }
    stay
}

/// Fills `stack` up with plates from kind `from` on until it serves, heaviest first.
fn find(
    model: &Model,
    reach: &Reach,
    turn: &Want,
    (from, length): (usize, i64),
    stack: &mut Vec<u8>,
    tries: &mut usize,
) -> bool {
    let load = model.load(stack);
    if turn.serves(load, model.largest(stack)) {
        return true;
    }
    let Some(kind) = model.kinds.get(from) else {
        return false;
    };
    *tries = tries.saturating_sub(1);
    let reachable = reach[from].as_ref().is_none_or(|sums| {
        let next = sums.partition_point(|&sum| load + 2 * sum < turn.low);
        sums.get(next)
            .is_some_and(|sum| load + 2 * sum <= turn.high)
    });
    if !reachable || *tries == 0 {
        return false;
    }
    let light = (turn.high - load).max(0) / (2 * kind.mass);
    let short = (model.sleeve - length).checked_div(kind.thickness);
    let most = light
        .min(i64::from(kind.pairs))
        .min(short.unwrap_or(i64::MAX))
        .max(0);
    let inside = stack.len();
    for count in (0..=most).rev() {
        let next = u8::try_from(from).expect("at most 32 kinds");
        stack.extend((0..count).map(|_| next));
        let long = length + count * kind.thickness;
        if find(model, reach, turn, (from + 1, long), stack, tries) {
            return true;
        }
        stack.truncate(inside);
    }
    false
}

/// The nodes that serve a turn: by their own load, or as stubs for something further out.
fn serving(model: &Model, tree: &Stacks, turn: &Want) -> Vec<u32> {
    let lightest = model.kinds.iter().map(|k| k.mass).min().unwrap_or(0);
    let nodes = 0..u32::try_from(tree.load.len()).expect("within the limit");
    let serves = |node: &u32| {
        let load = tree.load[at(*node)];
        let further = tree.stub[at(*node)] && load + 2 * lightest <= turn.high;
        tree.serves(*node, turn) || further
    };
    nodes.filter(serves).collect()
}
