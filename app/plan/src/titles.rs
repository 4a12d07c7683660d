//! Rows of a sheet that are no rows of a plan: headers of several rows, titles, lines of words.
//!
//! Refuses: to take a row for a title that has work in it.
use crate::against::Against;
use crate::cells::SheetRow;
use crate::columns;
use crate::facts::{self, Facts};
use crate::header;
use crate::plan_faults::PlanFaults;
use crate::plan_names::lifter_in;
use crate::table::Table;

/// Most rows that a header may have.
const HEADER_ROWS_MAX: usize = 4;
/// Columns whose names stand as labels before their values, between tables too.
const LABELS: [&str; 4] = ["date", "week", "weekday", "lifter"];

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
        let label = columns::column(cells[at]).map(|(key, _)| key);
        let label = label.is_some_and(|key| LABELS.contains(&key)) && cells.len() == 2;
        let labelled = cells[at].ends_with(':') || label || !in_table;
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

/// Whom titles name, where neither the sheet nor a column says whose plan it is.
#[derive(Debug)]
pub(crate) struct Titled {
    name: Option<String>,
    /// Whether rows have gone by it, so that the next title may name somebody else.
    used: bool,
}

impl Titled {
    /// Whom the name of a sheet names among other words: "1. Hamza", "Hamza wk 1-4".
    pub(crate) fn of(sheet: Option<&str>, against: &Against<'_>) -> Self {
        Self {
            name: sheet.and_then(|name| lifter_in(name, against, true)),
            used: false,
        }
    }

    /// Remembers whom a title above a header names.
    pub(crate) fn note(&mut self, row: &SheetRow<'_>, against: &Against<'_>) {
        self.name = named(row, against).or_else(|| self.name.take());
    }

    /// The rows below a header are for the lifter of its title, where nothing else says for whom.
    pub(crate) fn give(&mut self, table: &Table, said: &Facts, context: &mut Facts) {
        if said.lifter.is_none() && !table.names_lifters() && self.name.is_some() {
            context.lifter.clone_from(&self.name);
            self.used = true;
        }
    }

    /// A line of words within a table may name the next lifter.
    pub(crate) fn turn(
        &mut self,
        row: &SheetRow<'_>,
        against: &Against<'_>,
        table: &Table,
        context: &mut Facts,
    ) -> bool {
        let free = self.used || context.lifter.is_none();
        let Some(name) = named(row, against).filter(|_| free && !table.names_lifters()) else {
            return false;
        };
        let facts = Facts {
            lifter: Some(name.clone()),
            ..Facts::default()
        };
        context.turn_to(&facts);
        (self.name, self.used) = (Some(name), true);
        true
    }
}

/// The one lifter whom a row of words names.
fn named(row: &SheetRow<'_>, against: &Against<'_>) -> Option<String> {
    let texts = (0..row.cells.len()).filter(|at| !row.is_spread(*at));
    let texts: Vec<&str> = texts.map(|at| row.text(at)).collect();
    lifter_in(&texts.join(" "), against, false)
}

/// Whether a row adds up those above it: "Total | | 6 | 10".
pub(crate) fn is_total(row: &SheetRow<'_>, table: &Table) -> bool {
    const SUMS: [&str; 12] = [
        "total", "totals", "sum", "subtotal", "average", "avg", "mean", "summe", "gesamt",
        "schnitt", "volume", "tonnage",
    ];
    let mut texts = (0..row.cells.len()).map(|at| row.text(at));
    let first = texts.find(|text| !text.is_empty()).unwrap_or_default();
    let word: String = first.chars().take_while(|c| c.is_alphabetic()).collect();
    let mut columns = table.columns.iter();
    let lift = columns.position(|column| column.key == Some("lift"));
    let no_lift = lift.is_none_or(|at| row.text(at).is_empty() || row.text(at) == first);
    no_lift && SUMS.contains(&word.to_lowercase().as_str())
}
