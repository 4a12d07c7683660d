//! A body: landmarks estimated from stature where nobody measured them, with their spread, and
//! how far such an estimate can be trusted to choose a hole.
//!
//! Estimates are whole nanometres; spreads are standard deviations: about two people in three lie
//! within one of them. Refuses: to pass for a measurement, to speak of bodies taller or shorter
//! than the surveyed ones, and to judge health or fitness.
use self::survey::{Line, OneSex};
use crate::length::Length;
use crate::lift::Landmark;

pub mod survey;

/// What landmarks may be estimated from.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub struct Body {
    /// Height without shoes, as measured.
    pub stature: Option<Length>,
    /// Height as the lifter says it; used where it was not measured.
    pub stature_said: Option<Length>,
    /// As the survey counted people; without it both together are taken.
    pub sex: Option<Sex>,
    /// How much the shoes raise the lifter.
    pub sole: Option<Length>,
}

/// As the survey counted people.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Sex {
    /// 1,986 of the surveyed.
    Female,
    /// 4,082 of the surveyed.
    Male,
}

/// A landmark that was not measured.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Estimate {
    /// Above the floor, in shoes.
    pub height: Length,
    /// Standard deviation of what the height really is.
    pub spread: Length,
}

/// Something added to a surveyed height, and its standard deviation. Common practice, no source.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
struct Allowance {
    add: Length,
    spread: Length,
}

/// The tuberosity lies under the upper edge of the tibia, which the survey measured.
const TUBEROSITY: Allowance = Allowance {
    add: Length::mm(-35),
    spread: Length::mm(8),
};
/// The top of the patella lies over its middle, which the survey measured.
const PATELLA_TOP: Allowance = Allowance {
    add: Length::mm(24),
    spread: Length::mm(4),
};
/// Where people put the mid-thigh about the middle between the mid-patella and the greater
/// trochanter.
const MID_THIGH: Allowance = Allowance {
    add: Length::ZERO,
    spread: Length::mm(10),
};
/// How the bar sits in the fingers, and how straight somebody stands.
const LOCKOUT: Allowance = Allowance {
    add: Length::ZERO,
    spread: Length::mm(10),
};
/// A sole of which nothing is said.
const SOLE: Allowance = Allowance {
    add: Length::mm(20),
    spread: Length::mm(5),
};

impl Body {
    /// The height of `landmark` in shoes, from stature; `None` without a stature within the
    /// survey's range.
    #[must_use]
    pub fn estimate(&self, landmark: Landmark) -> Option<Estimate> {
        let people = survey::of(self.sex);
        let (stature, said) = self.stature_of(people)?;
        let patella = [people.mid_patella];
        let (lines, allowance): (&[Line], _) = match landmark {
            Landmark::TibialTuberosity => (&[people.tibial_height], TUBEROSITY),
            Landmark::PatellaTop => (&patella, PATELLA_TOP),
            Landmark::MidThigh => (&[people.mid_patella, people.trochanter], MID_THIGH),
            Landmark::Lockout => (&[people.hang], LOCKOUT),
        };
        let sole = self.sole.map_or(SOLE, |add| Allowance {
            add,
            spread: Length::ZERO,
        });
        let bare = mean(lines.iter().map(|line| line.at(stature)));
        // The middle of two heights of one body: no surer than if they erred together.
        let line_spread = mean(lines.iter().map(|line| line.spread));
        // What a stature that was only said errs by comes through the line's slope.
        let said_spread = mean(lines.iter().map(|line| line.rise(said)));
        let spreads = [line_spread, said_spread, allowance.spread, sole.spread];
        Some(Estimate {
            height: bare + allowance.add + sole.add,
            spread: together(&spreads),
        })
    }

    /// Stature to reckon with and how far it may be off: as measured, else as said, less what
    /// people overstate.
    fn stature_of(&self, people: &OneSex) -> Option<(Length, Length)> {
        let measured = self.stature.map(|stature| (stature, Length::ZERO));
        let said = self
            .stature_said
            .map(|said| (said - people.overstated, people.overstated_spread));
        let (stature, off) = measured.or(said)?;
        (people.shortest..=people.tallest)
            .contains(&stature)
            .then_some((stature, off))
    }
}

fn mean(lengths: impl Iterator<Item = Length>) -> Length {
    let (sum, count) = lengths.fold((0, 0), |(sum, n), length| (sum + length.nm(), n + 1));
    Length::from_nm(sum / i64::max(count, 1))
}

/// Standard deviation of a sum of things that err apart from each other, to the micrometre.
fn together(spreads: &[Length]) -> Length {
    let square = |spread: &Length| (spread.nm() / 1_000).unsigned_abs().pow(2);
    let um = spreads.iter().map(square).sum::<u64>().isqrt();
    Length::from_nm(i64::try_from(um).unwrap_or(i64::MAX / 1_000) * 1_000)
}

/// What an estimate may do about a hole.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Trust {
    /// Nothing: more than one person in five would be off by half a spacing.
    TooRough,
    /// Choose it, with doubt: about one in ten would be.
    Doubtful,
    /// Stand in until somebody measures: few would be.
    StandsIn,
}

/// How far an estimate of that spread can choose among holes of that spacing. By whole numbers:
/// half the spacing against 1.3 and 2.2 standard deviations, which 19 and 3 % of a normal
/// distribution lie beyond. That gives what the survey's people say (Gordon et al. 2014; computed
/// from the public data): 1 in holes cannot be chosen so, 2 in are doubtful, 3 in may do.
#[must_use]
pub fn trust(spread: Length, spacing: Length) -> Trust {
    if spacing.times(5) >= spread.times(22) {
        Trust::StandsIn
    } else if spacing.times(5) >= spread.times(13) {
        Trust::Doubtful
    } else {
        Trust::TooRough
    }
}

/// The share of people, in hundredths of a percent, whose landmark lies further than half a hole
/// spacing from an estimate of that spread: for words, never for choosing. Normal distribution.
#[must_use]
pub fn missed_share(spread: Length, spacing: Length) -> u32 {
    if spread <= Length::ZERO {
        return 0;
    }
    let sds = float(spacing) / 2.0 / float(spread);
    let share = libm::round(libm::erfc(sds / core::f64::consts::SQRT_2) * 10_000.0);
    #[expect(
        clippy::cast_possible_truncation,
        clippy::cast_sign_loss,
        reason = "from 0 to 20000"
    )]
    let share = share as u32;
    share.min(10_000)
}

#[expect(
    clippy::cast_precision_loss,
    reason = "sixteen digits of a length are enough for words"
)]
const fn float(length: Length) -> f64 {
    length.nm() as f64
}
