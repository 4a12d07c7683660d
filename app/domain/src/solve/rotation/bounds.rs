//! What is still to come at least, after a turn with a given stack and hole, wherever the
//! lifters are: until the end of the last turn, and in handling.
//!
//! The table is worked out from the end of the course backwards. All ways to go on are compared,
//! plates and order together, but of the rests only two are kept in mind at a time: that of the
//! lifter who has just finished, and that of one other lifter, by asking how many turns come
//! before that lifter's next (in a lane for each answer, the last of them "or more"). Someone who
//! must rest for `w` and goes then ends the rotation no sooner than `w` and what follows
//! (`waits`), nor sooner than if no rest were needed. Two lifters do not go at once.
//!
//! Refuses: more entries than fit in memory; the caller asks [`Bounds::size`] first.
use super::Problem;
use super::lanes::{CLASSES, ENDS, GROUPS, HANDLING, Layout, Waits, Way};
use super::min_plus::{Cost, LANES, Lanes, MinPlus};
use super::model::Model;
use super::state_graph::StateGraph;
use super::steps::{Step, turn_before};
use alloc::vec;
use alloc::vec::Vec;

/// A place is about as much work as so many states.
const PLACE: usize = 50;

/// The table.
#[derive(Debug)]
pub(super) struct Bounds<C> {
    /// By place: where its rows are.
    rows: Vec<Vec<Row>>,
    /// By row, group of lanes, and stack.
    lanes: Vec<Lanes<C>>,
    /// By place and hole: for each lifter, from the start of the lifter's next turn to the end of
    /// all, by how many turns come before.
    waits: Vec<Vec<(u8, Vec<Waits<C>>)>>,
    /// By turn, the start last, and stack: the number of its bundle.
    bundles: Vec<Vec<u16>>,
    layout: Layout,
    unit: i64,
    /// Of the step considered last.
    ways: Vec<Lanes<C>>,
}

/// The stacks after a lifter's turn, with a hole set. Before the first turn, the lifter is one
/// past the last.
#[derive(Debug, Clone, Copy)]
pub(super) struct Row {
    pub lifter: usize,
    hole: u8,
    pub from: usize,
    /// Stacks or bundles of them.
    pub stacks: usize,
    turn: usize,
}

/// What can follow a turn, ready to be asked stack by stack.
#[derive(Debug, Clone, Copy)]
pub(super) struct After<'a, C> {
    lanes: &'a [Lanes<C>],
    bundles: &'a [u16],
    row: Row,
    waits: &'a [Waits<C>],
    layout: Layout,
    unit: i64,
}

impl<C: Cost> After<'_, C> {
    /// Least time from now to the end of the last turn.
    pub(super) fn ends(&self, stack: usize) -> i64 {
        self.lanes[self.bundle(stack)][ENDS].units() * self.unit
    }

    /// The least of that over all stacks.
    pub(super) fn soonest(&self) -> i64 {
        let stacks = self.lanes[..self.row.stacks].iter();
        stacks.map(|lanes| self.ns(lanes[ENDS])).min().unwrap_or(0)
    }

    /// Least handling still to come.
    pub(super) fn handling(&self, stack: usize) -> i64 {
        self.lanes[self.bundle(stack)][HANDLING].units() * self.unit
    }

    /// Least time from now to the end of the last turn if `lifter`, who has a turn to come and
    /// has not just finished one, must wait for `wait` more.
    pub(super) fn ends_with(&self, stack: usize, lifter: usize, wait: i64) -> i64 {
        let stack = self.bundle(stack);
        let option = |class: usize| {
            let lane = self.layout.lane(lifter, self.row.lifter, class);
            let lanes = &self.lanes[lane / LANES * self.row.stacks + stack];
            let rested = self.ns(lanes[lane % LANES]);
            rested.max(wait.saturating_add(self.ns(self.waits[lifter][class])))
        };
        (0..self.layout.classes).map(option).min().unwrap_or(0)
    }

    fn bundle(&self, stack: usize) -> usize {
        usize::from(self.bundles[stack])
    }

    /// Out of reach stays so.
    fn ns(&self, cost: C) -> i64 {
        cost.units().saturating_mul(self.unit)
    }
}

impl<C: Cost> Bounds<C> {
    /// How many groups of lanes a table has.
    pub(super) fn size(model: &Model, spread: &MinPlus<'_, C>, course: &StateGraph) -> usize {
        let sizes = course.places.iter().flat_map(|place| {
            let rows = place.rows.iter();
            rows.map(|row| spread.count(turn_before(model, place, row.0)))
        });
        sizes.sum::<usize>() * Layout::new(model).groups
    }

