//! The header of a plan: which separator it has, and which column stands where.
//!
//! Refuses: unknown columns, a column twice, a plan without a column that every plan needs.
use crate::cells::{self, SheetRow};
use crate::fault::{Wrong, quote};
use crate::fields::{COLUMNS, Need};
use crate::nearest::{nearest, one_of, squeeze};
use crate::plan_faults::PlanFaults;

/// The separators that are tried; the first wins when they do equally well.
const SEPARATORS: [char; 3] = [',', ';', '\t'];

/// The separator with which the header names the most columns.
pub(crate) fn separator(text: &str) -> char {
    let known = |separator: &char| {
        let header = cells::rows(text, *separator).next();
        let cells = header.map(|row| row.cells).unwrap_or_default();
        cells.iter().filter(|cell| column(cell).is_some()).count()
    };
    // `max_by_key` gives the last of equals, so the order is turned round.
    SEPARATORS
        .into_iter()
        .rev()
        .max_by_key(known)
        .unwrap_or(',')
}

/// Index into [`COLUMNS`] of a header, however it is spelt.
fn column(header: &str) -> Option<usize> {
    let header = squeeze(header);
    COLUMNS.iter().position(|column| {
        let mut spellings = column.also.iter().chain([&column.field.key]);
        spellings.any(|spelling| squeeze(spelling) == header)
    })
}

/// Where each column stands, and how the file spells it.
#[derive(Debug)]
pub(crate) struct Columns {
    places: [Option<usize>; COLUMNS.len()],
    headers: Vec<String>,
    separator: char,
}

impl Columns {
    /// Reads the header; `None` when it names no column at all.
    pub(crate) fn read(
        header: &SheetRow<'_>,
        separator: char,
        faults: &mut PlanFaults<'_>,
    ) -> Option<Self> {
        let headers = header.cells.iter().map(|cell| cell.trim().to_owned());
        let mut columns = Self {
            places: [None; COLUMNS.len()],
            headers: headers.collect(),
            separator,
        };
        if !columns
            .headers
            .iter()
            .any(|header| column(header).is_some())
        {
            let keys: Vec<_> = COLUMNS.iter().map(|column| column.field.key).collect();
            let right = format!("begin with a header row: {}", keys.join(","));
            faults.wrong(
                header.number,
                None,
                Wrong::plain("a first row that names no column", right),
            );
            return None;
        }
        for (at, text) in columns.headers.iter().enumerate() {
            columns.places = place(columns.places, at, text, header.number, faults);
        }
        for (column, place) in COLUMNS.iter().zip(columns.places) {
            if column.field.need == Need::Always && place.is_none() {
                let key = quote(column.field.key);
                let read = format!("a header without {key}");
                faults.wrong(
                    header.number,
                    None,
                    Wrong::plain(read, format!("add the column {key}")),
                );
            }
        }
        Some(columns)
    }

    /// Where a column of [`COLUMNS`] stands, from 0.
    pub(crate) fn place(&self, key: &str) -> Option<usize> {
        let at = COLUMNS.iter().position(|column| column.field.key == key);
        self.places[at.expect("every column that is read is in the list of columns")]
    }

    /// What stands between the cells.
    pub(crate) const fn separator(&self) -> char {
        self.separator
    }

    /// What the file calls the column at `at`; empty beyond the header.
    pub(crate) fn header(&self, at: usize) -> &str {
        self.headers.get(at).map_or("", String::as_str)
    }
}

/// Gives the header at `at` its place, or tells why it has none.
fn place(
    mut places: [Option<usize>; COLUMNS.len()],
    at: usize,
    text: &str,
    row: usize,
    faults: &mut PlanFaults<'_>,
) -> [Option<usize>; COLUMNS.len()] {
    if text.is_empty() {
        return places;
    }
    let cell = Some((at, ""));
    let Some(found) = column(text) else {
        let keys: Vec<_> = COLUMNS.iter().map(|column| column.field.key).collect();
        let meant = nearest(text, &keys).map_or_else(|| one_of(&keys), quote);
        let right = format!("write {meant}, or leave the column out");
        faults.wrong(
            row,
            cell,
            Wrong::value(text, "a column that a plan does not have", right),
        );
        return places;
    };
    match places[found] {
        None => places[found] = Some(at),
        Some(first) => {
            let what = format!(
                "the column {} again, after column {}",
                quote(COLUMNS[found].field.key),
                first + 1
            );
            faults.wrong(row, cell, Wrong::value(text, &what, "keep one of them"));
        }
    }
    places
}
