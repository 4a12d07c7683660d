//! What is still to come at least, all rests kept in mind at once.
//!
//! Every way to go on ends no sooner than some fixed time from now, and no sooner than some fixed
//! time after each lifter's next turn starts. Ways that are alike in this share a shape: the least
//! of each of these figures. Where there are too many shapes, the nearest are merged, figure by
//! figure to the lesser, so that each way still has a shape that says no more than is true. Of
//! each shape the least handling is known too.
//!
//! Ways that cannot end by the end of the best plan known then are left out. Plates are known by
//! their sets alone, as in `bounds`.
//!
//! Refuses: ways that end later than the best plan did when the table was worked out.
use super::Problem;
use super::bounds::Bounds;
use super::clocks::{Clock, clocks};
use super::min_plus::{Cost, LANES, Lanes, MinPlus};
use super::model::Model;
use super::state_graph::{StateGraph, Times};
use super::steps::{Step, turn_before};
use super::ways::{Coming, Ways};
use alloc::vec;
use alloc::vec::Vec;

/// Bytes that a table takes before its rows get only as many shapes as there are lanes.
const BYTES_LIMIT: usize = 64 << 20;
/// So many ways with a stack are as much work as one state.
const PAIRS: usize = 64;

/// The table.
#[derive(Debug)]
pub(super) struct Profiles<C> {
    /// By place.
    rows: Vec<Vec<Row<C>>>,
}

/// What may follow a lifter's turn, with a hole set.
#[derive(Debug)]
pub(super) struct Row<C> {
    lifter: usize,
    hole: u8,
    /// By shape.
    coming: Vec<Coming<C>>,
    /// The same by lifter and group of lanes, a lane for each shape.
    starts: Vec<Lanes<C>>,
    /// By group and stack: from now to the end.
    ends: Vec<Lanes<C>>,
    /// By group and stack.
    handling: Vec<Lanes<C>>,
    stacks: usize,
}

impl<C: Cost> Row<C> {
    /// At least so many units of time to the end, and so many of handling, of ways that end within
    /// `room` units, if each lifter has to wait for `waits` units.
    pub(super) fn least(&self, stack: usize, waits: &Coming<C>, room: i64) -> (C, C) {
        let mut least = (C::FAR, C::FAR);
        if room < 0 {
            return least;
        }
        let room = C::of(room.min(C::FAR.units() - 1));
        let groups = self.groups();
        for group in 0..groups {
            let at = group * self.stacks + stack;
            let mut all = self.ends[at];
            for (starts, &wait) in self.starts.chunks_exact(groups).zip(waits) {
                for (all, &coming) in all.iter_mut().zip(&starts[group]) {
                    *all = (*all).max(coming.plus(wait));
                }
            }
            for (&end, &handling) in all.iter().zip(&self.handling[at]) {
                if end <= room {
                    least = (least.0.min(end), least.1.min(handling));
                }
            }
        }
        least
    }

    fn groups(&self) -> usize {
        self.coming.len().div_ceil(LANES)
    }
}

impl<C: Cost> Profiles<C> {
    /// Works out the table, for plans that end by `ends`, with at most `most` shapes a row; `None`
    /// when `ponder` says to stop, as it does in [`super::allowance`].
    pub(super) fn new(
        model: &Model,
        spread: &mut MinPlus<'_, C>,
        bounds: &Bounds<C>,
        course: &StateGraph,
        (ends, most): (i64, usize),
        mut ponder: impl FnMut(usize) -> bool,
    ) -> Option<Self> {
        let times = Times::new(model);
        let clocks = clocks(model, spread, course, &times, &mut ponder)?;
        let mut bytes = 0;
        let mut shapes = Self { rows: Vec::new() };
        shapes.rows.resize_with(course.places.len(), Vec::new);
        let whole = Whole {
            model,
            bounds,
            course,
            times: &times,
            ends,
        };
        for at in (0..course.places.len()).rev() {
            for clock in &clocks[at] {
                let (ways, count) = shapes.ways(&whole, spread, at, clock);
                if !ponder(ways.least.len() / PAIRS + 1) {
                    return None;
                }
                let most = if bytes < BYTES_LIMIT { most } else { LANES };
                let row = Row::new(model, (clock.lifter, clock.hole), &ways, count, most);
                bytes += size_of::<Lanes<C>>() * (row.ends.len() + row.handling.len());
                shapes.rows[at].push(row);
            }
        }
        Some(shapes)
    }