    /// How many groups of lanes are compared to work it out.
    pub(super) fn work(model: &Model, spread: &MinPlus<'_, C>, course: &StateGraph) -> usize {
        let count = |turn: usize| spread.count(turn);
        let steps = course.places.iter().flat_map(|place| {
            place.rows.iter().flat_map(move |row| {
                let before = count(turn_before(model, place, row.0));
                let next = (0..model.lifters()).filter(|&l| place.next[l].is_some());
                next.map(move |l| (before, count(StateGraph::turn(model, place, l))))
            })
        });
        let work = |(before, next): (usize, usize)| {
            // The tree has a few nodes for each stack, and two passes.
            if model.big_inside {
                4 * (before + next)
            } else {
                before * next
            }
        };
        steps.map(work).sum::<usize>() * Layout::new(model).groups
    }

    /// Works out the table, of `size` groups of lanes; `None` when `ponder` says to stop, as it does
    /// in [`super::allowance`].
    pub(super) fn new(
        model: &Model,
        spread: &mut MinPlus<'_, C>,
        course: &StateGraph,
        size: usize,
        ponder: &mut dyn FnMut(usize) -> bool,
    ) -> Option<Self> {
        let count = course.places.len();
        let mut bounds = Self {
            rows: vec![Vec::new(); count],
            lanes: Vec::with_capacity(size),
            waits: vec![Vec::new(); count],
            bundles: (0..=model.turns.len())
                .map(|t| spread.bundle_of(t))
                .collect(),
            layout: Layout::new(model),
            unit: model.unit,
            ways: Vec::new(),
        };
        for at in (0..count).rev() {
            if !ponder(PLACE) {
                return None;
            }
            bounds.open(model, spread, course, at);
            for hole in course.places[at].holes.clone() {
                for next in 0..model.lifters() {
                    if let Some(to) = course.places[at].next[next] {
                        let step = Step::new(model, course, at, to as usize, next, hole);
                        bounds.consider(model, spread, &step);
                    }
                }
            }
        }
        Some(bounds)
    }

    /// What can follow `lifter`'s turn that led to `place` and left `hole` set; `None` where the
    /// course has left it out.
    pub(super) fn after(&self, place: u32, lifter: usize, hole: u8) -> Option<After<'_, C>> {
        let place = place as usize;
        let row = self.row(place, lifter, hole)?;
        Some(After {
            lanes: &self.lanes[row.from..],
            bundles: &self.bundles[row.turn],
            row,
            waits: self.waits(place, hole),
            layout: self.layout,
            unit: self.unit,
        })
    }

    /// Adds the rows of a place, empty but at the end of the course.
    fn open(&mut self, model: &Model, spread: &MinPlus<'_, C>, course: &StateGraph, at: usize) {
        let place = &course.places[at];
        let end = (0..model.lifters()).all(|l| usize::from(place.done[l]) == model.count(l));
        for &hole in &place.holes {
            let waits = vec![[C::FAR; CLASSES]; model.lifters()];
            self.waits[at].push((hole, waits));
        }
        for &(lifter, hole) in &place.rows {
            let turn = turn_before(model, place, lifter);
            let stacks = spread.count(turn);
            let from = self.lanes.len();
            self.rows[at].push(Row {
                lifter,
                hole,
                from,
                stacks,
                turn,
            });
            self.lanes
                .resize(from + stacks * self.layout.groups, [C::FAR; LANES]);
            if end {
                for lanes in &mut self.lanes[from..from + stacks] {
                    lanes[ENDS] = C::of(0);
                    lanes[HANDLING] = C::of(0);
                }
            }
        }
    }

    /// `None` where the course has left it out.
    fn row(&self, place: usize, lifter: usize, hole: u8) -> Option<Row> {
        let mut rows = self.rows[place].iter();
        rows.find(|r| r.lifter == lifter && r.hole == hole).copied()
    }

    fn waits(&self, place: usize, hole: u8) -> &[Waits<C>] {
        let found = self.waits[place].iter().find(|(h, _)| *h == hole);
        &found.expect("the course knows which holes may be set").1
    }

    /// Takes into account that the turn of `step` may come next.
    fn consider(&mut self, model: &Model, spread: &mut MinPlus<'_, C>, step: &Step<C>) {
        let Some(source) = self.row(step.to, step.next, step.hole_then) else {
            return;
        };
        let mut waits_then = [[C::FAR; CLASSES]; Problem::LIFTERS_LIMIT];
        let waits_then = &mut waits_then[..model.lifters()];
        waits_then.copy_from_slice(self.waits(step.to, step.hole_then));
        let groups = self.layout.groups;
        // What is known of later places comes before the rows of this one.
        let from = self.rows[step.at].first().map_or(0, |row| row.from);
        let (known, here) = self.lanes.split_at_mut(from);
        let source = &known[source.from..source.from + source.stacks * groups];
        let group = |g: usize| {
            let stacks = source.len() / groups;
            &source[g * stacks..(g + 1) * stacks]
        };
        let mut least = [[C::FAR; LANES]; GROUPS];
        for (g, least) in least[..groups].iter_mut().enumerate() {
            *least = least_of(group(g));
        }
        for row in self.rows[step.at]
            .iter()
            .filter(|row| row.hole == step.hole)
        {
            self.ways.clear();
            for g in 0..groups {
                spread.least((row.turn, step.turn), step.change, group(g), &mut self.ways);
            }
            let way = Way {
                step,
                row: Row {
                    from: row.from - from,
                    ..*row
                },
                least: &least,
                waits_then,
                layout: self.layout,
            };
            for stack in 0..row.stacks {
                if self.layout.apart {
                    way.note(&self.ways, here, stack);
                } else {
                    let ways = &self.ways;
                    let at = |lane: usize| ways[lane / LANES * row.stacks + stack][lane % LANES];
                    consider_stack(model, &way, here, stack, at);
                }
            }
        }
        self.consider_waits(step, least[0][ENDS], waits_then);
    }

    /// From the start of a lifter's next turn to the end of all.
    fn consider_waits(&mut self, step: &Step<C>, least: C, waits_then: &[Waits<C>]) {
        let mut here = self.waits[step.at]
            .iter_mut()
            .filter(|(hole, _)| *hole == step.hole);
        let (_, waits) = here.next().expect("a hole of the place");
        waits[step.next][0] = (least + step.lasts).min(C::FAR);
        for (lifter, then) in waits_then.iter().enumerate() {
            if lifter != step.next {
                for (class, &then) in then[..self.layout.classes].iter().enumerate() {
                    let here = &mut waits[lifter][(class + 1).min(self.layout.classes - 1)];
                    *here = (*here).min(then);
                }
            }
        }
    }
}

