//! Set groups after the first: their loads, their plates, and what follows from the top set as it
//! was really lifted.
use super::{NoSheet, loaded_with, makes, no_ladder};
use crate::equipment::{Bar, PlateFace, PlateSet};
use crate::gym::Gym;
use crate::ladder::footing::Footing;
use crate::ladder::{change, equipment};
use crate::lift::{Lift, Start, to_step};
use crate::lifter::Lifter;
use crate::mass::Mass;
use crate::prescription::{LoadWish, Prescription, Role, SetGroup};
use crate::rotation::places;
use crate::settle::{exactly, one};
use crate::settled::Settled;
use crate::sheet::{GroupSheet, LiftSheet, Rung, RungKind};
use crate::solve::Equipment;
use crate::solve::ladder::Wish;
use crate::solve::loads::Loads;
use crate::state::{Entered, LiftRun};
use alloc::vec::Vec;
use core::ops::Range;

/// The rungs of a day with all groups.
#[derive(Debug, Clone)]
pub(super) struct Grouped {
    pub(super) rungs: Vec<Rung>,
    pub(super) groups: Vec<GroupSheet>,
}

/// What a sheet keeps of the groups: nothing of straight sets.
pub(super) fn told(row: &Prescription, groups: Vec<GroupSheet>) -> Vec<GroupSheet> {
    let first = &row.first;
    let plain = first.reps.is_just() && first.role == Role::Work && first.effort.is_none();
    if plain && first.manner.is_own() && row.then.is_empty() {
        Vec::new()
    } else {
        groups
    }
}

/// Adds the groups after the first to its rungs, each at the load nearest to what is asked.
///
/// # Errors
/// [`NoSheet`] where a load is missing or the plates make nothing near it.
pub(super) fn add(
    (lift, bar, plates, lifter): (&Lift, &Bar, &PlateSet, &Lifter),
    row: &Prescription,
    mut rungs: Vec<Rung>,
    asked: impl Fn(&SetGroup) -> Result<Mass, NoSheet>,
) -> Result<Grouped, NoSheet> {
    let first = rungs.len() - usize::from(row.first.sets.max(1)).min(rungs.len());
    let main = row.main_at();
    let mut groups = Vec::from([group_sheet(first, &row.first)]);
    let mut top = rungs.last().map_or(Mass::ZERO, |rung| rung.load);
    let heaviest = row.then.iter().filter_map(|group| asked(group).ok()).max();
    let most = heaviest.map_or(top, |heaviest| heaviest.max(top));
    let gear = Gear::new(lift.start, bar, plates, most.times(2));
    for (at, group) in (1..).zip(&row.then) {
        // Sets that rise to the heaviest of the day make that one the top set.
        let role = if at == main { Role::Top } else { group.role };
        let group = &SetGroup { role, ..*group };
        let wanted = match group.load {
            LoadWish::OfTop(share) => to_step(share_of(top, share), lift.step_for(lifter.unit)),
            LoadWish::Mass(_)
            | LoadWish::OfBest(_)
            | LoadWish::OfTraining(_)
            | LoadWish::More(_)
            | LoadWish::Due => {
                let wanted = asked(group)?;
                makes(bar, plates, lifter.unit, wanted)?;
                wanted
            }
        };
        let before = rungs.last().map_or(&[][..], |rung| &rung.per_side);
        let made = gear.as_ref().and_then(|gear| gear.make(wanted, before));
        let (load, per_side) = made.ok_or(NoSheet::NoLoad)?;
        if group.role == Role::Top {
            top = load;
        }
        groups.push(group_sheet(rungs.len(), group));
        for _ in 0..group.sets.max(1) {
            let before = rungs.last().map_or(&[][..], |rung| &rung.per_side);
            let hands = change(before, &per_side);
            rungs.push(Rung {
                kind: RungKind::Work,
                load,
                reps: group.reps.planned(),
                per_side: per_side.clone(),
                take_off: hands.take_off,
                put_on: hands.put_on,
                belt: false,
                straps: false,
                rest_s: 0,
            });
        }
    }
    Ok(Grouped { rungs, groups })
}

fn group_sheet(rung: usize, group: &SetGroup) -> GroupSheet {
    GroupSheet {
        rung: u16::try_from(rung).unwrap_or(u16::MAX),
        sets: group.sets.max(1),
        reps: group.reps,
        role: group.role,
        of_top: match group.load {
            LoadWish::OfTop(share) => Some(share),
            LoadWish::Mass(_)
            | LoadWish::OfBest(_)
            | LoadWish::OfTraining(_)
            | LoadWish::More(_)
            | LoadWish::Due => None,
        },
        effort: group.effort,
        manner: group.manner,
    }
}

