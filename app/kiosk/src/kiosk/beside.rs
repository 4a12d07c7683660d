//! What stands beside the screen: signs for lamp, buzzer and lights, days of programmes for the
//! page.
use super::Kiosk;
use crate::replan::Patience;
use chrono::Timelike as _;
use view::{Signs, sheet_doc, sheet_json};

/// Seconds of a day.
const DAY_S: u32 = 86_400;

impl Kiosk {
    /// What stands beside the screen now.
    pub fn signs(&mut self) -> Signs {
        self.renew_day();
        let time = self.time_of_day();
        view::signs(&self.stage, &self.scene(&time))
    }

    /// Minutes since midnight on the gym's clock; `None` on one that was never set.
    #[must_use]
    pub fn minute_of_day(&self) -> Option<u16> {
        let minutes = |time: chrono::NaiveTime| time.num_seconds_from_midnight() / 60;
        u16::try_from(self.clock.time().map(minutes)?).ok()
    }

    /// Gathers for the page what programmes fill, a little at a time.
    pub(super) fn gather(&mut self) {
        let now = (self.date(), self.owner.seq());
        if let Some(shared) = &mut self.shared {
            let since = self.clock.local().time().num_seconds_from_midnight();
            shared.know_midnight(DAY_S.saturating_sub(since));
            let entries = &self.today.entries;
            shared.tick(now, || {
                sheet_json(&sheet_doc(&self.gym.gym.name, now.0, entries, None))
            });
            shared.gather(&self.gym.gym, self.owner.state(), now);
        }
    }

    /// How long plans may take from now on, for pictures.
    pub(crate) fn be_patient(&mut self, patience: Patience) {
        self.patience = patience;
    }
}