    /// All ways to go on after a turn that led to place `at`, and with how many stacks.
    fn ways(
        &self,
        whole: &Whole<'_, C>,
        spread: &mut MinPlus<'_, C>,
        at: usize,
        clock: &Clock,
    ) -> (Ways<C>, usize) {
        let (model, ends) = (whole.model, whole.ends);
        let place = &whole.course.places[at];
        let last = turn_before(model, place, clock.lifter);
        let count = spread.before(last).len();
        let mut ways = Ways::new();
        if place.next.iter().all(Option::is_none) {
            let none = [C::of(0); Problem::LIFTERS_LIMIT];
            ways.push(none, &vec![(C::of(0), C::of(0)); count]);
            return (ways, count);
        }
        let number = u32::try_from(at).expect("a place");
        let Some(after) = whole.bounds.after(number, clock.lifter, clock.hole) else {
            return (ways, count);
        };
        let soonest = (0..count).map(|stack| after.ends(stack)).min();
        if clock.done.saturating_add(soonest.unwrap_or(0)) > ends {
            return (ways, count);
        }
        let room = (ends - clock.done) / model.unit;
        let room = C::of(room.min(C::FAR.units() - 1));
        for (next, to) in place.next.iter().enumerate() {
            let Some(to) = to.map(|to| to as usize) else {
                continue;
            };
            let step = Step::new(model, whole.course, at, to, next, clock.hole);
            let source = self.row(to, next, step.hole_then);
            let before = (clock.lifter, last, count);
            source.lead_back(spread, &step, before, room, &mut ways);
        }
        // Nobody's turn may start too late for what follows it.
        let in_time = |coming: &Coming<C>, lifter: usize| {
            let done = usize::from(place.done[lifter]);
            let through = lifter == clock.lifter || done == model.count(lifter);
            let row = coming[lifter].units() * model.unit;
            through || whole.times.rested(model, lifter, done) + row <= ends
        };
        let all = 0..model.lifters();
        ways.keep(|coming| all.clone().all(|l| in_time(coming, l)), count);
        (ways, count)
    }

    /// What can follow `lifter`'s turn that led to `place` and left `hole` set.
    pub(super) fn row(&self, place: usize, lifter: usize, hole: u8) -> &Row<C> {
        let mut rows = self.rows[place].iter();
        let found = rows.find(|r| r.lifter == lifter && r.hole == hole);
        found.expect("the course knows which holes may be set")
    }
}

/// What the table is worked out from.
struct Whole<'a, C> {
    model: &'a Model,
    bounds: &'a Bounds<C>,
    course: &'a StateGraph,
    times: &'a Times,
    /// Plans that end later are left out, nanoseconds.
    ends: i64,
}

impl<C: Cost> Row<C> {
    /// Adds what comes of this row when it follows by `step` on `last`, `lifter`'s turn, which
    /// leaves `room` to the end.
    fn lead_back(
        &self,
        spread: &mut MinPlus<'_, C>,
        step: &Step<C>,
        (lifter, last, count): (usize, usize, usize),
        room: C,
        ways: &mut Ways<C>,
    ) {
        let mut lanes = Vec::new();
        for group in 0..self.groups() {
            let stacks = group * self.stacks..(group + 1) * self.stacks;
            for next in [&self.ends[stacks.clone()], &self.handling[stacks]] {
                spread.least((last, step.turn), step.change, next, &mut lanes);
            }
        }
        let again = lifter == step.next;
        let rest = step.rests.get(lifter).copied().flatten().filter(|_| !again);
        let mut least = Vec::with_capacity(count);
        for (shape, coming) in self.coming.iter().enumerate() {
            let (group, lane) = (shape / LANES, shape % LANES);
            let ends = self.ends[group * self.stacks..].iter().take(self.stacks);
            let soonest = ends.map(|lanes| lanes[lane]).min();
            let soonest = soonest.unwrap_or(C::FAR);
            // Nobody goes on before the rest is over.
            let own = rest.map_or(C::of(0), |rest| rest.plus(coming[lifter]));
            least.clear();
            least.extend((0..count).map(|stack| {
                let at = |kind: usize| lanes[(2 * group + kind) * count + stack][lane];
                let loaded = at(0).plus(step.hole_change);
                let rested = if again {
                    step.rest.plus(soonest)
                } else {
                    loaded
                };
                let ends = loaded.max(rested).plus(step.lasts).max(own);
                if ends > room {
                    (C::FAR, C::FAR)
                } else {
                    (ends, at(1).min(C::FAR))
                }
            }));
            let mut coming = *coming;
            coming[step.next] = soonest.plus(step.lasts);
            if let Some(own) = coming.get_mut(lifter) {
                *own = C::of(0);
            }
            ways.push(coming, &least);
        }
    }

    /// A row of `ways`, merged to as many shapes as there may be.
    fn new(
        model: &Model,
        (lifter, hole): (usize, u8),
        ways: &Ways<C>,
        stacks: usize,
        most: usize,
    ) -> Self {
        let near = ways.shapes(model.lifters(), most);
        let shapes = near.iter().max().map_or(0, |most| most + 1);
        let groups = shapes.div_ceil(LANES);
        let mut row = Self {
            lifter,
            hole,
            coming: vec![[C::FAR; Problem::LIFTERS_LIMIT]; shapes],
            starts: vec![[C::FAR; LANES]; model.lifters() * groups],
            ends: vec![[C::FAR; LANES]; stacks * groups],
            handling: vec![[C::FAR; LANES]; stacks * groups],
            stacks,
        };
        for (way, &shape) in near.iter().enumerate() {
            let (group, lane) = (shape / LANES, shape % LANES);
            for (coming, &way) in row.coming[shape].iter_mut().zip(&ways.coming[way]) {
                *coming = (*coming).min(way);
            }
            let least = &ways.least[way * stacks..(way + 1) * stacks];
            for (stack, &(ends, handling)) in least.iter().enumerate() {
                let lane_of = |all: &mut [Lanes<C>], value: C| {
                    let here = &mut all[group * stacks + stack][lane];
                    *here = (*here).min(value);
                };
                lane_of(&mut row.ends, ends);
                lane_of(&mut row.handling, handling);
            }
        }
        for (shape, coming) in row.coming.iter().enumerate() {
            for (starts, &coming) in row.starts.chunks_exact_mut(groups).zip(coming) {
                starts[shape / LANES][shape % LANES] = coming;
            }
        }
        row
    }
}
