//! Where a lift starts on a given rack for a given body, and what it shares with its partner.
//!
//! Refuses: landmarks that nobody measured, unless an estimate can tell the rack's holes apart;
//! the sheet says so with the hole, or instead of one.
use crate::body::{Trust, trust};
use crate::equipment::{Bar, BarCondition, Rack};
use crate::gym::Gym;
use crate::length::Length;
use crate::lift::{Landmark, Lift, Start};
use crate::lifter::Lifter;
use crate::sheet::{Overlap, PinSheet, Warning};
use crate::solve::hole::{self, Setting};
use alloc::vec::Vec;

/// Pins and overlap of a sheet.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct Place {
    /// The pins; `None` from the floor, or when no hole can be given.
    pub pins: Option<PinSheet>,
    /// Height shared with the partner lift, where both ends are known.
    pub overlap: Option<Overlap>,
}

/// Finds hole, mats and overlap, and says what is amiss; the hole that the coach `said`, where one
/// was.
pub fn place(
    gym: &Gym,
    (rack, bar): (&Rack, &Bar),
    lifter: &Lifter,
    lift: &Lift,
    said: Option<u16>,
    warnings: &mut Vec<Warning>,
) -> Place {
    let pins = match pins((rack, bar), lifter, lift, said) {
        Ok(pins) => pins.map(|(pins, estimated)| {
            warnings.extend(estimated);
            pins
        }),
        // The coach's own hole needs no height.
        Err(_) if said.is_some() => None,
        Err(warning) => {
            warnings.push(warning);
            None
        }
    };
    let on_pins = matches!(lift.start, Start::Pins { .. }) && said.is_some();
    if (on_pins || pins.is_some()) && bar.condition == BarCondition::Straight {
        warnings.push(Warning::StraightBarOnPins);
    }
    let overlap = overlap(gym, rack, lifter, lift, pins.as_ref());
    let overlap = overlap.map(|(overlap, estimated)| {
        warnings.extend(estimated);
        overlap
    });
    if overlap.as_ref().is_some_and(|o| o.length < o.least) {
        warnings.push(Warning::OverlapSmall);
    }
    Place { pins, overlap }
}

/// The pins of a lift, and what is to be said of them; `Ok(None)` from the floor.
fn pins(
    (rack, bar): (&Rack, &Bar),
    lifter: &Lifter,
    lift: &Lift,
    said: Option<u16>,
) -> Result<Option<(PinSheet, Option<Warning>)>, Warning> {
    let Start::Pins { landmark, below } = lift.start else {
        return Ok(None);
    };
    let (height, estimated) = start_height(rack, lifter, landmark)?;
    let target = height - below;
    let problem = hole::Problem {
        first_hole: rack.first_hole,
        spacing: rack.spacing,
        holes: rack.holes,
        pin_diameter: rack.pin_diameter,
        hole_diameter: rack.hole_diameter,
        bar_diameter: bar.shaft_diameter,
        mats: rack.mats.clone(),
        target,
        rule: hole::Rule::AtOrBelow,
        patella_top: lifter.landmark(Landmark::PatellaTop),
        calibration: rack.calibration,
    };
    let found = match said {
        Some(hole) => {
            let bar_height = problem.bar_above_floor(hole);
            let off = bar_height.half_nm() - hole::Height::from(target).half_nm();
            Setting {
                hole,
                mats: Vec::new(),
                bar_height,
                off_target: hole::Height::from_half_nm(off),
                overlap: None,
            }
        }
        None => hole::find(&problem).map_err(|_| Warning::NoHole(target))?,
    };
    let pins = PinSheet {
        hole: found.hole,
        mats: found.mats.iter().map(|at| problem.mats[*at]).collect(),
        bar_height: whole(found.bar_height),
        off_target: whole(found.off_target),
        landmark,
        landmark_height: height,
        patella_top: problem.patella_top,
        first_hole: rack.first_hole,
        spacing: rack.spacing,
        holes: rack.holes,
    };
    Ok(Some((pins, estimated)))
}

/// The height of the landmark that a lift starts at: measured, else an estimate that can tell
/// the rack's holes apart, with what is to be said of it.
fn start_height(
    rack: &Rack,
    lifter: &Lifter,
    landmark: Landmark,
) -> Result<(Length, Option<Warning>), Warning> {
    if let Some(height) = lifter.landmark(landmark) {
        return Ok((height, None));
    }
    let estimate = lifter.body.estimate(landmark);
    let estimate = estimate.ok_or(Warning::NotMeasured(landmark))?;
    let (spread, spacing) = (estimate.spread, rack.spacing);
    let doubtful = match trust(spread, spacing) {
        Trust::TooRough => {
            return Err(Warning::EstimateTooRough {
                landmark,
                spread,
                spacing,
            });
        }
        Trust::Doubtful => true,
        Trust::StandsIn => false,
    };
    let told = Warning::Estimated {
        landmark,
        spread,
        doubtful,
    };
    Ok((estimate.height, Some(told)))
}

/// The height of the landmark that a lift ends at, measured or estimated.
fn end_height(lifter: &Lifter, landmark: Landmark) -> Option<(Length, Option<Warning>)> {
    if let Some(height) = lifter.landmark(landmark) {
        return Some((height, None));
    }
    let estimate = lifter.body.estimate(landmark)?;
    let told = Warning::Estimated {
        landmark,
        spread: estimate.spread,
        doubtful: false,
    };
    Some((estimate.height, Some(told)))
}

/// A height on a sheet: half a nanometre, which nobody can set a pin by, is dropped.
fn whole(height: hole::Height) -> Length {
    Length::from_nm(height.half_nm().div_euclid(2))
}

/// What a lift shares with its partner: the end of the one that starts lower, less the start of
/// the one on the pins; and what is to be said of heights in it that nobody measured.
fn overlap(
    gym: &Gym,
    rack: &Rack,
    lifter: &Lifter,
    lift: &Lift,
    pins: Option<&PinSheet>,
) -> Option<(Overlap, Vec<Warning>)> {
    let partner = gym
        .lifts
        .iter()
        .find(|l| Some(&l.name) == lift.partner.as_ref())?;
    let (lower_end, upper_start, mut told) = match (lift.start, partner.start) {
        (Start::Pins { .. }, Start::Floor) => (partner.end, pins?.bar_height, Vec::new()),
        (Start::Floor, Start::Pins { .. }) => {
            let bar = gym
                .bars_at(&rack.name)
                .find(|b| b.condition == BarCondition::Retired);
            let bar = bar.or_else(|| gym.bars_at(&rack.name).next())?;
            let (start, told) = self::pins((rack, bar), lifter, partner, None).ok()??;
            (lift.end, start.bar_height, told.into_iter().collect())
        }
        (Start::Pins { .. }, Start::Pins { .. })
        | (Start::Floor, Start::Floor)
        | (Start::Hooks, _)
        | (_, Start::Hooks) => return None,
    };
    let (end, estimated) = end_height(lifter, lower_end)?;
    told.extend(estimated);
    let overlap = Overlap {
        partner: partner.name.clone(),
        length: end - upper_start,
        least: lift.overlap_least.max(partner.overlap_least),
    };
    Some((overlap, told))
}
