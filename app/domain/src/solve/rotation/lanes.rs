//! The lanes of a row of bounds: which question each of them answers, and what a step makes of the
//! answers where there are many lifters.
use super::bounds::Row;
use super::min_plus::{Cost, LANES, Lanes};
use super::model::Model;
use super::steps::Step;

/// Lane of the least time to the end of the last turn.
pub(super) const ENDS: usize = 0;
/// Lane of the least handling.
pub(super) const HANDLING: usize = 1;
/// Lanes before those of the lifters.
const FIRST: usize = 2;
/// At most so many classes are kept apart of when a lifter goes: next, after one other turn, after
/// two, and later.
pub(super) const CLASSES: usize = 4;
/// Groups of lanes at most.
pub(super) const GROUPS: usize = 4;
/// By class: from the start of a lifter's next turn to the end of all.
pub(super) type Waits<C> = [C; CLASSES];

/// Where the lanes are.
#[derive(Debug, Clone, Copy)]
pub(super) struct Layout {
    /// So many classes there is room for. Two at least, since "next" and "later" must be told apart.
    pub classes: usize,
    /// Groups of lanes.
    pub groups: usize,
    /// Each class has groups of its own, and a lane for each lifter, the last one too: so all lanes
    /// of a group are worked out side by side. Otherwise lanes are saved, for few lifters.
    pub apart: bool,
}

impl Layout {
    /// Most lifters whose lanes are packed.
    const FEW: usize = 4;

    pub(super) fn new(model: &Model) -> Self {
        let lifters = model.lifters();
        let (groups, apart) = match lifters {
            0..=3 => (1, false),
            4..=Self::FEW => (2, false),
            _ => (2 * (lifters + FIRST).div_ceil(LANES), true),
        };
        let others = lifters.saturating_sub(1).max(1);
        let packed = ((groups * LANES - FIRST) / others).min(CLASSES);
        Self {
            classes: if apart { 2 } else { packed },
            groups,
            apart,
        }
    }

    /// The lane that keeps `lifter` in mind after a turn of `last`, if that lifter goes in `class`.
    pub(super) fn lane(self, lifter: usize, last: usize, class: usize) -> usize {
        if self.apart {
            class * self.span() * LANES + FIRST + lifter
        } else {
            FIRST + self.classes * (lifter - usize::from(lifter > last)) + class
        }
    }

    /// Groups of a class.
    fn span(self) -> usize {
        self.groups / self.classes
    }
}

/// How a row is led on by a step.
pub(super) struct Way<'a, C> {
    pub step: &'a Step<C>,
    pub row: Row,
    pub least: &'a [Lanes<C>],
    pub waits_then: &'a [Waits<C>],
    pub layout: Layout,
}

impl<C: Cost> Way<'_, C> {
    /// One stack of a row, in a layout with the classes apart: `ways` gives, by group and stack, the
    /// least of the way to the next turn and what the lane says from there.
    pub(super) fn note(&self, ways: &[Lanes<C>], lanes: &mut [Lanes<C>], stack: usize) {
        let (step, row, layout) = (self.step, self.row, self.layout);
        let span = layout.span();
        let again = row.lifter == step.next;
        let mut timed = [[C::FAR; LANES]; GROUPS];
        for (group, timed) in timed[..layout.groups].iter_mut().enumerate() {
            let way = &ways[group * row.stacks + stack];
            let least = &self.least[group];
            for ((timed, &way), &least) in timed.iter_mut().zip(way).zip(least) {
                let loaded = way.plus(step.hole_change);
                // Whoever goes twice in a row has to rest in between.
                let rested = if again { step.rest.plus(least) } else { loaded };
                *timed = loaded.max(rested).plus(step.lasts).min(C::FAR);
            }
        }
        // By class: if the lifter who has just finished goes then.
        let mut own = [C::of(0); 2];
        let rest = step.rests.get(row.lifter).copied().flatten();
        if let Some(rest) = rest.filter(|_| !again) {
            for (class, own) in own.iter_mut().enumerate() {
                let lane = layout.lane(row.lifter, step.next, class);
                let wait = rest.plus(self.waits_then[row.lifter][class]);
                *own = timed[lane / LANES][lane % LANES].max(wait).min(C::FAR);
            }
        }
        let all = timed[0][ENDS];
        let ends = own[0].min(own[1]).max(all);
        // By class: the same if someone else goes then, so that this lifter does not.
        let without = [own[1].max(all), ends];
        let next = FIRST + step.next;
        for at in 0..span {
            let there = row.from + (span + at) * row.stacks + stack;
            // Who goes now does not go later.
            let mut later = [C::FAR; LANES];
            for (lane, later) in later.iter_mut().enumerate() {
                let soon = timed[at][lane].max(without[0]);
                *later = soon.min(timed[span + at][lane].max(without[1]));
            }
            if next / LANES == at {
                later[next % LANES] = C::FAR;
            }
            for (here, later) in lanes[there].iter_mut().zip(later) {
                *here = (*here).min(later);
            }
        }
        let mut note = |lane: usize, value: C| {
            let here = &mut lanes[row.from + lane / LANES * row.stacks + stack][lane % LANES];
            *here = (*here).min(value);
        };
        note(next, ends);
        note(ENDS, ends);
        note(HANDLING, ways[stack][HANDLING].min(C::FAR));
    }
}
