//! Keys of programme.toml: programmes and the rules of next time.
use super::{Table, may, must};
use crate::words::term;
use text::keys::checked as k;

/// programme.toml.
pub const COACHING: Table = Table {
    a: term!(k::THE_COACH_S_FILE),
    form: "programme.toml",
    fields: &[
        may(
            "programme",
            "the programmes that come with the program, followed by nobody",
            "[[programme]] tables",
            "programmes changed or added, up to 50",
        ),
        may(
            "rule",
            "the rules that come with the program",
            "[[rule]] tables",
            "what is due next time, for all or for some, up to 500",
        ),
        may(
            "split",
            "the figures that come with the program",
            "[[split]] tables",
            "when the deadlift is split into two partials, for all or for some, up to 500",
        ),
    ],
};

/// A programme.
pub const PROGRAMME: Table = Table {
    a: term!(k::A_PROGRAMME),
    form: "[[programme]]",
    fields: &[
        must(
            "name",
            "\"split pulls\"",
            "what it is called; \"split pulls\" and \"split pulls with snatch\" come with the program and keep what is not written",
        ),
        may(
            "lifters",
            "nobody",
            "[\"Tevita\"]",
            "names of the lifters who follow it where the plan is silent; each in one programme only",
        ),
        may(
            "apart_days",
            "as it was, or 3",
            "3",
            "days from one of its days to the next, at least, 1 to 14; what is missed waits",
        ),
        may(
            "day",
            "as they were; a new programme needs them, or blocks",
            "[[programme.day]] tables",
            "its days, in their order, 1 to 14; they replace what was",
        ),
        may(
            "block",
            "days of its own",
            "[[programme.block]] tables",
            "weeks of days by date in place of its days, 1 to 24, one after the other",
        ),
        may(
            "rounds",
            "1",
            "2",
            "how often all blocks come one after the other, 1 to 52, 520 weeks in all at most",
        ),
        may(
            "begins",
            "where what was done leads",
            "[{ lifter = \"Tevita\", day = \"heavy day\", since = \"2026-12-01\" }]",
            "where lifters were put in its queue, up to 500; of two for a lifter the later",
        ),
    ],
};

/// Where a lifter was put in a queue.
pub const BEGIN: Table = Table {
    a: term!(k::A_PLACE_IN_THE_QUEUE),
    form: "{ lifter = \"Tevita\", day = \"heavy day\", since = \"2026-12-01\" }",
    fields: &[
        must("lifter", "\"Tevita\"", "who"),
        must(
            "day",
            "\"heavy day\"",
            "name of the day of the programme that comes next",
        ),
        must(
            "since",
            "\"2026-12-01\"",
            "from this date on; what was done before it no longer says which day is next",
        ),
    ],
};

/// A day of a programme.
pub const DAY: Table = Table {
    a: term!(k::A_DAY),
    form: "[[programme.day]]",
    fields: &[
        must("name", "\"heavy day\"", "what it is called"),
        may(
            "weekday",
            "the days follow each other, whenever the lifter comes",
            "\"Monday\"",
            "its day of the week; for all days of a programme or for none",
        ),
        must(
            "task",
            "[[programme.day.task]] tables",
            "what is done on it, in order, 1 to 8",
        ),
    ],
};

/// One thing done on a day.
pub const TASK: Table = Table {
    a: term!(k::A_TASK),
    form: "[[programme.day.task]]",
    fields: &[must(
        "alternate",
        "[{ lift = \"rack pull\", sets = 1, reps = 5 }]",
        "the lift, or several that take turns from one time to the next, 1 to 8",
    )],
};

/// A lift of a task.
pub const WORK: Table = Table {
    a: term!(k::A_LIFT_TO_DO),
    form: "{ lift = \"rack pull\", sets = 1, reps = 5, first = \"75 %\" }",
    fields: &[
        must("lift", "\"rack pull\"", "which lift"),
        must("sets", "1", "work sets, 1 to 20"),
        must("reps", "5", "reps of a work set, 1 to 50"),
        may(
            "first",
            "\"75 %\"",
            "\"75 %\"",
            "the work load of the first time: a mass, or a percentage of the recorded best, 1 to 150 %; after that the rules give it",
        ),
        may(
            "ladder",
            "the lifter's own",
            "\"fives\"",
            "the warm-up pattern",
        ),
        may(
            "rest",
            "the lift's own",
            "\"4 min\"",
            "rest before a work set, 15 s to 30 min",
        ),
        may(
            "bar",
            "the one that the lift is done with",
            "\"old yard bar\"",
            "the bar, one of the lifters' racks",
        ),
        may(
            "how",
            "the lift's and the lifter's own",
            "\"hole 6, straps, tempo 3-0-1-0\"",
            "where and how the sets are done, as in a plan's scheme",
        ),
        may(
            "note",
            "no note",
            "\"bar close\"",
            "the coach's words, up to 200 characters",
        ),
    ],
};

