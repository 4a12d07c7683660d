//! When to split the deadlift into two partials, and when to go back to it before a test: advice
//! with its evidence, from the record.
//!
//! Once fives get heavy and no longer rise, the full lift costs more recovery than it gives; two
//! partials that overlap then take its place. All figures are common practice, no source, unless
//! one is named; a coach can change each of them in programme.toml.
//!
//! Refuses: to change anybody's programme; floats; a trend from fewer than [`OUTINGS_LEAST`]
//! outings.
use crate::gym::Gym;
use crate::lifter::Lifter;
use crate::mass::Mass;
use crate::next::here::loads;
use crate::next::outing::{Outing, Went};
use crate::next::outings::outings;
use crate::next::step_of;
use crate::state::State;
use alloc::string::String;
use alloc::vec;
use alloc::vec::Vec;
use chrono::{Days, NaiveDate};

/// Fewer outings show no trend.
pub const OUTINGS_LEAST: usize = 4;

/// When a coach would split.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct SplitRule {
    /// The lift that is split.
    pub lift: String,
    /// The partials that take its place.
    pub partials: Vec<String>,
    /// Reps of the work sets that count.
    pub reps: u8,
    /// From this load on; the lower end of about 185 to 205 kg (low to mid 400s of pounds).
    pub from: Mass,
    /// How many of the last outings are looked at, at least [`OUTINGS_LEAST`].
    pub outings: u8,
    /// Progress is slow under this share of what the rules would add each time, in hundredths of
    /// a percent.
    pub slow: u32,
    /// How many of those outings must have fallen short or moved the back.
    pub troubles: u8,
    /// The day of the test or the meet, if one is set.
    pub test: Option<NaiveDate>,
    /// So many days before it the full lift comes back.
    pub back_days: u16,
}

impl SplitRule {
    /// What comes with the program.
    #[must_use]
    pub fn shipped() -> Self {
        Self {
            lift: String::from("deadlift"),
            partials: vec![String::from("halting deadlift"), String::from("rack pull")],
            reps: 5,
            from: Mass::from_ng(185_000_000_000_000),
            outings: 8,
            slow: 5_000,
            troubles: 2,
            test: None,
            back_days: 21,
        }
    }
}

impl SplitRule {
    /// Whether a lift is the one that is split, or one of its partials.
    #[must_use]
    pub fn concerns(&self, lift: &str) -> bool {
        self.lift == lift || self.partials.iter().any(|partial| partial == lift)
    }
}

/// What the record says.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Evidence {
    /// The outings looked at, oldest first.
    pub outings: Vec<Outing>,
    /// The heaviest that went well among them.
    pub heaviest: Option<Mass>,
    /// How much the loads rose from one outing to the next, by least squares; rounded down to the
    /// nanogram, negative when they fell.
    pub rise: Mass,
    /// The load that the line of least squares has at the first and at the last outing.
    pub line: (Mass, Mass),
    /// What the rules add to the heaviest each time that goes well.
    pub due: Mass,
    /// Outings that fell short.
    pub short: u8,
    /// Outings in which the back moved.
    pub moved: u8,
    /// Whether the rise is under the rule's share of what is due.
    pub slow: bool,
}

/// What is advised. Never done by itself.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Advice {
    /// Too few outings to say.
    TooFew,
    /// Not heavy enough yet.
    Light,
    /// Heavy, and it still rises.
    Rising,
    /// Heavy and slow, but the test is so near that the full lift stays.
    TestNear,
    /// Go to the two partials.
    Split,
    /// On the partials, and to stay there.
    Stay,
    /// On the partials: take the full lift up again, the test is near.
    Back,
}

/// One day of the way back to the full lift.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct BackDay {
    /// When.
    pub date: NaiveDate,
    /// Reps of the one work set.
    pub reps: u8,
    /// Share of the best, hundredths of a percent.
    pub share: u32,
    /// What the gym can load of that, not above it; `None` without a best.
    pub load: Option<Mass>,
}

/// Advice with what it follows from.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Split {
    /// The figures that were in force.
    pub rule: SplitRule,
    /// What the record says; `None` without an outing.
    pub evidence: Option<Evidence>,
    /// What is advised.
    pub advice: Advice,
    /// The way back before the test, if one is set and not past.
    pub back: Vec<BackDay>,
}

/// The way back, by days before the test, each a few points under what such a set takes: 5 reps
/// at 87 %, 3 at 93 %, 1 at 100 % of the best (NSCA training load chart, seen). The last is the
/// opener: 93 % of the best of the day (computed from 16,785 attempts of public-domain results).
const WAY_BACK: [(u16, u8, u32); 3] = [(21, 5, 8_000), (14, 3, 8_700), (7, 1, 9_300)];