pub(super) fn share_of(load: Mass, share: u32) -> Mass {
    let ng = i128::from(load.ng()) * i128::from(share) / 10_000;
    Mass::from_ng(i64::try_from(ng).unwrap_or(i64::MAX))
}

/// What a load is made with.
struct Gear<'g> {
    plates: &'g PlateSet,
    equipment: Equipment,
    loads: Loads,
    footing: Footing,
}

impl<'g> Gear<'g> {
    fn new(start: Start, bar: &Bar, plates: &'g PlateSet, most: Mass) -> Option<Self> {
        let equipment = equipment(bar, plates);
        Some(Self {
            loads: Loads::new(&equipment, most).map_err(no_ladder).ok()?,
            footing: Footing::new(start, &equipment, most).ok()?,
            plates,
            equipment,
        })
    }

    /// The load nearest to `wanted`, on the plates that are quickest to come to from `before`.
    fn make(&self, wanted: Mass, before: &[PlateFace]) -> Option<(Mass, Vec<PlateFace>)> {
        let load = self.loads.nearest(wanted)?;
        let on_bar = places(self.plates, before).unwrap_or_default();
        let wish = Wish {
            least_diameter: self.footing.size(load, load),
            ..exactly(load)
        };
        let (load, stack) = one(&self.equipment, &on_bar, wish)?;
        let face = |at: &usize| self.plates.plates[*at].face;
        Some((load, stack.iter().map(face).collect()))
    }
}

/// The loads of groups to come that follow from the top set as it was really lifted, where they
/// are others than the sheet's; none before it was done for a rep and more, so that a heavier one
/// that was missed raises nothing.
#[must_use]
pub fn following(gym: &Gym, run: &LiftRun) -> Vec<Settled> {
    let Some(now) = run.next_rung() else {
        return Vec::new();
    };
    let sheet = &run.sheet;
    let lifter = gym.lifters.iter().find(|l| l.name == sheet.lifter);
    let lift = gym.lifts.iter().find(|l| l.name == sheet.lift);
    let plates = lifter
        .zip(lift)
        .and_then(|(lifter, lift)| loaded_with(gym, lifter, lift));
    let bar = gym.bars.iter().find(|bar| bar.name == sheet.bar.name);
    let (Some(lifter), Some((_, plates)), Some(bar)) = (lifter, plates, bar) else {
        return Vec::new();
    };
    let step = lift.and_then(|lift| lift.step_for(sheet.unit));
    let Some(top) = lifted(run) else {
        return Vec::new();
    };
    let start = if sheet.is_from_floor() {
        Start::Floor
    } else {
        Start::Hooks
    };
    let Some(gear) = Gear::new(start, bar, plates, top.times(2)) else {
        return Vec::new();
    };
    let mut found: Vec<Settled> = Vec::new();
    for group in sheet.groups.iter().filter(|g| g.rungs().start >= now) {
        let (Some(share), Some(rung)) = (group.of_top, sheet.rungs.get(group.rungs().start)) else {
            continue;
        };
        let before = before(sheet, &found, group.rungs());
        let Some((load, per_side)) = gear.make(to_step(share_of(top, share), step), before) else {
            continue;
        };
        if load == rung.load {
            continue;
        }
        let (belt, straps) = sheet.worn(lifter, group.rungs().start, load);
        let settled = Settled {
            rung: group.rung,
            load,
            per_side,
            belt,
            straps,
        };
        found.push(settled);
    }
    found
}

/// The stack before a group, as it will be.
fn before<'s>(sheet: &'s LiftSheet, found: &'s [Settled], rungs: Range<usize>) -> &'s [PlateFace] {
    let at = rungs.start.saturating_sub(1);
    let changed = found.iter().rev().find(|settled| {
        let group = sheet.group_of(usize::from(settled.rung));
        group.is_some_and(|group| group.rungs().contains(&at))
    });
    match changed {
        Some(settled) => &settled.per_side,
        None => sheet.rungs.get(at).map_or(&[][..], |rung| &rung.per_side),
    }
}

/// The top set's load as it was lifted: the heaviest that was done for a rep and more.
fn lifted(run: &LiftRun) -> Option<Mass> {
    let sheet = &run.sheet;
    let first = sheet.groups.first()?;
    let top = sheet.groups.iter().find(|group| group.role == Role::Top);
    let range = top.unwrap_or(first).rungs();
    let both = run.passed().zip(&sheet.rungs).enumerate();
    let of_top = both.filter(|(at, _)| range.contains(at));
    let done =
        of_top.filter(|(_, (entry, _))| matches!(entry.what, Entered::Set { reps: 1.., .. }));
    done.map(|(_, (_, rung))| rung.load).max()
}
