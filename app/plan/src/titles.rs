//! Rows of a sheet that are no rows of a plan: headers of several rows, titles, lines of words.
//!
//! Refuses: to take a row for a title that has work in it.
use crate::against::Against;
use crate::cells::SheetRow;
use crate::facts::{self, Facts};
use crate::header;
use crate::plan_faults::PlanFaults;

/// Most rows that a header may have.
const HEADER_ROWS_MAX: usize = 4;

/// The rows of a header that begins or goes on at `at`: those below that are headers too, and
/// above the first one those that say for which week, day or lifter columns are.
pub(crate) fn header_rows(
    rows: &[&SheetRow<'_>],
    at: usize,
    is_first: bool,
    against: &Against<'_>,
) -> (usize, usize) {
    let mut to = at + 1;
    while to < rows.len()
        && to - at < HEADER_ROWS_MAX
        && header::is_header(rows[to], false, against)
    {
        to += 1;
    }
    let mut from = at;
    while is_first && from > 0 && at - from < HEADER_ROWS_MAX && is_upper(rows[from - 1], against) {
        from -= 1;
    }
    (from, to)
}

/// Whether a row above a header says what columns are for: one fact over a part of the width.
fn is_upper(row: &SheetRow<'_>, against: &Against<'_>) -> bool {
    let filled: Vec<usize> = (0..row.cells.len())
        .filter(|at| !row.text(*at).is_empty())
        .collect();
    let part = filled.first().is_some_and(|at| *at > 0);
    part && filled.iter().all(|at| {
        let read = facts::read(row.text(*at), against);
        matches!(read, Ok(Some(facts)) if facts.kinds() != 0)
    })
}

/// What a row says that holds nothing but facts: "Monday", "Lifter: | Tevita". In a table such a
/// row has one cell, or a label and its value; in titles there may be more.
pub(crate) fn alone(row: &SheetRow<'_>, against: &Against<'_>, in_table: bool) -> Option<Facts> {
    let cells: Vec<&str> = (0..row.cells.len())
        .filter(|at| !row.is_spread(*at))
        .map(|at| row.text(at))
        .filter(|text| !text.is_empty())
        .collect();
    if cells.is_empty() || in_table && cells.len() > 2 {
        return None;
    }
    let said = |text: &str| {
        facts::read(text, against)
            .ok()
            .flatten()
            .filter(|f| f.kinds() != 0)
    };
    let mut facts = Facts::default();
    let mut at = 0;
    let mut passed = false;
    while at < cells.len() {
        let pair = cells
            .get(at + 1)
            .map(|next| format!("{} {next}", cells[at].trim_end_matches(':')));
        let labelled = cells[at].ends_with(':') || !in_table;
        if let Some(more) = pair.filter(|_| labelled).as_deref().and_then(said) {
            facts = more.or(&facts);
            at += 2;
            continue;
        }
        match said(cells[at]) {
            Some(more) if !in_table || cells.len() == 1 => facts = more.or(&facts),
            Some(_) | None => passed = true,
        }
        at += 1;
    }
    (facts.kinds() != 0 && !(passed && in_table)).then_some(facts)
}

/// A lone line of words at the left, or one that is spread over the width.
pub(crate) fn is_remark(row: &SheetRow<'_>) -> bool {
    let mut filled =
        (0..row.cells.len()).filter(|at| !row.text(*at).is_empty() && !row.is_spread(*at));
    let (Some(at), None) = (filled.next(), filled.next()) else {
        return false;
    };
    let text = row.text(at);
    let words = text.chars().any(char::is_alphabetic) && !header::is_scheme(text);
    row.broken.is_none() && words && (row.spread != 0 || at == 0)
}

/// Whether a row without a header has a lift or sets in it.
pub(crate) fn speaks(row: &SheetRow<'_>, against: &Against<'_>) -> bool {
    (0..row.cells.len()).any(|at| {
        let text = row.text(at);
        header::is_scheme(text) || against.lift_in_front(text).is_some()
    })
}

/// Tells a first Monday in a title that is none.
pub(crate) fn bad_start(row: &SheetRow<'_>, against: &Against<'_>, faults: &mut PlanFaults<'_>) {
    for at in 0..row.cells.len() {
        let label = row.text(at).trim_end_matches(':');
        let both = format!("{label} {}", row.text(at + 1));
        if facts::says_start(&both)
            && let Err(wrong) = facts::read(both.trim(), against)
        {
            faults.wrong(row.number, Some((at, "")), wrong);
        }
    }
}
