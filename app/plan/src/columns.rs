//! The header of a plan: which row it is, which separator it has, which column stands where.
//!
//! Refuses: unknown columns, a column twice, a plan without a column that every plan needs.
use crate::cells::{self, SheetRow};
use crate::fault::{Wrong, quote};
use crate::fields::{COLUMNS, Need};
use crate::nearest::{nearest, one_of, squeeze};
use crate::plan_faults::PlanFaults;
use crate::words::{Words, words};

/// The separators that are tried; the first wins when they do equally well.
const SEPARATORS: [char; 3] = [',', ';', '\t'];

/// Rows that are not empty among which the header is looked for: titles may stand above it.
pub(crate) const TITLES_MAX: usize = 20;

/// The separator with which a row at the top names the most columns.
pub(crate) fn separator(text: &str) -> char {
    let known = |separator: &char| {
        let rows = cells::rows(text, *separator).take(TITLES_MAX);
        rows.map(|row| named(&row)).max().unwrap_or(0)
    };
    // `max_by_key` gives the last of equals, so the order is turned round.
    SEPARATORS
        .into_iter()
        .rev()
        .max_by_key(known)
        .unwrap_or(',')
}

/// Which of the rows is the header: the first that names two columns or more.
pub(crate) fn header_at(rows: &[SheetRow<'_>]) -> Option<usize> {
    let mut top = rows.iter().take(TITLES_MAX);
    top.position(|row| named(row) >= 2)
}

/// How many cells of a row name a column.
fn named(row: &SheetRow<'_>) -> usize {
    let cells = row.cells.iter();
    cells.filter(|cell| column(cell).is_some()).count()
}

/// The unit of a whole column, written in its header: "load (kg)".
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) struct ColumnUnit(pub(crate) &'static str);

const UNITS: [(&str, ColumnUnit); 4] = [
    ("kg", ColumnUnit("kg")),
    ("lb", ColumnUnit("lb")),
    ("lbs", ColumnUnit("lb")),
    ("%", ColumnUnit("%")),
];

/// Index into [`COLUMNS`] of a header, however it is spelt, and its unit if it names one.
fn column(header: &str) -> Option<(usize, Option<ColumnUnit>)> {
    let plain = header.trim().trim_end_matches(['.', ':', '*']);
    let found = |text: &str| {
        let text = squeeze(text);
        COLUMNS.iter().position(|column| {
            let mut spellings = column.also.iter().chain([&column.field.key]);
            spellings.any(|spelling| squeeze(spelling) == text)
        })
    };
    if let Some(at) = found(plain) {
        return Some((at, None));
    }
    let (front, unit) = with_unit(plain)?;
    let at = found(front).filter(|at| COLUMNS[*at].field.key == "load")?;
    Some((at, Some(unit)))
}

/// Splits "load (kg)", "load [kg]", "load in kg" or "load, kg".
fn with_unit(header: &str) -> Option<(&str, ColumnUnit)> {
    let lower = header.trim_end_matches([')', ']']);
    UNITS.iter().find_map(|(word, unit)| {
        let at = lower.len().checked_sub(word.len())?;
        let (front, end) = (lower.get(..at)?, lower.get(at..)?);
        let front = front.strip_suffix(['(', '[', ',', ' '])?;
        let front = front.trim_end().trim_end_matches([',', '(', '[']);
        let front = front.strip_suffix(" in").unwrap_or(front);
        end.eq_ignore_ascii_case(word)
            .then_some((front.trim(), *unit))
    })
}

/// Where each column stands, and how the file spells it.
#[derive(Debug)]
pub(crate) struct Columns {
    places: [Option<usize>; COLUMNS.len()],
    headers: Vec<String>,
    separator: Option<char>,
    unit: Option<ColumnUnit>,
}

impl Columns {
    /// Reads the header; `None` when it names no column at all.
    pub(crate) fn read(
        header: &SheetRow<'_>,
        separator: Option<char>,
        faults: &mut PlanFaults<'_>,
    ) -> Option<Self> {
        let headers = header.cells.iter().map(|cell| cell.trim().to_owned());
        let mut columns = Self {
            places: [None; COLUMNS.len()],
            headers: headers.collect(),
            separator,
            unit: None,
        };
        if named(header) == 0 {
            let keys: Vec<_> = COLUMNS.iter().map(|column| column.field.key).collect();
            let right = words!("begin with a header row: {0}", keys.join(","));
            let wrong = Wrong::plain(words!("a first row that names no column"), right);
            faults.wrong(header.number, None, wrong);
            return None;
        }
        for at in 0..columns.headers.len() {
            columns.place_header(at, header.number, faults);
        }
        for (column, place) in COLUMNS.iter().zip(columns.places) {
            if column.field.need == Need::Always && place.is_none() {
                let key = quote(column.field.key);
                let wrong = Wrong::plain(
                    words!("a header without {0}", &key),
                    words!("add the column {0}", key),
                );
                faults.wrong(header.number, None, wrong);
            }
        }
        Some(columns)
    }

    /// Where a column of [`COLUMNS`] stands, from 0.
    pub(crate) fn place(&self, key: &str) -> Option<usize> {
        let at = COLUMNS.iter().position(|column| column.field.key == key);
        self.places[at.expect("every column that is read is in the list of columns")]
    }

    /// What stands between the cells; `None` in a spreadsheet.
    pub(crate) const fn separator(&self) -> Option<char> {
        self.separator
    }

    /// The unit of the column of loads, where its header names one.
    pub(crate) const fn unit(&self) -> Option<ColumnUnit> {
        self.unit
    }

    /// What the file calls the column at `at`; empty beyond the header.
    pub(crate) fn header(&self, at: usize) -> &str {
        self.headers.get(at).map_or("", String::as_str)
    }

    /// Gives the header at `at` its place, or tells why it has none.
    fn place_header(&mut self, at: usize, row: usize, faults: &mut PlanFaults<'_>) {
        let text = self.headers[at].clone();
        if text.is_empty() {
            return;
        }
        let cell = Some((at, ""));
        let Some((found, unit)) = column(&text) else {
            let wrong = Wrong::value(
                &text,
                words!("a column that a plan does not have"),
                meant(&text),
            );
            faults.wrong(row, cell, wrong);
            return;
        };
        match self.places[found] {
            None => {
                self.places[found] = Some(at);
                self.unit = self.unit.or(unit);
            }
            Some(first) => {
                let key = quote(COLUMNS[found].field.key);
                let what = words!("the column {0} again, after column {1}", key, first + 1);
                faults.wrong(
                    row,
                    cell,
                    Wrong::value(&text, &what, words!("keep one of them")),
                );
            }
        }
    }
}

/// What to write instead of a header that no column has: the nearest in any spelling, by the
/// name that FILES.md leads with, else all of them.
fn meant(text: &str) -> Words {
    let keys: Vec<_> = COLUMNS.iter().map(|column| column.field.key).collect();
    let all: Vec<_> = COLUMNS
        .iter()
        .flat_map(|column| column.also.iter().chain([&column.field.key]).copied())
        .collect();
    let near = nearest(text, &keys).or_else(|| nearest(text, &all));
    let meant = near.map_or_else(|| one_of(&keys), |name| Words::plain(quote(name)));
    words!("write {0}, or leave the column out", meant)
}
