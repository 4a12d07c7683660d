//! The work load settled on the day: after the last warm-up, a few loads around the plan that the
//! plates make, each with how the bar gets there and how it stands to the last time.
//!
//! Refuses: more than a tenth over the plan, loads that the gym cannot make, choosing; that is for
//! the lifter and the coach. The figures are common practice, no source.
use crate::equipment::PlateFace;
use crate::gym::Gym;
use crate::ladder::equipment;
use crate::ladder::footing::Footing;
use crate::length::Length;
use crate::lift::{Start, to_step};
use crate::mass::Mass;
use crate::next::outing::Outing;
use crate::next::outings::outings;
use crate::next::{RAISE_MOST, share_of, step_of};
use crate::rotation::places;
use crate::sheet::LiftSheet;
use crate::solve::Equipment;
use crate::solve::ladder::{Problem, Wish, plan};
use crate::solve::loads::Loads;
use crate::state::{LiftRun, State};
use alloc::vec::Vec;

pub use crate::settled::Settled;

/// The most loads that are offered, the plan's among them.
pub const CHOICES_MAX: usize = 5;
/// As many are offered where the plates make them within reason: from [`FALL_MOST`] under the plan
/// to [`RAISE_MOST`] over it.
pub const CHOICES_LEAST: usize = 3;
/// How far under the plan is looked for more, in hundredths of a percent of it.
pub const FALL_MOST: u32 = 2_000;
/// How many steps up and down are looked at.
const STEPS: i64 = 2;
/// What it costs a choice to be a kilogram off its step, beside handling: rounder plates are worth
/// a little.
const PER_KG_OFF_NS: u64 = 10_000_000_000;

/// What can be chosen after the last warm-up.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Choices {
    /// The first work set, from 0.
    pub rung: usize,
    /// What the sheet has.
    pub planned: Mass,
    /// The last time that the lift was done with as many reps.
    pub last: Option<Outing>,
    /// What is offered, lightest first; the plan among them.
    pub loads: Vec<Settled>,
}

/// The loads around the plan for a lift that has come to its first work set; `None` before and
/// after, and where the plates make nothing else near by.
#[must_use]
pub fn choices(gym: &Gym, state: &State, run: &LiftRun) -> Option<Choices> {
    let rung = run.may_settle()?;
    let sheet = &run.sheet;
    let now = sheet.rungs.get(rung)?;
    let lifter = gym.lifters.iter().find(|l| l.name == sheet.lifter)?;
    let bar = gym.bars.iter().find(|bar| bar.name == sheet.bar.name)?;
    let rack = gym.racks.iter().find(|rack| rack.name == sheet.rack)?;
    let plates = gym.plate_sets.iter().find(|p| p.name == rack.plates)?;
    let lift = gym.lifts.iter().find(|lift| lift.name == sheet.lift);
    let equipment = equipment(bar, plates);
    let on_bar = state.plates_on(&sheet.bar.name, run.day);
    let on_bar = places(plates, &on_bar).unwrap_or_default();
    let mut past = outings(state, &sheet.lifter, &sheet.lift, sheet.date);
    let asked = sheet.reps_of(rung).least;
    past.retain(|outing| outing.reps == asked && outing.track == sheet.track);
    let last = past.last().copied();
    let step = step_of(&gym.coaching.rule(&sheet.lifter, &sheet.lift), now.load);
    let around = Around {
        planned: now.load,
        step,
        whole: lift.and_then(|lift| lift.step_for(lifter.unit)),
        last: last.map(|outing| outing.load),
        footing: &footing(sheet, &equipment, now.load)?,
    };
    let number = u16::try_from(rung).ok()?;
    let settle = |load: Mass, per_side: Vec<PlateFace>| {
        let (belt, straps) = sheet.worn(lifter, rung, load);
        Settled {
            rung: number,
            load,
            per_side,
            belt,
            straps,
        }
    };
    let face = |at: &usize| plates.plates[*at].face;
    let mut loads: Vec<Settled> = around
        .stacks(&equipment, &on_bar)
        .into_iter()
        .map(|(load, stack)| settle(load, stack.iter().map(face).collect()))
        .collect();
    if loads.is_empty() {
        return None;
    }
    loads.push(Settled {
        belt: now.belt,
        straps: now.straps,
        ..settle(now.load, state.stack(run, rung).to_vec())
    });
    loads.sort_by_key(|settled| settled.load);
    Some(Choices {
        rung,
        planned: now.load,
        last,
        loads,
    })
}

/// What the offers lie around.
struct Around<'a> {
    planned: Mass,
    step: Mass,
    /// What offers are whole steps of, where the lift says so.
    whole: Option<Mass>,
    last: Option<Mass>,
    footing: &'a Footing,
}

/// The heaviest load that is offered around `planned`.
fn most(planned: Mass) -> Mass {
    planned + share_of(planned, RAISE_MOST)
}

