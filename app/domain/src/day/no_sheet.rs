//! Why a lifter has no sheet today, in English; other languages are view's work.
use crate::mass::{Mass, MassUnit};
use crate::plausible::Odd;
use crate::solve::Constraint;
use alloc::string::String;
use chrono::NaiveDate;
use core::fmt;

/// Why there is no sheet.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum NoSheet {
    /// The plan has nothing for this lifter today.
    NothingToday {
        /// The day and the lift that it has next, if any.
        next: Option<(NaiveDate, String)>,
    },
    /// Nor has the programme, which goes on later.
    Rest {
        /// Its name.
        programme: String,
        /// When it goes on.
        from: NaiveDate,
    },
    /// The gym's files miss something that the plan or the lifter names.
    Missing {
        /// "lift", "rack", "bar", "plate set", "warm-up pattern".
        what: &'static str,
        /// Its name.
        name: String,
    },
    /// The lifter is hurt, until the coach rules.
    Hurt,
    /// Away so long that the lift begins anew with the coach.
    Anew {
        /// Days that count as a break.
        days: u16,
    },
    /// The load is far over what the record supports; the coach says whether it is meant.
    LooksWrong {
        /// What the plan asks.
        load: Mass,
        /// What looks wrong of it.
        odd: Odd,
        /// The lifter's unit.
        unit: MassUnit,
    },
    /// A percentage of a best that nobody recorded.
    NoBest,
    /// A share of a training max that nobody wrote for the day.
    NoTrainingMax,
    /// A load that follows from what was done, of which nothing was.
    NoLoad,
    /// The plates make nothing within [`WORK_OFF`] of the load that is asked for.
    ///
    /// [`WORK_OFF`]: crate::ladder::WORK_OFF
    NotMade {
        /// What is asked for.
        asked: Mass,
        /// The lifter's unit.
        unit: MassUnit,
        /// The next load below that can be made; `None` under the bar alone.
        below: Option<Mass>,
        /// The next load above; `None` over all plates together.
        above: Option<Mass>,
    },
    /// No ladder can be loaded; why.
    NoLadder {
        /// What bites.
        constraint: Constraint,
        /// What is wrong, with the value and the limit, in English.
        text: String,
    },
}

impl fmt::Display for NoSheet {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::NothingToday { next: None } => f.write_str("nothing today"),
            Self::NothingToday {
                next: Some((day, lift)),
            } => write!(f, "nothing today; {lift} on {}", day.format("%A %-d %B")),
            Self::Rest { programme, from } => {
                let from = from.format("%A %-d %B");
                write!(f, "nothing today; {programme} goes on from {from}")
            }
            Self::Missing { what, name } => {
                write!(
                    f,
                    "no {what} is called \"{name}\"; write it into the gym's files"
                )
            }
            Self::Hurt => {
                f.write_str("hurt: nothing is due until the coach rules; stop and see a clinician")
            }
            Self::Anew { days } => {
                write!(
                    f,
                    "{days} days away beyond the plan; begin anew with the coach"
                )
            }
            Self::LooksWrong { load, odd, unit } => {
                let load = load.words(*unit);
                match odd {
                    Odd::Over(supports) | Odd::OtherUnit(supports) => {
                        let supports = supports.words(*unit);
                        write!(
                            f,
                            "{load} looks wrong: the record supports {supports}; ask the coach"
                        )
                    }
                    Odd::Untried => write!(
                        f,
                        "{load} looks wrong: nothing is recorded that supports it; ask the coach"
                    ),
                    Odd::Reps(reps) => write!(
                        f,
                        "{reps} reps of work look wrong, at {load}; ask the coach"
                    ),
                }
            }
            Self::NoLoad => f.write_str("nothing is due of it yet; write a load into the plan"),
            Self::NoBest => f.write_str("no best is recorded; write the load as a mass"),
            Self::NoTrainingMax => f.write_str(
                "no training max for this day; write it into lifters.toml, or the load as a mass",
            ),
            Self::NotMade {
                asked,
                unit,
                below,
                above,
            } => {
                let words = |mass: &Mass| mass.words(*unit);
                write!(f, "the plates do not make {}; they make ", words(asked))?;
                match (below, above) {
                    (Some(below), Some(above)) => {
                        write!(f, "{} and {}", words(below), words(above))?;
                    }
                    (Some(most), None) => write!(f, "{} at most", words(most))?,
                    (None, Some(least)) => write!(f, "{} at least", words(least))?,
                    (None, None) => f.write_str("nothing near it")?,
                }
                f.write_str("; ask the coach for another load")
            }
            Self::NoLadder { text, .. } => write!(f, "{text}; ask the coach for another load"),
        }
    }
}