/// A rule of next time.
pub const RULE: Table = Table {
    a: term!(k::A_RULE),
    form: "[[rule]]",
    fields: &[
        may(
            "lift",
            "all lifts",
            "\"rack pull\"",
            "the lift that it is for",
        ),
        may(
            "lifter",
            "all lifters",
            "\"Tevita\"",
            "the lifter that it is for; a rule for a lifter goes before one for a lift, and one for both before either, figure by figure",
        ),
        may(
            "step",
            "2.5 %",
            "\"2.5 kg\"",
            "what all reps with the back held add: a mass up to 20 kg, or 0.1 to 10 %; never more than 10 % is added",
        ),
        may(
            "tries",
            "2",
            "2",
            "how many times in a row a load may fall short before it is lowered, 1 to 10",
        ),
        may(
            "moved_tries",
            "1",
            "1",
            "the same where the back moved late in a set, 1 to 10: with 1 a moved back lowers the load at once",
        ),
        may(
            "drop",
            "5 %",
            "\"5 %\"",
            "what is then taken off, and at once when the back moved or the reps failed in the first half of a set, 1 to 50 %",
        ),
        may(
            "drops",
            "1",
            "1",
            "how many drops there may be without a new best before a reset, 0 to 10",
        ),
        may(
            "reset",
            "10 %",
            "\"10 %\"",
            "what a reset takes off, 1 to 50 %",
        ),
        may(
            "away_days",
            "21",
            "21",
            "over how many days of absence from a family of lifts, beyond the programme's own spacing, a load is held, 1 to 365",
        ),
        may(
            "away",
            "5 %",
            "\"5 %\"",
            "what each step of easing takes off after more days, 0 to 50 %, half of the load at most; on the way back to the best two steps are added at a time",
        ),
        may(
            "late_days",
            "6",
            "6",
            "how many days of absence are no break at all: somebody came a little late, 0 to 60",
        ),
        may(
            "away_step_days",
            "14",
            "14",
            "after how many days of absence more one more step is taken off, 1 to 365",
        ),
        may(
            "anew_days",
            "84",
            "84",
            "after how many days of absence the lift begins anew with the coach, with nothing due before, 7 to 730",
        ),
        may(
            "ill",
            "2",
            "2",
            "how many days of absence each day of illness counts beside itself, 0 to 10; what the coach entered as illness eases sooner",
        ),
        may(
            "week",
            "10 %",
            "\"20 %\"",
            "the most that a track rises within a week, or the smallest step that the plates make, 1 to 50 %; the new to a lift rise faster",
        ),
        may(
            "coarse",
            "25 %",
            "\"25 %\"",
            "up to which share the smallest step that the plates make is taken, even over 10 %, 10 to 100 %; else the load stays",
        ),
        may(
            "over",
            "3",
            "3",
            "how many pulls of a family that went wrong in a row, of more than one lift or track, are over-reaching, 2 to 10; the load is then held until the coach has answered",
        ),
        may(
            "over_days",
            "21",
            "21",
            "within how many days they must lie, 1 to 365",
        ),
        may(
            "light_days",
            "21",
            "21",
            "a spell of lighter days, three at least, that lasts longer is what the load follows from, 1 to 365",
        ),
    ],
};

/// When the deadlift is split.
pub const SPLIT: Table = Table {
    a: term!(k::A_SPLIT),
    form: "[[split]]",
    fields: &[
        may(
            "lifter",
            "all lifters",
            "\"Tevita\"",
            "the lifter that it is for; one for a lifter goes before one for all, figure by figure",
        ),
        may(
            "from",
            "185 kg",
            "\"405 lb\"",
            "deadlift fives from this load on count as heavy, 1 to 1000 kg",
        ),
        may(
            "outings",
            "8",
            "8",
            "how many of the last outings are looked at, 4 to 50",
        ),
        may(
            "slow",
            "50 %",
            "\"50 %\"",
            "progress is slow under this share of what the rules would add each time, 0 to 100 %",
        ),
        may(
            "troubles",
            "2",
            "2",
            "how many of those outings must have fallen short or moved the back, 0 to 50",
        ),
        may(
            "test",
            "none",
            "\"2027-03-06\"",
            "the day of the test or the meet",
        ),
        may(
            "back_days",
            "21",
            "21",
            "how many days before the test the full deadlift comes back, 1 to 120",
        ),
    ],
};
