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
use super::course::Course;
use super::model::Model;
use super::spread::{Cost, LANES, Lanes, Spread};
use super::steps::{Step, rows_of, turn_before};
use alloc::vec;
use alloc::vec::Vec;

/// Lane of the least time to the end of the last turn.
const ENDS: usize = 0;
/// Lane of the least handling.
const HANDLING: usize = 1;

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
    classes: usize,
    unit: i64,
}

/// The stacks after a lifter's turn, with a hole set. Before the first turn, the lifter is one
/// past the last.
#[derive(Debug, Clone, Copy)]
struct Row {
    lifter: usize,
    hole: u8,
    from: usize,
    /// Stacks or bundles of them.
    stacks: usize,
    turn: usize,
}

/// What can follow a turn, ready to be asked stack by stack.
#[derive(Debug, Clone, Copy)]
pub(super) struct After<'a, C> {
    lanes: &'a [Lanes<C>],
    bundles: &'a [u16],
    row: Row,
    waits: &'a [Waits<C>],
    classes: usize,
    unit: i64,
}

impl<C: Cost> After<'_, C> {
    /// Least time from now to the end of the last turn.
    pub(super) fn ends(&self, stack: usize) -> i64 {
        self.lanes[self.bundle(stack)][ENDS].units() * self.unit
    }

    /// Least handling still to come.
    pub(super) fn handling(&self, stack: usize) -> i64 {
        self.lanes[self.bundle(stack)][HANDLING].units() * self.unit
    }

    /// Least time from now to the end of the last turn if `lifter`, who has a turn to come and
    /// has not just finished one, must wait for `wait` more.
    pub(super) fn ends_with(&self, stack: usize, lifter: usize, wait: i64) -> i64 {
        let first = lane_of(lifter, self.row.lifter, self.classes);
        let stack = self.bundle(stack);
        let option = |class: usize| {
            let lane = first + class;
            let lanes = &self.lanes[lane / LANES * self.row.stacks + stack];
            let rested = self.ns(lanes[lane % LANES]);
            rested.max(wait.saturating_add(self.ns(self.waits[lifter][class])))
        };
        (0..self.classes).map(option).min().unwrap_or(0)
    }

    fn bundle(&self, stack: usize) -> usize {
        usize::from(self.bundles[stack])
    }

    /// Out of reach stays so.
    fn ns(&self, cost: C) -> i64 {
        cost.units().saturating_mul(self.unit)
    }
}

/// At most so many classes are kept apart of when a lifter goes: next, after one other turn, after
/// two, and later.
const CLASSES: usize = 4;
/// By class: from the start of a lifter's next turn to the end of all.
type Waits<C> = [C; CLASSES];

/// First of the lanes that keep `lifter` in mind after a turn of `last`, one for each class.
fn lane_of(lifter: usize, last: usize, classes: usize) -> usize {
    2 + classes * (lifter - usize::from(lifter > last))
}

/// How many classes there is room for: one to three groups of lanes must do. There are two at
/// least, since "next" and "later" must be told apart.
fn classes(model: &Model) -> usize {
    let groups = match model.lifters() {
        0..=3 => 1,
        4..=8 => 2,
        _ => 3,
    };
    let others = model.lifters().saturating_sub(1).max(1);
    ((groups * LANES - 2) / others).min(CLASSES)
}

/// Groups of lanes: two lanes for all, and those for each lifter but the last.
fn groups(model: &Model) -> usize {
    let others = model.lifters().saturating_sub(1);
    (2 + classes(model) * others).div_ceil(LANES)
}

impl<C: Cost> Bounds<C> {
    /// How many groups of lanes a table has.
    pub(super) fn size(model: &Model, spread: &Spread<'_, C>, course: &Course) -> usize {
        let sizes = course.places.iter().flat_map(|place| {
            let rows = rows_of(model, place);
            rows.into_iter()
                .map(|(lifter, _)| spread.count(turn_before(model, place, lifter)))
        });
        sizes.sum::<usize>() * groups(model)
    }

