//! Keys of programme.toml: blocks of weeks of days.
use super::{Table, may, must};
use crate::words::term;
use text::keys::checked as k;

/// A block.
pub const BLOCK: Table = Table {
    a: term!(k::A_BLOCK),
    form: "[[programme.block]]",
    fields: &[
        must(
            "name",
            "\"fives\"",
            "what it is called; each block of a programme its own name",
        ),
        may(
            "starts",
            "right after the block before; the first needs it",
            "\"2026-01-05\"",
            "the Monday of its first week",
        ),
        must("weeks", "4", "how many weeks it has, 1 to 52"),
        may(
            "times",
            "1",
            "3",
            "how often those weeks come one after the other, 1 to 52",
        ),
        may(
            "light",
            "no light weeks",
            "\"60 %\"",
            "what a light week asks of what the week would ask, 20 to 95 %; without \"light_every\" the last week of each time is the light one",
        ),
        may(
            "light_every",
            "the last week of each time",
            "4",
            "every which week is light, all times of the block counted through, 2 to as many weeks as it has in all",
        ),
        must(
            "day",
            "[[programme.block.day]] tables",
            "its days, each on its own day of the week, 1 to 7",
        ),
    ],
};

/// A day of a block.
pub const BLOCK_DAY: Table = Table {
    a: term!(k::A_DAY_OF_A_BLOCK),
    form: "[[programme.block.day]]",
    fields: &[
        may(
            "name",
            "its day of the week",
            "\"heavy day\"",
            "what it is called",
        ),
        must("weekday", "\"Monday\"", "its day of the week"),
        must(
            "lifts",
            "[{ lift = \"deadlift\", scheme = \"3x5\" }]",
            "what is done on it, in order, 1 to 8",
        ),
    ],
};

/// A lift of a day of a block.
pub const BLOCK_LIFT: Table = Table {
    a: term!(k::A_LIFT_OF_A_BLOCK),
    form: "{ lift = \"deadlift\", weeks = [\"4x5 @ 70 % of training max\", \"3x5 @ 75 % of training max\"] }",
    fields: &[
        must("lift", "\"deadlift\"", "which lift"),
        may(
            "scheme",
            "a scheme for each week",
            "\"3x5\"",
            "sets, reps and load of every week, as a plan's scheme; without a load what is due",
        ),
        may(
            "weeks",
            "the same scheme every week",
            "[\"4x5 @ 70 % of training max\", \"3x5 @ 75 % of training max\", \"-\"]",
            "a scheme for each week of the block, \"-\" for a week without the lift",
        ),
        may(
            "first",
            "\"75 %\"",
            "\"75 %\"",
            "the work load of the first time where what is due is asked: a mass, or a percentage of the recorded best, 1 to 150 %",
        ),
        may(
            "track",
            "none",
            "\"heavy\"",
            "which sets follow from one another: heavy, medium and light days of one lift",
        ),
        may(
            "bar",
            "the one that the lift is done with",
            "\"old yard bar\"",
            "the bar for all its sets, one of the lifters' racks",
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
            "note",
            "no note",
            "\"bar close\"",
            "the coach's words, up to 200 characters",
        ),
    ],
};
