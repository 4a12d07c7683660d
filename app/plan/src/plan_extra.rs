//! Cells beside the work: columns that no plan needs, days without any, several lifts in a cell.
//!
//! Refuses: sets and reps under a header that nobody knows.
use crate::fault::{Wrong, quote};
use crate::header::is_scheme;
use crate::nearest::squeeze;
use crate::plan_reading::Reading;
use crate::words::words;
use text::keys::checked as k;

/// Columns that no plan needs, as notes; tells sets and reps under a header nobody knows.
pub(crate) fn extras(reading: &mut Reading<'_, '_>) -> (Vec<String>, bool) {
    let mut notes = Vec::new();
    let mut failed = false;
    for at in 0..reading.row.cells.len() {
        let text = reading.row.text(at).to_owned();
        let key = reading.table.columns.get(at).and_then(|column| column.key);
        if matches!(key, None | Some("note" | "track")) && is_warm_up(&text) {
            let right = words!(k::TAKE_THE_ROW_OUT_OR);
            reading.wrong(
                at,
                Wrong::value(&text, words!(k::A_WARM_UP_THE_LADDER), right),
            );
            failed = true;
            continue;
        }
        let (header, plain) = match reading.table.columns.get(at) {
            Some(column) => (
                column.header.clone(),
                column.key.is_none() && column.facts.kinds() == 0 && !column.ignored,
            ),
            None => (String::new(), true),
        };
        if text.is_empty() || !plain || reading.table.is_free() {
            continue;
        }
        let says_facts = crate::facts::read(&text, reading.beside.against);
        if header.is_empty() && matches!(says_facts, Ok(Some(facts)) if facts.kinds() != 0) {
            continue;
        }
        let number = text
            .bytes()
            .all(|b| b.is_ascii_digit() || matches!(b, b'.' | b',' | b'%' | b' '));
        if header.is_empty() && number || is_scheme(&text) {
            let what = match header.is_empty() {
                true => words!(k::UNDER_NO_HEADER),
                false => words!(k::SETS_AND_REPS_UNDER_A, quote(&header)),
            };
            let right = match header.is_empty() {
                true => words!(k::GIVE_THE_COLUMN_A_HEADER),
                false => words!(k::WRITE_A_WEEK_A_DAY),
            };
            reading.wrong(at, Wrong::value(&text, what, right));
            failed = true;
            continue;
        }
        let text: Vec<_> = text.split_whitespace().collect();
        let text = text.join(" ");
        notes.push(match header.is_empty() {
            true => text,
            false => format!("{header}: {text}"),
        });
    }
    (notes, failed)
}

/// Whether a cell beside the work says that the row is a warm-up, which is no work.
fn is_warm_up(text: &str) -> bool {
    let plain = squeeze(text);
    let plain = plain.trim_end_matches(|c: char| !c.is_alphabetic());
    let marks = [
        "warmup",
        "warmups",
        "warmupset",
        "warmupsets",
        "wu",
        "w/u",
        "aufw\u{e4}rmen",
        "aufw\u{e4}rmsatz",
        "calentamiento",
        "\u{e9}chauffement",
    ];
    marks.contains(&plain)
}

/// Whether a cell says that nothing is planned.
pub(crate) fn is_nothing(text: &str) -> bool {
    let text = text.trim().to_lowercase();
    let marks = ["-", "--", "\u{2013}", "\u{2014}", "/", "x", "n/a", "0"];
    let words = [
        "off", "out", "away", "skip", "rest", "rest day", "day off", "none", "frei", "ruhe",
        "ruhetag", "pause", "repos",
    ];
    marks.contains(&text.as_str()) || words.contains(&text.as_str())
}

/// A cell's lines, each with the lift that it begins with; one without belongs to the one before.
pub(crate) fn segments(text: &str, reading: &Reading<'_, '_>) -> Vec<(Option<String>, String)> {
    let mut found: Vec<(Option<String>, String)> = Vec::new();
    for piece in text
        .split(['\n', ';'])
        .map(str::trim)
        .filter(|piece| !piece.is_empty())
    {
        // "- Rack pull 5x3", "2) Rack pull 5x3": what marks a line of a list is no work.
        let bare = piece.trim_start_matches(|c: char| !c.is_alphanumeric());
        let numbered = bare.trim_start_matches(|c: char| c.is_ascii_digit());
        let numbered = numbered.strip_prefix(['.', ')']).map(str::trim_start);
        let against = reading.beside.against;
        let lift = [Some(bare), numbered].into_iter().flatten();
        let lift = { lift }.find_map(|text| against.lift_in_front(text));
        match (lift, found.last_mut()) {
            (Some((lift, rest)), _) => found.push((Some(lift), rest.to_owned())),
            (None, Some((_, before))) => {
                before.push('\n');
                before.push_str(piece);
            }
            (None, None) => found.push((None, piece.to_owned())),
        }
    }
    found
}
