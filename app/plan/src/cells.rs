//! Text with separators to rows of cells, as RFC 4180 has it, with any of three separators.
//!
//! The rows are numbered as a spreadsheet numbers them: empty ones count, a line break within
//! quotes does not. The csv crate can say neither, and takes a quote that is never closed for
//! good, so it serves only as the measure in the tests. Refuses: to know what a cell means.
use crate::fault::Wrong;
use crate::words::words;
use std::borrow::Cow;
use text::keys::checked as k;

/// Most cells of a row that are kept.
pub(crate) const CELLS_MAX: usize = 64;

/// What a cell is, beside its text.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum CellKind {
    /// Text.
    Text,
    /// A number of a spreadsheet.
    Number,
    /// A time of a spreadsheet, as "h:mm:ss".
    Time,
    /// A day of a spreadsheet, as "2026-12-01".
    Day,
    /// A share of a spreadsheet, as "80 %".
    Share,
    /// A formula whose result nobody saved; its text is empty.
    Formula,
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
    /// Whether the spreadsheet hides it.
    pub(crate) hidden: bool,
    /// Cells of which something was struck through, and left out: a bit each.
    pub(crate) struck: u64,
    /// Cells that have their text from a merged range that begins elsewhere: a bit each.
    pub(crate) spread: u64,
}

impl SheetRow<'_> {
    /// An empty row.
    pub(crate) const fn of(number: usize) -> Self {
        Self {
            number,
            cells: Vec::new(),
            kinds: Vec::new(),
            broken: None,
            hidden: false,
            struck: 0,
            spread: 0,
        }
    }

    /// Makes it at least so many cells wide.
    pub(crate) fn widen(&mut self, cells: usize) {
        if self.cells.len() < cells {
            self.cells.resize(cells, Cow::Borrowed(""));
            self.kinds.resize(cells, CellKind::Text);
        }
    }

    /// The text of the cell at an index from 0, without spaces around it.
    pub(crate) fn text(&self, at: usize) -> &str {
        self.cells.get(at).map_or("", |cell| cell.trim())
    }

    /// Whether a cell has its text from a merged range that begins elsewhere.
    pub(crate) fn is_spread(&self, at: usize) -> bool {
        at < CELLS_MAX && self.spread & (1 << at) != 0
    }

    /// What the cell at an index from 0 is.
    pub(crate) fn kind(&self, at: usize) -> CellKind {
        self.kinds.get(at).copied().unwrap_or(CellKind::Text)
    }

    /// Whether no cell holds anything.
    pub(crate) fn is_empty(&self) -> bool {
        let no_text = self.cells.iter().all(|cell| cell.trim().is_empty());
        self.broken.is_none() && self.struck == 0 && no_text
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
    let mut row = SheetRow::of(number);
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
        let read = words!(k::CELLS_IN_A_ROW_MORE, count, CELLS_MAX);
        let wrong = Wrong::plain(read, words!(k::DELETE_WHAT_STANDS_BEYOND_THE));
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
            let right = words!(k::CLOSE_IT_AT_THE_END);
            let wrong = Wrong::plain(words!(k::A_QUOTE_THAT_IS_NEVER), right);
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
            let right = words!(k::PUT_THE_WHOLE_CELL_WITHIN);
            Wrong::value(after, words!(k::AFTER_A_CLOSING_QUOTE), right)
        });
        return (content, end, wrong);
    }
}

#[cfg(test)]
#[path = "cells_tests.rs"]
mod tests;
