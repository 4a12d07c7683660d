//! Warnings of a sheet as sentences: what is the matter, then what to do.
//!
//! Refuses: to certify anything; figures from makers go with the words that say so.
use crate::words::whole_mm;
use domain::lift::Landmark;
use domain::sheet::{LiftSheet, Rated, Warning};
use domain::solve::bar::GUIDE;
use domain::{Length, LengthUnit, Mass, MassUnit};

/// One warning as a sentence: what is the matter, then what to do.
#[must_use]
pub fn warning(sheet: &LiftSheet, warning: &Warning) -> String {
    match warning {
        Warning::NotMeasured(landmark) => not_measured(*landmark),
        Warning::NoHole(target) => format!(
            "no hole of {} puts the bar at {} mm; use blocks, or another rack",
            sheet.rack,
            target.number(LengthUnit::Mm)
        ),
        Warning::StraightBarOnPins => {
            "a straight bar lies on the pins and may take a set; fetch the retired one".into()
        }
        Warning::OverlapSmall => format!(
            "the overlap is under the coach's least of {} mm; set the pins lower",
            sheet
                .overlap
                .as_ref()
                .map_or_else(String::new, |o| o.least.number(LengthUnit::Mm))
        ),
        Warning::NotLoadable => format!(
            "{} cannot be loaded here; the nearest is shown",
            sheet.asked.words(sheet.unit)
        ),
        Warning::Estimated {
            landmark,
            spread,
            doubtful,
        } => estimated(*landmark, *spread, *doubtful),
        Warning::EstimateTooRough {
            landmark,
            spread,
            spacing,
        } => format!(
            "the {} is only estimated, give or take {} mm, too rough for holes {} mm apart; let \
             the coach measure it, then set the pins",
            landmark.word(),
            whole_mm(*spread),
            spacing.number(LengthUnit::Mm)
        ),
        Warning::LowPlates { from, to, raise } => {
            let loads = if from == to {
                format!("at {}", to.words(sheet.unit))
            } else {
                format!(
                    "from {} to {}",
                    from.number(sheet.unit),
                    to.words(sheet.unit)
                )
            };
            let raise = raise.number(LengthUnit::Mm);
            format!("{loads} small plates leave the bar {raise} mm too low; raise it by that much")
        }
        Warning::OverRated { what, load, rated } => over_rated(sheet.unit, *what, *load, *rated),
        Warning::TakesSet { drop, of_yield_ppm } => takes_set(*drop, *of_yield_ppm),
    }
}

/// Whether the pins stand by a landmark that nobody measured.
#[must_use]
pub fn is_estimated(sheet: &LiftSheet) -> bool {
    let Some(pins) = &sheet.pins else {
        return false;
    };
    let of = pins.landmark;
    let is = |w: &Warning| matches!(w, Warning::Estimated { landmark, .. } if *landmark == of);
    sheet.warnings.iter().any(is)
}

/// The sentence for a landmark that was estimated.
fn estimated(landmark: Landmark, spread: Length, doubtful: bool) -> String {
    let next = if doubtful {
        ", so the next hole may be the right one"
    } else {
        ""
    };
    format!(
        "the {} is estimated from stature, give or take {} mm{next}; measure it",
        landmark.word(),
        whole_mm(spread)
    )
}

/// The sentence for a load over what a maker stated.
fn over_rated(unit: MassUnit, what: Rated, load: Mass, rated: Mass) -> String {
    let (load, rated) = (load.words(unit), rated.words(unit));
    match what {
        Rated::Pins => format!("{load} is over the {rated} that the pins are rated for; take less"),
        Rated::Rack => format!("{load} is over the {rated} that the rack is rated for; take less"),
        Rated::Bar => {
            format!("{load} is over the {rated} that the bar is rated for; take another bar")
        }
    }
}

/// The sentence for a bar that a fall on to the pins would bend.
fn takes_set(drop: Length, of_yield_ppm: u32) -> String {
    let percent = (of_yield_ppm + 5_000) / 10_000;
    if drop == Length::ZERO {
        return format!(
            "by its maker's figures this load may bend the bar on the pins for good ({percent} % \
             of yield at rest); take another bar; {GUIDE}"
        );
    }
    let mm = drop.nm() / 1_000_000;
    format!(
        "by its maker's figures a drop of {mm} mm on to the pins bends this bar for good; set it \
         down; {GUIDE}"
    )
}

/// The sentence for a landmark that nobody measured.
#[must_use]
pub fn not_measured(landmark: Landmark) -> String {
    format!(
        "the {} is not measured; let the coach measure it, then set the pins",
        landmark.word()
    )
}