    /// How many groups of lanes are compared to work it out.
    pub(super) fn work(model: &Model, spread: &Spread<'_, C>, course: &Course) -> usize {
        let count = |turn: usize| spread.count(turn);
        let steps = course.places.iter().flat_map(|place| {
            let rows = rows_of(model, place).into_iter();
            rows.flat_map(move |(last, _)| {
                let before = count(turn_before(model, place, last));
                let next = (0..model.lifters()).filter(|&l| place.next[l].is_some());
                next.map(move |l| (before, count(Course::turn(model, place, l))))
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
        steps.map(work).sum::<usize>() * groups(model)
    }

    /// Works out the table, of `size` groups of lanes; `None` when `ponder` says to stop, as it does
    /// in [`super::allowance`].
    pub(super) fn new(
        model: &Model,
        spread: &mut Spread<'_, C>,
        course: &Course,
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
            classes: classes(model),
            unit: model.unit,
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

    /// What can follow `lifter`'s turn that led to `place` and left `hole` set.
    pub(super) fn after(&self, place: u32, lifter: usize, hole: u8) -> After<'_, C> {
        let place = place as usize;
        let row = self.row(place, lifter, hole);
        After {
            lanes: &self.lanes[row.from..],
            bundles: &self.bundles[row.turn],
            row,
            waits: self.waits(place, hole),
            classes: self.classes,
            unit: self.unit,
        }
    }

    /// Adds the rows of a place, empty but at the end of the course.
    fn open(&mut self, model: &Model, spread: &Spread<'_, C>, course: &Course, at: usize) {
        let place = &course.places[at];
        let end = (0..model.lifters()).all(|l| usize::from(place.done[l]) == model.count(l));
        for &hole in &place.holes {
            let waits = vec![[C::FAR; CLASSES]; model.lifters()];
            self.waits[at].push((hole, waits));
        }
        for (lifter, hole) in rows_of(model, place) {
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
                .resize(from + stacks * groups(model), [C::FAR; LANES]);
            if end {
                for lanes in &mut self.lanes[from..from + stacks] {
                    lanes[ENDS] = C::of(0);
                    lanes[HANDLING] = C::of(0);
                }
            }
        }
    }

    fn row(&self, place: usize, lifter: usize, hole: u8) -> Row {
        let mut rows = self.rows[place].iter();
        let found = rows.find(|r| r.lifter == lifter && r.hole == hole);
        *found.expect("the course knows which holes may be set")
    }

    fn waits(&self, place: usize, hole: u8) -> &[Waits<C>] {
        let found = self.waits[place].iter().find(|(h, _)| *h == hole);
        &found.expect("the course knows which holes may be set").1
    }

    /// Takes into account that the turn of `step` may come next.
    fn consider(&mut self, model: &Model, spread: &mut Spread<'_, C>, step: &Step<C>) {
        let source = self.row(step.to, step.next, step.hole_then);
        let waits_then = self.waits(step.to, step.hole_then).to_vec();
        let groups = groups(model);
        let lanes = self.lanes[source.from..source.from + source.stacks * groups].to_vec();
        let group = |g: usize| &lanes[g * source.stacks..(g + 1) * source.stacks];
        let least: Vec<Lanes<C>> = (0..groups).map(|g| least_of(group(g))).collect();
        self.consider_waits(step, least[0][ENDS], &waits_then);
        let rows: Vec<Row> = self.rows[step.at].clone();
        let mut ways = Vec::new();
        for row in rows.into_iter().filter(|row| row.hole == step.hole) {
            let before = step.turns_before.get(row.lifter).copied();
            let before = before.unwrap_or(model.turns.len());
            ways.clear();
            for g in 0..groups {
                spread.least((before, step.turn), step.change, group(g), &mut ways);
            }
            let way = Way {
                step,
                row,
                least: &least,
                waits_then: &waits_then,
            };
            for stack in 0..row.stacks {
                let at = |lane: usize| ways[lane / LANES * row.stacks + stack][lane % LANES];
                self.consider_stack(model, &way, stack, at);
            }
        }
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
                for (class, &then) in then[..self.classes].iter().enumerate() {
                    let here = &mut waits[lifter][(class + 1).min(self.classes - 1)];
                    *here = (*here).min(then);
                }
            }
        }
    }

    /// One stack of a row: `at` gives the least of the way to the next turn and what the lane
    /// says from there.
    fn consider_stack(
        &mut self,
        model: &Model,
        way: &Way<'_, C>,
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
        let classes = self.classes;
        let rest = step.rests.get(row.lifter).copied().flatten();
        let rest = rest.filter(|_| !again);
        // By class: if the lifter who has just finished goes then.
        let mut own = [C::FAR; CLASSES];
        let first = lane_of(row.lifter, step.next, classes);
        for (class, own) in own[..classes].iter_mut().enumerate() {
            *own = rest.map_or(C::of(0), |rest| {
                let wait = rest + way.waits_then[row.lifter][class];
                timed(first + class).max(wait).min(C::FAR)
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
            let lane_here = &mut self.lanes[place(lane)][lane % LANES];
            *lane_here = (*lane_here).min(value);
        };
        note(ENDS, ends);
        note(HANDLING, at(HANDLING).min(C::FAR));
        if row.lifter == model.lifters() {
            return;
        }
        for lifter in (0..model.lifters()).filter(|&l| l != row.lifter) {
            let here = lane_of(lifter, row.lifter, classes);
            if lifter == step.next {
                note(here, ends);
            } else if step.rests[lifter].is_some() {
                let there = lane_of(lifter, step.next, classes);
                for (class, &ends) in without[..classes].iter().enumerate() {
                    let then = (class + 1).min(classes - 1);
                    note(here + then, timed(there + class).max(ends));
                }
            }
        }
    }
}

/// How a row is led on by a step.
struct Way<'a, C> {
    step: &'a Step<C>,
    row: Row,
    least: &'a [Lanes<C>],
    waits_then: &'a [Waits<C>],
}

fn least_of<C: Cost>(group: &[Lanes<C>]) -> Lanes<C> {
    group.iter().fold([C::FAR; LANES], |mut least, lanes| {
        for (least, lane) in least.iter_mut().zip(lanes) {
            *least = (*least).min(*lane);
        }
        least
    })
}
