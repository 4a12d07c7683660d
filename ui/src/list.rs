//! Fills the screens of things to choose from and to read; turns the pages of a long list.
use crate::generated::{KioskWindow, List, ListRow, ListState, Page};
use crate::rows::Rows;
use slint::{ComponentHandle as _, SharedString};
use std::cell::{Cell, RefCell};

/// Rows on one page.
const PAGE: usize = 6;

/// Keeps the rows, and which page of them is shown.
pub(crate) struct ListFace {
    all: RefCell<Vec<ListRow>>,
    title: RefCell<String>,
    page: Cell<usize>,
    rows: Rows<ListRow>,
}

impl ListFace {
    pub(crate) fn new(window: &KioskWindow) -> Self {
        let rows = Rows::new();
        window.global::<List<'_>>().set_rows(rows.model());
        Self {
            all: RefCell::default(),
            title: RefCell::default(),
            page: Cell::new(0),
            rows,
        }
    }

    pub(crate) fn show(&self, window: &KioskWindow, list: &view::list::List) {
        let to = window.global::<List<'_>>();
        // Another list begins at its first page.
        if *self.title.borrow() != list.title {
            self.page.set(0);
            self.title.borrow_mut().clone_from(&list.title);
        }
        to.set_title(list.title.as_str().into());
        to.set_hint(list.hint.as_str().into());
        to.set_main(list.main.as_str().into());
        to.set_held(list.held.as_str().into());
        *self.all.borrow_mut() = list.rows.iter().zip(0..).map(row).collect();
        self.settle(window);
    }

    /// Shows the next page, or the first after the last.
    pub(crate) fn turn(&self, window: &KioskWindow) {
        self.page.set(self.page.get() + 1);
        self.settle(window);
    }

    fn settle(&self, window: &KioskWindow) {
        let all = self.all.borrow();
        let pages = all.len().div_ceil(PAGE).max(1);
        self.page.set(self.page.get() % pages);
        let shown = all.chunks(PAGE).nth(self.page.get()).unwrap_or_default();
        self.rows.settle(shown.iter().cloned());
        window.global::<List<'_>>().set_more(pages > 1);
    }
}

fn row((row, at): (&view::list::ListRow, i32)) -> ListRow {
    ListRow {
        at,
        title: row.title.as_str().into(),
        value: row.value.as_str().into(),
        detail: row.detail.as_str().into(),
        state: match row.state {
            view::list::ListState::Plain => ListState::Plain,
            view::list::ListState::Chosen => ListState::Chosen,
            view::list::ListState::Amiss => ListState::Amiss,
            view::list::ListState::Told => ListState::Told,
        },
    }
}

/// Keeps the paragraphs of a page to read.
pub(crate) struct PageFace {
    lines: Rows<SharedString>,
}

impl PageFace {
    pub(crate) fn new(window: &KioskWindow) -> Self {
        let lines = Rows::new();
        window.global::<Page<'_>>().set_lines(lines.model());
        Self { lines }
    }

    pub(crate) fn show(&self, window: &KioskWindow, page: &view::list::Page) {
        window
            .global::<Page<'_>>()
            .set_title(page.title.as_str().into());
        self.lines.settle(page.lines.iter().map(SharedString::from));
    }
}
