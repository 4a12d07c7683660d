//! A row of a plan under reading: its cells, and what stands beside it.
use crate::against::Against;
use crate::cells::{CellKind, SheetRow};
use crate::columns;
use crate::facts::Facts;
use crate::fault::Wrong;
use crate::fields::Need;
use crate::plan_faults::PlanFaults;
use crate::set_group::From;
use crate::table::Table;
use crate::words::words;
use chrono::NaiveDate;
use domain::manner::Manner;
use text::keys::checked as k;

/// What rows of a sheet are read with.
pub(crate) struct Beside<'p> {
    pub(crate) against: &'p Against<'p>,
    /// The sheet's name; a text has the file's.
    pub(crate) sheet: &'p str,
    /// Whether it is a text, which has no sheets.
    pub(crate) is_text: bool,
    /// What titles and lone rows above have said.
    pub(crate) context: Facts,
    /// The Monday of week 1, where it was given from outside.
    pub(crate) monday: Option<NaiveDate>,
}

/// A row under reading.
pub(crate) struct Reading<'r, 'f> {
    pub(crate) row: &'r SheetRow<'r>,
    pub(crate) table: &'r mut Table,
    pub(crate) beside: &'r Beside<'r>,
    pub(crate) faults: &'r mut PlanFaults<'f>,
}

/// A row's own facts, and whom they are for.
#[derive(Debug, Default)]
pub(crate) struct Own {
    pub(crate) facts: Facts,
    pub(crate) lifters: Vec<String>,
    /// Where and how the lift is done, where its own cell says it: "rack pull (hole 7)".
    pub(crate) manner: Manner,
    /// Columns whose cell could not be read, which was told.
    pub(crate) failed: Vec<&'static str>,
    /// Columns that people fill, found empty.
    pub(crate) empty: Vec<(&'static str, usize)>,
}

impl Reading<'_, '_> {
    /// What the cell at an index is.
    pub(crate) fn kind(&self, at: usize) -> CellKind {
        self.row.kind(at)
    }

    /// Where a column stands for everybody, from 0.
    pub(crate) fn place(&self, key: &str) -> Option<usize> {
        let mut columns = self.table.columns.iter();
        columns.position(|c| c.key == Some(key) && c.facts.kinds() == 0 && !c.ignored)
    }

    /// Reads the cell of a column; `None` when it is empty or cannot be read, which is told.
    pub(crate) fn cell<T>(
        &mut self,
        key: &str,
        at: Option<usize>,
        read: impl FnOnce(&str) -> Result<T, Wrong>,
    ) -> Option<T> {
        let at = at?;
        let text = self.row.text(at);
        if !text.is_empty() {
            return read(text).map_err(|wrong| self.wrong(at, wrong)).ok();
        }
        self.tell_empty(key, at);
        None
    }

    /// Tells that the cell of a column that every row needs is empty.
    pub(crate) fn tell_empty(&mut self, key: &str, at: usize) {
        let column = columns::all().find(|column| column.field.key == key);
        if let Some(column) = column.filter(|column| column.field.need == Need::Always) {
            let right = words!(k::WRITE, column.field.example);
            self.wrong(at, Wrong::plain(words!(k::AN_EMPTY_CELL), right));
        }
    }

    pub(crate) fn wrong(&mut self, at: usize, wrong: Wrong) {
        let header = self.table.columns.get(at).map_or("", |c| c.header.as_str());
        self.faults
            .wrong(self.row.number, Some((at, header)), wrong);
    }

    /// What is wrong with a cell that a spreadsheet has made a day or a time of.
    pub(crate) fn typed(&self, at: usize, text: &str) -> Option<Wrong> {
        let what = match self.kind(at) {
            CellKind::Day => words!(k::A_DAY_WHICH_A_SPREADSHEET),
            CellKind::Time => words!(k::A_TIME_WHICH_A_SPREADSHEET),
            CellKind::Text | CellKind::Number | CellKind::Share | CellKind::Formula => return None,
        };
        let right = words!(k::FORMAT_THE_CELL_AS_TEXT);
        Some(Wrong::value(text, what, right))
    }

    /// Tells what is odd of a cell.
    pub(crate) fn odd(&mut self, at: usize, odd: Wrong) {
        self.faults.odd_at(self.row.number, Some(at), odd);
    }

    /// Where something of this row was read.
    pub(crate) fn from(&self, column: Option<usize>) -> From {
        From {
            sheet: self.beside.sheet.to_owned(),
            is_text: self.beside.is_text,
            row: self.row.number,
            column,
        }
    }
}
