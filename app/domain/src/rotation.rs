//! What is left to lift at each station, as a rotation to plan, and the order that was called.
//!
//! A station is one bar at one rack: lifters who use it take turns. Refuses: guessing plates that
//! the gym does not have; such a station keeps the ladders' own stacks.
use crate::equipment::{Plate, PlateFace, PlateSet};
use crate::gym::Gym;
use crate::length::Length;
use crate::lift_no::LiftNo;
use crate::mass::Mass;
use crate::moment::Moment;
use crate::order::elsewhere;
use crate::solve::rotation::{
    Effort, Lifter, Loaders, Plan, Problem, Standing, Turn, plan, plan_fairly,
};
use crate::solve::{Equipment, PairKind, Refusal};
use crate::state::{LiftRun, State};
use alloc::collections::BTreeSet;
use alloc::vec::Vec;
use chrono::NaiveDate;

mod ahead;

pub use crate::state::station_of;
pub use crate::turn::{CalledTurn, Station};
pub use ahead::Ahead;

/// How long a set lasts: getting set, milliseconds. Common practice, no source.
pub const GET_SET_MS: u64 = 20_000;
/// And so long for each rep, milliseconds. Common practice, no source.
pub const REP_MS: u64 = 4_000;
/// How many of the turns that come first keep their places when the rest is planned anew: the
/// one at the bar, and the one who gets ready.
pub const CALLED: usize = 2;

/// A rotation to plan, with what its numbers stand for.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Asked {
    /// For the planner.
    pub problem: Problem,
    /// The lift of each lifter of the problem, with its rung of now.
    pub lifts: Vec<(LiftNo, usize)>,
    /// Once rested, nobody is to wait longer, nanoseconds; `None` for no limit.
    pub longest_wait_ns: Option<u64>,
    faces: Vec<PlateFace>,
    /// All plates of the rack, those on other bars too.
    all: Vec<PairKind>,
}

/// The stations at which somebody is under way on `date`, by rack and bar.
#[must_use]
pub fn stations(state: &State, date: NaiveDate) -> BTreeSet<Station> {
    let open = state.open().filter(|run| run.day == date);
    open.map(station_of).collect()
}

/// The lifts under way at a station that have turns: their lifters are there, and no decision waits
/// since a back moved; in the order in which they were begun.
pub fn open_at<'a>(
    state: &'a State,
    station: &'a Station,
    date: NaiveDate,
) -> impl Iterator<Item = &'a LiftRun> {
    let here = move |run: &&LiftRun| {
        let (rack, bar) = (&run.sheet.rack, &run.sheet.bar.name);
        run.day == date && *rack == station.rack && *bar == station.bar
    };
    let comes = |run: &&LiftRun| !run.attendance.away && !run.awaits_decision();
    state.open().filter(here).filter(comes)
}

/// What is left at `station`, to be planned from the bar as it stands at `now`; `None` when
/// nobody is under way or the gym no longer has the plates. `first` is up before all others:
/// whoever's entry was taken back is still at the bar.
#[must_use]
pub fn ask(
    gym: &Gym,
    state: &State,
    station: &Station,
    date: NaiveDate,
    now: Moment,
    first: Option<LiftNo>,
) -> Option<Asked> {
    let rack = gym.racks.iter().find(|r| r.name == station.rack)?;
    let plates = gym.plate_sets.iter().find(|p| p.name == rack.plates)?;
    let runs: Vec<&LiftRun> = open_at(state, station, date).collect();
    let sheet = &runs.first()?.sheet;
    // The planner's clock starts at the earliest moment that matters, so that it never runs back.
    let ends: Vec<Option<Moment>> = runs
        .iter()
        .map(|run| run.last_set().map(|e| e.at.min(now)))
        .collect();
    let zero = ends
        .iter()
        .flatten()
        .copied()
        .chain([now])
        .min()
        .unwrap_or(now);
    let ns = |at: Moment| u64::try_from(at.0 - zero.0).unwrap_or(0) * 1_000_000;
    let lifters = runs.iter().zip(&ends).map(|(run, ended)| {
        let mut turns = turns(run, plates);
        // Whoever said that their turn is now does not rest on.
        if let Some(first) = turns.first_mut().filter(|_| run.attendance.claimed) {
            first.rest_ns = 0;
        }
        // A longer rest that was asked for counts from the last set, or from now before the first.
        let ended = ended.or_else(|| run.attendance.not_before.map(|_| now));
        if let (Some(until), Some(ended), Some(first)) =
            (run.attendance.not_before, ended, turns.first_mut())
        {
            first.rest_ns = first.rest_ns.max(ns(until).saturating_sub(ns(ended)));
        }
        Lifter {
            turns,
            ended_ns: ended.map(ns),
        }
    });
    let on_bar = state.plates_on(&station.bar, date);
    let equipment = Equipment {
        bar_and_collars: sheet.bar.mass + sheet.bar.collars,
        sleeve: Some(sheet.bar.sleeve),
        big_inside: plates.big_inside,
        plates: free_kinds(gym, state, station, (date, &on_bar), plates),
    };
    let on_bar = may_stay(&equipment, places(plates, &on_bar)?);
    let problem = Problem {
        equipment,
        loaders: if runs.len() > 1 {
            Loaders::Two
        } else {
            Loaders::One
        },
        hole_change_ns: u64::from(rack.hole_change_ms) * 1_000_000,
        hole_change_at_most: rack
            .hole_change_at_most
            .max(sheet.bar.mass + sheet.bar.collars),
        lifters: lifters.collect(),
        standing: Standing {
            now_ns: ns(now),
            on_bar,
            hole: state.hole_set(&station.rack, date),
            called: called(state, station, &runs, (first, now)),
        },
    };
    let lifts = runs
        .iter()
        .filter_map(|run| Some((run.no, run.next_rung()?)))
        .collect();
    Some(Asked {
        problem,
        lifts,
        longest_wait_ns: rack.longest_wait_ms.map(|ms| u64::from(ms) * 1_000_000),
        faces: plates.plates.iter().map(|p| p.face).collect(),
        all: plates.plates.iter().map(kind).collect(),
    })
}

