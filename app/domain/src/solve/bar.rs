//! The bar on two pins: bending moment and stress in the shaft, how far it bends, and from what
//! height it would have to fall to take a set. **A guide, never a certificate.**
//!
//! A straight round bar of one thickness lies on two supports and carries the same load beyond
//! each of them; bending after Euler and Bernoulli, a fall by the energy that the bent bar takes
//! up. Left out: the bar's own mass, the stiffer sleeves, plates as more than a point, the give
//! of plates, pins and floor (so a real fall is milder), notches and old damage (so a real bar
//! may be weaker).
//!
//! Figures come in and go out as whole counts. Between them there are floats, here alone among
//! the planners, and no load on a bar is decided by them.
//!
//! Refuses: steel of which nobody stated stiffness and yield, loads within the supports, bends
//! too great for the theory.
use super::equipment::{length_in_range, length_text, mass_in_range, mass_text, refusal};
use super::{Constraint, Refusal};
use crate::length::Length;
use crate::mass::Mass;
use crate::stress::Stress;
use alloc::format;
use core::f64::consts::PI;

/// The words that go with every figure.
pub const GUIDE: &str = "a guide, never a certificate";

/// Standard gravity, m/s2 (3rd CGPM 1901; NIST SP 811).
const GRAVITY: f64 = 9.806_65;

/// A loaded bar on its supports.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Problem {
    /// Diameter of the shaft.
    pub shaft_diameter: Length,
    /// Young's modulus of its steel.
    pub youngs_modulus: Stress,
    /// Stress at which its steel yields.
    pub yield_stress: Stress,
    /// Between the lines on which the bar touches the pins.
    pub support_span: Length,
    /// Between the centres of the two loads; more than the support span.
    pub load_span: Length,
    /// Load on each side.
    pub load_per_side: Mass,
    /// Height from which the loaded bar falls on the supports, if that is asked.
    pub drop: Option<Length>,
}

/// What it comes to.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Bending {
    /// Bending moment between the supports, in millionths of a newton metre.
    pub moment_unm: i64,
    /// Greatest bending stress.
    pub stress: Stress,
    /// Stress over yield, in millionths; from 1 000 000 on the shaft takes a set at rest.
    pub of_yield_ppm: i64,
    /// How far the bar goes down where the loads hang.
    pub at_loads: Length,
    /// How far it goes up half-way between the supports.
    pub at_mid_span: Length,
    /// The drop from which the shaft would yield; 0 when the load yields it as soon as it is let
    /// go, `None` when it would take more than [`Length::LIMIT`].
    pub yield_drop: Option<Length>,
    /// What the drop that was asked for comes to.
    pub dropped: Option<Dropped>,
}

/// A loaded bar at the lowest point of its fall.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Dropped {
    /// How many times the load at rest, in millionths; 2 000 000 from no height at all.
    pub factor_ppm: i64,
    /// Greatest bending moment, in millionths of a newton metre.
    pub moment_unm: i64,
    /// Greatest bending stress, as long as the steel does not yield.
    pub stress: Stress,
    /// Stress over yield, in millionths.
    pub of_yield_ppm: i64,
}

