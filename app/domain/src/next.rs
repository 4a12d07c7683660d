//! Next time: the work load that follows from how a lift went, by the coach's rules.
//!
//! A decision looks at all outings of one lift with the same reps, oldest first, and says what it
//! follows from, so that it can be read and argued with. The figures of [`Rule::SHIPPED`] are
//! common practice, no source, unless one is named; a coach can change each of them.
//!
//! Refuses: to raise after a short set or a moved back, to raise by more than
//! [`RAISE_MOST`], to give a load that the gym cannot make, floats.
use self::outing::{Outing, Went};
use crate::event::LiftNo;
use crate::mass::Mass;
use crate::solve::loads::Loads;
use chrono::NaiveDate;
use core::cmp::Ordering;

pub mod here;
pub mod outing;
mod reason;
pub mod time;

pub use time::{Decided, Due, NextTime, Ruled};

/// No raise is greater than this share of the load, in hundredths of a percent: ACSM position
/// stand 2009 (seen, abstract): raise the load by 2 to 10 % once the present one is done.
pub const RAISE_MOST: u32 = 1_000;

/// What a coach has ruled for one lift of one lifter. Shares are hundredths of a percent of the
/// load.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Rule {
    /// How much a lift that went well adds.
    pub step: Step,
    /// How many times in a row a load may fall short before it is lowered, at least 1.
    pub tries: u8,
    /// How many times in a row something may go wrong with a load, the last time with the back
    /// moving late in a set, before it is lowered, at least 1.
    pub moved_tries: u8,
    /// What is taken off then, and at once when the back moved or the reps failed early.
    pub drop: u32,
    /// How many drops there may be without a new best before a reset.
    pub drops: u8,
    /// What a reset takes off.
    pub reset: u32,
    /// How many days without the lift are no break.
    pub away_days: u16,
    /// What is taken off after a break.
    pub away: u32,
}

/// How much a lift that went well adds.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Step {
    /// So much.
    Mass(Mass),
    /// So many hundredths of a percent of the load.
    Share(u32),
}

impl Rule {
    /// For a lifter used to the lift.
    pub const SHIPPED: Self = Self {
        // The lower end of ACSM's 2 to 10 %.
        step: Step::Share(250),
        tries: 2,
        moved_tries: 1,
        drop: 500,
        drops: 1,
        reset: 1_000,
        away_days: 28,
        away: 1_000,
    };
}

/// Which way the load goes.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Verdict {
    /// Up.
    Raise,
    /// The same again.
    Repeat,
    /// Down a little, to build up anew.
    Drop,
    /// Down further, after getting stuck; for the coach to look at.
    Reset,
    /// Down after a break.
    Ease,
}

/// Why, beside how it went.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Why {
    /// It went well.
    Well,
    /// It went well on the way back from a break, below the best: two steps at once.
    Back,
    /// It went well, and nothing between this load and [`RAISE_MOST`] above it can be loaded.
    NoStep,
    /// It went well, with less than was due: a lighter day that somebody chose.
    Light,
    /// It fell short or the back moved late, and the load gets another try.
    TryAgain,
    /// It was cut short with all that was done clean.
    Cut,
    /// All tries are used up.
    OutOfTries,
    /// The back moved, or the reps failed, so early that trying again is no use.
    TooMuch,
    /// Drops without a new best are used up.
    Stuck,
    /// A break.
    Away,
    /// The coach ruled otherwise, whatever the rules gave.
    Coach,
}

/// What is due next time, with what it follows from.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Decision {
    /// Up, same, down.
    pub verdict: Verdict,
    /// Why.
    pub why: Why,
    /// The lift that it follows from.
    pub after: LiftNo,
    /// The day of that lift.
    pub date: NaiveDate,
    /// How that lift went.
    pub went: Went,
    /// Work sets asked then.
    pub sets: u8,
    /// Reps of a set asked then, and again.
    pub reps: u8,
    /// The load that the change is reckoned from.
    pub from: Mass,
    /// Which try of that load it was.
    pub nth: u8,
    /// How many tries it has.
    pub tries: u8,
    /// What the rule wants.
    pub wished: Mass,
    /// What the gym can load of that.
    pub load: Mass,
    /// Days since the last time, for a break.
    pub away_days: u16,
}

/// What earlier outings leave to reckon with.
#[derive(Debug, Clone, Copy, Default)]
struct Track {
    /// What was due.
    due: Option<Mass>,
    /// Times in a row that the load fell short.
    tries: u8,
    /// Drops since the best last rose.
    drops: u8,
    /// The heaviest that went well.
    best: Mass,
    /// Whether the lift is on its way back from a break.
    back: bool,
}

/// What is due after `outings`, oldest first, all of one lift with the same reps; `None` after
/// none. The last of them counts most, the others for tries, drops and breaks.
#[must_use]
pub fn decide(rule: &Rule, outings: &[Outing], loads: &Loads) -> Option<Decision> {
    let mut track = Track::default();
    let mut last: Option<Decision> = None;
    for outing in outings {
        if let Some(before) = last {
            let due = on(rule, &before, outing.date, loads);
            track.back |= due.verdict == Verdict::Ease;
            track.due = Some(due.load);
        }
        let decision = after(rule, outing, &mut track, loads);
        last = Some(match outing.kept {
            None => decision,
            // A load that somebody chose is tried from the first.
            Some(kept) if kept.by_coach => {
                track.tries = 0;
                ruled(&decision, kept.load)
            }
            // By the rule that was in force then.
            Some(kept) => Decision {
                load: kept.load,
                ..decision
            },
        });
    }
    last
}

