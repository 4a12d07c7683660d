//! What the files of a coach may name, and what those of several parts have in common.
use crate::against::Against;
use crate::known::Known;
use crate::words::term;
use chrono::Weekday;
use domain::Gym;
use domain::prescription::LoadWish;
use text::keys::checked as k;

/// Most tasks of a day, and most lifts of a task.
pub(crate) const TASKS_MAX: usize = 8;
/// The first load where nothing is said. Common practice, no source.
pub(crate) const FIRST: LoadWish = LoadWish::OfBest(7_500);

pub(crate) const WEEKDAYS: [(&str, Weekday); 7] = [
    ("Monday", Weekday::Mon),
    ("Tuesday", Weekday::Tue),
    ("Wednesday", Weekday::Wed),
    ("Thursday", Weekday::Thu),
    ("Friday", Weekday::Fri),
    ("Saturday", Weekday::Sat),
    ("Sunday", Weekday::Sun),
];

/// The names that the coach's file may use.
pub(crate) struct Names {
    pub(crate) lifts: Known,
    pub(crate) lifters: Known,
    pub(crate) patterns: Known,
}

/// The same, and what schemes are held against.
pub(crate) struct Held<'g> {
    pub(crate) names: Names,
    pub(crate) plan: Against<'g>,
}

impl Names {
    /// Those of a gym; without one names are taken as they stand.
    pub(crate) fn of(gym: Option<&Gym>) -> Self {
        let Some(gym) = gym else {
            return Self {
                lifts: Known::open(term!(k::LIFT)),
                lifters: Known::open(term!(k::LIFTER)),
                patterns: Known::open(term!(k::WARM_UP_PATTERN)),
            };
        };
        Self {
            lifts: Known::of(
                term!(k::LIFT),
                gym.lifts.iter().map(|lift| lift.name.as_str()),
            ),
            lifters: Known::of(
                term!(k::LIFTER),
                gym.lifters.iter().map(|l| l.name.as_str()),
            ),
            patterns: Known::of(
                term!(k::WARM_UP_PATTERN),
                gym.patterns.iter().map(|p| p.name.as_str()),
            ),
        }
    }
}
