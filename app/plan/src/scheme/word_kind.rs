//! What kinds of words a scheme has: for reps, for sets, for rests, for counts by name.

/// A word for reps, beside a number of them.
pub(super) fn is_reps_word(word: &str) -> bool {
    [
        "rep",
        "reps",
        "wdh",
        "wh",
        "wiederholung",
        "wiederholungen",
        "repetitions",
        "r\u{e9}p",
    ]
    .contains(&word)
}

pub(super) fn is_sets_word(word: &str) -> bool {
    [
        "set",
        "sets",
        "satz",
        "s\u{e4}tze",
        "serie",
        "serien",
        "s\u{e9}rie",
        "s\u{e9}ries",
    ]
    .contains(&word)
}

pub(super) fn is_open_word(word: &str) -> bool {
    ["amrap", "amap"].contains(&word)
}

/// Reps of a set that has a name by their number.
pub(super) fn fixed_reps(word: &str) -> Option<u8> {
    match word {
        "single" | "singles" => Some(1),
        "double" | "doubles" => Some(2),
        "triple" | "triples" => Some(3),
        _ => None,
    }
}

pub(super) fn is_rest_word(word: &str) -> bool {
    is_pause_word(word) || ["rest", "pausen", "repos", "break", "between"].contains(&word)
}

/// Words that stand for a rest or, with a few seconds, for a pause in each rep.
pub(super) fn is_pause_word(word: &str) -> bool {
    ["pause", "paused", "hold", "halten"].contains(&word)
}