/// Bends the bar.
///
/// # Errors
/// [`Refusal`] when a figure is out of range, when the loads do not lie outside the supports, or
/// when the bar would bend further down than its overhang is long.
pub fn bend(problem: &Problem) -> Result<Bending, Refusal> {
    check(problem)?;
    let metres = |length: Length| float(length.nm()) * 1e-9;
    let (d, span) = (metres(problem.shaft_diameter), metres(problem.support_span));
    let overhang = metres(problem.load_span - problem.support_span) / 2.0;
    let force = float(problem.load_per_side.ng()) * 1e-12 * GRAVITY;
    // I = pi d^4 / 64 and S = pi d^3 / 32 of a round section (standard beam tables).
    let stiffness = float(problem.youngs_modulus.pa()) * PI * d * d * d * d / 64.0;
    let section = PI * d * d * d / 32.0;
    let moment = force * overhang;
    let stress = moment / section;
    let at_loads = moment * overhang * (3.0 * span + 2.0 * overhang) / (6.0 * stiffness);
    let at_mid_span = moment * span * span / (8.0 * stiffness);
    if at_loads > overhang {
        let text = format!(
            "of {} would bend the bar further than its overhang; lighten it",
            mass_text(problem.load_per_side)
        );
        return Err(refusal(Constraint::Range, "load_per_side", text));
    }
    let yield_stress = float(problem.yield_stress.pa());
    let over_yield = |stress: f64| whole(stress / yield_stress * 1e6);
    let dropped = problem.drop.map(|drop| {
        let factor = 1.0 + libm::sqrt(1.0 + 2.0 * metres(drop) / at_loads);
        Dropped {
            factor_ppm: whole(factor * 1e6),
            moment_unm: whole(factor * moment * 1e6),
            stress: Stress::from_pa(whole(factor * stress)),
            of_yield_ppm: over_yield(factor * stress),
        }
    });
    Ok(Bending {
        moment_unm: whole(moment * 1e6),
        stress: Stress::from_pa(whole(stress)),
        of_yield_ppm: over_yield(stress),
        at_loads: Length::from_nm(whole(at_loads * 1e9)),
        at_mid_span: Length::from_nm(whole(at_mid_span * 1e9)),
        yield_drop: yield_drop(yield_stress / stress, at_loads),
        dropped,
    })
}

/// P (1 + sqrt(1 + 2 h / at_loads)) solved for the h at which it is `times` P.
fn yield_drop(times: f64, at_loads: f64) -> Option<Length> {
    let more = times - 1.0;
    if more <= 1.0 {
        return Some(Length::ZERO);
    }
    let drop = Length::from_nm(whole(at_loads / 2.0 * (more * more - 1.0) * 1e9));
    (drop <= Length::LIMIT).then_some(drop)
}

fn check(problem: &Problem) -> Result<(), Refusal> {
    let range = |field: &str, text| Err(refusal(Constraint::Range, field, text));
    let lengths = [
        ("shaft_diameter", problem.shaft_diameter),
        ("support_span", problem.support_span),
        ("load_span", problem.load_span),
    ];
    for (field, length) in lengths {
        if length <= Length::ZERO || !length_in_range(length) {
            let (text, limit) = (length_text(length), length_text(Length::LIMIT));
            return range(
                field,
                format!("is {text}; write more than nothing, up to {limit}"),
            );
        }
    }
    let stresses = [
        ("youngs_modulus_gpa", problem.youngs_modulus),
        ("yield_mpa", problem.yield_stress),
    ];
    for (field, stress) in stresses {
        if stress <= Stress::ZERO || stress > Stress::LIMIT {
            let (text, limit) = (stress.words(), Stress::LIMIT.words());
            return range(
                field,
                format!("is {text}; write more than nothing, up to {limit}"),
            );
        }
    }
    let load = problem.load_per_side;
    if load <= Mass::ZERO || !mass_in_range(load) {
        let (text, limit) = (mass_text(load), mass_text(Mass::LIMIT));
        return range(
            "load_per_side",
            format!("is {text}; write more than nothing, up to {limit}"),
        );
    }
    if let Some(drop) = problem.drop.filter(|drop| !length_in_range(*drop)) {
        let (text, limit) = (length_text(drop), length_text(Length::LIMIT));
        return range("drop", format!("is {text}; write from nothing to {limit}"));
    }
    if problem.load_span <= problem.support_span {
        let (load, support) = (
            length_text(problem.load_span),
            length_text(problem.support_span),
        );
        let text = format!("of {load} does not reach beyond the support span of {support}");
        return range("load_span", text);
    }
    Ok(())
}

#[expect(
    clippy::cast_precision_loss,
    reason = "sixteen digits of a length, a load or a stress are enough for a guide"
)]
const fn float(count: i64) -> f64 {
    count as f64
}

#[expect(
    clippy::cast_possible_truncation,
    reason = "`as` stops at the ends of 64 bits, which the caller takes as too much"
)]
fn whole(value: f64) -> i64 {
    libm::round(value) as i64
}
