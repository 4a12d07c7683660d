//! Columns of sets and of reps. Refuses: both in one cell.
use crate::fault::Wrong;
use crate::header::is_scheme;
use crate::quantity::whole;
use crate::scheme;
use crate::set_group::Reps;
use crate::words::words;
use text::keys::checked as k;

/// Reps of a column: one number, or one for each set.
pub(crate) fn reps(text: &str) -> Result<Vec<Reps>, Wrong> {
    match scheme::reps(text)? {
        Some(reps) => Ok(reps),
        None => whole(text, &(1..=50)).map(|reps| vec![Reps::just(reps)]),
    }
}

/// Sets of a column; "3x5" belongs into two.
pub(crate) fn sets(text: &str) -> Result<u8, Wrong> {
    if is_scheme(text) {
        let right = words!(k::WRITE_THE_SETS_ALONE_HERE);
        return Err(Wrong::value(text, words!(k::SETS_AND_REPS_IN_ONE), right));
    }
    if text.to_lowercase().starts_with("warm") || text.to_lowercase().starts_with("aufw") {
        let right = words!(k::TAKE_THE_ROW_OUT_OR);
        let what = words!(k::A_WARM_UP_THE_LADDER);
        return Err(Wrong::value(text, what, right));
    }
    // "3 sets", "3x".
    let number = text.trim_end_matches(|c: char| c.is_alphabetic() || c == ' ');
    let unit = text[number.len()..].trim().to_lowercase();
    let counts = [
        "set",
        "sets",
        "x",
        "satz",
        "s\u{e4}tze",
        "series",
        "s\u{e9}ries",
    ];
    let number = if counts.contains(&unit.as_str()) {
        number
    } else {
        text
    };
    whole(number, &(1..=20)).or_else(|_| whole(text, &(1..=20)))
}
