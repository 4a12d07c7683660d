//! A plan's file to sheets of rows of cells: text is one sheet without a name, a spreadsheet has
//! several with names.
//!
//! Refuses: to know what a cell means.
use crate::Source;
use crate::book;
use crate::cells::{self, SheetRow};
use crate::coach_file::ROWS_MAX;
use crate::columns::{self, TITLES_MAX};
use crate::fault::Fault;
use crate::file_kind::{self, FileKind};
use std::borrow::Cow;

/// Rows kept of a sheet: titles, the header, the rows of a plan, and one more that tells that
/// there are too many.
pub(crate) const KEPT_MAX: usize = ROWS_MAX + TITLES_MAX + 2;

/// A sheet with its rows that are not empty.
#[derive(Debug, Clone)]
pub(crate) struct Sheet<'t> {
    /// Its name; a text has none.
    pub(crate) name: Option<String>,
    /// What stands between the cells of a text.
    pub(crate) separator: Option<char>,
    /// Whether the spreadsheet hides it.
    pub(crate) hidden: bool,
    /// Columns that the spreadsheet hides: a bit each.
    pub(crate) hidden_columns: u64,
    /// Up to [`KEPT_MAX`] of them.
    pub(crate) rows: Vec<SheetRow<'t>>,
}

/// A file that could be opened.
#[derive(Debug)]
pub(crate) enum Opened<'s> {
    /// Text.
    Text(Cow<'s, str>),
    /// A spreadsheet.
    Book(Vec<Sheet<'static>>),
}

impl Opened<'_> {
    /// Its sheets, in their order.
    pub(crate) fn sheets(&self) -> Cow<'_, [Sheet<'_>]> {
        match self {
            Self::Text(text) => {
                let separator = columns::separator(text);
                let rows = cells::rows(text, separator).take(KEPT_MAX);
                Cow::Owned(vec![Sheet {
                    name: None,
                    separator: Some(separator),
                    hidden: false,
                    hidden_columns: 0,
                    rows: rows.collect(),
                }])
            }
            Self::Book(sheets) => Cow::Borrowed(sheets),
        }
    }
}

/// Opens a plan by what its first bytes say that it is.
pub(crate) fn open(source: Source<'_>) -> Result<Opened<'_>, Vec<Fault>> {
    let told = |wrong| vec![Fault::whole(source.name, wrong)];
    match file_kind::kind(source).map_err(|fault| vec![*fault])? {
        FileKind::Text(text) => Ok(Opened::Text(text)),
        FileKind::Zipped => book::read(source.text).map(Opened::Book).map_err(told),
    }
}
