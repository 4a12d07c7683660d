//! Text with separators to rows of cells, as RFC 4180 has it, with any of three separators.
//!
//! The rows are numbered as a spreadsheet numbers them: empty ones count, a line break within
//! quotes does not. The csv crate can say neither, and takes a quote that is never closed for
//! good, so it serves only as the measure in the tests. Refuses: to know what a cell means.
use crate::fault::Wrong;
use crate::words::words;
use std::borrow::Cow;

/// Most cells of a row that are kept.
pub(crate) const CELLS_MAX: usize = 64;

/// What a cell is, beside its text.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum CellKind {
    /// Text, or what was made text: a day.
    Text,
    /// A number of a spreadsheet.
    Number,
    /// A time of a spreadsheet, as "h:mm:ss".
    Time,
}

/// One row of a sheet that is not empty.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(crate) struct SheetRow<'t> {
    /// From 1.
    pub(crate) number: usize,
    /// Up to [`CELLS_MAX`] of them, as written, spaces and all.
    pub(crate) cells: Vec<Cow<'t, str>>,
    /// What each cell is; text beyond its end.
    pub(crate) kinds: Vec<CellKind>,
    /// What is wrong with its quotes: the cell, from 1, and the fault.
    pub(crate) broken: Option<(usize, Wrong)>,
}

impl SheetRow<'_> {
    /// What the cell at an index from 0 is.
    pub(crate) fn kind(&self, at: usize) -> CellKind {
        self.kinds.get(at).copied().unwrap_or(CellKind::Text)
    }

    /// Whether no cell holds anything.
    pub(crate) fn is_empty(&self) -> bool {
        self.broken.is_none() && self.cells.iter().all(|cell| cell.trim().is_empty())
    }
}

/// The rows of a text, empty ones left out.
pub(crate) fn rows(text: &str, separator: char) -> impl Iterator<Item = SheetRow<'_>> {
    let mut left = text;
    let mut number = 0;
    std::iter::from_fn(move || {
        if left.is_empty() {
            return None;
        }
        number += 1;
        let (row, rest) = row(left, separator, number);
        left = rest;
        Some(row)
    })
    .filter(|row| !row.is_empty())
}

/// Takes one row off the front of `text`.
fn row(text: &str, separator: char, number: usize) -> (SheetRow<'_>, &str) {
    let mut row = SheetRow {
        number,
        cells: Vec::new(),
        kinds: Vec::new(),
        broken: None,
    };
    let mut left = text;
    let mut count = 0;
    loop {
        let (cell, end, wrong) = cell(left, separator);
        count += 1;
        if count <= CELLS_MAX {
            row.cells.push(cell);
        }
        row.broken = row.broken.take().or(wrong.map(|wrong| (count, wrong)));
        left = &left[end..];
        let Some(next) = left.chars().next() else {
            break;
        };
        left = &left[next.len_utf8()..];
        if next != separator {
            if next == '\r' {
                left = left.strip_prefix('\n').unwrap_or(left);
            }
            break;
        }
    }
    if count > CELLS_MAX {
        let read = words!(
            "{0} cells in a row, more than the most, {1}",
            count,
            CELLS_MAX
        );
        let wrong = Wrong::plain(read, words!("delete what stands beyond the plan"));
        row.broken = row.broken.take().or(Some((CELLS_MAX, wrong)));
    }
    (row, left)
}

/// Takes one cell: its content, where it ends, what is wrong with its quotes.
fn cell(text: &str, separator: char) -> (Cow<'_, str>, usize, Option<Wrong>) {
    let stops = |c: char| c == separator || c == '\n' || c == '\r';
    let plain_end = |from: usize| text[from..].find(stops).map_or(text.len(), |at| from + at);
    let Some(inside) = text.strip_prefix('"') else {
        let end = plain_end(0);
        return (Cow::Borrowed(&text[..end]), end, None);
    };
    let mut content = Cow::Borrowed("");
    let mut from = 0;
    loop {
        let Some(at) = inside[from..].find('"').map(|at| from + at) else {
            let right = words!("close it at the end of the cell, or write it twice within");
            let wrong = Wrong::plain(words!("a quote that is never closed"), right);
            return (Cow::Borrowed(inside), text.len(), Some(wrong));
        };
        content += &inside[from..at];
        if inside[at + 1..].starts_with('"') {
            content += "\"";
            from = at + 2;
            continue;
        }
        let close = at + 2;
        let end = plain_end(close);
        let after = text[close..end].trim();
        let wrong = (!after.is_empty()).then(|| {
            let right = words!("put the whole cell within quotes, each quote in it twice");
            Wrong::value(after, words!("after a closing quote"), right)
        });
        return (content, end, wrong);
    }
}

#[cfg(test)]
#[path = "cells_tests.rs"]
mod tests;
