//! Keys of meet.toml: a meet or a test day.
use super::{Table, may, must};
use crate::words::term;
use text::keys::checked as k;

/// meet.toml.
pub const MEET: Table = Table {
    a: term!(k::THE_MEET_S_FILE),
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
        may(
            "declare",
            "60 s",
            "\"60 s\"",
            "within which a next attempt is to be declared, up to 1 h",
        ),
        may(
            "opener_until",
            "3 min",
            "\"3 min\"",
            "how long before the flight begins openers can be changed, up to 1 h; \"0 s\": until the bar is loaded",
        ),
        may(
            "opener_changes",
            "1",
            "1",
            "how often an opener can be changed, 0 to 9",
        ),
        may(
            "second_changes",
            "0",
            "0",
            "how often a declared second attempt can be changed, 0 to 9",
        ),
        may(
            "third_changes",
            "2",
            "2",
            "how often a declared third attempt can be changed, 0 to 9",
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
    a: term!(k::A_FLIGHT),
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
            "start",
            "when somebody taps that it begins",
            "\"10:30\"",
            "when it begins, by the clock; until then warm-ups are counted back from it",
        ),
        may(
            "others",
            "those of \"order\" and [[flight.other]]",
            "9",
            "how many lifters of other gyms are in it, 0 to 200; where nothing more is known of them, yours are taken to stand evenly among them",
        ),
        may(
            "other",
            "none",
            "[[flight.other]] tables",
            "lifters of other gyms whose openers are known",
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

/// Somebody of another gym in a flight.
pub const OTHER: Table = Table {
    a: term!(k::A_LIFTER_OF_ANOTHER_GYM),
    form: "[[flight.other]]",
    fields: &[
        must(
            "name",
            "\"A. Visitor\"",
            "as in \"order\", if that is written",
        ),
        must(
            "opener",
            "\"180 kg\"",
            "the first attempt as told at the table, 1 to 1000 kg",
        ),
        may("lot", "none", "12", "the lot number, 1 to 999"),
    ],
};

/// One of ours in a flight.
pub const STARTER: Table = Table {
    a: term!(k::A_LIFTER_OF_A_FLIGHT),
    form: "[[flight.lifter]]",
    fields: &[
        must("name", "\"Tevita\"", "as in lifters.toml"),
        must(
            "opener",
            "\"200 kg\"",
            "the first attempt as told at the table, 1 to 1000 kg",
        ),
        may(
            "lot",
            "none",
            "7",
            "the lot number, 1 to 999: of two with the same weight the lower one goes first",
        ),
        may(
            "before",
            "the place in \"order\", else among the \"others\"",
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