/// What is advised for a lifter on `date`; `None` for somebody who never did the lift, nor one of
/// its partials.
#[must_use]
pub fn advice(gym: &Gym, state: &State, lifter: &Lifter, date: NaiveDate) -> Option<Split> {
    let rule = gym.coaching.split(&lifter.name);
    let past = outings(state, &lifter.name, &rule.lift, date);
    let of_partial = |lift: &String| outings(state, &lifter.name, lift, date).pop();
    let partial = rule.partials.iter().filter_map(of_partial);
    let partial = partial.map(|outing| outing.date).max();
    let full = past.last().map(|outing| outing.date);
    if partial.is_none() && full.is_none() {
        return None;
    }
    let mut fives = past;
    fives.retain(|outing| outing.reps == rule.reps);
    let window = usize::from(rule.outings).max(OUTINGS_LEAST);
    let seen = fives.split_off(fives.len().saturating_sub(window));
    let step = |load| step_of(&gym.coaching.rule(&lifter.name, &rule.lift), load);
    let evidence = evidence(&rule, seen, step);
    let test = rule.test.filter(|test| *test >= date);
    let back_from = test.and_then(|test| earlier(test, rule.back_days));
    let near = back_from.is_some_and(|from| date >= from);
    let advice = if partial > full {
        if near { Advice::Back } else { Advice::Stay }
    } else {
        of_full(&rule, evidence.as_ref(), near)
    };
    let back = test.map(|test| way_back(gym, state, lifter, &rule, test));
    Some(Split {
        rule,
        evidence,
        advice,
        back: back.unwrap_or_default(),
    })
}

/// For somebody who does the full lift.
fn of_full(rule: &SplitRule, evidence: Option<&Evidence>, near: bool) -> Advice {
    let Some(evidence) = evidence.filter(|e| e.outings.len() >= OUTINGS_LEAST) else {
        return Advice::TooFew;
    };
    let troubles = evidence.short.saturating_add(evidence.moved);
    if evidence.heaviest.is_none_or(|load| load < rule.from) {
        Advice::Light
    } else if !evidence.slow || troubles < rule.troubles {
        Advice::Rising
    } else if near {
        Advice::TestNear
    } else {
        Advice::Split
    }
}

fn evidence(
    rule: &SplitRule,
    outings: Vec<Outing>,
    step: impl Fn(Mass) -> Mass,
) -> Option<Evidence> {
    let last = outings.last()?.load;
    let well = outings.iter().filter(|o| o.went == Went::Well);
    let heaviest = well.map(|o| o.load).max();
    let due = step(heaviest.unwrap_or(last));
    let loads: Vec<i64> = outings.iter().map(|o| o.load.ng()).collect();
    let line = Line::through(&loads);
    let count = |of: fn(&Went) -> bool| {
        let n = outings.iter().filter(|o| of(&o.went)).count();
        u8::try_from(n).unwrap_or(u8::MAX)
    };
    Some(Evidence {
        heaviest,
        rise: line.rise(),
        line: line.ends(),
        due,
        short: count(|went| matches!(went, Went::Short { .. })),
        moved: count(|went| matches!(went, Went::Moved { .. } | Went::MovedWarm)),
        slow: line.is_under(due, rule.slow),
        outings,
    })
}

/// The line of least squares through loads at places 0, 1, 2 and so on, as whole numbers: its
/// slope is `above / below`, and its middle is the mean.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
struct Line {
    /// n times the sum of place times load, less the sum of places times the sum of loads.
    above: i128,
    /// n times the sum of squared places, less the squared sum of places; positive.
    below: i128,
    sum: i128,
    count: i128,
}

impl Line {
    /// Through one load it is flat.
    fn through(loads: &[i64]) -> Self {
        let count = i128::try_from(loads.len()).unwrap_or(i128::MAX);
        let (mut places, mut squares, mut sum, mut products) = (0, 0, 0, 0_i128);
        for (place, load) in (0_i128..).zip(loads) {
            places += place;
            squares += place * place;
            sum += i128::from(*load);
            products += place * i128::from(*load);
        }
        Self {
            above: count * products - places * sum,
            below: (count * squares - places * places).max(1),
            sum,
            count: count.max(1),
        }
    }

    fn rise(self) -> Mass {
        mass(self.above.div_euclid(self.below))
    }

    /// Its load at the first and the last place, rounded down: the mean, less and more half of
    /// the way.
    fn ends(self) -> (Mass, Mass) {
        let at = |halves: i128| {
            let above = 2 * self.sum * self.below + halves * self.above * self.count;
            mass(above.div_euclid(2 * self.below * self.count))
        };
        (at(1 - self.count), at(self.count - 1))
    }

    /// Whether it rises by less than a share of `due`, hundredths of a percent, from place to
    /// place. Exact.
    fn is_under(self, due: Mass, share: u32) -> bool {
        self.above * 10_000 < i128::from(due.ng()) * i128::from(share) * self.below
    }
}

fn mass(ng: i128) -> Mass {
    Mass::from_ng(i64::try_from(ng).unwrap_or(if ng < 0 { i64::MIN } else { i64::MAX }))
}

fn way_back(
    gym: &Gym,
    state: &State,
    lifter: &Lifter,
    rule: &SplitRule,
    test: NaiveDate,
) -> Vec<BackDay> {
    let written = lifter.bests.iter().find(|(lift, _)| *lift == rule.lift);
    let written = written.map(|(_, best)| *best);
    let best = written.max(state.best(&lifter.name, &rule.lift));
    let loads = best.and_then(|best| loads(gym, lifter, (&rule.lift, None), best));
    let load = |share: u32| {
        let ng = i128::from(best?.ng()) * i128::from(share) / 10_000;
        loads.as_ref()?.at_most(mass(ng))
    };
    let due = WAY_BACK.iter().filter(|(days, ..)| *days <= rule.back_days);
    let day = |&(days, reps, share): &(u16, u8, u32)| {
        Some(BackDay {
            date: earlier(test, days)?,
            reps,
            share,
            load: load(share),
        })
    };
    due.filter_map(day).collect()
}

fn earlier(date: NaiveDate, days: u16) -> Option<NaiveDate> {
    date.checked_sub_days(Days::new(u64::from(days)))
}