/// One stack of a row: `at` gives the least of the way to the next turn and what the lane
/// says from there.
fn consider_stack<C: Cost>(
    model: &Model,
    way: &Way<'_, C>,
    lanes: &mut [Lanes<C>],
    stack: usize,
    at: impl Fn(usize) -> C,
) {
    let (step, row) = (way.step, way.row);
    let again = row.lifter == step.next;
    // Whoever goes twice in a row has to rest in between.
    let timed = |lane: usize| {
        let loaded = at(lane) + step.hole_change;
        let least = way.least[lane / LANES][lane % LANES];
        let rested = if again { step.rest + least } else { loaded };
        (loaded.max(rested) + step.lasts).min(C::FAR)
    };
    let (layout, classes) = (way.layout, way.layout.classes);
    let rest = step.rests.get(row.lifter).copied().flatten();
    let rest = rest.filter(|_| !again);
    // By class: if the lifter who has just finished goes then.
    let mut own = [C::FAR; CLASSES];
    for (class, own) in own[..classes].iter_mut().enumerate() {
        *own = rest.map_or(C::of(0), |rest| {
            let wait = rest + way.waits_then[row.lifter][class];
            timed(layout.lane(row.lifter, step.next, class))
                .max(wait)
                .min(C::FAR)
        });
    }
    let all = timed(ENDS);
    let least = own[..classes].iter().min().copied().unwrap_or(C::FAR);
    let ends = least.max(all);
    // By class: the same if someone else goes then, so that this lifter does not.
    let mut without = [ends; CLASSES];
    for (class, without) in without[..classes - 1].iter_mut().enumerate() {
        let others = own[..classes].iter().enumerate();
        let others = others.filter(|(at, _)| *at != class).map(|(_, own)| *own);
        *without = others.min().unwrap_or(C::FAR).max(all);
    }
    let place = |lane: usize| row.from + lane / LANES * row.stacks + stack;
    let mut note = |lane: usize, value: C| {
        let lane_here = &mut lanes[place(lane)][lane % LANES];
        *lane_here = (*lane_here).min(value);
    };
    note(ENDS, ends);
    note(HANDLING, at(HANDLING).min(C::FAR));
    if row.lifter == model.lifters() {
        return;
    }
    for lifter in (0..model.lifters()).filter(|&l| l != row.lifter) {
        let here = |class: usize| layout.lane(lifter, row.lifter, class);
        if lifter == step.next {
            note(here(0), ends);
        } else if step.rests[lifter].is_some() {
            for (class, &ends) in without[..classes].iter().enumerate() {
                let then = (class + 1).min(classes - 1);
                let there = layout.lane(lifter, step.next, class);
                note(here(then), timed(there).max(ends));
            }
        }
    }
}
fn least_of<C: Cost>(group: &[Lanes<C>]) -> Lanes<C> {
    group.iter().fold([C::FAR; LANES], |mut least, lanes| {
        for (least, lane) in least.iter_mut().zip(lanes) {
            *least = (*least).min(*lane);
        }
        least
    })
}
