//! What holds of a decision on a day: breaks, illness, the family's backs, a week's rise, hurt.
//!
//! Never gives more than was decided.
use super::away::{self, Break};
use super::round::{above, again, less, more, not_above};
use super::{Decision, FamilyTime, Limits, Season, Standing, Verdict, Why};
use crate::mass::Mass;
use chrono::{Days, NaiveDate};

/// No easing takes more than half off.
const EASE_MOST: u32 = 5_000;

impl Standing {
    /// What is due on `date`, after the trainings of `family`, oldest first.
    #[must_use]
    pub fn on(&self, season: &Season<'_>, family: &[FamilyTime], date: NaiveDate) -> Decision {
        if season.hurt.is_some_and(|since| since <= date) {
            return self.held(season, Why::Hurt, self.level);
        }
        let family = self.since_ruling(family);
        let pause = self.pause(season, family, date);
        if pause.counted > season.limits.anew_days {
            let anew = self.held(season, Why::Anew, self.level);
            return Decision {
                away_days: pause.counted,
                ..anew
            };
        }
        let mut least = self.decision;
        let mut consider = |found: Option<Decision>| {
            if let Some(found) = found
                && (found.load < least.load || (found.load == least.load && found.why.asks_coach()))
            {
                least = found;
            }
        };
        consider(self.eased(season, pause));
        consider(self.family_held(season, family));
        consider(self.over_reaching(season, family));
        consider(self.long_ago(season, date));
        consider(self.week(season, date));
        least
    }

    /// Trainings that the coach had not yet seen when the load was ruled.
    fn since_ruling<'f>(&self, family: &'f [FamilyTime]) -> &'f [FamilyTime] {
        let Some(ruled) = self.ruled_at else {
            return family;
        };
        let seen = family.iter().rposition(|time| time.at <= ruled);
        &family[seen.map_or(0, |at| at + 1)..]
    }

    /// The day of the last outing, or of the coach's ruling after it.
    fn since(&self) -> NaiveDate {
        let ruled = self.ruled_at.and_then(|at| at.date());
        self.decision.date.max(ruled.unwrap_or_default())
    }

    /// The break since the last training of the family, or since the coach's ruling.
    fn pause(&self, season: &Season<'_>, family: &[FamilyTime], date: NaiveDate) -> Break {
        let since = family.last().map(|time| time.date).max(Some(self.since()));
        away::count(
            since.unwrap_or(date).min(date),
            date,
            season.spacing_days,
            season.ill,
            season.limits.ill,
        )
    }

    /// The same load as at the last time, or what was decided where that is less.
    fn held(&self, season: &Season<'_>, why: Why, at: Mass) -> Decision {
        let wished = self.decision.load.min(at);
        Decision {
            verdict: Verdict::Repeat,
            why,
            from: at,
            wished,
            load: again(wished, wished, season.loads),
            ..self.decision
        }
    }

    /// A short break holds, a longer one eases by steps.
    fn eased(&self, season: &Season<'_>, pause: Break) -> Option<Decision> {
        let (rule, limits) = (&season.rule, &season.limits);
        let why = if pause.ill > 0 { Why::Ill } else { Why::Away };
        let days = Decision {
            away_days: pause.counted,
            ..self.held(season, why, self.level)
        };
        let Some(over) = pause.counted.checked_sub(rule.away_days).filter(|d| *d > 0) else {
            let held = pause.ill > 0 || pause.counted > limits.late_days;
            return held.then_some(days);
        };
        let steps = u32::from(over.div_ceil(limits.away_step_days.max(1)));
        let share = rule.away.saturating_mul(steps).min(EASE_MOST);
        let from = self.level.min(self.decision.load);
        let wished = less(from, share);
        Some(Decision {
            verdict: Verdict::Ease,
            from,
            wished,
            load: not_above(wished, season.loads),
            ..days
        })
    }

    /// The back moved in another pull since the last time, or on the same day.
    fn family_held(&self, season: &Season<'_>, family: &[FamilyTime]) -> Option<Decision> {
        let (date, own) = (self.decision.date, self.decision.after);
        let since = family.iter().rev().take_while(|time| time.date >= date);
        let moved = since.into_iter().any(|time| time.moved && time.no != own);
        moved.then(|| self.held(season, Why::Family, self.level.min(self.lifted)))
    }

    /// One pull of the family after the other went wrong, of more than one lift or track, the last
    /// of them since the last time of this track; and the coach has not answered since.
    fn over_reaching(&self, season: &Season<'_>, family: &[FamilyTime]) -> Option<Decision> {
        let limits = &season.limits;
        let (date, own) = (self.decision.date, self.decision.after);
        let over = family
            .windows(usize::from(limits.over.max(2)))
            .rev()
            .take_while(|row| row.last().is_some_and(|t| (t.date, t.no) >= (date, own)))
            .any(|row| is_over_reaching(row, limits));
        over.then(|| self.held(season, Why::OverReaching, self.level.min(self.lifted)))
    }

    /// Others of the family were done all the while: the load is held, not eased.
    fn long_ago(&self, season: &Season<'_>, date: NaiveDate) -> Option<Decision> {
        let late = away::days(self.since(), date).saturating_sub(season.spacing_days);
        (late > season.rule.away_days).then(|| self.held(season, Why::LongAgo, self.level))
    }

    /// What a week's rise leaves: a share of the lowest level of the last seven days, or the
    /// smallest step above it that the plates make. What was lifted already is never taken back.
    /// The coach's own load stands.
    fn week(&self, season: &Season<'_>, date: NaiveDate) -> Option<Decision> {
        if self.ruled_at.is_some() {
            return None;
        }
        let first = date.checked_sub_days(Days::new(7))?;
        let recent = self.levels.iter().rev();
        let recent = recent.take_while(|(day, _)| *day >= first);
        let base = recent.map(|(_, level)| *level).min()?;
        let share = not_above(more(base, season.limits.week), season.loads);
        let step = above(base, &season.limits, season.loads).unwrap_or(base);
        let most = share.max(step).max(self.level);
        (self.decision.load > most).then(|| self.held(season, Why::Week, most))
    }
}

fn is_over_reaching(row: &[FamilyTime], limits: &Limits) -> bool {
    let [first, .., last] = row else { return false };
    row.iter().all(|time| time.wrong)
        && row.iter().any(|time| time.of != first.of)
        && away::days(first.date, last.date) <= limits.over_days
}
