//! Fills the pad on which something is typed.
use crate::generated::{KioskWindow, Typing};
use crate::rows::Rows;
use slint::{ComponentHandle as _, SharedString};

/// Keeps its keys.
pub(crate) struct TypingFace {
    keys: Rows<SharedString>,
}

impl TypingFace {
    pub(crate) fn new(window: &KioskWindow) -> Self {
        let keys = Rows::new();
        window.global::<Typing<'_>>().set_keys(keys.model());
        Self { keys }
    }

    pub(crate) fn show(&self, window: &KioskWindow, typing: &view::desk::Typing) {
        let to = window.global::<Typing<'_>>();
        to.set_title(typing.title.as_str().into());
        to.set_hint(typing.hint.as_str().into());
        to.set_wrong(typing.wrong);
        to.set_typed(typing.typed.as_str().into());
        to.set_unit(typing.unit.as_str().into());
        self.keys.settle(typing.keys.iter().map(SharedString::from));
        to.set_other(typing.other.as_str().into());
        to.set_delete(typing.delete.as_str().into());
        to.set_main(typing.main.as_str().into());
    }
}
