//! Estimates of the single from a set of several reps, by published equations, side by side.
//!
//! They were fitted to full lifts of other people; the spread between them is the least that they
//! are unsure by. No load is ever decided by them, so they may be floats within.
//!
//! Refuses: more than [`REPS_MOST`] reps, where they part company; a single, which needs no
//! estimate; sets in which the back moved; one number without the others.
use crate::hold::Hold;
use crate::lift::{Landmark, Lift, Start};
use crate::mass::Mass;

/// The most reps that are estimated from.
pub const REPS_MOST: u8 = 10;

/// One published equation.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Equation {
    /// w (1 + r/30). Epley B (1985) Poundage chart.
    Epley,
    /// 36 w / (37 - r). Brzycki M (1993) JOPERD 64(1):88-90.
    Brzycki,
    /// w r^0.10. Lombardi VP (1989) Beginning Weight Training.
    Lombardi,
    /// 100 w / (52.2 + 41.9 e^(-0.055 r)). Mayhew JL et al. (1992) J Appl Sport Sci Res 6:200-206.
    Mayhew,
    /// w (1 + 0.025 r). O'Conner B, Simmons J, O'Shea P (1989) Weight Training Today.
    OConner,
    /// 100 w / (48.8 + 53.8 e^(-0.075 r)). Wathen D (1994), in circulation as Wathan.
    Wathan,
}

impl Equation {
    /// All of them, in the order of the alphabet but for the oldest.
    pub const ALL: [Self; 6] = [
        Self::Epley,
        Self::Brzycki,
        Self::Lombardi,
        Self::Mayhew,
        Self::OConner,
        Self::Wathan,
    ];

    /// As the trade calls it.
    #[must_use]
    pub const fn word(self) -> &'static str {
        match self {
            Self::Epley => "Epley",
            Self::Brzycki => "Brzycki",
            Self::Lombardi => "Lombardi",
            Self::Mayhew => "Mayhew",
            Self::OConner => "O'Conner",
            Self::Wathan => "Wathan",
        }
    }

    /// How many times the load of a set of `reps` the single is; `None` where the equation is not
    /// used.
    #[must_use]
    pub fn factor(self, reps: u8) -> Option<f64> {
        if reps == 0 || reps > REPS_MOST {
            return None;
        }
        let r = f64::from(reps);
        Some(match self {
            Self::Epley => 1.0 + r / 30.0,
            Self::Brzycki => 36.0 / (37.0 - r),
            Self::Lombardi => libm::pow(r, 0.10),
            Self::Mayhew => 100.0 / (52.2 + 41.9 * libm::exp(-0.055 * r)),
            Self::OConner => 1.0 + 0.025 * r,
            Self::Wathan => 100.0 / (48.8 + 53.8 * libm::exp(-0.075 * r)),
        })
    }
}

/// What all equations say of one set.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Singles {
    /// In the order of [`Equation::ALL`].
    pub each: [(Equation, Mass); 6],
}

impl Singles {
    /// The least of them.
    #[must_use]
    pub fn least(&self) -> Mass {
        self.each
            .iter()
            .map(|(_, mass)| *mass)
            .min()
            .unwrap_or_default()
    }

    /// The most.
    #[must_use]
    pub fn most(&self) -> Mass {
        self.each
            .iter()
            .map(|(_, mass)| *mass)
            .max()
            .unwrap_or_default()
    }
}

/// The single by all equations; `None` where they mean nothing: at one rep, above [`REPS_MOST`],
/// or with the back moved.
#[must_use]
pub fn singles(load: Mass, reps: u8, hold: Hold) -> Option<Singles> {
    if reps < 2 || hold != Hold::Kept || load <= Mass::ZERO {
        return None;
    }
    let mut each = Equation::ALL.map(|equation| (equation, Mass::ZERO));
    for (equation, single) in &mut each {
        *single = times(load, equation.factor(reps)?);
    }
    Some(Singles { each })
}

/// Whether a lift is only part of a pull, so that its estimates rank a lifter against themselves
/// and predict nothing else: no study of the equations on partial pulls was found.
#[must_use]
pub fn is_partial(lift: &Lift) -> bool {
    matches!(lift.start, Start::Pins { .. }) || lift.end != Landmark::Lockout
}

#[expect(
    clippy::cast_precision_loss,
    clippy::cast_possible_truncation,
    reason = "an estimate; `as` stops at the ends of 64 bits"
)]
fn times(load: Mass, factor: f64) -> Mass {
    Mass::from_ng(libm::round(load.ng() as f64 * factor) as i64)
}
