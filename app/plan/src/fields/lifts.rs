//! Keys of gym.toml: lifts and warm-up patterns.
use super::{Table, may, must};
use crate::words::term;
use text::keys::checked as k;

/// A lift.
pub const LIFT: Table = Table {
    a: term!(k::A_LIFT),
    form: "[[lift]]",
    fields: &[
        must(
            "name",
            "\"rack pull\"",
            "the trade's name; with the name of a lift that comes with the program it changes that one, key by key",
        ),
        may(
            "also",
            "as they were",
            "[\"RP\"]",
            "short names that plans may use, up to 8, each for one lift alone",
        ),
        may(
            "start",
            "as it was; a new lift needs it",
            "\"pins\"",
            "\"floor\", \"pins\" or \"hooks\"",
        ),
        may(
            "landmark",
            "as it was; a new lift from pins needs it",
            "\"tibial tuberosity\"",
            "what the height of the start is taken from: \"tibial tuberosity\", \"patella top\", \"mid-thigh\" or \"lockout\"",
        ),
        may(
            "below",
            "as it was, or 0 mm",
            "\"25 mm\"",
            "how far below the landmark the bar's centre starts, 0 to 300 mm",
        ),
        may(
            "end",
            "as it was, or \"lockout\"",
            "\"lockout\"",
            "where the bar ends: one of the landmarks; not for a lift from hooks",
        ),
        may(
            "grip",
            "as it was, or \"double overhand\"",
            "\"hook\"",
            "\"double overhand\" or \"hook\"; not for a lift from hooks",
        ),
        may(
            "speed",
            "as it was, or \"slow\"",
            "\"fast\"",
            "\"fast\" for one fast pull, of which no single is estimated, or \"slow\"",
        ),
        may(
            "bar",
            "as it was; a new lift from pins wants the retired one",
            "\"retired\"",
            "\"retired\" or \"straight\"",
        ),
        may(
            "partner",
            "as it was, or none",
            "\"halting deadlift\"",
            "the lift with which it shares some height; not for a lift from hooks",
        ),
        may(
            "family",
            "as it was; else \"pulls\", and from hooks the lift by itself",
            "\"pulls\"",
            "the lifts that load the same back, by one name: a back that moved in one of them keeps all of them from rising the next time, and absence is counted from the last of them",
        ),
        may(
            "round",
            "as it was; else what the plates make, and for the barbell shrug 2.5 kg or 5 lb",
            "[\"2.5 kg\", \"5 lb\"]",
            "what loads that follow from a share or from what was done are whole steps of, 500 g to 20 kg, one for each unit of lifters",
        ),
        may(
            "overlap_least",
            "as it was, or 100 mm",
            "\"100 mm\"",
            "the least shared height that is not warned about, 0 to 500 mm",
        ),
        may(
            "rest_warm",
            "as it was, or 2 min",
            "\"2 min\"",
            "rest before a warm-up, 15 s to 30 min",
        ),
        may(
            "rest_work",
            "as it was, or 3 min",
            "\"4 min\"",
            "rest before a work set, 15 s to 30 min",
        ),
        may(
            "cues",
            "as they were",
            "[\"bar against the leg\"]",
            "what to think of, up to 8 of 60 characters; they replace what was",
        ),
        may(
            "cautions",
            "as they were",
            "[\"spotter at the door\"]",
            "what can hurt, up to 8 of 80 characters; they come after the ones of the program, which stay",
        ),
    ],
};

/// A warm-up pattern.
pub const PATTERN: Table = Table {
    a: term!(k::A_PATTERN),
    form: "[[pattern]]",
    fields: &[
        must(
            "name",
            "\"fives\"",
            "what plans call it; with the name of a pattern that comes with the program it replaces that one",
        ),
        must(
            "steps",
            "[{ share = \"30 %\", reps = 5 }]",
            "the warm-ups, lowest first, 1 to 12",
        ),
        may(
            "already_warm",
            "false",
            "true",
            "whether it is for somebody who is warm from another lift: then the step up to its first warm-up may be of any length",
        ),
    ],
};

/// One warm-up of a pattern.
pub const STEP: Table = Table {
    a: term!(k::A_STEP),
    form: "{ share = \"30 %\", reps = 5 }",
    fields: &[
        must(
            "share",
            "\"30 %\"",
            "of the work load, 1 to 99 %, rising from step to step",
        ),
        must("reps", "5", "1 to 50"),
    ],
};
