//! What follows from the outings of one track, one after the other.
//!
//! Never raises after a short set or a moved back, never by more than a tenth where the plates
//! make a smaller step, and never gives a load that the gym cannot make.
use super::outing::Outing;
use super::round::{less, more, round};
use super::time::ruled;
use super::went::Went;
use super::{Decision, RAISE_MOST, Rule, Season, Verdict, Why, step_of};
use crate::mass::Mass;
use crate::moment::Moment;
use alloc::vec::Vec;
use chrono::NaiveDate;

/// Lighter days in a row that may be what a track follows from, once they lasted long enough.
const LIGHT_LEAST: u8 = 3;

/// What a track has come to after its last outing.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Standing {
    /// What follows from the last outing.
    pub decision: Decision,
    /// The last load lifted that was no lighter day's.
    pub level: Mass,
    /// The last load lifted.
    pub lifted: Mass,
    /// When the coach ruled the load, if the coach did.
    pub ruled_at: Option<Moment>,
    /// The level of each outing, oldest first.
    pub(super) levels: Vec<(NaiveDate, Mass)>,
}

/// What earlier outings leave to reckon with.
#[derive(Debug, Clone, Copy, Default)]
struct Track {
    /// What was due, lighter days and holds of one day aside.
    due: Option<Mass>,
    /// Times in a row that the load fell short.
    tries: u8,
    /// Drops since the best last rose.
    drops: u8,
    /// The heaviest that went well.
    best: Mass,
    /// Whether the lift is on its way back from a break.
    back: bool,
    /// The load that is held until the coach has answered.
    asked: Option<Mass>,
    /// Since when all days were lighter ones, and how many.
    light: Option<(NaiveDate, u8)>,
    /// The last load that was no lighter day's, or a heavier one that went well since.
    level: Mass,
}

impl Track {
    /// Takes in what was due on the day of the next outing.
    fn come_to(&mut self, before: &Standing, due: &Decision) {
        self.back |= due.verdict == Verdict::Ease;
        // Another pull's back holds a lighter day, and not what the track has come to.
        let held_light = due.why == Why::Family && before.lifted < before.level;
        self.due = if held_light {
            Some(before.decision.load)
        } else {
            due.due()
        };
        if due.why == Why::OverReaching || self.asked.is_some() {
            self.asked = Some(due.due().unwrap_or_default());
        }
        if due.why == Why::Anew {
            *self = Self {
                asked: self.asked,
                ..Self::default()
            };
        }
    }
}

/// What is due after `outings`, oldest first, all of one track with the same reps; `None` after
/// none. The last of them counts most, the others for tries, drops and breaks.
#[must_use]
pub fn decide(season: &Season<'_>, outings: &[Outing]) -> Option<Standing> {
    let mut track = Track::default();
    let mut last: Option<Standing> = None;
    // Whoever is hurt now was not so when they trained.
    let then = Season {
        hurt: None,
        ..*season
    };
    for outing in outings {
        let mut levels = Vec::new();
        if let Some(before) = last.take() {
            let family = then.family_before(outing.date, outing.no);
            let due = before.on(&then, family, outing.date);
            track.come_to(&before, &due);
            levels = before.levels;
        }
        let decision = after(season, outing, &mut track);
        levels.push((outing.date, track.level));
        let (decision, ruled_at) = match outing.kept {
            None => (decision, None),
            // A load that somebody chose is tried from the first.
            Some(kept) if kept.by_coach => {
                (track.tries, track.asked) = (0, None);
                (ruled(&decision, kept.load), Some(kept.at))
            }
            // By the rule that was in force then.
            Some(kept) => {
                track.asked = kept.asks.then_some(kept.load);
                let load = kept.load;
                (Decision { load, ..decision }, None)
            }
        };
        last = Some(Standing {
            decision,
            level: track.level,
            lifted: outing.load,
            ruled_at,
            levels,
        });
    }
    last
}

