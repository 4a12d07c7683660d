//! Keys of meet.toml: a meet or a test day.
use super::{Table, may, must};
use crate::words::term;

/// meet.toml.
pub const MEET: Table = Table {
    a: term!("the meet's file"),
    form: "meet.toml",
    fields: &[
        must("name", "\"Harbour test day\"", "what the day is called"),
        must("date", "\"2027-03-06\"", "the day"),
        may(
            "bar",
            "20 kg",
            "\"20 kg\"",
            "the bar of the warm-up room alone, 1 to 60 kg",
        ),
        may(
            "collars",
            "5 kg",
            "\"5 kg\"",
            "both collars together, up to 10 kg",
        ),
        may(
            "sleeve",
            "360 mm",
            "\"360 mm\"",
            "what one sleeve holds with its collar on, 50 mm to 1 m",
        ),
        may(
            "plates",
            "a kilo set: six pairs of 25, one each of 20, 15, 10, 5, 2.5 and 1.25",
            "[{ mass = \"25 kg\", pairs = 8, thickness = \"27 mm\", diameter = \"450 mm\" }]",
            "the plates of the warm-up room, as in a plate set, whatever the gym has, up to 30 kinds",
        ),
        may(
            "last",
            "5 min",
            "\"5 min\"",
            "from the last warm-up to the opener where there is time, 30 s to 1 h",
        ),
        may(
            "last_least",
            "3 min",
            "\"3 min\"",
            "and never nearer than this, 30 s to 1 h",
        ),
        may(
            "apart",
            "4 min",
            "\"4 min\"",
            "from one warm-up to the next where there is time, 30 s to 1 h",
        ),
        may(
            "apart_least",
            "90 s",
            "\"90 s\"",
            "and never nearer than this, 30 s to 1 h",
        ),
        must(
            "flight",
            "[[flight]] tables",
            "the flights in which somebody of yours lifts, in their order, 1 to 12",
        ),
    ],
};

/// A flight.
pub const FLIGHT: Table = Table {
    a: term!("a flight"),
    form: "[[flight]]",
    fields: &[
        must("lift", "\"deadlift\"", "which lift"),
        may(
            "attempt",
            "60 s",
            "\"60 s\"",
            "how long one attempt is said to take, 10 s to 10 min",
        ),
        may(
            "order",
            "each lifter's own \"before\"",
            "[\"A. Visitor\", \"Tevita\"]",
            "everybody in the order of the first attempts, up to 200 names, yours as in lifters.toml",
        ),
        must("lifter", "[[flight.lifter]] tables", "yours in it, 1 to 20"),
    ],
};

/// One of ours in a flight.
pub const STARTER: Table = Table {
    a: term!("a lifter of a flight"),
    form: "[[flight.lifter]]",
    fields: &[
        must("name", "\"Tevita\"", "as in lifters.toml"),
        must(
            "opener",
            "\"200 kg\"",
            "the first attempt as told at the table, 1 to 1000 kg",
        ),
        may(
            "before",
            "the place in \"order\"",
            "24",
            "attempts before the opener, counted from the start of the flight, 0 to 200",
        ),
        may(
            "ladder",
            "the lifter's own",
            "\"5-3-2-1\"",
            "the warm-up pattern",
        ),
    ],
};
