//! One fault of a file: where it is, what was read, what would be right.
//!
//! Refuses: codes that must be looked up; a fault is told in one line of plain words.
use crate::words::{Words, words};
use std::fmt;
use text::keys::checked as k;

/// Something wrong or odd in a file.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Fault {
    /// Name of the file.
    pub file: String,
    /// Name of the sheet, in a spreadsheet.
    pub sheet: Option<String>,
    /// Row, from 1, as an editor or a spreadsheet counts it.
    pub row: Option<usize>,
    /// Column.
    pub column: Option<Column>,
    /// What was read, and why it cannot stand.
    pub read: Words,
    /// What to do about it.
    pub right: Words,
    /// Whether the file is refused for it.
    pub weight: Weight,
    /// How many faults it stands for: 1, but for the last of a long list, which counts the rest.
    pub stands_for: usize,
}

/// What a fault does to its file.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Weight {
    /// The file is not taken.
    Wrong,
    /// The file is taken; somebody should look.
    Odd,
}

/// Where in a row.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord)]
pub struct Column {
    /// From 1: characters in a TOML file, cells in a plan.
    pub number: usize,
    /// The header above it, in a plan.
    pub name: Option<String>,
}

impl fmt::Display for Column {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match &self.name {
            Some(name) => f.write_str(name),
            None => self.number.fmt(f),
        }
    }
}

impl fmt::Display for Fault {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.file)?;
        if let Some(sheet) = &self.sheet {
            write!(f, ", sheet {}", quote(sheet))?;
        }
        if let Some(row) = self.row {
            write!(f, ", row {row}")?;
        }
        if let Some(column) = &self.column {
            write!(f, ", column {column}")?;
        }
        let odd = match self.weight {
            Weight::Wrong => "",
            Weight::Odd => "odd: ",
        };
        write!(f, ": {odd}read {}; {}", self.read, self.right)
    }
}

impl Fault {
    /// Whether the file is refused for it.
    #[must_use]
    pub fn stops(&self) -> bool {
        self.weight == Weight::Wrong
    }

    /// Where it was read, as "sheet!cell"; the sheet or the file alone where it is of the whole.
    #[must_use]
    pub fn cell(&self) -> String {
        let base = self.file.rsplit(['/', '\\']).next().unwrap_or(&self.file);
        let stem = base.rsplit_once('.').map_or(base, |(stem, _)| stem);
        let sheet = self.sheet.as_deref().unwrap_or(stem);
        match (self.row, &self.column) {
            (None, _) => self.sheet.clone().unwrap_or_else(|| base.to_owned()),
            (Some(row), None) => format!("{sheet}!{row}"),
            (Some(row), Some(column)) => {
                format!(
                    "{sheet}!{}{row}",
                    crate::plan_faults::letters(column.number - 1)
                )
            }
        }
    }

    /// A fault of a file as a whole, found by somebody who holds it against another: what was
    /// read, and what to do.
    #[must_use]
    pub fn of_file(file: &str, read: Words, right: Words) -> Self {
        Self::whole(file, Wrong { read, right })
    }

    /// A fault of a file as a whole.
    pub(crate) fn whole(file: &str, wrong: Wrong) -> Self {
        Self {
            file: file.to_owned(),
            sheet: None,
            row: None,
            column: None,
            read: wrong.read,
            right: wrong.right,
            weight: Weight::Wrong,
            stands_for: 1,
        }
    }

    /// Where it stands in its file, for sorting.
    pub(crate) fn place(&self) -> (usize, usize) {
        let column = self.column.as_ref().map_or(0, |column| column.number);
        (self.row.unwrap_or(0), column)
    }
}

/// How many faults a list tells, those counted in that its last entries stand for.
#[must_use]
pub fn count(faults: &[Fault]) -> usize {
    faults.iter().map(|fault| fault.stands_for).sum()
}

/// A fault that does not know its place yet: what was read and what would be right.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(crate) struct Wrong {
    /// Follows "read ".
    pub(crate) read: Words,
    /// Follows "; ".
    pub(crate) right: Words,
}

impl Wrong {
    /// A value that was read, quoted, and what is wrong with it.
    pub(crate) fn value(text: &str, what: impl Into<Words>, right: impl Into<Words>) -> Self {
        Self {
            read: words!(k::PLACE_AND_CELL, quote(text), what.into()),
            right: right.into(),
        }
    }

    /// Something that has no value of its own, such as a missing key.
    pub(crate) fn plain(read: impl Into<Words>, right: impl Into<Words>) -> Self {
        Self {
            read: read.into(),
            right: right.into(),
        }
    }
}

/// Longest piece of a file that is repeated in a fault, in characters.
const QUOTE_MAX: usize = 40;

/// The text in quotation marks, cut short when long, with nothing that would break the line.
pub(crate) fn quote(text: &str) -> String {
    // A line break within a cell is shown as the stroke that poets use.
    let text = text.replace(['\n', '\u{2028}'], " / ");
    let clean = |c: char| if c.is_control() { '\u{fffd}' } else { c };
    let mut short: String = text.chars().take(QUOTE_MAX).map(clean).collect();
    if text.chars().nth(QUOTE_MAX).is_some() {
        short.push('\u{2026}');
    }
    format!("\"{short}\"")
}
