//! A lift as data: where it starts and ends, grip, bar, partner, cues, cautions.
//!
//! Refuses: loads and lifters. Values are common practice, no source; a coach can change them.
use crate::length::Length;
use crate::mass::{Mass, MassUnit};
use alloc::string::String;
use alloc::vec::Vec;

/// A height on the body.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Landmark {
    /// The bump of the shin bone below the knee.
    TibialTuberosity,
    /// Upper edge of the kneecap.
    PatellaTop,
    /// Half-way up the thigh.
    MidThigh,
    /// The bar in hanging hands, standing tall.
    Lockout,
}

impl Landmark {
    /// As the trade says it.
    #[must_use]
    pub const fn word(self) -> &'static str {
        match self {
            Self::TibialTuberosity => "tibial tuberosity",
            Self::PatellaTop => "top of the patella",
            Self::MidThigh => "mid-thigh",
            Self::Lockout => "lockout",
        }
    }
}

/// Where the bar starts.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Start {
    /// Plates on the floor.
    Floor,
    /// On the pins, the bar's centre `below` the landmark.
    Pins {
        /// What the height is taken from.
        landmark: Landmark,
        /// How far below it.
        below: Length,
    },
    /// On the hooks, at the height that suits the lifter: squat, press, bench press.
    Hooks,
}

/// How the bar is held.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Grip {
    /// Both palms to the lifter, never mixed.
    DoubleOverhand,
    /// Double overhand with the thumb under the fingers.
    Hook,
}

/// One lift of the rack.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Lift {
    /// The trade's name, lower case.
    pub name: String,
    /// Short names that plans may use.
    pub also: Vec<String>,
    /// Where the bar starts.
    pub start: Start,
    /// Where the bar ends.
    pub end: Landmark,
    /// How it is held.
    pub grip: Grip,
    /// Whether it is one fast pull, of which strength alone says little.
    pub fast: bool,
    /// Whether the gym's retired bar is wanted.
    pub retired_bar: bool,
    /// The lift with which it shares some height.
    pub partner: Option<String>,
    /// The family of lifts that load the same back: what one of them shows, all of them heed.
    pub family: String,
    /// What loads that follow from a share or from what was done are whole steps of, one for each
    /// unit of lifters; without one the plates alone say.
    pub round: Vec<(MassUnit, Mass)>,
    /// The least shared height that is not warned about.
    pub overlap_least: Length,
    /// Rest before a warm-up, seconds.
    pub rest_warm_s: u32,
    /// Rest before a work set, seconds.
    pub rest_work_s: u32,
    /// What to think of, short.
    pub cues: Vec<String>,
    /// What can hurt, short.
    pub cautions: Vec<String>,
}

impl Lift {
    /// What loads that follow from others are whole steps of for lifters of a unit.
    #[must_use]
    pub fn step_for(&self, unit: MassUnit) -> Option<Mass> {
        let of = |(own, step): &&(MassUnit, Mass)| *own == unit && *step > Mass::ZERO;
        self.round.iter().find(of).map(|(_, step)| *step)
    }
}

/// The whole step nearest to a load, the lower of two equally near; the load itself without a step.
#[must_use]
pub fn to_step(load: Mass, step: Option<Mass>) -> Mass {
    let Some(step) = step.filter(|step| *step > Mass::ZERO) else {
        return load;
    };
    let below = load.ng().div_euclid(step.ng()).saturating_mul(step.ng());
    let over = load.ng() - below;
    let up = if over > step.ng() - over {
        step.ng()
    } else {
        0
    };
    Mass::from_ng(below.saturating_add(up)).max(step)
}
