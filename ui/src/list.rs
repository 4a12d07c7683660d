//! Fills the screens of things to choose from and to read; turns the pages of a long list.
use crate::generated::{KioskWindow, List, ListRow, ListState, Mark, Page};
use crate::rows::Rows;
use slint::{ComponentHandle as _, SharedString};
use std::cell::{Cell, RefCell};
use view::buttons::row_labels;
use view::list::Layout;

/// Keeps the rows, and which page of them is shown.
pub(crate) struct ListFace {
    all: RefCell<Vec<ListRow>>,
    title: RefCell<String>,
    page: Cell<usize>,
    page_rows: Cell<usize>,
    rows: Rows<ListRow>,
    body: Rows<Mark>,
    names: Rows<SharedString>,
    days: Rows<SharedString>,
}

impl ListFace {
    pub(crate) fn new(window: &KioskWindow) -> Self {
        let rows = Rows::new();
        let body = Rows::new();
        let (names, days) = (Rows::new(), Rows::new());
        let to = window.global::<List<'_>>();
        to.set_rows(rows.model());
        to.set_body(body.model());
        to.set_names(names.model());
        to.set_days(days.model());
        Self {
            all: RefCell::default(),
            title: RefCell::default(),
            page: Cell::new(0),
            page_rows: Cell::new(1),
            rows,
            body,
            names,
            days,
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
        self.page_rows.set(view::list::rows_shown(list));
        let tallest = list
            .body
            .iter()
            .map(|mark| mark.height_mm)
            .fold(0.0, f32::max);
        to.set_body_top(tallest * 1.15);
        self.lay(window, &list.layout);
        self.body.settle(marks(&list.body, tallest * 0.06));
        let mut labels = row_labels(list).into_iter();
        let rows = list.rows.iter().zip(0..);
        let rows = rows.map(|(row, at)| {
            let pressed = row.state != view::list::ListState::Told;
            let label = pressed.then(|| labels.next()).flatten();
            self::row(row, at, label.unwrap_or_default())
        });
        *self.all.borrow_mut() = rows.collect();
        self.settle(window);
    }

    fn lay(&self, window: &KioskWindow, layout: &Layout) {
        let to = window.global::<List<'_>>();
        let (mut names, mut days): (&[String], &[String]) = (&[], &[]);
        match layout {
            Layout::Columns => {}
            Layout::Desk { wide, heading } => {
                to.set_wide(i32::try_from(*wide).unwrap_or_default());
                to.set_heading(heading.as_str().into());
            }
            Layout::Week(head) => {
                (names, days) = (&head.names, &head.days);
                let today = head.today.and_then(|at| i32::try_from(at).ok());
                to.set_today(today.unwrap_or(-1));
            }
        }
        self.names.settle(names.iter().map(SharedString::from));
        self.days.settle(days.iter().map(SharedString::from));
        to.set_desk(matches!(layout, Layout::Desk { .. }));
        to.set_week(matches!(layout, Layout::Week(_)));
    }

    /// Shows the next page, or the first after the last.
    pub(crate) fn turn(&self, window: &KioskWindow) {
        self.page.set(self.page.get() + 1);
        self.settle(window);
    }

    fn settle(&self, window: &KioskWindow) {
        let all = self.all.borrow();
        let page_rows = self.page_rows.get();
        let pages = all.len().div_ceil(page_rows).max(1);
        self.page.set(self.page.get() % pages);
        let shown = all
            .chunks(page_rows)
            .nth(self.page.get())
            .unwrap_or_default();
        self.rows.settle(shown.iter().cloned());
        window.global::<List<'_>>().set_more(pages > 1);
    }
}

/// Landmarks; the word of one that stands close under another hangs below its line.
fn marks(marks: &[view::draw::HeightMark], close_mm: f32) -> Vec<Mark> {
    let under = |mark: &view::draw::HeightMark| {
        let mut apart = marks.iter().map(|other| other.height_mm - mark.height_mm);
        apart.any(|apart| apart > 0.0 && apart < close_mm)
    };
    let mark = |mark: &view::draw::HeightMark| Mark {
        word: mark.word.as_str().into(),
        height_mm: mark.height_mm,
        under: under(mark),
    };
    marks.iter().map(mark).collect()
}

fn row(row: &view::list::ListRow, at: i32, label: String) -> ListRow {
    ListRow {
        label: label.into(),
        at,
        title: row.title.as_str().into(),
        value: row.value.as_str().into(),
        detail: row.detail.as_str().into(),
        state: match row.state {
            view::list::ListState::Plain => ListState::Plain,
            view::list::ListState::Chosen => ListState::Chosen,
            view::list::ListState::Amiss => ListState::Amiss,
            view::list::ListState::Told => ListState::Told,
            view::list::ListState::Held => ListState::Held,
            view::list::ListState::Quiet => ListState::Quiet,
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
        let to = window.global::<Page<'_>>();
        to.set_title(page.title.as_str().into());
        to.set_only(page.only);
        self.lines.settle(page.lines.iter().map(SharedString::from));
    }
}
