//! What the rack must show for one lifter's lift on one day.
//!
//! A sheet is whole in itself: the journal keeps it, so an old session can be shown after the
//! gym has changed. Refuses: words; those are view's work.
use crate::disc_height::{least_diameter, low_plates, raise_of};
use crate::equipment::{PlateFace, PlateSet};
use crate::length::Length;
use crate::lift::{Grip, Landmark, Start};
use crate::manner::Manner;
use crate::mass::{Mass, MassUnit};
use crate::prescription::{Reps, Role};
use crate::track::TrackName;
use alloc::string::String;
use alloc::vec::Vec;
use chrono::NaiveDate;

mod placed;

/// One lifter's one lift of one day.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct LiftSheet {
    /// Who.
    pub lifter: String,
    /// Kilo or pound for this lifter.
    pub unit: MassUnit,
    /// What.
    pub lift: String,
    /// The track's name, where the plan gives one.
    pub track: Option<TrackName>,
    /// When.
    pub date: NaiveDate,
    /// Name of the rack.
    pub rack: String,
    /// The bar.
    pub bar: BarSheet,
    /// The pins; `None` from the floor, or when the landmark is not measured.
    pub pins: Option<PinSheet>,
    /// The hooks; `None` from pins and from the floor.
    pub hooks: Option<HookSheet>,
    /// Height shared with the partner lift, where both ends are known.
    pub overlap: Option<Overlap>,
    /// How the bar is held.
    pub grip: Grip,
    /// Warm-ups and work sets, in order.
    pub rungs: Vec<Rung>,
    /// What the plan asks of the work sets beyond load and reps; empty for straight sets.
    pub groups: Vec<GroupSheet>,
    /// The load that the plan asked for; the work rungs carry what can be loaded.
    pub asked: Mass,
    /// Short reminders.
    pub cues: Vec<String>,
    /// What can hurt.
    pub cautions: Vec<String>,
    /// What the coach should know: an unmeasured landmark, a straight bar on pins.
    pub warnings: Vec<Warning>,
    /// The coach's words.
    pub note: String,
}

impl LiftSheet {
    /// Whether the lift starts from pins, even when no hole could be given.
    #[must_use]
    pub fn is_from_pins(&self) -> bool {
        let unplaced = |w: &Warning| {
            matches!(
                w,
                Warning::NotMeasured(_) | Warning::NoHole(_) | Warning::EstimateTooRough { .. }
            )
        };
        let said = self.groups.iter().any(|group| group.manner.hole.is_some());
        let placed = self.pins.is_some() || self.hooks.is_none() && said;
        placed || self.warnings.iter().any(unplaced)
    }

    /// The set group of a rung; `None` for warm-ups and straight sets.
    #[must_use]
    pub fn group_of(&self, rung: usize) -> Option<&GroupSheet> {
        self.groups
            .iter()
            .find(|group| group.rungs().contains(&rung))
    }

    /// The reps that a rung asks for.
    #[must_use]
    pub fn reps_of(&self, rung: usize) -> Reps {
        let own = self.rungs.get(rung).map_or(0, |rung| rung.reps);
        self.group_of(rung)
            .map_or(Reps::just(own), |group| group.reps)
    }

    /// The rungs of the work that the next time follows from: the top set, else the first group,
    /// with those right after it that have its load and reps at least.
    #[must_use]
    pub fn main_rungs(&self) -> core::ops::Range<usize> {
        let is_work = |rung: &Rung| rung.kind == RungKind::Work;
        let first = self.rungs.iter().position(is_work);
        let first = first.unwrap_or(self.rungs.len());
        let top = self.groups.iter().find(|group| group.role == Role::Top);
        let Some(main) = top.or(self.groups.first()) else {
            return first..self.rungs.len();
        };
        let mut range = main.rungs();
        for group in &self.groups {
            let load = |at: usize| self.rungs.get(at).map(|rung| rung.load);
            let like = group.reps.least == main.reps.least && group.of_top.is_none();
            if group.rungs().start == range.end && like && load(range.end) == load(range.start) {
                range.end = group.rungs().end;
            }
        }
        range
    }

    /// Whether the lift starts with the plates on the floor.
    #[must_use]
    pub fn is_from_floor(&self) -> bool {
        self.hooks.is_none() && !self.is_from_pins()
    }

    /// By how much the bar must be raised for a rung with this stack on each side: what
    /// [`crate::disc_height::raise_of`] says, and the blocks that the plan asks for.
    #[must_use]
    pub fn raise(&self, rung: usize, per_side: &[PlateFace]) -> Length {
        if self.is_from_floor() {
            let block = self.manner_of(rung).block.unwrap_or_default();
            raise_of(Start::Floor, per_side) + block
        } else {
            Length::ZERO
        }
    }

    /// The warnings as the rungs are now: a load that was settled on the day may stand on other
    /// plates than the one that was planned.
    #[must_use]
    pub fn warnings_now(&self) -> Vec<Warning> {
        let is_low = |warning: &Warning| matches!(warning, Warning::LowPlates { .. });
        let mut told = self.warnings.clone();
        let at = told.iter().position(is_low).unwrap_or(told.len());
        told.retain(|warning| !is_low(warning));
        // On blocks each rung says how high its bar is.
        let blocks = self.groups.iter().any(|group| group.manner.block.is_some());
        if self.is_from_floor() && !blocks {
            told.splice(at..at, low_plates(&self.rungs));
        }
        told
    }

