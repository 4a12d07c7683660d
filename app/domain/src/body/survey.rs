//! What a survey of bodies says of heights by stature.
//!
//! 2012 US Army anthropometric survey, public release, 4,082 men and 1,986 women (Gordon CC et
//! al. 2014, NATICK/TR-15/007): least squares on stature, computed from the public data; the
//! figures stand in `tests/references/survey.csv`. Barefoot. Soldiers of one country at one time:
//! other people may differ. Refuses: landmarks that the survey does not have.
use super::Sex;
use crate::length::Length;

/// A height as a straight line over stature.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Line {
    /// Height gained for a metre of stature, micrometres.
    slope_um: i64,
    /// Height at stature 0, micrometres.
    start_um: i64,
    /// Standard deviation of what the line leaves over.
    pub spread: Length,
}

/// What is known of one sex, or of both together.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct OneSex {
    /// Upper edge of the tibia.
    pub tibial_height: Line,
    /// Middle of the kneecap.
    pub mid_patella: Line,
    /// Greater trochanter of the hip.
    pub trochanter: Line,
    /// A bar in hanging hands: wrist height less palm length, derived.
    pub hang: Line,
    /// How much taller people say they are than they are, on average.
    pub overstated: Length,
    /// Its standard deviation.
    pub overstated_spread: Length,
    /// Least stature that was surveyed.
    pub shortest: Length,
    /// Greatest stature that was surveyed.
    pub tallest: Length,
}

impl Line {
    /// The height at `stature`, a half of a nanometre up.
    #[must_use]
    pub fn at(&self, stature: Length) -> Length {
        self.rise(stature) + Length::from_nm(self.start_um * 1_000)
    }

    /// How much more height so much more stature gives.
    #[must_use]
    pub fn rise(&self, stature: Length) -> Length {
        let millionths = i128::from(self.slope_um) * i128::from(stature.nm());
        let nm = (millionths + 500_000).div_euclid(1_000_000);
        Length::from_nm(i64::try_from(nm).unwrap_or(i64::MAX))
    }
}

const fn um(um: i64) -> Length {
    Length::from_nm(um * 1_000)
}

const fn line(slope_um: i64, start_um: i64, spread_um: i64) -> Line {
    Line {
        slope_um,
        start_um,
        spread: um(spread_um),
    }
}

const MEN: OneSex = OneSex {
    tibial_height: line(334_438, -119_138, 13_515),
    mid_patella: line(341_940, -112_133, 15_547),
    trochanter: line(609_757, -169_933, 25_900),
    hang: line(466_940, -88_990, 22_609),
    overstated: um(22_690),
    overstated_spread: um(26_310),
    shortest: um(1_491_000),
    tallest: um(1_993_000),
};

const WOMEN: OneSex = OneSex {
    tibial_height: line(332_456, -103_629, 13_105),
    mid_patella: line(341_419, -106_943, 13_972),
    trochanter: line(597_033, -126_901, 22_959),
    hang: line(453_227, -52_575, 21_485),
    overstated: um(12_410),
    overstated_spread: um(28_120),
    shortest: um(1_409_000),
    tallest: um(1_829_000),
};

/// All 6,068 together. What they overstate is pooled from the two by their numbers:
/// (4082 x 22.69 + 1986 x 12.41) / 6068, and the standard deviation about that mean.
const BOTH: OneSex = OneSex {
    tibial_height: line(291_468, -41_451, 14_046),
    mid_patella: line(326_783, -84_725, 15_123),
    trochanter: line(530_183, -26_208, 26_118),
    hang: line(415_760, 3_361, 22_749),
    overstated: um(19_325),
    overstated_spread: um(27_345),
    shortest: um(1_409_000),
    tallest: um(1_993_000),
};

/// What is known of that sex; of both together when it is not said.
#[must_use]
pub const fn of(sex: Option<Sex>) -> &'static OneSex {
    match sex {
        Some(Sex::Male) => &MEN,
        Some(Sex::Female) => &WOMEN,
        None => &BOTH,
    }
}