/// What follows from one outing after what came before.
fn after(season: &Season<'_>, outing: &Outing, track: &mut Track) -> Decision {
    let rule = &season.rule;
    answered(outing, track);
    let light = light(season, outing, track);
    // A lighter day may well be heavier than the last that was none, where the plan rises slowly.
    let is_over = outing.went == Went::Well && outing.load > track.level;
    if light.is_none() || is_over {
        track.level = outing.load;
    }
    let from = match outing.went {
        Went::Well | Went::Cut { .. } => light.unwrap_or(outing.load),
        Went::Short { .. } | Went::Moved { .. } | Went::MovedWarm => outing.load,
    };
    // Who chose more on the day is not given more before the coach has answered.
    let from = track.asked.map_or(from, |held| from.min(held));
    let nth = track.tries.saturating_add(1);
    let (verdict, why) = match outing.went {
        Went::Well => {
            track.tries = 0;
            if outing.load > track.best {
                (track.best, track.drops) = (outing.load, 0);
            }
            track.back &= outing.load < track.best;
            well(outing, track, light.is_some())
        }
        Went::Cut { .. } if track.asked.is_some() => (Verdict::Repeat, Why::Waiting),
        Went::Cut { .. } => (Verdict::Repeat, Why::Cut),
        Went::Short { .. } | Went::Moved { .. } | Went::MovedWarm => {
            track.back = false;
            let early = outing.is_early();
            let asked = track.asked.is_some();
            if asked {
                waiting(outing, early)
            } else if !early && nth < tries_of(rule, outing.went) {
                track.tries = nth;
                (Verdict::Repeat, Why::TryAgain)
            } else {
                lower(rule, outing, track)
            }
        }
    };
    let mut wanted = wished(rule, verdict, from);
    if why == Why::Back {
        let twice = wished(rule, verdict, wanted).min(track.best);
        wanted = twice.min(more(from, RAISE_MOST)).max(from);
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
    round(&mut decision, &season.limits, season.loads);
    if matches!(why, Why::Stuck | Why::Waiting) {
        track.asked = Some(decision.load);
    }
    decision
}

/// A load that is another than the one held, and not the lifter's own choice of the day, is the
/// coach's answer.
fn answered(outing: &Outing, track: &mut Track) {
    let Some(held) = track.asked else { return };
    if outing.load != held && !outing.chosen {
        track.asked = None;
        (track.tries, track.drops) = (0, 0);
        track.due = Some(outing.load);
    }
}

/// What was due, where less was lifted: a lighter day that somebody chose. A long spell of them is
/// what the track follows from.
fn light(season: &Season<'_>, outing: &Outing, track: &mut Track) -> Option<Mass> {
    // The next below is no choice where the bar does not make what was due.
    let is_lighter = |due: &Mass| {
        outing.load < *due && season.loads.at_most_in_any_step(*due) != Some(outing.load)
    };
    let Some(due) = track.due.filter(is_lighter) else {
        track.light = None;
        return None;
    };
    // One as heavy as the last that was none ends a spell: only what is due has risen further.
    if outing.load >= track.level {
        track.light = None;
        return Some(due);
    }
    let (since, count) = track.light.unwrap_or((outing.date, 0));
    let count = count.saturating_add(1);
    track.light = Some((since, count));
    let long = super::away::days(since, outing.date) > season.limits.light_days;
    if long && count >= LIGHT_LEAST {
        (track.light, track.drops, track.tries) = (None, 0, 0);
        track.best = outing.load;
        return None;
    }
    Some(due)
}

fn well(outing: &Outing, track: &Track, light: bool) -> (Verdict, Why) {
    if track.asked.is_some() {
        (Verdict::Repeat, Why::Waiting)
    } else if light {
        (Verdict::Repeat, Why::Light)
    } else if outing.hard {
        (Verdict::Repeat, Why::Hard)
    } else if !outing.at_top {
        (Verdict::Repeat, Why::Range)
    } else if track.back {
        (Verdict::Raise, Why::Back)
    } else {
        (Verdict::Raise, Why::Well)
    }
}

/// Something went wrong again before the coach has answered: a back that moved, or reps that
/// failed early, lower the load all the same.
fn waiting(outing: &Outing, early: bool) -> (Verdict, Why) {
    if early || outing.went.moved() {
        (Verdict::Drop, Why::Waiting)
    } else {
        (Verdict::Repeat, Why::Waiting)
    }
}

/// How many tries a load has after it went so.
fn tries_of(rule: &Rule, went: Went) -> u8 {
    if went.moved() {
        rule.moved_tries
    } else {
        rule.tries
    }
}

/// A drop; or the coach is asked, when there were drops enough: with the load held where the reps
/// failed late, and well down where the back moved or the reps failed early.
fn lower(rule: &Rule, outing: &Outing, track: &mut Track) -> (Verdict, Why) {
    let early = outing.is_early();
    track.tries = 0;
    track.drops = track.drops.saturating_add(1);
    if track.drops > rule.drops {
        track.drops = 0;
        let verdict = match early || outing.went.moved() {
            true => Verdict::Reset,
            false => Verdict::Repeat,
        };
        (verdict, Why::Stuck)
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