    /// What another stack for the same rung must have, see
    /// [`crate::disc_height::least_diameter`].
    pub(crate) fn least_diameter(&self, rung: &Rung, plates: &PlateSet) -> Length {
        if self.is_from_floor() {
            least_diameter(Start::Floor, &rung.per_side, plates)
        } else {
            Length::ZERO
        }
    }
}

/// One set group of a sheet.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct GroupSheet {
    /// Its first rung, from 0.
    pub rung: u16,
    /// How many rungs it has, at least one.
    pub sets: u8,
    /// Reps of each.
    pub reps: Reps,
    /// What its sets are for.
    pub role: Role,
    /// Hundredths of a percent of the top set that its load is; `None` for a load of its own.
    pub of_top: Option<u32>,
    /// How hard each should be, RPE in tenths; `None` where nobody asks.
    pub effort: Option<u8>,
    /// Where and how they are done.
    pub manner: Manner,
}

impl GroupSheet {
    /// Its rungs.
    #[must_use]
    pub fn rungs(&self) -> core::ops::Range<usize> {
        let first = usize::from(self.rung);
        first..first + usize::from(self.sets)
    }
}

/// The bar of a sheet.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct BarSheet {
    /// What the gym calls it.
    pub name: String,
    /// Bar alone.
    pub mass: Mass,
    /// Both collars together.
    pub collars: Mass,
    /// Shaft diameter.
    pub shaft_diameter: Length,
    /// Usable length of one sleeve.
    pub sleeve: Length,
}

/// The pins of a sheet.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct PinSheet {
    /// Hole number, from 1.
    pub hole: u16,
    /// Mats stood on.
    pub mats: Vec<Length>,
    /// Bar's centre above what the feet stand on.
    pub bar_height: Length,
    /// Bar height less the target; negative is lower.
    pub off_target: Length,
    /// What the height was taken from.
    pub landmark: Landmark,
    /// The height of that landmark above the floor, in shoes.
    pub landmark_height: Length,
    /// Top of the patella above the floor in shoes, if measured.
    pub patella_top: Option<Length>,
    /// Geometry for the drawing: floor to hole 1, hole spacing, holes.
    pub first_hole: Length,
    /// See `first_hole`.
    pub spacing: Length,
    /// See `first_hole`.
    pub holes: u16,
}

/// The hooks of a sheet.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct HookSheet {
    /// Hole number, from 1, if one is written for the lifter and the lift.
    pub hole: Option<u16>,
}

/// Height shared by two partial pulls.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Overlap {
    /// The other lift.
    pub partner: String,
    /// Shared height; negative is a gap.
    pub length: Length,
    /// The coach's least.
    pub least: Length,
}

/// Warm-up or work set.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum RungKind {
    /// On the way up.
    WarmUp,
    /// What the day is for.
    Work,
}

/// One step of a ladder.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Rung {
    /// Warm-up or work set.
    pub kind: RungKind,
    /// Bar, collars and plates.
    pub load: Mass,
    /// Reps to do.
    pub reps: u8,
    /// Plates of one side, inside to outside.
    pub per_side: Vec<PlateFace>,
    /// What comes off one side first, in the order of the hands (outermost first).
    pub take_off: Vec<PlateFace>,
    /// What then goes on, in the order of the hands (innermost first).
    pub put_on: Vec<PlateFace>,
    /// Belt on.
    pub belt: bool,
    /// Straps on.
    pub straps: bool,
    /// Least rest before this rung, seconds.
    pub rest_s: u32,
}

/// Something that the coach should know about a sheet.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Warning {
    /// The lift starts at a landmark that nobody measured: no hole can be given.
    NotMeasured(Landmark),
    /// No hole of the rack serves the target height.
    NoHole(Length),
    /// The gym has no retired bar, so a straight one lies on the pins.
    StraightBarOnPins,
    /// The shared height is under the coach's least.
    OverlapSmall,
    /// The plan's load cannot be loaded; the nearest is shown.
    NotLoadable,
    /// The height was not measured but estimated from stature; what it comes to should be checked.
    Estimated {
        /// What was estimated.
        landmark: Landmark,
        /// Two people in three lie within so much of the estimate, up or down.
        spread: Length,
        /// Whether the rack's holes are so near to each other that another may well be right.
        doubtful: bool,
    },
    /// The lift starts at a landmark of which there is an estimate alone, too rough to choose
    /// among holes so near to each other: no hole is given.
    EstimateTooRough {
        /// What was estimated.
        landmark: Landmark,
        /// Two people in three lie within so much of the estimate, up or down.
        spread: Length,
        /// Between the centres of neighbouring holes.
        spacing: Length,
    },
    /// From the floor with plates smaller than the standard disc: the bar starts too low.
    LowPlates {
        /// The lightest load that does.
        from: Mass,
        /// The heaviest.
        to: Mass,
        /// By how much to raise the bar.
        raise: Length,
    },
    /// A load of the day is over what a maker stated.
    OverRated {
        /// What it is too much for.
        what: Rated,
        /// The heaviest load of the day.
        load: Mass,
        /// What was stated.
        rated: Mass,
    },
    /// A fall on to the pins from this height would bend the bar for good, by what its maker
    /// stated. A guide, never a certificate.
    TakesSet {
        /// The height; 0 when the load does it as soon as it is let go.
        drop: Length,
        /// Stress over yield at rest, in millionths.
        of_yield_ppm: u32,
    },
}

/// Something with a rated load.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Rated {
    /// The pins, both together.
    Pins,
    /// The rack.
    Rack,
    /// The bar.
    Bar,
}