/// A decision as the coach ruled it.
#[must_use]
pub fn ruled(decision: &Decision, load: Mass) -> Decision {
    let verdict = match load.cmp(&decision.from) {
        Ordering::Greater => Verdict::Raise,
        Ordering::Equal => Verdict::Repeat,
        Ordering::Less => Verdict::Drop,
    };
    Decision {
        verdict,
        why: Why::Coach,
        wished: load,
        load,
        ..*decision
    }
}

/// A decision as it stands on `date`: eased when the lift was away for longer than the rule says.
#[must_use]
pub fn on(rule: &Rule, decision: &Decision, date: NaiveDate, loads: &Loads) -> Decision {
    let days = date.signed_duration_since(decision.date).num_days();
    let days = u16::try_from(days).unwrap_or(if days < 0 { 0 } else { u16::MAX });
    if days <= rule.away_days {
        return *decision;
    }
    let from = decision.from.min(decision.load);
    let wished = less(from, rule.away);
    Decision {
        verdict: Verdict::Ease,
        why: Why::Away,
        from,
        wished,
        load: not_above(wished, loads),
        away_days: days,
        ..*decision
    }
}

/// What follows from one outing after what came before.
fn after(rule: &Rule, outing: &Outing, track: &mut Track, loads: &Loads) -> Decision {
    let mut from = outing.load;
    let light = track.due.filter(|due| outing.load < *due);
    let nth = track.tries.saturating_add(1);
    let (verdict, why) = match outing.went {
        Went::Well => {
            track.tries = 0;
            if outing.load > track.best {
                (track.best, track.drops) = (outing.load, 0);
            }
            from = light.unwrap_or(from);
            track.back &= outing.load < track.best;
            match light {
                Some(_) => (Verdict::Repeat, Why::Light),
                None if track.back => (Verdict::Raise, Why::Back),
                None => (Verdict::Raise, Why::Well),
            }
        }
        Went::Cut { .. } => {
            from = light.unwrap_or(from);
            (Verdict::Repeat, Why::Cut)
        }
        Went::Short { .. } | Went::Moved { .. } | Went::MovedWarm => {
            track.back = false;
            let early = outing.is_early();
            if !early && nth < tries_of(rule, outing.went) {
                track.tries = nth;
                (Verdict::Repeat, Why::TryAgain)
            } else {
                lower(rule, early, track)
            }
        }
    };
    let mut wanted = wished(rule, verdict, from);
    if why == Why::Back {
        wanted = wished(rule, verdict, wanted).min(track.best);
    }
    let mut decision = Decision {
        verdict,
        why,
        after: outing.no,
        date: outing.date,
        went: outing.went,
        sets: outing.sets,
        reps: outing.reps,
        from,
        nth,
        tries: tries_of(rule, outing.went).max(nth),
        wished: wanted,
        load: from,
        away_days: 0,
    };
    round(&mut decision, loads);
    decision
}

/// How many tries a load has after it went so.
fn tries_of(rule: &Rule, went: Went) -> u8 {
    match went {
        Went::Moved { .. } | Went::MovedWarm => rule.moved_tries,
        Went::Well | Went::Short { .. } | Went::Cut { .. } => rule.tries,
    }
}

/// A drop, or a reset when there were drops enough.
fn lower(rule: &Rule, early: bool, track: &mut Track) -> (Verdict, Why) {
    track.tries = 0;
    track.drops = track.drops.saturating_add(1);
    if track.drops > rule.drops {
        track.drops = 0;
        (Verdict::Reset, Why::Stuck)
    } else if early {
        (Verdict::Drop, Why::TooMuch)
    } else {
        (Verdict::Drop, Why::OutOfTries)
    }
}

fn wished(rule: &Rule, verdict: Verdict, from: Mass) -> Mass {
    match verdict {
        Verdict::Raise => from + step_of(rule, from),
        Verdict::Repeat => from,
        Verdict::Drop => less(from, rule.drop),
        Verdict::Reset => less(from, rule.reset),
        Verdict::Ease => less(from, rule.away),
    }
}

/// What a rule adds to a load, at most [`RAISE_MOST`] of it.
pub(crate) fn step_of(rule: &Rule, from: Mass) -> Mass {
    let step = match rule.step {
        Step::Mass(mass) => mass,
        Step::Share(share) => share_of(from, share),
    };
    step.min(share_of(from, RAISE_MOST))
}

/// To what the gym can load: a raise to the nearest above the old load, all else never above
/// what is wished.
fn round(decision: &mut Decision, loads: &Loads) {
    if decision.verdict != Verdict::Raise {
        decision.load = not_above(decision.wished, loads);
        return;
    }
    let most = decision.from + share_of(decision.from, RAISE_MOST);
    let above = |load: &Mass| *load > decision.from && *load <= most;
    let nearest = loads.nearest(decision.wished).filter(above);
    let next = || {
        let barely = decision.from + Mass::from_ng(1);
        loads.at_least(barely).filter(above)
    };
    match nearest.or_else(next) {
        Some(load) => decision.load = load,
        None => {
            decision.verdict = Verdict::Repeat;
            decision.why = Why::NoStep;
            decision.load = not_above(decision.from, loads);
        }
    }
}

/// The greatest load not above `wished`, or the empty bar.
fn not_above(wished: Mass, loads: &Loads) -> Mass {
    let fits = loads.at_most(wished);
    fits.or_else(|| loads.at_least(Mass::ZERO))
        .unwrap_or(wished)
}

fn less(mass: Mass, share: u32) -> Mass {
    mass - share_of(mass, share)
}

/// So many hundredths of a percent of a mass, down to the nanogram.
pub(crate) fn share_of(mass: Mass, share: u32) -> Mass {
    let ng = i128::from(mass.ng()) * i128::from(share) / 10_000;
    Mass::from_ng(i64::try_from(ng).unwrap_or(i64::MAX))
}
