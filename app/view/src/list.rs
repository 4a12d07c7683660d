//! A list of things to choose from, a page to read: the plain screens of the kiosk's own affairs.
//!
//! Refuses: knowing what its rows mean; whoever makes the list does.

use crate::draw::HeightMark;

/// Rows to tap.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct List {
    /// "This kiosk".
    pub title: String,
    /// A sentence under it, or empty.
    pub hint: String,
    /// Rows, in order; the window turns pages where there are many.
    pub rows: Vec<ListRow>,
    /// The main button, or empty.
    pub main: String,
    /// Heights to be drawn on a body beside the rows; none for no drawing.
    pub body: Vec<HeightMark>,
    /// How the rows stand.
    pub layout: Layout,
}

/// How the rows of a list stand.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub enum Layout {
    /// In columns, page by page.
    #[default]
    Columns,
    /// The first so many wide at the left, with a reason each; the others as tiles beside them.
    Desk {
        /// How many.
        wide: usize,
        /// What stands above them: "waits for you".
        heading: String,
    },
    /// A week: of each lifter a row a day, then what turns the pages.
    Week(WeekHead),
}

/// The names and days of a week.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct WeekHead {
    /// Lifters, one a line.
    pub names: Vec<String>,
    /// "Wed 25", seven.
    pub days: Vec<String>,
    /// Which of them is today, from 0.
    pub today: Option<usize>,
}

/// One row.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct ListRow {
    /// What it is: "language".
    pub title: String,
    /// What it is now: "Deutsch".
    pub value: String,
    /// More, quieter.
    pub detail: String,
    /// For the look.
    pub state: ListState,
}

/// How it stands with a row.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum ListState {
    /// A tap does something.
    #[default]
    Plain,
    /// It is the one chosen.
    Chosen,
    /// Somebody should look at it.
    Amiss,
    /// Only told; a tap does nothing.
    Told,
    /// It takes something away: it has to be held.
    Held,
    /// Quieter than others: there is nothing yet, or a programme fills it.
    Quiet,
}

/// A page to read.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct Page {
    /// "About and licences".
    pub title: String,
    /// Paragraphs.
    pub lines: Vec<String>,
    /// Whether there is no other face to go to, as when the kiosk cannot start.
    pub only: bool,
}

/// Rows on one page, and beside a drawing; the window turns the pages of longer lists.
const PAGES: [usize; 2] = [9, 6];

/// How many rows of `list` stand on one page.
#[must_use]
pub fn rows_shown(list: &List) -> usize {
    match list.layout {
        Layout::Columns => PAGES[usize::from(!list.body.is_empty())],
        Layout::Desk { .. } | Layout::Week(_) => list.rows.len(),
    }
}

impl ListRow {
    /// A row with a title and a value.
    pub(crate) fn new(title: String, value: impl Into<String>) -> Self {
        Self {
            title,
            value: value.into(),
            ..Self::default()
        }
    }

    /// With something quieter under it.
    pub(crate) fn detail(self, detail: impl Into<String>) -> Self {
        Self {
            detail: detail.into(),
            ..self
        }
    }

    /// With another state.
    pub(crate) fn state(self, state: ListState) -> Self {
        Self { state, ..self }
    }
}
