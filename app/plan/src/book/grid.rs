//! A sheet under reading: cells by row and column, then rows with what is merged spread out.
//!
//! Refuses: rows and text without bound.
use super::value::Value;
use crate::cells::{CELLS_MAX, SheetRow};
use crate::fault::Wrong;
use crate::sheets::{KEPT_MAX, Sheet};
use crate::words::words;
use std::borrow::Cow;
use std::collections::{BTreeMap, BTreeSet};
use text::keys::checked as k;

/// Most bytes of text that are kept of a workbook: 16 MiB.
pub(super) const TEXT_MAX: usize = 16 << 20;
/// Most merged ranges of a sheet that are looked at.
const MERGED_MAX: usize = 10_000;

/// How much text may still be kept of the workbook.
pub(super) struct Left(pub(super) usize);

impl Left {
    /// Takes so many bytes off, or tells that there are too many.
    pub(super) fn take(&mut self, bytes: usize) -> Result<(), Wrong> {
        self.0 = self.0.checked_sub(bytes).ok_or_else(|| {
            let read = words!(k::A_WORKBOOK_WITH_MORE_THAN, TEXT_MAX);
            Wrong::plain(read, words!(k::DELETE_WHAT_IS_NO_PLAN))
        })?;
        Ok(())
    }
}

/// A range of merged cells; rows and columns from 0, both ends within it.
#[derive(Debug, Clone, Copy)]
pub(super) struct Merged {
    pub(super) rows: (usize, usize),
    pub(super) columns: (usize, usize),
}

/// A sheet's cells.
#[derive(Debug, Default)]
pub(super) struct Grid {
    rows: BTreeMap<usize, Vec<(usize, Value)>>,
    merged: Vec<Merged>,
    hidden_rows: BTreeSet<usize>,
    hidden_columns: u64,
    pub(super) full: bool,
}

impl Grid {
    /// Puts a cell in its place; those beyond the rows that are kept are passed over.
    pub(super) fn put(
        &mut self,
        (row, column): (usize, usize),
        value: Value,
        left: &mut Left,
    ) -> Result<(), Wrong> {
        if value.is_nothing() {
            return Ok(());
        }
        left.take(value.text.len())?;
        let new = !self.rows.contains_key(&row);
        self.full |= new && self.rows.len() >= KEPT_MAX;
        if !self.full {
            self.rows.entry(row).or_default().push((column, value));
        }
        Ok(())
    }

    /// Notes a merged range.
    pub(super) fn merge(&mut self, merged: Merged) {
        if self.merged.len() < MERGED_MAX {
            self.merged.push(merged);
        }
    }

    /// Notes a hidden row, before its cells come.
    pub(super) fn hide_row(&mut self, row: usize) {
        if self.hidden_rows.len() < KEPT_MAX {
            self.hidden_rows.insert(row);
        }
    }

    /// Notes hidden columns from one on; those beyond the cells that are kept do not matter.
    pub(super) fn hide_columns(&mut self, from: usize, to: usize) {
        for column in from..to.saturating_add(1).min(CELLS_MAX) {
            self.hidden_columns |= 1 << column;
        }
    }

    /// The sheet as it is read on.
    pub(super) fn sheet(self, name: String, hidden: bool) -> Sheet<'static> {
        let mut rows: BTreeMap<usize, SheetRow<'static>> = BTreeMap::new();
        for (at, cells) in self.rows {
            let mut row = row(at + 1, cells);
            row.hidden = self.hidden_rows.contains(&at);
            rows.insert(at, row);
        }
        for merged in &self.merged {
            spread(&mut rows, merged);
        }
        Sheet {
            name: Some(name),
            separator: None,
            hidden,
            hidden_columns: self.hidden_columns,
            rows: rows.into_values().collect(),
        }
    }
}

/// Gives every cell of a merged range that is kept the text of its first one.
fn spread(rows: &mut BTreeMap<usize, SheetRow<'static>>, merged: &Merged) {
    let (top, left) = (merged.rows.0, merged.columns.0);
    let Some(first) = rows.get(&top) else {
        return;
    };
    let (Some(text), kind) = (first.cells.get(left).cloned(), first.kind(left)) else {
        return;
    };
    if text.trim().is_empty() {
        return;
    }
    let right = merged.columns.1.min(CELLS_MAX - 1);
    for (at, row) in rows.range_mut(top..=merged.rows.1) {
        for column in left..=right {
            if (*at, column) == (top, left) {
                continue;
            }
            row.widen(column + 1);
            // What a writer left under the range is not shown by the spreadsheet either.
            row.cells[column] = text.clone();
            row.kinds[column] = kind;
            row.spread |= 1 << column;
        }
    }
}

fn row(number: usize, cells: Vec<(usize, Value)>) -> SheetRow<'static> {
    let widest = cells.iter().map(|(at, ..)| at + 1).max().unwrap_or(0);
    let mut row = SheetRow::of(number);
    row.widen(widest.min(CELLS_MAX));
    for (at, value) in cells {
        if at < CELLS_MAX {
            row.cells[at] = Cow::Owned(value.text);
            row.kinds[at] = value.kind;
            row.struck |= u64::from(value.struck) << at;
        }
    }
    if widest > CELLS_MAX {
        let read = words!(k::CELLS_IN_A_ROW_MORE, widest, CELLS_MAX);
        let wrong = Wrong::plain(read, words!(k::DELETE_WHAT_STANDS_BEYOND_THE));
        row.broken = Some((CELLS_MAX, wrong));
    }
    row
}