/// Which of the loads around `planned` stand at which height.
fn footing(sheet: &LiftSheet, equipment: &Equipment, planned: Mass) -> Option<Footing> {
    let start = if sheet.is_from_floor() {
        Start::Floor
    } else {
        Start::Hooks
    };
    Footing::new(start, equipment, most(planned)).ok()
}

/// A load and the stack that makes it.
type Made = (Mass, Vec<usize>);

impl Around<'_> {
    /// Other loads than the plan's, each with the stack that is quickest to make from the bar as
    /// it stands.
    fn stacks(&self, equipment: &Equipment, on_bar: &[usize]) -> Vec<Made> {
        let mut found = Vec::new();
        let loads = Loads::new(equipment, self.most()).map(|loads| loads.in_steps(self.whole));
        let step = self
            .whole
            .map_or(self.step, |_| to_step(self.step, self.whole));
        for steps in (-STEPS..=STEPS).filter(|steps| *steps != 0) {
            let wish = self.wish(self.planned + step.times(steps), step, loads.as_ref().ok());
            self.add(
                &mut found,
                wish.and_then(|wish| one(equipment, on_bar, self.on_foot(wish))),
            );
        }
        if let Ok(loads) = loads {
            self.widen(&mut found, &loads, |load| {
                one(equipment, on_bar, self.on_foot(exactly(load)))
            });
        }
        found
    }

    /// Coarse plates make too little within half a step: what they make nearest to the plan, one on
    /// each side at least, and further off until there are [`CHOICES_LEAST`].
    fn widen(&self, found: &mut Vec<Made>, loads: &Loads, make: impl Fn(Mass) -> Option<Made>) {
        let barely = Mass::from_ng(1);
        let (mut low, mut high) = (self.planned, self.planned);
        loop {
            let has_below = found.iter().any(|made| made.0 < self.planned);
            let has_above = found.iter().any(|made| made.0 > self.planned);
            let few = found.len() + 1 < CHOICES_LEAST;
            // A lighter load is never a danger, so the first one below may be far off.
            let below = loads.at_most(low - barely).filter(|load| {
                !has_below || (few && *load >= self.planned - share_of(self.planned, FALL_MOST))
            });
            let above = loads.at_least(high + barely).filter(|_| !has_above || few);
            let near = [below, above].into_iter().flatten();
            let Some(load) = near.min_by_key(|load| load.apart(self.planned)) else {
                break;
            };
            if load < self.planned {
                low = load;
            } else {
                high = load;
            }
            self.add(found, make(load));
        }
    }

    /// Adds what is new and not too heavy.
    fn add(&self, found: &mut Vec<Made>, made: Option<Made>) {
        let Some(made) = made else { return };
        let known = made.0 == self.planned || found.iter().any(|f| f.0 == made.0);
        if !known && made.0 <= self.most() {
            found.push(made);
        }
    }

    /// The heaviest that is offered.
    fn most(&self) -> Mass {
        most(self.planned)
    }

    /// The same on plates that set the bar as high as any can.
    fn on_foot(&self, wish: Wish) -> Wish {
        let (low, high) = (wish.target - wish.below, wish.target + wish.above);
        Wish {
            least_diameter: self.footing.size(low, high),
            ..wish
        }
    }

    /// A load within half a step of `target`; the last time's own where that is one, else a whole
    /// step where the lift goes by them.
    fn wish(&self, target: Mass, step: Mass, loads: Option<&Loads>) -> Option<Wish> {
        let half = Mass::from_ng(step.ng() / 2);
        if let Some(last) = self.last.filter(|last| last.apart(target) <= half) {
            return Some(exactly(last));
        }
        if let Some(loads) = loads.filter(|_| self.whole.is_some()) {
            let near = loads
                .nearest(target)
                .filter(|near| near.apart(target) <= half);
            return near.map(exactly);
        }
        (target > Mass::ZERO).then_some(Wish {
            target,
            below: half,
            above: half,
            per_kg_off_ns: PER_KG_OFF_NS,
            least_diameter: Length::ZERO,
        })
    }
}

pub(crate) const fn exactly(load: Mass) -> Wish {
    Wish {
        target: load,
        below: Mass::ZERO,
        above: Mass::ZERO,
        per_kg_off_ns: 0,
        least_diameter: Length::ZERO,
    }
}

/// The quickest stack for one load from the bar as it stands; `None` when there is none.
pub(crate) fn one(equipment: &Equipment, on_bar: &[usize], wish: Wish) -> Option<Made> {
    let plan = plan(&Problem {
        equipment: equipment.clone(),
        on_bar: on_bar.to_vec(),
        strip_after: false,
        rungs: [wish].into(),
    });
    let rung = plan.ok()?.rungs.pop()?;
    Some((rung.load, rung.per_side))
}
