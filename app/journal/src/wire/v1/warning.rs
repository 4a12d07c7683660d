//! Wire version 1: warnings of a sheet. Never change; add v2.
//!
//! Refuses: any other kind, unknown fields.
use super::words::LandmarkV1;
use domain::sheet::{Rated, Warning};
use domain::{Length, Mass};
use serde::{Deserialize, Serialize};

/// Something with a rated load.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub(crate) enum RatedV1 {
    /// Both pins together.
    Pins,
    /// The rack.
    Rack,
    /// The bar.
    Bar,
}

impl From<Rated> for RatedV1 {
    fn from(what: Rated) -> Self {
        match what {
            Rated::Pins => Self::Pins,
            Rated::Rack => Self::Rack,
            Rated::Bar => Self::Bar,
        }
    }
}

impl From<RatedV1> for Rated {
    fn from(what: RatedV1) -> Self {
        match what {
            RatedV1::Pins => Self::Pins,
            RatedV1::Rack => Self::Rack,
            RatedV1::Bar => Self::Bar,
        }
    }
}

/// Something that the coach should know about a sheet.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case", deny_unknown_fields)]
pub(crate) enum WarningV1 {
    /// Nobody measured that landmark.
    NotMeasured(LandmarkV1),
    /// No hole serves that target height.
    NoHoleNm(i64),
    /// A straight bar lies on the pins.
    StraightBarOnPins,
    /// Under the coach's least.
    OverlapSmall,
    /// The nearest load is shown.
    NotLoadable,
    /// That landmark is an estimate.
    Estimated {
        landmark: LandmarkV1,
        spread_nm: i64,
        doubtful: bool,
    },
    /// That landmark is an estimate too rough for the holes.
    EstimateTooRough {
        landmark: LandmarkV1,
        spread_nm: i64,
        spacing_nm: i64,
    },
    /// Plates smaller than the standard disc.
    LowPlates {
        from_ng: i64,
        to_ng: i64,
        raise_nm: i64,
    },
    /// Over what a maker stated.
    OverRated {
        what: RatedV1,
        load_ng: i64,
        rated_ng: i64,
    },
    /// A drop bends the bar for good.
    TakesSet { drop_nm: i64, of_yield_ppm: u32 },
}

impl From<&Warning> for WarningV1 {
    fn from(warning: &Warning) -> Self {
        match warning {
            Warning::NotMeasured(landmark) => Self::NotMeasured((*landmark).into()),
            Warning::NoHole(target) => Self::NoHoleNm(target.nm()),
            Warning::StraightBarOnPins => Self::StraightBarOnPins,
            Warning::OverlapSmall => Self::OverlapSmall,
            Warning::NotLoadable => Self::NotLoadable,
            Warning::Estimated {
                landmark,
                spread,
                doubtful,
            } => Self::Estimated {
                landmark: (*landmark).into(),
                spread_nm: spread.nm(),
                doubtful: *doubtful,
            },
            Warning::EstimateTooRough {
                landmark,
                spread,
                spacing,
            } => Self::EstimateTooRough {
                landmark: (*landmark).into(),
                spread_nm: spread.nm(),
                spacing_nm: spacing.nm(),
            },
            Warning::LowPlates { from, to, raise } => Self::LowPlates {
                from_ng: from.ng(),
                to_ng: to.ng(),
                raise_nm: raise.nm(),
            },
            Warning::OverRated { what, load, rated } => Self::OverRated {
                what: (*what).into(),
                load_ng: load.ng(),
                rated_ng: rated.ng(),
            },
            Warning::TakesSet { drop, of_yield_ppm } => Self::TakesSet {
                drop_nm: drop.nm(),
                of_yield_ppm: *of_yield_ppm,
            },
        }
    }
}

impl From<WarningV1> for Warning {
    fn from(warning: WarningV1) -> Self {
        match warning {
            WarningV1::NotMeasured(landmark) => Self::NotMeasured(landmark.into()),
            WarningV1::NoHoleNm(nm) => Self::NoHole(Length::from_nm(nm)),
            WarningV1::StraightBarOnPins => Self::StraightBarOnPins,
            WarningV1::OverlapSmall => Self::OverlapSmall,
            WarningV1::NotLoadable => Self::NotLoadable,
            WarningV1::Estimated {
                landmark,
                spread_nm,
                doubtful,
            } => Self::Estimated {
                landmark: landmark.into(),
                spread: Length::from_nm(spread_nm),
                doubtful,
            },
            WarningV1::EstimateTooRough {
                landmark,
                spread_nm,
                spacing_nm,
            } => Self::EstimateTooRough {
                landmark: landmark.into(),
                spread: Length::from_nm(spread_nm),
                spacing: Length::from_nm(spacing_nm),
            },
            WarningV1::LowPlates {
                from_ng,
                to_ng,
                raise_nm,
            } => Self::LowPlates {
                from: Mass::from_ng(from_ng),
                to: Mass::from_ng(to_ng),
                raise: Length::from_nm(raise_nm),
            },
            WarningV1::OverRated {
                what,
                load_ng,
                rated_ng,
            } => Self::OverRated {
                what: what.into(),
                load: Mass::from_ng(load_ng),
                rated: Mass::from_ng(rated_ng),
            },
            WarningV1::TakesSet {
                drop_nm,
                of_yield_ppm,
            } => Self::TakesSet {
                drop: Length::from_nm(drop_nm),
                of_yield_ppm,
            },
        }
    }
}
