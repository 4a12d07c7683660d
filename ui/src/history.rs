//! Fills the screen of a lifter's history.
use crate::draw::rung_state;
use crate::generated::{History, KioskWindow, Session};
use crate::rows::Rows;
use slint::ComponentHandle as _;

/// Keeps its sessions.
pub(crate) struct HistoryFace {
    sessions: Rows<Session>,
}

impl HistoryFace {
    pub(crate) fn new(window: &KioskWindow) -> Self {
        let sessions = Rows::new();
        window
            .global::<History<'_>>()
            .set_sessions(sessions.model());
        Self { sessions }
    }

    pub(crate) fn show(&self, window: &KioskWindow, history: &view::history::History) {
        let to = window.global::<History<'_>>();
        to.set_unit(history.unit.as_str().into());
        self.sessions
            .settle(history.sessions.iter().map(|session| Session {
                date: session.date.as_str().into(),
                load: session.load.as_str().into(),
                reps: session.reps.as_str().into(),
                word: session.word.as_str().into(),
                share: session.share.clamp(0.0, 1.0),
                state: rung_state(session.state),
            }));
        to.set_next(history.next.as_str().into());
        to.set_empty(history.empty.as_str().into());
        to.set_main(history.main.as_str().into());
    }
}
