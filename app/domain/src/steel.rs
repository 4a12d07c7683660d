//! The day's loads held against what the makers of bar, pins and rack stated. **A guide, never a
//! certificate.**
//!
//! Refuses: any figure that nobody stated. Where one is missing there is no warning, and that is
//! no promise either.
use crate::equipment::{Bar, BarCondition, Rack};
use crate::length::Length;
use crate::lift::{Lift, Start};
use crate::mass::Mass;
use crate::sheet::{Rated, Rung, Warning};
use crate::solve::bar::{Bending, Problem, bend};
use alloc::vec::Vec;

/// What the makers' figures come to for the heaviest rung of a day.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Figures {
    /// The heaviest load.
    pub load: Mass,
    /// What was stated for this lift: of what, and how much.
    pub rated: Vec<(Rated, Mass)>,
    /// How the bar bends on the pins; `None` from the floor and where a figure is missing.
    pub bending: Option<Bending>,
}

/// The figures of a lift; `None` when nothing was stated.
#[must_use]
pub fn figures(rack: &Rack, bar: &Bar, lift: &Lift, rungs: &[Rung]) -> Option<Figures> {
    let heaviest = rungs.iter().max_by_key(|rung| rung.load)?;
    let on_pins = matches!(lift.start, Start::Pins { .. });
    let in_rack = lift.start != Start::Floor;
    let stated = [
        (Rated::Pins, rack.stated.pin_rated_load.filter(|_| on_pins)),
        (Rated::Rack, rack.stated.rack_rated_load.filter(|_| in_rack)),
        (Rated::Bar, bar.stated.rated_load),
    ];
    let rated: Vec<_> = stated
        .into_iter()
        .filter_map(|(what, rated)| Some((what, rated?)))
        .collect();
    let bending = on_pins.then(|| on_the_pins(rack, bar, heaviest)).flatten();
    (!rated.is_empty() || bending.is_some()).then_some(Figures {
        load: heaviest.load,
        rated,
        bending,
    })
}

/// Adds what the makers' figures say against the heaviest rung.
pub fn warn(rack: &Rack, bar: &Bar, lift: &Lift, rungs: &[Rung], warnings: &mut Vec<Warning>) {
    let Some(figures) = figures(rack, bar, lift, rungs) else {
        return;
    };
    let load = figures.load;
    let over = figures.rated.iter().filter(|(_, rated)| load > *rated);
    warnings.extend(over.map(|(what, rated)| Warning::OverRated {
        what: *what,
        load,
        rated: *rated,
    }));
    let Some(bent) = figures.bending else { return };
    // A retired bar has its set already; what would bend even that one at once is told.
    let Some(drop) = bent.yield_drop else { return };
    if bar.condition == BarCondition::Straight || drop == Length::ZERO {
        let of_yield_ppm = u32::try_from(bent.of_yield_ppm).unwrap_or(u32::MAX);
        warnings.push(Warning::TakesSet { drop, of_yield_ppm });
    }
}

/// How the bar bends on the pins of `rack` under the plates of `rung`; `None` when a figure was
/// not stated, or when the bar is empty or its plates lie within the pins.
#[must_use]
pub fn on_the_pins(rack: &Rack, bar: &Bar, rung: &Rung) -> Option<Bending> {
    let stated = &bar.stated;
    let (load_per_side, middle) = one_side(bar, rung)?;
    let problem = Problem {
        shaft_diameter: bar.shaft_diameter,
        youngs_modulus: stated.youngs_modulus?,
        yield_stress: stated.yield_stress?,
        support_span: rack.stated.support_span?,
        load_span: stated.between_sleeves? + middle.times(2),
        load_per_side,
        drop: None,
    };
    bend(&problem).ok()
}

/// Plates and collar of one side, and how far their middle of mass lies from the sleeve's inner
/// face; `None` without any.
fn one_side(bar: &Bar, rung: &Rung) -> Option<(Mass, Length)> {
    let (mut inner, mut turning) = (Length::ZERO, 0_i128);
    let mut load = Mass::ZERO;
    let collar = (Mass::from_ng(bar.collars.ng() / 2), Length::ZERO);
    let plates = rung.per_side.iter().map(|p| (p.mass, p.thickness));
    for (mass, thick) in plates.chain([collar]) {
        // Twice the distance, so that half a thickness is whole.
        let twice = i128::from(inner.times(2).nm()) + i128::from(thick.nm());
        turning += twice * i128::from(mass.ng());
        load = load + mass;
        inner = inner + thick;
    }
    let nm = turning.checked_div(2 * i128::from(load.ng()))?;
    Some((load, Length::from_nm(i64::try_from(nm).ok()?)))
}
