//! What is still to come at least, after a turn with a given stack and hole, wherever the
//! lifters are: until the end of the last turn, and in handling.
//!
//! The table is worked out from the end of the course backwards. All ways to go on are compared,
//! plates and order together, but of the rests only one is kept in mind at a time: that of the
//! lifter who has just finished (in `ends`), or that of one other lifter, by asking whether that
//! lifter goes next or someone else goes before (in `next` and `later`). Someone who must rest
//! for `w` and goes next ends the rotation no sooner than `w` and what follows (`waits`), nor
//! sooner than if no rest were needed.
//!
//! Refuses: more entries than fit in memory; the caller asks [`Bounds::size`] first.
use super::course::{Course, Place};
use super::model::{Model, hole_after};
use super::spread::{Cost, LANES, Lanes, Spread};
use super::stacks::Stacks;
use alloc::vec;
use alloc::vec::Vec;

/// Lane of the least time to the end of the last turn.
const ENDS: usize = 0;
/// Lane of the least handling.
const HANDLING: usize = 1;

/// The table.
#[derive(Debug)]
pub(super) struct Bounds<C> {
    /// By place: where its rows are.
    rows: Vec<Vec<Row>>,
    /// By row, group of lanes, and stack.
    lanes: Vec<Lanes<C>>,
    /// By place and hole: for each lifter, from the start of the next turn to the end of all, if
    /// the lifter goes next, and if later.
    waits: Vec<Vec<(u8, Vec<[C; 2]>)>>,
    unit: i64,
}

/// The stacks after a lifter's turn, with a hole set. Before the first turn, the lifter is one
/// past the last.
#[derive(Debug, Clone, Copy)]
struct Row {
    lifter: usize,
    hole: u8,
    from: usize,
    stacks: usize,
}

/// What can follow a turn, ready to be asked stack by stack.
#[derive(Debug, Clone, Copy)]
pub(super) struct After<'a, C> {
    lanes: &'a [Lanes<C>],
    row: Row,
    waits: &'a [[C; 2]],
    unit: i64,
}

impl<C: Cost> After<'_, C> {
    /// Least time from now to the end of the last turn.
    pub(super) fn ends(&self, stack: usize) -> i64 {
        self.lanes[stack][ENDS].units() * self.unit
    }

    /// Least handling still to come.
    pub(super) fn handling(&self, stack: usize) -> i64 {
        self.lanes[stack][HANDLING].units() * self.unit
    }

    /// Least time from now to the end of the last turn if `lifter`, who has a turn to come and
    /// has not just finished one, must wait for `wait` more.
    pub(super) fn ends_with(&self, stack: usize, lifter: usize, wait: i64) -> i64 {
        let lane = lane_of(lifter, self.row.lifter);
        let lanes = &self.lanes[lane / LANES * self.row.stacks + stack];
        let option = |later: usize| {
            let rested = lanes[lane % LANES + later].units() * self.unit;
            rested.max(wait + self.waits[lifter][later].units() * self.unit)
        };
        option(0).min(option(1))
    }
}

/// First of the two lanes that keep `lifter` in mind after a turn of `last`.
fn lane_of(lifter: usize, last: usize) -> usize {
    2 + 2 * (lifter - usize::from(lifter > last))
}

/// Groups of lanes: two lanes for all, two for each lifter but the last.
fn groups(model: &Model) -> usize {
    (2 * model.lifters()).div_ceil(LANES)
}

impl<C: Cost> Bounds<C> {
    /// How many groups of lanes a table has.
    pub(super) fn size(model: &Model, stacks: &Stacks, course: &Course) -> usize {
        let sizes = course.places.iter().flat_map(|place| {
            let rows = rows_of(model, place);
            rows.into_iter().map(|(lifter, _)| {
                let turn = turn_before(model, place, lifter);
                stacks.serving.get(turn).map_or(1, Vec::len)
            })
        });
        sizes.sum::<usize>() * groups(model)
    }

