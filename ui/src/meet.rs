//! Fills the page of a meet or test day.
use crate::generated::{Call, KioskWindow, Meet};
use crate::rows::Rows;
use slint::ComponentHandle as _;
use view::buttons::call_labels;
use view::meet_day::MeetPage;

/// Keeps its calls.
pub(crate) struct MeetFace {
    calls: Rows<Call>,
}

impl MeetFace {
    pub(crate) fn new(window: &KioskWindow) -> Self {
        let calls = Rows::new();
        window.global::<Meet<'_>>().set_calls(calls.model());
        Self { calls }
    }

    pub(crate) fn show(&self, window: &KioskWindow, page: &MeetPage) {
        let to = window.global::<Meet<'_>>();
        to.set_title(page.title.as_str().into());
        to.set_hint(page.hint.as_str().into());
        let calls = page.calls.iter().zip(call_labels(page));
        self.calls.settle(calls.map(|(call, label)| Call {
            label: label.into(),
            lifter: call.lifter.as_str().into(),
            load: call.load.as_str().into(),
            set: call.set.as_str().into(),
            left: call.left.as_str().into(),
            when: call.when.as_str().into(),
            plates: call.plates.as_str().into(),
            after: call.after.as_str().into(),
            due: call.due,
        }));
        to.set_empty(page.empty.as_str().into());
        to.set_sooner(page.sooner.as_str().into());
        to.set_judges(page.judges);
        to.set_later(page.later.as_str().into());
        to.set_main(page.main.as_str().into());
        to.set_main_detail(page.main_detail.as_str().into());
        to.set_caution(page.caution.as_str().into());
    }
}
