//! Fills the screen of what was done.
use crate::draw::rung_state;
use crate::generated::{Deed, End, KioskWindow};
use crate::rows::Rows;
use slint::ComponentHandle as _;

/// Keeps its rows.
pub(crate) struct EndFace {
    rows: Rows<Deed>,
}

impl EndFace {
    pub(crate) fn new(window: &KioskWindow) -> Self {
        let rows = Rows::new();
        window.global::<End<'_>>().set_rows(rows.model());
        Self { rows }
    }

    pub(crate) fn show(&self, window: &KioskWindow, end: &view::end::End) {
        let to = window.global::<End<'_>>();
        to.set_headline(end.headline.as_str().into());
        to.set_short(end.short);
        self.rows.settle(end.rows.iter().map(|row| Deed {
            load: row.load.as_str().into(),
            reps: row.reps.as_str().into(),
            hold: row.hold.as_str().into(),
            state: rung_state(row.state),
            kind: row.kind.as_str().into(),
        }));
        to.set_sum(end.sum.as_str().into());
        let next = end.next.as_ref();
        to.set_next(next.map_or("", |next| &next.reason).into());
        to.set_main(end.main.as_str().into());
    }
}