    /// How many groups of lanes are compared to work it out.
    pub(super) fn work(model: &Model, stacks: &Stacks, course: &Course) -> usize {
        let count = |turn: usize| stacks.serving.get(turn).map_or(1, Vec::len);
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

    /// Works out the table.
    pub(super) fn new(
        model: &Model,
        spread: &mut Spread<'_, C>,
        stacks: &Stacks,
        course: &Course,
    ) -> Self {
        let count = course.places.len();
        let mut bounds = Self {
            rows: vec![Vec::new(); count],
            lanes: Vec::with_capacity(Self::size(model, stacks, course)),
            waits: vec![Vec::new(); count],
            unit: model.unit,
        };
        for at in (0..count).rev() {
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
        bounds
    }

    /// What can follow `lifter`'s turn that led to `place` and left `hole` set.
    pub(super) fn after(&self, place: u32, lifter: usize, hole: u8) -> After<'_, C> {
        let place = place as usize;
        let row = self.row(place, lifter, hole);
        After {
            lanes: &self.lanes[row.from..],
            row,
            waits: self.waits(place, hole),
            unit: self.unit,
        }
    }

    /// Adds the rows of a place, empty but at the end of the course.
    fn open(&mut self, model: &Model, spread: &Spread<'_, C>, course: &Course, at: usize) {
        let place = &course.places[at];
        let end = (0..model.lifters()).all(|l| usize::from(place.done[l]) == model.count(l));
        for &hole in &place.holes {
            let waits = vec![[C::FAR; 2]; model.lifters()];
            self.waits[at].push((hole, waits));
        }
        for (lifter, hole) in rows_of(model, place) {
            let stacks = spread.before(turn_before(model, place, lifter)).len();
            let from = self.lanes.len();
            self.rows[at].push(Row {
                lifter,
                hole,
                from,
                stacks,
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

    fn waits(&self, place: usize, hole: u8) -> &[[C; 2]] {
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
    fn consider_waits(&mut self, step: &Step<C>, least: C, waits_then: &[[C; 2]]) {
        let mut here = self.waits[step.at]
            .iter_mut()
            .filter(|(hole, _)| *hole == step.hole);
        let (_, waits) = here.next().expect("a hole of the place");
        waits[step.next][0] = (least + step.lasts).min(C::FAR);
        for (lifter, then) in waits_then.iter().enumerate() {
            if lifter != step.next {
                waits[lifter][1] = waits[lifter][1].min(then[0]).min(then[1]);
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
        let mut ends = timed(ENDS);
        if let Some(rest) = step
            .rests
            .get(row.lifter)
            .copied()
            .flatten()
            .filter(|_| !again)
        {
            let lane = lane_of(row.lifter, step.next);
            let option = |later: usize| {
                let wait = rest + way.waits_then[row.lifter][later];
                timed(lane + later).max(wait)
            };
            ends = ends.max(option(0).min(option(1))).min(C::FAR);
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
            let here = lane_of(lifter, row.lifter);
            if lifter == step.next {
                note(here, timed(ENDS));
            } else if step.rests[lifter].is_some() {
                let there = lane_of(lifter, step.next);
                note(here + 1, timed(there).min(timed(there + 1)));
            }
        }
    }
}

/// A turn that may come next at a place.
#[derive(Debug)]
struct Step<C> {
    at: usize,
    to: usize,
    next: usize,
    turn: usize,
    hole: u8,
    hole_then: u8,
    change: bool,
    hole_change: C,
    lasts: C,
    rest: C,
    /// By lifter: the rest before the turn that comes next for each, if there is one.
    rests: Vec<Option<C>>,
    /// By lifter: the turn done last.
    turns_before: Vec<usize>,
}

impl<C: Cost> Step<C> {
    fn new(model: &Model, course: &Course, at: usize, to: usize, next: usize, hole: u8) -> Self {
        let place = &course.places[at];
        let turn = Course::turn(model, place, next);
        let want = &model.turns[turn];
        let units = |ns: i64| C::of(ns / model.unit);
        let hole_then = hole_after(want.hole, hole);
        let rests = (0..model.lifters()).map(|lifter| {
            let left = usize::from(place.done[lifter]) < model.count(lifter);
            left.then(|| units(model.turns[Course::turn(model, place, lifter)].rest))
        });
        Self {
            at,
            to,
            next,
            turn,
            hole,
            hole_then,
            change: hole_then != hole,
            hole_change: units(if hole_then == hole {
                0
            } else {
                model.hole_change
            }),
            lasts: units(want.lasts),
            rest: units(want.rest),
            rests: rests.collect(),
            turns_before: (0..model.lifters())
                .map(|l| turn_before(model, place, l))
                .collect(),
        }
    }
}

/// How a row is led on by a step.
struct Way<'a, C> {
    step: &'a Step<C>,
    row: Row,
    least: &'a [Lanes<C>],
    waits_then: &'a [[C; 2]],
}

fn least_of<C: Cost>(group: &[Lanes<C>]) -> Lanes<C> {
    group.iter().fold([C::FAR; LANES], |mut least, lanes| {
        for (least, lane) in least.iter_mut().zip(lanes) {
            *least = (*least).min(*lane);
        }
        least
    })
}

/// The turn that a lifter did last; one past all turns when none was done yet.
fn turn_before(model: &Model, place: &Place, lifter: usize) -> usize {
    match place.done.get(lifter) {
        Some(&done) if done > 0 => model.first[lifter] + usize::from(done) - 1,
        _ => model.turns.len(),
    }
}

/// Who may have lifted last at a place, with which hole then set.
fn rows_of(model: &Model, place: &Place) -> Vec<(usize, u8)> {
    if place.done.iter().all(|&done| done == 0) {
        return vec![(model.lifters(), model.hole)];
    }
    let mut rows = Vec::new();
    for lifter in (0..model.lifters()).filter(|&l| place.before[l].is_some()) {
        let own = model.turns[turn_before(model, place, lifter)].hole;
        let holes = place
            .holes
            .iter()
            .filter(|&&hole| hole_after(own, hole) == hole);
        rows.extend(holes.map(|&hole| (lifter, hole)));
    }
    rows
}
