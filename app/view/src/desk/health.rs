//! Hurt and illness of a lifter at the desk, by a tap each.
//!
//! Says nothing of what somebody has; that is for a clinician.
use super::place::{Act, Rows};
use super::rows::chosen;
use crate::language::{Language, p};
use crate::list::{ListRow, ListState};
use crate::scene::Scene;
use chrono::Days;
use domain::Command;
use domain::coach_word::{CoachSays, CoachWord, Health};
use domain::next::Ill;

/// Lengths of an illness that ends today, in days.
const LENGTHS: [u64; 4] = [1, 3, 7, 14];

/// Illnesses that are shown, the latest first.
const SHOWN: usize = 3;

/// The way there: fit or hurt.
pub(crate) fn word(scene: &Scene<'_>, name: &str) -> String {
    let hurt = scene.state.health.get(name).is_some_and(Health::is_hurt);
    scene
        .language()
        .say(if hurt { p::list::HURT } else { p::list::FIT })
}

/// What can be said of a lifter, and what was.
pub(crate) fn rows(scene: &Scene<'_>, name: &str) -> Rows {
    let say = scene.language();
    let tell = |what| {
        Act::Tell(Command::SayCoach(Box::new(CoachWord {
            lifter: name.to_owned(),
            what,
            note: Language::English.say(p::list::NOTE_AT_DESK),
        })))
    };
    let health = scene.state.health.get(name).cloned().unwrap_or_default();
    let mut rows = Rows::new();
    match &health.hurt {
        Some(hurt) => {
            let since = say.date(hurt.since);
            let row = ListRow::new(say.say(p::list::HURT), say.say(p::list::FIT_AGAIN));
            let detail = say.fill(p::list::HURT_SINCE, &[&since, &say.note(&hurt.note)]);
            rows.push((
                row.detail(detail).state(ListState::Amiss),
                tell(CoachSays::Fit),
            ));
        }
        None => {
            let row = ListRow::new(say.say(p::list::HURT), say.say(p::list::HURT_NOW));
            rows.push((row, tell(CoachSays::Hurt { since: scene.date })));
        }
    }
    for days in LENGTHS {
        let from = scene.date.checked_sub_days(Days::new(days - 1));
        let ill = Ill {
            from: from.unwrap_or(scene.date),
            to: scene.date,
        };
        let words = match days {
            1 => say.say(p::list::ILL_TODAY),
            n => say.fill(p::list::ILL_DAYS, &[&n.to_string()]),
        };
        let row = ListRow::new(say.say(p::list::ILL), words);
        let row = row.state(chosen(health.ill.contains(&ill)));
        rows.push((row, tell(CoachSays::Ill(ill))));
    }
    for ill in health.ill.iter().rev().take(SHOWN) {
        let span = [say.date(ill.from), say.date(ill.to)];
        let words = say.fill(p::list::ILL_FROM_TO, &[&span[0], &span[1]]);
        let row = ListRow::new(say.say(p::list::ILL), words).state(ListState::Told);
        rows.push((row, Act::Nothing));
    }
    rows
}
