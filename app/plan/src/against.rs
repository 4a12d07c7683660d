//! The gym that a plan is held against: its names, its bars, the bests of its lifters.
//!
//! Refuses: percentages of a best that nobody recorded; loads under the lightest bar.
use crate::fault::Wrong;
use crate::known::Known;
use crate::words::{term, words};
use chrono::NaiveDate;
use domain::prescription::LoadWish;
use domain::{Gym, Lifter, Mass, MassUnit};
use text::Language;
use text::keys::checked as k;
use text::keys::shipped::LIFTS;

/// Most words of a cell among which a lift is looked for.
const WORDS_MAX: usize = 6;

/// What rows are held against.
pub(crate) struct Against<'g> {
    pub(crate) gym: Option<&'g Gym>,
    pub(crate) bars: Known,
    pub(crate) lifters: Known,
    pub(crate) lifts: Known,
    pub(crate) patterns: Known,
}

impl<'g> Against<'g> {
    /// A gym; without one, names are taken as they stand.
    pub(crate) fn of(gym: Option<&'g Gym>) -> Self {
        let Some(read) = gym else {
            return Self {
                gym,
                bars: Known::open(term!(k::BAR)),
                lifters: Known::open(term!(k::LIFTER)),
                lifts: Known::open(term!(k::LIFT)),
                patterns: Known::open(term!(k::WARM_UP_PATTERN)),
            };
        };
        let mut lifters = Known::of(
            term!(k::LIFTER),
            read.lifters.iter().map(|l| l.name.as_str()),
        );
        for lifter in &read.lifters {
            for short in &lifter.also {
                lifters.call_of(short, &lifter.name);
            }
        }
        let mut lifts = Known::of(term!(k::LIFT), read.lifts.iter().map(|l| l.name.as_str()));
        for lift in &read.lifts {
            for short in &lift.also {
                lifts.call_of(short, &lift.name);
            }
        }
        // A gym's own short names go first; the words that the screen shows are known besides.
        let others = Language::ALL.into_iter().skip(1);
        for (say, lift) in others.flat_map(|say| LIFTS.map(|lift| (say, lift))) {
            lifts.call_of(say.pick(lift), Language::English.pick(lift));
        }
        Self {
            gym,
            bars: Known::of(term!(k::BAR), read.bars.iter().map(|b| b.name.as_str())),
            lifters,
            lifts,
            patterns: Known::of(
                term!(k::WARM_UP_PATTERN),
                read.patterns.iter().map(|p| p.name.as_str()),
            ),
        }
    }

    /// The lightest bar with its collars.
    fn lightest(&self) -> Option<Mass> {
        let bars = self.gym?.bars.iter();
        bars.map(|bar| bar.mass + bar.collars).min()
    }

    /// The unit that a lifter reads loads in.
    pub(crate) fn unit_of(&self, lifter: &str) -> Option<MassUnit> {
        let lifters = self.gym?.lifters.iter();
        let who = lifters.into_iter().find(|known| known.name == lifter);
        who.map(|who| who.unit)
    }

    /// What is recorded of a lifter in a lift.
    pub(crate) fn best_of(&self, lifter: &str, lift: &str) -> Option<Mass> {
        let mut lifters = self.gym?.lifters.iter();
        best(lifters.find(|known| known.name == lifter)?, lift)
    }

    /// A lift at the front of a text, and what stands behind it.
    pub(crate) fn lift_in_front<'t>(&self, text: &'t str) -> Option<(String, &'t str)> {
        let ends = text.char_indices().filter(|(_, c)| !c.is_alphanumeric());
        let ends = ends.map(|(at, _)| at).take(WORDS_MAX);
        let ends: Vec<usize> = ends.chain([text.len()]).collect();
        ends.into_iter().rev().find_map(|end| {
            let front = text.get(..end)?.trim();
            let lift = self.lifts.lookup(front)?;
            Some((
                lift,
                text.get(end..)?.trim_start_matches([' ', ':', '-', ',']),
            ))
        })
    }

    /// A lift at the end of a text, behind other words.
    pub(crate) fn lift_behind(&self, text: &str) -> Option<String> {
        let starts = text.match_indices(' ').map(|(at, _)| at).take(WORDS_MAX);
        let mut behind = starts.filter_map(|at| text.get(at..));
        behind.find_map(|text| self.lifts.lookup(text.trim()))
    }

    /// Holds a load against the lifter's bests and the gym's bars.
    ///
    /// # Errors
    /// A share of a best that nobody recorded, a load under the lightest bar.
    pub(crate) fn judge(
        &self,
        text: &str,
        load: LoadWish,
        (lifter, lift, on): (&str, &str, NaiveDate),
    ) -> Result<(), Wrong> {
        let Some(gym) = self.gym else {
            return Ok(());
        };
        let load = match load {
            LoadWish::Mass(load) => load,
            LoadWish::OfTop(_) | LoadWish::More(_) | LoadWish::Due => return Ok(()),
            LoadWish::OfTraining(share) => {
                let who = gym.lifters.iter().find(|known| known.name == lifter);
                // One that is missing is understood all the same; it is told where rows are taken.
                let max = who.and_then(|who| who.training_max(lift, on));
                let Some(max) = max else {
                    return Ok(());
                };
                share_of(max, share)
            }
            LoadWish::OfBest(share) => {
                let who = gym.lifters.iter().find(|known| known.name == lifter);
                let Some(best) = who.and_then(|who| best(who, lift)) else {
                    let what = words!(k::OF_A_BEST_IN_THE, lift, lifter);
                    let right = words!(k::WRITE_A_MASS_OR_RECORD);
                    return Err(Wrong::value(text, &what, right));
                };
                share_of(best, share)
            }
        };
        match self.lightest() {
            Some(bar) if load < bar => {
                let pounds = text.to_lowercase().contains("lb");
                let unit = if pounds { MassUnit::Lb } else { MassUnit::Kg };
                let what = words!(k::LESS_THAN_THE_LIGHTEST_BAR, bar.words(unit));
                let right = words!(k::WRITE_THE_LOAD_WITH_THE);
                Err(Wrong::value(text, &what, right))
            }
            _ => Ok(()),
        }
    }
}

/// Hundredths of a percent of a mass: ten thousand make the whole.
fn share_of(of: Mass, share: u32) -> Mass {
    let ng = i128::from(of.ng()) * i128::from(share) / 10_000;
    Mass::from_ng(i64::try_from(ng).unwrap_or(i64::MAX))
}

fn best(lifter: &Lifter, lift: &str) -> Option<Mass> {
    let best = lifter.bests.iter().find(|(name, _)| name == lift);
    best.map(|(_, best)| *best)
}
