//! Lists that change row by row, so that only what differs is drawn anew.
use slint::{Model as _, ModelRc, VecModel};
use std::rc::Rc;

/// A list shown by the window.
pub(crate) struct Rows<T>(Rc<VecModel<T>>);

impl<T: Clone + PartialEq + 'static> Rows<T> {
    /// An empty list.
    pub(crate) fn new() -> Self {
        Self(Rc::new(VecModel::default()))
    }

    /// The list as the window takes it; always the same one.
    pub(crate) fn model(&self) -> ModelRc<T> {
        ModelRc::from(Rc::clone(&self.0))
    }

    /// Makes the list equal to `rows`, touching only rows that differ.
    pub(crate) fn settle(&self, rows: impl IntoIterator<Item = T>) {
        let mut count = 0;
        for row in rows {
            match self.0.row_data(count) {
                None => self.0.push(row),
                Some(old) if old != row => self.0.set_row_data(count, row),
                Some(_) => {}
            }
            count += 1;
        }
        while self.0.row_count() > count {
            self.0.remove(self.0.row_count() - 1);
        }
    }
}
