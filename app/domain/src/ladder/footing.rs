//! From the floor: which loads can be made with a plate that sets the bar at which height.
//!
//! Refuses: lifts from pins and hooks; for those any plate will do.
use crate::disc_height::{SLEEVE, raise_by_size};
use crate::length::Length;
use crate::lift::Start;
use crate::mass::Mass;
use crate::solve::loads::Loads;
use crate::solve::{Equipment, Refusal};
use alloc::vec::Vec;

/// The first set from the floor may be lifted up to so many hundredths of the work load, so that
/// it stands at the right height. Common practice, no source.
const FIRST_MOST: i64 = 75;

/// Nobody starts from a bar with smaller pairs. Common practice, no source.
const FIRST_LEAST: Mass = Mass::from_ng(9_000_000_000_000);

/// See the file's head.
#[derive(Debug)]
pub(crate) struct Footing {
    /// The least raise first.
    levels: Vec<Level>,
}

/// Plates that set the bar at one height.
#[derive(Debug)]
struct Level {
    /// Diameter of the smallest of them.
    least: Length,
    /// The lightest load with one of them.
    lightest: Mass,
    /// By kind, the loads of which one pair is of it.
    loads: Vec<Loads>,
}

impl Footing {
    /// For a lift that starts so, up to the load `most`.
    ///
    /// # Errors
    /// [`Refusal`] when the loads are too many to list.
    pub(crate) fn new(start: Start, equipment: &Equipment, most: Mass) -> Result<Self, Refusal> {
        let mut levels: Vec<Level> = Vec::new();
        if start != Start::Floor {
            return Ok(Self { levels });
        }
        let fits = |kind: &usize| {
            let plate = equipment.plates[*kind];
            let short = equipment.sleeve.is_none_or(|s| plate.thickness <= s);
            plate.pairs > 0 && plate.diameter > SLEEVE && short
        };
        let mut kinds: Vec<usize> = (0..equipment.plates.len()).filter(fits).collect();
        kinds.sort_by_key(|&kind| -equipment.plates[kind].diameter.nm());
        for kind in kinds {
            let plate = equipment.plates[kind];
            let lightest = equipment.load(&[kind]);
            let loads = Loads::new(&with_one_on(equipment, kind), most)?;
            let same =
                |level: &&mut Level| raise_by_size(level.least) == raise_by_size(plate.diameter);
            if let Some(level) = levels.last_mut().filter(same) {
                level.least = plate.diameter;
                level.lightest = lightest.min(level.lightest);
                level.loads.push(loads);
            } else {
                levels.push(Level {
                    least: plate.diameter,
                    lightest,
                    loads: [loads].into(),
                });
            }
        }
        Ok(Self { levels })
    }

    /// The diameter to ask for so that a load from `low` to `high` stands as high as any of them
    /// can; 0 where any plates will do.
    pub(crate) fn size(&self, low: Mass, high: Mass) -> Length {
        let makes = |loads: &Loads| loads.at_least(low).is_some_and(|load| load <= high);
        let level = self.levels.iter().find(|l| l.loads.iter().any(makes));
        level.map_or(Length::ZERO, |level| level.least)
    }

    /// What the ladder starts from: the bar, or from the floor the lightest load at the best
    /// height that is no more than [`FIRST_MOST`] of the work load.
    pub(crate) fn first(&self, bar: Mass, work: Mass) -> Mass {
        let light = |level: &&Level| {
            let small = level.lightest - bar < FIRST_LEAST;
            !small && level.lightest.times(100) <= work.times(FIRST_MOST)
        };
        let level = self.levels.iter().find(light);
        level.map_or(bar, |level| level.lightest)
    }

    /// The load nearest to `asked` at the best height that has one within `off`.
    pub(crate) fn nearest(&self, asked: Mass, off: Mass) -> Option<Mass> {
        let near = |level: &Level| {
            let found = level.loads.iter().filter_map(|loads| loads.nearest(asked));
            let nearest = found.min_by_key(|load| (load.apart(asked), *load));
            nearest.filter(|load| load.apart(asked) <= off)
        };
        self.levels.iter().find_map(near)
    }
}

/// The bar with a pair of `kind` on it for good, and what is left.
fn with_one_on(equipment: &Equipment, kind: usize) -> Equipment {
    let plate = equipment.plates[kind];
    let mut rest = equipment.clone();
    rest.bar_and_collars = equipment.load(&[kind]);
    rest.sleeve = equipment.sleeve.map(|sleeve| sleeve - plate.thickness);
    rest.plates[kind].pairs -= 1;
    rest
}