/// What of a bar may stay: what somebody put on as nobody should comes off first.
fn may_stay(equipment: &Equipment, mut on_bar: Vec<usize>) -> Vec<usize> {
    while equipment.broken_by(&on_bar).is_some() {
        on_bar.pop();
    }
    on_bar
}

impl Asked {
    /// The same with the plates of other bars too, for where too few hang free: those bars will be
    /// stripped in their turn.
    #[must_use]
    pub fn with_all_plates(mut self) -> Self {
        self.problem.equipment.plates.clone_from(&self.all);
        self
    }

    /// The plan of what is left, in which nobody waits longer than the rack's limit where one is
    /// found.
    ///
    /// # Errors
    /// As [`plan`].
    pub fn plan(&self, effort: Effort<'_>) -> Result<Plan, Refusal> {
        planned(&self.problem, self.longest_wait_ns, effort)
    }

    /// A plan in the gym's words.
    #[must_use]
    pub fn turns(&self, plan: &Plan) -> Vec<CalledTurn> {
        let turn = |turn: &crate::solve::rotation::PlannedTurn| {
            let (no, next) = *self.lifts.get(turn.lifter)?;
            let rung = u16::try_from(next + turn.turn).ok()?;
            let per_side = turn.per_side.iter().map(|at| self.faces[*at]).collect();
            Some(CalledTurn { no, rung, per_side })
        };
        plan.turns.iter().filter_map(turn).collect()
    }
}

/// Plans with a limit on the waits, or without.
fn planned(
    problem: &Problem,
    longest_wait_ns: Option<u64>,
    effort: Effort<'_>,
) -> Result<Plan, Refusal> {
    match longest_wait_ns {
        Some(longest) => plan_fairly(problem, longest, effort),
        None => plan(problem, effort),
    }
}

fn kind(plate: &Plate) -> PairKind {
    PairKind {
        mass: plate.face.mass,
        pairs: plate.pairs,
        thickness: plate.face.thickness,
        diameter: plate.face.diameter.max(Length::ZERO),
        handling_ns: u64::from(plate.handling_ms) * 1_000_000,
    }
}

/// The places of a stack's plates in a set; `None` when one is not in it.
pub(crate) fn places(plates: &PlateSet, stack: &[PlateFace]) -> Option<Vec<usize>> {
    let place = |face: &PlateFace| plates.plates.iter().position(|p| p.face == *face);
    stack.iter().map(place).collect()
}

/// Kinds of plates, without the pairs that hang on other bars: those cannot go on this one. What is
/// on this bar already counts in any case.
fn free_kinds(
    gym: &Gym,
    state: &State,
    station: &Station,
    (date, on_bar): (NaiveDate, &[PlateFace]),
    plates: &PlateSet,
) -> Vec<PairKind> {
    let others = elsewhere(gym, state, &station.rack, &station.bar, date);
    let free = |plate: &Plate| {
        let is = |face: &PlateFace| *face == plate.face;
        let discs = others.iter().flat_map(|(_, holds)| holds.discs());
        let away = discs.filter(|disc| is(&disc.face)).count().div_ceil(2);
        let here = on_bar.iter().filter(|face| is(face)).count();
        let left = usize::from(plate.pairs).saturating_sub(away).max(here);
        PairKind {
            pairs: u16::try_from(left).unwrap_or(plate.pairs),
            ..kind(plate)
        }
    };
    plates.plates.iter().map(free).collect()
}

/// The rungs that are left of a lift. Loads are settled already: the planner only chooses stacks,
/// from the floor those that set the bar no lower than the sheet's own.
fn turns(run: &LiftRun, plates: &PlateSet) -> Vec<Turn> {
    let next = run.next_rung().unwrap_or(usize::MAX);
    let left = run.sheet.rungs.iter().enumerate().skip(next);
    left.map(|(at, rung)| Turn {
        target: rung.load,
        below: Mass::ZERO,
        above: Mass::ZERO,
        least_diameter: run.sheet.least_diameter(rung, plates),
        hole: run.sheet.pin_hole(at),
        lasts_ns: (GET_SET_MS + REP_MS * u64::from(rung.reps)) * 1_000_000,
        rest_ns: u64::from(rung.rest_s) * 1_000_000_000,
    })
    .collect()
}

