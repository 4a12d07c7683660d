//! Warnings of a sheet as sentences, in a language: what is the matter, then what to do.
//!
//! Refuses: to certify anything; figures from makers go with the words that say so.
use crate::say::whole_mm;
use crate::{Language, keys as p};
use domain::lift::Landmark;
use domain::sheet::{LiftSheet, Rated, Warning};
use domain::{Length, LengthUnit, Mass, MassUnit};

impl Language {
    /// One warning as a sentence.
    #[must_use]
    pub fn warning(self, sheet: &LiftSheet, warning: &Warning) -> String {
        let mm = |length: Length| self.number(&length.number(LengthUnit::Mm));
        match warning {
            Warning::NotMeasured(landmark) => self.not_measured(*landmark),
            Warning::NoHole(target) => self.fill(p::W_NO_HOLE, &[&sheet.rack, &mm(*target)]),
            Warning::StraightBarOnPins => self.say(p::W_STRAIGHT_BAR),
            Warning::OverlapSmall => {
                let least = sheet.overlap.as_ref().map(|o| mm(o.least));
                self.fill(p::W_OVERLAP, &[&least.unwrap_or_default()])
            }
            Warning::NotLoadable => {
                self.fill(p::W_NOT_LOADABLE, &[&self.mass(sheet.asked, sheet.unit)])
            }
            Warning::Estimated {
                landmark,
                spread,
                doubtful,
            } => {
                let phrase = if *doubtful {
                    p::W_ESTIMATED_DOUBTFUL
                } else {
                    p::W_ESTIMATED
                };
                self.fill(phrase, &[&self.landmark(*landmark), &whole_mm(*spread)])
            }
            Warning::EstimateTooRough {
                landmark,
                spread,
                spacing,
            } => {
                let (of, apart) = (self.landmark(*landmark), mm(*spacing));
                self.fill(p::W_TOO_ROUGH, &[&of, &whole_mm(*spread), &apart])
            }
            Warning::LowPlates { from, to, raise } => {
                let (from_load, to_load) = (
                    self.mass_number(*from, sheet.unit),
                    self.mass(*to, sheet.unit),
                );
                let loads = if from == to {
                    self.fill(p::W_AT, &[&to_load])
                } else {
                    self.fill(p::W_FROM_TO, &[&from_load, &to_load])
                };
                self.fill(p::W_LOW_PLATES, &[&loads, &self.mm_and_in(*raise)])
            }
            Warning::OverRated { what, load, rated } => {
                self.over_rated(sheet.unit, *what, *load, *rated)
            }
            Warning::TakesSet { drop, of_yield_ppm } => self.takes_set(*drop, *of_yield_ppm),
        }
    }

    /// The sentence for a load over what a maker stated.
    fn over_rated(self, unit: MassUnit, what: Rated, load: Mass, rated: Mass) -> String {
        let phrase = match what {
            Rated::Pins => p::W_PINS_RATED,
            Rated::Rack => p::W_RACK_RATED,
            Rated::Bar => p::W_BAR_RATED,
        };
        self.fill(phrase, &[&self.mass(load, unit), &self.mass(rated, unit)])
    }

    /// The sentence for a bar that a fall on to the pins would bend.
    fn takes_set(self, drop: Length, of_yield_ppm: u32) -> String {
        if drop == Length::ZERO {
            let percent = (of_yield_ppm + 5_000) / 10_000;
            return self.fill(p::W_SET_AT_REST, &[&percent.to_string()]);
        }
        self.fill(p::W_SET_DROPPED, &[&(drop.nm() / 1_000_000).to_string()])
    }

    /// The sentence for a landmark that nobody measured.
    #[must_use]
    pub fn not_measured(self, landmark: Landmark) -> String {
        self.fill(p::W_NOT_MEASURED, &[&self.landmark(landmark)])
    }
}