/// Those who were called already and are still to come, as places among `runs`: at most
/// [`CALLED`], and nobody twice, since a second turn of one lifter makes way for others. Whoever
/// still rests was not called yet, so that a bar that stands idle can serve somebody who is ready.
fn called(
    state: &State,
    station: &Station,
    runs: &[&LiftRun],
    (first, now): (Option<LiftNo>, Moment),
) -> Vec<usize> {
    let order = state.rotation(station).iter().map(|turn| turn.no);
    let mut places = Vec::new();
    // Those who put their turn off come after the first who did not.
    let put_off = |no: &LiftNo| {
        let run = runs.iter().find(|run| run.no == *no);
        run.is_some_and(|run| run.attendance.deferred)
    };
    let here = runs.iter().any(|run| !run.attendance.deferred);
    let order = order.filter(|no| !here || !put_off(no));
    for no in first.into_iter().chain(order).take(CALLED) {
        let place = runs.iter().position(|run| run.no == no);
        let Some(place) = place.filter(|place| !places.contains(place)) else {
            break;
        };
        let rests = runs[place].ready_at().is_some_and(|at| at > now);
        if rests && first != Some(no) && !is_alone_before(runs, place) {
            break;
        }
        places.push(place);
    }
    if places.is_empty() && here {
        // Somebody who put the turn off must not come first all the same.
        places.extend(soonest(runs));
    }
    places
}

/// Whether nobody else is there for a turn before the lifter at `place`.
fn is_alone_before(runs: &[&LiftRun], place: usize) -> bool {
    let others = runs.iter().enumerate();
    !others
        .into_iter()
        .any(|(at, run)| at != place && !run.attendance.deferred)
}

/// Where turns were put off: whoever of the others is rested first.
fn soonest(runs: &[&LiftRun]) -> Option<usize> {
    if !runs.iter().any(|run| run.attendance.deferred) {
        return None;
    }
    let here = runs.iter().enumerate();
    let here = here.filter(|(_, run)| !run.attendance.deferred);
    here.min_by_key(|(_, run)| run.ready_at())
        .map(|(place, _)| place)
}

#[cfg(test)]
mod tests {
    use super::Asked;
    use crate::length::Length;
    use crate::mass::{Mass, MassUnit};
    use crate::solve::rotation::{Effort, Lifter, Loaders, Problem, Standing, Turn};
    use crate::solve::{Equipment, PairKind};
    use alloc::vec;
    use alloc::vec::Vec;

    fn kg(kg: i64) -> Mass {
        Mass::of(MassUnit::Kg, kg * 1_000)
    }

    /// One turn of 40 kg each for two, and four of 20 kg without rest for a third: the plate goes on
    /// once, at the beginning or at the end.
    fn asked(longest_wait_ns: Option<u64>) -> Asked {
        let turn = |load| Turn {
            target: kg(load),
            below: Mass::ZERO,
            above: Mass::ZERO,
            least_diameter: Length::ZERO,
            hole: None,
            lasts_ns: 100,
            rest_ns: 0,
        };
        let lifter = |loads: &[i64]| Lifter {
            turns: loads.iter().map(|&load| turn(load)).collect(),
            ended_ns: None,
        };
        let plate = PairKind {
            mass: kg(10),
            pairs: 1,
            thickness: Length::ZERO,
            diameter: Length::ZERO,
            handling_ns: 10,
        };
        let problem = Problem {
            equipment: Equipment {
                bar_and_collars: kg(20),
                sleeve: None,
                big_inside: true,
                plates: vec![plate],
            },
            loaders: Loaders::Two,
            hole_change_ns: 0,
            hole_change_at_most: kg(20),
            lifters: vec![lifter(&[40]), lifter(&[40]), lifter(&[20; 4])],
            standing: Standing::default(),
        };
        Asked {
            problem,
            lifts: Vec::new(),
            longest_wait_ns,
            faces: Vec::new(),
            all: Vec::new(),
        }
    }

    /// By hand: with the plate on once and last, all end after 610 and the second with it waits for
    /// 510. Nobody has to wait for more than 220 when both come first, and it comes off again: 620.
    #[test]
    fn a_racks_longest_wait_is_kept_though_all_end_later() {
        let told = |longest| {
            let effort = Effort {
                states: 100_000,
                go_on: &mut || true,
            };
            let plan = asked(longest).plan(effort).expect("it can be loaded");
            (plan.ends_ns, plan.longest_wait_ns)
        };
        assert_eq!(told(None), (610, 510));
        assert_eq!(told(Some(300)), (620, 220));
        assert_eq!(told(Some(510)), (610, 510));
    }
}
